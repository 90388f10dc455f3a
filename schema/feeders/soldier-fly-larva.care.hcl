feeder "soldier-fly-larva" {
  title  = "soldier fly larva"
  plural = "soldier fly larvae"
  latin  = "Hermetia illucens, larva"

  size "large" {
    mass    = "150 to 250 mg"
    note    = "Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
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
}
