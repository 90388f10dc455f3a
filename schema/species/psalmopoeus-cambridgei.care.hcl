species "psalmopoeus-cambridgei" {
  title    = "Trinidad chevron tarantula"
  latin    = "Psalmopoeus cambridgei Pocock, 1895"
  family   = "Theraphosidae"
  type     = "arboreal-tarantula"
  also     = ["Trinidad chevron", "green Trinidad tarantula"]
  mistaken = ["Psalmopoeus langenbucheri", "Psalmopoeus irminia", "Tapinauchenius plumipes"]
  note     = "Only on Trinidad, whose law protects it. Slings of P. irminia are taken for it, and hybrids with irminia are in the trade (from memory). Damp yes, still air no: stagnant air is blamed for deaths (A30)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft = "20 to 30 C"
  air              = "23 to 28 C"
  night            = "19 to 24 C"
  rest             = "none"
  cooler           = "2 to 3 C"
  humidity_soft    = "50 to 85 %"
  separation       = "separate"
  old_age_male     = "6 months"
  hairs            = "none"

  figure "temperature-hard" {
    value = "15 to 33 C"
    note  = "A precaution: no lethal temperature of it is known."
  }

  figure "temperature-target" {
    value    = "23 to 28 C"
    source   = ["A30", "A31c", "A46"]
    quality  = "practice"
    disputed = "24 to 25.5 C (A30), 24 C by day and 4 K less at night (A31c), 25 to 30 C in the wild (A46)"
  }

  figure "humidity-target" {
    value    = "65 to 80 %"
    disputed = "above 80 %, but stagnant air appears to cause deaths (A30), 80 % (A31c)"
  }

  figure "moisture" {
    value = "damp"
    note  = "A little damp."
  }

  figure "lifestyle" {
    value = "tree"
    note  = "A cork tube and branches. The genus nests at the floor and partly under it (A28, of P. irminia)."
  }

  figure "floor-first" {
    value    = "600 cm2"
    stages   = ["subadult", "adult"]
    disputed = "30 x 30 x 30 cm, used by many (A30), 20 to 30 cm square (A46), 30 x 30 cm, for young 20 x 20 x 25 cm (A29)"
  }

  figure "height-min" {
    value    = "35 cm"
    stages   = ["subadult", "adult"]
    disputed = "30 cm (A30), 45 cm (A29, A46)"
  }

  figure "substrate-depth-min" {
    value   = "2.5 cm"
    source  = ["A30"]
    quality = "keeper"
  }

  figure "substrate-depth-advised" {
    value   = "8 cm"
    source  = ["A29"]
    quality = "keeper"
    note    = "8 to 10 cm."
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
    value    = "5 to 6 cm"
    stages   = ["adult"]
    disputed = "9 cm, at a leg span of 15 to 18 cm (A39c)"
    note     = "Our estimate from its leg span, by the proportion of P. irminia."
  }

  figure "span" {
    value    = "11 to 14 cm"
    stages   = ["adult"]
    source   = ["A45"]
    quality  = "society"
    disputed = "about 13 cm (A46), 15 to 17 cm (A29), 15 to 18 cm (A39c)"
    note     = "14 cm at the most."
  }

  figure "mass" {
    value   = "12 to 20 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "10 to 12 years"
    source   = ["A29", "A30"]
    quality  = "keeper"
    disputed = "females to 12 (A30), 10 to 12 (A29), 12 to 15 years (A39c)"
    note     = "Females; males 2 to 3 years (A30) or 3 to 4. Males live 6 to 18 months after their last moult."
  }

  figure "growth-factor" {
    value    = "1.25 to 1.4"
    source   = ["A53"]
    quality  = "practice"
    disputed = "1.38 (A53, of Grammostola vachoni, a slow kind of temperate places)"
  }

  figure "age-at-maturity" {
    value   = "12 to 30 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 12 to 18, females 18 to 30. It grows fast."
  }

  figure "sac-time" {
    value   = "6 to 8 weeks"
    source  = ["memory"]
    quality = "memory"
    note    = "Leave her undisturbed; she needs no food with the sac (A52)."
  }

  figure "brood-size" {
    value   = "80 to 200"
    source  = ["memory"]
    quality = "memory"
    note    = "A second sac may follow."
  }

  figure "wait-after-moult" {
    value  = "10 days"
    stages = ["adult"]
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["juvenile"]
  }

  figure "keeping" {
    value    = "alone"
    disputed = "ten young of 32 days in one tank of 30 x 25 x 20 cm, of which nine shared one sheet of silk after a week; the end is not visible (A31c, a trial of 1997)"
  }

  figure "venom" {
    value    = "painful"
    source   = ["A39c", "A48"]
    quality  = "practice"
    disputed = "one bite in the literature, with local pain only (Schmidt 1989, in A48), moderate (A39c)"
    note     = "As a precaution: after a bite: wash, rings off, keep the limb still; no cutting, sucking or binding. Somebody stays for 24 hours; spreading pain, cramps, chest or breath mean hospital at once, with the name of the species on paper. Cramps can start after hours and come back for days."
  }

  figure "speed" {
    value   = "very quick"
    source  = ["A30"]
    quality = "keeper"
    note    = "Catch cup in reach, and the box opened inside a larger tub."
  }

  figure "defence" {
    value   = "Bolts; fights even its old skin."
    source  = ["A30"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "All wildlife is protected in Trinidad and Tobago, where a permit is needed: look up what proves captive origin. Not named in the lists of dangerous animals that were seen."
    source  = ["A49"]
    quality = "keeper"
  }

  figure "climate-origin" {
    value   = "Trinidad: 25 to 30 C, wet from June to December, dry from January to May."
    source  = ["A46"]
    quality = "keeper"
  }

  care "mist" {
    every = "3 days"
  }
}
