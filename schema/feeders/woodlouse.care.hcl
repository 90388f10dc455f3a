feeder "woodlouse" {
  title   = "woodlouse"
  plural  = "woodlice"
  latin   = "Porcellio scaber"
  also    = ["rough woodlouse", "isopod"]
  hazards = ["may nibble a moulting animal when hungry"]

  size "adult" {
    mass    = "60 to 150 mg"
    length  = "12 to 17 mm"
    note    = "Remembered; to 20 mm (K117)."
    source  = ["K117", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
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
}
