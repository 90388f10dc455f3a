feeder "lobster-roach" {
  title   = "lobster roach"
  plural  = "lobster roaches"
  latin   = "Nauphoeta cinerea"
  also    = ["speckled roach", "cinereous roach", "Tampa roach", "Hummerschabe", "Graue Schabe"]
  hazards = [
    "climbs glass: rub a band of grease or talc below the rim, and feed over a tray",
    "fast, and loose ones breed in warm rooms",
    "gnaws a moulting animal when it is hungry",
    "keepers become allergic to roaches",
  ]

  size "hatchling" {
    also    = ["micro"]
    mass    = "1.8 to 8 mg"
    length  = "3 to 5 mm"
    note    = "The weight follows from the length: 0.065 mg times the cube of the length in mm, our estimate for flat roach nymphs."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "small" {
    also    = ["klein"]
    mass    = "14 to 65 mg"
    length  = "6 to 10 mm"
    note    = "The weight follows from the length: 0.065 mg times the cube of the length in mm, our estimate for flat roach nymphs."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel"]
    mass    = "140 to 380 mg"
    length  = "13 to 18 mm"
    note    = "The weight follows from the length: 0.065 mg times the cube of the length in mm, our estimate for flat roach nymphs."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "adult" {
    also    = ["grown"]
    mass    = "400 to 700 mg"
    length  = "25 to 33 mm"
    note    = "The length is from F18 (33 mm, with wings); the weight is remembered."
    source  = ["F18", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.6 kcal/g"
    source  = ["P36"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the Turkestan roach; none was found for this species."
  }

  figure "water" {
    value   = "69.1 %"
    source  = ["P36"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the Turkestan roach."
  }

  figure "protein" {
    value   = "19.0 %"
    source  = ["P36"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the Turkestan roach."
  }

  figure "fat" {
    value   = "10.0 %"
    source  = ["P36"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the Turkestan roach."
  }

  figure "usable" {
    value   = "4 to 8 months"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
    note    = "About a year of life."
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
    value   = "40 to 60 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  figure "culture-lasts" {
    value   = "3 to 5 years"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
    note    = "A colony goes on by itself, with all sizes in it; at most a quarter of the nymphs a month is taken. Common practice, no source."
  }
}
