species "androctonus-australis" {
  title    = "yellow fat-tailed scorpion"
  latin    = "Androctonus australis (Linnaeus, 1758)"
  family   = "Buthidae"
  type     = "desert-burrowing-scorpion"
  also     = ["Sahara fat-tail", "yellow fat-tail", "Dickschwanzskorpion"]
  former   = ["Androctonus australis hector", "Androctonus australis libycus", "Androctonus australis garzonii"]
  mistaken = ["Androctonus amoreuxi", "Buthacus"]
  note     = "A danger to life. A brood is up to a hundred dangerous young: before a mating as many tight cups are counted out."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft  = "14 to 36 C"
  air               = "24 to 30 C"
  rest              = "optional"
  humidity_soft     = "20 to 55 %"
  age_at_maturity   = "12 to 24 months"
  gestation_longest = "10 months"
  hairs             = "none"
  speed             = "very quick"
  rest_full_heat    = "14 days"
  rest_step         = "2 to 3 C"
  rest_first_meal   = "3 to 7 days"
  rest_full_meals   = "7 days"
  rest_water        = "14 to 30 days"
  unattended_rest   = "21 days"

  figure "temperature-hard" {
    value   = "5 to 40 C"
    source  = ["C15"]
    quality = "practice"
    note    = "A precaution: desert scorpions die at 45 to 47 C (C15); nothing was measured on this species."
  }

  figure "temperature-target" {
    value    = "24 to 30 C"
    source   = ["C121", "C124"]
    quality  = "practice"
    disputed = "by day 26 to 30 C (C121), warm end 25.5 to 30 C, drops are stood well (C124)"
  }

  figure "warm-spot" {
    value    = "30 to 35 C"
    source   = ["C123"]
    quality  = "practice"
    disputed = "warm end 25.5 to 30 C (C124); kin A. mauritanicus 30 to 35 C (C123)"
  }

  figure "night" {
    value    = "18 to 22 C"
    source   = ["C121"]
    quality  = "practice"
    disputed = "21 C (C121); kin A. mauritanicus 20 to 25 C (C123)"
  }

  figure "winter-rest" {
    value = "12 to 16 C"
    note  = "Kin A. mauritanicus: two months at 15 C (C123)."
  }

  figure "rest-length" {
    value = "8 weeks"
  }

  figure "humidity-target" {
    value    = "30 to 45 %"
    source   = ["C121", "C123"]
    quality  = "practice"
    disputed = "60 % (C121), 40 to 60 % for the kin A. mauritanicus (C123)"
    note     = "When a moult is near it is made moist and warm at once (C120)."
  }

  figure "moisture" {
    value   = "arid"
    source  = ["C123"]
    quality = "practice"
    note    = "Sand and loam, dry, with a damp corner; a misting once a month (C123)."
  }

  figure "substrate-depth-advised" {
    value   = "10 cm"
    source  = ["C123"]
    quality = "practice"
    note    = "Of the kin A. mauritanicus (C123). It digs no deep burrow: cracks, and scrapes under stones (C119, C125)."
  }

  figure "lifestyle" {
    value   = "ground"
    source  = ["C119", "C125"]
    quality = "practice"
    note    = "In cracks, and in scrapes under stones (C119, C125): no deep digger."
  }

  figure "floor-first" {
    value    = "650 cm2"
    stages   = ["subadult", "adult"]
    disputed = "30 x 30 cm (C121)"
    note     = "Three lengths long and two wide, of an animal of 10 to 11 cm; our arithmetic."
  }

  figure "gap-max" {
    value  = "4 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
  }

  figure "length" {
    value    = "10 to 12 cm"
    stages   = ["adult"]
    source   = ["C119", "C126"]
    quality  = "keeper"
    disputed = "females to 8 cm, males to 6 cm (C122)"
    note     = "With the tail."
  }

  figure "mass" {
    value   = "5 to 9 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "4 to 6 years"
    source   = ["C122"]
    quality  = "keeper"
    disputed = "about 5 years (C119)"
  }

  figure "growth-factor" {
    value   = "1.26"
    source  = ["C3"]
    quality = "practice"
    note    = "By theory; none is measured on this species."
  }

  figure "moults-to-adult" {
    value    = "5 to 7"
    source   = ["C119"]
    quality  = "practice"
    disputed = "7 to 8 (C119)"
    note     = "As papers have it of other Buthidae."
  }

  figure "gestation" {
    value    = "4 to 6 months"
    source   = ["C119"]
    quality  = "keeper"
    disputed = "about 6 months (C127)"
  }

  figure "brood-size" {
    value    = "30 to 100"
    source   = ["C119", "C120", "C127"]
    quality  = "practice"
    disputed = "30 to 90 (C119), 5 to 50 (C127), over 100 (C120)"
  }

  figure "on-mother" {
    value   = "6 to 12 days"
    source  = ["memory"]
    quality = "memory"
  }

  figure "separation" {
    value   = "separate"
    source  = ["C120"]
    quality = "keeper"
    note    = "Raised singly."
  }

  figure "keeping" {
    value    = "alone"
    disputed = "adults in groups of three or four at a breeder's, the young strictly alone (C120); a cannibal (C126)"
    note     = "For safety: our decision."
  }

  figure "venom" {
    value   = "medically significant"
    source  = ["C45", "C119", "C121"]
    quality = "society"
    note    = "On the medical list (C45). Most deaths by stings in North Africa (C119); in Algeria in 1993 more than 30,000 stings and 200 deaths, this species first (C121). Emergency number and poison centre at once, without waiting for signs: they begin within 4 h (C23), after 1 to 8 h (C22) or 4 to 12 h (C130). Watched for 12 to 24 h, children and people at risk in hospital (C23). The name of the species on paper at the box and in the pocket. No cutting, sucking or tourniquet; a pressure bandage may slow uptake but worsens the pain (C29)."
  }

  figure "defence" {
    value   = "Calm until it is warm, then very fast (C126). It climbs no clean glass (as remembered). Two closures, the outer one locked."
    source  = ["C126", "memory"]
    quality = "memory"
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
    value   = "North Africa (C121): dry country, in cracks and under stones (C119, C125)."
    source  = ["C119", "C121", "C125", "memory"]
    quality = "memory"
  }

  state "rest" {
    care   = "mist"
    manner = "held"
    note   = "Cold and wet kills a desert scorpion."
  }

  care "mist" {
    every = "1 month"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 1
    prey       = "cricket adult"
  }
}
