feeder "butterworm" {
  title   = "butterworm"
  plural  = "butterworms"
  latin   = "Chilecomadia moorei, larva"
  also    = ["tebo worm", "trevo worm", "Tebo-Made"]
  hazards = [
    "nearly a third of it is fat: a treat only",
    "keepers report sore mouths of geckos after it; the cause is disputed",
    "comes from Chile only, treated so that it does not pupate; not allowed everywhere",
  ]

  size "large" {
    also    = ["groß", "gross"]
    mass    = "500 mg"
    length  = "30 to 38 mm"
    note    = "The weight is remembered, not seen in a source; the length is from F32."
    source  = ["F32", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "2.98 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "60.2 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "15.5 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "29.4 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "usable" {
    value   = "1 to 4 months"
    source  = ["F32"]
    quality = "keeper"
    seen    = "2026-11-29"
    note    = "Cold."
  }

  figure "temperature" {
    value   = "4.5 to 10 C"
    source  = ["F32"]
    quality = "keeper"
    seen    = "2026-11-29"
    note    = "To store."
  }

  figure "share-max" {
    value   = "10 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "One meal in ten at most, as the waxworm."
  }

  upkeep "look" {
    task    = "Cold and dry, no food, no water; take out dead"
    every   = "7 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
