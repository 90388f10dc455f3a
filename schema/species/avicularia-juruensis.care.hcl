species "avicularia-juruensis" {
  title    = "Amazonian pinktoe tarantula"
  latin    = "Avicularia juruensis Mello-Leitão, 1923"
  family   = "Theraphosidae"
  type     = "arboreal-tarantula"
  also     = ["Amazonian pinktoe", "Peruvian pinktoe", "yellow-banded pinktoe", "pinktoe"]
  former   = ["Avicularia urticans"]
  mistaken = ["Avicularia avicularia", "Avicularia rufa", "Iridopelma hirsutum"]
  note     = "No figure of heat or damp was found for this species: the sheet is that of A. avicularia with more damp. Names on animals in the trade are not checked by taxonomists (A33); there are two colour forms. A. urticans Schmidt, 1994 is a synonym since 2017 (A32)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "20 to 30 C"
  night                   = "19 to 24 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "50 to 85 %"
  moisture                = "damp"
  substrate_depth_min     = "3 cm"
  substrate_depth_advised = "5 cm"
  separation              = "separate"
  keeping                 = "alone"
  old_age_male            = "6 months"
  defence                 = "Flees and jumps."

  figure "temperature-hard" {
    value = "15 to 33 C"
    note  = "A precaution: no lethal temperature of it is known."
  }

  figure "temperature-target" {
    value = "22 to 28 C"
    note  = "As A. avicularia; none found of this species."
  }

  figure "air" {
    value = "22 to 28 C"
    note  = "As A. avicularia; none found of this species."
  }

  figure "humidity-hard" {
    value = "0 to 90 %"
    note  = "Our estimate: its type has 80 %, and lives drier."
  }

  figure "humidity-target" {
    value = "65 to 80 %"
    note  = "None found of this species: more than A. avicularia, since it is of the western Amazon. Soil a little damp below."
  }

  figure "floor-first" {
    value  = "400 cm2"
    stages = ["subadult", "adult"]
    note   = "As A. avicularia."
  }

  figure "height-min" {
    value    = "30 cm"
    stages   = ["subadult", "adult"]
    disputed = "30 to 45 cm (A27, of pinktoes)"
    note     = "As A. avicularia: a cork tube to the top."
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
    value   = "3.2 to 4.3 cm"
    stages  = ["adult"]
    source  = ["A33", "A32"]
    quality = "keeper"
    note    = "Carapace and abdomen of a male 15 and 17 mm, of a female 19 and 24 mm."
  }

  figure "span" {
    value   = "11 to 14 cm"
    stages  = ["adult"]
    source  = ["A33", "A32"]
    quality = "practice"
    note    = "Our estimate from the longest legs, 60 mm in the male and 58 in the female (A33)."
  }

  figure "mass" {
    value   = "12 to 20 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value   = "8 to 12 years"
    source  = ["memory"]
    quality = "memory"
    note    = "Females; males 3 years. Males live 6 to 18 months after their last moult."
  }

  figure "growth-factor" {
    value    = "1.25 to 1.4"
    source   = ["A53"]
    quality  = "practice"
    disputed = "1.38 (A53, of Grammostola vachoni, a slow kind of temperate places)"
  }

  figure "age-at-maturity" {
    value   = "24 to 36 months"
    source  = ["memory"]
    quality = "memory"
  }

  figure "sac-time" {
    value   = "6 to 8 weeks"
    source  = ["memory"]
    quality = "memory"
    note    = "Leave her undisturbed; she needs no food with the sac (A52)."
  }

  figure "brood-size" {
    value   = "80 to 180"
    source  = ["memory"]
    quality = "memory"
  }

  figure "wait-after-moult" {
    value  = "10 days"
    stages = ["adult"]
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["juvenile"]
  }

  figure "venom" {
    value   = "mild"
    source  = ["memory"]
    quality = "memory"
    note    = "As its genus. After a bite: wash, cool, rest; trouble in breathing or a swelling face is an emergency."
  }

  figure "hairs" {
    value   = "contact"
    source  = ["A33"]
    quality = "keeper"
    note    = "Type II, to 1 mm long in males and 0.7 mm in females. In the eyes: rinse, do not rub, see an eye doctor."
  }

  figure "speed" {
    value = "quick"
    note  = "Catch cup in reach, and the box opened inside a larger tub."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    note    = "None known to us: look it up, see law."
  }

  figure "law" {
    value   = "Look up whether it has been listed in CITES since: there were proposals for more tarantulas at the conference of 25 November to 6 December 2025; which, and what became of them, was not found. Not named in the lists of dangerous animals that were seen."
    source  = ["A15"]
    quality = "keeper"
  }

  figure "climate-origin" {
    value   = "The western Amazon: Colombia, Ecuador, Peru, Brazil."
    source  = ["A33"]
    quality = "keeper"
  }

  care "mist" {
    every = "3 days"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "4 days"
    per_animal = 1
    prey       = "fruit-fly hydei"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "6 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket small"
  }
}
