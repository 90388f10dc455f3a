feeder "turkestan-roach" {
  title   = "Turkestan roach"
  plural  = "Turkestan roaches"
  latin   = "Shelfordella lateralis, nymph"
  also    = ["red runner", "Blatta lateralis"]
  hazards = ["fast: escapes while you feed"]

  size "medium" {
    mass    = "200 to 400 mg"
    note    = "Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "energy" {
    value   = "1.6 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "69.1 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "19.0 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "10.0 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.2"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "usable" {
    value   = "6 to 12 months"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "temperature" {
    value   = "25 to 30 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }
}
