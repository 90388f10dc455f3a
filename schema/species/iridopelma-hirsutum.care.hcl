species "iridopelma-hirsutum" {
  title    = "Brazilian pinktoe tarantula"
  latin    = "Iridopelma hirsutum Pocock, 1901"
  family   = "Theraphosidae"
  type     = "arboreal-tarantula"
  also     = ["Brazilian pinktoe"]
  former   = ["Avicularia hirsuta", "Avicularia palmicola"]
  mistaken = ["Avicularia"]
  note     = "The thinnest of these sheets, from its kin: names and origin have a source (A35, A38), the rest is practice or memory. A. palmicola is a synonym since 2012 (A35). It lives lower than a pinktoe: under bark, between low leaves, also in soil (A38)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "20 to 30 C"
  air                     = "22 to 28 C"
  night                   = "19 to 24 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "45 to 80 %"
  substrate_depth_advised = "7 cm"
  separation              = "separate"
  keeping                 = "alone"
  old_age_male            = "6 months"
  defence                 = "Fast: it flees."

  figure "temperature-hard" {
    value = "15 to 33 C"
    note  = "A precaution: no lethal temperature of it is known."
  }

  figure "temperature-target" {
    value = "22 to 28 C"
    note  = "No figure of keepers found; our reading of its climate, with a yearly mean of 25 C (A38)."
  }

  figure "humidity-target" {
    value = "60 to 75 %"
    note  = "No figure found. Soil half damp."
  }

  figure "floor-first" {
    value  = "300 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["subadult", "adult"]
  }

  figure "substrate-depth-min" {
    value = "5 cm"
    note  = "It is also found in soil (A38)."
  }

  figure "lifestyle" {
    value = "tree"
    note  = "Low: under bark, between low leaves, also in soil (A38). Cork and leaves near the ground."
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "length" {
    value   = "4 to 5 cm"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "span" {
    value   = "10 to 12 cm"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "mass" {
    value   = "4 to 8 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value   = "8 to 10 years"
    source  = ["memory"]
    quality = "memory"
    note    = "Females; males 2 to 3 years. Males live 6 to 18 months after their last moult."
  }

  figure "growth-factor" {
    value    = "1.25 to 1.4"
    source   = ["A53"]
    quality  = "practice"
    disputed = "1.38 (A53, of Grammostola vachoni, a slow kind of temperate places)"
  }

  figure "age-at-maturity" {
    value   = "24 months"
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
    value   = "50 to 100"
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
    note    = "After a bite: wash, cool, rest; trouble in breathing or a swelling face is an emergency."
  }

  figure "hairs" {
    value   = "contact"
    source  = ["memory"]
    quality = "memory"
    note    = "Type II. Of its genus both kinds are known, and one species has no patch on the back (A35). In the eyes: rinse, do not rub, see an eye doctor."
  }

  figure "speed" {
    value = "quick"
    note  = "Catch cup in reach, and the box opened inside a larger tub."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    note    = "None known to us: look it up."
  }

  figure "law" {
    value   = "None known; look up local rules. Not named in the lists of dangerous animals that were seen."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "North-eastern Brazil, forest of the coast and behind it, from Ceara to Alagoas; the types are from Pernambuco. Yearly mean 25 C."
    source  = ["A35", "A38"]
    quality = "keeper"
  }

  figure "sexing" {
    value   = "Males have spurs on legs I and II, unlike all kin."
    source  = ["A35"]
    quality = "paper"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 1
    prey       = "cricket large"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "6 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }
}
