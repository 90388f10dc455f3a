species "centruroides-gracilis" {
  title    = "Florida bark scorpion"
  latin    = "Centruroides gracilis (Latreille, 1804)"
  family   = "Buthidae"
  type     = "bark-scorpion"
  also     = ["slender brown bark scorpion", "blue scorpion"]
  mistaken = ["Centruroides margaritatus", "Centruroides nigrescens"]
  note     = "Held for dangerous as a precaution: what is written differs, and animals from Florida and from Central America are sold without a label. The fastest life of its kin: from birth to mating in less than a year, and large broods. Count the cups before a mating."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft    = "20 to 34 C"
  warm_spot           = "30 to 33 C"
  air                 = "25 to 29 C"
  night               = "20 to 24 C"
  rest                = "none"
  cooler              = "2 to 3 C"
  humidity_soft       = "50 to 85 %"
  substrate_depth_min = "5 cm"
  hairs               = "none"
  speed               = "very quick"
  group_max           = "6"

  figure "temperature-hard" {
    value   = "10 to 38 C"
    source  = ["C14"]
    quality = "practice"
    note    = "A precaution: of the kin C. hentzi half died at 43.7 C in dry air (12 %) and 45.1 C at 72 %, and at -4.5 and -4.7 C (C14)."
  }

  figure "temperature-target" {
    value    = "25 to 29 C"
    disputed = "about 30 C in its places (C101)"
  }

  figure "humidity-target" {
    value    = "60 to 75 %"
    disputed = "50 to 70 % (C67, weak), not too humid (C101)"
  }

  figure "moisture" {
    value = "either"
    note  = "One half damp."
  }

  figure "floor-first" {
    value  = "550 cm2"
    stages = ["subadult", "adult"]
  }

  figure "floor-further" {
    value  = "150 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["subadult", "adult"]
    note   = "Upright bark."
  }

  figure "keeping" {
    value    = "groups"
    source   = ["C101"]
    quality  = "practice"
    disputed = "no cannibalism, even with others (C101, weak)"
    note     = "Of one size, with caution; never with another species."
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["juvenile", "subadult", "adult"]
    note   = "A band of grease at the rim helps (C102)."
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
  }

  figure "length" {
    value    = "7.5 to 12 cm"
    stages   = ["adult"]
    source   = ["C2", "C42", "C100"]
    quality  = "practice"
    disputed = "females to 10 cm, males over 15 cm (C100), 7.5 cm (C42)"
    note     = "The tail of males is longer. Males are small or large, 1.25 times apart (C2)."
  }

  figure "mass" {
    value   = "3 to 6 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "growth-factor" {
    value   = "1.25"
    source  = ["C2"]
    quality = "practice"
    note    = "Large males are 1.25 times as long as small ones, which have moulted once less (C2): as the factor of a moult that is our reading."
  }

  figure "moults-to-adult" {
    value   = "5 to 6"
    source  = ["C2"]
    quality = "paper"
    note    = "Females are adult in instar 7, males in instar 6 or 7; none moults after that. Some die in a moult (C100)."
  }

  figure "age-at-maturity" {
    value   = "236 to 303 days"
    source  = ["C2"]
    quality = "paper"
    note    = "Means: females 302.5 days (+- 25.2, n = 24), males in instar 6 235.7 (+- 14.8, n = 14), males in instar 7 281.8 (+- 10.7, n = 19)."
  }

  figure "lifespan" {
    value   = "2.5 to 4 years"
    source  = ["memory"]
    quality = "memory"
  }

  figure "gestation" {
    value    = "5 to 9 months"
    source   = ["C101"]
    quality  = "practice"
    disputed = "several months to over a year (C101)"
  }

  figure "gestation-longest" {
    value = "14 months"
  }

  figure "brood-size" {
    value   = "25 to 91"
    source  = ["C100"]
    quality = "keeper"
    note    = "25 to 35 are usual (C100)."
  }

  figure "on-mother" {
    value   = "8 days"
    source  = ["C100"]
    quality = "keeper"
    note    = "To the first moult; they are on her for 8 to 14 days in all."
  }

  figure "dispersal" {
    value = "1 to 6 days"
    note  = "8 to 14 days on her, less the 8 to the first moult; our arithmetic."
  }

  figure "separation" {
    value = "separate"
    note  = "Or plenty of food."
  }

  figure "first-meal" {
    value = "5 days"
  }

  figure "venom" {
    value    = "medically significant"
    source   = ["C42"]
    quality  = "society"
    disputed = "severe cases possible, potentially lethal, 1 to 10 % of the untreated (C42); low toxicity, severe cases rare (C27); not on the list of dangerous ones (C43); keepers: not as potent (C101)"
    note     = "A precaution: the harder class, since animals are sold without their origin. Emergency number and poison centre at once, without waiting for signs: they begin within 4 h (C23), 1 to 8 h (C22), 4 to 12 h (C130). Watched for 12 to 24 h, children and people at risk in hospital (C23). The name of the species on paper at the box and in the pocket; no cutting, sucking or tourniquet."
  }

  figure "defence" {
    value = "Fast."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Germany: look up the law of the state; the genus is on the lists of Bavaria and Berlin (C140), and Hesse has a list too (C141). Great Britain: look up the schedule of dangerous wild animals (the family Buthidae, from memory). Bavaria takes every scorpion whose species cannot be told for dangerous (C140)."
    source  = ["C140", "C141", "memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Warm country, about 30 C (C101); introduced in Florida, Cuba and the Canaries (C100)."
    source  = ["C100", "C101"]
    quality = "keeper"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket adult"
  }
}
