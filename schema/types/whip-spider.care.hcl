type "whip-spider" {
  title   = "whip spiders"
  of      = "hunter"
  genera  = ["Damon", "Phrynus", "Heterophrynus", "Euphrynichus", "Charon", "Paraphrynus", "Acanthophrynus"]
  grown   = "12 to 60 mm"
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "uv-not" {
    value = "true"
    note  = "Of the night: a lamp drives it in. Common practice: nothing was measured."
  }

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
    value   = "12 to 34 C"
    quality = "memory"
    source  = ["memory"]
    note    = "Outside it is wrong for every member whose own sheet does not say more."
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
    value = "2 x 2 span"
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

  figure "length" {
    value  = "0.3 to 0.38 length"
    stages = ["young"]
    note   = "Of the grown, with a factor of 1.27 a moult as in scorpions; our arithmetic."
  }

  figure "length" {
    value  = "0.49 to 0.62 length"
    stages = ["juvenile"]
    note   = "Of the grown, with a factor of 1.27 a moult as in scorpions; our arithmetic."
  }

  figure "length" {
    value  = "0.78 length"
    stages = ["subadult"]
    note   = "Of the grown, with a factor of 1.27 a moult as in scorpions; our arithmetic."
  }

  figure "span" {
    value  = "0.3 to 0.38 span"
    stages = ["young"]
    note   = "Of the grown, with a factor of 1.27 a moult as in scorpions; our arithmetic."
  }

  figure "span" {
    value  = "0.49 to 0.62 span"
    stages = ["juvenile"]
    note   = "Of the grown, with a factor of 1.27 a moult as in scorpions; our arithmetic."
  }

  figure "span" {
    value  = "0.78 span"
    stages = ["subadult"]
    note   = "Of the grown, with a factor of 1.27 a moult as in scorpions; our arithmetic."
  }

  figure "gap-max" {
    value = "0.02 span"
    wrong = "0.05 span"
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

  figure "premoult-fast" {
    value  = "1 to 2 weeks"
    stages = ["young"]
  }

  figure "premoult-fast" {
    value  = "1 to 3 weeks"
    stages = ["juvenile"]
  }

  figure "premoult-fast" {
    value  = "2 to 6 weeks"
    stages = ["subadult"]
  }

  figure "premoult-fast" {
    value  = "2 to 8 weeks"
    stages = ["adult"]
  }

  figure "premoult-look" {
    value  = "60 days"
    stages = ["adult"]
  }

  figure "premoult-try" {
    value  = "60 days"
    stages = ["young"]
  }

  figure "premoult-try" {
    value  = "30 days"
    stages = ["juvenile"]
  }

  figure "premoult-help" {
    value  = "90 days"
    stages = ["subadult"]
  }

  figure "premoult-help" {
    value  = "90 days"
    stages = ["adult"]
  }

  figure "first-killed" {
    value = "3 days"
    note  = "After they leave her."
  }

  figure "first-meal" {
    value = "10 days"
    note  = "3 to 7 days after they leave her is usual; the limit is that of scorpions."
  }

  figure "undisturbed" {
    value  = "14 days"
    source = ["P32"]
    note   = "From hatching. The young of Charinus guto ride for 10 days (P32). Before, from the laying on, she is left alone with the sac."
  }

  figure "prey-length-share" {
    value = "100 %"
  }

  figure "fast-look" {
    value  = "14 days"
    stages = ["juvenile"]
  }

  figure "fast-look" {
    value  = "30 days"
    stages = ["subadult"]
  }

  figure "fast-look" {
    value  = "30 days"
    stages = ["adult"]
  }

  figure "fast-try" {
    value  = "4 days"
    stages = ["young"]
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

  figure "fast-help" {
    value  = "10 days"
    stages = ["young"]
  }

  figure "fast-help" {
    value  = "90 days"
    stages = ["subadult", "adult"]
  }

  figure "settling" {
    value  = "5 to 7 days"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "substrate-change" {
    value = "6 months"
  }

  state "gravid" {
    care   = "dish, clean"
    manner = "usual"
    words  = "look first"
    rule   = "look first: a sac under her? do nothing, log laid"
  }

  state "sac" {
    care   = "killed"
    manner = "hatch"
    words  = "one small item at the far end"
    every  = "14 days"
    rule   = "water through the hatch, a small killed item every two weeks, lift nothing"
    note   = "She eats little with a sac, and may drop or eat it when she is disturbed."
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

  care "deep-clean" {
    every = "6 months"
  }

  except "Acanthophrynus" {
    because = "it lives drier"

    figure "humidity-soft" {
      value   = "50 to 85 %"
      source  = ["memory"]
      quality = "memory"
    }

    figure "humidity-target" {
      value   = "60 to 75 %"
      source  = ["memory"]
      quality = "memory"
    }
  }

  except "Paraphrynus" {
    because = "it lives drier"
  }
}
