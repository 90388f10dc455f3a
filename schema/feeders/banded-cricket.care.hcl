feeder "banded-cricket" {
  title   = "banded cricket"
  plural  = "banded crickets"
  latin   = "Gryllodes sigillatus"
  also    = ["tropical house cricket", "decorated cricket", "Kurzflügelgrille", "Bändergrille", "südliche Hausgrille"]
  hazards = [
    "gnaws a moulting animal, as every cricket does",
    "faster than the house cricket, jumps far, and escapes while you feed",
    "loose ones breed in warm rooms; look up whether it may be kept where you live",
  ]
  note = "Not killed by the virus that kills house crickets (from memory), and softer to chew."

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
    mass    = "33 to 49 mg"
    length  = "7 to 8 mm"
    energy  = "0.95 kcal/g"
    note    = "The weight follows from the length as in the last nymph of the house cricket, 430 mg at about 16.5 mm: 0.096 mg times the cube of the length in mm."
    source  = ["P36", "practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel"]
    mass    = "70 to 130 mg"
    length  = "9 to 11 mm"
    energy  = "0.95 kcal/g"
    note    = "The weight follows from the length as in the last nymph of the house cricket, 430 mg at about 16.5 mm: 0.096 mg times the cube of the length in mm."
    source  = ["P36", "practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross"]
    mass    = "170 to 210 mg"
    length  = "12 to 13 mm"
    energy  = "0.95 kcal/g"
    note    = "The weight follows from the length as in the last nymph of the house cricket, 430 mg at about 16.5 mm: 0.096 mg times the cube of the length in mm."
    source  = ["P36", "practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "adult" {
    also    = ["grown"]
    mass    = "210 to 390 mg"
    length  = "13 to 16 mm"
    note    = "The length is from F6, without the ovipositor. The grown have short wings and are reckoned as nymphs. The weight follows from the length as in the last nymph of the house cricket, 430 mg at about 16.5 mm: 0.096 mg times the cube of the length in mm."
    source  = ["F6", "practice"]
    quality = "practice"
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
    value   = "0.14"
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
    note    = "As the house cricket."
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
