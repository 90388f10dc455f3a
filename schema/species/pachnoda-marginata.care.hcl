species "pachnoda-marginata" {
  title    = "sun beetle"
  latin    = "Pachnoda marginata (Drury, 1773)"
  family   = "Scarabaeidae"
  type     = "beetle"
  also     = ["Congo rose chafer", "Kongo-Rosenkäfer"]
  mistaken = ["Pachnoda sinuata", "Pachnoda aemula"]
  note     = "The trade has the subspecies peregrina Kolbe, 1906, one of nine (OS8). All stages live in one box: fruit out, fruit in, damp, and how many droppings. Cocoons of soil grains, often on the walls, are never opened, and nobody digs for eight weeks from the first one on."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "21 to 31 C"
  warm_spot               = "30 to 32 C"
  night                   = "20 to 22 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "50 to 85 %"
  humidity_target         = "60 to 75 %"
  ventilation             = "cross"
  substrate_depth_advised = "15 cm"
  hairs                   = "none"
  speed                   = "quick"

  figure "substrate-change" {
    value = "4 months"
    note  = "In part, one half; the months are our estimate."
  }

  figure "temperature-hard" {
    value = "15 to 33 C"
    note  = "A precaution; the upper end is that of all beetles of its type."
  }

  figure "temperature-target" {
    value   = "24 to 29.5 C"
    source  = ["OK61"]
    quality = "keeper"
    note    = "Of tropical kinds: colder makes them dull, or kills (OK61)."
  }

  figure "air" {
    value   = "24 to 29.5 C"
    source  = ["OK61"]
    quality = "keeper"
    note    = "Light for 12 hours makes them active (OK61)."
  }

  figure "moisture" {
    value   = "damp"
    source  = ["OK61"]
    quality = "keeper"
    note    = "Always, in all stages, and never wet (OK61)."
  }

  figure "substrate-depth-min" {
    value   = "10 cm"
    source  = ["OK58"]
    quality = "keeper"
    note    = "Or there are hardly any eggs; 15 cm are better (OK58)."
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["adult"]
  }

  figure "floor-first" {
    value    = "450 cm2"
    disputed = "from 30 x 30 x 30 cm on (OK58), 50 x 50 x 50 cm for a small breeding group (OK60)"
    note     = "900 cm2 for ten; our division."
  }

  figure "floor-further" {
    value = "50 cm2"
  }

  figure "keeping" {
    value = "groups"
    note  = "All stages; larvae may bite pupae where they starve or are dry."
  }

  figure "length" {
    value   = "2 to 3 cm"
    stages  = ["adult"]
    source  = ["OS8"]
    quality = "society"
    note    = "Usually to 2.5 cm. A larva is up to twice as long."
  }

  figure "mass" {
    value   = "0.8 to 1.2 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "mass" {
    value   = "2 to 3.5 g"
    stages  = ["subadult"]
    source  = ["memory"]
    quality = "memory"
    note    = "The third larva."
  }

  figure "lifespan" {
    value    = "5 to 7 months"
    source   = ["OS23"]
    quality  = "society"
    disputed = "2 to 4 months as adult (as remembered)"
    note     = "Males 5, females 7 (OS23 does not say whether as adult). From egg to adult about five months (OS8)."
  }

  figure "moults-to-adult" {
    value   = "4"
    source  = ["OS8"]
    quality = "practice"
    note    = "Three larvae, the pupa, the beetle."
  }

  figure "age-at-maturity" {
    value   = "21 to 25 weeks"
    source  = ["OS8"]
    quality = "society"
    note    = "Egg 3 to 4 weeks, larva about 3 months, cocoon 5 to 8 weeks."
  }

  figure "sac-time" {
    value   = "3 to 4 weeks"
    source  = ["OS8"]
    quality = "society"
    note    = "The egg in the soil."
  }

  figure "brood-size" {
    value   = "170"
    source  = ["OS8"]
    quality = "society"
    note    = "Eggs in a life, and more."
  }

  figure "old-age" {
    value = "60 days"
    note  = "From coming out of the cocoon: feet are lost, it is dull."
  }

  figure "venom" {
    value = "none"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "USA: look up the plant-pest permit for exotic scarabs."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "West and Central Africa."
    source  = ["memory"]
    quality = "memory"
  }

  figure "sexing" {
    value   = "Males have a groove along the belly."
    source  = ["OS8", "OK60"]
    quality = "practice"
  }

  care "moisten" {
    task  = "Spray the soil: a ball in the hand, and no drop"
    every = "3 days"
  }

  care "fruit" {
    kind   = "leaves"
    task   = "Fresh soft fruit or petals, the old out; sticks for those on their backs"
    every  = "2 days"
    stages = ["adult"]
  }

  care "deep-clean" {
    task  = "If half the soil is droppings change one half, and search it for larvae; not within 8 weeks of a cocoon"
    every = "4 months"
  }
}
