species "mastigoproctus-giganteus" {
  title  = "giant vinegaroon"
  latin  = "Mastigoproctus giganteus (Lucas, 1835)"
  family = "Thelyphonidae"
  also   = ["whip scorpion", "giant whip scorpion", "Mastigoproctus tohono", "Mastigoproctus floridanus"]
  note   = "One species until 2018, seven since (P30), more in Mexico since 2023 (P74): Arizona has tohono, Florida floridanus. Older texts from Florida, such as P31, are about floridanus."

  stage "newborn" {
    instars = "1"
    note    = "On the mother, until the next moult."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  stage "young" {
    instars = "2"
    note    = "Four nymph stages, then adult, at about one moult a year (P31)."
    source  = ["P31"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  stage "juvenile" {
    instars = "3 to 4"
    note    = "Four nymph stages, then adult, at about one moult a year (P31)."
    source  = ["P31"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  stage "subadult" {
    instars = "5"
    note    = "Four nymph stages, then adult, at about one moult a year (P31)."
    source  = ["P31"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  stage "adult" {
    instars = "6"
    note    = "Four nymph stages, then adult, at about one moult a year (P31)."
    source  = ["P31"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "temperature-hard" {
    value   = "5 to 33 C"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "temperature-soft" {
    value   = "15 to 30 C"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "A margin around the target."
  }

  figure "temperature-target" {
    value   = "20 to 27 C"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "21 to 27 C as remembered."
  }

  figure "winter-rest" {
    value   = "10 to 15 C"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "For stock from Arizona."
  }

  figure "humidity-soft" {
    value   = "50 to 85 %"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "A margin around the target."
  }

  figure "humidity-target" {
    value   = "60 to 80 %"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "60 to 75 % as remembered: a damp burrow below a surface that may dry."
  }

  figure "moisture" {
    value   = "damp"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "substrate-depth-min" {
    value    = "15 cm"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "gravel and concrete (K24)"
    note     = "Clay, sand and coir that can hold a tunnel."
  }

  figure "substrate-depth-advised" {
    value   = "20 cm"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "floor-first" {
    value    = "600 cm2"
    source   = ["K24"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "21 L for one (K24)"
    note     = "30 x 20 cm."
  }

  figure "keeping" {
    value   = "alone, or mother with brood"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Adults eat each other."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "climbs" {
    value   = "seams"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "lid" {
    value   = "latched"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "hangs-to-moult" {
    value   = "false"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "It seals itself in below ground."
  }

  figure "moults-as-adult" {
    value   = "false"
    source  = ["P31"]
    quality = "paper"
    seen    = "2026-11-25"
  }

  figure "drinks" {
    value   = "dish"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "heater-not" {
    value   = "under"
    source  = ["K3"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Said of burrowing scorpions."
  }

  figure "length" {
    value   = "40 to 60 mm"
    stages  = ["adult"]
    source  = ["K75"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "Without the whip."
  }

  figure "mass" {
    value   = "5 to 12 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "moults-to-adult" {
    value   = "5"
    source  = ["P31", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "Four as free nymphs (P31), and the one on the mother (from memory)."
  }

  figure "instar-length" {
    value   = "1 year"
    instar  = 2
    source  = ["P31"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "About one moult a year."
  }

  figure "instar-length" {
    value   = "1 year"
    instar  = 3
    source  = ["P31"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "About one moult a year."
  }

  figure "instar-length" {
    value   = "1 year"
    instar  = 4
    source  = ["P31"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "About one moult a year."
  }

  figure "instar-length" {
    value   = "1 year"
    instar  = 5
    source  = ["P31"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "About one moult a year."
  }

  figure "age-at-maturity" {
    value   = "4 years"
    source  = ["P31"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "About."
  }

  figure "lifespan" {
    value   = "7 to 10 years"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "A female dies within a year or two of her brood."
  }

  figure "brood-size" {
    value   = "20 to 40"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "In a sac below the body; she is sealed in for two to three months."
  }

  figure "separation" {
    value   = "separate"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Adults eat each other; the young ride until their next moult."
  }

  figure "undisturbed" {
    value   = "90 days"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "She is sealed in with the eggs for two to three months: no digging."
  }

  figure "wait-after-moult" {
    value   = "7 days"
    stages  = ["young", "juvenile"]
    source  = ["K55"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As scorpions."
  }

  figure "wait-after-moult" {
    value   = "14 days"
    stages  = ["subadult", "adult"]
    source  = ["K55"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As scorpions."
  }

  figure "handling-wait" {
    value   = "14 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "fast-alarm" {
    value   = "180 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Before a moult it seals itself in and fasts for weeks to months (from memory)."
  }

  figure "items-a-week" {
    value   = "1 to 2"
    stages  = ["adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "unattended" {
    value   = "3 days"
    stages  = ["young", "juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "unattended" {
    value   = "7 days"
    stages  = ["subadult", "adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Common practice is 7 to 10 days."
  }

  figure "venom" {
    value   = "none"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "defence" {
    value   = "Sprays about 85 % acetic acid (K75). Protect the eyes; rinse with water."
    source  = ["K75"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "climate-origin" {
    value   = "Southern USA and Mexico: burrows in dry country, damp below."
    source  = ["P30", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "sexing" {
    value   = "Males have the long palps only as adults; inside, the genital bars tell in nymphs 3 and 4."
    source  = ["P31"]
    quality = "paper"
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
    longest = "2 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "A dish is never empty: it is refilled within two days."
  }

  need "moisture" {
    longest = "7 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "The lower layer stays damp."
  }

  need "food" {
    stages   = ["young", "juvenile"]
    longest  = "14 days"
    severity = "caution"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    note     = "It fasts for months before a moult."
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "21 days"
    shortest = "3 days"
    severity = "caution"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    note     = "It fasts for months before a moult."
  }

  need "leftovers" {
    longest = "1 day"
    source  = ["K82"]
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
    every   = "2 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "moisten" {
    task    = "Water one corner of the substrate"
    every   = "5 days"
    source  = ["practice"]
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

  care "device-test" {
    every   = "30 days"
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

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket small"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket medium"
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
