species "tliltocatl-albopilosus" {
  title    = "curlyhair tarantula"
  latin    = "Tliltocatl albopilosus (Valerio, 1980)"
  family   = "Theraphosidae"
  type     = "humid-terrestrial-tarantula"
  also     = ["curlyhair", "curly hair", "Honduran curly hair", "Nicaraguan curly hair", "Kraushaar-Vogelspinne"]
  former   = ["Brachypelma albopilosum", "Brachypelma albopilosa", "Euathlus albopilosus"]
  mistaken = ["Tliltocatl vagans"]
  note     = "The most forgiving of its kin. It digs, and closes itself in for weeks before a moult, which is no fast: take prey out, and do not let the soil dry out (T61). Young T. vagans and hybrids of the two are sold as it, and its forms of Honduras and Nicaragua as one (from memory)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  cooler        = "2 to 3 C"
  humidity_soft = "45 to 85 %"
  keeping       = "alone"
  separation    = "separate"
  speed         = "slow"
  defence       = "Calm; it starts when it is touched."
  sexing        = "Grown males have hooks on the first legs and bulbs on the palps; females and the young by the shed skin."

  figure "temperature-hard" {
    value = "14 to 35 C"
    note  = "Precaution: no lethal temperature of this species has been measured."
  }

  figure "temperature-soft" {
    value = "18 to 30 C"
    note  = "Our margin around the target."
  }

  figure "temperature-target" {
    value    = "22 to 27 C"
    disputed = "about 23 C by day (T60), slightly raised room heat all the year (T61)"
    note     = "No warm spot is needed."
  }

  figure "air" {
    value    = "22 to 27 C"
    disputed = "about 23 C by day (T60)"
  }

  figure "night" {
    value    = "19 to 22 C"
    disputed = "just under 20 C, and a night of 16 C was borne (T60)"
  }

  figure "rest" {
    value   = "none"
    source  = ["T61"]
    quality = "society"
    note    = "It needs no cool season."
  }

  figure "humidity-hard" {
    value = "40 to 95 %"
    note  = "Our estimate: it bears less damp soil and air than others of wet country."
  }

  figure "humidity-target" {
    value    = "60 to 75 %"
    disputed = "50 to 80 %, by author (T60)"
  }

  figure "moisture" {
    value   = "damp"
    source  = ["T61"]
    quality = "society"
    note    = "Damp below; the top may dry. Some dry days are survived (T61): no licence to let it dry out."
  }

  figure "substrate-depth-min" {
    value    = "10 cm"
    source   = ["T61"]
    quality  = "society"
    disputed = "one lives on 1 cm (T60): not to be copied"
  }

  figure "floor-first" {
    value   = "900 cm2"
    stages  = ["subadult", "adult"]
    source  = ["T61"]
    quality = "society"
    note    = "30 x 30 x 30 cm."
  }

  figure "fall-max" {
    value  = "22 cm"
    stages = ["subadult", "adult"]
    note   = "15 to 22 cm from the lid to the substrate; here the upper end, one and a half leg spans."
  }

  figure "length" {
    value    = "6 to 8 cm"
    stages   = ["adult"]
    source   = ["T60"]
    disputed = "to 8 cm in females (T60)"
    note     = "Body. The lower end is our estimate from the leg span."
  }

  figure "span" {
    value    = "10 to 15 cm"
    stages   = ["adult"]
    source   = ["T63"]
    quality  = "keeper"
    disputed = "12.5 to 15 cm (T152), just over 15 cm in both sexes (T62)"
    note     = "A zoo’s 30 cm and 200 g are of tarantulas in general, and not used (T49)."
  }

  figure "mass" {
    value  = "6 to 18 g"
    stages = ["adult"]
    note   = "Our estimate, no weight was found: 0.0055 g times the cube of the leg span in cm."
  }

  figure "growth-factor" {
    value  = "1.3 to 1.4"
    source = ["T2"]
    note   = "After a cohort of Grammostola vachoni, which grew 38 % at a moult."
  }

  figure "age-at-maturity" {
    value    = "5 years"
    source   = ["T60"]
    quality  = "keeper"
    disputed = "males 2 to 3, females 4 to 6 years (T142)"
    note     = "T60 says it of one sex, and which is lost in the copy. Spiderlings moult each two weeks in the first months (T60)."
  }

  figure "lifespan" {
    value    = "20 years"
    source   = ["T62"]
    quality  = "keeper"
    disputed = "about 12 years (T49)"
    note     = "Females, at the most; males about 5 years."
  }

  figure "old-age-male" {
    value    = "12 to 18 months"
    source   = ["T103"]
    quality  = "keeper"
    disputed = "2 to 3 years (T102), 2 to 3 months in the wild (T40, of Aphonopelma chalcodes)"
    note     = "From the last moult, with hooks and bulbs; said of tarantulas in general. Grown males wander: mind the lid."
  }

  figure "sac-time" {
    value    = "5 to 11 weeks"
    source   = ["T49", "N15", "T46", "T47"]
    disputed = "8 to 11 weeks from egg to young (T49)"
    note     = "T49 is a page on this species, and otherwise of tarantulas in general. How many young is not known: some hundreds (from memory). Pairing is easy (T61). A window, never a date."
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
    note   = "Reluctantly. Types I and III (from memory). Goggles for cleaning, for taking out the skin and for rehousing: hairs in the cornea meant months of trouble to two keepers of Grammostola rosea (T19, T20). If some get in: do not rub, rinse long, go to an emergency clinic and then to an eye doctor, and say tarantula hairs (T146)."
  }

  figure "cites" {
    value    = "II"
    source   = ["P53", "T11"]
    quality  = "paper"
    disputed = "not protected (T60): wrong, or older"
    note     = "The whole genus Brachypelma since 1995 (P53). This genus was split from it in 2019, and all that were in it stay listed (T11)."
  }

  figure "law" {
    value  = "Keep the paper that proves the origin: in the European Union the owner must be able to. Look up Annex B of the Union."
    source = ["T32"]
    note   = "T32 says it of Brachypelma smithi; the Annex is from memory."
  }

  figure "climate-origin" {
    value   = "Central America: Honduras and Nicaragua, by the names of its forms."
    source  = ["memory"]
    quality = "memory"
  }

  need "moisture" {
    longest  = "4 days"
    disputed = "misted each day (T60)"
    note     = "Two to three mistings a week leave up to four days; our estimate."
  }

  care "mist" {
    every = "3 days"
  }
}
