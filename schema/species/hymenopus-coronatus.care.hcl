species "hymenopus-coronatus" {
  title    = "orchid mantis"
  latin    = "Hymenopus coronatus (Olivier, 1792)"
  family   = "Hymenopodidae"
  type     = "mantis"
  also     = ["Orchideenmantis"]
  former   = ["Hymenopus bicornis"]
  mistaken = ["Helvia cardinalis", "Creobroter"]
  note     = "Two bodies in one sheet: the female is twice as long as the male, and prey, box and dates go by sex from L4 on. It takes flying prey from the air. The hatchling is red and black, and white from the next instar on (OK37b)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard = "17 to 35 C"
  temperature_soft = "22 to 32 C"
  rest             = "none"
  cooler           = "2 to 3 C"
  humidity_soft    = "55 to 90 %"
  gap_max          = "1 mm"
  hairs            = "none"
  speed            = "slow"

  stage "young" {
    instars = "1 to 3"
  }

  stage "juvenile" {
    instars = "4 to 5"
  }

  stage "subadult" {
    instars = "6 to 7"
    note    = "Males are grown two moults before females."
  }

  stage "adult" {
    instars = "8"
  }

  figure "temperature-target" {
    value    = "24 to 29.5 C"
    source   = ["OK42"]
    quality  = "keeper"
    disputed = "25 to 30 C by day (OK43, a weak page)"
  }

  figure "air" {
    value   = "24 to 29.5 C"
    source  = ["OK42"]
    quality = "keeper"
  }

  figure "night" {
    value    = "21 to 24 C"
    disputed = "not below 21 C (OK43, a weak page)"
  }

  figure "humidity-target" {
    value    = "65 to 85 %"
    source   = ["OK42"]
    quality  = "practice"
    disputed = "70 to 90 % (OK42)"
    note     = "With moving air: sprayed so that it is dry within an hour or two; more before a moult, less after."
  }

  figure "floor-first" {
    value  = "400 cm2"
    stages = ["adult"]
    note   = "For a female, 20 x 20 x 30 cm; 144 cm2 for a male, 12 x 12 x 15 cm."
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["adult"]
    note   = "For a female; 15 cm for a male. A rough roof, and flowers or a perch in the upper third."
  }

  figure "keeping" {
    value = "alone"
    note  = "Nymphs to L3 may be together with flies; the female eats the male."
  }

  figure "length" {
    value    = "2.5 to 6 cm"
    stages   = ["adult"]
    source   = ["OK44"]
    quality  = "practice"
    disputed = "females about 5 cm, males 2.5 (OK44); females 6.5 to 9, males 2.5 to 4 cm (OK42); females 6 cm, males half of it (an encyclopedia)"
  }

  figure "mass" {
    value   = "0.3 to 4 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    note    = "Females 2 to 4 g, males 0.3 g."
  }

  figure "lifespan" {
    value    = "5 to 16 months"
    source   = ["OK42"]
    quality  = "keeper"
    disputed = "males 4 to 6, females 5 to 10 months (OK43, two weak pages)"
    note     = "Males 5 to 7, females 10 to 16 (OK42)."
  }

  figure "moults-to-adult" {
    value    = "5 to 7"
    source   = ["memory"]
    quality  = "memory"
    disputed = "5 to 7 (OK43, a weak page)"
    note     = "Males five, females seven, and grown two to three months apart: males are kept at 22 to 23 C and on scant food from L4 on, females warm (as OK45 does). A female is ready 4 to 8 weeks after her last moult, a male 2 to 6 (OK46b)."
  }

  figure "sac-time" {
    value    = "28 to 42 days"
    disputed = "4 to 6 weeks, about 6 (OK43, weak pages)"
  }

  figure "brood-size" {
    value   = "30 to 100"
    source  = ["memory"]
    quality = "memory"
  }

  figure "old-age" {
    value = "120 days"
    note  = "It lies, and eats from tongs."
  }

  figure "old-age-male" {
    value = "30 days"
  }

  figure "venom" {
    value = "none"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Some countries that it lives in forbid export: look up where it is from. USA: look up the permit for keeping exotic invertebrates (G9)."
    source  = ["G9", "memory"]
    quality = "practice"
  }

  figure "climate-origin" {
    value   = "Wet forest of South-East Asia, on flowers and shrubs."
    source  = ["memory"]
    quality = "memory"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "2 days"
    per_animal = 6
    prey       = "fruit-fly hydei"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "2 days"
    per_animal = 1
    prey       = "cricket pinhead"
    because    = "Flies and moths are its food (OK44): give these where there are any. Crickets are digested poorly by some."
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "2 days"
    per_animal = 1
    prey       = "cricket small"
    because    = "One or two blue-bottles for a female and a small fly for a male are its food (OK44): give these where there are any. Crickets are digested poorly by some."
  }
}
