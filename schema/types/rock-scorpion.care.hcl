type "rock-scorpion" {
  title   = "scorpions of rocks"
  of      = "scorpion"
  genera  = ["Hadogenes", "Iurus", "Liocheles", "Hormurus", "Hemiscorpius"]
  grown   = "13 to 21 cm"
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "lifestyle" {
    value = "crevice"
    note  = "Under and between flat stones that cannot slip."
  }

  figure "ventilation" {
    value = "any"
  }

  figure "temperature-hard" {
    value = "5 to 40 C"
    note  = "Outside it is wrong for every member."
  }

  figure "humidity-hard" {
    value = "0 to 85 %"
    note  = "More with no dry part is wrong for every member."
  }

  figure "humidity-soft" {
    value = "40 to 60 %"
  }

  figure "humidity-target" {
    value = "40 to 60 %"
  }

  figure "moisture" {
    value = "either"
    note  = "Dry, with one damp spot."
  }

  figure "floor-first" {
    value  = "3 x 2 length"
    wrong  = "2 x 1.5 length"
    harm   = "comfort"
    source = ["K45"]
    note   = "Three body lengths long (K45); the rest is our reading."
  }

  figure "substrate-depth-min" {
    value = "3 cm"
    harm  = "comfort"
  }

  figure "unattended" {
    value  = "7 days"
    wrong  = "21 days"
    stages = ["subadult", "adult"]
  }

  need "water" {
    longest = "3 days"
    wrong   = "14 days"
  }

  need "moisture" {
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
    wrong    = "90 days"
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

  care "mist" {
    every = "7 days"
  }

  care "deep-clean" {
    every = "12 months"
  }

  except "Liocheles" {
    because = "it lives in wet forest"
  }

  except "Hormurus" {
    because = "it lives in wet forest"
  }

  except "Iurus" {
    because = "it lives in cool caves"
  }

  except "Hemiscorpius" {
    because = "its sting kills, and little is known of its care"
  }
}
