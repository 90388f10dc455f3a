species "centruroides-vittatus" {
  title    = "striped bark scorpion"
  latin    = "Centruroides vittatus (Say, 1821)"
  family   = "Buthidae"
  type     = "bark-scorpion"
  also     = ["Arizona bark", "Arizona-Rindenskorpion"]
  mistaken = ["Centruroides hentzi", "Centruroides sculpturatus"]
  note     = "German shops call it the Arizona bark scorpion, which is wrong (C66): that is C. sculpturatus, a danger to life. A label that says Arizona bark asks for a look at the stripes and the dark triangle (C96). The only one of its kin that is proven to survive freezing; a rest is still for adults only, and dry."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "15 to 35 C"
  warm_spot               = "30 to 33 C"
  air                     = "24 to 28 C"
  winter_rest             = "8 to 14 C"
  rest_length             = "8 to 12 weeks"
  rest_full_heat          = "14 days"
  rest_step               = "2 to 3 C"
  rest_water              = "14 to 30 days"
  rest_first_meal         = "3 to 7 days"
  rest_full_meals         = "7 days"
  unattended_rest         = "21 days"
  humidity_soft           = "25 to 65 %"
  humidity_target         = "40 to 55 %"
  substrate_depth_advised = "5 cm"
  growth_factor           = "1.25 to 1.3"
  hairs                   = "none"
  speed                   = "very quick"
  group_max               = "8"

  figure "temperature-hard" {
    value   = "0 to 40 C"
    source  = ["C14", "C17", "C98"]
    quality = "practice"
    note    = "Both ends are a precaution. It freezes just below 0 C and most recover: ice nuclei in the gut, no antifreeze (C17); 24 h at -6 C kill about 55 %, at -17 C all (C98). Heat: of the kin C. hentzi half died at 43.7 C in dry air (12 %) and 45.1 C at 72 %, and at -4.5 and -4.7 C (C14)."
  }

  figure "temperature-target" {
    value   = "24 to 28 C"
    source  = ["C99"]
    quality = "keeper"
    note    = "While active it prefers to be warm, and runs and stings faster then (C16)."
  }

  figure "night" {
    value    = "18 to 24 C"
    disputed = "3 K below the day (C99)"
  }

  figure "rest" {
    value = "optional"
    note  = "Adults only, and dry."
  }

  figure "humidity-hard" {
    value = "0 to 85 %"
    note  = "Our estimate, wide: more is wet with no dry part."
  }

  figure "moisture" {
    value = "arid"
    note  = "With one damp corner."
  }

  figure "floor-first" {
    value  = "250 cm2"
    stages = ["subadult", "adult"]
  }

  figure "floor-further" {
    value  = "60 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value   = "20 cm"
    stages  = ["subadult", "adult"]
    source  = ["C66"]
    quality = "practice"
    note    = "Stacked bark, and stones with a roof of bark (C66)."
  }

  figure "keeping" {
    value    = "groups"
    source   = ["C66"]
    quality  = "practice"
    disputed = "one was eaten all the same (C66)"
    note     = "Of one size and well fed, with caution."
  }

  figure "gap-max" {
    value   = "1 mm"
    source  = ["C104"]
    quality = "practice"
    note    = "Its kin C. sculpturatus gets through 1.6 mm (C104). A smooth rim or a band of grease helps (C102)."
  }

  figure "looks" {
    value   = "Two dark stripes along the back, and a dark triangle above the eyes."
    stages  = ["adult"]
    source  = ["C96"]
    quality = "keeper"
    note    = "Where the stripes and the triangle are missing it may be C. sculpturatus, a danger to life. That the stripes are two is from memory."
  }

  figure "length" {
    value    = "5 to 7 cm"
    stages   = ["adult"]
    source   = ["C96"]
    quality  = "practice"
    disputed = "rarely over 6 cm, to 7 cm (C96)"
    note     = "The lower end is our estimate."
  }

  figure "mass" {
    value   = "0.8 to 1.5 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "moults-to-adult" {
    value   = "5 to 6"
    source  = ["C2"]
    quality = "practice"
    note    = "Six or seven instars, as its kin C. gracilis (C2); a thesis exists, of which only the title was seen (C36)."
  }

  figure "age-at-maturity" {
    value    = "10 to 24 months"
    source   = ["C2"]
    quality  = "practice"
    disputed = "235 to 302 days in its kin C. gracilis (C2)"
  }

  figure "lifespan" {
    value    = "3 to 5 years"
    disputed = "20 years, not credible (C99)"
    note     = "The figure of keepers."
  }

  figure "gestation" {
    value   = "8 months"
    source  = ["C96"]
    quality = "keeper"
    note    = "More than one litter a year may be possible (from memory)."
  }

  figure "gestation-longest" {
    value = "12 months"
    note  = "Our estimate."
  }

  figure "brood-size" {
    value    = "13 to 47"
    source   = ["C97"]
    quality  = "keeper"
    disputed = "31 on average (C97), up to 50 (C96)"
  }

  figure "on-mother" {
    value   = "5 to 10 days"
    source  = ["memory"]
    quality = "memory"
  }

  figure "separation" {
    value = "separate"
    note  = "By size, not by date."
  }

  figure "prey-length-share" {
    value  = "66 %"
    stages = ["subadult", "adult"]
  }

  figure "venom" {
    value    = "painful"
    source   = ["C96"]
    quality  = "keeper"
    disputed = "only mildly venomous (C66)"
    note     = "Strong pain for 15 to 20 minutes, numb for up to 2 or 3 days; deaths are rare and were put down to allergy (C96). Wash, cool, watch breathing and swelling for an hour; a doctor where anything happens away from the sting, and for children, the pregnant, the old and the ill; an allergy is an emergency."
  }

  figure "defence" {
    value   = "Fast; climbs, and clings upside down under bark: look at the underside before a hand goes there."
    source  = ["C66"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Germany: look up the law of the state; the genus is on the lists of Bavaria and Berlin (C140), and Hesse has a list too (C141). Great Britain: look up the schedule of dangerous wild animals (the family Buthidae, from memory)."
    source  = ["C140", "C141", "memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Under bark and stones. It survives freezing, which only adults are asked for, and dry."
    source  = ["C17", "C66"]
    quality = "practice"
  }

  need "moisture" {
    longest  = "10 days"
    severity = "caution"
    note     = "Our estimate: the damp corner is wetted once a week, and a dish is always full."
  }

  care "mist" {
    every = "7 days"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket small"
  }
}
