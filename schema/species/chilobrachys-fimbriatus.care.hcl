species "chilobrachys-fimbriatus" {
  title    = "Indian violet tarantula"
  latin    = "Chilobrachys fimbriatus Pocock, 1899"
  family   = "Theraphosidae"
  type     = "fossorial-tarantula"
  also     = ["Indian violet", "Indian violet earth tiger"]
  mistaken = ["Thrigmopoeus truculentus", "Chilobrachys sp."]
  note     = "Thrigmopoeus truculentus lives in the same places (A92); other Chilobrachys are plain brown. The heaviest webber of those that burrow: spot clean only what lies on the silk. Authors put it in different subfamilies. Its warmth is read from its climate: no source has a figure."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "20 to 30 C"
  temperature_target      = "22 to 28 C"
  air                     = "22 to 28 C"
  night                   = "19 to 22 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "45 to 85 %"
  substrate_depth_min     = "12 cm"
  substrate_depth_advised = "18 cm"
  old_age_male            = "6 to 18 months"
  keeping                 = "alone"
  hairs                   = "none"
  speed                   = "very quick"

  figure "temperature-hard" {
    value = "15 to 33 C"
    note  = "A precaution: no lethal temperature was found for it."
  }

  figure "humidity-target" {
    value    = "60 to 80 %"
    source   = ["A92"]
    quality  = "practice"
    disputed = "it bears dry spells as well as damp air (A92)"
  }

  figure "moisture" {
    value = "damp"
    note  = "Damp below; the top may dry."
  }

  figure "ventilation" {
    value = "any"
    note  = "From side to side, or in the lid."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["A92"]
    quality = "keeper"
    note    = "The burrow goes down or level, its mouth is webbed (A92). A piece of cork at an angle."
  }

  figure "floor-first" {
    value  = "600 cm2"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "4 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
    note   = "Our estimate: what leaves the sac is far smaller than a young one of its type."
  }

  figure "length" {
    value    = "5 to 7 cm"
    stages   = ["adult"]
    source   = ["A92"]
    quality  = "keeper"
    disputed = "females 5 to 6 cm, males to 4 cm (A91)"
  }

  figure "span" {
    value   = "15 cm"
    stages  = ["adult"]
    source  = ["A92"]
    quality = "keeper"
    note    = "About."
  }

  figure "mass" {
    value   = "10 to 18 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "growth-factor" {
    value    = "1.25 to 1.4"
    source   = ["A53"]
    quality  = "practice"
    disputed = "1.38 in Grammostola vachoni, of cool country (A53)"
  }

  figure "age-at-maturity" {
    value   = "14 to 30 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 14 to 20, females 24 to 30 months. Bronze after moult 3 to 4, the colour of the grown by and by (A91)."
  }

  figure "lifespan" {
    value   = "10 to 14 years"
    source  = ["memory"]
    quality = "memory"
    note    = "Females; males 3 to 4 years."
  }

  figure "brood-size" {
    value   = "100 to 200"
    source  = ["memory"]
    quality = "memory"
    note    = "An article of a society on this species exists (A93); its text was not seen."
  }

  figure "sac-time" {
    value   = "7 to 8 weeks"
    source  = ["memory"]
    quality = "memory"
  }

  figure "separation" {
    value = "separate"
    note  = "Each alone by its third moult, as for kin; our estimate."
  }

  figure "wait-after-moult" {
    value  = "10 days"
    stages = ["subadult", "adult"]
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["juvenile"]
  }

  figure "venom" {
    value = "painful"
    note  = "Treat it as significant: no case of the genus was found, and kin, Selenocosmia, gave spasms in reports (A2). After a bite: wash, rings off, keep the limb still; do not cut, suck or bind. Somebody stays for 24 h. Spreading pain, cramps, a tight chest or trouble with breath: hospital at once, with the name of the species on paper. Cramps can start after hours and come back for days (A1 to A3; the advice is common practice)."
  }

  figure "defence" {
    value = "Stridulates, fast. No hairs."
    note  = "Catch cup in reach, and the box opened inside a larger tub."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    note    = "Proposals for more tarantulas were before the conference of late 2025 (A15); which, and how they went, was not found: look it up."
  }

  figure "law" {
    value = "Some places ask a licence for dangerous animals; this species was not named in what was seen. Look up what holds where you live."
  }

  figure "climate-origin" {
    value   = "Western India: Goa, western Maharashtra, north-western Karnataka, with monsoon."
    source  = ["A92"]
    quality = "keeper"
  }

  need "moisture" {
    longest = "7 days"
    note    = "It bears dry spells (A92)."
  }

  need "moisture" {
    stages  = ["young"]
    longest = "4 days"
  }

  care "mist" {
    kind  = "moisten"
    task  = "Pour water into one corner"
    every = "7 days"
  }

  care "droplets" {
    kind   = "mist"
    task   = "Mist one wall and the silk, for droplets to drink"
    stages = ["young"]
    every  = "4 days"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "6 days"
    per_animal = 1
    prey       = "cricket small"
  }
}
