species "smeringurus-mesaensis" {
  title    = "dune scorpion"
  latin    = "Smeringurus mesaensis (Stahnke, 1957)"
  family   = "Vaejovidae"
  type     = "desert-burrowing-scorpion"
  also     = ["giant sand scorpion", "Dünen-Skorpion"]
  former   = ["Paruroctonus mesaensis", "Vaejovis mesaensis", "Vejovis mesaensis"]
  mistaken = ["Smeringurus vachoni", "Paruroctonus"]
  note     = "S. vachoni is larger. Of all desert scorpions the one whose growth is known best, and a cannibal: mothers eat young, and siblings each other (C1). Never two together, at no size."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "12 to 36 C"
  air                     = "24 to 30 C"
  rest                    = "optional"
  humidity_soft           = "15 to 55 %"
  substrate_depth_advised = "15 cm"
  hairs                   = "none"
  speed                   = "quick"
  rest_full_heat          = "14 days"
  rest_step               = "2 to 3 C"
  rest_first_meal         = "3 to 7 days"
  rest_full_meals         = "7 days"
  rest_water              = "14 to 30 days"
  unattended_rest         = "21 days"

  figure "temperature-hard" {
    value   = "5 to 40 C"
    source  = ["C15"]
    quality = "practice"
    note    = "A precaution: desert scorpions die at 45 to 47 C (C15); nothing was measured on this species."
  }

  figure "temperature-target" {
    value    = "24 to 30 C"
    source   = ["C93", "C94"]
    quality  = "practice"
    disputed = "24 to 29 C (C93), by day 28 to 35 C (C94)"
  }

  figure "warm-spot" {
    value    = "32 C"
    source   = ["C93"]
    quality  = "keeper"
    disputed = "by day 28 to 35 C (C94)"
  }

  figure "night" {
    value    = "18 to 22 C"
    source   = ["C94"]
    quality  = "practice"
    disputed = "20 to 24 C (C94)"
  }

  figure "winter-rest" {
    value = "10 to 15 C"
    note  = "No heater in winter, as named for the genus (C91)."
  }

  figure "rest-length" {
    value = "8 to 12 weeks"
  }

  figure "humidity-target" {
    value    = "20 to 40 %"
    source   = ["C93"]
    quality  = "keeper"
    disputed = "40 to 50 % (C94)"
  }

  figure "moisture" {
    value   = "arid"
    source  = ["C93"]
    quality = "keeper"
    note    = "Dry sand, one deep corner moist now and then."
  }

  figure "substrate-depth-min" {
    value    = "10 cm"
    source   = ["C93"]
    quality  = "practice"
    disputed = "8 to 15 cm (C93)"
    note     = "Packed sand with some clay."
  }

  figure "floor-first" {
    value  = "300 cm2"
    stages = ["subadult", "adult"]
    note   = "Six times the square of 7 cm: three lengths long and two wide; our arithmetic."
  }

  figure "gap-max" {
    value  = "3 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
  }

  figure "length" {
    value   = "1 cm"
    stages  = ["newborn"]
    source  = ["C1", "C49"]
    quality = "practice"
    note    = "From 7.2 cm for a grown one (C49), by Dyar's rule with the measured factor of 1.38 (C1); our arithmetic."
  }

  figure "length" {
    value   = "1.4 to 2 cm"
    stages  = ["young"]
    source  = ["C1", "C49"]
    quality = "practice"
    note    = "From 7.2 cm for a grown one (C49), by Dyar's rule with the measured factor of 1.38 (C1); our arithmetic."
  }

  figure "length" {
    value   = "2.7 to 3.8 cm"
    stages  = ["juvenile"]
    source  = ["C1", "C49"]
    quality = "practice"
    note    = "From 7.2 cm for a grown one (C49), by Dyar's rule with the measured factor of 1.38 (C1); our arithmetic."
  }

  figure "length" {
    value   = "5.2 cm"
    stages  = ["subadult"]
    source  = ["C1", "C49"]
    quality = "practice"
    note    = "From 7.2 cm for a grown one (C49), by Dyar's rule with the measured factor of 1.38 (C1); our arithmetic."
  }

  figure "length" {
    value    = "5 to 8 cm"
    stages   = ["adult"]
    source   = ["C49", "C56", "C93"]
    quality  = "practice"
    disputed = "7.2 cm on average (C49), many near 8 cm (C56), 5 to 7.5 cm (C93)"
    note     = "With the tail; females are larger."
  }

  figure "mass" {
    value   = "0.016 to 0.042 g"
    stages  = ["young"]
    source  = ["C1", "C49"]
    quality = "practice"
    note    = "From 2 g for a grown one (C49), divided by 1.38 three times for each moult (C1); our arithmetic."
  }

  figure "mass" {
    value   = "0.11 to 0.29 g"
    stages  = ["juvenile"]
    source  = ["C1", "C49"]
    quality = "practice"
    note    = "From 2 g for a grown one (C49), divided by 1.38 three times for each moult (C1); our arithmetic."
  }

  figure "mass" {
    value   = "0.76 g"
    stages  = ["subadult"]
    source  = ["C1", "C49"]
    quality = "practice"
    note    = "From 2 g for a grown one (C49), divided by 1.38 three times for each moult (C1); our arithmetic."
  }

  figure "mass" {
    value   = "2 g"
    stages  = ["adult"]
    source  = ["C49"]
    quality = "society"
  }

  figure "lifespan" {
    value    = "5 to 8 years"
    source   = ["C93"]
    quality  = "keeper"
    disputed = "about 8 years (C94)"
    note     = "Less in the wild, for heavy cannibalism (as remembered)."
  }

  figure "growth-factor" {
    value   = "1.38"
    source  = ["C1"]
    quality = "paper"
  }

  figure "moults-to-adult" {
    value   = "6"
    source  = ["C1"]
    quality = "paper"
    note    = "Seven instars."
  }

  figure "moults-as-adult" {
    value   = "false"
    source  = ["C1"]
    quality = "paper"
  }

  figure "age-at-maturity" {
    value   = "19 to 24 months"
    source  = ["C1"]
    quality = "paper"
    note    = "In the wild. Growth follows the heat of the burrow and the prey; fastest in spring, slow in winter and high summer."
  }

  figure "gestation" {
    value   = "10 to 14 months"
    source  = ["C1"]
    quality = "paper"
    note    = "Mated from May to October, gravid for at least three years running (C1); births from July to September (C49, C95), the young on the surface early in August (C1)."
  }

  figure "gestation-longest" {
    value = "18 months"
    note  = "Our estimate."
  }

  figure "brood-size" {
    value   = "20 to 50"
    source  = ["C1"]
    quality = "practice"
    note    = "48.8 embryos, and 19.9 young of a female that reach the surface, on average (C1)."
  }

  figure "on-mother" {
    value   = "12 days"
    source  = ["C49"]
    quality = "society"
    note    = "About."
  }

  figure "separation" {
    value = "separate"
  }

  figure "keeping" {
    value   = "alone"
    source  = ["C1", "C93", "C94"]
    quality = "practice"
    note    = "Always: a cannibal (C93, C94), mother and siblings too (C1)."
  }

  figure "venom" {
    value   = "mild"
    source  = ["C94"]
    quality = "keeper"
    note    = "As a bee, painful at worst. Wash and cool the sting, watch breathing and swelling for an hour; signs of an allergy are an emergency."
  }

  figure "defence" {
    value = "Quick, and ready to sting."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Dunes and sand of the deserts of south-western North America."
    source  = ["memory"]
    quality = "memory"
  }

  figure "sexing" {
    value = "Females are larger."
  }

  state "rest" {
    care   = "mist"
    manner = "held"
    note   = "Cold and wet kills a desert scorpion."
  }

  figure "items-a-week" {
    value   = "1 to 2"
    stages  = ["adult"]
    source  = ["C93"]
    quality = "keeper"
  }

  care "moisten" {
    every = "30 days"
    task  = "A little water into the deep corner"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 2
    prey       = "fruit-fly hydei"
    killed     = true
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "5 days"
    per_animal = 2
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
    prey       = "cricket medium"
    source     = ["C93"]
    quality    = "keeper"
  }
}
