species "babycurus-jacksoni" {
  title    = "rusty thick-tail scorpion"
  latin    = "Babycurus jacksoni (Pocock, 1890)"
  family   = "Buthidae"
  type     = "bark-scorpion"
  also     = ["red bark scorpion", "Tanzanian red bark scorpion"]
  mistaken = ["Odonturus dentatus", "Babycurus gigas", "Hottentotta hottentotta"]
  note     = "A buthid that hardly anybody has studied: work with it as with one that is dangerous, and let nobody untrained stand in for you. Odonturus dentatus has spurs on the third legs too, and a larger double sting (C106). Colour forms are red and chocolate."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft = "21 to 33 C"
  warm_spot        = "30 to 32 C"
  air              = "25 to 29 C"
  night            = "20 to 23 C"
  rest             = "none"
  cooler           = "2 to 3 C"
  humidity_soft    = "45 to 80 %"
  hairs            = "none"
  speed            = "very quick"
  group_max        = "6"

  figure "temperature-hard" {
    value = "14 to 37 C"
    note  = "A precaution: no lethal temperature was found."
  }

  figure "temperature-target" {
    value = "25 to 29 C"
    note  = "The near kin B. gigas has 29 C by day and 22 C by night at Tanga (C143)."
  }

  figure "humidity-target" {
    value   = "55 to 70 %"
    source  = ["C107"]
    quality = "practice"
    note    = "It needs dew or mist, though it lives in dry country (C107): in the evening, two or three times a week."
  }

  figure "moisture" {
    value = "either"
    note  = "One half dry, one damp."
  }

  figure "substrate-depth-min" {
    value   = "5 cm"
    source  = ["C107"]
    quality = "practice"
    note    = "It scrapes under wood (C107). Bark slabs upright and flat."
  }

  figure "floor-first" {
    value  = "350 cm2"
    stages = ["subadult", "adult"]
    note   = "Six times the square of 7.5 cm: three lengths long and two wide (C139); our arithmetic."
  }

  figure "floor-further" {
    value  = "120 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "20 cm"
    stages = ["subadult", "adult"]
    note   = "20 to 25 cm."
  }

  figure "keeping" {
    value = "groups"
    note  = "Common practice without a source, and with caution: one size, well fed, never with a brood."
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
  }

  figure "length" {
    value    = "6 to 9 cm"
    stages   = ["adult"]
    source   = ["C106"]
    quality  = "keeper"
    disputed = "8 to 10 cm (C108), 6 to 8 cm usual (C109)"
    note     = "Bred ones lie at the low end."
  }

  figure "mass" {
    value   = "2 to 4 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "growth-factor" {
    value = "1.25 to 1.3"
  }

  figure "moults-to-adult" {
    value   = "5 to 6"
    source  = ["C2"]
    quality = "practice"
    note    = "Not found; six to seven instars, as buthids."
  }

  figure "age-at-maturity" {
    value   = "9 to 15 months"
    source  = ["C2"]
    quality = "practice"
    note    = "Not found; by Centruroides gracilis."
  }

  figure "lifespan" {
    value   = "4 to 5 years"
    source  = ["C108"]
    quality = "keeper"
  }

  figure "gestation" {
    value   = "4 to 7 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Several broods may come from one mating."
  }

  figure "gestation-longest" {
    value = "10 months"
    note  = "Our estimate."
  }

  figure "brood-size" {
    value   = "15 to 40"
    source  = ["memory"]
    quality = "memory"
  }

  figure "on-mother" {
    value   = "6 to 10 days"
    source  = ["memory"]
    quality = "memory"
    note    = "The first meal is 2 to 4 days after."
  }

  figure "separation" {
    value = "separate"
    note  = "At the latest when food is short."
  }

  figure "venom" {
    value    = "painful"
    source   = ["C107"]
    quality  = "keeper"
    disputed = "2 of 5 on one hobby scale, 3 of 5 on another (C108)"
    note     = "Painful, with swelling; not held for medically important, but no LD50 is known (C107) and it is hardly studied. Wash, cool, watch breathing and swelling for an hour; a doctor where anything happens away from the sting, and for children, the pregnant, the old and the ill; an allergy is an emergency."
  }

  figure "defence" {
    value   = "Reactions cannot be foretold: it stings several times and flees (C108). It plays dead, the young most (C109): never touch one that lies as if dead. As it is hardly studied, no work alone and none untrained."
    source  = ["C108", "C109"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Germany: look up the law of the state; the genus is in neither the Bavarian nor the Berlin list (C140). Great Britain: look up the schedule of dangerous wild animals (the family Buthidae, from memory)."
    source  = ["C140", "memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "East Africa: dry country with dew; it scrapes under wood and climbs trees after termites."
    source  = ["C107"]
    quality = "keeper"
  }

  figure "sexing" {
    value   = "Grown males have bulbous claws. Comb teeth do not tell: 18 to 25 in both."
    source  = ["C106"]
    quality = "keeper"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket medium"
  }
}
