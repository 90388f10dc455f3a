species "phrynus-marginemaculatus" {
  title    = "Florida whip spider"
  latin    = "Phrynus marginemaculatus C. L. Koch, 1840"
  family   = "Phrynidae"
  type     = "whip-spider"
  also     = ["Florida tailless whip scorpion", "tailless whip scorpion", "whip spider"]
  former   = ["Phrynus marginenotata"]
  mistaken = ["Paraphrynus"]
  note     = "The one whip spider with evidence that adults of a group get on (OP1). The mark of the genus is five spines on the tibia of the palp, the third shorter than the second and the fourth (OK3); young of Phrynus from other islands are sold as it. Small young need mesh of 1 mm and fruit flies."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard = "12 to 34 C"
  temperature_soft = "20 to 30 C"
  rest             = "none"
  cooler           = "2 to 3 C"
  hairs            = "none"
  speed            = "quick"

  figure "temperature-target" {
    value   = "23 to 28 C"
    source  = ["memory"]
    quality = "memory"
  }

  figure "air" {
    value   = "23 to 28 C"
    source  = ["memory"]
    quality = "memory"
  }

  figure "night" {
    value   = "20 to 22 C"
    source  = ["memory"]
    quality = "memory"
  }

  figure "humidity-soft" {
    value   = "60 to 90 %"
    source  = ["memory"]
    quality = "memory"
    note    = "70 to 85 % is aimed for, as for all whip spiders."
  }

  figure "ventilation" {
    value = "any"
    note  = "Not sealed."
  }

  figure "floor-first" {
    value  = "400 cm2"
    stages = ["subadult", "adult"]
    note   = "20 x 20 cm, for one to three."
  }

  figure "floor-further" {
    value  = "150 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "25 cm"
    stages = ["subadult", "adult"]
    note   = "At least three body lengths free below the bark; in practice twice the leg span, as Damon (from memory). Cork stands at 45 degrees or steeper."
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["newborn", "young", "juvenile"]
    note   = "Fine mesh where there is any."
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["subadult", "adult"]
  }

  figure "drinks" {
    value = "droplets"
    note  = "And from a shallow dish."
  }

  figure "length" {
    value   = "12 to 18 mm"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    note    = "No measured one could be read."
  }

  figure "span" {
    value   = "7 to 10 cm"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "mass" {
    value   = "0.3 to 0.8 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "moults-to-adult" {
    value   = "6 to 9"
    source  = ["memory"]
    quality = "memory"
  }

  figure "age-at-maturity" {
    value   = "12 to 18 months"
    source  = ["memory"]
    quality = "memory"
    note    = "No length of an instar was found; the kin Charinus guto took 147 days to its first moult in captivity and 125 to the second (P32)."
  }

  figure "lifespan" {
    value   = "3 to 6 years"
    source  = ["memory"]
    quality = "memory"
  }

  figure "brood-size" {
    value   = "10 to 40"
    source  = ["memory"]
    quality = "memory"
  }

  figure "sac-time" {
    value   = "60 to 100 days"
    source  = ["P32"]
    quality = "practice"
    note    = "Carried under the body. Charinus guto 59 days (P32); the rest is our reading."
  }

  figure "on-mother" {
    value   = "10 days"
    source  = ["P32"]
    quality = "practice"
    note    = "As counted in Charinus guto (P32): they get off at their first moult."
  }

  figure "separation" {
    value   = "keep with mother"
    source  = ["OP1"]
    quality = "paper"
    note    = "Mother, young and siblings stay together and touch each other often."
  }

  figure "keeping" {
    value   = "groups"
    source  = ["OP1"]
    quality = "paper"
    note    = "Little aggression into adulthood. What makes them gather is danger, not prey or bark. Plenty of food and a hide a head."
  }

  figure "venom" {
    value = "none"
  }

  figure "defence" {
    value = "Thorns on the palps can prick: wash the prick. It runs sideways, fast, and flattens itself."
  }

  figure "cites" {
    value   = "none"
    source  = ["OK2"]
    quality = "keeper"
    note    = "No whip spider is listed, nor in an annex of the EU; the page is undated."
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 1
    prey       = "fruit-fly hydei"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket small"
  }
}
