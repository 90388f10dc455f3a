feeder "roach" {
  title   = "dubia roach"
  plural  = "roaches"
  latin   = "Blaptica dubia"
  also    = ["dubia", "Guyana spotted roach", "orange-spotted roach", "Argentine wood roach", "Argentinische Waldschabe", "Waldschabe"]
  hazards = [
    "burrows and hides: give with tongs or with the head crushed",
    "freezes when touched, and an animal that hunts by movement does not find it",
    "what has burrowed comes out again and disturbs an animal that moults",
    "keepers become allergic to it",
  ]

  size "hatchling" {
    also    = ["micro", "newborn"]
    mass    = "10 to 30 mg"
    length  = "5 to 8 mm"
    note    = "The weight is remembered; the length follows from it: 0.065 mg times the cube of the length in mm. Newborn ones are said to be 2 to 3 mm (K129, F15), which is too short for such a weight."
    source  = ["K129", "F15", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

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
    note    = "The weight is remembered, not seen in a source; the length follows from it: 0.065 mg times the cube of the length in mm."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "subadult"]
    mass    = "1 to 2.1 g"
    length  = "25 to 32 mm"
    note    = "Nearly grown, without wings. The weight follows from the length: 0.065 mg times the cube of the length in mm, our estimate for flat roach nymphs."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "adult" {
    also    = ["grown"]
    mass    = "2 to 3 g"
    length  = "40 to 50 mm"
    note    = "The mass is remembered; the greatest length is from K129 (nearly two inches)."
    source  = ["K129", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value    = "2.2 kcal/g"
    source   = ["P34"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "others report far leaner and wetter ones (from memory)"
    note     = "Our arithmetic from the composition of P34: 4 kcal a gram of protein and 9 of fat."
  }

  figure "water" {
    value   = "59.1 to 62.7 %"
    source  = ["P34"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "18 to 22 %"
    source  = ["P34"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "47.5 to 54.3 % of the dry mass."
  }

  figure "fat" {
    value   = "13 to 18 %"
    source  = ["P34"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "35.5 to 44.2 % of the dry mass."
  }

  figure "calcium-to-phosphorus" {
    value   = "0.3"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "usable" {
    value   = "4 to 6 months"
    source  = ["K125"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "Nymphs. Adult males live 9 to 10 months, adult females 18 to 24 (K125)."
  }

  figure "weekly-loss" {
    value   = "0 to 2 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Common practice, no source."
  }

  figure "temperature" {
    value   = "27 to 32 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "To breed; 20 C and more to keep."
  }

  figure "humidity" {
    value   = "40 to 60 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  figure "law" {
    value   = "Look up Florida and Canada before ordering (as remembered)."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "culture-lasts" {
    value   = "3 to 5 years"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
    note    = "A colony goes on by itself, with all sizes in it; at most a quarter of the nymphs a month is taken. Common practice, no source."
  }

  development "egg-to-adult" {
    note    = "The base is not known, and what is published between 457.5 and 2,071 degree-days: nothing is reckoned. 4 to 6 months until the first are taken."
    source  = ["K125"]
    quality = "keeper"
    seen    = "2026-11-30"
  }
}
