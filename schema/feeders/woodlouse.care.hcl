feeder "woodlouse" {
  title   = "woodlouse"
  plural  = "woodlice"
  latin   = "Porcellio scaber"
  also    = ["rough woodlouse", "isopod", "Assel", "Kellerassel", "slater"]
  hazards = [
    "may nibble a moulting animal when hungry",
    "breeds in damp soil, and many of them eat the food, the shed skin and eggs",
    "hard: many spiders and mantises leave it",
  ]

  size "small" {
    also    = ["klein"]
    mass    = "1 to 7 mg"
    length  = "3 to 6 mm"
    note    = "The weight follows from the length as in the grown: 0.033 mg times the cube of the length in mm."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel"]
    mass    = "17 to 33 mg"
    length  = "8 to 10 mm"
    note    = "The weight follows from the length as in the grown: 0.033 mg times the cube of the length in mm."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "adult" {
    also    = ["large", "groß", "gross", "grown"]
    mass    = "60 to 150 mg"
    length  = "12 to 17 mm"
    note    = "Remembered; to 20 mm (K117)."
    source  = ["K117", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "0.83 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "67.8 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "13.3 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "3.7 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "usable" {
    value   = "3 to 12 months"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "A culture, with leaves and a damp corner, goes on by itself."
  }

  figure "weekly-loss" {
    value   = "0 to 2 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Common practice, no source."
  }

  figure "temperature" {
    value    = "18 to 24 C"
    source   = ["P45"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "15 to 25 C (common practice)"
    note     = "See its own species sheet."
  }

  figure "humidity" {
    value   = "70 to 90 %"
    source  = ["K118"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "On the wet side."
  }

  figure "culture-lasts" {
    value   = "2 to 3 years"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
    note    = "With leaves and a damp corner it goes on by itself. Common practice, no source."
  }

  development "egg-to-adult" {
    note    = "The pouch and growth take nearly three times as long at 15 C as at 22 C; no days were found."
    source  = ["F59"]
    quality = "paper"
    seen    = "2026-11-30"
  }

  upkeep "food" {
    task    = "Wet one end, top up leaves and bark"
    every   = "3 days"
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }

  upkeep "vegetable" {
    task    = "A slice of vegetable, as much as is eaten in a day"
    every   = "7 days"
    wet     = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }

  upkeep "look" {
    task    = "Look for mites, mould and dead"
    every   = "7 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
