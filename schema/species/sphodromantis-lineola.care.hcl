species "sphodromantis-lineola" {
  title    = "African lined mantis"
  latin    = "Sphodromantis lineola Burmeister, 1838"
  family   = "Mantidae"
  type     = "mantis"
  also     = ["African mantis", "Ghana mantis", "bush mantis", "Afrikanische Gottesanbeterin"]
  mistaken = ["Sphodromantis viridis", "Sphodromantis centralis", "Sphodromantis gastrica", "Sphodromantis baccettii"]
  note     = "Several kinds are sold under this name and are cared for alike; S. baccettii has blue-black spots on its arms (OK35). It eats anything: overfed females burst in a fall, so that meals keep to their days and fat ones have low perches."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft = "20 to 32 C"
  warm_spot        = "30 to 32 C"
  rest             = "none"
  cooler           = "2 to 3 C"
  humidity_soft    = "35 to 70 %"
  hairs            = "none"
  speed            = "quick"

  figure "temperature-hard" {
    value   = "12 to 36 C"
    source  = ["OK32b"]
    quality = "practice"
    note    = "Below 5 C they may die (OK32b). Both ends are a precaution; the upper one is that of all mantises."
  }

  figure "temperature-target" {
    value    = "22 to 30 C"
    source   = ["OK32b"]
    quality  = "keeper"
    disputed = "24 to 30 C (OK31b), 22 to 28 C (OK35), 25 to 35 C by day (OK33b)"
    note     = "25 C is ideal (OK32b)."
  }

  figure "air" {
    value   = "22 to 30 C"
    source  = ["OK32b"]
    quality = "keeper"
    note    = "25 C is ideal (OK32b)."
  }

  figure "night" {
    value    = "20 to 22 C"
    source   = ["OK33b"]
    quality  = "keeper"
    disputed = "at least 17 C (OK32b)"
  }

  figure "humidity-target" {
    value    = "50 to 60 %"
    source   = ["OK31b", "OK33b"]
    quality  = "keeper"
    disputed = "40 to 60 % (OK35)"
    note     = "It does not bear being too wet (OK32b)."
  }

  figure "floor-first" {
    value    = "400 cm2"
    stages   = ["adult"]
    disputed = "20 x 20 x 30 cm (OK33b), 16 x 16 cm at the least (OK34)"
    note     = "For a female; 225 cm2 for a male."
  }

  figure "height-min" {
    value    = "30 cm"
    stages   = ["adult"]
    disputed = "24 cm at the least (OK34)"
    note     = "For a female; 24 cm for a male."
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "keeping" {
    value    = "alone"
    disputed = "males to five together in 30 x 30 x 50 cm (OK33b)"
    note     = "It chases its prey, and the female takes the male."
  }

  figure "separation" {
    value   = "separate"
    source  = ["OK36"]
    quality = "practice"
    note    = "From L4 to L5 on each alone; until then together where there is always food (OK36, of S. centralis)."
  }

  figure "length" {
    value    = "6 to 8 cm"
    stages   = ["adult"]
    source   = ["OK32b", "OK33b", "OK34"]
    quality  = "keeper"
    disputed = "10 to 15 cm (OK31b): not credible"
    note     = "Females 8 cm, males 6 to 7 (OK32b)."
  }

  figure "mass" {
    value   = "3 to 6 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    note    = "Females."
  }

  figure "lifespan" {
    value    = "10 to 12 months"
    source   = ["OK31b"]
    quality  = "keeper"
    disputed = "12 to 18 months (OK33b), 6 to 12 of which 2 to 4 as adult (OK35)"
    note     = "Females 12, males 10 (OK31b). Of the kin S. gastrica the mean is 332 days, females longer (OP11)."
  }

  figure "growth-factor" {
    value   = "1.3 to 1.4"
    source  = ["memory"]
    quality = "memory"
  }

  figure "moults-to-adult" {
    value   = "7 to 8"
    source  = ["OP11"]
    quality = "practice"
    note    = "Males seven, females eight: our reading. The kin S. gastrica has 4 to 9 nymph instars, and 41.8 % of its young grow up (OP11)."
  }

  figure "age-at-maturity" {
    value   = "5 to 6 months"
    source  = ["memory"]
    quality = "memory"
    note    = "At 25 to 28 C."
  }

  figure "sac-time" {
    value    = "4 to 10 weeks"
    source   = ["OP11", "memory"]
    quality  = "practice"
    disputed = "about 10 weeks in the kin S. gastrica (OP11), 4 to 6 weeks at 28 C (remembered)"
  }

  figure "brood-size" {
    value   = "100 to 250"
    source  = ["memory"]
    quality = "memory"
    note    = "From one ootheca. The kin S. gastrica has 84 chambers in one, and 54.6 % are fertile (OP11)."
  }

  figure "old-age" {
    value = "120 days"
    note  = "Feet are lost, the eyes have black dots, it misses its prey."
  }

  figure "old-age-male" {
    value = "60 days"
  }

  figure "venom" {
    value = "none"
  }

  figure "defence" {
    value   = "A pinch with thorned arms. Females take very large prey, which frightens males (OK32b)."
    source  = ["OK32b"]
    quality = "practice"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "USA: look up the permit for keeping exotic invertebrates."
    source  = ["G9"]
    quality = "guideline"
  }

  figure "climate-origin" {
    value   = "Bush and savanna of Africa south of the Sahara."
    source  = ["memory"]
    quality = "memory"
  }

  need "food" {
    longest = "3 days"
    stages  = ["juvenile"]
  }

  need "food" {
    longest = "3 days"
    stages  = ["subadult"]
  }

  need "food" {
    longest  = "5 days"
    stages   = ["adult"]
    shortest = "2 days"
  }

  figure "refusal-pause" {
    value  = "3 days"
    stages = ["subadult"]
  }

  care "mist" {
    every = "2 days"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "2 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket adult"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "2 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }
}
