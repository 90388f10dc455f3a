species "brachypelma-emilia" {
  title    = "Mexican redleg tarantula"
  latin    = "Brachypelma emilia (White, 1856)"
  family   = "Theraphosidae"
  type     = "dry-terrestrial-tarantula"
  also     = ["Mexican redleg", "redleg", "Orangebein-Vogelspinne", "Rotbein-Vogelspinne"]
  mistaken = ["Brachypelma boehmei", "Brachypelma smithi", "Brachypelma hamorii"]
  note     = "A black triangle on the front of the carapace tells it from B. boehmei, B. hamorii and B. smithi (T72, T76). A bald patch is usual, and no sign of a moult until it turns dark. One that is buried digs itself out, as in ploughed fields (T76): what has vanished is rarely dead."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  air                     = "22 to 28 C"
  night                   = "18 to 22 C"
  winter_rest             = "15 to 18 C"
  humidity_soft           = "40 to 75 %"
  substrate_depth_advised = "15 cm"
  keeping                 = "alone"
  separation              = "separate"
  speed                   = "slow"
  sexing                  = "Grown males have hooks on the first legs and bulbs on the palps; females and the young by the shed skin."

  figure "temperature-hard" {
    value = "12 to 35 C"
    note  = "Precaution: no lethal temperature of this species has been measured."
  }

  figure "temperature-soft" {
    value = "17 to 31 C"
    note  = "Our margin around the target."
  }

  figure "temperature-target" {
    value    = "22 to 28 C"
    disputed = "kept at 26.5 to 29.5 C, and 15.5 to 29.5 C allowed (T73)"
    note     = "No warm spot is needed."
  }

  figure "rest" {
    value  = "optional"
    source = ["T98"]
    note   = "None is needed; for the grown only, and the dish stays full."
  }

  figure "humidity-target" {
    value    = "50 to 65 %"
    disputed = "50 to 70 % (T73), over 65 % and never under 55 % (T74)"
  }

  figure "moisture" {
    value   = "either"
    source  = ["T73"]
    quality = "keeper"
    note    = "Dry, with the hide or a corner wetted now and then."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["T75"]
    quality = "keeper"
    note    = "Its burrows in the wild are 20 cm to 1 m long."
  }

  figure "substrate-depth-min" {
    value    = "10 cm"
    disputed = "5 cm (T74)"
  }

  figure "floor-first" {
    value    = "900 cm2"
    stages   = ["subadult", "adult"]
    source   = ["T74"]
    quality  = "keeper"
    disputed = "19 to 38 L (T73)"
    note     = "30 x 30 x 30 cm (T74). 900 to 1200 cm2."
  }

  figure "fall-max" {
    value  = "22 cm"
    stages = ["subadult", "adult"]
    note   = "16 to 22 cm from the lid to the substrate; here the upper end."
  }

  figure "length" {
    value   = "5 to 7 cm"
    stages  = ["adult"]
    source  = ["T77", "T76"]
    quality = "keeper"
    note    = "Body: females 6 to 7 cm, males 5 to 6 cm."
  }

  figure "span" {
    value    = "12.5 to 16.5 cm"
    stages   = ["adult"]
    source   = ["T72", "T73", "T78"]
    disputed = "12.5 cm (T78), 15 to 16.5 cm (T72, T73)"
  }

  figure "mass" {
    value   = "15 to 16 g"
    stages  = ["adult"]
    source  = ["T78"]
    quality = "keeper"
  }

  figure "age-at-maturity" {
    value  = "7 years"
    source = ["T74"]
    note   = "A leg span of 2.5 cm became one of 12.5 cm in 7 years (T74)."
  }

  figure "lifespan" {
    value    = "20 to 25 years"
    source   = ["T77", "T72"]
    quality  = "keeper"
    disputed = "20 years (T77), 25 years (T72)"
    note     = "Females; males about 4 years (T72)."
  }

  figure "old-age-male" {
    value    = "12 to 18 months"
    source   = ["T103"]
    quality  = "keeper"
    disputed = "2 to 3 years (T102), 2 to 3 months in the wild (T40, of Aphonopelma chalcodes)"
    note     = "From the last moult, with hooks and bulbs; said of tarantulas in general. Grown males wander: mind the lid."
  }

  figure "sac-time" {
    value   = "6 to 10 weeks"
    source  = ["memory"]
    quality = "memory"
    note    = "A window, never a date."
  }

  figure "brood-size" {
    value   = "500"
    source  = ["T79"]
    quality = "keeper"
    note    = "About; T79 says it of the genus."
  }

  figure "venom" {
    value   = "mild"
    source  = ["T18"]
    quality = "paper"
    note    = "Of 363 published bites of tarantulas most were mild and local (a preprint)."
  }

  figure "hairs" {
    value   = "thrown"
    source  = ["T73", "T76"]
    quality = "keeper"
    note    = "More irritating than those of other Brachypelma (T73); it also lines its burrow with them (T76). Goggles for cleaning, for taking out the skin and for rehousing: hairs in the cornea meant months of trouble to two keepers of Grammostola rosea (T19, T20). If some get in: do not rub, rinse long, go to an emergency clinic and then to an eye doctor, and say tarantula hairs (T146)."
  }

  figure "defence" {
    value   = "Calm, but for the hairs."
    source  = ["T73"]
    quality = "keeper"
  }

  figure "cites" {
    value    = "II"
    source   = ["P53"]
    quality  = "paper"
    disputed = "since 1994 (T77)"
    note     = "The whole genus since 1995 (P53)."
  }

  figure "law" {
    value  = "Keep the paper that proves the origin: in the European Union the owner must be able to. Look up Annex B of the Union, and the law of Mexico for the genus."
    source = ["T32", "T11"]
    note   = "T32 says it of Brachypelma smithi; the Annex is from memory."
  }

  figure "climate-origin" {
    value    = "Mexico: Durango and Nayarit."
    source   = ["T76"]
    quality  = "keeper"
    disputed = "Sinaloa and Sonora (T77)"
  }

  care "moisten" {
    task   = "Wet the hide or one corner"
    every  = "7 days"
    source = ["T73"]
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "10 days"
    per_animal = 1
    prey       = "cricket adult"
  }
}
