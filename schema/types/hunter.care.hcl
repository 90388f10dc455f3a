type "hunter" {
  title   = "hunters"
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "lid" {
    value = "latched"
  }

  figure "handling-wait" {
    value = "14 days"
  }

  figure "fast-try" {
    value  = "30 days"
    stages = ["juvenile"]
  }

  figure "fast-help" {
    value  = "90 days"
    stages = ["juvenile"]
  }

  figure "unattended" {
    value  = "7 days"
    wrong  = "14 days"
    stages = ["subadult", "adult"]
  }

  figure "unattended-sealed" {
    value = "10 days"
  }

  figure "settling" {
    value  = "2 to 3 days"
    stages = ["young"]
  }

  figure "prey-length-least" {
    value = "5 %"
    note  = "Common practice has no number. A twentieth of the body is our estimate of what is hardly hunted: a fruit fly for a grown mantis."
  }

  figure "quarantine" {
    value = "30 days"
  }

  figure "quarantine-wild" {
    value = "60 to 90 days"
  }

  figure "mites-clear" {
    value = "30 days"
  }

  need "look" {
    longest = "1 day"
    wrong   = "3 days"
  }

  need "leftovers" {
    longest = "1 day"
    wrong   = "2 days"
    source  = ["K82"]
  }

  need "heat" {
    longest = "1 day"
    wrong   = "3 days"
  }

  need "cleaning" {
    longest  = "14 days"
    severity = "caution"
  }

  need "device-test" {
    longest  = "30 days"
    wrong    = "90 days"
    severity = "caution"
  }

  care "look" {
    every = "day"
  }

  care "heat" {
    every = "day"
  }

  care "spot-clean" {
    every = "7 days"
  }

  care "dish" {
    every = "7 days"
  }

  care "device-test" {
    every = "30 days"
  }

  figure "refusals-to-pause" {
    value  = "2"
    stages = ["young", "juvenile", "subadult"]
  }

  figure "refusal-pause" {
    value  = "3 days"
    stages = ["young"]
  }

  figure "refusal-pause" {
    value  = "7 days"
    stages = ["juvenile"]
  }

  figure "refusal-pause" {
    value  = "14 days"
    stages = ["subadult"]
  }

  figure "premoult-look" {
    value  = "30 days"
    stages = ["young"]
  }

  figure "premoult-look" {
    value  = "30 days"
    stages = ["juvenile"]
  }

  figure "premoult-look" {
    value  = "60 days"
    stages = ["subadult"]
  }

  figure "premoult-help" {
    value  = "90 days"
    stages = ["young"]
  }

  figure "premoult-help" {
    value  = "90 days"
    stages = ["juvenile"]
  }

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

  figure "eats" {
    value = "prey"
  }

  figure "climbs" {
    value = "seams"
  }

  figure "drinks" {
    value = "dish"
  }

  figure "substrate-change" {
    value = "12 months"
  }

  figure "metabolic-kin" {
    value = "none"
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

  care "water" {
    every = "2 days"
  }

  care "deep-clean" {
    every = "12 months"
  }
}
