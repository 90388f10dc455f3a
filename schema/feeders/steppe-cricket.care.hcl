feeder "steppe-cricket" {
  title   = "steppe cricket"
  plural  = "steppe crickets"
  latin   = "Gryllus assimilis"
  also    = ["Jamaican field cricket", "silent cricket", "silent brown cricket", "field cricket", "Steppengrille", "Feldgrille"]
  hazards = [
    "gnaws a moulting animal, and a grown one bites hard",
    "hides in the soil and under bark until night",
    "loose ones live on in warm rooms, and the males do chirp, if less than others",
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
    mass    = "700 to 1200 mg"
    length  = "22 to 30 mm"
    note    = "Remembered, not seen in a source; females reach 35 mm (F7)."
    source  = ["F7", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.4 kcal/g"
    source  = ["P36"]
    quality = "practice"
    seen    = "2026-11-29"
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
    note    = "As the house cricket."
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
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As Gryllus bimaculatus, unfed."
  }

  figure "usable" {
    value   = "2 to 3 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
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
    seen    = "2026-11-29"
  }

  figure "humidity" {
    value   = "40 to 60 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the house cricket."
  }

  figure "gut-load-before" {
    value   = "24 to 48 h"
    source  = ["P42"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Measured on Gryllus bimaculatus; taken over from it."
  }

  figure "gut-load-lost" {
    value   = "24 h"
    source  = ["P42"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Measured on Gryllus bimaculatus; taken over from it. Common practice is to use them within 6 h."
  }
}
