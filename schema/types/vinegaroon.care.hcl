type "vinegaroon" {
  title   = "vinegaroons"
  of      = "hunter"
  genera  = ["Mastigoproctus", "Thelyphonus", "Typopeltis"]
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "lifestyle" {
    value = "burrower"
  }

  figure "hangs-to-moult" {
    value = "false"
  }

  figure "moults-as-adult" {
    value  = "false"
    source = ["P31"]
  }

  figure "ventilation" {
    value = "any"
  }

  figure "heater-not" {
    value = "under"
  }

  figure "temperature-hard" {
    value = "2 to 35 C"
    note  = "Outside it is wrong for every member."
  }

  figure "humidity-soft" {
    value = "60 to 80 %"
  }

  figure "humidity-target" {
    value = "60 to 80 %"
  }

  figure "moisture" {
    value = "damp"
    note  = "Damp below, in soil that holds a tunnel; dry through kills."
  }

  figure "floor-first" {
    value = "5 x 3 length"
    wrong = "3 x 2 length"
    harm  = "comfort"
  }

  figure "substrate-depth-min" {
    value = "2.5 length"
    wrong = "1.5 length"
    harm  = "harms"
  }

  figure "gap-max" {
    value = "0.067 length"
    wrong = "0.125 length"
    note  = "A fifteenth of the animal suits; an eighth is our estimate of what lets it out."
  }

  figure "wait-after-moult" {
    value  = "7 days"
    stages = ["young", "juvenile"]
  }

  figure "wait-after-moult" {
    value  = "14 days"
    stages = ["subadult", "adult"]
  }

  figure "prey-length-share" {
    value = "50 %"
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["young"]
  }

  figure "fast-alarm" {
    value  = "60 days"
    stages = ["juvenile"]
  }

  figure "fast-alarm" {
    value  = "180 days"
    stages = ["subadult", "adult"]
  }

  need "water" {
    longest = "2 days"
    wrong   = "7 days"
  }

  need "moisture" {
    longest = "7 days"
    wrong   = "14 days"
  }

  need "food" {
    longest = "14 days"
    wrong   = "28 days"
    stages  = ["young"]
  }

  need "food" {
    longest = "14 days"
    wrong   = "28 days"
    stages  = ["juvenile"]
  }

  need "food" {
    longest  = "21 days"
    wrong    = "270 days"
    stages   = ["subadult", "adult"]
    shortest = "3 days"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket pinhead"
    killed     = true
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket adult"
  }

  care "mist" {
    every = "7 days"
  }
}
