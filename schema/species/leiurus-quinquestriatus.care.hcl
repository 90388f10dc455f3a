species "leiurus-quinquestriatus" {
  title    = "deathstalker"
  latin    = "Leiurus quinquestriatus (Ehrenberg, 1828)"
  family   = "Buthidae"
  type     = "desert-burrowing-scorpion"
  also     = ["yellow scorpion", "deathstalker scorpion", "deathstalker"]
  mistaken = ["Leiurus hebraeus", "Leiurus quinquestriatus hebraeus", "Leiurus macroctenus", "Leiurus haenggii", "Leiurus arabicus", "Leiurus heberti", "Leiurus brachycentrus", "Leiurus jordanensis", "Leiurus abdullahbayrami", "Buthacus"]
  note     = "A danger to life, and the worst of the desert scorpions to work at: only trained people, two of them, a phone at hand; nobody who merely stands in opens the box. The form of Israel is a species of its own since 2014, L. hebraeus, and L. macroctenus of Oman, haenggii, arabicus and heberti are new (C5); most of the trade's from Israel is hebraeus."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "15 to 37 C"
  temperature_target      = "25 to 31 C"
  warm_spot               = "32 to 36 C"
  air                     = "25 to 31 C"
  night                   = "18 to 23 C"
  rest                    = "optional"
  humidity_soft           = "15 to 50 %"
  humidity_target         = "25 to 40 %"
  substrate_depth_advised = "12 cm"
  moults_to_adult         = "5 to 6"
  gestation_longest       = "300 days"
  hairs                   = "none"
  speed                   = "very quick"
  rest_full_heat          = "14 days"
  rest_step               = "2 to 3 C"
  rest_first_meal         = "3 to 7 days"
  rest_full_meals         = "7 days"
  rest_water              = "14 to 30 days"
  unattended_rest         = "21 days"

  figure "temperature-hard" {
    value   = "5 to 41 C"
    source  = ["C15"]
    quality = "practice"
    note    = "A precaution: desert scorpions die at 45 to 47 C (C15); nothing was measured on this species."
  }

  figure "winter-rest" {
    value = "14 to 18 C"
  }

  figure "rest-length" {
    value = "6 to 10 weeks"
  }

  figure "moisture" {
    value   = "arid"
    source  = ["C6"]
    quality = "practice"
    note    = "Dry, a deep corner faintly damp. It loses little: its blood is 5 to 9 % denser after a loss of 10 % of its mass (C6)."
  }

  figure "substrate-depth-min" {
    value   = "8 cm"
    source  = ["C128"]
    quality = "practice"
    note    = "It digs under flat stones (C128); 8 to 12 cm."
  }

  figure "floor-first" {
    value    = "600 cm2"
    stages   = ["subadult", "adult"]
    disputed = "30 x 30 x 20 cm for small kinds (C128)"
    note     = "Six times the square of 10 cm: three lengths long and two wide; our arithmetic."
  }

  figure "gap-max" {
    value  = "3 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
  }

  figure "climbs" {
    value   = "seams"
    source  = ["C128"]
    quality = "keeper"
    note    = "A very good climber (C128): no rock, bark or wire within 15 cm of the rim."
  }

  figure "length" {
    value    = "8 to 12 cm"
    stages   = ["adult"]
    source   = ["C128"]
    quality  = "keeper"
    disputed = "seldom 15 cm (C128)"
    note     = "With the tail."
  }

  figure "mass" {
    value   = "2 to 5 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value   = "3 to 5 years"
    source  = ["memory"]
    quality = "memory"
  }

  figure "growth-factor" {
    value   = "1.26"
    source  = ["C3"]
    quality = "practice"
    note    = "By theory; none is measured on this species."
  }

  figure "age-at-maturity" {
    value   = "10 to 18 months"
    source  = ["C2"]
    quality = "practice"
    note    = "By the Buthidae that were reared (C2)."
  }

  figure "gestation" {
    value    = "150 to 230 days"
    source   = ["C4"]
    quality  = "practice"
    disputed = "155 to 227 days, earlier reports 150 to 155 days (C4, P14)"
    note     = "Seven females, of southern Egypt and southern Israel: two species by today's names."
  }

  figure "brood-size" {
    value    = "35 to 87"
    source   = ["C4"]
    quality  = "paper"
    disputed = "earlier reports 12 to 99 (C4)"
  }

  figure "on-mother" {
    value   = "5 to 10 days"
    source  = ["memory"]
    quality = "memory"
  }

  figure "separation" {
    value = "separate"
    note  = "At once."
  }

  figure "keeping" {
    value   = "alone"
    source  = ["C128"]
    quality = "keeper"
    note    = "Strictly."
  }

  figure "venom" {
    value   = "medically significant"
    source  = ["C138b", "C28"]
    quality = "keeper"
    note    = "A medical list names the genus, as a summary of it says (C138b). Of 104 children in intensive care after stings in the Negev, the species not on the excerpt, five had low pressure and water in the lungs and recovered, four heart shock; two of these died, both with antivenom, and no benefit of it was seen (C28): nobody is promised that a serum saves. Emergency number and poison centre at once, without waiting for signs: they begin within 4 h (C23), after 1 to 8 h (C22) or 4 to 12 h (C130). Watched for 12 to 24 h, children and people at risk in hospital (C23). The name of the species on paper at the box and in the pocket. No cutting, sucking or tourniquet; a pressure bandage may slow uptake but worsens the pain (C29)."
  }

  figure "defence" {
    value   = "Very ready to sting, does not give way, a very fast runner and a very good climber. The lid is locked."
    source  = ["C128"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Look up the licence: Bavaria and Berlin ask a permit for the genus (C140), Hesse forbids private keeping by a list since 9 October 2007 (C141). Great Britain has the family Buthidae on its list of dangerous wild animals (as remembered)."
    source  = ["C140", "C141", "memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Deserts of North Africa; in southern Egypt the females whose broods were counted (C4)."
    source  = ["C4", "memory"]
    quality = "memory"
  }

  state "rest" {
    care   = "mist"
    manner = "held"
    note   = "Cold and wet kills a desert scorpion."
  }

  care "moisten" {
    every = "30 days"
    task  = "A little water into the deep corner"
  }
}
