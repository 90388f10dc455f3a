species "pandinoides-cavimanus" {
  title    = "Tanzanian red-clawed scorpion"
  latin    = "Pandinoides cavimanus (Pocock, 1888)"
  family   = "Scorpionidae"
  type     = "tropical-burrowing-scorpion"
  also     = ["red claw", "red-clawed scorpion", "Rotscheren-Kaiserskorpion"]
  former   = ["Pandinus cavimanus", "Pandinus militaris"]
  mistaken = ["Cheloctonus jonesii", "Pandinus imperator", "Scorpio maurus"]
  note     = "P. militaris was made a synonym in 2002 (C62). Sold as a young emperor. One shop text calls Cheloctonus jonesii by this name: wrong animal, wrong care. Of humid savanna as well as forest (C62): it stands a dry week better than an emperor."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard        = "15 to 35 C"
  temperature_soft        = "22 to 32 C"
  warm_spot               = "28 to 31 C"
  night                   = "20 to 24 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "60 to 90 %"
  substrate_depth_min     = "12 cm"
  substrate_depth_advised = "15 cm"
  growth_factor           = "1.26"
  moults_to_adult         = "6"
  age_at_maturity         = "24 to 42 months"
  on_mother               = "14 to 21 days"
  hairs                   = "none"
  speed                   = "quick"

  figure "temperature-target" {
    value   = "24 to 30 C"
    source  = ["C63"]
    quality = "keeper"
  }

  figure "air" {
    value   = "24 to 30 C"
    source  = ["C63"]
    quality = "keeper"
  }

  figure "humidity-target" {
    value    = "75 to 85 %"
    disputed = "70 to 90 % (C63), 75 to 90 % (C64)"
  }

  figure "moisture" {
    value = "damp"
    note  = "The top may dry between."
  }

  figure "heater-not" {
    value   = "under"
    source  = ["C64"]
    quality = "keeper"
    note    = "It digs to cool."
  }

  figure "floor-first" {
    value    = "700 cm2"
    stages   = ["subadult", "adult"]
    disputed = "a box of 20 L at least (C63)"
    note     = "Six times the square of 11 cm: three lengths long and two wide; our arithmetic."
  }

  figure "height-min" {
    value  = "25 cm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "6 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["young"]
  }

  figure "looks" {
    value   = "Almost black: the red of the claws is not there yet, and young emperors look alike."
    stages  = ["young", "juvenile"]
    source  = ["C62"]
    quality = "keeper"
  }

  figure "looks" {
    value   = "Dark, with red-brown claws."
    stages  = ["subadult", "adult"]
    source  = ["C62"]
    quality = "keeper"
    note    = "The reddish colour comes with late instars."
  }

  figure "length" {
    value    = "9 to 12 cm"
    stages   = ["adult"]
    source   = ["C62", "C63"]
    quality  = "keeper"
    disputed = "about 10 cm (C64), 10 to 15 cm (a page on travel)"
  }

  figure "mass" {
    value   = "10 to 18 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "5 to 8 years"
    source   = ["C63", "C67"]
    quality  = "practice"
    disputed = "to 8 years (C63), 5 to 7 and to 10 years (C67), 10 to 15 years (C64)"
  }

  figure "brood-size" {
    value   = "15 to 30"
    source  = ["memory"]
    quality = "memory"
  }

  figure "gestation" {
    value   = "9 to 14 months"
    source  = ["memory"]
    quality = "memory"
  }

  figure "gestation-longest" {
    value = "18 months"
    note  = "Our estimate."
  }

  figure "separation" {
    value = "separate"
    note  = "Each alone by instar 3, or on the first loss."
  }

  figure "keeping" {
    value    = "alone, or mother with brood"
    source   = ["C65"]
    quality  = "keeper"
    disputed = "other texts disagree (C65 says so)"
  }

  figure "venom" {
    value   = "mild"
    source  = ["C62"]
    quality = "keeper"
    note    = "As a wasp, with moderate to strong pain; allergy is possible."
  }

  figure "defence" {
    value   = "More ready to fight than an emperor; a pinch is felt through a padded glove."
    source  = ["C63", "C64", "C65"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["C67"]
    quality = "keeper"
  }

  figure "law" {
    value   = "Tanzania stopped the export of wildlife: what is sold is bred, or old stock."
    source  = ["C63"]
    quality = "keeper"
  }

  figure "climate-origin" {
    value   = "East Africa: humid savanna and forest."
    source  = ["C62"]
    quality = "keeper"
  }

  figure "sexing" {
    value   = "Of the grown by the claw: round in the female, smoother with a notch in the male. Comb teeth are 14 to 17 in both."
    source  = ["C62"]
    quality = "keeper"
  }

  care "mist" {
    every = "3 days"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket medium"
  }
}
