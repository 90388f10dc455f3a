species "mastigoproctus-giganteus" {
  title    = "giant vinegaroon"
  latin    = "Mastigoproctus giganteus (Lucas, 1835)"
  family   = "Thelyphonidae"
  type     = "vinegaroon"
  also     = ["whip scorpion", "giant whip scorpion", "vinegaroon"]
  mistaken = ["Mastigoproctus tohono", "Mastigoproctus floridanus"]
  note     = "One species until 2018, seven since (P30), more in Mexico since 2023 (P74): Arizona has tohono, Florida floridanus. Older texts from Florida, such as P31, are about floridanus."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-25"

  substrate_depth_advised = "20 cm"
  venom                   = "none"

  stage "newborn" {
    instars = "1"
    note    = "On the mother, until the next moult."
    source  = ["memory"]
    quality = "memory"
  }

  stage "young" {
    instars = "2"
    note    = "Four nymph stages, then adult, at about one moult a year (P31)."
    source  = ["P31"]
  }

  stage "juvenile" {
    instars = "3 to 4"
    note    = "Four nymph stages, then adult, at about one moult a year (P31)."
    source  = ["P31"]
  }

  stage "subadult" {
    instars = "5"
    note    = "Four nymph stages, then adult, at about one moult a year (P31)."
    source  = ["P31"]
  }

  stage "adult" {
    instars = "6"
    note    = "Four nymph stages, then adult, at about one moult a year (P31)."
    source  = ["P31"]
  }

  figure "temperature-hard" {
    value   = "5 to 33 C"
    source  = ["memory"]
    quality = "memory"
  }

  figure "temperature-soft" {
    value   = "15 to 30 C"
    source  = ["memory"]
    quality = "memory"
    note    = "A margin around the target."
  }

  figure "temperature-target" {
    value   = "20 to 27 C"
    source  = ["memory"]
    quality = "memory"
    note    = "21 to 27 C as remembered."
  }

  figure "air" {
    value   = "20 to 27 C"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-28"
  }

  figure "winter-rest" {
    value   = "10 to 15 C"
    source  = ["memory"]
    quality = "memory"
    note    = "For stock from Arizona."
  }

  figure "rest" {
    value  = "optional"
    source = ["N19"]
    seen   = "2026-11-28"
    note   = "For stock from Arizona, which is sealed in through the winter (N19)."
  }

  figure "rest-length" {
    value = "3 to 6 months"
    seen  = "2026-11-28"
  }

  figure "rest-full-heat" {
    value  = "14 days"
    source = ["N20"]
    seen   = "2026-11-28"
    note   = "Said of geckos; 10 to 14 days in common practice."
  }

  figure "rest-step" {
    value = "2 to 3 C"
    seen  = "2026-11-28"
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

  figure "humidity-soft" {
    value   = "50 to 85 %"
    source  = ["memory"]
    quality = "memory"
    note    = "A margin around the target."
  }

  figure "humidity-target" {
    value   = "60 to 80 %"
    source  = ["memory"]
    quality = "memory"
    note    = "60 to 75 % as remembered: a damp burrow below a surface that may dry."
  }

  figure "moisture" {
    value   = "damp"
    source  = ["memory"]
    quality = "memory"
  }

  figure "substrate-depth-min" {
    value    = "15 cm"
    disputed = "gravel and concrete (K24)"
    note     = "Clay, sand and coir that can hold a tunnel."
  }

  figure "floor-first" {
    value    = "600 cm2"
    stages   = ["subadult", "adult"]
    source   = ["K24"]
    disputed = "21 L for one (K24)"
    note     = "30 x 20 cm."
  }

  figure "keeping" {
    value = "alone, or mother with brood"
    note  = "Adults eat each other."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["memory"]
    quality = "memory"
  }

  figure "hangs-to-moult" {
    value   = "false"
    source  = ["memory"]
    quality = "memory"
    note    = "It seals itself in below ground."
  }

  figure "moults-as-adult" {
    value   = "false"
    source  = ["P31"]
    quality = "paper"
  }

  figure "heater-not" {
    value  = "under"
    source = ["K3"]
    note   = "Said of burrowing scorpions."
  }

  figure "length" {
    value   = "40 to 60 mm"
    stages  = ["adult"]
    source  = ["K75"]
    quality = "keeper"
    note    = "Without the whip."
  }

  figure "mass" {
    value   = "5 to 12 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "moults-to-adult" {
    value   = "5"
    source  = ["P31", "memory"]
    quality = "memory"
    note    = "Four as free nymphs (P31), and the one on the mother (from memory)."
  }

  figure "instar-length" {
    value   = "1 year"
    instar  = 2
    source  = ["P31"]
    quality = "paper"
    note    = "About one moult a year."
  }

  figure "instar-length" {
    value   = "1 year"
    instar  = 3
    source  = ["P31"]
    quality = "paper"
    note    = "About one moult a year."
  }

  figure "instar-length" {
    value   = "1 year"
    instar  = 4
    source  = ["P31"]
    quality = "paper"
    note    = "About one moult a year."
  }

  figure "instar-length" {
    value   = "1 year"
    instar  = 5
    source  = ["P31"]
    quality = "paper"
    note    = "About one moult a year."
  }

  figure "age-at-maturity" {
    value   = "4 years"
    source  = ["P31"]
    quality = "paper"
    note    = "About."
  }

  figure "lifespan" {
    value   = "7 to 10 years"
    source  = ["memory"]
    quality = "memory"
    note    = "A female dies within a year or two of her brood."
  }

  figure "sac-time" {
    value    = "60 to 90 days"
    source   = ["N18"]
    seen     = "2026-11-28"
    disputed = "two to three months (from memory)"
    note     = "N18 speaks of a couple of months in the sac, and of a mother that fasts for several months. Counted in the kin Typopeltis crucifer: 29 to 32 days from laying to hatching (OP4)."
  }

  figure "brood-size" {
    value  = "20 to 40"
    source = ["N18"]
    seen   = "2026-11-28"
    note   = "To 35 and to 40 (N18); the lower figure is from memory. Typopeltis crucifer: 21 to 47 (OP4)."
  }

  figure "on-mother" {
    value  = "29 to 36 days"
    source = ["OP4"]
    seen   = "2026-11-28"
    note   = "Until their moult, as counted in the kin Typopeltis crucifer (OP4); about a month as remembered."
  }

  figure "separation" {
    value = "separate"
    note  = "Adults eat each other; the young ride until their next moult."
  }

  figure "separate-within" {
    value = "3 to 14 days"
    seen  = "2026-11-28"
  }

  figure "undisturbed" {
    value    = "50 days"
    source   = ["OP4", "N18"]
    seen     = "2026-11-28"
    disputed = "30 days (common practice)"
    note     = "From hatching: until 14 days after the young have left her, by the counts of the kin Typopeltis crucifer (OP4); about 90 days from the day on which she seals herself in. Before, from the laying on, she is sealed in with the sac: no digging. She may die after the brood (from memory)."
  }

  figure "wait-after-moult" {
    value  = "7 days"
    stages = ["young", "juvenile"]
    source = ["K55"]
    note   = "As scorpions."
  }

  figure "wait-after-moult" {
    value  = "14 days"
    stages = ["subadult", "adult"]
    source = ["K55"]
    note   = "As scorpions."
  }

  figure "premoult-fast" {
    value  = "1 to 4 months"
    stages = ["young"]
    source = ["N19"]
    seen   = "2026-11-28"
    note   = "Sealed in. N19 found wild ones sealed in for much of the year; the numbers are our reading."
  }

  figure "premoult-fast" {
    value  = "2 to 6 months"
    stages = ["juvenile"]
    source = ["N19"]
    seen   = "2026-11-28"
    note   = "Sealed in. N19 found wild ones sealed in for much of the year; the numbers are our reading."
  }

  figure "premoult-fast" {
    value  = "3 to 9 months"
    stages = ["subadult"]
    source = ["N19"]
    seen   = "2026-11-28"
    note   = "Sealed in. N19 found wild ones sealed in for much of the year; the numbers are our reading."
  }

  figure "premoult-look" {
    value  = "120 days"
    stages = ["young"]
    source = ["N19"]
    seen   = "2026-11-28"
    note   = "Sealed in its cell. N19 found wild ones sealed in for much of the year, up only with the rains of June and July; the number is our reading."
  }

  figure "premoult-look" {
    value  = "180 days"
    stages = ["juvenile"]
    source = ["N19"]
    seen   = "2026-11-28"
    note   = "Sealed in its cell. N19 found wild ones sealed in for much of the year, up only with the rains of June and July; the number is our reading."
  }

  figure "premoult-look" {
    value  = "270 days"
    stages = ["subadult", "adult"]
    source = ["N19"]
    seen   = "2026-11-28"
    note   = "Sealed in its cell. N19 found wild ones sealed in for much of the year, up only with the rains of June and July; the number is our reading."
  }

  figure "premoult-help" {
    value  = "150 days"
    stages = ["young"]
    source = ["N19"]
    seen   = "2026-11-28"
  }

  figure "premoult-help" {
    value  = "210 days"
    stages = ["juvenile"]
    source = ["N19"]
    seen   = "2026-11-28"
  }

  figure "premoult-help" {
    value  = "300 days"
    stages = ["subadult", "adult"]
    source = ["N19"]
    seen   = "2026-11-28"
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["young"]
    seen   = "2026-11-28"
    note   = "Not sealed in; for one that is, the figures of pre-moult hold."
  }

  figure "fast-alarm" {
    value  = "60 days"
    stages = ["juvenile"]
    seen   = "2026-11-28"
    note   = "Not sealed in; for one that is, the figures of pre-moult hold."
  }

  figure "fast-alarm" {
    value  = "180 days"
    stages = ["subadult", "adult"]
    seen   = "2026-11-28"
    note   = "Not sealed in; for one that is, the figures of pre-moult hold."
  }

  figure "items-a-week" {
    value  = "1 to 2"
    stages = ["adult"]
  }

  figure "unattended" {
    value    = "3 days"
    stages   = ["young", "juvenile"]
    disputed = "juveniles 5 days (common practice)"
  }

  figure "unattended" {
    value  = "7 days"
    stages = ["subadult", "adult"]
    seen   = "2026-11-28"
    note   = "10 days with a second dish."
  }

  figure "mites-clear" {
    value = "30 days"
    seen  = "2026-11-28"
    note  = "Of clean looks each week."
  }

  figure "spray" {
    value   = "acid"
    source  = ["K75"]
    quality = "keeper"
  }

  figure "defence" {
    value   = "Sprays about 85 % acetic acid (K75). Protect the eyes; rinse with water."
    source  = ["K75"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Southern USA and Mexico: burrows in dry country, damp below."
    source  = ["P30", "memory"]
    quality = "memory"
  }

  figure "sexing" {
    value   = "Males have the long palps only as adults; inside, the genital bars tell in nymphs 3 and 4."
    source  = ["P31"]
    quality = "paper"
  }

  state "gravid" {
    care   = "dish, clean"
    manner = "usual"
    words  = "look first"
    rule   = "look first: sealed in? do nothing, log laid"
    seen   = "2026-11-28"
  }

  state "gravid-late" {
    care   = "killed"
    manner = "held"
    rule   = "damp soil and water, no food, no digging"
    source = ["N18"]
    seen   = "2026-11-28"
  }

  state "sac" {
    care   = "killed, live"
    manner = "held"
    rule   = "damp soil and water, no food, no digging"
    source = ["N18"]
    seen   = "2026-11-28"
    note   = "She fasts for months, sealed in with the sac."
  }

  state "brood" {
    care   = "killed"
    manner = "held"
    rule   = "damp soil and water, no food, no digging"
    source = ["N18"]
    seen   = "2026-11-28"
  }

  state "young-round" {
    care   = "rehouse"
    manner = "usual"
    words  = "only to take the young out, by the 14th day"
    from   = "3 days"
    seen   = "2026-11-28"
  }

  state "rest" {
    care   = "mist"
    manner = "hatch"
    words  = "keep the soil damp below"
    seen   = "2026-11-28"
  }

  need "look" {
    longest = "1 day"
  }

  need "water" {
    longest = "2 days"
    note    = "A dish is never empty: it is refilled within two days."
  }

  need "moisture" {
    longest = "7 days"
    note    = "The lower layer stays damp."
  }

  need "food" {
    stages   = ["young", "juvenile"]
    longest  = "14 days"
    severity = "caution"
    note     = "It fasts for months before a moult."
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "21 days"
    shortest = "3 days"
    severity = "caution"
    note     = "It fasts for months before a moult."
  }

  need "leftovers" {
    longest = "1 day"
    source  = ["K82"]
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

  figure "prey-length-share" {
    value = "60 %"
    note  = "Our estimate: adult crickets are its usual prey."
  }

  care "mist" {
    off     = true
    because = "a corner of the substrate is watered"
  }

  care "deep-clean" {
    off     = true
    because = "soil that holds a tunnel is changed by part"
  }

  care "moisten" {
    task    = "Water one corner of the substrate"
    every   = "5 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket pinhead"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket adult"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }
}
