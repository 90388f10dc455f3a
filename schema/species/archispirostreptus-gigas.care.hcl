species "archispirostreptus-gigas" {
  title   = "giant African millipede"
  latin   = "Archispirostreptus gigas (Peters, 1855)"
  family  = "Spirostreptidae"
  type    = "millipede"
  also    = ["AGB", "African giant black millipede"]
  former  = ["Spirostreptus gigas"]
  note    = "Animals in the trade are very often another species; only the male gonopods settle it (K94)."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-25"

  floor_further = "500 cm2"

  stage "newborn" {
    note   = "Hatchlings with three pairs of legs, which moult within 12 hours."
    source = ["K96", "K100"]
  }

  stage "young" {
    note = "To about 5 cm. Rings are added for years; instars are not counted."
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

  figure "temperature-hard" {
    value    = "16 to 30 C"
    source   = ["K34", "OS18"]
    seen     = "2026-11-28"
    disputed = "32 C at the most (common practice)"
    note     = "Never below 18 C (K34). More of a zoo's colonies died above 29.5 C (OS18). The limits are our reading."
  }

  figure "temperature-soft" {
    value    = "18 to 28 C"
    source   = ["K34", "OS18"]
    seen     = "2026-11-28"
    disputed = "30 C at the most (common practice)"
    note     = "A margin below the heat in which more of a zoo's colonies died (OS18)."
  }

  figure "temperature-target" {
    value    = "20 to 28 C"
    source   = ["K34", "OS18"]
    seen     = "2026-11-28"
    disputed = "18 to 26.5 C (OS18), room temperature (K34), 24 to 28 C (common practice)"
  }

  figure "air" {
    value = "18 to 28 C"
    seen  = "2026-11-28"
    note  = "About 28 C is the upper limit, and below 15.5 C it is in trouble."
  }

  figure "rest" {
    value = "none"
    seen  = "2026-11-28"
  }

  figure "cooler" {
    value = "2 to 3 C"
    seen  = "2026-11-28"
  }

  figure "humidity-soft" {
    value  = "70 to 95 %"
    source = ["K34"]
    note   = "Never below 70 % (K34)."
  }

  figure "humidity-target" {
    value  = "70 to 90 %"
    source = ["K34"]
  }

  figure "moisture" {
    value   = "damp"
    source  = ["K33", "K34"]
    quality = "keeper"
  }

  figure "substrate-depth-min" {
    value    = "20 cm"
    source   = ["OS18", "K33"]
    quality  = "society"
    seen     = "2026-11-28"
    disputed = "8 to 10 cm (K34), 7.5 to 10 cm (K97), 15 cm and 5 cm of leaves (K16b), the body length (common practice)"
    note     = "It is the food: leaf humus, leaves and white-rotten wood, no conifer."
  }

  figure "substrate-depth-advised" {
    value   = "30 cm"
    source  = ["OS18"]
    quality = "society"
    seen    = "2026-11-28"
    note    = "So deep to breed it."
  }

  figure "floor-first" {
    value    = "2000 cm2"
    source   = ["K97"]
    disputed = "38 to 57 L for two (K97), 90 x 60 cm (K33)"
    note     = "For one or two. Twice the body length long (K97)."
  }

  figure "keeping" {
    value    = "groups"
    source   = ["K98", "K96"]
    quality  = "keeper"
    disputed = "solitary (K99)"
  }

  figure "group-max" {
    value  = "10"
    source = ["K96"]
    note   = "Colonies of up to ten (K96)."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["K33", "K34"]
    quality = "keeper"
  }

  figure "hangs-to-moult" {
    value = "false"
    note  = "It moults below ground, for weeks: do not dig it up."
  }

  figure "heater-not" {
    value   = "under"
    source  = ["K34"]
    quality = "society"
  }

  figure "length" {
    value    = "20 to 28 cm"
    stages   = ["adult"]
    source   = ["K33", "K94"]
    disputed = "wild 17.8 to 26 cm, bred to 32 cm (K94), 20 to 30 cm (K33), 38 cm (K95), 19 cm (K96)"
  }

  figure "mass" {
    value   = "30 to 60 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "5 to 8 years"
    source   = ["K96", "K101", "K98"]
    disputed = "5 to 7 (K96, K101), 7 to 10 years (K98)"
  }

  figure "sac-time" {
    value   = "90 days"
    source  = ["K100"]
    quality = "keeper"
    seen    = "2026-11-28"
    note    = "About three months in the soil."
  }

  figure "brood-size" {
    value    = "100 to 1000"
    source   = ["K101"]
    quality  = "society"
    disputed = "a few hundred eggs (K100)"
    note     = "Hatching takes about three months (K100)."
  }

  figure "separation" {
    value  = "keep with mother"
    source = ["K16b"]
    note   = "The young eat the droppings of adults (K16b)."
  }

  figure "premoult-fast" {
    value  = "2 to 8 weeks"
    stages = ["young", "juvenile"]
    seen   = "2026-11-28"
    note   = "Out of sight below. It is said as weeks and as months; the numbers are ours. It is never dug up."
  }

  figure "premoult-fast" {
    value  = "1 to 4 months"
    stages = ["subadult", "adult"]
    seen   = "2026-11-28"
    note   = "Out of sight below. It is said as weeks and as months; the numbers are ours. It is never dug up."
  }

  figure "mites-clear" {
    value = "30 days"
    seen  = "2026-11-28"
    note  = "Of clean looks each week."
  }

  figure "venom" {
    value   = "none"
    source  = ["K96", "K98"]
    quality = "keeper"
  }

  figure "defence" {
    value   = "Irritating fluid: eyes and mouth at risk, stains the skin. Wash hands."
    source  = ["K96", "K98"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "USA: look up the plant-pest permit for plant-feeding invertebrates."
    source  = ["G9"]
    quality = "guideline"
  }

  figure "sexing" {
    value   = "Males lack walking legs on ring 7, where the gonopods are."
    source  = ["K33"]
    quality = "keeper"
  }

  state "gravid" {
    care    = "all"
    manner  = "usual"
    rule    = "fed as ever on top; no digging"
    source  = ["K101"]
    quality = "society"
    seen    = "2026-11-28"
  }

  state "gravid" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
    seen   = "2026-11-28"
  }

  state "gravid" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    seen   = "2026-11-28"
    note   = "About three months from the laying."
  }

  state "gravid-late" {
    care    = "all"
    manner  = "usual"
    rule    = "fed as ever on top; no digging"
    source  = ["K101"]
    quality = "society"
    seen    = "2026-11-28"
  }

  state "gravid-late" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
    seen   = "2026-11-28"
  }

  state "gravid-late" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    seen   = "2026-11-28"
    note   = "About three months from the laying."
  }

  state "sac" {
    care    = "all"
    manner  = "usual"
    is      = "eggs in the soil"
    rule    = "fed as ever on top; no digging"
    source  = ["K101"]
    quality = "society"
    seen    = "2026-11-28"
  }

  state "sac" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
    seen   = "2026-11-28"
  }

  state "sac" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    seen   = "2026-11-28"
    note   = "About three months from the laying."
  }

  state "birth" {
    care    = "all"
    manner  = "usual"
    is      = "hatching in the soil"
    rule    = "fed as ever on top; no digging"
    source  = ["K101"]
    quality = "society"
    seen    = "2026-11-28"
  }

  state "birth" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
    seen   = "2026-11-28"
  }

  state "birth" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    seen   = "2026-11-28"
    note   = "About three months from the laying."
  }

  state "brood" {
    care    = "all"
    manner  = "usual"
    is      = "young in the soil"
    rule    = "fed as ever on top; no digging"
    source  = ["K101"]
    quality = "society"
    seen    = "2026-11-28"
  }

  state "brood" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
    seen   = "2026-11-28"
  }

  state "brood" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    seen   = "2026-11-28"
    note   = "About three months from the laying."
  }

  state "young-round" {
    care    = "all"
    manner  = "usual"
    is      = "young in the soil"
    rule    = "fed as ever on top; no digging"
    source  = ["K101"]
    quality = "society"
    seen    = "2026-11-28"
  }

  state "young-round" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
    seen   = "2026-11-28"
  }

  state "young-round" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    seen   = "2026-11-28"
    note   = "About three months from the laying."
  }

  state "after-brood" {
    care    = "all"
    manner  = "usual"
    rule    = "fed as ever on top; no digging"
    source  = ["K101"]
    quality = "society"
    seen    = "2026-11-28"
  }

  state "after-brood" {
    care   = "clean"
    manner = "hatch"
    words  = "on top only"
    seen   = "2026-11-28"
  }

  state "after-brood" {
    care   = "substrate, count"
    manner = "held"
    source = ["K100"]
    seen   = "2026-11-28"
    note   = "About three months from the laying."
  }

  state "newborn" {
    care   = "all"
    manner = "usual"
    is     = "just hatched"
    rule   = "substrate and droppings at once; no digging"
    source = ["K100"]
    seen   = "2026-11-28"
  }

  state "newborn" {
    care   = "substrate, count"
    manner = "held"
    seen   = "2026-11-28"
  }

  state "premoult" {
    care   = "live, killed"
    manner = "usual"
    words  = "on top"
    rule   = "fed as ever on top, never dug up"
    seen   = "2026-11-28"
    note   = "It moults out of sight, below."
  }

  state "soft" {
    care   = "live, killed"
    manner = "usual"
    words  = "on top"
    rule   = "fed as ever on top, never dug up"
    seen   = "2026-11-28"
    note   = "It moults out of sight, below."
  }

  state "hardening" {
    care   = "live, killed"
    manner = "usual"
    words  = "on top"
    rule   = "fed as ever on top, never dug up"
    seen   = "2026-11-28"
    note   = "It moults out of sight, below."
  }

  need "look" {
    longest = "1 day"
  }

  need "moisture" {
    longest = "4 days"
    source  = ["K33"]
    quality = "keeper"
    note    = "Every three to four days."
  }

  need "food" {
    longest = "31 days"
    note    = "Leaves and white-rotten wood are the food; they are topped up every month."
  }

  need "heat" {
    longest = "1 day"
  }

  need "cleaning" {
    longest  = "14 days"
    severity = "caution"
    note     = "Once a week is usual; a missed week is made up in the next."
  }

  need "device-test" {
    longest  = "30 days"
    severity = "caution"
  }

  care "greens-out" {
    kind    = "other"
    task    = "Take out what is left of the greens"
    on      = ["thu", "sun"]
    because = "wet food on the soil grows mould"
    source  = ["K34"]
    quality = "practice"
    seen    = "2026-11-25"
  }
}
