species "opisthacanthus-asper" {
  title    = "tree creeper scorpion"
  latin    = "Opisthacanthus asper (Peters, 1861)"
  family   = "Hormuridae"
  type     = "bark-scorpion"
  also     = ["tree creeper"]
  mistaken = ["Opisthacanthus rugiceps", "Opisthacanthus capensis", "Opisthacanthus laevipes"]
  note     = "A slow breeder: a female that may be gravid for a year and a half is normal, not an error. O. rugiceps of East Africa has 6 to 7 cm (C78). The author of the name is from memory."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "18 to 32 C"
  temperature_target      = "23 to 28 C"
  warm_spot               = "28 to 31 C"
  air                     = "23 to 28 C"
  night                   = "18 to 22 C"
  winter_rest             = "16 to 19 C"
  rest_length             = "6 to 8 weeks"
  rest_full_heat          = "14 days"
  rest_step               = "2 to 3 C"
  rest_water              = "14 to 30 days"
  rest_first_meal         = "3 to 7 days"
  rest_full_meals         = "7 days"
  unattended_rest         = "21 days"
  humidity_soft           = "40 to 75 %"
  humidity_target         = "50 to 65 %"
  substrate_depth_min     = "4 cm"
  substrate_depth_advised = "6 cm"
  on_mother               = "13 to 20 days"
  gestation_longest       = "24 months"
  hairs                   = "none"
  speed                   = "quick"

  figure "temperature-hard" {
    value = "10 to 36 C"
    note  = "A precaution: no lethal temperature was found."
  }

  figure "rest" {
    value = "optional"
    note  = "Kept dry."
  }

  figure "moisture" {
    value = "either"
    note  = "Dry, with a damp corner; the bark is misted twice a week."
  }

  figure "floor-first" {
    value  = "450 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value   = "30 cm"
    stages  = ["subadult", "adult"]
    source  = ["C76"]
    quality = "practice"
    note    = "Bark or a hollow branch upright: it lives in crevices of the knobthorn (C76)."
  }

  figure "keeping" {
    value   = "alone, or mother with brood"
    source  = ["C76"]
    quality = "keeper"
    note    = "It lives singly in holes; males tap with their claws before they come near a female. A pair only while somebody watches."
  }

  figure "gap-max" {
    value  = "4 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1.5 mm"
    stages = ["young"]
  }

  figure "looks" {
    value   = "Black, with orange or yellow legs and sting."
    stages  = ["adult"]
    source  = ["C77"]
    quality = "keeper"
  }

  figure "length" {
    value   = "10 cm"
    stages  = ["adult"]
    source  = ["C76", "C77"]
    quality = "keeper"
    note    = "About; half of it is tail. Black, with orange or yellow legs and sting (C77)."
  }

  figure "mass" {
    value   = "5 to 9 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "moults-to-adult" {
    value   = "5 to 6"
    source  = ["C10"]
    quality = "practice"
    note    = "Its kin O. madagascariensis has six instars and moults on days 13, 101, 204, 327 and 442, males perhaps once more (C10)."
  }

  figure "age-at-maturity" {
    value    = "15 to 30 months"
    source   = ["C10"]
    quality  = "practice"
    disputed = "442 days in its kin O. madagascariensis (C10)"
  }

  figure "lifespan" {
    value   = "5 to 8 years"
    source  = ["memory"]
    quality = "memory"
  }

  figure "gestation" {
    value    = "12 to 20 months"
    source   = ["C10"]
    quality  = "practice"
    disputed = "18 months in its kin O. madagascariensis (C10)"
  }

  figure "brood-size" {
    value    = "5 to 25"
    source   = ["memory"]
    quality  = "memory"
    disputed = "3 in its kin O. cayaporum (C12)"
    note     = "Small broods."
  }

  figure "separation" {
    value = "keep with mother"
    note  = "Until instar 3."
  }

  figure "venom" {
    value   = "mild"
    source  = ["C47"]
    quality = "society"
    note    = "At worst a bee sting (C47); painful at worst (C76). Wash, cool, watch breathing and swelling for an hour; an allergy is an emergency."
  }

  figure "defence" {
    value   = "Docile."
    source  = ["C76"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "South Africa: all species of the genus are protected by the list of 2007. Ask for the paper of origin and of export."
    source  = ["C53"]
    quality = "society"
  }

  figure "climate-origin" {
    value   = "Savanna of the Lowveld and of Limpopo, in holes and bark of trees; a good climber on bark."
    source  = ["C76"]
    quality = "keeper"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "7 days"
    per_animal = 1
    rotate     = ["cricket medium", "cricket adult"]
  }
}
