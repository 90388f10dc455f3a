species "cyriopagopus-lividus" {
  title    = "cobalt blue tarantula"
  latin    = "Cyriopagopus lividus (Smith, 1996)"
  family   = "Theraphosidae"
  type     = "fossorial-tarantula"
  also     = ["cobalt blue"]
  former   = ["Haplopelma lividum"]
  mistaken = ["Omothymus", "Chilobrachys natanicharum", "Chilobrachys sp. electric blue"]
  note     = "Long known as Haplopelma lividum; specialists keep that genus and call the change not well founded (A85). Chilobrachys sp. electric blue is another spider. It is long out of sight: look for silk and remains, give prey at the mouth of the burrow, and never dig."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft = "20 to 29 C"
  air              = "22 to 27 C"
  night            = "19 to 22 C"
  rest             = "none"
  cooler           = "2 to 3 C"
  humidity_soft    = "60 to 90 %"
  old_age_male     = "6 to 18 months"
  keeping          = "alone"
  hairs            = "none"
  speed            = "very quick"

  figure "temperature-hard" {
    value = "15 to 32 C"
    note  = "A precaution: no lethal temperature was found for it."
  }

  figure "temperature-target" {
    value    = "22 to 27 C"
    source   = ["A89"]
    quality  = "practice"
    disputed = "24 to 29.5 C (A89)"
    note     = "Warmth from the room or a side, never from below."
  }

  figure "humidity-target" {
    value    = "70 to 85 %"
    source   = ["A89"]
    quality  = "practice"
    disputed = "70 to 80 % (A89)"
  }

  figure "moisture" {
    value = "damp"
    note  = "Damp below and packed firm."
  }

  figure "substrate-depth-min" {
    value    = "15 cm"
    source   = ["A88", "A90"]
    quality  = "practice"
    disputed = "12.5 cm in front to 18 cm behind (A88), 15 to 20 cm (A90)"
  }

  figure "substrate-depth-advised" {
    value = "20 to 25 cm"
    note  = "With a hole begun at the glass."
  }

  figure "floor-first" {
    value    = "600 cm2"
    stages   = ["subadult", "adult"]
    source   = ["A87", "A88"]
    quality  = "practice"
    disputed = "a box of 10 gal (A87, A88)"
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
    value    = "5.3 to 8.5 cm"
    stages   = ["adult"]
    source   = ["A86"]
    quality  = "keeper"
    disputed = "9 cm (A84, high)"
  }

  figure "span" {
    value    = "10 to 13 cm"
    stages   = ["adult"]
    source   = ["A84", "A87"]
    quality  = "practice"
    disputed = "13 cm (A84), 10 to 12.5 cm in all (A87)"
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
    value   = "24 to 48 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 24 to 36, females 36 to 48 months. It grows at a medium pace (A84)."
  }

  figure "lifespan" {
    value    = "15 to 18 years"
    source   = ["A84"]
    quality  = "keeper"
    disputed = "20 to 24 years, males 10 to 12 (A88, doubtful)"
    note     = "Females; males 5 to 6 years (A84)."
  }

  figure "brood-size" {
    value   = "60 to 200"
    source  = ["memory"]
    quality = "memory"
  }

  figure "sac-time" {
    value   = "7 to 9 weeks"
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
    note  = "Treat it as significant: no case of this species was found, and kin of its subfamily gave cramps of the whole body (A2). After a bite: wash, rings off, keep the limb still; do not cut, suck or bind. Somebody stays for 24 h. Spreading pain, cramps, a tight chest or trouble with breath: hospital at once, with the name of the species on paper. Cramps can start after hours and come back for days (A1 to A3; the advice is common practice)."
  }

  figure "defence" {
    value = "Very ready to strike, the young too. No hairs."
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

  figure "sexing" {
    value   = "Females are blue, grown males bronze-brown."
    source  = ["A86b"]
    quality = "keeper"
  }

  need "moisture" {
    longest = "7 days"
    note    = "A corner is watered each week in the place of misting."
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
    every      = "7 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "10 days"
    per_animal = 1
    prey       = "cricket adult"
  }
}
