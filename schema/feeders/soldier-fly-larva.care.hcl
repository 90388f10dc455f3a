feeder "soldier-fly-larva" {
  title   = "soldier fly larva"
  plural  = "soldier fly larvae"
  latin   = "Hermetia illucens, larva"
  also    = ["black soldier fly larva", "BSFL", "Hermetia", "Soldatenfliegenlarve", "schwarze Soldatenfliege"]
  hazards = [
    "wanders and squeezes through narrow gaps when it is ready to pupate",
    "tough skin: it goes through some animals whole, prick it first",
    "turns dark and is refused as it comes near the pupa; the fly is harmless",
  ]

  size "small" {
    also    = ["klein"]
    mass    = "5 to 15 mg"
    length  = "5 to 8 mm"
    note    = "Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel"]
    mass    = "30 to 90 mg"
    length  = "9 to 13 mm"
    note    = "Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "grown"]
    mass    = "150 to 250 mg"
    length  = "15 to 22 mm"
    note    = "Remembered, not seen in a source; to 27 mm and 220 mg (F39)."
    source  = ["F39", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.99 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "61.2 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "17.5 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "14.0 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "2.6"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "The one feeder above 1 : 1 by itself."
  }

  figure "usable" {
    value   = "2 to 4 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Cool."
  }

  figure "weekly-loss" {
    value   = "0 to 5 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Common practice, no source."
  }

  figure "temperature" {
    value   = "10 to 16 C"
    source  = ["F39"]
    quality = "guideline"
    seen    = "2026-11-29"
    note    = "To store."
  }

  development "young" {
    note    = "Base 12.3 C with 250 degree-days on one diet, 11.7 C with 333 on another: as much as the diet decides nothing is reckoned here."
    source  = ["F39"]
    quality = "paper"
    seen    = "2026-11-30"
  }

  upkeep "look" {
    task    = "Cool, no food; take out what is dark or dead"
    every   = "7 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
