feeder "orange-spot-roach" {
  title  = "orange-spot roach"
  plural = "orange-spot roaches"
  latin  = "Eublaberus distanti, adult"

  size "adult" {
    note    = "No mass was found: weigh your own."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "energy" {
    value   = "2.27 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "56.6 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "26.3 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "13.6 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }
}
