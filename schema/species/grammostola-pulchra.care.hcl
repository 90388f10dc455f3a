species "grammostola-pulchra" {
  title    = "Brazilian black tarantula"
  latin    = "Grammostola pulchra Mello-Leitão, 1921"
  family   = "Theraphosidae"
  type     = "dry-terrestrial-tarantula"
  also     = ["Brazilian black", "Schwarze Uruguay-Vogelspinne"]
  mistaken = ["Grammostola quirogai", "Uruguayan black"]
  note     = "G. quirogai, described in 2016 (T23), is sold as it and hard to tell (T89). It likes it cooler than most: under 29 C. It webs fallen twigs rather than digs, and yet moves its soil all the time (T90). Grey before a moult, black after (T89)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  night                   = "16 to 20 C"
  winter_rest             = "12 to 18 C"
  rest_length             = "6 to 10 weeks"
  humidity_soft           = "40 to 80 %"
  substrate_depth_min     = "10 cm"
  substrate_depth_advised = "15 cm"
  keeping                 = "alone"
  separation              = "separate"
  speed                   = "slow"
  sexing                  = "Grown males have hooks on the first legs and bulbs on the palps; females and the young by the shed skin."

  figure "temperature-hard" {
    value  = "8 to 34 C"
    source = ["T92"]
    note   = "Precaution: no lethal temperature of this species has been measured. In its country winters go below freezing (T92), and it sits deep then."
  }

  figure "temperature-soft" {
    value = "15 to 29 C"
    note  = "Our margin around the target."
  }

  figure "temperature-target" {
    value    = "21 to 25 C"
    disputed = "21 to 24 C (T88), 24 C on average in the Pampas (T89)"
    note     = "No warm spot is needed."
  }

  figure "air" {
    value    = "21 to 25 C"
    disputed = "21 to 24 C (T88)"
  }

  figure "rest" {
    value  = "optional"
    source = ["T98"]
    note   = "The keeper’s choice, and for the grown only; the dish stays full."
  }

  figure "rest-full-heat" {
    value = "14 days"
    note  = "Our estimate, as for other animals that rest."
  }

  figure "rest-step" {
    value = "2 to 3 C"
    note  = "Our estimate, as for other animals that rest."
  }

  figure "rest-water" {
    value = "7 days"
    note  = "Our estimate. The dish stays full."
  }

  figure "rest-first-meal" {
    value = "3 to 7 days"
    note  = "Our estimate, as for other animals that rest."
  }

  figure "rest-full-meals" {
    value = "7 days"
    note  = "Our estimate, as for other animals that rest."
  }

  figure "unattended-rest" {
    value = "14 days"
    note  = "Our estimate, with a full dish."
  }

  figure "humidity-target" {
    value    = "55 to 70 %"
    disputed = "medium (T88), 64 % in the Pampas (T89), always wet, swampy, 85 to 95 % (T90, after a book)"
  }

  figure "moisture" {
    value = "either"
    note  = "Half of the soil damp below."
  }

  figure "floor-first" {
    value    = "1200 cm2"
    stages   = ["subadult", "adult"]
    disputed = "38 L, three leg spans long (T88)"
  }

  figure "fall-max" {
    value  = "25 cm"
    stages = ["subadult", "adult"]
    note   = "18 to 25 cm from the lid to the substrate; here the upper end."
  }

  figure "length" {
    value    = "6 to 7 cm"
    stages   = ["adult"]
    source   = ["T90", "T91"]
    disputed = "6 cm (T90), 7 cm (T91)"
    note     = "Body."
  }

  figure "span" {
    value    = "14 to 20 cm"
    stages   = ["adult"]
    source   = ["T88", "T89", "T91"]
    disputed = "14 to 19 cm (T88), 15 to 20 cm (T89), 18 cm (T91)"
  }

  figure "mass" {
    value  = "15 to 44 g"
    stages = ["adult"]
    note   = "Our estimate, no weight was found: 0.0055 g times the cube of the leg span in cm."
  }

  figure "growth-factor" {
    value   = "1.38"
    source  = ["T2"]
    quality = "paper"
    note    = "Of Grammostola vachoni, both sexes: 1 to 2 moults a year, males grown at moult 11, with 7 years."
  }

  figure "age-at-maturity" {
    value   = "6 years"
    source  = ["T89"]
    quality = "keeper"
    note    = "Females. At best a leg span of 2.5 cm became one of 7.5 cm in 12 months (T89)."
  }

  figure "lifespan" {
    value    = "20 to 40 years"
    source   = ["T88"]
    quality  = "keeper"
    disputed = "20 years and more (T89)"
    note     = "Females; males 6 years (T88, T89)."
  }

  figure "old-age-male" {
    value    = "12 to 18 months"
    source   = ["T103"]
    quality  = "keeper"
    disputed = "2 to 3 years (T102), 2 to 3 months in the wild (T40, of Aphonopelma chalcodes)"
    note     = "From the last moult, with hooks and bulbs; said of tarantulas in general. Grown males wander: mind the lid."
  }

  figure "sac-time" {
    value  = "5 to 10 weeks"
    source = ["N15", "T46", "T47", "T151"]
    note   = "Not known of this species; of other genera 6 to 7 weeks (T46, T47), 45 to 60 days (T151), and torn open at about six weeks (N15). A window, never a date. Young of G. mollicoma leave the sac without the mother’s help, cut open or not (T15)."
  }

  figure "venom" {
    value   = "mild"
    source  = ["T18"]
    quality = "paper"
    note    = "Of 363 published bites of tarantulas most were mild and local (a preprint)."
  }

  figure "hairs" {
    value  = "thrown"
    source = ["T19", "T20"]
    note   = "Rarely. Types III and IV in the genus (from memory), from which both reported eye cases come. Goggles for cleaning, for taking out the skin and for rehousing: hairs in the cornea meant months of trouble to two keepers of Grammostola rosea (T19, T20). If some get in: do not rub, rinse long, go to an emergency clinic and then to an eye doctor, and say tarantula hairs (T146)."
  }

  figure "defence" {
    value   = "Calm and slow."
    source  = ["T89"]
    quality = "keeper"
  }

  figure "cites" {
    value = "none"
    note  = "No listing found, 2026-11-28."
  }

  figure "climate-origin" {
    value   = "Pampas: 24 C and 64 % on average (T89), with winters below freezing (T92)."
    source  = ["T89", "T92"]
    quality = "keeper"
  }

  care "moisten" {
    task  = "Water one half of the substrate"
    every = "7 days"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "10 days"
    per_animal = 1
    prey       = "cricket adult"
  }
}
