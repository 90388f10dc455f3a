species "coleonyx-variegatus" {
  title    = "western banded gecko"
  latin    = "Coleonyx variegatus (Baird, 1858)"
  family   = "Eublepharidae"
  type     = "ground-gecko"
  also     = ["banded gecko"]
  mistaken = ["Coleonyx brevis", "Eublepharis macularius"]
  note     = "A leopard gecko at a tenth of the mass: it dries out and chills ten times as fast, takes small prey, and is not handled. It has eyelids and no toe pads; pages that say otherwise are wrong (OK87). Five subspecies: variegatus, abbotti, bogerti, sonoriensis, utahensis. It hunts from two hours after sunset, in the dark (OS25, OP21)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft = "18 to 34 C"
  night            = "18 to 21 C"
  rest_length      = "8 to 10 weeks"
  rest_full_heat   = "14 days"
  rest_step        = "2 to 3 C"
  rest_water       = "7 days"
  rest_first_meal  = "3 to 7 days"
  rest_full_meals  = "7 days"
  rest_age         = "1 year"
  unattended_rest  = "7 days"
  humidity_target  = "20 to 40 %"
  group_max        = "3"
  hairs            = "none"
  speed            = "quick"

  figure "temperature-hard" {
    value = "10 to 40 C"
    note  = "A precaution; the lower end is that of all ground geckos."
  }

  figure "temperature-target" {
    value   = "24 to 32 C"
    source  = ["OK93b"]
    quality = "practice"
    note    = "From the cool end to the warm surface. Banded and leopard geckos seek more warmth towards the evening, the young like the grown (OP20)."
  }

  figure "warm-spot" {
    value   = "29.5 to 32 C"
    source  = ["OK93b"]
    quality = "keeper"
    note    = "The surface over a mat with a thermostat: under the rock and not on it, it is no lizard of the sun."
  }

  figure "air" {
    value    = "24 to 25.5 C"
    source   = ["OK93b"]
    quality  = "keeper"
    disputed = "26.5 C (OK90, weak)"
  }

  figure "rest" {
    value   = "optional"
    source  = ["OP17"]
    quality = "practice"
    note    = "Active from April to October in the wild, some young also in warm spells of winter (OP17). Only over a year old, with a fat tail."
  }

  figure "winter-rest" {
    value   = "12 to 16 C"
    source  = ["OP17"]
    quality = "practice"
  }

  figure "humidity-hard" {
    value = "5 to 75 %"
    note  = "Our estimate, wide: more is wet with no dry part."
  }

  figure "humidity-soft" {
    value = "15 to 60 %"
    note  = "Our margin."
  }

  figure "moisture" {
    value   = "arid"
    source  = ["OK93b"]
    quality = "practice"
    note    = "Dry, with a moist box always, which is also where it lays; a light mist in the evening, since night air is damper (OK93b)."
  }

  figure "uv-not" {
    value    = "false"
    disputed = "not needed, and healthier with it (OK87)"
    note     = "Light for 12 to 14 hours; an index of 0 to 0.7 with hides everywhere (OK92, animals of the shade). Without it vitamin D3 is in the food."
  }

  figure "substrate-depth-min" {
    value = "5 cm"
    note  = "5 to 8 cm of sand and soil; flat stones stand on the base, so that nobody is crushed."
  }

  figure "floor-first" {
    value    = "1800 cm2"
    stages   = ["subadult", "adult"]
    source   = ["OK87"]
    quality  = "practice"
    disputed = "76 x 30 x 30 cm for one to three (OK87)"
    note     = "2300 cm2, 76 x 30 cm, is advised."
  }

  figure "floor-further" {
    value  = "400 cm2"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["young"]
  }

  figure "gap-max" {
    value  = "4 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "keeping" {
    value    = "groups of one male"
    source   = ["OK87"]
    quality  = "keeper"
    disputed = "three males and three females in 76 L (OK93b)"
    note     = "A pair or trio to 38 L; never two males (OK87)."
  }

  figure "length" {
    value   = "5.2 to 7.5 cm"
    stages  = ["adult"]
    source  = ["OP17"]
    quality = "practice"
    note    = "Snout to vent; grown from 52 mm in males and 56 in females (OP17), to 7.5 cm, 10 to 15 cm with the tail (an encyclopedia)."
  }

  figure "length" {
    value  = "2.5 to 3.5 cm"
    stages = ["young"]
    note   = "From hatching on; our estimate."
  }

  figure "mass" {
    value    = "3 to 6 g"
    stages   = ["adult"]
    source   = ["memory"]
    quality  = "memory"
    disputed = "8.5 to 17 g on one page: too high"
  }

  figure "lifespan" {
    value    = "5 to 8 years"
    source   = ["OK89"]
    quality  = "keeper"
    disputed = "6 to 8 (OK88), 15 and more (OK87)"
  }

  figure "age-at-maturity" {
    value   = "1 to 2 years"
    source  = ["OP17", "OS25"]
    quality = "practice"
    note    = "Many within a year, some in the second; the young grow 9.7 mm in a month (OP17)."
  }

  figure "sac-time" {
    value    = "30 to 45 days"
    source   = ["OS25"]
    quality  = "society"
    disputed = "about 45 days (OK89)"
  }

  figure "brood-size" {
    value   = "2"
    source  = ["OP17"]
    quality = "paper"
    note    = "Two or three clutches from April to September, the eggs at times a day apart; sperm is stored (OP17, OS25). Hatchlings come from July to November, and are taken out at once."
  }

  figure "venom" {
    value = "none"
  }

  figure "defence" {
    value   = "It squeaks. Its tail breaks very easily: of the largest wild ones 74.1 % had a broken one (OP17). No handling; the tail is its store of fat."
    source  = ["OP17"]
    quality = "paper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "USA: look up the rules of the state on taking it."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Deserts of the south-western USA and north-western Mexico."
    source  = ["memory"]
    quality = "memory"
  }

  care "calcium" {
    kind  = "other"
    task  = "Calcium dish for laying females; D3 with every third dusting"
    every = "7 days"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "day"
    per_animal = 3
    prey       = "cricket pinhead"
    gut_load   = true
    dusted     = true
    because    = "No longer than one and a half times the width of its head."
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "2 days"
    per_animal = 3
    prey       = "cricket pinhead"
    gut_load   = true
    dusted     = true
    because    = "No longer than one and a half times the width of its head."
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "3 days"
    per_animal = 3
    prey       = "cricket small"
    gut_load   = true
    dusted     = true
    because    = "No longer than one and a half times the width of its head."
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "3 days"
    per_animal = 4
    prey       = "cricket small"
    gut_load   = true
    dusted     = true
    because    = "No longer than one and a half times the width of its head."
  }
}
