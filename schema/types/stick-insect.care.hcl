type "stick-insect" {
  title   = "stick insects"
  genera  = ["Extatosoma", "Phyllium", "Carausius", "Medauroidea", "Ramulus", "Eurycnema", "Sungaya", "Eurycantha", "Heteropteryx", "Epidares", "Peruphasma", "Oreophoetes", "Anisomorpha"]
  grown   = "5.5 to 15 cm"
  note    = "Fresh leaves of its own food plants are the food, in a jar whose neck is stopped so that nobody drowns. How much damp suits a species differs between 40 and 80 %, and is stated by the species."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  stage "young" {
    instars = "1 to 2"
  }

  stage "juvenile" {
    instars = "3 to 4"
  }

  stage "subadult" {
    instars = "5 to 6"
    note    = "Males have a moult less than females."
  }

  stage "adult" {
    instars = "7"
  }

  figure "lifestyle" {
    value = "tree"
  }

  figure "eats" {
    value = "plants"
    note  = "Fresh leaves. Live prey bites those that hang in a moult."
  }

  figure "climbs" {
    value = "glass"
  }

  figure "lid" {
    value = "latched"
  }

  figure "hangs-to-moult" {
    value = "true"
  }

  figure "moults-as-adult" {
    value = "false"
  }

  figure "drinks" {
    value = "droplets"
  }

  figure "ventilation" {
    value = "cross"
  }

  figure "humidity-hard" {
    value = "20 to 100 %"
    note  = "Less, also with leaves in water, is wrong for every member."
  }

  figure "moisture" {
    value = "either"
  }

  figure "temperature-hard" {
    value = "10 to 36 C"
    note  = "Outside it is wrong for every member."
  }

  figure "substrate-depth-min" {
    value = "0 cm"
    note  = "None is needed, but 5 cm for those that lay into the ground."
  }

  figure "floor-first" {
    value = "1.5 x 1.5 length"
    harm  = "comfort"
  }

  figure "height-min" {
    value  = "3 length"
    wrong  = "2 length"
    stages = ["young"]
    note   = "It slides down out of its old skin, and stays crooked where it cannot hang free."
  }

  figure "height-min" {
    value  = "3 length"
    wrong  = "2 length"
    stages = ["juvenile"]
    note   = "It slides down out of its old skin, and stays crooked where it cannot hang free."
  }

  figure "height-min" {
    value  = "3 length"
    wrong  = "2 length"
    stages = ["subadult"]
    note   = "It slides down out of its old skin, and stays crooked where it cannot hang free."
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
    note   = "The upper figure is our estimate."
  }

  figure "gap-max" {
    value  = "2 mm"
    wrong  = "4 mm"
    stages = ["juvenile", "subadult", "adult"]
    note   = "They are thin; the upper figure is our estimate."
  }

  figure "length" {
    value  = "0.09 to 0.19 length"
    stages = ["young"]
    note   = "Of the grown, with a factor of 1.5 a moult, as counted from one kind; our arithmetic."
  }

  figure "length" {
    value  = "0.2 to 0.4 length"
    stages = ["juvenile"]
    note   = "Of the grown, with a factor of 1.5 a moult, as counted from one kind; our arithmetic."
  }

  figure "length" {
    value  = "0.43 to 0.66 length"
    stages = ["subadult"]
    note   = "Of the grown, with a factor of 1.5 a moult, as counted from one kind; our arithmetic."
  }

  figure "separation" {
    value = "keep with mother"
    note  = "Young live with the grown; there is no brood care."
  }

  figure "wait-after-moult" {
    value = "1 day"
    note  = "It eats its old skin first."
  }

  figure "handling-wait" {
    value = "7 days"
  }

  figure "unattended" {
    value  = "2 days"
    wrong  = "4 days"
    stages = ["young", "juvenile"]
  }

  figure "unattended" {
    value  = "4 days"
    wrong  = "7 days"
    stages = ["subadult", "adult"]
  }

  figure "quarantine" {
    value = "30 days"
  }

  figure "mites-clear" {
    value = "30 days"
    note  = "Of clean looks each week."
  }

  figure "metabolic-kin" {
    value = "none"
  }

  state "gravid" {
    care   = "all"
    manner = "usual"
    rule   = "fed as ever"
  }

  state "gravid-late" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "sac" {
    care   = "all"
    manner = "usual"
    is     = "laying"
    rule   = "as ever; eggs lie in the litter, count them before it is thrown out"
  }

  state "birth" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "young-round" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "after-brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
  }

  state "young-loose" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    note   = "Young sit on the leaves, and eggs lie on the floor all year: look through what comes out."
  }

  state "newborn" {
    care   = "all"
    manner = "usual"
    is     = "just hatched"
    rule   = "fresh leaves on the day"
  }

  state "premoult" {
    care   = "live, killed, clean"
    manner = "usual"
    words  = "leave the branch that it hangs from"
    rule   = "leave its branch, spray the far end only"
  }

  state "soft" {
    care   = "live, killed, clean"
    manner = "usual"
    words  = "leave the branch that it hangs from"
    rule   = "leave its branch and its old skin, which it eats"
  }

  state "hardening" {
    care   = "all"
    manner = "usual"
    rule   = "as ever, do not handle"
  }

  state "hardening" {
    care   = "handle, rehouse"
    manner = "held"
  }

  need "look" {
    longest = "1 day"
    wrong   = "3 days"
  }

  need "moisture" {
    longest = "1 day"
    wrong   = "3 days"
    note    = "It drinks the droplets."
  }

  need "food" {
    longest = "4 days"
    wrong   = "7 days"
    note    = "Fresh leaves. A nymph lives without any for a day, the grown for two: what stands in the jar must never be bare or dry."
  }

  need "heat" {
    longest = "1 day"
    wrong   = "3 days"
  }

  need "cleaning" {
    longest  = "31 days"
    severity = "caution"
  }

  need "device-test" {
    longest  = "30 days"
    wrong    = "90 days"
    severity = "caution"
  }

  care "look" {
    task  = "Lid shut? Animals seen? Leaves fresh, neck of the jar stopped?"
    every = "day"
  }

  care "heat" {
    every = "day"
  }

  care "mist" {
    every = "day"
  }

  care "leaves" {
    task  = "Fresh branches in the jar; look over the old ones for nymphs"
    every = "3 days"
  }

  care "spot-clean" {
    task  = "Droppings out; eggs out of the litter first, mould?"
    every = "14 days"
  }

  care "device-test" {
    every = "30 days"
  }

  except "Epidares" {
    because = "it wants about 80 % of damp"

    figure "humidity-target" {
      value = "75 to 85 %"
    }

    figure "humidity-soft" {
      value = "65 to 95 %"
      note  = "Our margin."
    }
  }

  except "Carausius" {
    because = "about 40 % of damp will do for it"

    figure "humidity-target" {
      value = "35 to 60 %"
    }

    figure "humidity-soft" {
      value = "30 to 75 %"
      note  = "Our margin."
    }
  }

  except "Eurycantha" {
    because = "it lives on the floor under bark, and lays into the ground"

    figure "lifestyle" {
      value = "ground"
    }

    figure "substrate-depth-min" {
      value = "5 cm"
    }
  }

  except "Heteropteryx" {
    because = "it is heavy, stays low and lays into the ground"

    figure "substrate-depth-min" {
      value = "5 cm"
    }
  }

  except "Anisomorpha" {
    because = "it sprays at eyes, and the species must say so"

    figure "handling-wait" {
      value = "14 days"
      note  = "Not above the face at any time."
    }
  }

  except "Oreophoetes" {
    because = "it eats nothing but ferns"
    source  = ["memory"]
    quality = "memory"

    need "food" {
      longest = "3 days"
      wrong   = "6 days"
      note    = "Fresh ferns."
    }
  }

  except "Peruphasma" {
    because = "it eats little but privet"
    source  = ["memory"]
    quality = "memory"

    need "food" {
      longest = "3 days"
      wrong   = "6 days"
      note    = "Fresh privet or lilac."
    }
  }
}
