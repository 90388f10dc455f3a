type "tarantula" {
  title    = "tarantulas"
  of       = "hunter"
  venomous = true
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  stage "newborn" {
  }

  stage "young" {
  }

  stage "juvenile" {
  }

  stage "subadult" {
  }

  stage "adult" {
  }

  figure "hangs-to-moult" {
    value   = "false"
    source  = ["K62"]
    quality = "keeper"
  }

  figure "moults-as-adult" {
    value   = "true"
    source  = ["memory"]
    quality = "memory"
  }

  figure "drinks" {
    value = "dish"
  }

  figure "sac-decide" {
    value  = "35 to 42 days"
    source = ["N15"]
  }

  figure "after-sac" {
    value = "3 days"
  }

  figure "first-killed" {
    value = "7 days"
  }

  figure "first-meal" {
    value = "10 days"
  }

  figure "wait-after-moult" {
    value  = "4 days"
    stages = ["young"]
    source = ["K84"]
  }

  figure "handling-wait" {
    value  = "14 days"
    source = ["K62"]
  }

  figure "moult-takes" {
    value  = "0.25 to 8 h"
    source = ["K62"]
  }

  figure "premoult-fast" {
    value  = "3 to 21 days"
    stages = ["young"]
    source = ["N25a", "N25b"]
  }

  figure "premoult-fast" {
    value  = "2 to 6 weeks"
    stages = ["juvenile"]
    source = ["N25d", "K83"]
  }

  figure "premoult-fast" {
    value  = "1 to 3 months"
    stages = ["subadult"]
    source = ["N25d", "K83"]
  }

  figure "premoult-fast" {
    value  = "1 to 3 months"
    stages = ["adult"]
    source = ["N25c", "N25d"]
  }

  figure "premoult-look" {
    value  = "90 days"
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
    value  = "150 days"
    stages = ["subadult"]
  }

  figure "premoult-help" {
    value  = "180 days"
    stages = ["adult"]
  }

  figure "fast-look" {
    value  = "7 days"
    stages = ["young"]
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
    value  = "60 days"
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
    value  = "30 days"
    stages = ["juvenile"]
  }

  figure "fast-alarm" {
    value  = "60 days"
    stages = ["subadult"]
  }

  figure "fast-alarm" {
    value  = "90 days"
    stages = ["adult"]
  }

  figure "fast-help" {
    value  = "10 days"
    stages = ["young"]
  }

  figure "fast-help" {
    value  = "90 days"
    stages = ["subadult"]
  }

  figure "fast-help" {
    value  = "180 days"
    stages = ["adult"]
  }

  figure "refusal-pause" {
    value  = "3 days"
    stages = ["young"]
    source = ["P11"]
  }

  figure "prey-mass-share" {
    value  = "35 %"
    stages = ["young"]
    source = ["P23"]
    note   = "Of Theraphosa spiderlings: on prey of 5 to 15 % of their mass they were lighter at the next moult than on 25 to 35 %, and on 45 to 55 % hardly heavier."
  }

  figure "prey-length-share" {
    value  = "50 %"
    source = ["K80"]
    note   = "A limit for safety, not for lack of appetite: a jumping spider took prey of up to 217 % of its length, half of it between 50 and 100 % (P75)."
  }

  figure "prey-length-least" {
    value  = "15 %"
    source = ["P75"]
    note   = "Measured on a jumping spider."
  }

  figure "unattended" {
    value  = "7 days"
    wrong  = "14 days"
    stages = ["subadult", "adult"]
    source = ["S37b", "S36b"]
  }

  figure "settling" {
    value  = "5 to 7 days"
    stages = ["juvenile", "subadult", "adult"]
  }

  state "gravid" {
    care   = "dish, clean"
    manner = "usual"
    words  = "look first"
    rule   = "look first: a sac? do nothing, log laid"
  }

  state "sac" {
    care   = "live, killed"
    manner = "held"
    rule   = "water through the hatch, no food, no misting, lift nothing"
    source = ["N14", "N16"]
  }

  state "sac" {
    care   = "mist"
    manner = "held"
  }

  need "leftovers" {
    longest = "1 day"
    wrong   = "2 days"
    source  = ["K82"]
    quality = "keeper"
  }

  care "water" {
    every = "2 days"
  }

  figure "length" {
    value  = "0.3 to 0.38 length"
    stages = ["young"]
    note   = "Of the grown, by Dyar's rule with a factor of 1.27; our arithmetic."
  }

  figure "length" {
    value  = "0.49 to 0.62 length"
    stages = ["juvenile"]
    note   = "Of the grown, by Dyar's rule with a factor of 1.27; our arithmetic."
  }

  figure "length" {
    value  = "0.78 length"
    stages = ["subadult"]
    note   = "Of the grown, by Dyar's rule with a factor of 1.27; our arithmetic."
  }

  figure "span" {
    value  = "2.2 to 2.8 length"
    stages = ["adult"]
    note   = "Leg span in body lengths, where a sheet states only these; derived from the sheets that have both."
  }

  figure "span" {
    value  = "0.3 to 0.38 span"
    stages = ["young"]
    note   = "Of the grown, by Dyar's rule with a factor of 1.27; our arithmetic."
  }

  figure "span" {
    value  = "0.49 to 0.62 span"
    stages = ["juvenile"]
    note   = "Of the grown, by Dyar's rule with a factor of 1.27; our arithmetic."
  }

  figure "span" {
    value  = "0.78 span"
    stages = ["subadult"]
    note   = "Of the grown, by Dyar's rule with a factor of 1.27; our arithmetic."
  }

  figure "metabolic-kin" {
    value  = "tarantula"
    source = ["P21"]
    note   = "Measured on Euathlus truculentus."
  }

  figure "gap-max" {
    value  = "1 mm"
    wrong  = "3 mm"
    stages = ["young"]
    note   = "One of 1 cm between its toes passes 2 mm; our estimate."
  }

  figure "gap-max" {
    value  = "0.04 span"
    wrong  = "0.08 span"
    stages = ["juvenile"]
    note   = "Four hundredths of the leg span suit: what the sheets of our species have, as a precaution; twice that is our estimate of what lets it out."
  }

  figure "gap-max" {
    value  = "0.04 span"
    wrong  = "0.08 span"
    stages = ["subadult"]
    note   = "Four hundredths of the leg span suit: what the sheets of our species have, as a precaution; twice that is our estimate of what lets it out."
  }

  figure "gap-max" {
    value  = "0.04 span"
    wrong  = "0.08 span"
    stages = ["adult"]
    note   = "Four hundredths of the leg span suit: what the sheets of our species have, as a precaution; twice that is our estimate of what lets it out."
  }

  figure "uv-not" {
    value = "true"
    note  = "Of the night and of burrows: a lamp drives it in. Common practice: nothing was measured."
  }

  figure "light" {
    value = "None is needed: it avoids light and comes out at night."
  }

  figure "drying" {
    value  = "Spiderlings dry first: a damp spot, or a droplet, is always there."
    stages = ["young"]
  }

  figure "climbs" {
    value = "glass"
  }

  figure "substrate-change" {
    value = "12 months"
  }

  need "food" {
    longest = "7 days"
    wrong   = "14 days"
    stages  = ["young"]
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

  figure "unattended" {
    value  = "3 days"
    wrong  = "6 days"
    stages = ["juvenile"]
  }

  feeding "young" {
    stages     = ["young"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }
}
