feeder "pinky-mouse" {
  title   = "pinky mouse"
  plural  = "pinky mice"
  latin   = "Mus musculus, pup"
  also    = ["pinky", "pinkie", "pinkie mouse", "mouse", "mouse pup", "Maus", "Babymaus", "Nacktmaus"]
  hazards = [
    "never alive: killed before, as the law of many countries asks, and warmed up",
    "not needed by any animal of this library; at most a rare meal of the very largest",
    "fat and rich: too many and the animal grows fat, its abdomen heavy, a fall or a moult dangerous",
    "rots within hours and smells: take what is left out the same night",
    "germs of mice reach people: gloves, and never beside your own food",
  ]
  note    = "For the sake of plans that have it, not advised."

  size "newborn" {
    also    = ["pinky", "small", "klein", "nackt"]
    mass    = "1 to 2 g"
    length  = "20 to 30 mm"
    note    = "The weight is remembered, 1.5 g in F4; the length without the tail is remembered."
    source  = ["F4", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "fuzzy" {
    also    = ["large", "groß", "gross", "fuzzies"]
    mass    = "3 to 5 g"
    length  = "35 to 45 mm"
    note    = "With the first hair. 4 g in F4; the length without the tail is remembered."
    source  = ["F4", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "0.8 to 1.7 kcal/g"
    source  = ["F4"]
    quality = "paper"
    seen    = "2026-11-29"
    note    = "0.8 kcal/g at 1.5 g, 1.7 kcal/g at 4 g."
  }

  figure "water" {
    value   = "71 to 81 %"
    source  = ["F4"]
    quality = "paper"
    seen    = "2026-11-29"
    note    = "81 % at 1.5 g, 71 % at 4 g."
  }

  figure "protein" {
    value   = "11 to 12 %"
    source  = ["F4"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Our arithmetic: 57 % of the energy at 1.5 g and 29 % at 4 g (F4), at 4 kcal a gram."
  }

  figure "fat" {
    value   = "3.5 to 13 %"
    source  = ["F4"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Our arithmetic: 40 % of the energy at 1.5 g and 69 % at 4 g (F4), at 9 kcal a gram."
  }

  figure "calcium-to-phosphorus" {
    value   = "1 to 1.1"
    source  = ["F4"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "3.8 to 3.7 and 2.4 to 2.2 mg a kcal."
  }

  figure "usable" {
    value   = "6 to 12 months"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Frozen; thawed once, used the same day."
  }

  figure "temperature" {
    value   = "-20 to -18 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "The freezer."
  }

  figure "share-max" {
    value   = "5 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "One meal in twenty at most, our estimate."
  }

  figure "law" {
    value   = "Look up the law on feeding vertebrates: giving them alive is an offence in many countries."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  upkeep "look" {
    task    = "Freezer at -18 C? Packs that are past their date go out"
    every   = "30 days"
    note    = "Common practice, no source: frozen ones are not looked after."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
