feeder "waxworm" {
  title   = "waxworm"
  plural  = "waxworms"
  latin   = "Galleria mellonella, larva"
  also    = ["wax moth larva", "Wachsmade", "Wachsraupe", "Wachsmottenlarve"]
  hazards = [
    "a quarter of it is fat: a treat only",
    "chews through plastic and wood, burrows and spins a cocoon where it is not eaten",
    "what pupates flies as a moth after one to three weeks",
  ]

  size "small" {
    also    = ["klein"]
    mass    = "50 to 130 mg"
    length  = "12 to 16 mm"
    note    = "The weight follows from the length as in the full grown: 0.03 mg times the cube of the length in mm."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "grown"]
    mass    = "331 mg"
    length  = "20 to 25 mm"
    note    = "The weight is remembered and to be checked against P35; 25 mm when mature (F26), 12 to 20 mm in the last instar elsewhere (F27)."
    source  = ["P35", "F26", "F27", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "2.75 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "58.5 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "14.1 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "24.9 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.12"
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "243 to 1,950 mg/kg as remembered. To be checked against the paper."
  }

  figure "usable" {
    value   = "3 to 4 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Cool; they pupate within one to two weeks when warm."
  }

  figure "temperature" {
    value   = "10 to 15 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "To store."
  }

  figure "share-max" {
    value   = "10 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "One meal in ten at most."
  }

  development "egg" {
    observed = ["5 to 8 days at 24 to 27 C"]
    note     = "Up to 35 days at 10 to 16 C. Larva 1 to 5 months, best at 29 to 34 C; at 18 C it does not pupate."
    source   = ["F55", "F56"]
    quality  = "guideline"
    seen     = "2026-11-30"
  }

  upkeep "look" {
    task    = "Cool, dry, no water; take out dead, webs and cocoons (mask on: moth scales)"
    every   = "7 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
