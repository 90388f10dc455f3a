species "grammostola-pulchripes" {
  title    = "Chaco golden knee tarantula"
  latin    = "Grammostola pulchripes (Simon, 1891)"
  family   = "Theraphosidae"
  type     = "dry-terrestrial-tarantula"
  also     = ["Chaco golden knee", "gold-striped tarantula"]
  former   = ["Grammostola aureostriata"]
  mistaken = ["Grammostola grossa"]
  note     = "The largest of the calm kinds: its weight makes a fall worse. It moves dish and hide about, and spills the water. In the 1980s G. grossa was sold under this name (T157)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  air             = "22 to 27 C"
  night           = "17 to 21 C"
  winter_rest     = "12 to 18 C"
  humidity_soft   = "35 to 75 %"
  humidity_target = "50 to 65 %"
  keeping         = "alone"
  separation      = "separate"
  speed           = "slow"
  defence         = "Very calm; big fangs."
  sexing          = "Grown males have hooks on the first legs and bulbs on the palps; females and the young by the shed skin."

  figure "temperature-hard" {
    value = "8 to 35 C"
    note  = "Precaution: no lethal temperature of this species has been measured."
  }

  figure "temperature-soft" {
    value = "16 to 31 C"
    note  = "Our margin around the target."
  }

  figure "temperature-target" {
    value = "22 to 27 C"
    note  = "No warm spot is needed."
  }

  figure "rest" {
    value  = "optional"
    source = ["T97", "T98"]
    note   = "The keeper’s choice, and for the grown only; the dish stays full."
  }

  figure "rest-length" {
    value  = "6 to 8 weeks"
    source = ["T97", "T98"]
    note   = "In May to August, or in the winter of the keeper."
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

  figure "moisture" {
    value  = "either"
    source = ["T94"]
    note   = "Dry, with a damp corner: it is from grassland with a dry and a wet season (T94). No misting for the grown."
  }

  figure "substrate-depth-min" {
    value  = "12 cm"
    source = ["T93"]
    note   = "It moves much soil."
  }

  figure "substrate-depth-advised" {
    value  = "15 cm"
    source = ["T93"]
  }

  figure "floor-first" {
    value  = "1200 cm2"
    stages = ["subadult", "adult"]
    note   = "1200 to 1600 cm2."
  }

  figure "fall-max" {
    value  = "28 cm"
    stages = ["subadult", "adult"]
    note   = "20 to 28 cm from the lid to the substrate; here the upper end. Less is better for so heavy an animal."
  }

  figure "length" {
    value   = "9 cm"
    stages  = ["adult"]
    source  = ["T92"]
    quality = "keeper"
    note    = "Body."
  }

  figure "span" {
    value    = "18 to 20 cm"
    stages   = ["adult"]
    source   = ["T94"]
    quality  = "keeper"
    disputed = "to 22 cm (T94), to 20 cm (T93)"
  }

  figure "mass" {
    value  = "32 to 44 g"
    stages = ["adult"]
    note   = "Our estimate, no weight was found: 0.0055 g times the cube of the leg span in cm."
  }

  figure "growth-factor" {
    value   = "1.38"
    source  = ["T2"]
    quality = "paper"
    note    = "Of Grammostola vachoni, both sexes."
  }

  figure "age-at-maturity" {
    value   = "4 to 8 years"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 4 to 5, females 6 to 8 years. The fastest of the genus (T93); a hatchling was still small at 13 months (T96)."
  }

  figure "lifespan" {
    value    = "15 to 20 years"
    source   = ["T95"]
    quality  = "keeper"
    disputed = "15 years and more (T93), 30 years reckoned for G. mollicoma (T13)"
    note     = "Females; males 5 to 7 years (T93, T95)."
  }

  figure "old-age-male" {
    value    = "12 to 18 months"
    source   = ["T103"]
    quality  = "keeper"
    disputed = "2 to 3 years (T102), 2 to 3 months in the wild (T40, of Aphonopelma chalcodes)"
    note     = "From the last moult, with hooks and bulbs; said of tarantulas in general. Grown males wander: mind the lid."
  }

  figure "sac-time" {
    value   = "6 to 8 weeks"
    source  = ["memory"]
    quality = "memory"
    note    = "Several hundred young (from memory). A window, never a date. Young of G. mollicoma leave the sac without the mother’s help (T15)."
  }

  figure "venom" {
    value   = "mild"
    source  = ["T18"]
    quality = "paper"
    note    = "Of 363 published bites of tarantulas most were mild and local (a preprint). Its fangs are big."
  }

  figure "hairs" {
    value  = "thrown"
    source = ["T19", "T20"]
    note   = "Seldom. Goggles for cleaning, for taking out the skin and for rehousing: hairs in the cornea meant months of trouble to two keepers of Grammostola rosea (T19, T20). If some get in: do not rub, rinse long, go to an emergency clinic and then to an eye doctor, and say tarantula hairs (T146)."
  }

  figure "cites" {
    value = "none"
    note  = "No listing found, 2026-11-28."
  }

  figure "law" {
    value   = "Argentina does not let it be exported."
    source  = ["T96"]
    quality = "keeper"
  }

  figure "climate-origin" {
    value   = "The Chaco: grassland with a dry and a wet season."
    source  = ["T94"]
    quality = "keeper"
  }

  care "water" {
    task  = "Fresh water, the dish upright"
    every = "day"
  }

  care "moisten" {
    task  = "Wet one corner"
    every = "7 days"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "12 days"
    per_animal = 2
    prey       = "cricket adult"
  }
}
