feeder "superworm" {
  title   = "superworm"
  plural  = "superworms"
  latin   = "Zophobas morio, larva"
  also    = ["super", "morio", "morio worm", "Zophobas", "king worm", "Schwarzkäferlarve", "Riesenmehlwurm"]
  hazards = [
    "bites: crush the head for young or moulting animals",
    "burrows, and comes out again to gnaw an animal that moults",
    "pupates when it is alone in the soil",
    "dies in the fridge",
  ]

  size "small" {
    also    = ["klein"]
    mass    = "20 to 90 mg"
    length  = "15 to 25 mm"
    note    = "The weight follows from the length as in the full grown: 0.006 mg times the cube of the length in mm."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel"]
    mass    = "90 to 380 mg"
    length  = "26 to 39 mm"
    note    = "The weight follows from the length as in the full grown: 0.006 mg times the cube of the length in mm."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "adult", "grown"]
    mass    = "610 mg"
    length  = "40 to 55 mm"
    note    = "Full grown; sellers also call it adult, but the beetle is not sold as food. The weight is remembered and to be checked against P35; the lengths are from F21 and F22."
    source  = ["P35", "F21", "F22", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "2.42 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "57.9 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "19.7 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "17.7 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.07"
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "177 to 2,370 mg/kg as remembered. To be checked against the paper."
  }

  figure "usable" {
    value   = "2 to 6 months"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Months as larvae in a crowd; they pupate only when alone. The figures are our reading."
  }

  figure "weekly-loss" {
    value   = "0 to 2 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "As the mealworm: common practice, no source."
  }

  figure "temperature" {
    value   = "22 to 28 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "They die below about 15 C."
  }

  figure "humidity" {
    value   = "40 to 60 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  figure "share-max" {
    value   = "25 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Once a week at most because of the fat; the share is our reading."
  }

  figure "culture-lasts" {
    value   = "3 to 6 months"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
    note    = "One box of beetles. Common practice, no source."
  }

  development "egg" {
    observed = ["8 to 9 days at 25 C"]
    source   = ["F53", "F54"]
    quality  = "keeper"
    seen     = "2026-11-30"
  }

  development "young" {
    observed = ["61 to 76 days at 25 C"]
    note     = "To the full grown larva, 10 to 12 weeks from the egg, less the egg. Alone they pupate in 7 to 14 days; pupa 13 to 15 days."
    source   = ["F53", "F54"]
    quality  = "keeper"
    seen     = "2026-11-30"
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
    task    = "Take out dead, skins and damp bran (mask and gloves on, no dry sweeping)"
    every   = "7 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
