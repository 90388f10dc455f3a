type "millipede" {
  title   = "large millipedes"
  genera  = ["Archispirostreptus", "Telodeinopus", "Chicobolus", "Spirostreptus"]
  grown   = "8 to 28 cm"
  note    = "Of warm countries. Kinds of temperate ones live cooler and need sheets of their own."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  stage "newborn" {
    note = "Hatchlings with three pairs of legs. Rings are added for years; instars are not counted."
  }

  stage "young" {
    note = "Small. Rings are added for years; instars are not counted."
  }

  stage "juvenile" {
    note = "Half grown. Rings are added for years; instars are not counted."
  }

  stage "subadult" {
    note = "Nearly full size. Rings are added for years; instars are not counted."
  }

  stage "adult" {
    note = "Full size; goes on moulting. Rings are added for years; instars are not counted."
  }

  figure "touch" {
    value    = "fluid"
    source  = ["K96", "K98", "OK25"]
    quality = "keeper"
  }

  figure "temperature-hard" {
    value = "8 to 32 C"
    note  = "Outside it is wrong for every member. 21 to 25.5 C suits them all; below 15.5 C they are in trouble."
  }

  figure "humidity-hard" {
    value = "50 to 100 %"
    note  = "Less is wrong for every member."
  }

  figure "humidity-soft" {
    value = "70 to 90 %"
  }

  figure "humidity-target" {
    value = "70 to 90 %"
  }

  figure "moisture" {
    value = "damp"
    note  = "Dry through kills."
  }

  figure "ventilation" {
    value = "any"
  }

  figure "length" {
    value  = "0.2 to 0.25 length"
    stages = ["young"]
    note   = "Of the grown; our estimate."
  }

  figure "length" {
    value  = "0.4 to 0.6 length"
    stages = ["juvenile"]
    note   = "Of the grown; our estimate."
  }

  figure "length" {
    value  = "0.8 length"
    stages = ["subadult"]
    note   = "Of the grown; our estimate."
  }

  figure "floor-first" {
    value = "2.4 x 2 length"
    wrong = "1.5 x 1 length"
    harm  = "comfort"
  }

  figure "substrate-depth-min" {
    value  = "1 length"
    wrong  = "0.4 length"
    harm   = "harms"
    source = ["K33"]
    note   = "It is the food: leaves and white-rotten wood (K33), never changed whole. For animals from 20 cm on half the length suits."
  }

  figure "lifestyle" {
    value = "burrower"
  }

  figure "eats" {
    value = "plants first"
    note  = "Dead leaves and rotted wood, with some greens and a pinch of fish flakes."
  }

  figure "lives-in-food" {
    value = "true"
    note  = "It is its food, and it moults in it: never changed whole."
  }

  figure "substrate-change" {
    value = "12 months"
    note  = "In part: a third is new, and the rest stays."
  }

  figure "uv-not" {
    value = "true"
    note  = "Of the dark and the damp: a lamp drives it in, and dries it out. Common practice: nothing was measured."
  }

  figure "climbs" {
    value = "seams"
  }

  figure "lid" {
    value = "latched"
  }

  figure "heater-not" {
    value  = "under"
    source = ["K34"]
    note   = "It digs down to get away from heat."
  }

  figure "hangs-to-moult" {
    value = "false"
    note  = "It moults in a chamber below ground, for weeks: do not dig it up."
  }

  figure "moults-as-adult" {
    value = "true"
  }

  figure "drinks" {
    value = "soil"
  }

  figure "separation" {
    value  = "keep with mother"
    source = ["K16b"]
    note   = "The young eat the droppings of adults (K16b, of Archispirostreptus gigas)."
  }

  figure "wait-after-moult" {
    value = "0 days"
    note  = "It moults below ground and comes up by itself."
  }

  figure "handling-wait" {
    value = "14 days"
  }

  figure "premoult-fast" {
    value  = "2 to 8 weeks"
    stages = ["young", "juvenile"]
    note   = "Out of sight below. It is said as weeks and as months; the numbers are ours."
  }

  figure "premoult-fast" {
    value  = "1 to 4 months"
    stages = ["subadult", "adult"]
    note   = "Out of sight below. It is said as weeks and as months; the numbers are ours."
  }

  figure "unattended" {
    value = "7 days"
    wrong = "21 days"
    note  = "21 days are too long for every member."
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

  figure "metabolic-kin" {
    value = "none"
  }

  state "gravid" {
    care   = "all"
    manner = "usual"
    rule   = "fed as ever on top; no digging"
    source = ["K101"]
  }

  state "gravid" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
  }

  state "gravid" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    note   = "Eggs lie in the soil, of one kind for about three months (K100)."
  }

  state "gravid-late" {
    care   = "all"
    manner = "usual"
    rule   = "fed as ever on top; no digging"
    source = ["K101"]
  }

  state "gravid-late" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
  }

  state "gravid-late" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    note   = "Eggs lie in the soil, of one kind for about three months (K100)."
  }

  state "sac" {
    care   = "all"
    manner = "usual"
    is     = "eggs in the soil"
    rule   = "fed as ever on top; no digging"
    source = ["K101"]
  }

  state "sac" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
  }

  state "sac" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    note   = "Eggs lie in the soil, of one kind for about three months (K100)."
  }

  state "birth" {
    care   = "all"
    manner = "usual"
    is     = "hatching in the soil"
    rule   = "fed as ever on top; no digging"
    source = ["K101"]
  }

  state "birth" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
  }

  state "birth" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    note   = "Eggs lie in the soil, of one kind for about three months (K100)."
  }

  state "brood" {
    care   = "all"
    manner = "usual"
    is     = "young in the soil"
    rule   = "fed as ever on top; no digging"
    source = ["K101"]
  }

  state "brood" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
  }

  state "brood" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    note   = "Eggs lie in the soil, of one kind for about three months (K100)."
  }

  state "young-round" {
    care   = "all"
    manner = "usual"
    is     = "young in the soil"
    rule   = "fed as ever on top; no digging"
    source = ["K101"]
  }

  state "young-round" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
  }

  state "young-round" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    note   = "Eggs lie in the soil, of one kind for about three months (K100)."
  }

  state "after-brood" {
    care   = "all"
    manner = "usual"
    rule   = "fed as ever on top; no digging"
    source = ["K101"]
  }

  state "after-brood" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
  }

  state "after-brood" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    note   = "Eggs lie in the soil, of one kind for about three months (K100)."
  }

  state "newborn" {
    care   = "all"
    manner = "usual"
    is     = "just hatched"
    rule   = "substrate and droppings at once; no digging"
    source = ["K100"]
  }

  state "newborn" {
    care   = "substrate, count"
    manner = "held"
  }

  state "premoult" {
    care   = "live, killed"
    manner = "usual"
    words  = "on top"
    rule   = "fed as ever on top, never dug up"
    note   = "It moults out of sight, below."
  }

  state "sealed" {
    care   = "live, killed"
    manner = "usual"
    words  = "on top"
    is     = "in its chamber"
    rule   = "fed as ever on top, never dug up"
    note   = "It moults out of sight, below, and those that do not moult eat on."
  }

  state "sealed" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
  }

  state "soft" {
    care   = "live, killed"
    manner = "usual"
    words  = "on top"
    rule   = "fed as ever on top, never dug up"
    note   = "It moults out of sight, below."
  }

  state "hardening" {
    care   = "live, killed"
    manner = "usual"
    words  = "on top"
    rule   = "fed as ever on top, never dug up"
    note   = "It moults out of sight, below."
  }

  need "look" {
    longest = "1 day"
    wrong   = "3 days"
  }

  need "moisture" {
    longest = "4 days"
    wrong   = "10 days"
    source  = ["K33"]
  }

  need "food" {
    longest = "31 days"
    wrong   = "62 days"
    note    = "Leaves and white-rotten wood are the food; they are topped up every month."
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
    every = "3 days"
  }

  care "leaves" {
    every = "4 weeks"
  }

  care "spot-clean" {
    every = "7 days"
  }

  care "device-test" {
    every = "30 days"
  }

  care "greens" {
    kind   = "other"
    task   = "Lay out cucumber, carrot, apple or mushroom, peeled, on a dish"
    on     = ["tue", "fri"]
    source = ["K33"]
  }

  care "greens-out" {
    kind    = "other"
    task    = "Take out what is left of the greens"
    on      = ["thu", "sun"]
    because = "wet food on the soil grows mould"
    source  = ["K34"]
  }

  except "Polyxenus" {
    because = "it lives on bark, and is tiny"
  }
}
