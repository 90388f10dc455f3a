species "telodeinopus-aoutii" {
  title    = "giant African olive millipede"
  latin    = "Telodeinopus aoutii (Demange, 1971)"
  family   = "Spirostreptidae"
  type     = "millipede"
  also     = ["Ghana speckled leg millipede", "long-legged millipede"]
  former   = ["Spirostreptus sp. 1"]
  mistaken = ["Telodeinopus assiniensis", "Telodeinopus bibundinus"]
  note     = "Three of the thirteen species of the genus are kept (OK22). It climbs more than others, and dries faster: a warm, dry box kills it before a giant African millipede notices. Bred ones are hardy and very prolific, wild-caught adults touchy (OK22). Of Spirostreptus gregorius little more was found than that it is kept, sociable and eats plants (OK33): use this sheet."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft = "20 to 28 C"
  night            = "20 C"
  rest             = "none"
  cooler           = "2 to 3 C"
  humidity_soft    = "65 to 95 %"
  humidity_target  = "75 to 90 %"
  hairs            = "none"
  speed            = "slow"

  figure "temperature-hard" {
    value   = "16 to 30 C"
    source  = ["OS18"]
    quality = "practice"
    note    = "More of the kin Archispirostreptus died in a zoo above 29.5 C (OS18)."
  }

  figure "temperature-target" {
    value    = "23 to 28 C"
    source   = ["OK22"]
    quality  = "practice"
    disputed = "20 to 26 C, with no heater (OK25, of most millipedes)"
    note     = "The kin T. assiniensis lays at 23 to 28 C only (OK22)."
  }

  figure "air" {
    value    = "23 to 28 C"
    source   = ["OK22"]
    quality  = "practice"
    disputed = "20 to 26 C, with no heater (OK25, of most millipedes)"
    note     = "The kin T. assiniensis lays at 23 to 28 C only (OK22)."
  }

  figure "heater-not" {
    value   = "under"
    source  = ["OK32"]
    quality = "keeper"
    note    = "They dig toward the heat, and do not know to go up."
  }

  figure "moisture" {
    value = "damp"
    note  = "Never drying."
  }

  figure "drinks" {
    value   = "soil"
    source  = ["OK21"]
    quality = "keeper"
    note    = "Even a shallow dish can drown it."
  }

  figure "substrate-depth-min" {
    value = "15 cm"
    note  = "At least its length, to moult in. Cuttlefish lies there always (OK21)."
  }

  figure "floor-first" {
    value    = "1200 cm2"
    stages   = ["subadult", "adult"]
    disputed = "two lengths long, one wide and two high, without a tight lid (OK32)"
    note     = "For four or five."
  }

  figure "floor-further" {
    value  = "150 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["subadult", "adult"]
    note   = "Branches, and a tight lid."
  }

  figure "climbs" {
    value   = "seams"
    source  = ["OK22"]
    quality = "keeper"
    note    = "More than other kinds do: it has long legs, and may live in trees."
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["newborn", "young"]
  }

  figure "gap-max" {
    value  = "4 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["juvenile"]
    note   = "Our estimate: one of 5 cm is thinner than 4 mm."
  }

  figure "length" {
    value   = "12 to 18 cm"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    note    = "The page that was read leaves the figure out. 68 to 73 rings (OK24)."
  }

  figure "mass" {
    value   = "8 to 15 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "3 to 5 years"
    source   = ["memory"]
    quality  = "memory"
    disputed = "15 years and more (OK14b, of millipedes)"
    note     = "An adult dies 6 to 18 months after it first bred."
  }

  figure "age-at-maturity" {
    value   = "1.5 to 2 years"
    source  = ["memory"]
    quality = "memory"
  }

  figure "sac-time" {
    value   = "4 to 8 weeks"
    source  = ["memory"]
    quality = "memory"
    note    = "In the soil; no digging for 90 days."
  }

  figure "keeping" {
    value   = "groups"
    source  = ["OK31"]
    quality = "keeper"
    note    = "Many in little room."
  }

  figure "venom" {
    value   = "none"
    source  = ["OK25"]
    quality = "keeper"
  }

  figure "defence" {
    value   = "A fluid with quinones stains, and harms eyes and mouth; this order has no cyanide. Rinse the eyes, wash the hands."
    source  = ["OK25"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "USA: look up the plant-pest permit for exotic millipedes."
    source  = ["G9"]
    quality = "guideline"
  }

  care "moisten" {
    every = "2 days"
  }

  care "protein" {
    kind  = "other"
    task  = "A pinch of fish flakes on top"
    every = "7 days"
  }
}
