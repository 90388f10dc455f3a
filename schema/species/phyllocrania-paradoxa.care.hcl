species "phyllocrania-paradoxa" {
  title    = "ghost mantis"
  latin    = "Phyllocrania paradoxa Burmeister, 1838"
  family   = "Hymenopodidae"
  type     = "mantis"
  also     = ["Geistermantis"]
  mistaken = ["Phyllocrania illudens", "Phyllocrania insignis"]
  note     = "One that lies on the ground is often acting: look again after ten minutes before any alarm (big nymphs and females, OK39). Its colour changes from moult to moult with light and damp. By newer texts there are three species, two of them of Madagascar (OK41)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard  = "14 to 36 C"
  temperature_soft  = "20 to 31 C"
  rest              = "none"
  cooler            = "2 to 3 C"
  humidity_soft     = "40 to 75 %"
  gap_max           = "1 mm"
  group_max         = "6"
  hairs             = "none"
  speed             = "slow"

  stage "young" {
    instars = "1 to 3"
  }

  stage "juvenile" {
    instars = "4 to 5"
  }

  stage "subadult" {
    instars = "6 to 7"
    note    = "Males moult six times, females seven (OK38)."
  }

  stage "adult" {
    instars = "8"
  }

  figure "temperature-target" {
    value   = "25 to 28 C"
    source  = ["OK38"]
    quality = "keeper"
    note    = "Room temperature is borne (OK38)."
  }

  figure "air" {
    value   = "25 to 28 C"
    source  = ["OK38"]
    quality = "keeper"
  }

  figure "night" {
    value   = "22 to 24 C"
    source  = ["OK38"]
    quality = "practice"
    note    = "Not below 22 to 23 C (OK38)."
  }

  figure "humidity-target" {
    value    = "50 to 65 %"
    source   = ["OK38", "OK39"]
    quality  = "practice"
    disputed = "very dry (OK39, of open dry scrub), a spray every evening (OK38)"
    note     = "Sprayed so that it is dry within hours. That steady damp saves moults is said on a weak page."
  }

  figure "floor-first" {
    value  = "225 cm2"
    stages = ["adult"]
    note   = "One alone: 15 x 15 x 20 cm; 40 x 40 x 60 cm for four to six."
  }

  figure "floor-further" {
    value    = "100 cm2"
    stages   = ["adult"]
    disputed = "40 cm wide and 60 cm high for some (OK38)"
  }

  figure "height-min" {
    value  = "20 cm"
    stages = ["adult"]
  }

  figure "keeping" {
    value    = "groups"
    source   = ["OK38", "OK39"]
    quality  = "keeper"
    disputed = "males may be eaten by females: by sex (OK38, OK40)"
    note     = "One sex from L6 on, of one size, with food in sight every day."
  }

  figure "separation" {
    value   = "keep with mother"
    source  = ["OK38"]
    quality = "keeper"
    note    = "Young may stay together; there is no brood care."
  }

  figure "length" {
    value    = "4 to 7 cm"
    stages   = ["adult"]
    source   = ["OK38"]
    quality  = "keeper"
    disputed = "45 to 50 mm (OK41), 5 to 6 cm (OS17)"
    note     = "Males 4 to 5, females 6 to 7 cm (OK38)."
  }

  figure "mass" {
    value   = "1 to 1.5 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    note    = "Females."
  }

  figure "lifespan" {
    value    = "8 to 11 months"
    source   = ["OK40"]
    quality  = "keeper"
    disputed = "females 12 of which 6 as adult, males 7.5 of which 2 (OK37); to 14 months (OS5); two years (OK41)"
    note     = "Females 11, males 8 (OK40)."
  }

  figure "moults-to-adult" {
    value    = "6 to 7"
    source   = ["OK38"]
    quality  = "keeper"
    disputed = "adult at the fourth moult, a moult every 3 to 5 weeks (OS5)"
    note     = "Males six, females seven."
  }

  figure "age-at-maturity" {
    value   = "5.5 to 6 months"
    source  = ["OK37"]
    quality = "keeper"
  }

  figure "sac-time" {
    value    = "30 to 35 days"
    source   = ["OK40", "OS5"]
    quality  = "practice"
    disputed = "about 5 weeks (OK40), about a month (OS5)"
  }

  figure "brood-size" {
    value   = "20 to 50"
    source  = ["OK38", "OK40"]
    quality = "keeper"
    note    = "From each of 8 to 10 oothecae at most; mated three weeks after the last moult."
  }

  figure "old-age" {
    value = "150 days"
    note  = "It lies, and eats from tongs."
  }

  figure "old-age-male" {
    value = "45 days"
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
    value   = "USA: look up the permit for keeping exotic invertebrates."
    source  = ["G9"]
    quality = "guideline"
  }

  figure "climate-origin" {
    value   = "Open dry scrub of Africa."
    source  = ["OK39"]
    quality = "keeper"
  }

  figure "sexing" {
    value   = "From L4 or L5 on by the crown: broad with one bend in females, thin with two in males."
    source  = ["OK39"]
    quality = "keeper"
  }

  care "mist" {
    every = "2 days"
  }

  figure "prey-length-share" {
    value  = "33 %"
    stages = ["juvenile", "subadult", "adult"]
    note   = "It is a weak hunter."
  }

  feeding "young" {
    stages     = ["young"]
    every      = "day"
    per_animal = 4
    prey       = "fruit-fly melanogaster"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "2 days"
    per_animal = 4
    prey       = "fruit-fly hydei"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "3 days"
    per_animal = 1
    prey       = "banded-cricket small"
    because    = "Flies are better; males are easily stressed (OK39)."
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket small"
    because    = "Flies are better; males are easily stressed (OK39)."
  }
}
