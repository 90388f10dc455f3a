type "tropical-burrowing-scorpion" {
  title   = "burrowing tropical scorpions"
  of      = "scorpion"
  genera  = ["Pandinus", "Pandinoides", "Pandinopsis", "Heterometrus"]
  grown   = "5 to 20 cm"
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "lifestyle" {
    value = "burrower"
  }

  figure "heater-not" {
    value  = "under"
    source = ["K3"]
    note   = "It digs down to get away from heat."
  }

  figure "ventilation" {
    value = "any"
  }

  figure "temperature-hard" {
    value  = "15 to 35 C"
    source = ["K20"]
    note   = "Outside it is wrong for every member."
  }

  figure "humidity-hard" {
    value = "40 to 100 %"
    note  = "Less is wrong for every member."
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
    value  = "3 x 2 length"
    wrong  = "2 x 1.5 length"
    harm   = "comfort"
    source = ["K45"]
    note   = "Three body lengths long (K45); the rest is our reading."
  }

  figure "substrate-depth-min" {
    value  = "1 length"
    wrong  = "0.5 length"
    harm   = "harms"
    source = ["K66"]
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

  need "moisture" {
    longest = "3 days"
    wrong   = "10 days"
  }

  need "food" {
    longest = "14 days"
    wrong   = "28 days"
    stages  = ["juvenile"]
  }

  need "food" {
    longest  = "14 days"
    wrong    = "90 days"
    stages   = ["subadult", "adult"]
    shortest = "3 days"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket adult"
  }

  care "water" {
    every = "2 days"
  }

  care "mist" {
    every = "2 days"
  }

  care "deep-clean" {
    every = "6 months"
  }

  except "Opistophthalmus" {
    because = "it lives in dry country"
  }

  except "Urodacus" {
    because = "it lives in dry country"
  }

  except "Opisthacanthus" {
    because = "it lives in crevices and under bark"
  }

  except "Liocheles" {
    because = "it lives in crevices and under bark, in cooler forest"

    figure "temperature-hard" {
      value = "12 to 33 C"
    }
  }

  except "Hormurus" {
    because = "it lives in crevices and under bark, in cooler forest"

    figure "temperature-hard" {
      value = "12 to 33 C"
    }
  }

  except "Uroctonus" {
    because = "it lives in the cool and wet of a coast"

    figure "temperature-hard" {
      value = "2 to 30 C"
    }
  }
}
