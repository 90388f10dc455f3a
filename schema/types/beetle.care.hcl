type "beetle" {
  title   = "fruit and horned beetles"
  genera  = ["Pachnoda", "Eudicella", "Chelorrhina", "Mecynorhina", "Protaetia", "Dynastes", "Megasoma", "Chalcosoma", "Xylotrupes", "Trypoxylus"]
  grown   = "2 to 17.5 cm"
  note    = "Larvae live in what they eat: rotted leaf and white-rotten hardwood. Young, juvenile and subadult are the three larval stages; the last of them also the pupa in its chamber."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  stage "young" {
    instars = "1"
    note    = "The first larva."
  }

  stage "juvenile" {
    instars = "2"
    note    = "The second larva."
  }

  stage "subadult" {
    instars = "3 to 4"
    note    = "The third larva, and the pupa."
  }

  stage "adult" {
    instars = "5"
    note    = "The beetle."
  }

  figure "lifestyle" {
    value = "burrower"
  }

  figure "eats" {
    value = "plants first"
    note  = "Rotted leaf and wood as a larva, fruit as a beetle. Some take a little that is dead beside."
  }

  figure "lives-in-food" {
    value = "true"
    note  = "Larvae, eggs and pupae lie in it."
  }

  figure "climbs" {
    value = "seams"
  }

  figure "lid" {
    value = "latched"
    note  = "They fly, and push."
  }

  figure "hangs-to-moult" {
    value = "false"
  }

  figure "moults-as-adult" {
    value = "false"
  }

  figure "drinks" {
    value = "soil"
  }

  figure "moisture" {
    value = "damp"
    note  = "A ball in the hand, and no drop; dry or wet through is wrong."
  }

  figure "temperature-hard" {
    value = "5 to 33 C"
    note  = "Outside it is wrong for every member; kinds of cool country bear less heat."
  }

  figure "humidity-hard" {
    value = "30 to 100 %"
    note  = "Less dries out the substrate and the larvae in it."
  }

  figure "substrate-depth-min" {
    value = "15 cm"
    wrong = "5 cm"
    harm  = "harms"
    note  = "Three lengths of a larva suit, one is too little."
  }

  figure "heater-not" {
    value  = "under"
    source = ["K34"]
    note   = "It dries the soil from below, where the larvae are."
  }

  figure "gap-max" {
    value = "3 mm"
    wrong = "6 mm"
    note  = "Our estimate."
  }

  figure "separation" {
    value = "keep with mother"
    note  = "Eggs and larvae stay in the soil; there is no brood care."
  }

  figure "wait-after-moult" {
    value = "0 days"
  }

  figure "unattended" {
    value = "7 days"
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
    rule   = "fed as ever on top; no digging"
  }

  state "gravid" {
    care   = "substrate, count"
    manner = "held"
    note   = "Eggs, larvae and cocoons lie in the soil."
  }

  state "gravid-late" {
    care   = "all"
    manner = "usual"
    rule   = "fed as ever on top; no digging"
  }

  state "gravid-late" {
    care   = "substrate, count"
    manner = "held"
    note   = "Eggs, larvae and cocoons lie in the soil."
  }

  state "sac" {
    care   = "all"
    manner = "usual"
    is     = "eggs in the soil"
    rule   = "fed as ever on top; no digging"
  }

  state "sac" {
    care   = "substrate, count"
    manner = "held"
    note   = "Eggs, larvae and cocoons lie in the soil."
  }

  state "birth" {
    care   = "all"
    manner = "usual"
    is     = "hatching in the soil"
    rule   = "fed as ever on top; no digging"
  }

  state "birth" {
    care   = "substrate, count"
    manner = "held"
    note   = "Eggs, larvae and cocoons lie in the soil."
  }

  state "brood" {
    care   = "all"
    manner = "usual"
    is     = "young in the soil"
    rule   = "fed as ever on top; no digging"
  }

  state "brood" {
    care   = "substrate, count"
    manner = "held"
    note   = "Eggs, larvae and cocoons lie in the soil."
  }

  state "young-round" {
    care   = "all"
    manner = "usual"
    is     = "young in the soil"
    rule   = "fed as ever on top; no digging"
  }

  state "young-round" {
    care   = "substrate, count"
    manner = "held"
    note   = "Eggs, larvae and cocoons lie in the soil."
  }

  state "after-brood" {
    care   = "all"
    manner = "usual"
    rule   = "fed as ever on top; no digging"
  }

  state "after-brood" {
    care   = "substrate, count"
    manner = "held"
    note   = "Eggs, larvae and cocoons lie in the soil."
  }

  state "newborn" {
    care   = "all"
    manner = "usual"
    is     = "just hatched"
    rule   = "soil and leaves at once; no digging"
  }

  state "newborn" {
    care   = "substrate, count"
    manner = "held"
    note   = "Eggs, larvae and cocoons lie in the soil."
  }

  state "premoult" {
    care   = "all"
    manner = "usual"
    rule   = "never dug up"
    note   = "Larvae moult and turn into the beetle out of sight, in a chamber."
  }

  state "premoult" {
    care   = "substrate, count, handle, rehouse"
    manner = "held"
  }

  state "sealed" {
    care   = "look, leftovers, clean"
    manner = "usual"
    is     = "in its chamber or cocoon"
    rule   = "leave it: no digging, no turning, keep the soil damp"
  }

  state "soft" {
    care   = "all"
    manner = "usual"
    rule   = "never dug up"
  }

  state "soft" {
    care   = "substrate, count, handle, rehouse"
    manner = "held"
  }

  state "hardening" {
    care   = "all"
    manner = "usual"
    rule   = "never dug up"
  }

  state "hardening" {
    care   = "substrate, count, handle, rehouse"
    manner = "held"
  }

  need "look" {
    longest = "1 day"
    wrong   = "3 days"
  }

  need "moisture" {
    longest = "7 days"
    wrong   = "14 days"
  }

  need "food" {
    longest = "31 days"
    wrong   = "90 days"
    stages  = ["young", "juvenile", "subadult"]
    note    = "They eat the soil."
  }

  need "food" {
    longest = "3 days"
    wrong   = "7 days"
    stages  = ["adult"]
    note    = "Soft fruit or jelly."
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
    every = "day"
  }

  care "heat" {
    every = "day"
  }

  care "moisten" {
    every = "5 days"
  }

  care "fruit" {
    kind   = "leaves"
    task   = "Fresh fruit or jelly, the old out"
    every  = "3 days"
    stages = ["adult"]
  }

  care "leaves" {
    task   = "Rotted leaf and white-rotten wood on top; how many droppings?"
    every  = "4 weeks"
    stages = ["young", "juvenile", "subadult"]
  }

  care "spot-clean" {
    task  = "Mould, mites, dead beetles out"
    every = "7 days"
  }

  care "device-test" {
    every = "30 days"
  }

  except "Lucanus" {
    because = "it is of cool country, and its larvae take years"
  }

  except "Goliathus" {
    because = "its larvae eat meat too, and each other"
    source  = ["memory"]
    quality = "memory"
  }

  except "Blaps" {
    because = "it is a darkling beetle of dry ground"
    source  = ["memory"]
    quality = "memory"
  }

  except "Eleodes" {
    because = "it is a darkling beetle of dry ground"
    source  = ["memory"]
    quality = "memory"
  }

  except "Asbolus" {
    because = "it is a darkling beetle of dry ground"
    source  = ["memory"]
    quality = "memory"
  }
}
