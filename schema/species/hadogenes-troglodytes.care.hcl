species "hadogenes-troglodytes" {
  title    = "flat rock scorpion"
  latin    = "Hadogenes troglodytes (Peters, 1861)"
  family   = "Hormuridae"
  type     = "rock-scorpion"
  also     = ["longest scorpion"]
  mistaken = ["Hadogenes bicolor", "Hadogenes granulatus", "Hadogenes paucidens", "Iomachus"]
  note     = "It needs height of cracks, not depth of soil: its curved claws are for rock, and sand hinders it (C74). A slab that slides kills it: glue the stones, none stands on soil or over a heater. Falls hurt. Grown ones may fast for months. All waits are long: asking after a moult comes twice as late as for its kin. In Germany every Hadogenes is sold as bicolor, and animals from Tanzania are probably Iomachus (C71). The family was Liochelidae, Hemiscorpiidae."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "18 to 34 C"
  temperature_target      = "24 to 29 C"
  air                     = "24 to 29 C"
  night                   = "18 to 22 C"
  winter_rest             = "15 to 18 C"
  rest_length             = "6 to 10 weeks"
  rest_full_heat          = "14 days"
  rest_step               = "2 to 3 C"
  rest_water              = "14 to 30 days"
  rest_first_meal         = "3 to 7 days"
  rest_full_meals         = "7 days"
  unattended_rest         = "21 days"
  humidity_soft           = "30 to 65 %"
  substrate_depth_advised = "3 cm"
  on_mother               = "14 to 25 days"
  gestation_longest       = "30 months"
  hairs                   = "none"
  speed                   = "quick"

  figure "temperature-hard" {
    value = "8 to 38 C"
    note  = "A precaution: no lethal temperature was found."
  }

  figure "warm-spot" {
    value = "30 to 34 C"
    note  = "On stone."
  }

  figure "rest" {
    value = "optional"
    note  = "Kept dry: its country has dry winters."
  }

  figure "humidity-target" {
    value    = "40 to 55 %"
    disputed = "slightly humid and rocky (C74)"
    note     = "One stone face is misted weekly, and it drinks the drops. Its regions have less than 600 mm of rain (C72)."
  }

  figure "ventilation" {
    value = "cross"
    note  = "Much air."
  }

  figure "substrate-depth-min" {
    value   = "2 cm"
    source  = ["C74"]
    quality = "practice"
    note    = "2 to 3 cm and no more: its claws are for rock and hinder it on sand (C74)."
  }

  figure "floor-first" {
    value  = "1500 cm2"
    stages = ["subadult", "adult"]
    note   = "Six times the square of 16 cm: three lengths long and two wide (C139); our arithmetic."
  }

  figure "floor-further" {
    value  = "600 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["subadult", "adult"]
    note   = "Slabs with cracks of 12 to 20 mm. Its kin H. bicolor walks upside down under overhangs (C75)."
  }

  figure "keeping" {
    value    = "alone, or mother with brood"
    disputed = "lives all its life on one outcrop (C74)"
    note     = "Pairs and groups of two to four, one crack each, only with caution: evidence is weak."
  }

  figure "gap-max" {
    value  = "8 mm"
    stages = ["subadult", "adult"]
    note   = "It is flat: the height of its body counts, not the width."
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["young"]
  }

  figure "heater-not" {
    value = "under"
    note  = "Stones that stand over a heater can shift."
  }

  figure "length" {
    value    = "13 to 21 cm"
    stages   = ["adult"]
    source   = ["C72", "C74"]
    quality  = "practice"
    disputed = "males to 20 to 21 cm (C72, C74), females 13 to 16 cm (from memory)"
  }

  figure "mass" {
    value   = "20 to 32 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "moults-to-adult" {
    value   = "5 to 6"
    source  = ["C10"]
    quality = "practice"
    note    = "Not found; its kin Opisthacanthus madagascariensis has six instars (C10)."
  }

  figure "age-at-maturity" {
    value    = "30 to 60 months"
    source   = ["C72"]
    quality  = "practice"
    disputed = "nearly 3 years (C72)"
  }

  figure "lifespan" {
    value    = "10 to 25 years"
    source   = ["memory"]
    quality  = "memory"
    disputed = "more than 30 years, a claim (C72)"
  }

  figure "gestation" {
    value    = "12 to 24 months"
    source   = ["C10", "C11"]
    quality  = "practice"
    disputed = "17 to 18 months in kin (C10, C11)"
    note     = "For the genus 18 months and more are remembered."
  }

  figure "brood-size" {
    value   = "10 to 35"
    source  = ["memory"]
    quality = "memory"
  }

  figure "separation" {
    value = "keep with mother"
    note  = "They live in her crack for months (from memory); not taken out before instar 3."
  }

  figure "premoult-look" {
    value  = "60 days"
    stages = ["young"]
  }

  figure "premoult-help" {
    value  = "180 days"
    stages = ["young"]
  }

  figure "premoult-look" {
    value  = "60 days"
    stages = ["juvenile"]
  }

  figure "premoult-help" {
    value  = "180 days"
    stages = ["juvenile"]
  }

  figure "premoult-look" {
    value  = "120 days"
    stages = ["subadult"]
  }

  figure "premoult-help" {
    value  = "240 days"
    stages = ["subadult"]
  }

  figure "prey-length-share" {
    value  = "66 %"
    stages = ["subadult", "adult"]
  }

  figure "venom" {
    value   = "mild"
    source  = ["C47"]
    quality = "society"
    note    = "No more than a bee sting. Wash, cool, watch breathing and swelling for an hour; an allergy is an emergency."
  }

  figure "defence" {
    value   = "Rarely stings; pinches."
    source  = ["C72"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "South Africa has the genus among those for which it asks a permit: look it up, and ask for the papers of export."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Cracks of rock outcrops, on one all its life (C74), in regions of less than 600 mm of rain; land snails are named as its main food there (C72)."
    source  = ["C72", "C74"]
    quality = "keeper"
  }

  figure "sexing" {
    value   = "The tail of males is very thin and long."
    source  = ["C72", "C74"]
    quality = "keeper"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket small"
    killed     = true
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket adult"
  }
}
