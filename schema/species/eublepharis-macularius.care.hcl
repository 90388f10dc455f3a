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
    note     = "Warm surface 31 to 34 C, cool end 24 to 27 C. The body follows the ground; it prefers warmth to shelter, and dampness decides which hide it takes (N28)."
  }

  figure "warm-spot" {
    value   = "31 to 34 C"
    source  = ["K109"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "The surface under its belly: 28 C is the least with which it digests (our reading)."
  }

  figure "air" {
    value   = "24 to 27 C"
    source  = ["K109"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "The cool end."
  }

  figure "night" {
    value    = "18 to 22 C"
    source   = ["K36", "K113"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "20 to 21 C (K36), not below 21 C (K113)"
  }

  figure "winter-rest" {
    value   = "16 to 22 C"
    source  = ["N20"]
    quality = "keeper"
    seen    = "2026-11-28"
    note    = "Never over 22 C: it would starve awake."
  }

  figure "rest" {
    value   = "optional"
    source  = ["N20"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Only over a year old, with a fat tail and a clear test of its droppings (N20)."
  }

  figure "rest-length" {
    value   = "6 to 12 weeks"
    source  = ["N20"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "rest-full-heat" {
    value   = "14 days"
    source  = ["N20"]
    quality = "keeper"
    seen    = "2026-11-28"
  }

  figure "rest-step" {
    value    = "2 to 3 C"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-28"
    disputed = "N20 switches the heat off at once, after the two weeks"
  }

  figure "rest-water" {
    value   = "7 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "rest-first-meal" {
    value   = "3 to 7 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "rest-full-meals" {
    value   = "7 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "rest-age" {
    value   = "1 year"
    source  = ["N20"]
    quality = "keeper"
    seen    = "2026-11-28"
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

  figure "uv-not" {
    value   = "false"
    source  = ["OP18"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Weak ultraviolet light is optional and useful: young made vitamin D3 under 33 to 51 uW/cm2, and all were fed it as well (OP18). It stays in the food."
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

  figure "sac-time" {
    value   = "45 to 65 days"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-28"
    note    = "By the warmth of the incubator."
  }

  figure "brood-size" {
    value   = "2"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "Eggs a clutch, 45 to 65 days; 26 C gives mostly females and about 32.5 C mostly males (as remembered), 34 to 35 C mostly females again, and constant heat over 35 C kills (P44)."
  }

  figure "first-killed" {
    value   = "3 days"
    source  = ["N22"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "After the first shed, about the third day (N22)."
  }

  figure "first-meal" {
    value   = "7 days"
    source  = ["N22"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "From hatching; the limit is common practice."
  }

  figure "wait-after-moult" {
    value   = "0 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "It eats its skin and goes on eating."
  }

  figure "premoult-fast" {
    value   = "1 to 3 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Pale for so long; it goes on eating, or misses a meal or two."
  }

  figure "premoult-look" {
    value   = "5 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Skin that sticks: the moist box, then help."
  }

  figure "premoult-help" {
    value   = "10 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-look" {
    value   = "3 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-look" {
    value   = "4 days"
    stages  = ["juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-look" {
    value   = "7 days"
    stages  = ["subadult", "adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-alarm" {
    value   = "4 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-alarm" {
    value   = "7 days"
    stages  = ["juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-alarm" {
    value   = "14 days"
    stages  = ["subadult", "adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "A loss of a tenth of its weight is for a veterinarian at once."
  }

  figure "fast-help" {
    value   = "7 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-help" {
    value   = "10 days"
    stages  = ["juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-help" {
    value   = "14 days"
    stages  = ["subadult", "adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "weight-loss" {
    value   = "10 %"
    source  = ["N20"]
    quality = "keeper"
    seen    = "2026-11-28"
  }

  figure "unattended" {
    value   = "1 day"
    stages  = ["young", "juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "unattended" {
    value    = "2 days"
    stages   = ["subadult", "adult"]
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-28"
    disputed = "\"reptiles five days\" (keeper texts): too bold"
  }

  figure "unattended-rest" {
    value   = "7 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "settling" {
    value   = "1 to 2 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "settling" {
    value   = "3 to 7 days"
    stages  = ["juvenile", "subadult", "adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "quarantine" {
    value    = "6 weeks"
    source   = ["N21"]
    quality  = "keeper"
    seen     = "2026-11-28"
    disputed = "3 to 6 months (N21)"
    note     = "And a clear test of its droppings."
  }

  figure "quarantine-wild" {
    value   = "60 to 90 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "mites-clear" {
    value   = "6 weeks"
    source  = ["N21"]
    quality = "keeper"
    seen    = "2026-11-28"
    note    = "Of clean looks each week."
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

  state "gravid" {
    care    = "all"
    manner  = "usual"
    rule    = "as ever, with calcium; eggs? do not turn them, log laid"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  state "gravid" {
    care    = "count, substrate"
    manner  = "held"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  state "gravid-late" {
    care    = "all"
    manner  = "usual"
    rule    = "as ever, with calcium; eggs? do not turn them, log laid"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Straining, or visibly gravid for more than six weeks, is for a veterinarian."
  }

  state "sac" {
    care    = "all"
    manner  = "usual"
    is      = "after laying"
    rule    = "as ever, with calcium; eggs to the incubator, never turned"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  state "birth" {
    care    = "all"
    manner  = "usual"
    rule    = "as ever"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "The eggs are in an incubator: there is no brood care."
  }

  state "brood" {
    care    = "all"
    manner  = "usual"
    rule    = "as ever"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "The eggs are in an incubator: there is no brood care."
  }

  state "young-round" {
    care    = "all"
    manner  = "usual"
    rule    = "as ever"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "The eggs are in an incubator: there is no brood care."
  }

  state "after-brood" {
    care    = "all"
    manner  = "usual"
    rule    = "as ever"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "The eggs are in an incubator: there is no brood care."
  }

  state "newborn" {
    care    = "live, killed"
    manner  = "usual"
    from    = "3 days"
    is      = "before the first shed"
    rule    = "no food until the first shed, about the third day"
    source  = ["N22"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  state "premoult" {
    care    = "live, killed"
    manner  = "usual"
    is      = "pale, before a shed"
    rule    = "moist box damp, do not handle"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "It goes on eating."
  }

  state "ill" {
    care    = "live"
    manner  = "usual"
    words   = "one at a time, from tongs"
    rule    = "as the veterinarian says"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  state "rest" {
    care    = "handle"
    manner  = "usual"
    words   = "weigh; a tenth lost ends the rest"
    every   = "7 days"
    rule    = "dish full, a look, weigh each week; no food"
    source  = ["N20"]
    quality = "practice"
    seen    = "2026-11-28"
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
