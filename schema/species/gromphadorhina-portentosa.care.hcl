species "gromphadorhina-portentosa" {
  title    = "Madagascar hissing cockroach"
  latin    = "Gromphadorhina portentosa (Schaum, 1853)"
  family   = "Blaberidae"
  type     = "roach-colony"
  also     = ["hisser", "Fauchschabe", "hissing cockroach"]
  mistaken = ["Gromphadorhina oblongonota", "Princisia", "Elliptorhina"]
  note     = "Most lines of the trade are hybrids. A colony has no meals by head and no alarms of moults; the work of the year is the dusty clean, with a mask, and thinning out. One that is white has just moulted: do not touch (OS11)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard    = "12 to 38 C"
  temperature_soft    = "20 to 33 C"
  night               = "20 to 24 C"
  cooler              = "2 to 3 C"
  humidity_soft       = "40 to 80 %"
  ventilation         = "cross"
  substrate_depth_min = "0 cm"
  gap_max             = "2 mm"
  hairs               = "none"
  speed               = "slow"

  figure "temperature-target" {
    value    = "24 to 29 C"
    source   = ["OK66b"]
    quality  = "keeper"
    disputed = "20 to 35.5 C (OS9); breeds best at 29.5 to 32 C and not below 21 (OK67)"
  }

  figure "air" {
    value   = "24 to 29 C"
    source  = ["OK66b"]
    quality = "keeper"
  }

  figure "rest" {
    value = "optional"
    note  = "A cooler time is borne, without young below 21 to 22 C."
  }

  figure "humidity-target" {
    value    = "50 to 70 %"
    disputed = "70 to 80 % (OK66b)"
  }

  figure "substrate-depth-advised" {
    value = "3 cm"
    note  = "3 to 5 cm, or none; tubes, bark and egg boxes matter more."
  }

  figure "floor-first" {
    value = "250 cm2"
    note  = "900 cm2 for ten to fifteen; our division."
  }

  figure "floor-further" {
    value = "60 cm2"
  }

  figure "keeping" {
    value   = "groups"
    source  = ["OS9"]
    quality = "practice"
    note    = "Males hold ground and ram: a hide for each, one to three females."
  }

  figure "climbs" {
    value   = "glass"
    source  = ["OS11"]
    quality = "society"
    note    = "Pads on its feet. A band of petroleum jelly 5 cm wide at the rim holds it."
  }

  figure "length" {
    value    = "5 to 10 cm"
    stages   = ["adult"]
    source   = ["OS11"]
    quality  = "society"
    disputed = "rarely over 7.5 cm in captivity (OS9)"
    note     = "Young 6 to 8 mm."
  }

  figure "mass" {
    value    = "7 to 25 g"
    stages   = ["adult"]
    source   = ["OS11"]
    quality  = "society"
    disputed = "to 24 g (OS10)"
  }

  figure "lifespan" {
    value    = "2 to 3 years"
    source   = ["OS10"]
    quality  = "society"
    disputed = "to 3 years (OS9), some 5 (OS10)"
  }

  figure "moults-to-adult" {
    value   = "6"
    source  = ["OS11"]
    quality = "society"
  }

  figure "age-at-maturity" {
    value    = "5 to 7 months"
    source   = ["OS9", "OS10", "OS11"]
    quality  = "society"
    disputed = "5 months (OS11), 5 to 6 (OS9), 7 (OS10), 5 to 12 by warmth (OK68)"
  }

  figure "brood-size" {
    value   = "30 to 60"
    source  = ["OS9", "OS10"]
    quality = "society"
    note    = "Born alive after about 60 days (OS11) or 60 to 70 (OS9); in the first days they cluster under her and feed from her rear (OK69b)."
  }

  figure "old-age" {
    value = "2 years"
    note  = "As adult; of a colony nobody asks."
  }

  figure "venom" {
    value = "none"
  }

  figure "defence" {
    value   = "It hisses. Fourteen kinds of mould were found on bodies, skins and droppings, several of which make allergies or infect wounds (OP25): wash hands, make no dust, a mask to clean."
    source  = ["OP25"]
    quality = "practice"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "USA: look up the permits of the state, Florida for one, and the federal one."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Forest floor of Madagascar."
    source  = ["memory"]
    quality = "memory"
  }

  figure "sexing" {
    value   = "Males have two knobs on the shield."
    source  = ["memory"]
    quality = "memory"
  }

  need "food" {
    longest  = "3 days"
    disputed = "three months without food (OS9): a tale of survival"
  }

  care "water" {
    task  = "Fresh water, with moss or gel in the dish"
    every = "2 days"
  }

  care "moisten" {
    task  = "Dampen one end"
    every = "7 days"
  }

  care "food" {
    kind  = "leaves"
    task  = "Dry dog or fish food, carrot, greens, fruit; wet food of two days out"
    every = "3 days"
  }

  care "band" {
    kind  = "other"
    task  = "Renew the band of petroleum jelly at the rim"
    every = "30 days"
  }
}
