type "scorpion" {
  title    = "scorpions"
  of       = "hunter"
  venomous = true
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  stage "newborn" {
    instars = "1"
    source  = ["P10"]
  }

  stage "young" {
    instars = "2 to 3"
    source  = ["P10"]
  }

  stage "juvenile" {
    instars = "4 to 5"
    source  = ["P10"]
  }

  stage "subadult" {
    instars = "6"
    source  = ["P10"]
  }

  stage "adult" {
    instars = "7"
    source  = ["P10"]
  }

  figure "climbs" {
    value  = "seams"
    source = ["K2", "K3"]
  }

  figure "lid" {
    value  = "latched"
    source = ["K3"]
  }

  figure "hangs-to-moult" {
    value = "false"
  }

  figure "moults-as-adult" {
    value   = "false"
    source  = ["K37", "P4"]
    quality = "keeper"
  }

  figure "drinks" {
    value = "dish"
  }

  figure "uv-not" {
    value  = "true"
    source = ["P46"]
  }

  figure "first-killed" {
    value  = "3 days"
    source = ["P11"]
  }

  figure "first-meal" {
    value  = "10 days"
    source = ["P11"]
  }

  figure "undisturbed" {
    value = "30 days"
  }

  figure "wait-after-moult" {
    value  = "5 days"
    stages = ["young"]
  }

  figure "wait-after-moult" {
    value  = "7 days"
    stages = ["juvenile"]
    source = ["K55"]
  }

  figure "wait-after-moult" {
    value  = "10 days"
    stages = ["subadult", "adult"]
    source = ["K55"]
  }

  figure "premoult-fast" {
    value  = "3 to 14 days"
    stages = ["young"]
    source = ["K49", "S59c"]
  }

  figure "premoult-fast" {
    value  = "1 to 4 weeks"
    stages = ["juvenile"]
    source = ["K49", "S59c"]
  }

  figure "premoult-fast" {
    value  = "2 to 8 weeks"
    stages = ["subadult"]
    source = ["K49", "S59c"]
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
    value  = "120 days"
    stages = ["subadult"]
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
    value  = "30 days"
    stages = ["juvenile"]
  }

  figure "fast-alarm" {
    value  = "60 days"
    stages = ["subadult"]
  }

  figure "fast-alarm" {
    value  = "60 days"
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
    value  = "90 days"
    stages = ["adult"]
  }

  figure "refusal-pause" {
    value  = "3 days"
    stages = ["young"]
    source = ["P11"]
  }

  figure "prey-mass-share" {
    value  = "50 %"
    stages = ["young"]
  }

  figure "prey-mass-share" {
    value  = "30 %"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "prey-length-share" {
    value  = "50 %"
    stages = ["young", "juvenile"]
  }

  figure "prey-length-share" {
    value  = "100 %"
    stages = ["subadult", "adult"]
  }

  figure "settling" {
    value  = "3 to 7 days"
    stages = ["juvenile", "subadult", "adult"]
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

  figure "metabolic-kin" {
    value  = "scorpion"
    source = ["P2"]
    note   = "Measured on two species, one of dry and one of wet country."
  }

  figure "gap-max" {
    value = "0.04 length"
    wrong = "0.08 length"
    note  = "Four hundredths of the length suit: what the sheets of our species have, as a precaution; twice that is our estimate of what lets it out."
  }

  figure "substrate-change" {
    value = "12 months"
  }

  need "food" {
    longest = "7 days"
    wrong   = "14 days"
    stages  = ["young"]
  }

  figure "unattended" {
    value  = "3 days"
    wrong  = "6 days"
    stages = ["young"]
  }

  figure "unattended" {
    value  = "3 days"
    wrong  = "6 days"
    stages = ["juvenile"]
  }

  figure "unattended" {
    value  = "7 days"
    wrong  = "14 days"
    stages = ["subadult", "adult"]
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket pinhead"
    killed     = true
  }
}
