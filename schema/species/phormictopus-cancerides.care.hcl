species "phormictopus-cancerides" {
  title    = "Hispaniolan giant tarantula"
  latin    = "Phormictopus cancerides (Latreille, 1806)"
  family   = "Theraphosidae"
  type     = "humid-terrestrial-tarantula"
  also     = ["Hispaniolan giant", "Haitian brown", "cacata", "araignee-crabe", "Haiti-Vogelspinne"]
  mistaken = ["Phormictopus cubensis", "Citharacanthus spinicrus", "Phormictopus sp. purple", "Phormictopus sp. green"]
  note     = "No beginner's animal in spite of its looks: it bites or bolts as readily as it throws hairs. Work with tools, always. The young are blue or metallic, which fades (T131)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  rest                    = "none"
  cooler                  = "2 to 3 C"
  separation              = "separate"
  speed                   = "quick"
  substrate_depth_advised = "15 cm"
  humidity_target         = "65 to 75 %"
  keeping                 = "alone"

  figure "temperature-hard" {
    value = "14 to 35 C"
    note  = "A precaution: no lethal figure of this species is known."
  }

  figure "temperature-soft" {
    value = "18 to 31 C"
    note  = "Our margin, a precaution."
  }

  figure "humidity-soft" {
    value = "50 to 85 %"
    note  = "Our margin, a precaution."
  }

  figure "humidity-hard" {
    value  = "40 to 100 %"
    source = ["T131"]
    note   = "Our estimate: it lives in dry places too (T131)."
  }

  figure "temperature-target" {
    value   = "22 to 28 C"
    source  = ["T128"]
    quality = "keeper"
    note    = "T128 has it from Kovařík, 2001."
  }

  figure "air" {
    value   = "22 to 28 C"
    source  = ["T128"]
    quality = "keeper"
  }

  figure "night" {
    value  = "18 to 20 C"
    source = ["T128"]
    note   = "Under 20 C by night, and the drop matters for breeding (T128); the lower figure is ours."
  }

  figure "moisture" {
    value = "damp"
    note  = "Damp below."
  }

  figure "substrate-depth-min" {
    value  = "12 cm"
    source = ["T128"]
    note   = "12 to 15 cm. It digs where it has no hide (T128)."
  }

  figure "floor-first" {
    value  = "1600 cm2"
    stages = ["subadult", "adult"]
    source = ["T128"]
    note   = "Four leg spans long (T128)."
  }

  figure "fall-max" {
    value  = "25 cm"
    stages = ["subadult", "adult"]
    note   = "20 cm is better: one leg span."
  }

  figure "length" {
    value    = "7 to 8 cm"
    stages   = ["adult"]
    source   = ["T131"]
    quality  = "keeper"
    disputed = "10 to 13 cm (T129), which is doubtful"
    note     = "Body."
  }

  figure "span" {
    value    = "18 to 23 cm"
    stages   = ["adult"]
    source   = ["T51"]
    quality  = "society"
    disputed = "20 cm (T129)"
  }

  figure "mass" {
    value  = "32 to 67 g"
    stages = ["adult"]
    note   = "Our estimate, no source: 0.0055 g times the cube of a leg span of 18 to 23 cm."
  }

  figure "lifespan" {
    value    = "15 to 20 years"
    source   = ["T131", "T51"]
    disputed = "15 years (T131), over 20 years (T51)"
    note     = "Females; males 18 to 24 months (T51). It grows at a middling to fast pace."
  }

  figure "sac-time" {
    value = "5 to 10 weeks"
    note  = "No figure of this species was found. The window of ground tarantulas in general; never a date."
  }

  figure "brood-size" {
    value    = "150 to 300"
    source   = ["memory"]
    quality  = "memory"
    disputed = "a sac the size of a golf ball may hold over 2000 (T51, said of tarantulas)"
  }

  figure "items-a-week" {
    value    = "0.7 to 3"
    stages   = ["adult"]
    source   = ["T128"]
    disputed = "4 to 6 crickets every two weeks (T128), one or two every couple of days (T51)"
    note     = "One or two large items every 7 to 10 days is common practice; T51 gives far more."
  }

  figure "fast-alarm" {
    value  = "30 days"
    stages = ["juvenile"]
    source = ["P24"]
    note   = "Juveniles throve on one meal in 30 days, with an even metabolism, and went on eating eagerly (P24)."
  }

  figure "venom" {
    value    = "painful"
    source   = ["T128"]
    quality  = "keeper"
    disputed = "irritation and swelling only (T161)"
    note     = "Very painful, no death is known (T128). Fangs are 2 cm long (T128). Wash a bite and cool it; watch swelling and allergy."
  }

  figure "hairs" {
    value = "thrown"
    note  = "Goggles for every job inside. A hair in the eye: do not rub, rinse for long, eye doctor, and say that it is a hair of a tarantula (T146)."
  }

  figure "defence" {
    value   = "Bites or bolts as readily as it throws hairs; ornery."
    source  = ["T127"]
    quality = "keeper"
  }

  figure "cites" {
    value = "none"
    note  = "No listing found, 2026-11-28."
  }

  figure "climate-origin" {
    value   = "Hispaniola: rain forest, savanna and dry places."
    source  = ["T131"]
    quality = "keeper"
  }

  figure "sexing" {
    value  = "Grown males have bulbs on the palps; before that by the shed skin."
    source = ["K85"]
  }

  need "moisture" {
    longest = "5 days"
    note    = "Misted twice a week."
  }

  need "moisture" {
    stages  = ["young"]
    longest = "4 days"
    note    = "Slings dry out sooner; our estimate."
  }

  care "mist" {
    every = "4 days"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket large"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 2
    prey       = "cricket adult"
  }
}
