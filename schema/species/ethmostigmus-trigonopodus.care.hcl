species "ethmostigmus-trigonopodus" {
  title    = "African giant centipede"
  latin    = "Ethmostigmus trigonopodus (Leach, 1817)"
  family   = "Scolopendridae"
  type     = "centipede"
  also     = ["Tanzanian blue-ring centipede", "Tanzanian blue-leg centipede"]
  mistaken = ["Scolopendra morsitans", "Tanzanian blue ringleg"]
  note     = "The first question is which animal it is: Scolopendra morsitans, of 13 cm, with a red head and found all over the world, is also sold as Tanzanian blue ringleg (OK29). Of its growth and broods nothing was found; what is said of them here is that of S. dehaani."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard    = "14 to 35 C"
  temperature_soft    = "20 to 31 C"
  rest                = "none"
  cooler              = "2 to 3 C"
  humidity_soft       = "50 to 85 %"
  substrate_depth_min = "12 cm"
  hairs               = "none"
  speed               = "very quick"

  figure "temperature-target" {
    value   = "24 to 28 C"
    source  = ["memory"]
    quality = "memory"
  }

  figure "air" {
    value   = "24 to 28 C"
    source  = ["memory"]
    quality = "memory"
  }

  figure "night" {
    value   = "20 to 22 C"
    source  = ["memory"]
    quality = "memory"
  }

  figure "humidity-target" {
    value    = "60 to 75 %"
    source   = ["OK17"]
    quality  = "practice"
    disputed = "wet coir and high humidity, as from rain forest, by most; sand, clay and coir that are damp and then dry, as from savanna, by one (OK17)"
  }

  figure "moisture" {
    value = "damp"
    note  = "Damp below; the top may dry. The dish is never empty."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["OK17"]
    quality = "keeper"
    note    = "In compact soil one dug a real burrow within days."
  }

  figure "climbs" {
    value   = "seams"
    source  = ["OK17"]
    quality = "keeper"
    note    = "Bark that reaches high is climbed."
  }

  figure "floor-first" {
    value  = "900 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["subadult", "adult"]
    note   = "As S. dehaani."
  }

  figure "lid" {
    value   = "latched"
    source  = ["OK7"]
    quality = "practice"
    note    = "As for S. dehaani: nothing that it can lift, chew through or wedge itself into (OK7)."
  }

  figure "gap-max" {
    value   = "1 mm"
    stages  = ["newborn", "young", "juvenile"]
    source  = ["OK17"]
    quality = "practice"
    note    = "Young of another species got out of a box with slots of plastic (OK17)."
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["subadult", "adult"]
  }

  figure "length" {
    value    = "10 to 16 cm"
    stages   = ["adult"]
    source   = ["memory"]
    quality  = "memory"
    disputed = "to 20 cm, about eight inches (OK18)"
  }

  figure "mass" {
    value   = "3 to 8 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value   = "5 years"
    source  = ["memory"]
    quality = "memory"
    note    = "And more."
  }

  figure "brood-size" {
    value = "20 to 60"
    note  = "As S. dehaani; nothing was found."
  }

  figure "sac-time" {
    value = "28 to 42 days"
    note  = "As S. dehaani; nothing was found."
  }

  figure "on-mother" {
    value = "28 to 42 days"
    note  = "As S. dehaani; nothing was found."
  }

  figure "undisturbed" {
    value = "42 days"
    note  = "From hatching, and from the laying on before."
  }

  figure "separation" {
    value = "separate"
    note  = "As soon as they scatter."
  }

  figure "keeping" {
    value = "alone"
  }

  figure "venom" {
    value = "painful"
    note  = "No series of patients was found; treat it as that of S. dehaani."
  }

  figure "defence" {
    value  = "Very fast and nervous. A bite: soap and water, a cool pack, a pain drug, rings off, the state of tetanus; watch for two weeks for blackening or a relapse (OP7, OP9, OP10); warm water is also used (from memory)."
    source = ["OP7", "OP9", "OP10"]
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket adult"
  }
}
