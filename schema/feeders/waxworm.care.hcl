feeder "waxworm" {
  title   = "waxworm"
  plural  = "waxworms"
  latin   = "Galleria mellonella, larva"
  hazards = ["a quarter of it is fat: a treat only"]

  size "large" {
    mass    = "331 mg"
    note    = "Remembered; to be checked against the paper."
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "energy" {
    value   = "2.75 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "58.5 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "14.1 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "24.9 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.12"
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "243 to 1,950 mg/kg as remembered. To be checked against the paper."
  }

  figure "usable" {
    value   = "3 to 4 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Cool; they pupate within one to two weeks when warm."
  }

  figure "temperature" {
    value   = "10 to 15 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "To store."
  }

  figure "share-max" {
    value   = "10 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "One meal in ten at most."
  }
}
