type "dry-terrestrial-tarantula" {
  title   = "ground tarantulas of dry country"
  of      = "tarantula"
  genera  = ["Brachypelma", "Tliltocatl", "Grammostola", "Aphonopelma", "Acanthoscurria", "Nhandu", "Eupalaestrus", "Chromatopelma", "Pterinochilus", "Monocentropus"]
  grown   = "4.2 to 9 cm"
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "ventilation" {
    value = "any"
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
    value = "6 to 37 C"
    note  = "Outside it is wrong for every member."
  }

  figure "humidity-hard" {
    value = "0 to 85 %"
    note  = "More, wet through, is wrong for every member."
  }

  figure "humidity-soft" {
    value = "45 to 65 %"
  }

  figure "humidity-target" {
    value = "45 to 65 %"
  }

  figure "moisture" {
    value = "either"
  }

  figure "floor-first" {
    value = "2 x 2 span"
    wrong = "1.4 x 1.4 span"
    harm  = "comfort"
  }

  figure "substrate-depth-min" {
    value = "0.9 span"
    wrong = "0.25 span"
    harm  = "comfort"
  }

  figure "unattended" {
    value  = "7 days"
    wrong  = "21 days"
    stages = ["subadult", "adult"]
  }

  need "water" {
    longest = "2 days"
    wrong   = "14 days"
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
    every      = "10 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket adult"
  }

  care "deep-clean" {
    every = "12 months"
  }

  except "Chromatopelma" {
    because = "it webs above the ground, and holds on to its web"

    figure "ventilation" {
      value = "cross"
    }

    figure "fall-max" {
      value  = "1.5 span"
      stages = ["subadult", "adult"]
    }
  }

  except "Pterinochilus" {
    because = "it digs, climbs and webs, has no hairs to throw, and its bite cramps"

    figure "ventilation" {
      value = "cross"
    }

    figure "substrate-depth-min" {
      value   = "10 cm"
      source  = ["A99", "K14"]
      quality = "keeper"
    }

    figure "fall-max" {
      value = "30 cm"
    }
  }

  except "Monocentropus" {
    because = "it digs, and lives in groups"

    figure "ventilation" {
      value = "cross"
    }

    figure "substrate-depth-min" {
      value   = "0.9 span"
      source  = ["A110"]
      quality = "keeper"
    }
  }
}
