species "heterometrus" {
  title    = "Asian forest scorpion"
  latin    = "Heterometrus Ehrenberg, 1828"
  family   = "Scorpionidae"
  also     = ["Heterometrus glaucus", "Heterometrus laevigatus", "Heterometrus laoticus", "Heterometrus longimanus", "Heterometrus petersii", "Heterometrus silenus", "Heterometrus spinifer", "Heterometrus thorellii"]
  former   = ["Palamnaeus"]
  mistaken = ["Gigantometrus swammerdami", "Sahyadrimetrus scaber"]
  note     = "A genus of eight species since 2020 (P29, K63); all others went to new genera. Animals sold as spinifer or longimanus are often silenus, laoticus or petersii (from memory)."

  stage "newborn" {
    instars = "1"
    note    = "On the mother, before the first moult."
    source  = ["K52"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  stage "young" {
    instars = "2 to 3"
    note    = "As the emperor scorpion, with six moults; no table is published."
    source  = ["P6"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  stage "juvenile" {
    instars = "4 to 5"
    note    = "As the emperor scorpion, with six moults; no table is published."
    source  = ["P6"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  stage "subadult" {
    instars = "6"
    note    = "As the emperor scorpion, with six moults; no table is published."
    source  = ["P6"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  stage "adult" {
    instars = "7"
    note    = "As the emperor scorpion, with six moults; no table is published."
    source  = ["P6"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "temperature-hard" {
    value   = "15 to 35 C"
    source  = ["K20"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "35 C is what K20 gives for tropical scorpions; 15 C is common practice. No lethal temperature has been measured."
  }

  figure "temperature-soft" {
    value   = "21 to 32 C"
    source  = ["K17", "K64"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Our margin around the target; no source."
  }

  figure "temperature-target" {
    value    = "24 to 29 C"
    source   = ["K3", "K16"]
    quality  = "keeper"
    seen     = "2026-11-25"
    disputed = "24 to 27 C (K17), 25.5 to 30 C (K64), 25 to 30 C for breeding (K65, unreliable)"
  }

  figure "warm-spot" {
    value   = "27 to 30 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "air" {
    value   = "21 to 27 C"
    source  = ["K3"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "24 to 29 C (K3), of the spot or of the air: it does not say."
  }

  figure "night-drop" {
    value   = "3 to 8 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As the emperor scorpion."
  }

  figure "rest" {
    value   = "none"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "cooler" {
    value   = "2 to 3 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "humidity-soft" {
    value   = "60 to 90 %"
    source  = ["K17", "K64"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "humidity-target" {
    value    = "70 to 85 %"
    source   = ["K66", "K16"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "60 to 70 % (K17), 70 to 80 % (K66), 75 to 80 % (K16), 80 to 90 % (K1), 70 to 90 % (K64)"
  }

  figure "humidity-premoult" {
    value   = "75 to 90 %"
    source  = ["K39"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As the emperor scorpion."
  }

  figure "moisture" {
    value   = "damp"
    source  = ["K3", "K17"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "Damp, not wet."
  }

  figure "ventilation" {
    value   = "any"
    source  = ["K5"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As the emperor scorpion."
  }

  figure "substrate-depth-min" {
    value    = "10 cm"
    source   = ["K3", "K17"]
    quality  = "keeper"
    seen     = "2026-11-25"
    disputed = "7.5 cm and more (K15), 10 to 15 cm or half the tank (K3, K17), the animal's length and more (K66)"
  }

  figure "substrate-depth-advised" {
    value   = "15 cm"
    source  = ["K3", "K17"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "floor-first" {
    value   = "150 cm2"
    stages  = ["young"]
    source  = ["K45"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Three body lengths long (K45) and two wide, for the largest animal of the stage; our arithmetic."
  }

  figure "floor-first" {
    value   = "380 cm2"
    stages  = ["juvenile"]
    source  = ["K45"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Three body lengths long (K45) and two wide, for the largest animal of the stage; our arithmetic."
  }

  figure "floor-first" {
    value    = "1200 cm2"
    stages   = ["subadult", "adult"]
    source   = ["K3", "K14", "K17", "K64"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "23 L (K15), 38 L (K3, K14, K17), 45 x 30 x 30 cm (K64), 45 cm on each side (K66)"
  }

  figure "volume-first" {
    value    = "30 L"
    stages   = ["subadult", "adult"]
    source   = ["K3", "K14", "K17"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "23 L (K15), 38 L (K3, K14, K17)"
  }

  figure "keeping" {
    value    = "alone, or mother with brood"
    source   = ["K3", "K1", "K15"]
    quality  = "keeper"
    seen     = "2026-11-25"
    disputed = "small groups are possible but not advised (K15)"
    note     = "More territorial and quicker to defend than the emperor scorpion (K1, K15)."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["K3", "K17"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "climbs" {
    value   = "seams"
    source  = ["K3"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "lid" {
    value   = "latched"
    source  = ["K3"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "hangs-to-moult" {
    value   = "false"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "moults-as-adult" {
    value   = "false"
    source  = ["K37", "K48"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "Said of scorpions in general."
  }

  figure "drinks" {
    value   = "dish"
    source  = ["K1", "K4"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As the emperor scorpion."
  }

  figure "heater-not" {
    value   = "under"
    source  = ["K3"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "uv-not" {
    value   = "true"
    source  = ["K4"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As the emperor scorpion."
  }

  figure "length" {
    value   = "3.9 to 5 cm"
    stages  = ["young"]
    source  = ["P6"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "From 12.5 cm for an adult, by Dyar's rule with a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value   = "6.3 to 7.9 cm"
    stages  = ["juvenile"]
    source  = ["P6"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "From 12.5 cm for an adult, by Dyar's rule with a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value   = "10 cm"
    stages  = ["subadult"]
    source  = ["P6"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "From 12.5 cm for an adult, by Dyar's rule with a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value    = "10 to 15 cm"
    stages   = ["adult"]
    source   = ["K21", "K16", "K14", "K63"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "the genus 10 to 20 cm (K63), longimanus 10 to 12 cm (K21), 12 to 15 cm (K16), 12.5 to 18 cm (K14)"
    note     = "With the tail, as the sources measure."
  }

  figure "mass" {
    value   = "0.6 to 1.3 g"
    stages  = ["young"]
    source  = ["P6", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "From 20 g for an adult, halved for each moult (Przibram's rule); our arithmetic from a remembered mass."
  }

  figure "mass" {
    value   = "2.5 to 5 g"
    stages  = ["juvenile"]
    source  = ["P6", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "From 20 g for an adult, halved for each moult (Przibram's rule); our arithmetic from a remembered mass."
  }

  figure "mass" {
    value   = "10 g"
    stages  = ["subadult"]
    source  = ["P6", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "From 20 g for an adult, halved for each moult (Przibram's rule); our arithmetic from a remembered mass."
  }

  figure "mass" {
    value   = "15 to 30 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "growth-factor" {
    value   = "1.26 to 1.3"
    source  = ["P6", "P10"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As the emperor scorpion."
  }

  figure "moults-to-adult" {
    value    = "5 to 6"
    source   = ["K37"]
    quality  = "keeper"
    seen     = "2026-11-25"
    disputed = "4 to 9 (K50)"
    note     = "Said of scorpions in general."
  }

  figure "lifespan" {
    value    = "5 to 8 years"
    source   = ["K15", "K66"]
    quality  = "keeper"
    seen     = "2026-11-25"
    disputed = "6 to 8 (K14), 7 to 8 (K21)"
  }

  figure "gestation" {
    value    = "5 to 12 months"
    source   = ["K58", "S32b"]
    quality  = "practice"
    seen     = "2026-11-28"
    disputed = "8 to 12 months (K58, for the genus, citing Polis 1990), 5 to 8 (S32b), to 24 (N5), about 7 (K67, weak)"
  }

  figure "gestation-longest" {
    value   = "18 months"
    source  = ["K58", "N5"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Between K58 and N5; our reading."
  }

  figure "brood-size" {
    value    = "15 to 40"
    source   = ["K58", "K67"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "15 to 30 (K67), 36 in one Sahyadrimetrus scaber (K58)"
  }

  figure "on-mother" {
    value    = "14 to 28 days"
    source   = ["K58"]
    quality  = "practice"
    seen     = "2026-11-28"
    disputed = "7 to 21 days for scorpions in general (K52)"
    note     = "K58 says several weeks, to the first moult; the figures are common practice."
  }

  figure "separation" {
    value    = "keep with mother"
    source   = ["K58", "P1"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "keepers take the young out to avoid cannibalism (common practice)"
    note     = "P1 is of the emperor scorpion. In Sahyadrimetrus scaber the mother fed the young mouth to mouth, and weak ones were eaten (K58)."
  }

  figure "first-killed" {
    value   = "3 days"
    source  = ["P11"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Pieces at the burrow mouth. They cannot feed before their first moult (N1). The figure is common practice."
  }

  figure "first-meal" {
    value   = "10 days"
    source  = ["P11"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "In Rhopalurus rochai unfed young of instar 2 died on days 11 to 30."
  }

  figure "undisturbed" {
    value   = "30 days"
    source  = ["P1"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As the emperor scorpion."
  }

  figure "wait-after-moult" {
    value   = "5 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "wait-after-moult" {
    value   = "7 days"
    stages  = ["juvenile"]
    source  = ["K55"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "wait-after-moult" {
    value   = "10 days"
    stages  = ["subadult", "adult"]
    source  = ["K55"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "K55 has 1 to 2 weeks."
  }

  figure "handling-wait" {
    value   = "14 days"
    source  = ["K37", "K49"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Both say to leave it alone until hard; the figure is common practice."
  }

  figure "moult-takes" {
    value   = "1 to 12 h"
    source  = ["K37"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "1 to 3 h in small scorpions, 12 h in the largest."
  }

  figure "premoult-fast" {
    value   = "3 to 14 days"
    stages  = ["young"]
    source  = ["K49", "S59c"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "At the longest about 30 days. K49 speaks of days, S59c of days to weeks; the numbers are common practice."
  }

  figure "premoult-fast" {
    value   = "1 to 4 weeks"
    stages  = ["juvenile"]
    source  = ["K49", "S59c"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "At the longest about 10 weeks. K49 speaks of days, S59c of days to weeks; the numbers are common practice."
  }

  figure "premoult-fast" {
    value   = "2 to 8 weeks"
    stages  = ["subadult"]
    source  = ["K49", "S59c"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "At the longest about 4 months. K49 speaks of days, S59c of days to weeks; the numbers are common practice."
  }

  figure "premoult-look" {
    value   = "30 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "premoult-look" {
    value   = "30 days"
    stages  = ["juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "premoult-look" {
    value   = "60 days"
    stages  = ["subadult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "premoult-try" {
    value   = "60 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "premoult-try" {
    value   = "30 days"
    stages  = ["juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "premoult-help" {
    value   = "90 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "premoult-help" {
    value   = "90 days"
    stages  = ["juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "premoult-help" {
    value   = "120 days"
    stages  = ["subadult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-look" {
    value   = "7 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-look" {
    value   = "14 days"
    stages  = ["juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-look" {
    value   = "30 days"
    stages  = ["subadult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-look" {
    value   = "30 days"
    stages  = ["adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-try" {
    value   = "4 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-try" {
    value   = "30 days"
    stages  = ["juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-alarm" {
    value   = "7 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Young that starve die within weeks; smaller and killed food first, every third day, out again on the next."
  }

  figure "fast-alarm" {
    value   = "30 days"
    stages  = ["juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-alarm" {
    value   = "60 days"
    stages  = ["subadult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-alarm" {
    value   = "60 days"
    stages  = ["adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Common practice is 60 to 90 days."
  }

  figure "fast-help" {
    value   = "10 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-help" {
    value   = "90 days"
    stages  = ["juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-help" {
    value   = "90 days"
    stages  = ["subadult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "fast-help" {
    value   = "90 days"
    stages  = ["adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "refusals-to-pause" {
    value   = "2"
    stages  = ["young", "juvenile", "subadult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "refusal-pause" {
    value   = "3 days"
    stages  = ["young"]
    source  = ["P11"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Young that starve die (P11, of Rhopalurus rochai): the pause is short, and then a smaller item is offered, killed. The figure is common practice."
  }

  figure "refusal-pause" {
    value   = "7 days"
    stages  = ["juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "refusal-pause" {
    value   = "14 days"
    stages  = ["subadult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "prey-mass-share" {
    value   = "50 %"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Killed or in pieces."
  }

  figure "prey-mass-share" {
    value   = "30 %"
    stages  = ["juvenile", "subadult", "adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "prey-length-share" {
    value   = "50 %"
    stages  = ["young", "juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Of the body without the tail."
  }

  figure "prey-length-share" {
    value   = "100 %"
    stages  = ["subadult", "adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Of the body without the tail."
  }

  figure "items-a-week" {
    value   = "1 to 6"
    stages  = ["adult"]
    source  = ["K12"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As the emperor scorpion."
  }

  figure "unattended" {
    value    = "3 days"
    stages   = ["young", "juvenile"]
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "juveniles 5 days (common practice)"
  }

  figure "unattended" {
    value   = "7 days"
    stages  = ["subadult", "adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "10 days with a second dish."
  }

  figure "unattended-sealed" {
    value   = "10 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "settling" {
    value   = "2 to 3 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "settling" {
    value   = "3 to 7 days"
    stages  = ["juvenile", "subadult", "adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "quarantine" {
    value   = "30 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "quarantine-wild" {
    value   = "60 to 90 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "mites-clear" {
    value   = "30 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Of clean looks each week."
  }

  figure "substrate-change" {
    value   = "4 to 6 months"
    source  = ["K62"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "For a damp set-up without springtails; K62 says it of a tarantula tank."
  }

  figure "venom" {
    value   = "mild"
    source  = ["K13", "K1", "K15"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "Not medically important (K13); somewhat more pain than the emperor, for about 30 minutes (K1), like a hornet (K15). Move it with a cup and brush (K13)."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "K40 names Pandinus as the only scorpions listed."
  }

  figure "climate-origin" {
    value   = "Asian forests; burrows in damp soil."
    source  = ["P29", "K3"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "metabolic-kin" {
    value   = "scorpion"
    source  = ["P2"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Scorpionidae use about as much oxygen as Buthidae and lose more water (N29)."
  }

  need "look" {
    longest = "1 day"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  need "water" {
    longest = "2 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "A dish is never empty: it is refilled within two days."
  }

  need "moisture" {
    longest = "3 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As the emperor scorpion."
  }

  need "food" {
    stages  = ["young"]
    longest = "7 days"
    source  = ["P11"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Young that starve die (P11, of Rhopalurus rochai); the figure is common practice."
  }

  need "food" {
    stages  = ["juvenile"]
    longest = "14 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "14 days"
    shortest = "3 days"
    severity = "caution"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    note     = "As the emperor scorpion."
  }

  need "leftovers" {
    longest = "1 day"
    source  = ["K82"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  need "heat" {
    longest = "1 day"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  need "cleaning" {
    longest  = "14 days"
    severity = "caution"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    note     = "Once a week is usual; a missed week is made up in the next."
  }

  need "device-test" {
    longest  = "30 days"
    severity = "caution"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
  }

  care "look" {
    every   = "day"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "heat" {
    every   = "day"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "water" {
    every   = "2 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "mist" {
    every   = "2 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "spot-clean" {
    every   = "7 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "dish" {
    every   = "7 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "deep-clean" {
    every   = "6 months"
    source  = ["K62"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "device-test" {
    every   = "30 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
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
