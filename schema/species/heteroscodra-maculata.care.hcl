species "heteroscodra-maculata" {
  title    = "Togo starburst baboon"
  latin    = "Heteroscodra maculata Pocock, 1899"
  family   = "Theraphosidae"
  type     = "arboreal-tarantula"
  also     = ["Togo starburst", "ornamental baboon", "snow spider"]
  mistaken = ["Stromatopelma"]
  note     = "Called a baboon, though it is not one of the Harpactirinae (A43). It hides as bark on bark: find the spider before the lid opens. Young burrow for some months (A43). No warmth and no damp of its own were found in a source: they are read from its climate and from kin."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft   = "21 to 31 C"
  temperature_target = "24 to 28 C"
  air                = "24 to 28 C"
  night              = "20 to 24 C"
  rest               = "none"
  cooler             = "2 to 3 C"
  humidity_soft      = "45 to 80 %"
  old_age_male       = "6 to 18 months"
  keeping            = "alone"
  hairs              = "none"
  speed              = "very quick"

  figure "temperature-hard" {
    value = "15 to 34 C"
    note  = "A precaution: no lethal temperature was found for it."
  }

  figure "moisture" {
    value = "either"
    note  = "Damp below, dry on top."
  }

  figure "ventilation" {
    value   = "cross"
    source  = ["A29", "K31"]
    quality = "keeper"
  }

  figure "substrate-depth-min" {
    value    = "5 cm"
    source   = ["A29"]
    quality  = "keeper"
    disputed = "5 to 8 cm (A29)"
    note     = "Young: 7 to 10 cm, they burrow for months (A43)."
  }

  figure "floor-first" {
    value    = "500 cm2"
    stages   = ["subadult", "adult"]
    disputed = "30 x 30 cm (K31, A29); young 20 x 20 cm (A29)"
  }

  figure "height-min" {
    value    = "35 cm"
    stages   = ["subadult", "adult"]
    disputed = "30 cm (K31), 45 cm, young 30 cm (A29)"
    note     = "With an upright cork tube."
  }

  figure "gap-max" {
    value  = "3 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
    note   = "Our estimate: what leaves the sac is far smaller than a young one of its type."
  }

  figure "length" {
    value   = "5 to 6 cm"
    stages  = ["adult"]
    source  = ["A70"]
    quality = "keeper"
    note    = "Of females."
  }

  figure "span" {
    value    = "11 to 14 cm"
    stages   = ["adult"]
    source   = ["A70", "A71", "A29", "A43"]
    quality  = "practice"
    disputed = "to 13 cm (A43), 12 to 13 cm (A29); females 11 to 13 cm (A70), 14 cm (A71), males 11 to 12 cm (A71)"
  }

  figure "mass" {
    value   = "9 to 15 g"
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
    value   = "36 months"
    source  = ["A43"]
    quality = "keeper"
    note    = "Full size after about three years. It grows evenly and rather slowly; the colour changes at moult 5 to 6, and the first free stage spans 1 cm (A70)."
  }

  figure "lifespan" {
    value   = "12 to 14 years"
    source  = ["A29"]
    quality = "keeper"
    note    = "Females; males 3 to 4 years (A29)."
  }

  figure "brood-size" {
    value    = "75 to 130"
    source   = ["A43"]
    quality  = "keeper"
    disputed = "50 to 150 eggs (A71)"
    note     = "Females breed readily and may eat the male (A43)."
  }

  figure "sac-time" {
    value    = "6 to 8 weeks"
    source   = ["memory"]
    quality  = "memory"
    disputed = "6 to 12 weeks in general (A50)"
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
    value   = "medically significant"
    source  = ["A3"]
    quality = "paper"
    note    = "By its subfamily, the Stromatopelminae, one of the three with most cramps (A3); no human case was found of this species. Its toxin Hm1a gives mice strong pain at once and, in the brain, convulsions (A72). After a bite: wash, rings off, keep the limb still; do not cut, suck or bind. Somebody stays for 24 h. Spreading pain, cramps, a tight chest or trouble with breath: hospital at once, with the name of the species on paper. Cramps can start after hours and come back for days (A1 to A3; the advice is common practice)."
  }

  figure "defence" {
    value = "Very fast; it bites as its first defence. No hairs."
    note  = "Catch cup in reach, and the box opened inside a larger tub."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    note    = "Proposals for more tarantulas were before the conference of late 2025 (A15); which, and how they went, was not found: look it up."
  }

  figure "law" {
    value   = "Some places ask a licence for dangerous animals; kin of its subfamily, Stromatopelma, are named in Hesse. Look up what holds where you live."
    source  = ["A16"]
    quality = "keeper"
  }

  figure "climate-origin" {
    value   = "Togo: 27 C in the mean at the coast and 30 C in the north, two rainy seasons, 890 mm of rain a year."
    source  = ["A73"]
    quality = "keeper"
  }
}
