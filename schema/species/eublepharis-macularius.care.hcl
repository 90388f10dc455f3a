species "eublepharis-macularius" {
  title  = "leopard gecko"
  latin  = "Eublepharis macularius (Blyth, 1854)"
  family = "Eublepharidae"

  stage "young" {
    note    = "Hatchling, 6.5 to 8.4 cm in all (K107)."
    source  = ["K107"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  stage "juvenile" {
    note    = "Half grown."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  stage "subadult" {
    note    = "Nearly full size, sex plain."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  stage "adult" {
    note    = "Full size."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "temperature-hard" {
    value   = "15 to 40 C"
    source  = ["K36", "K113"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "At the warm surface and in the coolest corner. No lethal temperature was found; common practice."
  }

  figure "temperature-soft" {
    value   = "20 to 36 C"
    source  = ["K112", "K36"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Our margin around the target; no source."
  }

  figure "temperature-target" {
    value    = "24 to 34 C"
    source   = ["K109", "K36"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "warm 31 to 33 C and cool 24 to 27 C (K109), air 25 to 26 C with about 30 C under the lamp (K36), 20 to 30 C (K110), 25 to 32 C (K111), basking 32 to 35 C (K108), 35 C by day (K112)"
    note     = "Warm surface 31 to 34 C, cool end 24 to 27 C."
  }

  figure "night" {
    value    = "18 to 22 C"
    source   = ["K36", "K113"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "20 to 21 C (K36), not below 21 C (K113)"
  }

  figure "humidity-soft" {
    value   = "25 to 80 %"
    source  = ["K36"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "80 % by night and in the moist box (K36)."
  }

  figure "humidity-target" {
    value    = "30 to 50 %"
    source   = ["K36", "K113"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "40 % by day and up to 80 % at night (K36), 40 to 50 % (K113)"
    note     = "With a moist box always, or skin sticks to the toes (K36)."
  }

  figure "moisture" {
    value   = "arid"
    source  = ["K36"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Dry, with a moist box that it can choose."
  }

  figure "substrate-depth-min" {
    value   = "0 cm"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "None is needed; solid flooring will do."
  }

  figure "floor-first" {
    value   = "300 cm2"
    stages  = ["young"]
    source  = ["G6"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "4 x 3 snout-vent lengths (G6, for a pair), with a length of the stage from common practice."
  }

  figure "floor-first" {
    value   = "970 cm2"
    stages  = ["juvenile"]
    source  = ["G6"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "4 x 3 snout-vent lengths (G6, for a pair), with a length of the stage from common practice."
  }

  figure "floor-first" {
    value    = "2700 cm2"
    stages   = ["subadult", "adult"]
    source   = ["K107", "G6"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "52 x 39 cm for a pair of 13 cm (G6), 60 x 30 cm (K107), 90 x 40 cm (K110), 76 L (K109), 38 L (K114), 120 x 60 cm for three (K113)"
    note     = "60 x 45 cm; 90 x 45 cm is advised."
  }

  figure "floor-further" {
    value   = "410 cm2"
    stages  = ["subadult", "adult"]
    source  = ["G6"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "15 % of the floor (G6), here of 2700 cm2."
  }

  figure "height-min" {
    value   = "26 cm"
    stages  = ["subadult", "adult"]
    source  = ["G6"]
    quality = "guideline"
    seen    = "2026-11-25"
    note    = "Two snout-vent lengths of 13 cm."
  }

  figure "keeping" {
    value    = "groups of one male"
    source   = ["K115"]
    quality  = "keeper"
    seen     = "2026-11-25"
    disputed = "alone is the default now (common practice); living alone is to be rejected (K115); a pair stresses the female (K113)"
    note     = "Never two males: they kill each other."
  }

  figure "lifestyle" {
    value   = "ground"
    source  = ["K112"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "climbs" {
    value   = "no"
    source  = ["K112"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "No toe pads."
  }

  figure "lid" {
    value   = "any"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "hangs-to-moult" {
    value   = "false"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "moults-as-adult" {
    value   = "true"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "It sheds every four to eight weeks. Look at toes and tail tip."
  }

  figure "drinks" {
    value    = "dish"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "an open dish for two to three hours only, and a spray in the morning (K36)"
  }

  figure "length" {
    value   = "13 cm"
    stages  = ["adult"]
    source  = ["G6"]
    quality = "guideline"
    seen    = "2026-11-25"
    note    = "Snout to vent, about; 20.5 to 27.5 cm with the tail (K107)."
  }

  figure "mass" {
    value   = "50 to 80 g"
    stages  = ["adult"]
    source  = ["K108"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "Males 60 to 80 g, females 50 to 70 g."
  }

  figure "lifespan" {
    value    = "15 to 20 years"
    source   = ["K107", "K113"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "20 and more (K107), to 24 (K113)"
  }

  figure "brood-size" {
    value   = "2"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "Eggs a clutch, 45 to 65 days; 26 C gives mostly females and about 32.5 C mostly males (as remembered), 34 to 35 C mostly females again, and constant heat over 35 C kills (P44)."
  }

  figure "wait-after-moult" {
    value   = "0 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "It eats its skin and goes on eating."
  }

  figure "fast-alarm" {
    value   = "14 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "unattended" {
    value   = "2 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "substrate-change" {
    value   = "6 to 12 months"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "For a dry set-up."
  }

  figure "venom" {
    value   = "none"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "defence" {
    value   = "Wash hands: salmonella. The tail drops when held."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "law" {
    value   = "Germany: no permit (K116). Austria: look up the report within 14 days (K116)."
    source  = ["K116"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "climate-origin" {
    value   = "Dry country from Afghanistan to India."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "metabolic-kin" {
    value   = "none"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  need "look" {
    longest = "1 day"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  need "water" {
    longest  = "2 days"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "an open dish for two to three hours only (K36)"
    note     = "A dish is never empty: it is refilled within two days."
  }

  need "moisture" {
    longest = "3 days"
    source  = ["K36"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "The moist box never dries out."
  }

  need "food" {
    stages  = ["young"]
    longest = "2 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  need "food" {
    stages  = ["juvenile"]
    longest = "4 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "7 days"
    shortest = "2 days"
    severity = "caution"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    note     = "Two to three meals a week are usual."
  }

  need "leftovers" {
    longest = "1 day"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  need "heat" {
    longest = "1 day"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  need "cleaning" {
    longest  = "14 days"
    severity = "caution"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    note     = "Once a week is usual; a missed week is made up in the next."
  }

  need "device-test" {
    longest  = "30 days"
    severity = "caution"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
  }

  care "look" {
    every   = "day"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "heat" {
    every   = "day"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "water" {
    every   = "day"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "moist-box" {
    kind    = "moisten"
    task    = "Dampen the moist box, not the floor"
    every   = "2 days"
    source  = ["K36"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "spot-clean" {
    every   = "7 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "dish" {
    every   = "7 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "deep-clean" {
    every   = "12 months"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "device-test" {
    every   = "30 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "toes" {
    kind    = "other"
    task    = "Look at toes and tail tip for skin that sticks"
    every   = "7 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "day"
    per_animal = 3
    prey       = "cricket small"
    gut_load   = true
    dusted     = true
    because    = "Prey is smaller than the head is wide (K108)."
    source     = ["P42", "K108", "K109"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "2 days"
    per_animal = 4
    prey       = "cricket medium"
    gut_load   = true
    dusted     = true
    because    = "Prey is smaller than the head is wide (K108)."
    source     = ["P42", "K108", "K109"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "3 days"
    per_animal = 4
    rotate     = ["cricket adult", "mealworm large"]
    gut_load   = true
    dusted     = true
    because    = "Prey is smaller than the head is wide (K108)."
    source     = ["P42", "K108", "K109"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "3 days"
    per_animal = 4
    rotate     = ["cricket adult", "mealworm large"]
    gut_load   = true
    dusted     = true
    because    = "Prey is smaller than the head is wide (K108)."
    source     = ["P42", "K108", "K109"]
    quality    = "practice"
    seen       = "2026-11-25"
  }
}
