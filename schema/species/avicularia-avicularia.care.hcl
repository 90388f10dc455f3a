species "avicularia-avicularia" {
  title    = "pink-toed tarantula"
  latin    = "Avicularia avicularia (Linnaeus, 1758)"
  family   = "Theraphosidae"
  type     = "arboreal-tarantula"
  also     = ["pinktoe", "Guyana pinktoe", "South American pinktoe", "Rotfussvogelspinne"]
  former   = ["Avicularia vestiaria", "Mygale avicularia", "Avicularia metallica"]
  mistaken = ["Avicularia juruensis", "Avicularia rufa", "Avicularia purpurea", "Caribena", "Iridopelma hirsutum"]
  note     = "Any blackish Avicularia with pale feet is sold as this one; the German name also for A. metallica (A22), which is counted here today (from memory). Of the tree spiders it bears wet, still air least. It builds high; fasts of one to two months are usual."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft    = "20 to 30 C"
  air                 = "22 to 28 C"
  rest                = "none"
  cooler              = "2 to 3 C"
  humidity_soft       = "45 to 80 %"
  substrate_depth_min = "3 cm"
  old_age_male        = "6 months"

  figure "temperature-hard" {
    value = "15 to 33 C"
    note  = "A precaution: no lethal temperature of it is known."
  }

  figure "temperature-target" {
    value    = "22 to 28 C"
    disputed = "24 to 29 C (A26), 27 to 30 C by day (A22)"
    note     = "The warmth of a room, as for other pinktoes."
  }

  figure "night" {
    value    = "19 to 24 C"
    disputed = "21 to 24 C (A22)"
  }

  figure "humidity-target" {
    value    = "60 to 75 %"
    disputed = "65 to 75 % (A22), 70 to 80 % (A21, A26), dry soil with a dish and air from side to side (A20)"
    note     = "Soil dry, with a damp patch. Wet, still air can be fatal (A20); one keeper blames too much air and dryness for the death of a kin, A. versicolor (A21). Both are opinion, no experiment."
  }

  figure "floor-first" {
    value   = "400 cm2"
    stages  = ["subadult", "adult"]
    source  = ["K31"]
    quality = "practice"
    note    = "20 x 20 cm, as for Caribena versicolor (K31)."
  }

  figure "height-min" {
    value    = "30 cm"
    stages   = ["subadult", "adult"]
    source   = ["A27"]
    quality  = "keeper"
    disputed = "30 to 45 cm (A27), 30 to 50 cm and twice the leg span at least (A29v)"
    note     = "A cork tube to the top, and foliage. A long fall onto hard ground kills (A25): height is fine, stones below are not."
  }

  figure "substrate-depth-advised" {
    value    = "5 cm"
    disputed = "7.5 cm in a jar, of a kin (A31)"
  }

  figure "gap-max" {
    value  = "3 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
  }

  figure "length" {
    value   = "6 to 8 cm"
    stages  = ["adult"]
    source  = ["A22"]
    quality = "keeper"
    note    = "Of animals sold as A. metallica."
  }

  figure "span" {
    value    = "9 to 13 cm"
    stages   = ["adult"]
    source   = ["A19"]
    quality  = "society"
    disputed = "9 to 12.5 cm (A23), 15 cm (A20)"
    note     = "Males about 9 cm, females about 13."
  }

  figure "mass" {
    value   = "10 to 20 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "6 to 9 years"
    disputed = "4 to 8 years on average (A19), females about 10 (A24)"
    note     = "Females; males 2 to 3 years. Males live 6 to 18 months after their last moult."
  }

  figure "growth-factor" {
    value    = "1.25 to 1.4"
    source   = ["A53"]
    quality  = "practice"
    disputed = "1.38 (A53, of Grammostola vachoni, a slow kind of temperate places)"
  }

  figure "age-at-maturity" {
    value    = "24 to 36 months"
    source   = ["A19"]
    quality  = "society"
    disputed = "4 to 5 years until the adult colour (A20), females about 3 years in the genus (A24)"
    note     = "Juveniles are pink with dark feet, adults dark with pink feet (A20)."
  }

  figure "sac-time" {
    value    = "6 to 8 weeks"
    source   = ["memory"]
    quality  = "memory"
    disputed = "of tarantulas in general 6 to 12 weeks, with eggs that hatch in 25 to 42 days and moult again 17 to 40 days later (A50), 4 to 6 weeks and up to 6 more (A51)"
    note     = "Leave her undisturbed; she needs no food with the sac (A52)."
  }

  figure "brood-size" {
    value   = "80 to 150"
    source  = ["memory"]
    quality = "memory"
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
    value   = "alone"
    source  = ["A18", "A19"]
    quality = "society"
    note    = "Most trees held one spider (A18)."
  }

  figure "venom" {
    value   = "mild"
    source  = ["A20"]
    quality = "keeper"
    note    = "After a bite: wash, cool, rest; trouble in breathing or a swelling face is an emergency."
  }

  figure "hairs" {
    value   = "contact"
    source  = ["A17", "A25"]
    quality = "keeper"
    note    = "Type II: pressed on, not kicked off (A25; A17 of the genus). In the eyes: rinse, do not rub, see an eye doctor."
  }

  figure "speed" {
    value = "quick"
    note  = "Catch cup in reach, and the box opened inside a larger tub."
  }

  figure "defence" {
    value   = "Flees, jumps (towards the hand, not away) and shoots faeces."
    source  = ["A25"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    note    = "None known to us: look it up, see law."
  }

  figure "law" {
    value   = "Look up whether it has been listed in CITES since: there were proposals for more tarantulas at the conference of 25 November to 6 December 2025; which, and what became of them, was not found. Not named in the lists of dangerous animals that were seen."
    source  = ["A15"]
    quality = "keeper"
  }

  figure "climate-origin" {
    value   = "Trinidad, among others: on trees, 13 to 30 to the hectare and clumped on large ones; the young between leaves of low plants. Moults and breeding follow the season: young are born in June and July, males are seen late in the dry season."
    source  = ["A18"]
    quality = "paper"
    note    = "In the wild it eats insects, small tree frogs, rarely lizards (A19)."
  }

  figure "sexing" {
    value   = "Males are smaller: a leg span of about 9 cm, females about 13."
    source  = ["A19"]
    quality = "society"
  }

  care "mist" {
    task  = "Mist lightly; all dry again by the next day"
    every = "3 days"
  }
}
