species "parabuthus-transvaalicus" {
  title    = "South African thick-tailed scorpion"
  latin    = "Parabuthus transvaalicus Purcell, 1899"
  family   = "Buthidae"
  type     = "desert-burrowing-scorpion"
  also     = ["Transvaal thick-tailed scorpion", "South African thick-tail", "giant deathstalker", "black thick-tail"]
  mistaken = ["Parabuthus villosus black morph"]
  note     = "A danger to life, and it sprays venom: to look into the box is a risk, not only to reach in. Goggles and long tools at every opening. The black form of P. villosus is hairier, active by day, and has darker comb teeth. Fat animals die early: it eats all that it gets (C129)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "16 to 37 C"
  air                     = "25 to 31 C"
  night                   = "18 to 23 C"
  rest                    = "optional"
  humidity_soft           = "20 to 55 %"
  humidity_target         = "30 to 45 %"
  substrate_depth_advised = "15 cm"
  age_at_maturity         = "18 to 36 months"
  hairs                   = "none"
  speed                   = "very quick"
  rest_full_heat          = "14 days"
  rest_step               = "2 to 3 C"
  rest_first_meal         = "3 to 7 days"
  rest_full_meals         = "7 days"
  rest_water              = "14 to 30 days"
  unattended_rest         = "21 days"

  figure "temperature-hard" {
    value = "7 to 40 C"
    note  = "A precaution: no lethal figure was found."
  }

  figure "temperature-target" {
    value    = "25 to 31 C"
    source   = ["C129"]
    quality  = "practice"
    disputed = "warmest 35 C, coolest 25 C (C129)"
  }

  figure "warm-spot" {
    value    = "32 to 35 C"
    source   = ["C129"]
    quality  = "practice"
    disputed = "35 C (C129)"
    note     = "A hide at both ends (C129)."
  }

  figure "winter-rest" {
    value = "16 to 19 C"
    note  = "Dry."
  }

  figure "rest-length" {
    value = "6 to 8 weeks"
  }

  figure "moisture" {
    value = "arid"
    note  = "Dry, with a small damp corner; misted once a month or never."
  }

  figure "substrate-depth-min" {
    value    = "8 cm"
    source   = ["C44", "C132"]
    quality  = "practice"
    disputed = "no digger, under logs (C44); shallow scrapes (C132)"
    note     = "8 to 15 cm."
  }

  figure "lifestyle" {
    value   = "ground"
    source  = ["C44", "C132"]
    quality = "practice"
    note    = "Under logs (C44), and in shallow scrapes (C132): no digger."
  }

  figure "drinks" {
    value    = "dish"
    source   = ["C129"]
    quality  = "practice"
    disputed = "filled once a month (C129)"
    note     = "Shallow, and filled each week."
  }

  figure "floor-first" {
    value    = "900 cm2"
    stages   = ["subadult", "adult"]
    disputed = "40 x 40 x 20 cm (C129), a box of 38 L (C131)"
    note     = "Six times the square of 12 cm: three lengths long and two wide; our arithmetic. It wanders far."
  }

  figure "gap-max" {
    value  = "5 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1.5 mm"
    stages = ["young"]
  }

  figure "climbs" {
    value   = "seams"
    source  = ["C130"]
    quality = "keeper"
    note    = "A very good climber."
  }

  figure "length" {
    value    = "10 to 15 cm"
    stages   = ["adult"]
    source   = ["C22", "C44", "C129", "C132"]
    quality  = "practice"
    disputed = "9 to 11 cm (an encyclopedia), 14 cm (C132), 15 cm (C22, C44), 16 cm in the wild (C129)"
    note     = "With the tail."
  }

  figure "mass" {
    value   = "10 to 20 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value   = "5 to 8 years"
    source  = ["memory"]
    quality = "memory"
  }

  figure "growth-factor" {
    value   = "1.26"
    source  = ["C3"]
    quality = "practice"
    note    = "By theory; none is measured on this species."
  }

  figure "moults-to-adult" {
    value   = "6 to 7"
    source  = ["C134"]
    quality = "practice"
    note    = "Of the kin P. villosus: males grown in instar 7, females in instar 8."
  }

  figure "gestation" {
    value   = "8 to 12 months"
    source  = ["memory"]
    quality = "memory"
  }

  figure "gestation-longest" {
    value = "16 months"
    note  = "Our estimate."
  }

  figure "brood-size" {
    value   = "20 to 80"
    source  = ["memory"]
    quality = "memory"
  }

  figure "on-mother" {
    value   = "10 days"
    source  = ["C133"]
    quality = "keeper"
    note    = "Of the kin P. villosus: unmoved on the back for 9 days, the first moult about day 10."
  }

  figure "dispersal" {
    value   = "9 days"
    source  = ["C133"]
    quality = "keeper"
    note    = "Of the kin P. villosus: all had left by day 19."
  }

  figure "separation" {
    value   = "separate"
    source  = ["C133"]
    quality = "keeper"
    note    = "Singly, into cups."
  }

  figure "keeping" {
    value    = "alone"
    source   = ["C130"]
    quality  = "keeper"
    disputed = "one or two in 40 x 40 cm (C129)"
    note     = "Strictly."
  }

  figure "venom" {
    value   = "medically significant"
    source  = ["C19", "C20", "C21", "C22"]
    quality = "paper"
    note    = "Of 184 people stung 17 were severe (C20); 63 % pain only, 27 % slight signs away from the sting, 10 % severe (C21). 0.3 % died, under 10 and over 50 years old (C19). One milking gives 14 mg of dry venom, other Buthidae about 1 mg (C130). Of 740 scorpion calls to a poison centre 19.7 % were serious (C25); of children with severe stings in southern Africa close to a fifth died, mostly by P. granulatus (C24). Emergency number and poison centre at once, without waiting for signs: they begin within 4 h (C23), after 1 to 8 h (C22) or 4 to 12 h (C130). Watched for 12 to 24 h, children and people at risk in hospital (C23). The name of the species on paper at the box and in the pocket. No cutting, sucking or tourniquet; a pressure bandage may slow uptake but worsens the pain (C29)."
  }

  figure "spray" {
    value   = "venom"
    source  = ["C22", "C133", "C135"]
    quality = "paper"
  }

  figure "defence" {
    value   = "Sprays venom, 1 m (C135) to 3 m far (C22): no harm on the skin, the eyes are at risk (C22), and its kin P. villosus aims at them (C133). A clear first drop, then milky venom. Goggles at every opening; eyes are rinsed with water at once (C133), then a doctor. It warns by a rasping sound (C132), and is fast (C130). The lid is locked. Mesh lets spray out: glass, or a fine vent at the side."
    source  = ["C22", "C130", "C132", "C133", "C135"]
    quality = "practice"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Look up the licence: Bavaria and Berlin ask a permit for the genus (C140), Hesse forbids private keeping by a list since 9 October 2007 (C141). Several states of the USA have rules for venomous animals (as remembered). Great Britain has the family Buthidae on its list of dangerous wild animals (as remembered)."
    source  = ["C140", "C141", "memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Dry savanna and bush of southern Africa, under logs and in shallow scrapes (C44, C132)."
    source  = ["C44", "C132", "memory"]
    quality = "memory"
  }

  state "rest" {
    care   = "mist"
    manner = "held"
    note   = "Cold and wet kills a desert scorpion."
  }

  need "food" {
    longest  = "28 days"
    shortest = "10 days"
    severity = "caution"
    stages   = ["adult"]
    source   = ["C129"]
    quality  = "practice"
    disputed = "every two to three weeks (C129); the kin P. villosus one cricket a month (C133)"
  }

  care "water" {
    every   = "7 days"
    source  = ["C129"]
    quality = "practice"
  }

  care "moisten" {
    every = "30 days"
    task  = "A little water into the damp corner"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "6 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "17 days"
    per_animal = 1
    prey       = "cricket adult"
    source     = ["C129"]
    quality    = "keeper"
  }
}
