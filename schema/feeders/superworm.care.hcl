feeder "superworm" {
  title   = "superworm"
  plural  = "superworms"
  latin   = "Zophobas morio, larva"
  also    = ["morio worm"]
  hazards = ["bites: crush the head for young or moulting animals", "dies in the fridge"]

  size "large" {
    mass    = "610 mg"
    note    = "Remembered; to be checked against the paper."
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "energy" {
    value   = "2.42 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "57.9 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "19.7 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "17.7 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.07"
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "177 to 2,370 mg/kg as remembered. To be checked against the paper."
  }

  figure "usable" {
    value   = "2 to 6 months"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Months as larvae in a crowd; they pupate only when alone. The figures are our reading."
  }

  figure "temperature" {
    value   = "22 to 28 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "They die below about 15 C."
  }

  figure "share-max" {
    value   = "25 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Once a week at most because of the fat; the share is our reading."
  }
}
