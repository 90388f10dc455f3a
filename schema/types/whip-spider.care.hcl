type "whip-spider" {
  title   = "whip spiders"
  of      = "hunter"
  genera  = ["Damon", "Phrynus", "Heterophrynus", "Euphrynichus", "Charon", "Paraphrynus", "Acanthophrynus"]
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "lifestyle" {
    value = "bark"
  }

  figure "hangs-to-moult" {
    value = "true"
  }

  figure "moults-as-adult" {
    value  = "true"
    source = ["P32"]
  }

  figure "ventilation" {
    value = "cross"
  }

  figure "temperature-hard" {
    value   = "12 to 33 C"
    quality = "memory"
    source  = ["memory"]
    note    = "Outside it is wrong for every member."
  }

  figure "humidity-hard" {
    value = "50 to 100 %"
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
    value = "1.5 x 1.5 span"
    wrong = "1 x 1 span"
    harm  = "comfort"
    note  = "Span of the walking legs."
  }

  figure "height-min" {
    value   = "2 span"
    wrong   = "1 span"
    quality = "memory"
    source  = ["memory"]
    note    = "It falls in the moult where it cannot hang free."
  }

  figure "substrate-depth-min" {
    value = "4 cm"
    harm  = "comfort"
  }

  figure "gap-max" {
    value = "0.05 span"
    wrong = "0.1 span"
    note  = "A twentieth of the leg span suits; a tenth is our estimate of what lets it out."
  }

  figure "wait-after-moult" {
    value  = "5 days"
    stages = ["young", "juvenile"]
  }

  figure "wait-after-moult" {
    value  = "7 days"
    stages = ["subadult", "adult"]
  }

  figure "prey-length-share" {
    value = "100 %"
  }

  figure "fast-alarm" {
    value  = "7 days"
    stages = ["young"]
  }

  figure "fast-alarm" {
    value  = "21 days"
    stages = ["juvenile"]
  }

  figure "fast-alarm" {
    value  = "60 days"
    stages = ["subadult", "adult"]
  }

  need "water" {
    longest = "2 days"
    wrong   = "7 days"
  }

  need "moisture" {
    longest = "3 days"
    wrong   = "7 days"
  }

  need "food" {
    longest = "7 days"
    wrong   = "14 days"
    stages  = ["young"]
  }

  need "food" {
    longest = "10 days"
    wrong   = "20 days"
    stages  = ["juvenile"]
  }

  need "food" {
    longest  = "21 days"
    wrong    = "60 days"
    stages   = ["subadult", "adult"]
    shortest = "3 days"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
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
    every = "3 days"
  }

  except "Acanthophrynus" {
    because = "it lives drier"
  }

  except "Paraphrynus" {
    because = "it lives drier"
  }
}
