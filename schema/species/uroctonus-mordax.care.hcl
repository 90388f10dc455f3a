species "uroctonus-mordax" {
  title    = "western forest scorpion"
  latin    = "Uroctonus mordax Thorell, 1876"
  family   = "Vaejovidae"
  type     = "tropical-burrowing-scorpion"
  also     = ["California forest scorpion", "mordant scorpion"]
  mistaken = ["Euscorpius", "Pseudouroctonus"]
  note     = "Of its type for the damp only: it is an animal of cool forest, and an unheated room is the plan; a cool room to the north suits it all year. The family is Vaejovidae or Chactidae by author (C114)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "10 to 26 C"
  air                     = "17 to 23 C"
  night                   = "12 to 18 C"
  rest_length             = "4 to 8 weeks"
  rest_full_heat          = "14 days"
  rest_step               = "2 to 3 C"
  rest_water              = "14 days"
  rest_first_meal         = "3 to 7 days"
  rest_full_meals         = "7 days"
  humidity_soft           = "65 to 95 %"
  humidity_target         = "75 to 85 %"
  substrate_depth_advised = "10 cm"
  growth_factor           = "1.26"
  unattended_rest         = "21 days"
  hairs                   = "none"
  speed                   = "quick"
  group_max               = "5"

  figure "temperature-hard" {
    value   = "2 to 30 C"
    source  = ["C118"]
    quality = "practice"
    note    = "The lower end is a precaution: it lives in Oregon, and up to 2000 m (C118). No lethal temperature was found; heat is what is feared."
  }

  figure "temperature-target" {
    value    = "17 to 23 C"
    source   = ["C113"]
    quality  = "practice"
    disputed = "room temperature, a little on the cooler side (C113); bred at an unregulated 24 to 26 C (C116)"
    note     = "It needs no warm spot."
  }

  figure "winter-rest" {
    value = "4 to 10 C"
  }

  figure "rest" {
    value    = "optional"
    source   = ["C113"]
    quality  = "practice"
    disputed = "some refrigerate it for weeks to a month (C113)"
    note     = "No meals in it."
  }

  figure "moisture" {
    value = "damp"
    note  = "With rotting wood in it."
  }

  figure "substrate-depth-min" {
    value = "7 cm"
    note  = "With flat bark and wood on it; no softwood with resin (C113)."
  }

  figure "floor-first" {
    value  = "200 cm2"
    stages = ["subadult", "adult"]
    note   = "Six times the square of 5.5 cm is 180 cm2: three lengths long and two wide (C139); our arithmetic."
  }

  figure "floor-further" {
    value  = "80 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "15 cm"
    stages = ["subadult", "adult"]
  }

  figure "keeping" {
    value   = "groups"
    source  = ["C113", "C116"]
    quality = "keeper"
    note    = "Of one size, with a hide for each; gravid females each alone. Four wild females lived within 3 m, and pairs passed the dividers without fights (C116)."
  }

  figure "gap-max" {
    value  = "1.5 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
  }

  figure "length" {
    value    = "5 to 6.4 cm"
    stages   = ["adult"]
    source   = ["C114", "C117"]
    quality  = "keeper"
    disputed = "about 5 cm (C114), to 6.4 cm (C117)"
  }

  figure "mass" {
    value   = "1 to 2 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "moults-to-adult" {
    value   = "6"
    source  = ["C34"]
    quality = "paper"
    note    = "Seven instars, as estimated there."
  }

  figure "age-at-maturity" {
    value   = "24 months"
    source  = ["C113"]
    quality = "keeper"
    note    = "At the latest."
  }

  figure "lifespan" {
    value    = "3 to 4 years"
    source   = ["C113"]
    quality  = "keeper"
    disputed = "about 10 years, a guess (C55)"
  }

  figure "gestation" {
    value   = "11 to 13 months"
    source  = ["memory"]
    quality = "memory"
    note    = "About a year; the births that were dated fell on 10 to 17 July of two years (C115, C116)."
  }

  figure "gestation-longest" {
    value = "18 months"
    note  = "Our estimate."
  }

  figure "brood-size" {
    value    = "16 to 36"
    source   = ["C115", "C117"]
    quality  = "keeper"
    disputed = "more than 16 (C115), up to three dozen (C117)"
  }

  figure "on-mother" {
    value   = "10 days"
    source  = ["C115"]
    quality = "keeper"
    note    = "One mother sealed herself in (C116)."
  }

  figure "dispersal" {
    value   = "3 to 8 days"
    source  = ["C115"]
    quality = "keeper"
    note    = "The first left on day 13 after the birth, all but three were off by day 18. The first meal 3 to 7 days after that is common practice."
  }

  figure "separation" {
    value = "separate"
    note  = "Our estimate; nothing was found."
  }

  figure "prey-length-share" {
    value  = "50 %"
    stages = ["subadult", "adult"]
  }

  figure "venom" {
    value   = "mild"
    source  = ["C55"]
    quality = "society"
    note    = "Milder than a honey bee (C55), 1 of 5 to keepers (C113). Wash, cool, watch breathing and swelling for an hour; an allergy is an emergency."
  }

  figure "defence" {
    value = "Plays dead, then runs."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Look up the rules of states and parks of the USA for collecting."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Forest of the western USA, in Oregon up to 2000 m."
    source  = ["C118"]
    quality = "keeper"
  }

  figure "sexing" {
    value   = "Males are smaller and duller."
    source  = ["C118"]
    quality = "keeper"
  }

  care "mist" {
    every = "3 days"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 1
    rotate     = ["fruit-fly hydei", "cricket pinhead"]
    killed     = true
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket small"
  }
}
