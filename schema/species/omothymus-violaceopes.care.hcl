species "omothymus-violaceopes" {
  title    = "Singapore blue"
  latin    = "Omothymus violaceopes (Abraham, 1924)"
  family   = "Theraphosidae"
  type     = "arboreal-tarantula"
  also     = ["Malaysia blue"]
  former   = ["Lampropelma violaceopes", "Lampropelma violaceopedes"]
  mistaken = ["Omothymus schioedtei", "Cyriopagopus sp. blue", "Cyriopagopus lividus"]
  note     = "Genus changed in 2019 (A80, A81). The male once described as this species is Omothymus schioedtei (A80). It wants damp and moving air together. Young live on the ground at first (A47). A large spider that bolts or falls: think of lid and height first."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft   = "22 to 30 C"
  temperature_target = "24 to 28 C"
  air                = "24 to 28 C"
  night              = "21 to 24 C"
  rest               = "none"
  cooler             = "2 to 3 C"
  humidity_soft      = "55 to 90 %"
  old_age_male       = "6 to 18 months"
  hairs              = "none"
  speed              = "very quick"

  figure "temperature-hard" {
    value = "16 to 33 C"
    note  = "A precaution: no lethal temperature was found for it."
  }

  figure "humidity-hard" {
    value = "0 to 90 %"
    note  = "More than other tree spiders bear, for it is of mangrove and wet forest; our estimate."
  }

  figure "humidity-target" {
    value    = "70 to 85 %"
    source   = ["A83"]
    quality  = "practice"
    disputed = "regular spray and no stagnant air, without a figure (A83)"
  }

  figure "moisture" {
    value = "damp"
  }

  figure "substrate-depth-min" {
    value = "8 cm"
    note  = "8 to 10 cm at any age: young live on the ground at first (A47)."
  }

  figure "floor-first" {
    value  = "900 cm2"
    stages = ["subadult", "adult"]
    note   = "30 x 30 cm."
  }

  figure "height-min" {
    value  = "45 cm"
    stages = ["subadult", "adult"]
    note   = "With a thick cork tube; in the wild it sits in tree holes 3 to 4 m up (A47)."
  }

  figure "gap-max" {
    value  = "3 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
    note   = "Our estimate: what leaves the sac is far smaller than a young one of its type."
  }

  figure "length" {
    value    = "4.6 to 8 cm"
    stages   = ["adult"]
    source   = ["A80"]
    quality  = "practice"
    disputed = "described specimens: female over 4.6 cm, male 4.0 cm (A80)"
    note     = "A span of 20 cm and more asks for a body of about 8 cm: our arithmetic. Measure your own."
  }

  figure "span" {
    value    = "20 to 25 cm"
    stages   = ["adult"]
    source   = ["A81", "A82"]
    quality  = "practice"
    disputed = "23 cm (A81), over 25 cm (A82)"
    note     = "Females; the lower end is our estimate."
  }

  figure "mass" {
    value   = "20 to 35 g"
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
    value   = "12 to 18 months"
    source  = ["A47"]
    quality = "keeper"
    note    = "It grows fast."
  }

  figure "lifespan" {
    value    = "12 to 15 years"
    source   = ["memory"]
    quality  = "memory"
    disputed = "3 to 7 years after maturity (A47)"
    note     = "Females; males 3 to 4 years."
  }

  figure "brood-size" {
    value   = "100 to 150"
    source  = ["A47"]
    quality = "keeper"
    note    = "Eggs."
  }

  figure "sac-time" {
    value   = "10 weeks"
    source  = ["A47"]
    quality = "keeper"
    note    = "About."
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

  figure "keeping" {
    value   = "alone"
    source  = ["A82"]
    quality = "keeper"
    note    = "Females often eat the male (A82)."
  }

  figure "venom" {
    value   = "medically significant"
    source  = ["A2"]
    quality = "paper"
    note    = "By near kin: after a bite of Lampropelma nigerrimum swelling within half a minute, pain worst at 2 to 3 minutes and for 2 to 3 h, then agonising cramps (A2, A48). Of the genus muscle pain, nausea and fever are told (A82). No case of this species was found. After a bite: wash, rings off, keep the limb still; do not cut, suck or bind. Somebody stays for 24 h. Spreading pain, cramps, a tight chest or trouble with breath: hospital at once, with the name of the species on paper. Cramps can start after hours and come back for days (A1 to A3; the advice is common practice)."
  }

  figure "defence" {
    value   = "Hisses and strikes. No hairs."
    source  = ["A80"]
    quality = "keeper"
    note    = "Catch cup in reach, and the box opened inside a larger tub."
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
    value   = "Tree holes of mangrove and second-growth forest 3 to 4 m up; the lowland of Singapore."
    source  = ["A80", "A47"]
    quality = "keeper"
  }

  figure "sexing" {
    value   = "Females lose less of their colour; males are told before they are mature."
    source  = ["A47"]
    quality = "keeper"
  }

  care "mist" {
    every = "3 days"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "9 days"
    per_animal = 2
    rotate     = ["roach medium", "cricket adult"]
  }
}
