species "eublepharis-macularius" {
  title    = "leopard gecko"
  latin    = "Eublepharis macularius (Blyth, 1854)"
  family   = "Eublepharidae"
  type     = "ground-gecko"
  also     = ["leo"]
  mistaken = ["Coleonyx variegatus"]
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-25"

  venom   = "none"
  defence = "Wash hands: salmonella. The tail drops when held."

  stage "young" {
    note    = "Hatchling, 6.5 to 8.4 cm in all (K107)."
    source  = ["K107"]
    quality = "keeper"
  }

  stage "juvenile" {
    note = "Half grown."
  }

  stage "subadult" {
    note = "Nearly full size, sex plain."
  }

  stage "adult" {
    note = "Full size."
  }

  figure "temperature-hard" {
    value  = "15 to 40 C"
    source = ["K36", "K113"]
    note   = "At the warm surface and in the coolest corner. No lethal temperature was found; common practice."
  }

  figure "temperature-soft" {
    value  = "20 to 36 C"
    source = ["K112", "K36"]
    note   = "Our margin around the target; no source."
  }

  figure "temperature-target" {
    value    = "24 to 34 C"
    source   = ["K109", "K36"]
    disputed = "warm 31 to 33 C and cool 24 to 27 C (K109), air 25 to 26 C with about 30 C under the lamp (K36), 20 to 30 C (K110), 25 to 32 C (K111), basking 32 to 35 C (K108), 35 C by day (K112)"
    note     = "Warm surface 31 to 34 C, cool end 24 to 27 C. The body follows the ground; it prefers warmth to shelter, and dampness decides which hide it takes (N28)."
  }

  figure "warm-spot" {
    value  = "31 to 34 C"
    source = ["K109"]
    seen   = "2026-11-28"
    note   = "The surface under its belly: 28 C is the least with which it digests (our reading)."
  }

  figure "spot-needed" {
    value   = "28 C"
    source  = ["K109"]
    quality = "practice"
    seen    = "2026-11-29"
    note    = "Our reading: the lowest warm place that keepers give is 30 C (K36), less two. With less heat a lizard digests slowly or not at all."
  }

  figure "air" {
    value  = "24 to 27 C"
    source = ["K109"]
    seen   = "2026-11-28"
    note   = "The cool end."
  }

  figure "night" {
    value    = "18 to 22 C"
    source   = ["K36", "K113"]
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
    value  = "optional"
    source = ["N20"]
    seen   = "2026-11-28"
    note   = "Only over a year old, with a fat tail and a clear test of its droppings (N20)."
  }

  figure "rest-length" {
    value  = "6 to 12 weeks"
    source = ["N20"]
    seen   = "2026-11-28"
  }

  figure "rest-full-heat" {
    value   = "14 days"
    source  = ["N20"]
    quality = "keeper"
    seen    = "2026-11-28"
  }

  figure "rest-step" {
    value    = "2 to 3 C"
    seen     = "2026-11-28"
    disputed = "N20 switches the heat off at once, after the two weeks"
  }

  figure "rest-water" {
    value = "7 days"
    seen  = "2026-11-28"
  }

  figure "rest-first-meal" {
    value = "3 to 7 days"
    seen  = "2026-11-28"
  }

  figure "rest-full-meals" {
    value = "7 days"
    seen  = "2026-11-28"
  }

  figure "rest-age" {
    value   = "1 year"
    source  = ["N20"]
    quality = "keeper"
    seen    = "2026-11-28"
  }

  figure "humidity-hard" {
    value = "15 to 90 %"
    note  = "Our estimate, wide: more, by day as well as by night, is wet through."
  }

  figure "humidity-soft" {
    value  = "25 to 80 %"
    source = ["K36"]
    note   = "80 % by night and in the moist box (K36)."
  }

  figure "humidity-target" {
    value    = "30 to 50 %"
    source   = ["K36", "K113"]
    disputed = "40 % by day and up to 80 % at night (K36), 40 to 50 % (K113)"
    note     = "With a moist box always, or skin sticks to the toes (K36)."
  }

  figure "moisture" {
    value  = "arid"
    source = ["K36"]
    note   = "Dry, with a moist box that it can choose."
  }

  figure "substrate-depth-min" {
    value = "0 cm"
    note  = "None is needed; solid flooring will do."
  }

  figure "floor-first" {
    value  = "300 cm2"
    stages = ["young"]
    source = ["G6"]
    note   = "4 x 3 snout-vent lengths (G6, for a pair), with a length of the stage from common practice."
  }

  figure "floor-first" {
    value  = "970 cm2"
    stages = ["juvenile"]
    source = ["G6"]
    note   = "4 x 3 snout-vent lengths (G6, for a pair), with a length of the stage from common practice."
  }

  figure "floor-first" {
    value    = "2700 cm2"
    stages   = ["subadult", "adult"]
    source   = ["K107", "G6"]
    disputed = "52 x 39 cm for a pair of 13 cm (G6), 60 x 30 cm (K107), 90 x 40 cm (K110), 76 L (K109), 38 L (K114), 120 x 60 cm for three (K113)"
    note     = "60 x 45 cm; 90 x 45 cm is advised."
  }

  figure "floor-further" {
    value  = "410 cm2"
    stages = ["subadult", "adult"]
    source = ["G6"]
    note   = "15 % of the floor (G6), here of 2700 cm2."
  }

  figure "height-min" {
    value   = "26 cm"
    stages  = ["subadult", "adult"]
    source  = ["G6"]
    quality = "guideline"
    note    = "Two snout-vent lengths of 13 cm."
  }

  figure "keeping" {
    value    = "groups of one male"
    source   = ["K115"]
    quality  = "keeper"
    disputed = "alone is the default now (common practice); living alone is to be rejected (K115); a pair stresses the female (K113)"
    note     = "Never two males: they kill each other."
  }

  figure "lifestyle" {
    value   = "ground"
    source  = ["K112"]
    quality = "keeper"
  }

  figure "climbs" {
    value   = "no"
    source  = ["K112"]
    quality = "keeper"
    note    = "No toe pads."
  }

  figure "moults-as-adult" {
    value = "true"
    note  = "It sheds every four to eight weeks. Look at toes and tail tip."
  }

  figure "drinks" {
    value    = "dish"
    disputed = "an open dish for two to three hours only, and a spray in the morning (K36)"
  }

  figure "uv-not" {
    value  = "false"
    source = ["OP18"]
    seen   = "2026-11-28"
    note   = "Weak ultraviolet light is optional and useful: young made vitamin D3 under 33 to 51 uW/cm2, and all were fed it as well (OP18). It stays in the food."
  }

  figure "length" {
    value   = "13 cm"
    stages  = ["adult"]
    source  = ["G6"]
    quality = "guideline"
    note    = "Snout to vent, about; 20.5 to 27.5 cm with the tail (K107)."
  }

  figure "mass" {
    value   = "50 to 80 g"
    stages  = ["adult"]
    source  = ["K108"]
    quality = "keeper"
    note    = "Males 60 to 80 g, females 50 to 70 g."
  }

  figure "lifespan" {
    value    = "15 to 20 years"
    source   = ["K107", "K113"]
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
    note    = "Eggs a clutch, 45 to 65 days; 26 C gives mostly females and about 32.5 C mostly males (as remembered), 34 to 35 C mostly females again, and constant heat over 35 C kills (P44)."
  }

  figure "first-killed" {
    value  = "3 days"
    source = ["N22"]
    seen   = "2026-11-28"
    note   = "After the first shed, about the third day (N22)."
  }

  figure "first-meal" {
    value  = "7 days"
    source = ["N22"]
    seen   = "2026-11-28"
    note   = "From hatching; the limit is common practice."
  }

  figure "premoult-look" {
    value = "5 days"
    seen  = "2026-11-28"
    note  = "Skin that sticks: the moist box, then help."
  }

  figure "weight-loss" {
    value   = "10 %"
    source  = ["N20"]
    quality = "keeper"
    seen    = "2026-11-28"
  }

  figure "unattended" {
    value    = "2 days"
    stages   = ["subadult", "adult"]
    seen     = "2026-11-28"
    disputed = "\"reptiles five days\" (keeper texts): too bold"
  }

  figure "unattended-rest" {
    value = "7 days"
    seen  = "2026-11-28"
  }

  figure "settling" {
    value  = "3 to 7 days"
    stages = ["juvenile", "subadult", "adult"]
    seen   = "2026-11-28"
  }

  figure "quarantine" {
    value    = "6 weeks"
    source   = ["N21"]
    quality  = "keeper"
    seen     = "2026-11-28"
    disputed = "3 to 6 months (N21)"
    note     = "And a clear test of its droppings."
  }

  figure "mites-clear" {
    value   = "6 weeks"
    source  = ["N21"]
    quality = "keeper"
    seen    = "2026-11-28"
    note    = "Of clean looks each week."
  }

  figure "substrate-change" {
    value = "6 to 12 months"
    note  = "For a dry set-up."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Germany: no permit (K116). Austria: look up the report within 14 days (K116)."
    source  = ["K116"]
    quality = "keeper"
  }

  figure "climate-origin" {
    value   = "Dry country from Afghanistan to India."
    source  = ["memory"]
    quality = "memory"
  }

  state "gravid" {
    care   = "all"
    manner = "usual"
    rule   = "as ever, with calcium; eggs? do not turn them, log laid"
    seen   = "2026-11-28"
  }

  state "gravid" {
    care   = "count, substrate"
    manner = "held"
    seen   = "2026-11-28"
  }

  state "gravid-late" {
    care   = "all"
    manner = "usual"
    rule   = "as ever, with calcium; eggs? do not turn them, log laid"
    seen   = "2026-11-28"
    note   = "Straining, or visibly gravid for more than six weeks, is for a veterinarian."
  }

  state "sac" {
    care   = "all"
    manner = "usual"
    is     = "after laying"
    rule   = "as ever, with calcium; eggs to the incubator, never turned"
    seen   = "2026-11-28"
  }

  state "birth" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
    note   = "The eggs are in an incubator: there is no brood care."
  }

  state "brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
    note   = "The eggs are in an incubator: there is no brood care."
  }

  state "young-round" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
    note   = "The eggs are in an incubator: there is no brood care."
  }

  state "after-brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
    note   = "The eggs are in an incubator: there is no brood care."
  }

  state "newborn" {
    care   = "live, killed"
    manner = "usual"
    from   = "3 days"
    is     = "before the first shed"
    rule   = "no food until the first shed, about the third day"
    source = ["N22"]
    seen   = "2026-11-28"
  }

  state "premoult" {
    care   = "live, killed"
    manner = "usual"
    is     = "pale, before a shed"
    rule   = "moist box damp, do not handle"
    seen   = "2026-11-28"
    note   = "It goes on eating."
  }

  state "ill" {
    care   = "live"
    manner = "usual"
    words  = "one at a time, from tongs"
    rule   = "as the veterinarian says"
    seen   = "2026-11-28"
  }

  state "rest" {
    care   = "handle"
    manner = "usual"
    words  = "weigh; a tenth lost ends the rest"
    every  = "7 days"
    rule   = "dish full, a look, weigh each week; no food"
    source = ["N20"]
    seen   = "2026-11-28"
  }

  need "look" {
    longest = "1 day"
  }

  need "water" {
    longest  = "2 days"
    disputed = "an open dish for two to three hours only (K36)"
    note     = "A dish is never empty: it is refilled within two days."
  }

  need "moisture" {
    longest = "3 days"
    source  = ["K36"]
    note    = "The moist box never dries out."
  }

  need "food" {
    stages  = ["young"]
    longest = "2 days"
  }

  need "food" {
    stages  = ["juvenile"]
    longest = "4 days"
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "7 days"
    shortest = "2 days"
    severity = "caution"
    note     = "Two to three meals a week are usual."
  }

  need "leftovers" {
    longest = "1 day"
  }

  need "heat" {
    longest = "1 day"
  }

  need "cleaning" {
    longest  = "14 days"
    severity = "caution"
    note     = "Once a week is usual; a missed week is made up in the next."
  }

  need "device-test" {
    longest  = "30 days"
    severity = "caution"
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
