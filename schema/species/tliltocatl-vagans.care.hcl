species "tliltocatl-vagans" {
  title    = "Mexican red rump tarantula"
  latin    = "Tliltocatl vagans (Ausserer, 1875)"
  family   = "Theraphosidae"
  type     = "humid-terrestrial-tarantula"
  also     = ["Mexican red rump", "red rump", "black velvet", "Mexican black velvet", "Central American black velvet", "Guatemalan black velvet", "Honduran black velvet"]
  former   = ["Brachypelma vagans", "Euathlus vagans", "Eurypelma vagans", "Eurypelma dupontii"]
  mistaken = ["Tliltocatl kahlenbergi", "Tliltocatl verdezi", "Tliltocatl sabulosus", "Tliltocatl albopilosus"]
  note     = "The nervous twin of T. albopilosus. It digs anew without harm, and a moved hide does none: in the wild 12 of more than 100 burrows were still in use a year later (T8). Dealers write vagans or kahlenbergi (from memory)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  air             = "22 to 28 C"
  night           = "18 to 22 C"
  rest            = "none"
  cooler          = "2 to 3 C"
  humidity_target = "60 to 75 %"
  keeping         = "alone"
  speed           = "quick"
  sexing          = "Grown males have hooks on the first legs and bulbs on the palps; females and the young by the shed skin."

  figure "temperature-hard" {
    value = "14 to 35 C"
    note  = "Precaution: no lethal temperature of this species has been measured."
  }

  figure "temperature-soft" {
    value = "18 to 31 C"
    note  = "Our margin around the target."
  }

  figure "temperature-target" {
    value = "22 to 28 C"
    note  = "No warm spot is needed."
  }

  figure "humidity-hard" {
    value = "45 to 95 %"
    note  = "Our estimate: it bears less damp soil and air than others of wet country."
  }

  figure "humidity-soft" {
    value  = "50 to 85 %"
    source = ["T71"]
    note   = "The states it lives in get 120 to 160 cm of rain a year (T71)."
  }

  figure "moisture" {
    value = "damp"
    note  = "Damp below."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["T65"]
    quality = "keeper"
    note    = "It lives in a burrow always (T65, after T9)."
  }

  figure "substrate-depth-min" {
    value  = "12 cm"
    source = ["T65"]
    note   = "For an animal that lives in a burrow always."
  }

  figure "substrate-depth-advised" {
    value  = "15 cm"
    source = ["T65"]
  }

  figure "floor-first" {
    value  = "900 cm2"
    stages = ["subadult", "adult"]
    note   = "900 to 1200 cm2."
  }

  figure "fall-max" {
    value  = "20 cm"
    stages = ["subadult", "adult"]
    note   = "18 to 24 cm from the lid to the substrate; here one and a half spans of the smaller."
  }

  figure "length" {
    value    = "5.5 to 7.5 cm"
    stages   = ["adult"]
    source   = ["T65"]
    quality  = "keeper"
    disputed = "8 cm (T64, T66)"
    note     = "Body."
  }

  figure "span" {
    value    = "13.5 cm"
    stages   = ["adult"]
    source   = ["T65"]
    quality  = "keeper"
    disputed = "16.5 cm (T64, T66)"
  }

  figure "mass" {
    value   = "8 to 12 g"
    stages  = ["adult"]
    source  = ["T65"]
    quality = "keeper"
    note    = "Means in the field: females 8 g, males 12 g."
  }

  figure "age-at-maturity" {
    value   = "3 to 6 years"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 3 to 4, females 4 to 6 years. Growth is medium (T64)."
  }

  figure "lifespan" {
    value   = "25 years"
    source  = ["T64"]
    quality = "keeper"
    note    = "Females; males 5 years."
  }

  figure "old-age-male" {
    value    = "12 to 18 months"
    source   = ["T103"]
    quality  = "keeper"
    disputed = "2 to 3 years (T102), 2 to 3 months in the wild (T40, of Aphonopelma chalcodes)"
    note     = "From the last moult, with hooks and bulbs; said of tarantulas in general. Grown males wander: mind the lid."
  }

  figure "sac-time" {
    value  = "5 to 10 weeks"
    source = ["N15", "T46", "T47", "T151"]
    note   = "Not known of this species; of kin 6 to 7 weeks (T46, T47), 45 to 60 days (T151), and torn open at about six weeks (N15). A window, never a date."
  }

  figure "brood-size" {
    value   = "200"
    source  = ["T7"]
    quality = "paper"
    note    = "Of two sacs in the field."
  }

  figure "separation" {
    value  = "separate"
    source = ["T7"]
    note   = "Free spiderlings to cups. They moult on leaving the egg and 5 to 6 days later, when a black spot appears; in the wild they stay some weeks in her burrow and leave it in a column of about 100 (T7)."
  }

  figure "venom" {
    value    = "mild"
    source   = ["T18"]
    quality  = "paper"
    disputed = "no symptoms after the one published bite (T150, quoting a book of 1989)"
    note     = "Of 363 published bites of tarantulas most were mild and local (a preprint)."
  }

  figure "hairs" {
    value   = "thrown"
    source  = ["T64"]
    quality = "keeper"
    note    = "Types I and III (T64). Goggles for cleaning, for taking out the skin and for rehousing: hairs in the cornea meant months of trouble to two keepers of Grammostola rosea (T19, T20). If some get in: do not rub, rinse long, go to an emergency clinic and then to an eye doctor, and say tarantula hairs (T146)."
  }

  figure "defence" {
    value  = "Skittish, and quick to kick off hairs."
    source = ["T64"]
  }

  figure "cites" {
    value   = "II"
    source  = ["P53", "T11"]
    quality = "paper"
    note    = "The whole genus Brachypelma since 1995 (P53). This genus was split from it in 2019, and all that were in it stay listed (T11)."
  }

  figure "law" {
    value  = "Keep the paper that proves the origin: in the European Union the owner must be able to. Look up Annex B of the Union, and the law of Mexico. Never release it: in Florida it lives wild since 1996."
    source = ["T11", "T32", "T48", "T65"]
    note   = "T32 says it of Brachypelma smithi; the Annex is from memory. Florida’s may be from the trade (T48). IUCN: least concern (T65)."
  }

  figure "climate-origin" {
    value   = "Mexico and Central America: burrows in open clay soil with few roots, which floods."
    source  = ["T65", "T8"]
    quality = "keeper"
  }

  need "moisture" {
    longest = "4 days"
    note    = "Two mistings a week leave up to four days; our estimate."
  }

  care "mist" {
    every = "3 days"
  }
}
