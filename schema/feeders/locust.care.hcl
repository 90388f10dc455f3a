feeder "locust" {
  title   = "locust"
  plural  = "locusts"
  latin   = "Schistocerca gregaria and Locusta migratoria"
  also    = ["hopper", "locust hopper", "desert locust", "migratory locust", "grasshopper", "Heuschrecke", "Wanderheuschrecke", "Wüstenheuschrecke"]
  hazards = [
    "kicks, and the hind legs have spines: take them off for an animal that is soft or small",
    "a grown one bites, flies, and frightens a shy animal",
    "eats the plants in the enclosure, and sits high under the lid out of reach of ground dwellers",
    "a pest where it can live outdoors: not sold everywhere, look up what is allowed",
    "keepers become allergic to the dust of its droppings (from memory)",
  ]
  note    = "Two species are sold by this name and are used alike. The young are called hoppers."

  size "hatchling" {
    also    = ["micro", "1st", "1st instar", "first instar"]
    mass    = "15 to 30 mg"
    length  = "7 to 9 mm"
    note    = "First instar. The length of 8 mm is from F12; the weight is remembered."
    source  = ["F12", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "small" {
    also    = ["klein", "2nd", "2nd instar", "second instar"]
    mass    = "40 to 120 mg"
    length  = "10 to 15 mm"
    note    = "Second instar. The length is between the stages of F12; the weight is remembered."
    source  = ["F12", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "medium" {
    also    = ["mittel", "3rd", "3rd instar", "third instar"]
    mass    = "120 to 300 mg"
    length  = "16 to 24 mm"
    note    = "Third instar. The length is between the stages of F12; the weight is remembered."
    source  = ["F12", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "large" {
    also    = ["groß", "gross", "4th", "4th instar", "fourth instar"]
    mass    = "300 to 700 mg"
    length  = "25 to 34 mm"
    note    = "Fourth instar. The length is between the stages of F12; the weight is remembered."
    source  = ["F12", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "subadult" {
    also    = ["extra large", "XL", "5th", "5th instar", "fifth instar"]
    mass    = "700 to 1400 mg"
    length  = "35 to 50 mm"
    note    = "Fifth instar, with wing buds. The length is between the stages of F12; the weight is remembered."
    source  = ["F12", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  size "adult" {
    also    = ["grown"]
    mass    = "1.5 to 3 g"
    length  = "50 to 80 mm"
    note    = "With wings; females are the heavier ones. To 80 mm (F12, F13); the weight is remembered."
    source  = ["F12", "F13", "memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "energy" {
    value   = "1.3 to 1.7 kcal/g"
    source  = ["F3", "memory"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Our arithmetic: 4 kcal a gram of protein and 9 of fat of F3, with 65 to 70 % water."
  }

  figure "water" {
    value   = "65 to 70 %"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "protein" {
    value   = "17 to 22 %"
    source  = ["F3", "memory"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "58 to 63 % of the dry animal (F3), with the water as remembered. 54 to 61 % elsewhere (F11)."
  }

  figure "fat" {
    value   = "5 to 9.5 %"
    source  = ["F3", "memory"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "18 to 27 % of the dry animal, more on bran and carrots than on grass alone (F3)."
  }

  figure "calcium-to-phosphorus" {
    value   = "0.1 to 0.2"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-29"
  }

  figure "usable" {
    value   = "2 to 3 weeks"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
  }

  figure "temperature" {
    value   = "28 to 33 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "With light. Hoppers are grown in 32 days at 25 C and in 22 at 30 C (F14)."
  }

  figure "humidity" {
    value   = "30 to 50 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Dry: they die in damp still air."
  }

  figure "gut-load-before" {
    value   = "24 to 48 h"
    source  = ["P42"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Measured on crickets; taken over from them."
  }

  development "egg" {
    base        = "15.1 C"
    degree_days = 224
    between     = "20 to 35 C"
    note        = "50 days at 19.7 C, 11 to 12 at 35 to 41 C; none hatch where it stays under 20 to 24 C."
    source      = ["F49"]
    quality     = "paper"
    seen        = "2026-11-30"
  }

  development "young" {
    observed = ["32 days at 25 C", "22 days at 30 C"]
    note     = "The line through two points is ours. Until they are ripe 52 and 33 days."
    source   = ["F50"]
    quality  = "paper"
    seen     = "2026-11-30"
  }

  upkeep "food" {
    task    = "Fresh dry grass or leaves, bran; what is wilted out; no water dish"
    every   = "day"
    note    = "4.3 kg of wheat sprouts for 1,000 in a week at 25 C: our arithmetic from F50. How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }

  upkeep "clean" {
    task    = "Take out dead, droppings and old grass (mask and gloves on, no dry sweeping: the dust harms lungs); many dead: log crashed"
    every   = "7 days"
    cleans  = true
    note    = "How often is common practice, no source."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-30"
  }
}
