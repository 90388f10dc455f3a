type "humid-terrestrial-tarantula" {
  title   = "ground tarantulas of wet country"
  of      = "tarantula"
  genera  = ["Theraphosa", "Megaphobema", "Pamphobeteus", "Xenesthis", "Lasiodora", "Phormictopus", "Tliltocatl", "Acanthoscurria", "Nhandu"]
  grown   = "5.5 to 10 cm"
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "ventilation" {
    value = "cross"
  }

  figure "lifestyle" {
    value = "ground"
  }

  figure "heater-not" {
    value  = "under"
    source = ["K34"]
  }

  figure "fall-max" {
    value  = "1 span"
    wrong  = "1.5 span"
    stages = ["subadult", "adult"]
    source = ["K81"]
    note   = "A fall ruptures the abdomen. Small ones are light, and live in tubs that are higher than their legs span (common practice)."
  }

  figure "fall-max" {
    value  = "2.5 span"
    wrong  = "2.7 span"
    harm   = "harms"
    stages = ["juvenile"]
    note   = "It is lighter than a grown one and falls more softly; what it bears is our estimate. Tubs of juveniles are higher than their leg span (common practice)."
  }

  figure "wait-after-moult" {
    value  = "7 days"
    stages = ["juvenile"]
  }

  figure "wait-after-moult" {
    value  = "14 days"
    stages = ["subadult", "adult"]
  }

  figure "temperature-hard" {
    value = "12 to 35 C"
    note  = "Outside it is wrong for every member. Cloud forest kinds bear less heat."
  }

  figure "humidity-hard" {
    value = "35 to 100 %"
    note  = "Less, dry through, is wrong for every member."
  }

  figure "humidity-soft" {
    value = "70 to 85 %"
  }

  figure "humidity-target" {
    value = "70 to 85 %"
  }

  figure "moisture" {
    value = "damp"
  }

  figure "floor-first" {
    value = "2 x 2 span"
    wrong = "1.5 x 1.5 span"
    harm  = "comfort"
  }

  figure "substrate-depth-min" {
    value = "0.9 span"
    wrong = "0.25 span"
    harm  = "comfort"
  }

  need "water" {
    longest = "2 days"
    wrong   = "7 days"
  }

  need "moisture" {
    longest = "2 days"
    wrong   = "7 days"
  }

  figure "unattended" {
    value  = "3 days"
    wrong  = "6 days"
    stages = ["young"]
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 1
    prey       = "cricket adult"
  }

  care "mist" {
    every = "2 days"
  }

  care "deep-clean" {
    every = "6 months"
  }

  except "Ephebopus" {
    because = "it digs tubes"
  }
}
