species "acanthophrynus-coronatus" {
  title    = "Mexican giant whip spider"
  latin    = "Acanthophrynus coronatus (Butler, 1873)"
  family   = "Phrynidae"
  also     = ["tailless whip scorpion", "whip spider"]
  type     = "whip-spider"
  mistaken = ["Paraphrynus", "Heterophrynus"]
  note     = "Rare and slow, and the largest of its family (OP2, which calls the family Tarantulidae); its climate is known from memory only. A fast of two or three months with a full body is normal before a moult. When it stands high with wide palps, rocks and hisses it threatens, and is not ill."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard    = "12 to 34 C"
  temperature_soft    = "19 to 30 C"
  rest                = "none"
  substrate_depth_min = "6 cm"
  hairs               = "none"
  speed               = "quick"

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
    value   = "18 to 22 C"
    source  = ["memory"]
    quality = "memory"
  }

  figure "cooler" {
    value = "2 to 3 C"
    note  = "A drier and cooler winter is possible; it takes no true rest."
  }

  figure "humidity-soft" {
    value   = "50 to 85 %"
    source  = ["memory"]
    quality = "memory"
  }

  figure "humidity-target" {
    value   = "60 to 75 %"
    source  = ["memory"]
    quality = "memory"
    note    = "Drier than other whip spiders, over soil that is damp below."
  }

  figure "floor-first" {
    value  = "1600 cm2"
    stages = ["subadult", "adult"]
    note   = "40 x 40 cm."
  }

  figure "height-min" {
    value  = "60 cm"
    stages = ["subadult", "adult"]
    note   = "Upright walls of bark or stone."
  }

  figure "lid" {
    value   = "latched"
    source  = ["OP2"]
    quality = "paper"
    note    = "One escaped several times in a year."
  }

  figure "gap-max" {
    value  = "1.5 mm"
    stages = ["newborn", "young"]
    note   = "As Damon diadema; our estimate."
  }

  figure "gap-max" {
    value  = "3 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "hangs-to-moult" {
    value   = "true"
    source  = ["OP2"]
    quality = "practice"
    note    = "A male moulted once in captivity, after 13 months, and died of it (OP2): room to hang and weeks without a disturbance matter most."
  }

  figure "premoult-fast" {
    value  = "2 to 3 months"
    stages = ["adult"]
    note   = "With a full body."
  }

  figure "premoult-look" {
    value  = "90 days"
    stages = ["adult"]
  }

  figure "premoult-help" {
    value  = "120 days"
    stages = ["adult"]
    note   = "Our estimate: a month after it is asked."
  }

  figure "length" {
    value    = "40 to 60 mm"
    stages   = ["adult"]
    source   = ["memory"]
    quality  = "memory"
    disputed = "the largest of its family, with no figure (OP2)"
  }

  figure "span" {
    value   = "30 cm"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    note    = "And more."
  }

  figure "mass" {
    value   = "5 to 10 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value   = "8 years"
    source  = ["memory"]
    quality = "memory"
    note    = "And more."
  }

  figure "brood-size" {
    value   = "30 to 60"
    source  = ["memory"]
    quality = "memory"
    note    = "Nothing was found."
  }

  figure "sac-time" {
    value = "60 to 100 days"
    note  = "As Damon; nothing was found."
  }

  figure "on-mother" {
    value = "7 to 14 days"
    note  = "As Damon; nothing was found."
  }

  figure "separation" {
    value = "keep with mother"
    note  = "As Damon."
  }

  figure "keeping" {
    value    = "alone, or mother with brood"
    disputed = "a pair (common practice)"
    note     = "No evidence was found."
  }

  figure "venom" {
    value = "none"
  }

  figure "defence" {
    value   = "The strongest palps of the whip spiders in the trade: deep pricks are possible (from memory), wash them. It hisses like a small rattlesnake by rubbing its jaws; every male that was looked at had the organ (OP2)."
    source  = ["OP2", "memory"]
    quality = "memory"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value = "Mexico: look up what an export needs; a paper on the origin is sensible."
  }

  figure "climate-origin" {
    value   = "Nayarit in Mexico: a dry season, and rains."
    source  = ["memory"]
    quality = "memory"
  }

  figure "items-a-week" {
    value   = "1 to 2"
    stages  = ["adult"]
    source  = ["OP2"]
    quality = "practice"
    note    = "A captive male fed voraciously on moths and other soft insects for a year (OP2)."
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
    rotate     = ["cricket adult", "roach medium"]
  }
}
