type "centipede" {
  title    = "large centipedes"
  of       = "hunter"
  genera   = ["Scolopendra", "Ethmostigmus", "Alipes"]
  grown    = "10 to 23 cm"
  venomous = true
  note     = "Escape comes first: the lid is a part of every line. Scolopendra heros and polymorpha live drier than the type, and S. cingulata winters: their own sheets say so."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  figure "uv-not" {
    value = "true"
    note  = "Of the night, and it dries out: a lamp drives it in. Common practice: nothing was measured."
  }

  figure "lifestyle" {
    value = "burrower"
  }

  figure "hangs-to-moult" {
    value = "false"
  }

  figure "moults-as-adult" {
    value = "true"
  }

  figure "ventilation" {
    value = "cross"
  }

  figure "temperature-hard" {
    value = "5 to 37 C"
    note  = "Outside it is wrong for every member whose own sheet does not say more."
  }

  figure "humidity-hard" {
    value = "20 to 100 %"
    note  = "Less, dry through, is wrong for every member; how damp differs from species to species."
  }

  figure "humidity-soft" {
    value = "60 to 80 %"
  }

  figure "humidity-target" {
    value = "60 to 80 %"
  }

  figure "moisture" {
    value = "damp"
    note  = "A damp half and a dry one; dry through kills."
  }

  figure "floor-first" {
    value = "2.2 x 1.2 length"
    wrong = "1 x 0.7 length"
    harm  = "comfort"
  }

  figure "substrate-depth-min" {
    value = "0.5 length"
    wrong = "0.25 length"
    harm  = "harms"
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

  figure "gap-max" {
    value = "0.02 length"
    wrong = "0.04 length"
    note  = "A fifteenth of the animal suits; a tenth is our estimate of what lets it out."
  }

  figure "wait-after-moult" {
    value  = "7 days"
    stages = ["young", "juvenile"]
  }

  figure "wait-after-moult" {
    value  = "10 days"
    stages = ["subadult", "adult"]
  }

  figure "prey-length-share" {
    value  = "50 %"
    source = ["K130"]
  }

  figure "fast-alarm" {
    value  = "7 days"
    stages = ["young"]
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["juvenile"]
  }

  figure "fast-alarm" {
    value  = "30 days"
    stages = ["subadult", "adult"]
  }

  figure "substrate-change" {
    value = "6 months"
  }

  state "gravid" {
    care   = "dish, clean"
    manner = "usual"
    words  = "look first"
    rule   = "lid first; eggs under her? do nothing, log laid"
  }

  state "sac" {
    care   = "killed, live"
    manner = "held"
    is     = "coiled round her eggs"
    rule   = "water through the hatch, no food, lift nothing"
    source = ["OK19"]
    note   = "Disturbed she eats eggs or young (OK19, of Scolopendra cingulata)."
  }

  state "brood" {
    care   = "killed"
    manner = "held"
    is     = "coiled round her young"
    rule   = "water through the hatch, no food, lift nothing"
    source = ["OK19"]
    note   = "Disturbed she eats eggs or young (OK19, of Scolopendra cingulata)."
  }

  state "young-round" {
    care   = "killed"
    manner = "held"
    rule   = "take the young out as they scatter; no food before, no digging"
  }

  state "young-round" {
    care   = "rehouse"
    manner = "usual"
    words  = "only to take out young that scatter"
  }

  need "water" {
    longest = "2 days"
    wrong   = "5 days"
  }

  need "moisture" {
    longest = "3 days"
    wrong   = "7 days"
  }

  need "food" {
    longest = "5 days"
    wrong   = "10 days"
    stages  = ["young"]
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

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket pinhead"
    killed     = true
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 1
    prey       = "cricket adult"
  }

  care "mist" {
    every = "3 days"
  }

  care "deep-clean" {
    every = "6 months"
  }

  except "Scutigera" {
    because = "it runs on walls, small and dry"
  }
}
