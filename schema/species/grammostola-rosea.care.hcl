species "grammostola-rosea" {
  title    = "Chilean rose tarantula"
  latin    = "Grammostola rosea (Walckenaer, 1837)"
  family   = "Theraphosidae"
  type     = "dry-terrestrial-tarantula"
  also     = ["Chilean rose", "rose hair", "Chile red", "RCF", "Chile grey", "Chile brown", "Rote Chile-Vogelspinne"]
  former   = ["Grammostola cala", "Grammostola spatulata", "Grammostola spathulata", "Phrixotrichus roseus", "Citharoscelus kochii"]
  mistaken = ["Grammostola porteri"]
  note     = "Whether G. porteri (Mello-Leitão, 1936) is a species of its own is disputed: most old rosea of the trade may be porteri (T99), and recent revisions sink several of these names into rosea (T106). The care told here was told of both. It fasts for weeks to months (T103): look at the abdomen, not at the calendar. Those caught in the wild keep the seasons of the south."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_target      = "20 to 26 C"
  night                   = "14 to 19 C"
  separation              = "separate"
  speed                   = "slow"
  substrate_depth_advised = "10 cm"

  figure "temperature-hard" {
    value = "6 to 35 C"
    note  = "A precaution: no lethal figure of this species is known. In the wild it retreats below 10 C (T41)."
  }

  figure "temperature-soft" {
    value = "14 to 30 C"
    note  = "Our margin, a precaution. It seldom digs in a box (T100): it cannot flee from heat. In Paraphysa the loss of water at 40 C is ten times that at less (T5)."
  }

  figure "humidity-soft" {
    value = "25 to 65 %"
    note  = "Our margin, a precaution."
  }

  figure "air" {
    value    = "20 to 26 C"
    disputed = "25 to 30 C (T103), 22 to 28 C (T105)"
    note     = "It bears 16 C (T101). What it chooses hardly shifts with what it is used to: 0.2 K after 15 or 25 C, and less warm than 31.7 C of Paraphysa (T3; T4 calls the two alike). Do not harden it, give it a cool end. Its kin G. vachoni spends 40 % of its time at 25 to 29 C (T1)."
  }

  figure "rest" {
    value    = "optional"
    source   = ["T41", "T97", "T98"]
    disputed = "it should be kept (T41); keepers quarrel whether animals bred in captivity need any (T98)"
    note     = "The grown only, with the dish full."
  }

  figure "winter-rest" {
    value   = "12 to 18 C"
    source  = ["T97", "T98"]
    quality = "keeper"
  }

  figure "rest-length" {
    value  = "4 to 8 weeks"
    source = ["T97"]
    note   = "Two months at the most (T97); the lower figure is ours."
  }

  figure "rest-full-heat" {
    value = "14 days"
    note  = "Our estimate."
  }

  figure "rest-step" {
    value = "2 to 3 C"
    note  = "Our estimate."
  }

  figure "rest-water" {
    value = "2 to 7 days"
    note  = "Our estimate. The dish is never empty."
  }

  figure "rest-first-meal" {
    value = "3 to 7 days"
    note  = "Our estimate."
  }

  figure "rest-full-meals" {
    value = "7 days"
    note  = "Our estimate."
  }

  figure "unattended-rest" {
    value = "14 days"
    note  = "Our estimate."
  }

  figure "humidity-target" {
    value    = "35 to 55 %"
    source   = ["T100"]
    disputed = "the grown are for dry places, hate damp, and are never misted (T100); lives in moist parts, in a burrow to 1 m deep in loose wet soil (T97, T99)"
    note     = "Dry, with a dish. Slings keep a damp part (T100)."
  }

  figure "moisture" {
    value    = "arid"
    source   = ["T100"]
    quality  = "keeper"
    disputed = "lives in moist parts, in loose wet soil (T97, T99)"
    note     = "Slings keep a damp part."
  }

  figure "floor-first" {
    value  = "900 cm2"
    stages = ["subadult", "adult"]
    source = ["T103"]
    note   = "Three leg spans long (T103) and about as wide as two."
  }

  figure "fall-max" {
    value  = "22 cm"
    stages = ["subadult", "adult"]
    note   = "One and a half leg spans; 15 cm is better."
  }

  figure "length" {
    value    = "4.2 to 7.5 cm"
    stages   = ["adult"]
    source   = ["T99", "T41"]
    disputed = "5 to 7 cm (T41)"
    note     = "Body. Females 5.05 cm on average and males 4.25 (50 measured), females to 7.5 (T99)."
  }

  figure "span" {
    value   = "15 cm"
    stages  = ["adult"]
    source  = ["T99", "T100"]
    quality = "keeper"
  }

  figure "mass" {
    value  = "15 to 23 g"
    stages = ["adult"]
    note   = "Our estimate, no source: 0.0055 g times the cube of a leg span of 14 to 16 cm. About twice a Paraphysa parvula (T3)."
  }

  figure "lifespan" {
    value    = "20 to 25 years"
    source   = ["T99", "T102"]
    disputed = "20 to 40 years (T100)"
    note     = "Females; 25 is one animal (T102). Males 3 to 5 years, from memory."
  }

  figure "growth-factor" {
    value   = "1.38"
    source  = ["T2"]
    quality = "paper"
    note    = "Of its kin G. vachoni, both sexes, with 1 to 2 moults a year and most in the third."
  }

  figure "moults-to-adult" {
    value   = "11"
    source  = ["T2"]
    quality = "paper"
    note    = "Males of its kin G. vachoni. Spermathecae are seen mostly from moult 8, at 4 years."
  }

  figure "age-at-maturity" {
    value   = "7 years"
    source  = ["T2"]
    quality = "paper"
    note    = "Males of its kin G. vachoni. It grows slowly."
  }

  figure "brood-size" {
    value    = "50 to 500"
    source   = ["T41", "T104"]
    disputed = "up to 500 (T41), 50 to 200 or 80 to 1000 (T104)"
  }

  figure "sac-time" {
    value   = "6 to 8 weeks"
    source  = ["memory"]
    quality = "memory"
    note    = "She has it in the burrow. Young of porteri left it unaided (T158), as those of its kin G. mollicoma do (T15)."
  }

  figure "fast-alarm" {
    value  = "180 days"
    stages = ["adult"]
    source = ["T103"]
    note   = "Famous for fasts of weeks to months (T103). Of tarantulas in general two years on water alone are told (T103). Weigh or look: a thin abdomen counts, not days."
  }

  figure "items-a-week" {
    value    = "0.5 to 2"
    stages   = ["adult"]
    source   = ["T103"]
    disputed = "4 to 6 crickets every three weeks (T103), one in 10 to 14 days (common practice)"
  }

  figure "keeping" {
    value   = "alone"
    source  = ["T21"]
    quality = "paper"
    note    = "Females of its kin G. schulzei bit each other, and ate juveniles."
  }

  figure "venom" {
    value  = "mild"
    source = ["T18"]
    note   = "Of 363 bites of tarantulas most were mild and stayed at the place (T18)."
  }

  figure "hairs" {
    value   = "thrown"
    source  = ["T19", "T20"]
    quality = "paper"
    note    = "Both known cases of hairs in the eye are of this species: one treated for weeks as an infection, with trouble half a year on (T19), one with four months of irritation (T20). Goggles for every job inside. A hair in the eye: do not rub, rinse for long, eye doctor, and say that it is a hair of a tarantula (T146)."
  }

  figure "defence" {
    value   = "Calm; moody after a moult."
    source  = ["T103"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["T33", "T41"]
    quality = "society"
    note    = "No listing found, 2026-11-28. Trade is not regulated and it is not on the IUCN list, by T41."
  }

  figure "law" {
    value   = "Look up what Chile says of export; it is said to restrict it."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value    = "Chile, with a cool winter: it retreats below 10 C (T41)."
    source   = ["T41"]
    quality  = "society"
    disputed = "lives in moist parts and burrows to 1 m in loose wet soil (T97, T99)"
  }

  figure "sexing" {
    value  = "Grown males have bulbs on the palps; before that by the shed skin."
    source = ["K85"]
  }

  need "moisture" {
    stages  = ["young"]
    longest = "4 days"
    source  = ["T100"]
    note    = "The part for slings that is kept damp; the days are our estimate."
  }

  care "moisten" {
    task   = "Dampen one end of the substrate"
    stages = ["young"]
    every  = "3 days"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "14 days"
    per_animal = 1
    prey       = "cricket adult"
  }
}
