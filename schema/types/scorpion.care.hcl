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

  figure "light" {
    value  = "None is needed: it avoids light and comes out at night. A lamp to look by is on for minutes."
    source = ["K4", "P46"]
  }

  figure "glow" {
    value   = "Blue-green under ultraviolet light of 360 to 400 nm, more with each moult. Soft joints do not glow, and just after a moult the whole cuticle, white and soft, does not until it is hard: one that does not glow is left alone."
    source  = ["K54"]
    quality = "society"
    note    = "The colour, and what to do, are common practice."
  }

  figure "drying" {
    value  = "The smallest dry first: the young of 1 g lose about 2.5 % of their weight a day in dry air at 27 C."
    stages = ["young"]
    source = ["P2", "P18"]
    note   = "Our arithmetic from the loss of Urodacus armatus, of dry country, which is a lower bound for those of damp places. In Scorpionidae the body water falls from a loss of 5 % on (P18)."
  }

  figure "drying" {
    value  = "One of 25 g loses about 0.75 % of its weight a day in dry air at 27 C, a third of what the young of 1 g do."
    stages = ["adult"]
    source = ["P2"]
    note   = "Our arithmetic from the loss of Urodacus armatus, of dry country, which is a lower bound for those of damp places."
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
    note   = "Of the body without the tail, as keepers say; judged by the length with it, which is lenient."
  }

  figure "prey-length-share" {
    value  = "100 %"
    stages = ["subadult", "adult"]
    note   = "Of the body without the tail, as keepers say; judged by the length with it, which is lenient."
  }

  figure "prey-length-least" {
    value  = "8 %"
    source = ["P75"]
    note   = "A jumping spider took prey from 15 % of its body on. A scorpion's length here is with the tail, about half of it; the half is our arithmetic, and that a scorpion hunts alike our reading."
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
