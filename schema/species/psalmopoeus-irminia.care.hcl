species "psalmopoeus-irminia" {
  title    = "Venezuelan suntiger"
  latin    = "Psalmopoeus irminia Saager, 1994"
  family   = "Theraphosidae"
  type     = "arboreal-tarantula"
  also     = ["sun tiger", "suntiger tarantula"]
  mistaken = ["Psalmopoeus cambridgei", "Tapinauchenius plumipes"]
  note     = "Sold sometimes as a tree spider for beginners, and its slings are taken for other Psalmopoeus. A New World spider without hairs to throw: it bites and runs like one of the Old World. Work at the lid as with a Poecilotheria."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "21 to 30 C"
  air                     = "23 to 28 C"
  night                   = "20 to 24 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "50 to 85 %"
  substrate_depth_advised = "10 cm"
  first_meal              = "7 days"
  old_age_male            = "6 months"
  defence                 = "Very fast, jumps, and bites if pressed."
  sexing                  = "Grown males are grey-brown, females black."

  figure "temperature-hard" {
    value = "15 to 33 C"
    note  = "A precaution: no lethal temperature of it is known."
  }

  figure "temperature-target" {
    value    = "23 to 28 C"
    source   = ["A28", "A41", "A42"]
    quality  = "practice"
    disputed = "24 to 28 C, bears 22 to 30 C (A28), about 29.5 C and above 26.5 C (A41), 26 to 28 C all year in the wild (A42)"
  }

  figure "humidity-target" {
    value    = "65 to 80 %"
    disputed = "80 % (A41), 80 % in the wild (A42)"
    note     = "Ventilation is less critical than in Avicularia (A41): from side to side, or side and top."
  }

  figure "moisture" {
    value   = "damp"
    source  = ["A28"]
    quality = "keeper"
    note    = "Damp below."
  }

  figure "drinks" {
    value = "dish"
    note  = "A large one."
  }

  figure "lifestyle" {
    value = "tree"
    note  = "It nests at the floor and partly under it at any age (A28): cork that leans down to the soil, on the dark side (A41). It webs the whole box."
  }

  figure "floor-first" {
    value  = "600 cm2"
    stages = ["subadult", "adult"]
    note   = "20 x 30 cm: it hates cramped boxes (A28)."
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["subadult", "adult"]
    note   = "30 to 45 cm."
  }

  figure "substrate-depth-min" {
    value   = "6 cm"
    source  = ["A28"]
    quality = "practice"
    note    = "It nests at the floor and below (A28)."
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
    value   = "6 cm"
    stages  = ["adult"]
    source  = ["A39"]
    quality = "keeper"
  }

  figure "span" {
    value    = "10 to 15 cm"
    stages   = ["adult"]
    source   = ["A39"]
    quality  = "keeper"
    disputed = "14 cm (A39), 13 to 15 cm (A40)"
    note     = "Females 13 to 15 cm, males 10 to 13 (A39)."
  }

  figure "mass" {
    value   = "10 to 16 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "12 to 15 years"
    source   = ["A39", "A40"]
    quality  = "keeper"
    disputed = "12 years (A39), 12 to 15 years (A40)"
    note     = "Females; males 3 to 4 years. Males live 6 to 18 months after their last moult."
  }

  figure "growth-factor" {
    value    = "1.25 to 1.4"
    source   = ["A53"]
    quality  = "practice"
    disputed = "1.38 (A53, of Grammostola vachoni, a slow kind of temperate places)"
  }

  figure "moults-to-adult" {
    value   = "10"
    source  = ["A44"]
    quality = "practice"
    note    = "About, of females of a kin, P. pulcher (A44)."
  }

  figure "age-at-maturity" {
    value   = "12 to 30 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 12 to 18, females 18 to 30. It grows fast (A39, A40)."
  }

  figure "sac-time" {
    value    = "6 to 8 weeks"
    source   = ["memory"]
    quality  = "memory"
    disputed = "of tarantulas in general 6 to 12 weeks, with eggs that hatch in 25 to 42 days and moult again 17 to 40 days later (A50), 4 to 6 weeks and up to 6 more (A51)"
    note     = "Leave her undisturbed; she needs no food with the sac (A52)."
  }

  figure "brood-size" {
    value    = "50 to 200"
    source   = ["A39"]
    quality  = "keeper"
    disputed = "about 100 in a kin, P. pulcher (A44)"
    note     = "A second sac follows without a new mating."
  }

  figure "separation" {
    value = "separate"
    note  = "By moult 3."
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
    value = "alone"
    note  = "A kin, P. cambridgei, was tried in a group: see there."
  }

  figure "venom" {
    value    = "painful"
    source   = ["A40"]
    quality  = "keeper"
    disputed = "not of toxic importance (A28, a breeder)"
    note     = "More than most of the New World, with local pain and cramp as keepers tell (A40). As a precaution: after a bite: wash, rings off, keep the limb still; no cutting, sucking or binding. Somebody stays for 24 hours; spreading pain, cramps, chest or breath mean hospital at once, with the name of the species on paper. Cramps can start after hours and come back for days."
  }

  figure "hairs" {
    value   = "none"
    source  = ["A39"]
    quality = "keeper"
  }

  figure "speed" {
    value = "very quick"
    note  = "Catch cup in reach, and the box opened inside a larger tub."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "None known; look up local rules. Not named in the lists of dangerous animals that were seen."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Venezuela: 26 to 28 C all year and 80 % humidity, wet from May to December, dry from January to April."
    source  = ["A42"]
    quality = "keeper"
  }

  care "mist" {
    every = "3 days"
  }
}
