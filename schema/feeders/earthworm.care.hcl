feeder "earthworm" {
  title   = "earthworm"
  plural  = "earthworms"
  latin   = "Lumbricus terrestris"
  also    = ["nightcrawler", "dew worm", "lob worm", "dendrobaena", "Regenwurm", "Tauwurm"]
  hazards = [
    "burrows and drags soil about",
    "compost worms (Eisenia fetida) taste bitter and are refused or make ill: not these",
    "from the garden it brings parasites and poison",
  ]

  size "small" {
    also    = ["klein"]
    mass    = "0.5 to 1.5 g"
    length  = "40 to 90 mm"
    note    = "Young ones, or a grown dendrobaena of about 1.5 g (F42); the length is remembered. Cut pieces are given killed."
    source  = ["F42", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "adult", "grown"]
    mass    = "2 to 5 g"
    length  = "100 to 200 mm"
    note    = "Remembered, not seen in a source; full grown and stretched 20 to 25 cm, and far heavier (F43)."
    source  = ["F43", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "0.71 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "83.6 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "10.5 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "1.6 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.28"
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "444 to 1,590 mg/kg as remembered. To be checked against the paper."
  }

  figure "usable" {
    value   = "3 to 8 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Cool and moist."
  }

  figure "weekly-loss" {
    value   = "0 to 5 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Common practice, no source."
  }

  figure "temperature" {
    value   = "5 to 15 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  figure "culture-lasts" {
    value   = "1 to 3 years"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
    note    = "A bed of soil and leaves goes on by itself. Common practice, no source."
  }

  development "egg" {
    observed = ["42.1 days at 25 C"]
    note     = "0.28 cocoons a day of each, 1.1 young of one. Of Dendrobaena veneta."
    source   = ["F60"]
    quality  = "paper"
    seen     = "2026-11-30"
  }

  development "young" {
    observed = ["20 to 35 days at 25 C"]
    note     = "Up to 130 days. Of Dendrobaena veneta."
    source   = ["F60"]
    quality  = "paper"
    seen     = "2026-11-30"
  }

  upkeep "food" {
    task    = "Feel the soil, moisten what is dry, leaves on top"
    every   = "7 days"
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }

  upkeep "look" {
    task    = "Take out dead worms and food that is furred; one that smells is changed"
    every   = "7 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
