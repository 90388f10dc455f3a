feeder "black-cricket" {
  title   = "black cricket"
  plural  = "black crickets"
  latin   = "Gryllus bimaculatus"
  also    = ["two-spotted cricket", "Mediterranean field cricket", "field cricket", "Mittelmeergrille", "Zweifleckgrille", "Feldgrille"]
  hazards = [
    "bites harder than the house cricket and gnaws a moulting animal",
    "a grown one can hurt a young or soft animal: take leftovers out the same evening",
    "chirps loudly, and loose ones hide in warm rooms",
  ]

  size "hatchling" {
    also    = ["micro"]
    mass    = "0.8 to 2.6 mg"
    length  = "2 to 3 mm"
    energy  = "0.95 kcal/g"
    note    = "Fresh from the egg. The weight follows from the length as in the last nymph of the house cricket, 430 mg at about 16.5 mm: 0.096 mg times the cube of the length in mm."
    source  = ["K121", "P36", "practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "pinhead" {
    mass    = "6 to 21 mg"
    length  = "4 to 6 mm"
    energy  = "0.95 kcal/g"
    note    = "The weight follows from the length as in the last nymph of the house cricket, 430 mg at about 16.5 mm: 0.096 mg times the cube of the length in mm."
    source  = ["P36", "practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "small" {
    also    = ["klein"]
    mass    = "49 to 130 mg"
    length  = "8 to 11 mm"
    energy  = "0.95 kcal/g"
    note    = "The weight follows from the length as in the last nymph of the house cricket, 430 mg at about 16.5 mm: 0.096 mg times the cube of the length in mm."
    source  = ["P36", "practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel"]
    mass    = "210 to 390 mg"
    length  = "13 to 16 mm"
    energy  = "0.95 kcal/g"
    note    = "The weight follows from the length as in the last nymph of the house cricket, 430 mg at about 16.5 mm: 0.096 mg times the cube of the length in mm."
    source  = ["P36", "practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross"]
    mass    = "470 to 770 mg"
    length  = "17 to 20 mm"
    energy  = "0.95 kcal/g"
    note    = "The weight follows from the length as in the last nymph of the house cricket, 430 mg at about 16.5 mm: 0.096 mg times the cube of the length in mm."
    source  = ["P36", "practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "adult" {
    also    = ["grown"]
    mass    = "800 to 1200 mg"
    length  = "20 to 30 mm"
    note    = "Remembered, not seen in a source. A harvest of grown and nearly grown ones weighed 724 mg on average (F10)."
    source  = ["F10", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.4 kcal/g"
    source  = ["P36"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As the house cricket, nymphs too; none was found for this species."
  }

  figure "water" {
    value   = "69.2 %"
    source  = ["P36"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the house cricket."
  }

  figure "protein" {
    value   = "20.5 %"
    source  = ["P36"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the house cricket. 65 % of the dry animal (F11)."
  }

  figure "fat" {
    value   = "6.8 %"
    source  = ["P36"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the house cricket."
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

  figure "weekly-loss" {
    value   = "10 to 25 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the house cricket; no published loss was found."
  }

  figure "temperature" {
    value   = "26 to 32 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "humidity" {
    value   = "40 to 60 %"
    source  = ["K123"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the house cricket."
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

  development "egg" {
    base        = "15.9 C"
    degree_days = 108.7
    between     = "20 to 37 C"
    note        = "Others saw a mean of 9.5 days at 30 C (F47)."
    source      = ["F45", "F47"]
    quality     = "paper"
    seen        = "2026-11-30"
  }

  development "young" {
    base        = "16.2 C"
    degree_days = 555.6
    between     = "20 to 37 C"
    note        = "Best at 32 C. From egg to adult others saw 231.8 days at 18 C and 62.2 at 34 C (F46). At a constant 20 C larvae fail that finish where the warmth wavers about it (F46)."
    source      = ["F45", "F46"]
    quality     = "paper"
    seen        = "2026-11-30"
  }
}
