type "arboreal-tarantula" {
  title   = "tree tarantulas"
  of      = "tarantula"
  genera  = ["Avicularia", "Caribena", "Ybyrapora", "Iridopelma", "Poecilotheria", "Psalmopoeus", "Tapinauchenius", "Heteroscodra", "Stromatopelma", "Omothymus", "Lampropelma"]
  grown   = "3.2 to 8 cm"
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "ventilation" {
    value = "cross"
  }

  figure "lifestyle" {
    value = "tree"
  }

  figure "wait-after-moult" {
    value  = "7 days"
    stages = ["juvenile", "subadult", "adult"]
    source = ["K84"]
  }

  figure "temperature-hard" {
    value = "13 to 35 C"
    note  = "Outside it is wrong for every member."
  }

  figure "humidity-hard" {
    value = "0 to 90 %"
    note  = "More with little air is wrong for every member."
  }

  figure "humidity-soft" {
    value = "60 to 75 %"
  }

  figure "humidity-target" {
    value = "60 to 75 %"
  }

  figure "moisture" {
    value = "either"
  }

  figure "floor-first" {
    value = "1.6 x 1.6 span"
    wrong = "1 x 1 span"
    harm  = "comfort"
  }

  figure "height-min" {
    value  = "2 span"
    wrong  = "1 span"
    stages = ["subadult", "adult"]
    harm   = "harms"
    note   = "Small ones live low: between leaves, on the ground, some in it (A18, A28, A43)."
  }

  figure "substrate-depth-min" {
    value = "2 cm"
    harm  = "comfort"
  }

  need "water" {
    longest = "2 days"
    wrong   = "7 days"
  }

  need "moisture" {
    longest = "4 days"
    wrong   = "7 days"
    stages  = ["young", "juvenile"]
  }

  figure "unattended" {
    value  = "2 days"
    wrong  = "4 days"
    stages = ["young"]
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "6 days"
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
    every = "4 days"
  }

  care "deep-clean" {
    every = "12 months"
  }

  except "Psalmopoeus" {
    because = "it nests at the floor and partly under it, and is kept damper"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"

    figure "substrate-depth-min" {
      value  = "6 cm"
      wrong  = "2.5 cm"
      harm   = "comfort"
      source = ["A28", "A30"]
      note   = "It nests at the floor and partly under it at any age (A28, of P. irminia); A30, of P. cambridgei, has 2.5 cm at the least."
    }

    figure "humidity-hard" {
      value = "0 to 90 %"
      note  = "Our estimate: keepers have 80 % and more (A30, A41), with moving air."
    }
  }

  except "Tapinauchenius" {
    because = "it builds a chamber under the ground as well as a tube above, and is kept damper"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"

    figure "substrate-depth-min" {
      value  = "6 cm"
      wrong  = "2 cm"
      harm   = "comfort"
      source = ["A56"]
      note   = "A56 has the chamber; the figures are our estimate."
    }

    figure "humidity-hard" {
      value = "0 to 90 %"
      note  = "Our estimate: A56 has 70 to 85 %."
    }
  }
}
