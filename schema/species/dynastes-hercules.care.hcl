species "dynastes-hercules" {
  title    = "Hercules beetle"
  latin    = "Dynastes hercules (Linnaeus, 1758)"
  family   = "Scarabaeidae"
  type     = "beetle"
  also     = ["scieur de long", "Herkuleskäfer"]
  mistaken = ["Dynastes tityus", "Dynastes hyllus", "Dynastes satanas", "Dynastes neptunus"]
  note     = "A larva that turns yellow is ready: no more changes of soil and no moving for six months, since a pupal chamber that is turned kills. A beetle waits for weeks in its chamber and eats nothing: it is not ill. Traded as the subspecies hercules, lichyi, ecuatorianus and occidentalis (OK62); the form of Guadeloupe and Dominica is now a species of its own for some (OS13). For D. satanas, an Appendix II listing was voted in March 2010 (OS16)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard    = "12 to 31 C"
  temperature_soft    = "19 to 27 C"
  night               = "20 to 23 C"
  rest                = "none"
  cooler              = "2 to 3 C"
  substrate_depth_min = "25 cm"
  hairs               = "none"
  speed               = "slow"

  figure "substrate-change" {
    value = "3 to 6 months"
    note  = "In part: two parts new, one part old."
  }

  figure "eats" {
    value = "plants"
    note  = "Rotted leaf and wood as a larva, fruit and jelly as a beetle."
  }

  figure "temperature-target" {
    value    = "23 to 26 C"
    source   = ["OK62"]
    quality  = "practice"
    disputed = "25 C, for lichyi 20 C (OK62)"
    note     = "Warm larvae pupate early and small (as remembered)."
  }

  figure "air" {
    value   = "23 to 26 C"
    source  = ["OK62"]
    quality = "practice"
  }

  figure "humidity-target" {
    value = "60 to 80 %"
  }

  figure "humidity-soft" {
    value = "50 to 90 %"
    note  = "Our margin."
  }

  figure "ventilation" {
    value   = "any"
    source  = ["OK63"]
    quality = "practice"
    note    = "Small holes (OK63)."
  }

  figure "substrate-depth-advised" {
    value   = "25 cm"
    source  = ["OK62", "OK63"]
    quality = "practice"
    note    = "For laying 10 to 15 cm pressed and 10 loose, in 45 to 120 L (OK63); for the chamber 15 cm of pressed garden soil below (OK62)."
  }

  figure "floor-first" {
    value  = "100 cm2"
    stages = ["young", "juvenile"]
    note   = "Our estimate: a larva of the first two stages lives in a litre or two."
  }

  figure "floor-first" {
    value    = "600 cm2"
    stages   = ["subadult"]
    disputed = "60 L for a male larva, or the soil is changed more often (OK62)"
    note     = "15 to 20 L for a female; our arithmetic."
  }

  figure "floor-first" {
    value  = "1200 cm2"
    stages = ["adult"]
    note   = "40 x 30 x 30 cm."
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["subadult", "adult"]
  }

  figure "lid" {
    value   = "latched"
    source  = ["OS14"]
    quality = "practice"
    note    = "And strong: its wings span 20 cm (OS14)."
  }

  figure "keeping" {
    value    = "alone"
    source   = ["OK62"]
    quality  = "practice"
    disputed = "a male and a female larva in one large box, so that they come out together (OK62)"
    note     = "Larvae alone make big males; grown ones are together only to mate."
  }

  figure "length" {
    value    = "5 to 17.5 cm"
    stages   = ["adult"]
    source   = ["OS13", "OS15"]
    quality  = "society"
    disputed = "males to 18 cm (OS12)"
    note     = "Males with the horn 52 to 175 mm (OS13), females 5 to 8 cm (OS15)."
  }

  figure "mass" {
    value   = "25 to 40 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    note    = "Males."
  }

  figure "mass" {
    value    = "100 to 150 g"
    stages   = ["subadult"]
    source   = ["OK62"]
    quality  = "practice"
    disputed = "near 200 g (OS12)"
    note     = "Male larvae; 150 g is what is aimed for in a giant (OK62)."
  }

  figure "lifespan" {
    value    = "1.5 to 3 years"
    disputed = "3 to 6 months as adult (an encyclopedia), 8 to 12 (OK62)"
  }

  figure "moults-to-adult" {
    value   = "4"
    source  = ["OK64"]
    quality = "practice"
    note    = "Three larvae, the pupa, the beetle."
  }

  figure "instar-length" {
    value   = "50 days"
    instar  = 1
    source  = ["OK64"]
    quality = "keeper"
    note    = "At 25 C, after 27.7 days as an egg; the paper behind it was not seen."
  }

  figure "instar-length" {
    value   = "56 days"
    instar  = 2
    source  = ["OK64"]
    quality = "keeper"
    note    = "At 25 C; the paper behind it was not seen."
  }

  figure "instar-length" {
    value    = "450 days"
    instar   = 3
    source   = ["OK64"]
    quality  = "keeper"
    disputed = "larva of a male 12 to 18 months, of a female 12 (OK62)"
    note     = "At 25 C; the paper behind it was not seen."
  }

  figure "instar-length" {
    value    = "32 days"
    instar   = 4
    source   = ["OK64"]
    quality  = "keeper"
    disputed = "4 to 5 months in the chamber (OS12): cell, pupa and waiting together"
    note     = "The pupa, at 25 C; the paper behind it was not seen."
  }

  figure "age-at-maturity" {
    value    = "13 to 36 months"
    source   = ["OS13"]
    quality  = "society"
    disputed = "616 days at 25 C (OK64), 1 to 2 years and 4 to 5 months in the chamber (OS12)"
  }

  figure "sac-time" {
    value    = "28 to 30 days"
    source   = ["OS15", "OK64"]
    quality  = "practice"
    disputed = "27.7 days at 25 C (OK64), about 30 (OS15)"
    note     = "The egg in the soil."
  }

  figure "brood-size" {
    value = "100"
    note  = "Eggs at most, by an encyclopedia. Captive-bred beetles are mated before they are 8 months old (OK63)."
  }

  figure "old-age" {
    value = "90 days"
    note  = "From its first meal as a beetle: feet and feelers are lost."
  }

  figure "venom" {
    value = "none"
  }

  figure "defence" {
    value = "It pinches between its horns, and its legs are strong."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    note    = "Near threatened for IUCN (OS12)."
  }

  figure "law" {
    value   = "Protected in Guadeloupe by an order of 2007: killing, taking and selling are forbidden there; look up the new order, and have a proof that yours was bred (OS14, OS15). USA: look up the plant-pest permit for exotic scarabs."
    source  = ["OS14", "OS15"]
    quality = "society"
  }

  figure "climate-origin" {
    value   = "Wet forest from Central America to Bolivia, and of the Lesser Antilles."
    source  = ["memory"]
    quality = "memory"
  }

  figure "sexing" {
    value   = "Grown males have the horns."
    source  = ["memory"]
    quality = "memory"
  }

  care "mist" {
    every  = "2 days"
    stages = ["adult"]
  }

  care "fruit" {
    kind   = "leaves"
    task   = "Fresh soft fruit or jelly, the old out; sticks to turn over at"
    every  = "2 days"
    stages = ["adult"]
  }

  care "leaves" {
    task   = "Rotted hardwood, no conifer, on top; how many droppings? yellow larva: leave it"
    every  = "4 weeks"
    stages = ["young", "juvenile", "subadult"]
  }

  care "deep-clean" {
    task    = "Where droppings are many: two parts new soil, one part old on top; never for a yellow larva"
    every   = "3 months"
    stages  = ["young", "juvenile", "subadult"]
    because = "in 60 L every six months will do (OK62)"
  }
}
