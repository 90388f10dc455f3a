feeder "buffalo-worm" {
  title   = "buffalo worm"
  plural  = "buffalo worms"
  latin   = "Alphitobius diaperinus, larva"
  also    = ["lesser mealworm", "litter beetle larva", "Buffalowurm", "Getreideschimmelkäfer"]
  hazards = [
    "burrows at once and breeds in damp soil and droppings: what is not eaten stays",
    "fast, and gnaws eggs, weak and moulting animals: offer from a smooth dish",
    "a pest of stored grain and poultry houses: keep the lid on, freeze what is left over",
    "beetles live a year and longer",
  ]

  size "small" {
    also    = ["klein"]
    mass    = "3 to 7 mg"
    length  = "5 to 7 mm"
    note    = "The weight follows from the length as in the full grown: 0.02 mg times the cube of the length in mm."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "grown"]
    mass    = "15 to 25 mg"
    length  = "9 to 11 mm"
    note    = "Full grown, to 11 mm (F23); the weight is remembered."
    source  = ["F23", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.2 to 1.5 kcal/g"
    source  = ["F5", "memory"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Our arithmetic: 4 kcal a gram of protein and 9 of fat of F5, with the water as remembered."
  }

  figure "water" {
    value   = "62 to 68 %"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "protein" {
    value   = "12 to 19 %"
    source  = ["F5", "memory"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "37 to 49 % of the dry larva (F5), with the water as remembered."
  }

  figure "fat" {
    value   = "7 to 10 %"
    source  = ["F5", "memory"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "22 to 26 % of the dry larva (F5), with the water as remembered."
  }

  figure "usable" {
    value   = "3 to 6 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  figure "weekly-loss" {
    value   = "0 to 2 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the mealworm: common practice, no source."
  }

  figure "temperature" {
    value   = "20 to 30 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Not in the fridge: it is a warm-country beetle."
  }

  figure "humidity" {
    value   = "50 to 70 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  upkeep "food" {
    task    = "A slice of carrot or potato on the dry bran, no open water; top up the bran"
    every   = "3 days"
    wet     = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }

  upkeep "clean" {
    task    = "Take out dead, skins and damp bran (mask and gloves on, no dry sweeping); none may get out"
    every   = "7 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
