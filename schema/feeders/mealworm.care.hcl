feeder "mealworm" {
  title   = "mealworm"
  plural  = "mealworms"
  latin   = "Tenebrio molitor, larva"
  also    = ["Mehlwurm", "Tenebrio"]
  hazards = [
    "burrows and is lost in the soil",
    "can chew a moulting animal: offer from a dish, or with the head crushed",
    "turns into a beetle in the soil within weeks; beetles taste bad and are mostly left",
    "damp bran breeds mites",
  ]

  size "small" {
    also    = ["klein", "mini"]
    mass    = "6 to 20 mg"
    length  = "10 to 15 mm"
    note    = "The weight follows from the length as in the full grown: 0.0063 mg times the cube of the length in mm."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel", "regular"]
    mass    = "26 to 67 mg"
    length  = "16 to 22 mm"
    note    = "The weight follows from the length as in the full grown: 0.0063 mg times the cube of the length in mm."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "grown"]
    mass    = "130 to 160 mg"
    length  = "25 to 32 mm"
    note    = "Full grown. The mass is from P51, the length from K128; P35 as remembered has 126 mg."
    source  = ["P51", "K128"]
    quality = "keeper"
    seen    = "2026-11-29"
  }

  size "giant" {
    also    = ["king"]
    mass    = "300 mg"
    length  = "33 to 38 mm"
    note    = "Grown with a hormone; 300 mg and more (P51). The greatest length is from K128, the least follows from the weight."
    source  = ["P51", "K128"]
    quality = "keeper"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "2.05 kcal/g"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Calculated from the composition, not burned in a bomb."
  }

  figure "water" {
    value   = "61.9 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "protein" {
    value   = "18.7 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "fat" {
    value   = "13.4 %"
    source  = ["P36"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "calcium-to-phosphorus" {
    value   = "0.06"
    source  = ["P35", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "169 to 2,850 mg/kg as remembered. To be checked against the paper."
  }

  figure "usable" {
    value   = "4 to 8 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Stored cold at 5 to 10 C and warmed up one day a week."
  }

  figure "weekly-loss" {
    value   = "0 to 2 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Common practice, no source."
  }

  figure "temperature" {
    value   = "25 to 31 C"
    source  = ["K124"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "To breed. At 20, 23, 25 and 27 C the way from egg to adult takes 204, 171, 143 and 111 days (P43)."
  }

  figure "humidity" {
    value    = "50 to 70 %"
    source   = ["K124"]
    quality  = "keeper"
    seen     = "2026-11-25"
    disputed = "60 +- 10 % in the laboratory (P43)"
  }

  figure "culture-lasts" {
    value   = "2 to 3 months"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
    note    = "One box of beetles. Common practice, no source."
  }

  development "egg-to-adult" {
    base        = "11.9 C"
    degree_days = 1768
    between     = "20 to 27 C"
    note        = "The line is ours through four published times, 203.7 days down to 111.3."
    source      = ["F51"]
    quality     = "practice"
    seen        = "2026-11-30"
  }

  development "young" {
    observed = ["142.8 days at 27 C", "162.0 days at 31 C"]
    note     = "Slower when warmer: fittest at 27 C, dead at 39 C."
    source   = ["F52"]
    quality  = "paper"
    seen     = "2026-11-30"
  }

  upkeep "food" {
    task    = "A slice of carrot or potato on the dry bran, no open water; top up the bran; probe in the bran not above 30 C, or part them"
    every   = "3 days"
    wet     = true
    note    = "A crowded crate heats itself (Sustainability 14:6234: 25 to 39 C). How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }

  upkeep "clean" {
    task    = "Take out dead, skins and damp bran (mask and gloves on, no dry sweeping); mites live where it is damp: new bran, frozen for 4 to 7 days before"
    every   = "7 days"
    cleans  = true
    note    = "Grain mites die below 62 % (veseris.com). How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
