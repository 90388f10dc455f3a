type "bark-scorpion" {
  title   = "scorpions of bark and plants"
  of      = "scorpion"
  genera  = ["Centruroides", "Tityus", "Babycurus", "Lychas", "Isometrus"]
  grown   = "5 to 12 cm"
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "lifestyle" {
    value = "bark"
  }

  figure "ventilation" {
    value = "cross"
  }

  figure "temperature-hard" {
    value  = "0 to 40 C"
    source = ["P19"]
    note   = "Outside it is wrong for every member; half of Centruroides hentzi died at 43.7 C (P19). How dry or damp differs from species to species: state moisture and humidity."
  }

  figure "humidity-hard" {
    value = "0 to 95 %"
    note  = "More is wrong for every member, as they need moving air. How dry or damp differs from species to species."
  }

  figure "floor-first" {
    value = "2 x 2 length"
    wrong = "1.5 x 1.5 length"
    harm  = "comfort"
  }

  figure "height-min" {
    value = "2 length"
    wrong = "1 length"
    harm  = "harms"
  }

  figure "substrate-depth-min" {
    value = "3 cm"
    harm  = "comfort"
  }

  need "water" {
    longest = "2 days"
    wrong   = "10 days"
  }

  need "moisture" {
    longest = "3 days"
    wrong   = "10 days"
  }

  need "food" {
    longest = "10 days"
    wrong   = "20 days"
    stages  = ["juvenile"]
  }

  need "food" {
    longest  = "14 days"
    wrong    = "60 days"
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
    every      = "5 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "6 days"
    per_animal = 1
    prey       = "cricket adult"
  }

  care "water" {
    every = "2 days"
  }

  care "mist" {
    every = "3 days"
  }

  care "deep-clean" {
    every = "12 months"
  }
}
