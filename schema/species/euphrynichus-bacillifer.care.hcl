species "euphrynichus-bacillifer" {
  title    = "long-armed whip spider"
  latin    = "Euphrynichus bacillifer (Gerstaecker, 1873)"
  family   = "Phrynichidae"
  type     = "whip-spider"
  also     = ["African whip spider", "tailless whip scorpion", "whip spider"]
  mistaken = ["Euphrynichus amanica", "Damon"]
  note     = "E. amanica, the only other species of its genus, lives beside it near the coast of Kenya and Tanzania (OK1). Its palps and legs need more room to hang than those of a Damon, as which it is sold. The old skin of an adult in the box is normal: it goes on moulting, at longer and longer gaps."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard    = "15 to 33 C"
  temperature_soft    = "20 to 30 C"
  rest                = "none"
  cooler              = "2 to 3 C"
  substrate_depth_min = "5 cm"
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
    value   = "20 to 22 C"
    source  = ["memory"]
    quality = "memory"
  }

  figure "humidity-soft" {
    value   = "55 to 90 %"
    source  = ["memory"]
    quality = "memory"
  }

  figure "humidity-target" {
    value   = "65 to 80 %"
    source  = ["memory"]
    quality = "memory"
    note    = "Over soil that is damp below."
  }

  figure "ventilation" {
    value = "any"
  }

  figure "floor-first" {
    value  = "900 cm2"
    stages = ["subadult", "adult"]
    note   = "30 x 30 cm."
  }

  figure "floor-further" {
    value  = "400 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "45 cm"
    stages = ["subadult", "adult"]
    note   = "Upright bark; palps and legs need more room to hang than those of Damon."
  }

  figure "gap-max" {
    value  = "1.5 mm"
    stages = ["newborn", "young"]
    note   = "As Damon diadema; our estimate."
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "moults-as-adult" {
    value   = "true"
    source  = ["OK1"]
    quality = "keeper"
    note    = "It grows all its life; the gaps between moults become longer."
  }

  figure "length" {
    value    = "30 to 40 mm"
    stages   = ["adult"]
    source   = ["memory"]
    quality  = "memory"
    disputed = "5 to 50 mm in the whole order (OK2)"
  }

  figure "span" {
    value   = "20 to 25 cm"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "mass" {
    value   = "2 to 5 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "moults-to-adult" {
    value   = "7 to 9"
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value   = "5 to 8 years"
    source  = ["memory"]
    quality = "memory"
  }

  figure "brood-size" {
    value   = "15 to 40"
    source  = ["memory"]
    quality = "memory"
  }

  figure "sac-time" {
    value   = "90 days"
    source  = ["memory"]
    quality = "memory"
    note    = "Three months, as Damon."
  }

  figure "on-mother" {
    value   = "7 to 14 days"
    source  = ["memory"]
    quality = "memory"
  }

  figure "separation" {
    value = "keep with mother"
  }

  figure "keeping" {
    value = "groups of one male"
    note  = "As Damon; no evidence of its own was found."
  }

  figure "venom" {
    value   = "none"
    source  = ["OK1"]
    quality = "keeper"
  }

  figure "defence" {
    value   = "Very long palps, with spines on the hand at the tip only."
    source  = ["OK1"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["OK2"]
    quality = "keeper"
  }

  figure "climate-origin" {
    value   = "Kenya to Angola, Zimbabwe and Madagascar: large hollows under bark and crevices in the moister places."
    source  = ["OK1"]
    quality = "keeper"
  }

  figure "sexing" {
    value   = "Early by reddish hairs at the rear edge of the female genital plate; by the palps, which are longer in the male, only later."
    source  = ["OK1"]
    quality = "keeper"
  }

  care "mist" {
    every = "2 days"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "7 days"
    per_animal = 1
    rotate     = ["cricket adult", "roach medium"]
  }
}
