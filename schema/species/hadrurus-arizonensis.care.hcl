species "hadrurus-arizonensis" {
  title    = "giant desert hairy scorpion"
  latin    = "Hadrurus arizonensis Ewing, 1928"
  family   = "Hadruridae"
  type     = "desert-burrowing-scorpion"
  also     = ["Arizona desert hairy scorpion", "desert hairy scorpion"]
  mistaken = ["Hadrurus spadix"]
  note     = "The family is Hadruridae, Caraboctonidae or Iuridae by author (P10, P16, K18). H. spadix has a black back (K18)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-25"

  substrate_depth_advised = "15 to 25 cm"

  stage "newborn" {
    instars = "1"
    note    = "On the mother, before the first moult."
    source  = ["P10"]
  }

  stage "young" {
    instars = "2 to 3"
    note    = "As Hadrurus gertschi: seven instars, six moults."
    source  = ["P10"]
  }

  stage "juvenile" {
    instars = "4 to 5"
    note    = "As Hadrurus gertschi: seven instars, six moults."
    source  = ["P10"]
  }

  stage "subadult" {
    instars = "6"
    note    = "As Hadrurus gertschi: seven instars, six moults."
    source  = ["P10"]
  }

  stage "adult" {
    instars = "7"
    note    = "As Hadrurus gertschi: seven instars, six moults."
    source  = ["P10"]
  }

  figure "temperature-hard" {
    value  = "5 to 40 C"
    source = ["P15", "K20"]
    note   = "Desert scorpions die at 45 to 47 C (P15); K20 heats no scorpion above 35 C. The figures are common practice."
  }

  figure "temperature-soft" {
    value  = "12 to 35 C"
    source = ["K20"]
  }

  figure "temperature-target" {
    value    = "25 to 32 C"
    source   = ["K18", "K19", "K68"]
    disputed = "24 to 29 C (K18, K68), 30 to 35 C for H. spadix (K19), no heater in winter (K20); 28 to 32 C (N13)"
  }

  figure "warm-spot" {
    value  = "28 to 35 C"
    source = ["K20"]
    seen   = "2026-11-28"
    note   = "By day."
  }

  figure "air" {
    value = "22 to 30 C"
    seen  = "2026-11-28"
  }

  figure "night" {
    value  = "18 to 22 C"
    source = ["K19"]
    note   = "K19 has about 20 C, of H. spadix."
  }

  figure "winter-rest" {
    value    = "12 to 18 C"
    source   = ["K20"]
    disputed = "heated all the year (K18, K68)"
    note     = "A rest is the keeper's choice. K20 measured 13 C in a burrow 30 cm down in a freeze."
  }

  figure "rest" {
    value    = "optional"
    source   = ["K20"]
    seen     = "2026-11-28"
    disputed = "heated all the year (K18, K68)"
    note     = "The keeper’s choice. In it K20 offers food only to those that are seen out."
  }

  figure "rest-length" {
    value = "8 to 14 weeks"
    seen  = "2026-11-28"
  }

  figure "rest-full-heat" {
    value  = "14 days"
    source = ["N20"]
    seen   = "2026-11-28"
    note   = "Said of geckos; 10 to 14 days in common practice."
  }

  figure "rest-step" {
    value = "2 to 3 C"
    seen  = "2026-11-28"
  }

  figure "rest-water" {
    value = "14 to 30 days"
    seen  = "2026-11-28"
    note  = "A drink."
  }

  figure "rest-first-meal" {
    value = "3 to 7 days"
    seen  = "2026-11-28"
  }

  figure "rest-full-meals" {
    value = "7 days"
    seen  = "2026-11-28"
  }

  figure "humidity-soft" {
    value  = "20 to 60 %"
    source = ["K18", "K19", "N13"]
    seen   = "2026-11-28"
    note   = "40 to 50 % (N13), with our margin."
  }

  figure "humidity-target" {
    value    = "20 to 50 %"
    source   = ["K18", "K19"]
    disputed = "40 to 50 % (N13)"
    note     = "Dry air over a deep layer that is damp; about 30 % for H. spadix (K19)."
  }

  figure "moisture" {
    value   = "arid"
    source  = ["K18", "K19"]
    quality = "keeper"
    note    = "Kept wet it dies of fungus (K18). It needs moist soil below, and more moisture to moult (K37, K20)."
  }

  figure "substrate-depth-min" {
    value    = "15 cm"
    source   = ["K18"]
    disputed = "10 cm packed (K18); wild burrows reach 1.8 m (K20)"
    note     = "Sand with clay or peat, wetted, packed, then dried (K19). 15 to 25 cm is common practice."
  }

  figure "floor-first" {
    value  = "130 cm2"
    stages = ["young"]
    source = ["K45"]
    note   = "Three body lengths long (K45) and two wide, for the largest animal of the stage; our arithmetic."
  }

  figure "floor-first" {
    value  = "330 cm2"
    stages = ["juvenile"]
    source = ["K45"]
    note   = "Three body lengths long (K45) and two wide, for the largest animal of the stage; our arithmetic."
  }

  figure "floor-first" {
    value    = "600 cm2"
    stages   = ["subadult", "adult"]
    source   = ["K18"]
    disputed = "6 to 10 L (K18), 20 to 38 L (common practice); 30 x 30 cm (N13)"
  }

  figure "volume-first" {
    value    = "15 L"
    stages   = ["subadult", "adult"]
    source   = ["K18"]
    disputed = "6 to 10 L (K18), 20 to 38 L (common practice)"
  }

  figure "keeping" {
    value   = "alone, or mother with brood"
    source  = ["K18", "K19"]
    quality = "keeper"
    note    = "Fights and cannibalism are frequent."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["K19", "K20"]
    quality = "keeper"
  }

  figure "climbs" {
    value  = "seams"
    source = ["K2", "K3"]
    note   = "As other scorpions; common practice."
  }

  figure "lid" {
    value  = "latched"
    source = ["K3"]
    note   = "For every scorpion; common practice."
  }

  figure "moults-as-adult" {
    value   = "false"
    source  = ["K37", "P4"]
    quality = "keeper"
    note    = "P4 says so of Paruroctonus mesaensis."
  }

  figure "drinks" {
    value    = "dish"
    disputed = "no dish, a damp paper towel now and then (K18); no water at all (K19); a shallow dish (N13)"
    note     = "A small dish always is common practice."
  }

  figure "heater-not" {
    value  = "under"
    source = ["K3"]
    note   = "Said of burrowing scorpions in general."
  }

  figure "uv-not" {
    value  = "true"
    source = ["P46"]
    note   = "Weak ultraviolet for 16 h a day changed Paruroctonus becki; as a limit it is common practice."
  }

  figure "looks" {
    value   = "A yellow triangle between eyes and jaws; H. spadix has the whole carapace and back dark."
    stages  = ["adult"]
    source  = ["C87", "K18"]
    quality = "keeper"
  }

  figure "length" {
    value  = "3.6 to 4.6 cm"
    stages = ["young"]
    source = ["P10"]
    note   = "From 12 cm for an adult, by Dyar's rule with a factor of 1.27; our arithmetic."
  }

  figure "length" {
    value  = "5.9 to 7.4 cm"
    stages = ["juvenile"]
    source = ["P10"]
    note   = "From 12 cm for an adult, by Dyar's rule with a factor of 1.27; our arithmetic."
  }

  figure "length" {
    value  = "9.4 cm"
    stages = ["subadult"]
    source = ["P10"]
    note   = "From 12 cm for an adult, by Dyar's rule with a factor of 1.27; our arithmetic."
  }

  figure "length" {
    value    = "10 to 14 cm"
    stages   = ["adult"]
    source   = ["K18", "K68", "N13"]
    quality  = "keeper"
    seen     = "2026-11-28"
    disputed = "to 14 cm (N13), 8 to 10 cm (K18), to 10 cm (K68), 10 to 18 cm (K21, too high)"
    note     = "With the tail."
  }

  figure "mass" {
    value  = "0.17 to 0.34 g"
    stages = ["young"]
    source = ["P10"]
    note   = "From 6 g for an adult, divided by 2.05 for each moult; our arithmetic."
  }

  figure "mass" {
    value  = "0.7 to 1.4 g"
    stages = ["juvenile"]
    source = ["P10"]
    note   = "From 6 g for an adult, divided by 2.05 for each moult; our arithmetic."
  }

  figure "mass" {
    value  = "2.9 g"
    stages = ["subadult"]
    source = ["P10"]
    note   = "From 6 g for an adult, divided by 2.05 for each moult; our arithmetic."
  }

  figure "mass" {
    value    = "4 to 8 g"
    stages   = ["adult"]
    source   = ["K21"]
    disputed = "4 to 7 g (K21)"
  }

  figure "growth-factor" {
    value  = "1.27"
    source = ["P10"]
    note   = "The carapace of Hadrurus gertschi; none is published for this species."
  }

  figure "moults-to-adult" {
    value  = "6"
    source = ["P10"]
    note   = "Of Hadrurus gertschi."
  }

  figure "age-at-maturity" {
    value  = "4 to 7 years"
    source = ["P10"]
    note   = "Hadrurus gertschi takes at least four years (P10); the upper figure is common practice."
  }

  figure "lifespan" {
    value    = "10 to 15 years"
    source   = ["K21"]
    disputed = "7 to 10 years wild, 15 to 20 captive (K21, without support)"
  }

  figure "gestation" {
    value   = "6 to 12 months"
    source  = ["N12"]
    quality = "keeper"
    seen    = "2026-11-28"
    note    = "From a copy of a press piece. Not bred in captivity: broods come from females that were gravid when caught (N13)."
  }

  figure "gestation-longest" {
    value  = "14 months"
    source = ["N12"]
    seen   = "2026-11-28"
  }

  figure "brood-size" {
    value   = "10 to 35"
    source  = ["N12"]
    quality = "keeper"
    seen    = "2026-11-28"
    note    = "To 35, from a copy of a press piece; the lower figure is from memory."
  }

  figure "on-mother" {
    value    = "7 to 28 days"
    source   = ["K52", "N7", "N10"]
    seen     = "2026-11-28"
    disputed = "7 to 21 days for scorpions in general (K52), 10 days in Uroctonus (N7), 4 weeks in Lychas (N10)"
    note     = "Of kin; none was measured on this species."
  }

  figure "separation" {
    value    = "separate"
    disputed = "P1 found the opposite in Pandinus imperator; one brood vanished, probably eaten by the mother (K18)"
    note     = "Common practice for a species that is kept alone."
  }

  figure "separate-within" {
    value = "3 to 14 days"
    seen  = "2026-11-28"
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
    note   = "Common practice is 60 to 90 days; a winter rest does not count."
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
    value  = "1 to 2"
    stages = ["subadult", "adult"]
    source = ["K20"]
    note   = "None in a cold rest; K20 offers only when the animal is out."
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

  figure "unattended-rest" {
    value = "21 days"
    seen  = "2026-11-28"
  }

  figure "mites-clear" {
    value = "30 days"
    seen  = "2026-11-28"
    note  = "Of clean looks each week."
  }

  figure "substrate-change" {
    value = "6 to 12 months"
    note  = "For a dry set-up."
  }

  figure "venom" {
    value   = "mild"
    source  = ["K18"]
    quality = "keeper"
    note    = "Painful, not dangerous."
  }

  figure "spray" {
    value   = "venom"
    source  = ["N13"]
    quality = "keeper"
    note    = "Hadrurus spadix, its kin, was filmed: taken as a precaution."
  }

  figure "defence" {
    value   = "Hadrurus spadix was filmed spraying venom (N13). Protect the eyes; rinse with water."
    source  = ["N13"]
    quality = "keeper"
    seen    = "2026-11-28"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Look up the hunting licence for collecting in Arizona (as remembered)."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Deserts of the south-western USA (as remembered). Burrows down to 1.8 m: 15 cm down it is 11 K cooler than the surface in summer (K20); burrows can pass 35 C (P16)."
    source  = ["P16", "K20", "memory"]
    quality = "memory"
  }

  figure "metabolic-kin" {
    value  = "scorpion"
    source = ["P2", "P16"]
    note   = "In the field this species spends two to three times its resting rate (P17)."
  }

  state "young-round" {
    care   = "rehouse"
    manner = "usual"
    words  = "only to take the young out, by the 14th day"
    from   = "3 days"
    seen   = "2026-11-28"
  }

  state "rest" {
    care   = "mist"
    manner = "held"
    seen   = "2026-11-28"
    note   = "Cold and wet kills a desert scorpion."
  }

  need "look" {
    longest = "1 day"
  }

  need "water" {
    longest  = "7 days"
    source   = ["K18", "K20"]
    disputed = "no dish, a damp paper towel now and then (K18); no water at all (K19)"
    note     = "A small dish always, or a drink once a week; common practice."
  }

  need "food" {
    stages  = ["young"]
    longest = "7 days"
    source  = ["P11"]
    note    = "Common practice; unfed young of Rhopalurus rochai died from the 11th day on (P11)."
  }

  need "food" {
    stages  = ["juvenile"]
    longest = "14 days"
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "21 days"
    shortest = "3 days"
    severity = "caution"
    note     = "One or two meals a week are usual, none in a cold rest. The figure is common practice."
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
}
