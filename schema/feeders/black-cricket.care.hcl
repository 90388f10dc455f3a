feeder "black-cricket" {
  title   = "black cricket"
  plural  = "black crickets"
  latin   = "Gryllus bimaculatus"
  also    = ["two-spotted cricket"]
  hazards = ["bites harder than the house cricket and gnaws a moulting animal"]

  size "adult" {
    mass    = "800 to 1200 mg"
    note    = "Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "energy" {
    value   = "1.4 kcal/g"
    source  = ["P36"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As the house cricket; none was found for this species."
  }

  figure "calcium-to-phosphorus" {
    value   = "0.17"
    source  = ["P42"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Unfed; about 0.4 after 24 h on a diet rich in calcium."
  }

  figure "usable" {
    value   = "2 to 3 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "temperature" {
    value   = "26 to 32 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "gut-load-before" {
    value   = "24 to 48 h"
    source  = ["P42"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "No more is gained after 48 h."
  }

  figure "gut-load-lost" {
    value   = "24 h"
    source  = ["P42"]
    quality = "paper"
    seen    = "2026-11-25"
  }
}
