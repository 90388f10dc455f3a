type "mantis" {
  title   = "mantises"
  of      = "hunter"
  genera  = ["Mantis", "Hierodula", "Sphodromantis", "Rhombodera", "Tenodera", "Stagmomantis", "Parasphendale", "Miomantis", "Deroplatys", "Phyllocrania", "Hymenopus", "Creobroter", "Pseudocreobotra", "Gongylus"]
  grown   = "2.5 to 9 cm"
  note    = "How much damp suits a species differs between 40 and 80 %, and is stated by the species. Males and females are of different size: their figures go by the larger."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  stage "young" {
    instars = "1 to 3"
    note    = "The free hatchling is counted as the first; some call it L2, since it moults once at hatching."
  }

  stage "juvenile" {
    instars = "4 to 6"
  }

  stage "subadult" {
    instars = "7 to 8"
    note    = "Males have one or two moults fewer than females, and small kinds fewer than large ones."
  }

  stage "adult" {
    instars = "9"
  }

  figure "lifestyle" {
    value = "tree"
  }

  figure "eats" {
    value = "prey"
  }

  figure "climbs" {
    value = "glass"
    note  = "Small nymphs; the grown climb mesh and twigs."
  }

  figure "hangs-to-moult" {
    value   = "true"
    source  = ["K105"]
    quality = "keeper"
    note    = "It must not be disturbed, and no prey may be in the box."
  }

  figure "moults-as-adult" {
    value = "false"
  }

  figure "drinks" {
    value = "droplets"
    note  = "No open deep dish."
  }

  figure "ventilation" {
    value  = "cross"
    source = ["K103"]
  }

  figure "moisture" {
    value = "either"
  }

  figure "substrate-depth-min" {
    value = "0 cm"
    note  = "None is needed; paper or a thin layer will do."
  }

  figure "temperature-hard" {
    value = "10 to 36 C"
    note  = "Outside it is wrong for every member."
  }

  figure "humidity-hard" {
    value = "20 to 95 %"
    note  = "More with little air is wrong for every member, and less at a moult."
  }

  figure "floor-first" {
    value = "3 x 3 length"
    wrong = "1.5 x 1.5 length"
    harm  = "comfort"
  }

  figure "height-min" {
    value  = "3 length"
    wrong  = "2 length"
    stages = ["young"]
    note   = "It slides down out of its old skin, and falls where it cannot hang free."
  }

  figure "height-min" {
    value  = "3 length"
    wrong  = "2 length"
    stages = ["juvenile"]
    note   = "It slides down out of its old skin, and falls where it cannot hang free."
  }

  figure "height-min" {
    value  = "3 length"
    wrong  = "2 length"
    stages = ["subadult"]
    note   = "It slides down out of its old skin, and falls where it cannot hang free."
  }

  figure "height-min" {
    value  = "3 length"
    wrong  = "2 length"
    harm   = "comfort"
    stages = ["adult"]
    note   = "It moults no more."
  }

  figure "gap-max" {
    value  = "1 mm"
    wrong  = "2 mm"
    stages = ["young"]
    note   = "Fruit flies pass wider ones too; the upper figure is our estimate."
  }

  figure "gap-max" {
    value  = "0.04 length"
    wrong  = "0.08 length"
    stages = ["juvenile"]
    note   = "Half the width of its head; the whole is our estimate of what lets it out."
  }

  figure "gap-max" {
    value  = "0.04 length"
    wrong  = "0.08 length"
    stages = ["subadult"]
    note   = "Half the width of its head; the whole is our estimate of what lets it out."
  }

  figure "gap-max" {
    value  = "0.04 length"
    wrong  = "0.08 length"
    stages = ["adult"]
    note   = "Half the width of its head; the whole is our estimate of what lets it out."
  }

  figure "length" {
    value  = "0.16 to 0.25 length"
    stages = ["young"]
    note   = "Of the grown, by Dyar's rule with a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value  = "0.31 to 0.5 length"
    stages = ["juvenile"]
    note   = "Of the grown, by Dyar's rule with a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value  = "0.63 to 0.8 length"
    stages = ["subadult"]
    note   = "Of the grown, by Dyar's rule with a factor of 1.26; our arithmetic."
  }

  figure "separation" {
    value = "separate"
    note  = "Each alone by the fourth nymph stage; those of the third and before may be together with flies in plenty."
  }

  figure "separate-within" {
    value = "30 days"
  }

  figure "first-killed" {
    value  = "1 day"
    source = ["N24"]
    note   = "Fruit flies, alive: it takes nothing that does not move."
  }

  figure "first-meal" {
    value  = "2 days"
    source = ["N24"]
  }

  figure "wait-after-moult" {
    value    = "3 days"
    source   = ["K105"]
    disputed = "a couple of days (K105)"
  }

  figure "moult-takes" {
    value   = "20 to 30 min"
    source  = ["N23"]
    quality = "keeper"
    note    = "The last moult takes hours. Nymphs harden in a day, the grown in one to four."
  }

  figure "premoult-fast" {
    value  = "1 to 3 days"
    stages = ["young"]
    source = ["N23", "K104"]
  }

  figure "premoult-fast" {
    value  = "2 to 5 days"
    stages = ["juvenile"]
    source = ["N23", "K104"]
  }

  figure "premoult-fast" {
    value  = "4 to 14 days"
    stages = ["subadult"]
    source = ["N23", "K104"]
  }

  figure "premoult-look" {
    value  = "4 days"
    stages = ["young"]
  }

  figure "premoult-look" {
    value  = "7 days"
    stages = ["juvenile"]
  }

  figure "premoult-look" {
    value  = "14 days"
    stages = ["subadult"]
  }

  figure "premoult-help" {
    value  = "7 days"
    stages = ["young"]
  }

  figure "premoult-help" {
    value  = "14 days"
    stages = ["juvenile"]
  }

  figure "premoult-help" {
    value  = "21 days"
    stages = ["subadult"]
  }

  figure "fast-look" {
    value  = "3 days"
    stages = ["young"]
    source = ["N24"]
  }

  figure "fast-look" {
    value  = "5 days"
    stages = ["juvenile"]
  }

  figure "fast-look" {
    value  = "7 days"
    stages = ["subadult", "adult"]
    source = ["K104"]
  }

  figure "fast-try" {
    value  = "2 days"
    stages = ["young"]
    source = ["N24"]
  }

  figure "fast-try" {
    value  = "5 days"
    stages = ["juvenile"]
  }

  figure "fast-alarm" {
    value  = "4 days"
    stages = ["young"]
    source = ["N24"]
  }

  figure "fast-alarm" {
    value  = "7 days"
    stages = ["juvenile"]
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["subadult", "adult"]
    source = ["K104"]
  }

  figure "fast-help" {
    value  = "7 days"
    stages = ["young"]
    source = ["N24"]
  }

  figure "fast-help" {
    value  = "14 days"
    stages = ["juvenile"]
  }

  figure "fast-help" {
    value  = "30 days"
    stages = ["subadult", "adult"]
    source = ["K104"]
  }

  figure "refusal-pause" {
    value  = "1 day"
    stages = ["young"]
  }

  figure "refusal-pause" {
    value  = "3 days"
    stages = ["juvenile"]
  }

  figure "refusal-pause" {
    value  = "5 days"
    stages = ["subadult"]
  }

  figure "prey-length-share" {
    value  = "100 %"
    stages = ["young"]
    note   = "The smallest flies are half as long as the smallest hatchlings, and are taken."
  }

  figure "prey-length-share" {
    value   = "50 %"
    stages  = ["juvenile", "subadult", "adult"]
    source  = ["K104"]
    quality = "keeper"
  }

  figure "unattended" {
    value  = "1 day"
    wrong  = "2 days"
    stages = ["young"]
  }

  figure "unattended" {
    value  = "1 day"
    wrong  = "2 days"
    stages = ["juvenile"]
  }

  figure "unattended" {
    value  = "1 day"
    wrong  = "2 days"
    stages = ["subadult"]
  }

  figure "unattended" {
    value  = "2 days"
    wrong  = "4 days"
    stages = ["adult"]
  }

  figure "settling" {
    value = "1 day"
  }

  figure "metabolic-kin" {
    value = "none"
  }

  state "gravid" {
    care   = "all"
    manner = "usual"
    rule   = "fed as ever; an ootheca? log laid"
  }

  state "sac" {
    care   = "all"
    manner = "usual"
    is     = "after laying an ootheca"
    rule   = "as ever; leave what the ootheca hangs on"
  }

  state "gravid-late" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    note   = "There is no brood care."
  }

  state "birth" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    note   = "There is no brood care."
  }

  state "brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    note   = "There is no brood care."
  }

  state "young-round" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    note   = "There is no brood care."
  }

  state "after-brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    note   = "There is no brood care."
  }

  state "newborn" {
    care   = "all"
    manner = "usual"
    is     = "just hatched"
    rule   = "fruit flies from the first day"
    source = ["N24"]
  }

  need "moisture" {
    longest = "2 days"
    wrong   = "4 days"
    note    = "It drinks the droplets."
  }

  need "food" {
    longest = "3 days"
    wrong   = "6 days"
    stages  = ["young"]
  }

  need "food" {
    longest = "4 days"
    wrong   = "10 days"
    stages  = ["juvenile"]
  }

  need "food" {
    longest  = "7 days"
    wrong    = "14 days"
    stages   = ["subadult", "adult"]
    shortest = "2 days"
    source   = ["K104"]
  }

  care "mist" {
    every = "day"
  }

  care "water" {
    off = true
  }

  care "dish" {
    off = true
  }

  care "deep-clean" {
    off = true
  }

  feeding "young" {
    stages     = ["young"]
    every      = "day"
    per_animal = 4
    prey       = "fruit-fly hydei"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "2 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  except "Eremiaphila" {
    because = "it runs on hot desert ground"
    source  = ["memory"]
    quality = "memory"
  }

  except "Phyllocrania" {
    because = "its young get on with each other where there is room and food"
    source  = ["OK38", "OK39"]
    quality = "keeper"

    figure "separation" {
      value = "keep with mother"
      note  = "They may stay together; there is no brood care."
    }
  }

  except "Gongylus" {
    because = "it lives in groups, and bears heat"
    source  = ["memory"]
    quality = "memory"

    figure "separation" {
      value = "keep with mother"
      note  = "They may stay together; there is no brood care."
    }
  }
}
