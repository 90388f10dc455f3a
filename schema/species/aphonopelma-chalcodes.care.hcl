species "aphonopelma-chalcodes" {
  title   = "Arizona blond tarantula"
  latin   = "Aphonopelma chalcodes Chamberlin, 1940"
  family  = "Theraphosidae"
  type    = "dry-terrestrial-tarantula"
  also    = ["Arizona blond", "Arizona blonde", "desert blond", "desert blonde", "western desert tarantula"]
  former  = ["Aphonopelma apacheum", "Aphonopelma minchi", "Aphonopelma rothi", "Aphonopelma schmidti", "Aphonopelma stahnkei"]
  note    = "Its former names are other names of the same animal (T12); other pale Aphonopelma of the Southwest are sold as it. A burrow that is plugged from October to March is rest and no loss: do not dig, no food, the dish full. Males roam from June to October or December (T46, T47)."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  air                     = "22 to 28 C"
  night                   = "16 to 20 C"
  winter_rest             = "10 to 16 C"
  rest_length             = "8 to 16 weeks"
  humidity_soft           = "20 to 65 %"
  substrate_depth_advised = "20 cm"
  keeping                 = "alone"
  separation              = "separate"
  speed                   = "slow"
  defence                 = "Calm."
  law                     = "Rules on collecting are local: look them up."
  sexing                  = "Grown males have hooks on the first legs and bulbs on the palps; females and the young by the shed skin."

  figure "temperature-hard" {
    value  = "8 to 37 C"
    source = ["T12"]
    note   = "Precaution: no lethal temperature of this species has been measured. Of its kin A. hentzi (as Dugesiella echina; Punzo 1991, Bull. Br. arachnol. Soc. 8:277) half died at 39.8 to 44.3 C, 4.9 to 5.2 C was its lower limit, it lived best at 15 to 30 C and chose 24 to 27 C; that the two are one is our reading of T12."
  }

  figure "temperature-soft" {
    value = "16 to 33 C"
    note  = "Our margin around the target."
  }

  figure "temperature-target" {
    value    = "22 to 28 C"
    disputed = "highs of 29 to 30 C in the wild (T80)"
  }

  figure "warm-spot" {
    value = "28 to 30 C"
    note  = "None is needed."
  }

  figure "rest" {
    value  = "optional"
    source = ["T81", "T82", "T98"]
    note   = "The keeper’s choice, and for the grown only. In the wild it plugs its burrow with soil, stone and silk and lives on its reserves (T81, T82); lows there are 11 C (T80). The dish stays full."
  }

  figure "rest-full-heat" {
    value = "14 days"
    note  = "Our estimate, as for other animals that rest."
  }

  figure "rest-step" {
    value = "2 to 3 C"
    note  = "Our estimate, as for other animals that rest."
  }

  figure "rest-water" {
    value = "7 days"
    note  = "Our estimate. The dish stays full."
  }

  figure "rest-first-meal" {
    value = "3 to 7 days"
    note  = "Our estimate, as for other animals that rest."
  }

  figure "rest-full-meals" {
    value = "7 days"
    note  = "Our estimate, as for other animals that rest."
  }

  figure "unattended-rest" {
    value = "14 days"
    note  = "Our estimate, with a full dish."
  }

  figure "humidity-target" {
    value    = "35 to 50 %"
    disputed = "60 % is enough for the genus (T79)"
    note     = "The air of a room, with one damp spot."
  }

  figure "moisture" {
    value    = "arid"
    disputed = "it bears wetter soil (T80)"
    note     = "Dry, with one damp spot and a full dish; no misting."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["T82"]
    quality = "keeper"
    note    = "Burrows in the wild go down to 60 cm, with a mouth of 2.5 to 5 cm."
  }

  figure "substrate-depth-min" {
    value    = "15 cm"
    disputed = "10 cm (T80)"
    note     = "With a tube begun for it."
  }

  figure "floor-first" {
    value  = "900 cm2"
    stages = ["subadult", "adult"]
  }

  figure "fall-max" {
    value  = "18 cm"
    stages = ["subadult", "adult"]
    note   = "12 to 18 cm from the lid to the substrate; here the upper end."
  }

  figure "length" {
    value    = "4.9 to 6.8 cm"
    stages   = ["adult"]
    source   = ["T40"]
    quality  = "society"
    disputed = "5 to 7 cm (T46), females 5.6 cm and males 4.4 cm (T81)"
    note     = "Females 4.9 to 6.8 cm, males 4.9 to 6.1 cm. The page calls it diameter; read as the body."
  }

  figure "span" {
    value    = "8 to 13 cm"
    stages   = ["adult"]
    source   = ["T81"]
    quality  = "keeper"
    disputed = "about 10 cm (T40), to 15 cm (T47)"
  }

  figure "mass" {
    value  = "3 to 12 g"
    stages = ["adult"]
    note   = "Our estimate, no weight was found: 0.0055 g times the cube of the leg span in cm."
  }

  figure "age-at-maturity" {
    value   = "8 to 10 years"
    source  = ["T40", "T47"]
    quality = "society"
    note    = "Both sexes: the slowest of the common kinds."
  }

  figure "lifespan" {
    value    = "20 to 30 years"
    source   = ["T46"]
    quality  = "keeper"
    disputed = "20 years, 25 in captivity (T40), to 30 years (T155)"
    note     = "Females. Males mature at 8 to 10 years, and live on for 2 to 3 months in the wild (T40)."
  }

  figure "old-age-male" {
    value    = "12 to 18 months"
    source   = ["T103"]
    quality  = "keeper"
    disputed = "2 to 3 years (T102), 2 to 3 months in the wild (T40, of Aphonopelma chalcodes)"
    note     = "From the last moult, with hooks and bulbs; said of tarantulas in general. Grown males wander: mind the lid."
  }

  figure "sac-time" {
    value    = "6 to 7 weeks"
    source   = ["T46", "T47"]
    quality  = "keeper"
    disputed = "7 weeks (T47)"
    note     = "A window, never a date. She suns the sac at the mouth of the burrow (T47)."
  }

  figure "brood-size" {
    value    = "300 to 1000"
    source   = ["T46", "T47"]
    disputed = "300 and more (T46), up to 1000 (T47)"
  }

  figure "dispersal" {
    value   = "3 to 6 days"
    source  = ["T47"]
    quality = "society"
    note    = "After hatching."
  }

  figure "fast-alarm" {
    value  = "180 days"
    stages = ["adult"]
    note   = "It fasts all winter, and for months at other times (T79, of the genus): a thin abdomen counts, not the days."
  }

  figure "venom" {
    value   = "mild"
    source  = ["T40"]
    quality = "society"
    note    = "Between a mosquito and a bee."
  }

  figure "hairs" {
    value  = "thrown"
    source = ["T16", "T19", "T20"]
    note   = "Type I (from memory). Goggles for cleaning, for taking out the skin and for rehousing: hairs in the cornea meant months of trouble to two keepers of Grammostola rosea (T19, T20). If some get in: do not rub, rinse long, go to an emergency clinic and then to an eye doctor, and say tarantula hairs (T146)."
  }

  figure "cites" {
    value   = "none"
    source  = ["T30", "P53"]
    quality = "guideline"
    note    = "No listing found, 2026-11-28. Of the genus A. pallidum is listed (T30), and the former A. albiceps (P53)."
  }

  figure "climate-origin" {
    value   = "Deserts of Arizona and the Southwest: highs of 29 to 30 C, lows in winter of 11 C."
    source  = ["T80"]
    quality = "keeper"
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
