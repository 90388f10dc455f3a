species "opistophthalmus-glabrifrons" {
  title    = "shiny burrowing scorpion"
  latin    = "Opistophthalmus glabrifrons Peters, 1861"
  family   = "Scorpionidae"
  type     = "desert-burrowing-scorpion"
  also     = ["tricolor burrowing scorpion", "yellow-legged creeping scorpion", "Mozambique hissing scorpion"]
  mistaken = ["Opistophthalmus wahlbergii", "Opistophthalmus boehmi"]
  note     = "Thick claws and yet painful: here the rule of thumb fails. Not seen for weeks is its normal state; a look at the door counts as a look, and it is never dug out to be looked at. Wild-caught females are said to do badly, and a mating in captivity is rare (C73). O. wahlbergii, to 9 cm, is sold as tricolor too (C80). Its English names are those of C73 and C79."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "15 to 35 C"
  temperature_target      = "24 to 29 C"
  air                     = "24 to 29 C"
  night                   = "18 to 22 C"
  rest                    = "optional"
  humidity_soft           = "30 to 65 %"
  substrate_depth_min     = "20 cm"
  substrate_depth_advised = "30 cm"
  moults_to_adult         = "6"
  age_at_maturity         = "24 to 40 months"
  gestation_longest       = "20 months"
  on_mother               = "12 to 20 days"
  keeping                 = "alone"
  hairs                   = "none"
  speed                   = "quick"
  rest_full_heat          = "14 days"
  rest_step               = "2 to 3 C"
  rest_first_meal         = "3 to 7 days"
  rest_full_meals         = "7 days"
  rest_water              = "7 to 14 days"
  unattended_rest         = "14 days"

  figure "temperature-hard" {
    value   = "5 to 39 C"
    source  = ["C73"]
    quality = "practice"
    note    = "A precaution: no lethal figure was found. It stands occasional frost in its range (C73)."
  }

  figure "warm-spot" {
    value    = "30 to 33 C"
    source   = ["C80"]
    quality  = "practice"
    disputed = "kin O. wahlbergii: 28 to 32 C by day, one spot of 35 C, by night the room (C80)"
  }

  figure "winter-rest" {
    value = "15 to 18 C"
    note  = "Dry above, faintly damp below: dish and damp are looked after more often than with other desert scorpions; our estimate."
  }

  figure "rest-length" {
    value = "6 to 10 weeks"
  }

  figure "humidity-target" {
    value    = "40 to 55 %"
    source   = ["C80"]
    quality  = "practice"
    disputed = "30 to 50 % for the kin O. wahlbergii (C80)"
  }

  figure "moisture" {
    value   = "damp"
    source  = ["C7", "C80"]
    quality = "practice"
    note    = "Damp below under a dry, warm top: it walks between both (C80). Body water of its family falls at a loss of 5 % of the mass, while the Buthidae hold theirs (C7). One that weighs 5 % less after two weeks of the same meals wants dish and damp looked at first."
  }

  figure "height-min" {
    value  = "35 cm"
    stages = ["subadult", "adult"]
    note   = "The least depth and 15 cm above it."
  }

  figure "floor-first" {
    value  = "700 cm2"
    stages = ["subadult", "adult"]
    note   = "Three lengths long and two wide, of an animal of about 11 cm; our arithmetic."
  }

  figure "gap-max" {
    value  = "6 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["young"]
  }

  figure "length" {
    value    = "9 to 11.5 cm"
    stages   = ["adult"]
    source   = ["C73"]
    quality  = "keeper"
    disputed = "to 15 cm (C73)"
    note     = "With the tail."
  }

  figure "mass" {
    value   = "8 to 15 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value   = "5 to 9 years"
    source  = ["memory"]
    quality = "memory"
  }

  figure "growth-factor" {
    value   = "1.26"
    source  = ["C3"]
    quality = "practice"
    note    = "By theory; none is measured on this species."
  }

  figure "gestation" {
    value   = "9 to 15 months"
    source  = ["memory"]
    quality = "memory"
    note    = "About a year."
  }

  figure "brood-size" {
    value   = "25"
    source  = ["C81"]
    quality = "keeper"
    note    = "At the most, of the kin O. pugnax."
  }

  figure "separation" {
    value = "separate"
    note  = "Those that come up by themselves; the burrow is left alone. Our estimate."
  }

  figure "venom" {
    value    = "painful"
    source   = ["C46", "C47"]
    quality  = "society"
    disputed = "of little medical importance (C47)"
    note     = "Unpleasant signs away from the sting, various and dangerous (C46), no deaths: a precaution. Wash and cool the sting, watch breathing and swelling for an hour; a doctor if anything happens away from the sting, or to a child, or to somebody pregnant, old or ill. Signs of an allergy are an emergency."
  }

  figure "defence" {
    value = "Nervous: hisses, and strikes at the door of its burrow."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Look up South Africa: all Opistophthalmus are on its list of protected species of 2007. Ask for the export papers."
    source  = ["C53"]
    quality = "society"
  }

  figure "climate-origin" {
    value   = "Southern Africa: dry savanna with occasional frost (C73), in burrows of its own in hard soil. Those of two other Opistophthalmus have a platform 2 to 5 cm under the ground by the door, two bends at least, and an end chamber that stays within 2 to 4 K (C9)."
    source  = ["C9", "C73", "memory"]
    quality = "memory"
  }

  figure "sexing" {
    value   = "Males are longer, with a thicker tail."
    source  = ["C73"]
    quality = "keeper"
  }

  need "moisture" {
    longest = "30 days"
    note    = "Water into the deep soil; a watering once a month sets off digging (C80)."
  }

  care "water" {
    every = "2 days"
  }

  care "moisten" {
    every = "21 days"
    task  = "Water the soil below, the top stays dry"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "6 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 1
    prey       = "cricket adult"
  }
}
