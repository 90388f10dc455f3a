type "desert-burrowing-scorpion" {
  title   = "burrowing desert scorpions"
  of      = "scorpion"
  genera  = ["Hadrurus", "Parabuthus", "Leiurus", "Androctonus", "Hottentotta", "Smeringurus", "Apistobuthus", "Scorpio", "Opistophthalmus"]
  grown   = "5 to 15 cm"
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "surface-max" {
    value = "43 C"
    note  = "Skin of people is harmed by 43 C in 8 hours (ISO 13732-1, from memory); a desert scorpion bears air of 45 to 47 C, and no figure of a gecko was found. Common practice, no source."
  }

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
    value  = "0 to 42 C"
    source = ["P15"]
    note   = "Outside it is wrong for every member; others died at 45 to 47 C (P15)."
  }

  figure "humidity-hard" {
    value = "0 to 75 %"
    note  = "More with no dry part is wrong for every member."
  }

  figure "humidity-soft" {
    value = "20 to 50 %"
  }

  figure "humidity-target" {
    value = "20 to 50 %"
    note  = "Dry air over a layer that is damp below."
  }

  figure "moisture" {
    value = "arid"
  }

  figure "floor-first" {
    value  = "3 x 2 length"
    wrong  = "2 x 1.5 length"
    harm   = "comfort"
    source = ["K45"]
    note   = "Three body lengths long (K45); the rest is our reading."
  }

  figure "substrate-depth-min" {
    value = "1 length"
    wrong = "0.3 length"
    harm  = "comfort"
  }

  figure "unattended" {
    value  = "7 days"
    wrong  = "30 days"
    stages = ["subadult", "adult"]
  }

  need "water" {
    longest = "7 days"
    wrong   = "30 days"
  }

  need "food" {
    longest = "14 days"
    wrong   = "28 days"
    stages  = ["juvenile"]
  }

  need "food" {
    longest  = "21 days"
    wrong    = "120 days"
    stages   = ["subadult", "adult"]
    shortest = "3 days"
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
    every      = "7 days"
    per_animal = 1
    prey       = "cricket adult"
  }

  care "water" {
    every = "3 days"
  }

  care "deep-clean" {
    every = "12 months"
  }

  except "Scorpio" {
    because = "it loses water faster than the Buthidae that live beside it, and its burrow is deep"

    figure "substrate-depth-min" {
      value = "2.5 length"
      wrong = "1 length"
      harm  = "harms"
    }

    figure "moisture" {
      value  = "damp"
      source = ["P18"]
      note   = "Dry on top, damp below: a Scorpionid of dry country is not kept dry through. How damp is for the species to say."
    }

    need "water" {
      longest = "3 days"
      wrong   = "14 days"
      source  = ["P18"]
      note    = "Scorpionidae fall at a loss of 5 % of their mass (P18)."
    }
  }

  except "Opistophthalmus" {
    because = "it loses water faster than the Buthidae that live beside it, and its burrow is deep"

    figure "substrate-depth-min" {
      value = "2 length"
      wrong = "1 length"
      harm  = "harms"
    }

    figure "moisture" {
      value  = "damp"
      source = ["P18"]
      note   = "Dry on top, damp below: a Scorpionid of dry country is not kept dry through. How damp is for the species to say."
    }

    need "water" {
      longest = "3 days"
      wrong   = "14 days"
      source  = ["P18"]
      note    = "Scorpionidae fall at a loss of 5 % of their mass (P18)."
    }
  }

  except "Androctonus" {
    because = "it lies in shallow pits and digs no deep burrow"

    figure "substrate-depth-min" {
      value = "0.5 length"
      wrong = "0.2 length"
      harm  = "comfort"
    }
  }
}
