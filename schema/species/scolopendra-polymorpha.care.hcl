species "scolopendra-polymorpha" {
  title    = "tiger centipede"
  latin    = "Scolopendra polymorpha Wood, 1861"
  family   = "Scolopendridae"
  type     = "centipede"
  also     = ["common desert centipede", "Sonoran centipede"]
  mistaken = ["Scolopendra heros", "Scolopendra viridis"]
  note     = "S. heros grows to 20 cm and has a black head or tail (OS6). An animal of the desert that dies of drought, not of damp: bone-dry sand is the common mistake. Legs that were lost grow back in moults."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard    = "5 to 37 C"
  warm_spot           = "28 to 32 C"
  temperature_target  = "22 to 28 C"
  air                 = "22 to 28 C"
  night               = "16 to 21 C"
  substrate_depth_min = "10 cm"
  gap_max             = "1 mm"
  hairs               = "none"
  speed               = "quick"
  rest_full_heat      = "14 days"
  rest_step           = "2 to 3 C"
  rest_water          = "7 days"
  rest_first_meal     = "3 to 7 days"
  rest_full_meals     = "7 days"
  unattended_rest     = "7 days"

  figure "temperature-soft" {
    value   = "18 to 32 C"
    source  = ["OK15"]
    quality = "keeper"
    note    = "The range that is said to be borne."
  }

  figure "rest" {
    value   = "optional"
    source  = ["memory"]
    quality = "memory"
  }

  figure "winter-rest" {
    value   = "10 to 15 C"
    source  = ["memory"]
    quality = "memory"
  }

  figure "rest-length" {
    value   = "8 to 12 weeks"
    source  = ["memory"]
    quality = "memory"
  }

  figure "humidity-soft" {
    value   = "30 to 70 %"
    source  = ["memory"]
    quality = "memory"
  }

  figure "humidity-target" {
    value   = "40 to 60 %"
    source  = ["memory"]
    quality = "memory"
  }

  figure "moisture" {
    value   = "damp"
    source  = ["OK8"]
    quality = "practice"
    note    = "Damp below, dry on top, with one corner that is always damp. Dry times are borne (OK8, of S. cingulata and heros)."
  }

  figure "floor-first" {
    value  = "600 cm2"
    stages = ["subadult", "adult"]
    note   = "Twice its length long and one and a half times wide. Flat stones or bark that cannot sink."
  }

  figure "lid" {
    value   = "latched"
    source  = ["OK7"]
    quality = "practice"
    note    = "As for S. dehaani: nothing that it can lift, chew through or wedge itself into (OK7)."
  }

  figure "length" {
    value    = "10 to 18 cm"
    stages   = ["adult"]
    source   = ["OK15"]
    quality  = "keeper"
    disputed = "10 to 12.5 cm (OK16)"
  }

  figure "mass" {
    value   = "2 to 5 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "4 to 6 years"
    source   = ["memory"]
    quality  = "memory"
    disputed = "S. heros: to 6 years (OS6), over 5 years (OS7)"
  }

  figure "age-at-maturity" {
    value   = "2 to 3 years"
    source  = ["memory"]
    quality = "memory"
  }

  figure "brood-size" {
    value   = "35"
    source  = ["OS7"]
    quality = "society"
    note    = "About, in S. heros."
  }

  figure "sac-time" {
    value   = "21 days"
    source  = ["OS6"]
    quality = "society"
    note    = "S. heros lies three weeks on her eggs, without food or drink."
  }

  figure "on-mother" {
    value    = "3 to 30 days"
    source   = ["OS6", "OK11"]
    quality  = "practice"
    disputed = "a few days in S. heros (OS6), a month (OK11)"
  }

  figure "undisturbed" {
    value = "40 days"
    note  = "From hatching: 60 days from the laying."
  }

  figure "separation" {
    value = "separate"
    note  = "As soon as they scatter."
  }

  figure "keeping" {
    value   = "alone"
    source  = ["OK16"]
    quality = "keeper"
  }

  figure "venom" {
    value   = "painful"
    source  = ["OP10"]
    quality = "paper"
    note    = "Strong local pain, numbness and dizziness after the bite of a Scolopendra of 7 cm in the USA, with no lasting harm."
  }

  figure "defence" {
    value  = "A bite: soap and water, a cool pack, a pain drug, rings off, the state of tetanus; watch for two weeks for blackening or a relapse (OP7, OP9, OP10); warm water is also used (from memory)."
    source = ["OP7", "OP9", "OP10"]
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "USA: states have rules on collecting; look up yours."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Deserts. It bears neither heat nor great dryness well, and hides under rocks and boards by day."
    source  = ["OS6", "OK15"]
    quality = "keeper"
  }

  figure "prey-length-share" {
    value   = "50 %"
    source  = ["OK10"]
    quality = "keeper"
    note    = "In the wild it eats arthropods, worms and small reptiles (OK15)."
  }

  need "moisture" {
    longest = "7 days"
    note    = "The lower layer stays damp."
  }

  care "mist" {
    every = "7 days"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket medium"
  }
}
