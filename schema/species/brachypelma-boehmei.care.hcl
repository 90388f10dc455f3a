species "brachypelma-boehmei" {
  title    = "Mexican fireleg tarantula"
  latin    = "Brachypelma boehmei Schmidt & Klaas, 1993"
  family   = "Theraphosidae"
  type     = "dry-terrestrial-tarantula"
  also     = ["Mexican fireleg", "fireleg", "Mexican rustleg", "rustleg"]
  mistaken = ["Brachypelma baumgarteni", "Brachypelma hamorii", "Brachypelma emilia"]
  note     = "It kicks off hairs far more readily than B. hamorii, for which it is mistaken: goggles even for the dish. B. baumgarteni has brown shins where this one has orange (T154). No woodlice in the box of one that moults (T67)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  winter_rest   = "15 to 18 C"
  humidity_soft = "35 to 75 %"
  keeping       = "alone"
  speed         = "quick"
  sexing        = "Grown males have hooks on the first legs and bulbs on the palps; females and the young by the shed skin."

  figure "temperature-hard" {
    value = "12 to 35 C"
    note  = "Precaution: no lethal temperature of this species has been measured."
  }

  figure "temperature-soft" {
    value = "18 to 31 C"
    note  = "Our margin around the target."
  }

  figure "temperature-target" {
    value    = "22 to 27 C"
    disputed = "20 to 24 C by day (T68)"
    note     = "No warm spot is needed; where there is one, 30 C at the most."
  }

  figure "air" {
    value    = "22 to 27 C"
    disputed = "20 to 24 C by day (T68)"
  }

  figure "night" {
    value    = "18 to 22 C"
    disputed = "18 to 20 C (T68)"
  }

  figure "rest" {
    value  = "optional"
    source = ["T79", "T98"]
    note   = "None is needed. Some cool in winter helps to get a sac (T79); for the grown only, and the dish stays full."
  }

  figure "humidity-target" {
    value    = "50 to 65 %"
    disputed = "40 to 60 % (T68), 60 to 70 % (T69)"
  }

  figure "moisture" {
    value   = "either"
    source  = ["T68"]
    quality = "keeper"
    note    = "Dry on top, the lower layers slightly damp."
  }

  figure "substrate-depth-min" {
    value    = "10 cm"
    source   = ["T68"]
    quality  = "keeper"
    disputed = "7 to 10 cm (T69), two thirds of the height (T67)"
  }

  figure "substrate-depth-advised" {
    value   = "15 cm"
    source  = ["T68"]
    quality = "keeper"
  }

  figure "floor-first" {
    value    = "1200 cm2"
    stages   = ["subadult", "adult"]
    source   = ["T68"]
    quality  = "keeper"
    disputed = "38 L for a juvenile and 76 L for a grown one (T69)"
    note     = "40 x 30 x 30 cm."
  }

  figure "fall-max" {
    value  = "20 cm"
    stages = ["subadult", "adult"]
    note   = "15 to 20 cm from the lid to the substrate; here the upper end."
  }

  figure "length" {
    value    = "6.5 to 7.5 cm"
    stages   = ["adult"]
    source   = ["T67", "T153"]
    quality  = "keeper"
    disputed = "7 cm (T68)"
    note     = "Body."
  }

  figure "span" {
    value    = "12.5 to 15 cm"
    stages   = ["adult"]
    source   = ["T67", "T153"]
    quality  = "keeper"
    disputed = "10 to 13 cm (T69)"
  }

  figure "mass" {
    value  = "11 to 19 g"
    stages = ["adult"]
    note   = "Our estimate, no weight was found: 0.0055 g times the cube of the leg span in cm."
  }

  figure "age-at-maturity" {
    value   = "5 to 9 years"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 5 to 6, females 7 to 9 years. Remarkably slow (T67)."
  }

  figure "lifespan" {
    value    = "25 years"
    source   = ["T67"]
    quality  = "keeper"
    disputed = "females 10 to 20 and males 5 to 10 years (T69), 5 to 15 years (T68)"
    note     = "Females; males 8 years."
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
    note    = "A window, never a date. It pairs in the wet half of the year, summer."
  }

  figure "brood-size" {
    value    = "500"
    source   = ["T79"]
    quality  = "keeper"
    disputed = "several hundred (T70)"
    note     = "About; T79 says it of the genus."
  }

  figure "separation" {
    value  = "separate"
    source = ["T79"]
    note   = "The spiderlings are very small (T79)."
  }

  figure "venom" {
    value   = "mild"
    source  = ["T18"]
    quality = "paper"
    note    = "Of 363 published bites of tarantulas most were mild and local (a preprint)."
  }

  figure "hairs" {
    value   = "thrown"
    source  = ["T67"]
    quality = "keeper"
    note    = "Readily. Type III (T67), and I (from memory). Goggles for cleaning, for taking out the skin and for rehousing: hairs in the cornea meant months of trouble to two keepers of Grammostola rosea (T19, T20). If some get in: do not rub, rinse long, go to an emergency clinic and then to an eye doctor, and say tarantula hairs (T146)."
  }

  figure "defence" {
    value  = "Nervous; it kicks off hairs at the least disturbance."
    source = ["T67"]
  }

  figure "cites" {
    value   = "II"
    source  = ["P53"]
    quality = "paper"
    note    = "The whole genus since 1995."
  }

  figure "law" {
    value  = "European Union Annex B. Keep the paper that proves the origin: in the Union the owner must be able to. Look up the law of Mexico for the genus."
    source = ["T68", "T32", "T11"]
    note   = "T32 says it of Brachypelma smithi."
  }

  figure "climate-origin" {
    value   = "Mexico, and nowhere else. The dry season is at 25 C on average, the wet one at up to 32 C."
    source  = ["T24", "T70"]
    quality = "keeper"
  }

  care "moisten" {
    task   = "Wet one corner, never the animal"
    every  = "5 days"
    source = ["T68"]
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "10 days"
    per_animal = 1
    prey       = "cricket adult"
  }
}
