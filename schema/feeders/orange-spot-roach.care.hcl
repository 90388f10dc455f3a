feeder "orange-spot-roach" {
  title   = "orange-spot roach"
  plural  = "orange-spot roaches"
  latin   = "Eublaberus distanti"
  also    = ["orange-spotted roach", "six-spotted roach", "six-spotted cockroach", "four-spotted roach"]
  hazards = [
    "burrows at once and is lost in the soil: give with tongs",
    "bites soft animals when it is hungry, harder than other roaches: never leave it with a moulting one",
    "smells when it is kept damp and fed meat",
  ]

  size "small" {
    also    = ["klein"]
    mass    = "47 to 180 mg"
    length  = "9 to 14 mm"
    note    = "The weight follows from the length: 0.065 mg times the cube of the length in mm, our estimate for flat roach nymphs."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel"]
    mass    = "500 to 800 mg"
    length  = "20 to 23 mm"
    note    = "The weight follows from the length: 0.065 mg times the cube of the length in mm, our estimate for flat roach nymphs."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "adult" {
    also    = ["grown"]
    mass    = "1.5 to 2.5 g"
    length  = "35 to 45 mm"
    note    = "Remembered, not seen in a source: weigh your own."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "2.27 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "56.6 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "26.3 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "13.6 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.08 to 0.3"
    source  = ["F2"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "The range of most of the eight invertebrates measured there, of which this was one."
  }

  figure "usable" {
    value   = "4 to 8 months"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
    note    = "Nymphs grow 5 to 8 months at 28 C."
  }

  figure "weekly-loss" {
    value   = "0 to 2 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Common practice, no source."
  }

  figure "temperature" {
    value   = "25 to 30 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  figure "humidity" {
    value   = "60 to 80 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Damp litter to burrow in."
  }

  figure "culture-lasts" {
    value   = "3 to 5 years"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
    note    = "A colony goes on by itself, with all sizes in it; at most a quarter of the nymphs a month is taken. Common practice, no source."
  }

  development "young" {
    observed = ["5 to 8 months at 28 C"]
    source   = ["memory"]
    quality  = "memory"
    seen     = "2026-11-30"
  }
}
