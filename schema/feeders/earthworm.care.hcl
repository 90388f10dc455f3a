feeder "earthworm" {
  title  = "earthworm"
  plural = "earthworms"
  latin  = "Lumbricus terrestris"
  also   = ["nightcrawler"]

  size "large" {
    mass    = "2 to 5 g"
    note    = "Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "energy" {
    value   = "0.71 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "83.6 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "10.5 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "1.6 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.28"
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "444 to 1,590 mg/kg as remembered. To be checked against the paper."
  }
}
