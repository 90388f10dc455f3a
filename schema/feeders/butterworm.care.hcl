feeder "butterworm" {
  title   = "butterworm"
  plural  = "butterworms"
  latin   = "Chilecomadia moorei, larva"
  hazards = ["nearly a third of it is fat: a treat only"]

  size "large" {
    mass    = "500 mg"
    note    = "Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "energy" {
    value   = "2.98 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "60.2 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "15.5 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "29.4 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }
}
