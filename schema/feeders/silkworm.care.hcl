feeder "silkworm" {
  title   = "silkworm"
  plural  = "silkworms"
  latin   = "Bombyx mori, larva"
  also    = ["Seidenraupe", "Seidenspinner"]
  hazards = [
    "soft and slow, does nothing to an animal",
    "dies of damp, of handling with wet hands, and of any leaf that was sprayed",
    "eats mulberry or bought chow only, and is grown in four weeks: order the size you need",
  ]

  size "hatchling" {
    also    = ["micro"]
    mass    = "0.4 to 1 mg"
    length  = "3 to 6 mm"
    note    = "4 to 6 mm when hatched (F28); the weight is remembered."
    source  = ["F28", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "small" {
    also    = ["klein"]
    mass    = "10 to 60 mg"
    length  = "10 to 18 mm"
    note    = "Remembered, not seen in a source."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel", "any"]
    mass    = "150 to 900 mg"
    length  = "25 to 40 mm"
    note    = "Remembered, not seen in a source: weigh your own. Plans that have the former size any are read as this."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "grown"]
    mass    = "3 to 5 g"
    length  = "60 to 80 mm"
    note    = "Full grown (F28). The weight follows from 9,000 times that of a hatched one (F29)."
    source  = ["F28", "F29", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "0.67 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "82.7 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "9.3 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "1.4 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.07"
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "To be checked against the paper."
  }

  figure "usable" {
    value   = "1 to 2 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Of one size; they grow on."
  }

  figure "temperature" {
    value   = "22 to 28 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Cooler, they grow more slowly. At 24 C larvae take 33 days (F30)."
  }

  figure "humidity" {
    value   = "50 to 70 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  development "egg" {
    observed = ["11 days at 24 C"]
    source   = ["F30"]
    quality  = "paper"
    seen     = "2026-11-30"
  }

  development "young" {
    observed = ["33 days at 24 C"]
    note     = "Instars of 4.60, 6.00, 6.06, 6.47 and 9.87 days; pupa 15.4."
    source   = ["F30"]
    quality  = "paper"
    seen     = "2026-11-30"
  }

  upkeep "food" {
    task    = "Fresh dry mulberry leaves or chow, no water"
    every   = "day"
    note    = "They eat all day. Common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }

  upkeep "clean" {
    task    = "Take out frass, old leaves and dead; dry hands"
    every   = "2 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
