species "pamphobeteus-antinous" {
  title    = "Bolivian steely-blue-leg birdeater"
  latin    = "Pamphobeteus antinous Pocock, 1903"
  family   = "Theraphosidae"
  type     = "humid-terrestrial-tarantula"
  also     = ["Peruvian steely-blue-leg birdeater", "Peruvian blue-foot giant"]
  mistaken = ["Pamphobeteus nigricolor", "Pamphobeteus insignis", "Pamphobeteus ultramarinus", "Pamphobeteus sp. machala", "Pamphobeteus sp. platyomma"]
  note     = "Little is known of this species: most of this sheet is from memory or from its kin. Labels of this genus are unsafe (T125, T160). Dry soil and heat over 29 C harm it sooner than any other here, as remembered; ask for paper of origin."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_target      = "23 to 27 C"
  night                   = "20 to 22 C"
  humidity_target         = "70 to 80 %"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  separation              = "separate"
  speed                   = "quick"
  substrate_depth_advised = "15 cm"

  figure "temperature-hard" {
    value = "16 to 33 C"
    note  = "A precaution: no lethal figure of this species is known."
  }

  figure "temperature-soft" {
    value = "20 to 29 C"
    note  = "Our margin, a precaution."
  }

  figure "humidity-soft" {
    value = "60 to 90 %"
    note  = "Our margin, a precaution."
  }

  figure "air" {
    value    = "23 to 27 C"
    disputed = "22 to 25 C (T143), 24 to 26 C (T101) for tarantulas in general"
  }

  figure "moisture" {
    value = "damp"
    note  = "Never dry through."
  }

  figure "drinks" {
    value = "dish"
    note  = "A large one."
  }

  figure "floor-first" {
    value    = "1600 cm2"
    stages   = ["subadult", "adult"]
    source   = ["T144"]
    disputed = "30 x 40 cm (T143) or 40 x 40 cm (T144) for large ground kinds"
  }

  figure "fall-max" {
    value  = "28 cm"
    stages = ["subadult", "adult"]
    note   = "22 cm is better: one leg span."
  }

  figure "length" {
    value    = "8 to 10 cm"
    stages   = ["adult"]
    source   = ["memory"]
    quality  = "memory"
    disputed = "7 to 9 cm for the genus, 7 to 8 cm of P. nigricolor, 8 to 9 cm of P. insignis (T125)"
    note     = "Body."
  }

  figure "span" {
    value    = "20 to 23 cm"
    stages   = ["adult"]
    source   = ["memory"]
    quality  = "memory"
    disputed = "25 cm of P. nigricolor, 19 to 21.6 cm of P. insignis (T125)"
  }

  figure "mass" {
    value  = "44 to 67 g"
    stages = ["adult"]
    note   = "Our estimate, no source: 0.0055 g times the cube of a leg span of 20 to 23 cm."
  }

  figure "lifespan" {
    value   = "12 to 15 years"
    source  = ["memory"]
    quality = "memory"
    note    = "Females; males 3 to 4."
  }

  figure "age-at-maturity" {
    value   = "18 to 36 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 18 to 30 months, females 3 years."
  }

  figure "sac-time" {
    value   = "7 to 9 weeks"
    source  = ["memory"]
    quality = "memory"
  }

  figure "brood-size" {
    value   = "60 to 150"
    source  = ["memory"]
    quality = "memory"
    note    = "Large slings, fewer than in Lasiodora."
  }

  figure "items-a-week" {
    value  = "0.7 to 2"
    stages = ["adult"]
    note   = "One or two large items every 7 to 10 days. It may fast for weeks."
  }

  figure "keeping" {
    value    = "alone"
    disputed = "kin in Peru without a name live with a small frog (T125)"
    note     = "That is no licence to mix."
  }

  figure "venom" {
    value    = "painful"
    disputed = "mild to painful (common practice)"
    note     = "Large fangs; the more careful word."
  }

  figure "hairs" {
    value   = "thrown"
    source  = ["T125"]
    quality = "keeper"
    note    = "Goggles for every job inside. A hair in the eye: do not rub, rinse for long, eye doctor, and say that it is a hair of a tarantula (T146)."
  }

  figure "defence" {
    value  = "Defends itself; it stridulates."
    source = ["T125"]
    note   = "The organs are from T125."
  }

  figure "cites" {
    value   = "III"
    source  = ["memory"]
    quality = "memory"
    note    = "Bolivia is said to have listed several of its tarantulas, this one among them. Not found in a text: look it up before you rely on it."
  }

  figure "law" {
    value   = "Peru lists it as vulnerable and protects it: look up D.S. 004-2014-MINAGRI. Keep the paper that proves the origin."
    source  = ["T31"]
    quality = "guideline"
  }

  figure "climate-origin" {
    value   = "Bolivia and Peru, as its names in the trade say."
    source  = ["T125"]
    quality = "keeper"
  }

  figure "sexing" {
    value  = "Grown males have bulbs on the palps; before that by the shed skin."
    source = ["K85"]
  }

  need "moisture" {
    longest = "4 days"
    note    = "Misted two or three times a week."
  }

  care "mist" {
    every = "3 days"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket adult"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 1
    prey       = "roach medium"
  }
}
