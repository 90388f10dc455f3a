species "ybyrapora-diversipes" {
  title    = "Amazon sapphire pinktoe tarantula"
  latin    = "Ybyrapora diversipes (C. L. Koch, 1842)"
  family   = "Theraphosidae"
  type     = "arboreal-tarantula"
  also     = ["Amazon sapphire pinktoe"]
  former   = ["Avicularia diversipes", "Mygale diversipes", "Eurypelma diversipes"]
  mistaken = ["Ybyrapora sooretama", "Ybyrapora gamba", "Caribena versicolor"]
  note     = "A thin sheet: only size and names have a source (A34); the rest is from its kin or from memory. Avicularia diversipes from 2009 to 2017 (A34; the genus is of A17). It is not from the Amazon, whatever it is sold as. Small, it dries out fast: slings want both moving air and a droplet every 2 to 3 days."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "19 to 29 C"
  night                   = "18 to 23 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "50 to 85 %"
  moisture                = "damp"
  substrate_depth_min     = "3 cm"
  substrate_depth_advised = "5 cm"
  separation              = "separate"
  keeping                 = "alone"
  old_age_male            = "6 months"
  defence                 = "Fast: it flees."

  figure "temperature-hard" {
    value = "15 to 32 C"
    note  = "A precaution: no lethal temperature of it is known."
  }

  figure "temperature-target" {
    value = "21 to 27 C"
    note  = "No figure found; our reading of its climate."
  }

  figure "air" {
    value = "21 to 27 C"
    note  = "No figure found; our reading of its climate."
  }

  figure "humidity-hard" {
    value = "0 to 90 %"
    note  = "Our estimate: its type has 80 %, and lives drier."
  }

  figure "humidity-target" {
    value = "65 to 80 %"
    note  = "No figure found. Soil damp below."
  }

  figure "floor-first" {
    value  = "300 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "25 cm"
    stages = ["subadult", "adult"]
    note   = "25 to 30 cm, with cork and leaves."
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
  }

  figure "length" {
    value   = "4 to 6 cm"
    stages  = ["adult"]
    source  = ["A34"]
    quality = "keeper"
    note    = "Males 4 cm, females nearly 6."
  }

  figure "span" {
    value   = "9 cm"
    stages  = ["adult"]
    source  = ["A34"]
    quality = "keeper"
    note    = "About."
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
    value   = "18 to 30 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Slings are green, juveniles have blue legs and a red back, adults are brown with a green-blue shine (A34)."
  }

  figure "sac-time" {
    value   = "5 to 7 weeks"
    source  = ["memory"]
    quality = "memory"
    note    = "Leave her undisturbed; she needs no food with the sac (A52)."
  }

  figure "brood-size" {
    value   = "30 to 80"
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
    note    = "Type II. In the eyes: rinse, do not rub, see an eye doctor."
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
    value   = "Ask for proof of captive origin: Brazil. Look up local rules; not named in the lists of dangerous animals that were seen."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "The Atlantic forest of Bahia, Brazil."
    source  = ["memory"]
    quality = "memory"
  }

  care "mist" {
    every = "3 days"
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
