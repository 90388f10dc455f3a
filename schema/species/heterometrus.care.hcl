species "heterometrus" {
  title    = "Asian forest scorpion"
  latin    = "Heterometrus Ehrenberg, 1828"
  family   = "Scorpionidae"
  type     = "tropical-burrowing-scorpion"
  also     = ["giant blue", "Thai black", "Heterometrus glaucus", "Heterometrus laevigatus", "Heterometrus laoticus", "Heterometrus longimanus", "Heterometrus petersii", "Heterometrus spinifer", "Heterometrus thorellii"]
  former   = ["Palamnaeus"]
  mistaken = ["Gigantometrus swammerdami", "Sahyadrimetrus scaber", "Pandinus imperator"]
  note     = "A genus of eight species since 2020 (P29, K63); all others went to new genera. Animals sold as spinifer or longimanus are often silenus, laoticus or petersii (from memory)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-25"

  stage "newborn" {
    instars = "1"
    note    = "On the mother, before the first moult."
    source  = ["K52"]
  }

  stage "young" {
    instars = "2 to 3"
    note    = "As the emperor scorpion, with six moults; no table is published."
    source  = ["P6"]
  }

  stage "juvenile" {
    instars = "4 to 5"
    note    = "As the emperor scorpion, with six moults; no table is published."
    source  = ["P6"]
  }

  stage "subadult" {
    instars = "6"
    note    = "As the emperor scorpion, with six moults; no table is published."
    source  = ["P6"]
  }

  stage "adult" {
    instars = "7"
    note    = "As the emperor scorpion, with six moults; no table is published."
    source  = ["P6"]
  }

  figure "temperature-hard" {
    value  = "15 to 35 C"
    source = ["K20"]
    note   = "35 C is what K20 gives for tropical scorpions; 15 C is common practice. No lethal temperature has been measured."
  }

  figure "temperature-soft" {
    value  = "21 to 32 C"
    source = ["K17", "K64"]
    note   = "Our margin around the target; no source."
  }

  figure "temperature-target" {
    value    = "24 to 29 C"
    source   = ["K3", "K16"]
    quality  = "keeper"
    disputed = "24 to 27 C (K17), 25.5 to 30 C (K64), 25 to 30 C for breeding (K65, unreliable)"
  }

  figure "warm-spot" {
    value = "27 to 30 C"
    seen  = "2026-11-28"
  }

  figure "air" {
    value  = "21 to 27 C"
    source = ["K3"]
    seen   = "2026-11-28"
    note   = "24 to 29 C (K3), of the spot or of the air: it does not say."
  }

  figure "night-drop" {
    value = "3 to 8 C"
    note  = "As the emperor scorpion."
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
    value  = "60 to 90 %"
    source = ["K17", "K64"]
  }

  figure "humidity-target" {
    value    = "70 to 85 %"
    source   = ["K66", "K16"]
    disputed = "60 to 70 % (K17), 70 to 80 % (K66), 75 to 80 % (K16), 80 to 90 % (K1), 70 to 90 % (K64)"
  }

  figure "humidity-premoult" {
    value  = "75 to 90 %"
    source = ["K39"]
    note   = "As the emperor scorpion."
  }

  figure "moisture" {
    value   = "damp"
    source  = ["K3", "K17"]
    quality = "keeper"
    note    = "Damp, not wet."
  }

  figure "ventilation" {
    value  = "any"
    source = ["K5"]
    note   = "As the emperor scorpion."
  }

  figure "substrate-depth-min" {
    value    = "10 cm"
    source   = ["K3", "K17"]
    quality  = "keeper"
    disputed = "7.5 cm and more (K15), 10 to 15 cm or half the tank (K3, K17), the animal's length and more (K66)"
  }

  figure "substrate-depth-advised" {
    value   = "15 cm"
    source  = ["K3", "K17"]
    quality = "keeper"
  }

  figure "floor-first" {
    value  = "150 cm2"
    stages = ["young"]
    source = ["K45"]
    note   = "Three body lengths long (K45) and two wide, for the largest animal of the stage; our arithmetic."
  }

  figure "floor-first" {
    value  = "380 cm2"
    stages = ["juvenile"]
    source = ["K45"]
    note   = "Three body lengths long (K45) and two wide, for the largest animal of the stage; our arithmetic."
  }

  figure "floor-first" {
    value    = "1200 cm2"
    stages   = ["subadult", "adult"]
    source   = ["K3", "K14", "K17", "K64"]
    disputed = "23 L (K15), 38 L (K3, K14, K17), 45 x 30 x 30 cm (K64), 45 cm on each side (K66)"
  }

  figure "volume-first" {
    value    = "30 L"
    stages   = ["subadult", "adult"]
    source   = ["K3", "K14", "K17"]
    disputed = "23 L (K15), 38 L (K3, K14, K17)"
  }

  figure "keeping" {
    value    = "alone, or mother with brood"
    source   = ["K3", "K1", "K15"]
    quality  = "keeper"
    disputed = "small groups are possible but not advised (K15)"
    note     = "More territorial and quicker to defend than the emperor scorpion (K1, K15)."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["K3", "K17"]
    quality = "keeper"
  }

  figure "climbs" {
    value   = "seams"
    source  = ["K3"]
    quality = "keeper"
  }

  figure "lid" {
    value   = "latched"
    source  = ["K3"]
    quality = "keeper"
  }

  figure "moults-as-adult" {
    value   = "false"
    source  = ["K37", "K48"]
    quality = "keeper"
    note    = "Said of scorpions in general."
  }

  figure "drinks" {
    value  = "dish"
    source = ["K1", "K4"]
    note   = "As the emperor scorpion."
  }

  figure "heater-not" {
    value   = "under"
    source  = ["K3"]
    quality = "keeper"
  }

  figure "uv-not" {
    value  = "true"
    source = ["K4"]
    note   = "As the emperor scorpion."
  }

  figure "looks" {
    value   = "Black, often with a sheen of blue or green; the claws are smoother than an emperor's."
    stages  = ["subadult", "adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "length" {
    value  = "3.9 to 5 cm"
    stages = ["young"]
    source = ["P6"]
    note   = "From 12.5 cm for an adult, by Dyar's rule with a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value  = "6.3 to 7.9 cm"
    stages = ["juvenile"]
    source = ["P6"]
    note   = "From 12.5 cm for an adult, by Dyar's rule with a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value  = "10 cm"
    stages = ["subadult"]
    source = ["P6"]
    note   = "From 12.5 cm for an adult, by Dyar's rule with a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value    = "10 to 15 cm"
    stages   = ["adult"]
    source   = ["K21", "K16", "K14", "K63"]
    disputed = "the genus 10 to 20 cm (K63), longimanus 10 to 12 cm (K21), 12 to 15 cm (K16), 12.5 to 18 cm (K14)"
    note     = "With the tail, as the sources measure."
  }

  figure "mass" {
    value   = "0.6 to 1.3 g"
    stages  = ["young"]
    source  = ["P6", "memory"]
    quality = "memory"
    note    = "From 20 g for an adult, halved for each moult (Przibram's rule); our arithmetic from a remembered mass."
  }

  figure "mass" {
    value   = "2.5 to 5 g"
    stages  = ["juvenile"]
    source  = ["P6", "memory"]
    quality = "memory"
    note    = "From 20 g for an adult, halved for each moult (Przibram's rule); our arithmetic from a remembered mass."
  }

  figure "mass" {
    value   = "10 g"
    stages  = ["subadult"]
    source  = ["P6", "memory"]
    quality = "memory"
    note    = "From 20 g for an adult, halved for each moult (Przibram's rule); our arithmetic from a remembered mass."
  }

  figure "mass" {
    value   = "15 to 30 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "growth-factor" {
    value  = "1.26 to 1.3"
    source = ["P6", "P10"]
    note   = "As the emperor scorpion."
  }

  figure "moults-to-adult" {
    value    = "5 to 6"
    source   = ["K37"]
    quality  = "keeper"
    disputed = "4 to 9 (K50)"
    note     = "Said of scorpions in general."
  }

  figure "lifespan" {
    value    = "5 to 8 years"
    source   = ["K15", "K66"]
    quality  = "keeper"
    disputed = "6 to 8 (K14), 7 to 8 (K21)"
  }

  figure "gestation" {
    value    = "5 to 12 months"
    source   = ["K58", "S32b"]
    seen     = "2026-11-28"
    disputed = "8 to 12 months (K58, for the genus, citing Polis 1990), 5 to 8 (S32b), to 24 (N5), about 7 (K67, weak)"
  }

  figure "gestation-longest" {
    value  = "18 months"
    source = ["K58", "N5"]
    seen   = "2026-11-28"
    note   = "Between K58 and N5; our reading."
  }

  figure "brood-size" {
    value    = "15 to 40"
    source   = ["K58", "K67"]
    disputed = "15 to 30 (K67), 36 in one Sahyadrimetrus scaber (K58)"
  }

  figure "on-mother" {
    value    = "14 to 28 days"
    source   = ["K58"]
    seen     = "2026-11-28"
    disputed = "7 to 21 days for scorpions in general (K52)"
    note     = "K58 says several weeks, to the first moult; the figures are common practice."
  }

  figure "separation" {
    value    = "keep with mother"
    source   = ["K58", "P1"]
    disputed = "keepers take the young out to avoid cannibalism (common practice)"
    note     = "P1 is of the emperor scorpion. In Sahyadrimetrus scaber the mother fed the young mouth to mouth, and weak ones were eaten (K58)."
  }

  figure "first-killed" {
    value  = "3 days"
    source = ["P11"]
    seen   = "2026-11-28"
    note   = "Pieces at the burrow mouth. They cannot feed before their first moult (N1). The figure is common practice."
  }

  figure "first-meal" {
    value  = "10 days"
    source = ["P11"]
    note   = "In Rhopalurus rochai unfed young of instar 2 died on days 11 to 30."
  }

  figure "undisturbed" {
    value  = "30 days"
    source = ["P1"]
    note   = "As the emperor scorpion."
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
    note   = "K55 has 1 to 2 weeks."
  }

  figure "handling-wait" {
    value  = "14 days"
    source = ["K37", "K49"]
    note   = "Both say to leave it alone until hard; the figure is common practice."
  }

  figure "moult-takes" {
    value   = "1 to 12 h"
    source  = ["K37"]
    quality = "keeper"
    note    = "1 to 3 h in small scorpions, 12 h in the largest."
  }

  figure "premoult-fast" {
    value  = "3 to 14 days"
    stages = ["young"]
    source = ["K49", "S59c"]
    seen   = "2026-11-28"
    note   = "At the longest about 30 days. K49 speaks of days, S59c of days to weeks; the numbers are common practice."
  }

  figure "premoult-fast" {
    value  = "1 to 4 weeks"
    stages = ["juvenile"]
    source = ["K49", "S59c"]
    seen   = "2026-11-28"
    note   = "At the longest about 10 weeks. K49 speaks of days, S59c of days to weeks; the numbers are common practice."
  }

  figure "premoult-fast" {
    value  = "2 to 8 weeks"
    stages = ["subadult"]
    source = ["K49", "S59c"]
    seen   = "2026-11-28"
    note   = "At the longest about 4 months. K49 speaks of days, S59c of days to weeks; the numbers are common practice."
  }

  figure "fast-alarm" {
    value  = "7 days"
    stages = ["young"]
    seen   = "2026-11-28"
    note   = "Young that starve die within weeks; smaller and killed food first, every third day, out again on the next."
  }

  figure "fast-alarm" {
    value  = "60 days"
    stages = ["adult"]
    seen   = "2026-11-28"
    note   = "Common practice is 60 to 90 days."
  }

  figure "refusal-pause" {
    value  = "3 days"
    stages = ["young"]
    source = ["P11"]
    seen   = "2026-11-28"
    note   = "Young that starve die (P11, of Rhopalurus rochai): the pause is short, and then a smaller item is offered, killed. The figure is common practice."
  }

  figure "prey-mass-share" {
    value  = "50 %"
    stages = ["young"]
    note   = "Killed or in pieces."
  }

  figure "items-a-week" {
    value  = "1 to 6"
    stages = ["adult"]
    source = ["K12"]
    note   = "As the emperor scorpion."
  }

  figure "unattended" {
    value    = "3 days"
    stages   = ["young", "juvenile"]
    disputed = "juveniles 5 days (common practice)"
  }

  figure "unattended" {
    value  = "7 days"
    stages = ["subadult", "adult"]
    seen   = "2026-11-28"
    note   = "10 days with a second dish."
  }

  figure "mites-clear" {
    value = "30 days"
    seen  = "2026-11-28"
    note  = "Of clean looks each week."
  }

  figure "substrate-change" {
    value  = "4 to 6 months"
    source = ["K62"]
    note   = "For a damp set-up without springtails; K62 says it of a tarantula tank."
  }

  figure "venom" {
    value   = "mild"
    source  = ["K13", "K1", "K15"]
    quality = "keeper"
    note    = "Not medically important (K13); somewhat more pain than the emperor, for about 30 minutes (K1), like a hornet (K15). Move it with a cup and brush (K13)."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    note    = "K40 names Pandinus as the only scorpions listed."
  }

  figure "climate-origin" {
    value  = "Asian forests; burrows in damp soil."
    source = ["P29", "K3"]
  }

  figure "metabolic-kin" {
    value  = "scorpion"
    source = ["P2"]
    note   = "Scorpionidae use about as much oxygen as Buthidae and lose more water (N29)."
  }

  need "look" {
    longest = "1 day"
  }

  need "water" {
    longest = "2 days"
    note    = "A dish is never empty: it is refilled within two days."
  }

  need "moisture" {
    longest = "3 days"
    note    = "As the emperor scorpion."
  }

  need "food" {
    stages  = ["young"]
    longest = "7 days"
    source  = ["P11"]
    note    = "Young that starve die (P11, of Rhopalurus rochai); the figure is common practice."
  }

  need "food" {
    stages  = ["juvenile"]
    longest = "14 days"
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "14 days"
    shortest = "3 days"
    severity = "caution"
    note     = "As the emperor scorpion."
  }

  need "leftovers" {
    longest = "1 day"
    source  = ["K82"]
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

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket small"
    killed     = true
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket medium"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket adult"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "4 days"
    per_animal = 1
    rotate     = ["cricket adult", "cricket adult", "roach medium"]
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }
}
