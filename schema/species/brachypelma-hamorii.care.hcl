species "brachypelma-hamorii" {
  title    = "Mexican redknee tarantula"
  latin    = "Brachypelma hamorii Tesmoingt, Cleton & Verdez, 1997"
  family   = "Theraphosidae"
  type     = "dry-terrestrial-tarantula"
  also     = ["redknee", "Mexican redknee"]
  mistaken = ["Brachypelma smithi", "Brachypelma boehmei", "Brachypelma emilia"]
  note     = "Most older texts on Brachypelma smithi are about this species or do not tell the two apart (K76)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-25"

  keeping   = "alone"
  lifestyle = "burrower"

  stage "newborn" {
    note = "In the egg sac, before it feeds."
  }

  stage "young" {
    note = "Spiderlings. Sizes and numbers of moults differ too much between sexes to count instars."
  }

  stage "juvenile" {
    note = "Half grown, sex not yet plain. Sizes and numbers of moults differ too much between sexes to count instars."
  }

  stage "subadult" {
    note = "One moult before maturity. Sizes and numbers of moults differ too much between sexes to count instars."
  }

  stage "adult" {
    note = "Males at the last moult, with bulbs and hooks; females by size, and they go on moulting."
  }

  figure "temperature-hard" {
    value  = "15 to 35 C"
    source = ["K80"]
    note   = "The target is from K80; the limits are common practice."
  }

  figure "temperature-soft" {
    value  = "18 to 30 C"
    source = ["K80"]
    note   = "Our margin around the target; no source."
  }

  figure "temperature-target" {
    value    = "21 to 28 C"
    source   = ["K80"]
    disputed = "24 to 27 C (K80), a room of 20 to 26 C is enough (common practice)"
  }

  figure "air" {
    value = "18 to 28 C"
    seen  = "2026-11-28"
    note  = "20 C is a good minimum, 22 to 26 C are aimed at."
  }

  figure "rest" {
    value = "optional"
    seen  = "2026-11-28"
    note  = "None is needed. In a room of 18 to 22 C in winter it eats less, and is offered food all the same."
  }

  figure "humidity-soft" {
    value  = "40 to 75 %"
    source = ["K79", "K80"]
    note   = "Our margin around the target; no source."
  }

  figure "humidity-target" {
    value    = "50 to 65 %"
    source   = ["K79", "K80"]
    disputed = "60 to 70 % (K80), 55 to 65 % in its shaded scrub, which is no desert (K79), a dry substrate with one damp end and a full dish (common practice)"
    note     = "No misting is forced."
  }

  figure "moisture" {
    value  = "either"
    source = ["K79"]
    note   = "Dry on top with one damp end and a full dish; common practice."
  }

  figure "substrate-depth-min" {
    value    = "8 cm"
    source   = ["K80"]
    disputed = "5 to 7.5 cm (K80), 10 cm and more for a burrower (common practice)"
  }

  figure "substrate-depth-advised" {
    value = "10 cm"
    note  = "Also to shorten a fall."
  }

  figure "floor-first" {
    value    = "900 cm2"
    stages   = ["subadult", "adult"]
    source   = ["K80"]
    disputed = "19 to 38 L (K80)"
    note     = "Three leg spans long and two wide; common practice."
  }

  figure "floor-first" {
    value  = "150 cm2"
    stages = ["juvenile"]
    note   = "Three by two leg spans of 5 cm; common practice, no source."
  }

  figure "floor-first" {
    value  = "25 cm2"
    stages = ["young"]
    note   = "Three by two leg spans of 2 cm; common practice, no source."
  }

  figure "volume-first" {
    value    = "19 L"
    stages   = ["subadult", "adult"]
    source   = ["K80"]
    quality  = "keeper"
    disputed = "19 to 38 L (K80)"
  }

  figure "fall-max" {
    value  = "20 cm"
    stages = ["subadult", "adult"]
    source = ["K81"]
    note   = "1 to 1.5 leg spans of 13 to 15 cm: a fall ruptures the abdomen. K81 reports a zoo box criticised for its height; the figure is common practice."
  }

  figure "climbs" {
    value = "glass"
    note  = "Weakly, and it falls."
  }

  figure "hangs-to-moult" {
    value   = "false"
    source  = ["K62"]
    quality = "keeper"
    note    = "It turns on its back; do not touch it."
  }

  figure "moults-as-adult" {
    value   = "true"
    source  = ["memory"]
    quality = "memory"
    note    = "Females do; a male's moult to maturity is his last (K85)."
  }

  figure "heater-not" {
    value  = "under"
    source = ["K3"]
    note   = "Said of burrowing scorpions; common practice for burrowing spiders too."
  }

  figure "length" {
    value    = "4.6 to 5.4 cm"
    stages   = ["adult"]
    source   = ["K76"]
    quality  = "keeper"
    disputed = "leg span 12.5 cm (K77), 14 cm (K78), 15 to 18 cm (K79)"
    note     = "Body: females 52 to 54 mm (n 7), males 46 to 52 mm (n 11). Leg span 13 to 15 cm."
  }

  figure "mass" {
    value   = "14 to 16 g"
    stages  = ["adult"]
    source  = ["K77", "K79"]
    quality = "keeper"
  }

  figure "age-at-maturity" {
    value   = "7 to 10 years"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 7 to 8, females 9 to 10."
  }

  figure "lifespan" {
    value   = "25 to 30 years"
    source  = ["K77", "K79", "K80"]
    quality = "keeper"
    note    = "Females. Males 5 to 10 years (K77), and about 1 to 2 after the last moult (from memory)."
  }

  figure "sac-time" {
    value   = "6 to 10 weeks"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-28"
    note    = "As remembered. Prelarvae at about 20 days (N14)."
  }

  figure "sac-decide" {
    value  = "35 to 42 days"
    source = ["N15"]
    seen   = "2026-11-28"
    note   = "Left with her it is torn open at about six weeks (N15, which does not say of what genus)."
  }

  figure "brood-size" {
    value    = "600"
    source   = ["N14"]
    quality  = "keeper"
    seen     = "2026-11-28"
    disputed = "400 to 800 (from memory)"
    note     = "At most."
  }

  figure "first-killed" {
    value = "7 days"
    seen  = "2026-11-28"
    note  = "After the moult to a spiderling that walks free."
  }

  figure "first-meal" {
    value = "10 days"
    seen  = "2026-11-28"
    note  = "7 to 10 days after the moult to a spiderling that walks free."
  }

  figure "wait-after-moult" {
    value  = "4 days"
    stages = ["young"]
    source = ["K84"]
    note   = "Common practice is 3 to 5 days for spiderlings. The fangs must be dark (K84)."
  }

  figure "wait-after-moult" {
    value  = "7 days"
    stages = ["juvenile"]
    source = ["K84"]
    note   = "The fangs must be dark (K84)."
  }

  figure "wait-after-moult" {
    value    = "14 days"
    stages   = ["subadult", "adult"]
    source   = ["K84"]
    disputed = "10 to 14 days for medium species (K84), a few days (K62)"
    note     = "The fangs must be dark, not white."
  }

  figure "handling-wait" {
    value    = "14 days"
    source   = ["K62"]
    disputed = "at least a week (K62)"
  }

  figure "moult-takes" {
    value  = "0.25 to 8 h"
    source = ["K62"]
    note   = "K62 has 15 minutes to several hours; the upper figure is common practice."
  }

  figure "premoult-fast" {
    value  = "3 to 21 days"
    stages = ["young"]
    source = ["N25a", "N25b"]
    seen   = "2026-11-28"
    note   = "At the longest about 45 days. N25a speaks of a week or longer, N25b of a spiderling sealed in for more than a month; the numbers are common practice."
  }

  figure "premoult-fast" {
    value  = "2 to 6 weeks"
    stages = ["juvenile"]
    source = ["N25d", "K83"]
    seen   = "2026-11-28"
    note   = "At the longest about 3 months. The sources speak of weeks to months; the numbers are common practice."
  }

  figure "premoult-fast" {
    value  = "1 to 3 months"
    stages = ["subadult"]
    source = ["N25d", "K83"]
    seen   = "2026-11-28"
    note   = "At the longest about 5 months. The sources speak of weeks to months; the numbers are common practice."
  }

  figure "premoult-fast" {
    value  = "1 to 3 months"
    stages = ["adult"]
    source = ["N25c", "N25d"]
    seen   = "2026-11-28"
    note   = "At the longest about 6 months and more. N25c speaks of two months; the numbers are common practice."
  }

  figure "fast-alarm" {
    value  = "7 days"
    stages = ["young"]
    seen   = "2026-11-28"
    note   = "Young that starve die within weeks; smaller and killed food first, every third day, out again on the next."
  }

  figure "fast-alarm" {
    value  = "90 days"
    stages = ["adult"]
    seen   = "2026-11-28"
    note   = "Common practice is 90 to 180 days. Before a moult it fasts for days to months (K83)."
  }

  figure "refusal-pause" {
    value  = "3 days"
    stages = ["young"]
    source = ["P11"]
    seen   = "2026-11-28"
    note   = "Young that starve die (P11, of Rhopalurus rochai): the pause is short, and then a smaller item is offered, killed. The figure is common practice."
  }

  figure "prey-mass-share" {
    value  = "35 %"
    stages = ["young"]
    source = ["P23"]
    note   = "On Theraphosa spiderlings prey of 25 to 35 % of the mass was as good as 45 to 55 %."
  }

  figure "prey-length-share" {
    value  = "50 %"
    source = ["K80"]
    note   = "Not longer than the abdomen (K80), taken here as half of the body."
  }

  figure "items-a-week" {
    value   = "1 to 2"
    stages  = ["adult"]
    source  = ["K82"]
    quality = "keeper"
  }

  figure "unattended" {
    value    = "3 days"
    stages   = ["young", "juvenile"]
    disputed = "juveniles 5 days (common practice)"
  }

  figure "unattended" {
    value  = "7 days"
    stages = ["subadult", "adult"]
    source = ["S37b", "S36b"]
    seen   = "2026-11-28"
    note   = "10 days with a second dish. A week (S37b), one to two weeks (S36b)."
  }

  figure "mites-clear" {
    value = "30 days"
    seen  = "2026-11-28"
    note  = "Of clean looks each week."
  }

  figure "substrate-change" {
    value    = "6 to 12 months"
    source   = ["K62"]
    disputed = "4 to 6 months (K62)"
    note     = "For a dry set-up; common practice."
  }

  figure "venom" {
    value   = "mild"
    source  = ["K77"]
    quality = "keeper"
    note    = "As a bee sting."
  }

  figure "hairs" {
    value   = "thrown"
    source  = ["K77"]
    quality = "keeper"
    note    = "Eyes and airways are at risk. Rinse eyes with water and do not rub; see an eye doctor if the pain stays."
  }

  figure "cites" {
    value   = "II"
    source  = ["P53", "G3"]
    quality = "paper"
    note    = "The whole genus since 1995 (P53); B. smithi since 1985 (from memory)."
  }

  figure "law" {
    value   = "IUCN Vulnerable. Keep the paper that proves the origin."
    source  = ["G3", "K87"]
    quality = "keeper"
  }

  figure "climate-origin" {
    value   = "Shaded scrub, not desert: Colima, Jalisco, Michoacan."
    source  = ["K76", "K79"]
    quality = "keeper"
  }

  figure "sexing" {
    value  = "Adult males have bulbs on the palps and hooks on the first legs (K85); before that by the shed skin."
    source = ["K85"]
  }

  figure "metabolic-kin" {
    value  = "tarantula"
    source = ["P21"]
    note   = "Measured on Euathlus truculentus."
  }

  state "gravid" {
    care   = "dish, clean"
    manner = "usual"
    words  = "look first"
    rule   = "look first: a sac? do nothing, log laid"
    seen   = "2026-11-28"
  }

  state "sac" {
    care     = "live, killed"
    manner   = "held"
    rule     = "water through the hatch, no food, no misting, lift nothing"
    source   = ["N14", "N16"]
    seen     = "2026-11-28"
    disputed = "usually she goes on eating, and some keep food from her only so that insects do not disturb the sac (N15)"
    note     = "Nothing until the sac is away, then on the third day."
  }

  state "sac" {
    care   = "mist"
    manner = "held"
    seen   = "2026-11-28"
  }

  need "look" {
    longest = "1 day"
  }

  need "water" {
    longest = "2 days"
    note    = "A dish is never empty: it is refilled within two days."
  }

  need "moisture" {
    stages  = ["young"]
    longest = "4 days"
    note    = "Spiderlings drink from damp substrate."
  }

  need "food" {
    stages   = ["young"]
    longest  = "7 days"
    shortest = "3 days"
    source   = ["K80", "P24"]
    note     = "Spiderlings every 3 to 4 days is common practice."
  }

  need "food" {
    stages   = ["juvenile"]
    longest  = "14 days"
    shortest = "4 days"
    source   = ["K80", "P24"]
    note     = "K80 feeds juveniles every 4 to 5 days. Phormictopus juveniles lived on one meal in 30 days (P24)."
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "21 days"
    shortest = "7 days"
    severity = "caution"
    source   = ["K80", "K82"]
    note     = "Every 7 to 10 days (K80), 7 to 14 in common practice."
  }

  need "leftovers" {
    longest = "1 day"
    source  = ["K82"]
    quality = "keeper"
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

  care "moisten" {
    task    = "Dampen one end of the substrate"
    stages  = ["young"]
    every   = "3 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "10 days"
    per_animal = 1
    prey       = "cricket medium"
    source     = ["K80"]
    quality    = "practice"
    seen       = "2026-11-25"
  }
}
