species "eupalaestrus-campestratus" {
  title    = "pink zebra beauty"
  latin    = "Eupalaestrus campestratus (Simon, 1891)"
  family   = "Theraphosidae"
  type     = "dry-terrestrial-tarantula"
  mistaken = ["Eupalaestrus larae", "Eupalaestrus weijenberghi"]
  note     = "The thinnest evidence of all: most is from memory, or built on Grammostola pulchripes and on grassland kin. E. larae has two stripes and a thick hind leg (T163); E. weijenberghi a white collar and a body of only 3 to 4 cm (T136). It burrows in soil that is damp below."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_target      = "22 to 26 C"
  air                     = "22 to 26 C"
  night                   = "17 to 20 C"
  separation              = "separate"
  substrate_depth_advised = "15 cm"
  keeping                 = "alone"

  figure "temperature-hard" {
    value = "10 to 34 C"
    note  = "A precaution: no lethal figure of this species is known."
  }

  figure "temperature-soft" {
    value = "16 to 30 C"
    note  = "Our margin, a precaution."
  }

  figure "humidity-soft" {
    value = "40 to 80 %"
    note  = "Our margin, a precaution."
  }

  figure "rest" {
    value = "optional"
    note  = "From its grassland kin. The grown only, with the dish full."
  }

  figure "winter-rest" {
    value = "14 to 18 C"
    note  = "From its grassland kin."
  }

  figure "rest-length" {
    value = "6 to 8 weeks"
    note  = "From its grassland kin."
  }

  figure "rest-full-heat" {
    value = "14 days"
    note  = "Our estimate."
  }

  figure "rest-step" {
    value = "2 to 3 C"
    note  = "Our estimate."
  }

  figure "rest-water" {
    value = "2 to 7 days"
    note  = "Our estimate. The dish is never empty."
  }

  figure "rest-first-meal" {
    value = "3 to 7 days"
    note  = "Our estimate."
  }

  figure "rest-full-meals" {
    value = "7 days"
    note  = "Our estimate."
  }

  figure "unattended-rest" {
    value = "14 days"
    note  = "Our estimate."
  }

  figure "humidity-target" {
    value  = "55 to 70 %"
    source = ["T14", "T163"]
    note   = "Its kin live on meadows that do not flood (T14, T163); the figure is ours."
  }

  figure "moisture" {
    value  = "damp"
    source = ["T14", "T163"]
    note   = "Damp below, or one half of the box; the top dry."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["T136"]
    quality = "keeper"
    note    = "Said of its kin E. weijenberghi."
  }

  figure "substrate-depth-min" {
    value  = "12 cm"
    source = ["T136"]
    note   = "12 to 15 cm; its kin burrows (T136)."
  }

  figure "floor-first" {
    value  = "900 cm2"
    stages = ["subadult", "adult"]
  }

  figure "fall-max" {
    value  = "20 cm"
    stages = ["subadult", "adult"]
    note   = "15 cm is better: one leg span."
  }

  figure "length" {
    value    = "6 cm"
    stages   = ["adult"]
    source   = ["memory"]
    quality  = "memory"
    disputed = "8 to 10 cm (T135), which is doubtful"
    note     = "Body."
  }

  figure "span" {
    value    = "12 to 15 cm"
    stages   = ["adult"]
    source   = ["memory"]
    quality  = "memory"
    disputed = "25 cm (T135), far above other texts"
  }

  figure "mass" {
    value  = "10 to 19 g"
    stages = ["adult"]
    note   = "Our estimate, no source: 0.0055 g times the cube of a leg span of 12 to 15 cm."
  }

  figure "lifespan" {
    value   = "15 to 20 years"
    source  = ["memory"]
    quality = "memory"
    note    = "Females; males 5 to 6. It grows slowly."
  }

  figure "sac-time" {
    value  = "5 to 10 weeks"
    source = ["T13"]
    note   = "No figure of this species was found. The window of ground tarantulas in general; never a date. The moults, the mating and the sac of its kin are described (T13), of which only the abstract could be read; kin mate in March and April, the autumn of the south (T14)."
  }

  figure "items-a-week" {
    value  = "0.5 to 0.7"
    stages = ["adult"]
    note   = "One every 10 to 14 days. It may fast for months."
  }

  figure "venom" {
    value  = "mild"
    source = ["T18"]
    note   = "Of 363 bites of tarantulas most were mild and stayed at the place (T18)."
  }

  figure "hairs" {
    value   = "thrown"
    source  = ["memory"]
    quality = "memory"
    note    = "Seldom used; of what type was not found. Goggles for every job inside. A hair in the eye: do not rub, rinse for long, eye doctor, and say that it is a hair of a tarantula (T146)."
  }

  figure "speed" {
    value   = "slow"
    source  = ["memory"]
    quality = "memory"
    note    = "The slowest of the ground tarantulas here."
  }

  figure "defence" {
    value   = "The calmest of the ground tarantulas here."
    source  = ["memory"]
    quality = "memory"
  }

  figure "cites" {
    value = "none"
    note  = "No listing found, 2026-11-28."
  }

  figure "climate-origin" {
    value  = "Grassland of the south of South America: its kin live on meadows that do not flood."
    source = ["T14", "T163"]
  }

  figure "sexing" {
    value  = "Grown males have bulbs on the palps; before that by the shed skin."
    source = ["K85"]
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
    every      = "12 days"
    per_animal = 1
    prey       = "cricket adult"
  }
}
