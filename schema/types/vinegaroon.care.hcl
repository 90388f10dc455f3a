type "vinegaroon" {
  title   = "vinegaroons"
  of      = "hunter"
  genera  = ["Mastigoproctus", "Thelyphonus", "Typopeltis"]
  grown   = "40 to 60 mm"
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "uv-not" {
    value = "true"
    note  = "Of the night: a lamp drives it in. Common practice: nothing was measured."
  }

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

  figure "humidity-hard" {
    value = "30 to 100 %"
    note  = "Less, dry through, is wrong for every member."
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
    value = "6 x 5 length"
    wrong = "3 x 2 length"
    harm  = "comfort"
  }

  figure "substrate-depth-min" {
    value = "2.5 length"
    wrong = "1.5 length"
    harm  = "harms"
  }

  figure "length" {
    value  = "0.35 length"
    stages = ["young"]
    note   = "Of the grown, with a factor of 1.3 a moult, the middle of 1.11 to 1.57 in Typopeltis crucifer (OP4); our arithmetic."
  }

  figure "length" {
    value  = "0.46 to 0.59 length"
    stages = ["juvenile"]
    note   = "Of the grown, with a factor of 1.3 a moult, the middle of 1.11 to 1.57 in Typopeltis crucifer (OP4); our arithmetic."
  }

  figure "length" {
    value  = "0.77 length"
    stages = ["subadult"]
    note   = "Of the grown, with a factor of 1.3 a moult, the middle of 1.11 to 1.57 in Typopeltis crucifer (OP4); our arithmetic."
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

  figure "premoult-fast" {
    value  = "1 to 4 months"
    stages = ["young"]
    source = ["N19"]
    note   = "Sealed in. N19 found wild ones of Arizona sealed in for much of the year; the numbers are our reading."
  }

  figure "premoult-fast" {
    value  = "2 to 6 months"
    stages = ["juvenile"]
    source = ["N19"]
    note   = "Sealed in; the numbers are our reading."
  }

  figure "premoult-fast" {
    value  = "3 to 9 months"
    stages = ["subadult"]
    source = ["N19"]
    note   = "Sealed in; the numbers are our reading."
  }

  figure "premoult-look" {
    value  = "120 days"
    stages = ["young"]
    source = ["N19"]
  }

  figure "premoult-look" {
    value  = "180 days"
    stages = ["juvenile"]
    source = ["N19"]
  }

  figure "premoult-look" {
    value  = "270 days"
    stages = ["subadult"]
    source = ["N19"]
  }

  figure "premoult-help" {
    value  = "150 days"
    stages = ["young"]
    source = ["N19"]
  }

  figure "premoult-help" {
    value  = "210 days"
    stages = ["juvenile"]
    source = ["N19"]
  }

  figure "premoult-help" {
    value  = "300 days"
    stages = ["subadult"]
    source = ["N19"]
  }

  figure "first-killed" {
    value = "7 days"
    note  = "After they leave her."
  }

  figure "first-meal" {
    value = "14 days"
    note  = "7 to 14 days after they leave her."
  }

  figure "undisturbed" {
    value  = "30 days"
    source = ["N18"]
    note   = "From hatching. Before, from the laying on, she is sealed in with the sac: no digging."
  }

  figure "prey-length-share" {
    value = "50 %"
  }

  figure "fast-look" {
    value  = "14 days"
    stages = ["young"]
  }

  figure "fast-look" {
    value  = "30 days"
    stages = ["juvenile"]
  }

  figure "fast-look" {
    value  = "90 days"
    stages = ["subadult", "adult"]
  }

  figure "fast-try" {
    value  = "7 days"
    stages = ["young"]
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

  figure "fast-help" {
    value  = "30 days"
    stages = ["young"]
  }

  figure "fast-help" {
    value  = "270 days"
    stages = ["subadult", "adult"]
  }

  figure "settling" {
    value  = "7 days"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "unattended-rest" {
    value = "21 days"
  }

  state "gravid" {
    care   = "dish, clean"
    manner = "usual"
    words  = "look first"
    rule   = "look first: sealed in? do nothing, log laid"
  }

  state "gravid-late" {
    care   = "killed"
    manner = "held"
    rule   = "damp soil and water, no food, no digging"
    source = ["N18"]
  }

  state "sac" {
    care   = "killed, live"
    manner = "held"
    rule   = "damp soil and water, no food, no digging"
    source = ["N18"]
    note   = "She fasts for months, sealed in with the sac."
  }

  state "brood" {
    care   = "killed"
    manner = "held"
    rule   = "damp soil and water, no food, no digging"
    source = ["N18"]
  }

  state "young-round" {
    care   = "rehouse"
    manner = "usual"
    words  = "only to take the young out, by the 14th day"
    from   = "3 days"
  }

  state "rest" {
    care   = "mist"
    manner = "hatch"
    words  = "keep the soil damp below"
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
    prey       = "cricket medium"
  }

  care "mist" {
    every = "7 days"
  }

  except "Thelyphonus" {
    because = "it is of the tropics, and takes no rest"

    figure "rest" {
      value = "none"
    }
  }
}
