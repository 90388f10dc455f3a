feeder "fruit-fly" {
  title  = "fruit fly"
  plural = "fruit flies"
  latin  = "Drosophila melanogaster and Drosophila hydei"
  also   = ["flightless fruit fly"]

  size "melanogaster" {
    mass    = "1 mg"
    note    = "About. Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  size "hydei" {
    mass    = "2 to 3 mg"
    note    = "Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "energy" {
    value   = "1.37 kcal/g"
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
    value   = "21.0 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "5.9 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.1"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "usable" {
    value   = "3 to 4 weeks"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "A culture yields so long."
  }

  figure "temperature" {
    value   = "22 to 25 C"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "10 to 14 days a generation at 25 C."
  }
}
