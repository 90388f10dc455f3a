type "fossorial-tarantula" {
  title   = "tarantulas that live in burrows"
  of      = "tarantula"
  genera  = ["Cyriopagopus", "Haplopelma", "Chilobrachys", "Ceratogyrus", "Pelinobius", "Hysterocrates", "Orphnaecus", "Aphonopelma"]
  grown   = "4.5 to 9 cm"
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "ventilation" {
    value = "any"
  }

  figure "lifestyle" {
    value = "burrower"
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
    note  = "Outside it is wrong for every member."
  }

  figure "humidity-hard" {
    value = "20 to 100 %"
    note  = "Less, dry through to the floor of the burrow, is wrong for every member."
  }

  figure "humidity-soft" {
    value = "60 to 80 %"
  }

  figure "humidity-target" {
    value = "60 to 80 %"
  }

  figure "moisture" {
    value = "damp"
  }

  figure "floor-first" {
    value = "2 x 2 span"
    wrong = "1.2 x 1.2 span"
    harm  = "comfort"
  }

  figure "substrate-depth-min" {
    value = "2 span"
    wrong = "0.8 span"
    harm  = "harms"
  }

  figure "unattended" {
    value  = "7 days"
    wrong  = "21 days"
    stages = ["subadult", "adult"]
  }

  need "water" {
    longest = "2 days"
    wrong   = "7 days"
  }

  need "moisture" {
    longest = "4 days"
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
    every      = "8 days"
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

  except "Ceratogyrus" {
    because = "it is of dry savanna: dry above and damp below"

    figure "humidity-soft" {
      value = "45 to 65 %"
    }

    figure "humidity-target" {
      value = "45 to 65 %"
    }

    figure "moisture" {
      value = "either"
    }

    need "moisture" {
      longest = "5 days"
      wrong   = "30 days"
    }
  }

  except "Hysterocrates" {
    because = "it lives in the wettest soil of all, and bathes in its dish"

    need "water" {
      longest = "1 day"
      wrong   = "4 days"
    }
  }

  except "Pelinobius" {
    because = "it is of dry country, and drier than the others"

    figure "humidity-soft" {
      value   = "50 to 70 %"
      source  = ["A119"]
      quality = "keeper"
      note    = "Of African baboon spiders in general, with good air."
    }

    figure "humidity-target" {
      value   = "50 to 70 %"
      source  = ["A119"]
      quality = "keeper"
      note    = "Of African baboon spiders in general, with good air."
    }

    figure "moisture" {
      value = "either"
    }

    need "moisture" {
      longest = "10 days"
      wrong   = "30 days"
    }
  }
}
