species "liocheles-waigiensis" {
  title    = "Australian rainforest scorpion"
  latin    = "Hormurus waigiensis (Gervais, 1843)"
  family   = "Hormuridae"
  type     = "tropical-burrowing-scorpion"
  also     = ["rainforest scorpion", "large brown scorpion"]
  former   = ["Liocheles waigiensis"]
  mistaken = ["Liocheles australasiae"]
  note     = "The trade says Liocheles; newer works have it in Hormurus (from memory). L. australasiae has 22 to 36 mm and is mostly born of virgins (C112); this one is not known to be (C110, quoting a list of eight): a birth without a mating means stored sperm or a female caught gravid. It lives in cracks of rotten logs, and flat bark takes the place of depth. The family was Ischnuridae, Liochelidae, Hemiscorpiidae."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "18 to 29 C"
  temperature_target      = "22 to 27 C"
  air                     = "22 to 27 C"
  night                   = "18 to 22 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "65 to 95 %"
  humidity_target         = "75 to 85 %"
  substrate_depth_advised = "8 cm"
  hairs                   = "none"
  speed                   = "quick"

  figure "temperature-hard" {
    value = "12 to 33 C"
    note  = "A precaution: no lethal temperature was found."
  }

  figure "warm-spot" {
    value = "26 to 28 C"
    note  = "28 C at the most."
  }

  figure "moisture" {
    value    = "damp"
    disputed = "some forms of dry scrub live in a scrape under rock (C110)"
  }

  figure "substrate-depth-min" {
    value = "5 cm"
    note  = "Depth matters less than bark: stacked slabs, 5 to 8 mm apart."
  }

  figure "floor-first" {
    value  = "300 cm2"
    stages = ["subadult", "adult"]
    note   = "Six times the square of 7 cm: three lengths long and two wide (C139); our arithmetic."
  }

  figure "floor-further" {
    value  = "100 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "20 cm"
    stages = ["subadult", "adult"]
  }

  figure "keeping" {
    value    = "groups"
    source   = ["C111"]
    quality  = "practice"
    disputed = "small compact colonies in the wild (C111)"
    note     = "Tolerant: animals of one size, with a crevice for each."
  }

  figure "group-max" {
    value = "6"
  }

  figure "heater-not" {
    value = "under"
    note  = "It dries the lowest bark and soil, where it hides; our estimate."
  }

  figure "lifestyle" {
    value   = "bark"
    source  = ["C48"]
    quality = "practice"
    note    = "In cracks of bark and logs; a good climber, high up trunks (C48)."
  }

  figure "gap-max" {
    value  = "1.5 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "length" {
    value    = "6 to 7 cm"
    stages   = ["adult"]
    source   = ["C48", "C110"]
    quality  = "practice"
    disputed = "to 7 cm (C48), about 6 cm (C110)"
    note     = "The claws are long and heavy, the tail very short."
  }

  figure "mass" {
    value   = "1.5 to 3 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "moults-to-adult" {
    value   = "5 to 6"
    source  = ["C10"]
    quality = "practice"
    note    = "Not found. Its kin Opisthacanthus madagascariensis has six instars, the last from day 442 (C10); this one is as slow or slower."
  }

  figure "lifespan" {
    value   = "4 to 8 years"
    source  = ["memory"]
    quality = "memory"
  }

  figure "gestation" {
    value   = "8 to 17 months"
    source  = ["C11", "memory"]
    quality = "memory"
    note    = "C11 is of a kin that carries for 17 months."
  }

  figure "gestation-longest" {
    value = "24 months"
    note  = "Our estimate, by its kin."
  }

  figure "brood-size" {
    value   = "5 to 25"
    source  = ["memory"]
    quality = "memory"
  }

  figure "on-mother" {
    value = "14 days"
    note  = "About."
  }

  figure "separation" {
    value = "keep with mother"
    note  = "They may stay."
  }

  figure "venom" {
    value   = "mild"
    source  = ["C48"]
    quality = "society"
    note    = "Only mild effects are recorded. Wash, cool, watch breathing and swelling for an hour; an allergy is an emergency."
  }

  figure "defence" {
    value = "Pinches."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Australia is closed for export; keeping it there is licensed by each state: look it up."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Rain forest of Australia: cracks of rotten logs, and high up trunks (C48)."
    source  = ["C48"]
    quality = "practice"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "4 days"
    per_animal = 3
    prey       = "cricket pinhead"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "7 days"
    per_animal = 1
    rotate     = ["cricket small", "cricket small", "woodlouse adult"]
  }
}
