species "aphonopelma-seemanni" {
  title    = "Costa Rican zebra tarantula"
  latin    = "Aphonopelma seemanni (F. O. Pickard-Cambridge, 1897)"
  family   = "Theraphosidae"
  type     = "fossorial-tarantula"
  also     = ["Costa Rican zebra", "striped-knee tarantula", "striped knee", "Guatemala striped", "Gestreifte Guatemala-Vogelspinne"]
  former   = ["Eurypelma seemanni"]
  mistaken = ["Aphonopelma burica"]
  note     = "On shallow soil it paces and climbs. In the wild it suns itself at the burrow by day (T87). A mouth of the tube that is open, or webbed shut, counts as seen. Undescribed zebra forms are sold as it (from memory)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  air             = "22 to 27 C"
  night           = "19 to 22 C"
  rest            = "none"
  cooler          = "2 to 3 C"
  humidity_soft   = "50 to 85 %"
  humidity_target = "60 to 75 %"
  keeping         = "alone"
  separation      = "separate"
  speed           = "quick"
  sexing          = "Grown males have hooks on the first legs and bulbs on the palps; females and the young by the shed skin."

  figure "temperature-hard" {
    value = "14 to 35 C"
    note  = "Precaution: no lethal temperature of this species has been measured."
  }

  figure "temperature-soft" {
    value = "18 to 30 C"
    note  = "Our margin around the target."
  }

  figure "temperature-target" {
    value = "22 to 27 C"
    note  = "No warm spot is needed."
  }

  figure "moisture" {
    value  = "damp"
    source = ["T87", "T156"]
    note   = "Damp below. It lives in watered lawns and banks of roads (T87), in dry and in wet forest (T156)."
  }

  figure "substrate-depth-min" {
    value   = "20 cm"
    source  = ["T144"]
    quality = "keeper"
    note    = "Of burrowing kinds: 20 cm and more, of soil that packs. Begin a tube for it."
  }

  figure "floor-first" {
    value  = "900 cm2"
    stages = ["subadult", "adult"]
  }

  figure "length" {
    value   = "4.5 to 6.5 cm"
    stages  = ["adult"]
    source  = ["T83"]
    quality = "keeper"
    note    = "Body: females 5.0 to 6.5 cm, males 4.5 to 5.5 cm, in a museum and the field."
  }

  figure "span" {
    value    = "10 to 13 cm"
    stages   = ["adult"]
    source   = ["T83"]
    quality  = "keeper"
    disputed = "females 12.5 to 15 cm, males 10 to 12.5 cm (T85)"
  }

  figure "mass" {
    value  = "6 to 12 g"
    stages = ["adult"]
    note   = "Our estimate, no weight was found: 0.0055 g times the cube of the leg span in cm."
  }

  figure "age-at-maturity" {
    value   = "3 to 7 years"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 3 to 4, females 5 to 7 years. The genus is slow (T79)."
  }

  figure "lifespan" {
    value    = "15 to 20 years"
    source   = ["memory"]
    quality  = "memory"
    disputed = "30 years and more in the genus (T79)"
    note     = "Females; males 4 to 5 years."
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

  figure "venom" {
    value   = "mild"
    source  = ["T18"]
    quality = "paper"
    note    = "Of 363 published bites of tarantulas most were mild and local (a preprint)."
  }

  figure "hairs" {
    value  = "thrown"
    source = ["T16", "T19", "T20"]
    note   = "Type I (from memory). Goggles for cleaning, for taking out the skin and for rehousing: hairs in the cornea meant months of trouble to two keepers of Grammostola rosea (T19, T20). If some get in: do not rub, rinse long, go to an emergency clinic and then to an eye doctor, and say tarantula hairs (T146)."
  }

  figure "defence" {
    value    = "Skittish: it bolts."
    source   = ["T84", "T86"]
    disputed = "docile, for beginners (T84), very aggressive, only for the experienced (T86)"
  }

  figure "cites" {
    value   = "none"
    source  = ["T30", "P53"]
    quality = "guideline"
    note    = "No listing found, 2026-11-28. Of the genus A. pallidum is listed (T30), and the former A. albiceps (P53)."
  }

  figure "climate-origin" {
    value   = "Central America: burrows in watered lawns, banks of roads, dry and wet forest."
    source  = ["T87", "T156"]
    quality = "keeper"
  }

  care "look" {
    task  = "Lid shut? Mouth of the tube open, or webbed shut"
    every = "day"
  }

  care "mist" {
    kind  = "moisten"
    task  = "Pour water into one corner"
    every = "4 days"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }
}
