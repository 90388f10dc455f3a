feeder "silkworm" {
  title  = "silkworm"
  plural = "silkworms"
  latin  = "Bombyx mori, larva"

  size "any" {
    note    = "The mass varies: weigh your own."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "energy" {
    value   = "0.67 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "82.7 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "9.3 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "1.4 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.07"
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "To be checked against the paper."
  }
}
