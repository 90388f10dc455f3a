species "theraphosa-blondi" {
  title  = "goliath birdeater"
  latin  = "Theraphosa blondi (Latreille, 1804)"
  family = "Theraphosidae"
  also   = ["goliath tarantula", "burgundy goliath birdeater", "Theraphosa stirmi"]
  former = ["Theraphosa leblondi"]
  note   = "The sheet serves blondi and stirmi. Theraphosa stirmi was described from Guyana in 2010 and is most of the trade (K28)."

  stage "newborn" {
    note    = "In the egg sac, before it feeds."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  stage "young" {
    note    = "Spiderlings. Sizes and numbers of moults differ too much between sexes to count instars."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  stage "juvenile" {
    note    = "Half grown, sex not yet plain. Sizes and numbers of moults differ too much between sexes to count instars."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  stage "subadult" {
    note    = "One moult before maturity. Sizes and numbers of moults differ too much between sexes to count instars."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  stage "adult" {
    note    = "Males at the last moult, with bulbs and hooks; females by size, and they go on moulting."
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "temperature-hard" {
    value    = "18 to 32 C"
    source   = ["K26"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "a breeder cooled to 18 C in winter and warmed to 29 to 35 C from March (K26)"
  }

  figure "temperature-soft" {
    value   = "21 to 30 C"
    source  = ["K88", "K25"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Our margin around the target; no source."
  }

  figure "temperature-target" {
    value    = "24 to 28 C"
    source   = ["K27"]
    quality  = "keeper"
    seen     = "2026-11-25"
    disputed = "23 to 26 C (K88), 27 to 29 C (K25)"
  }

  figure "air" {
    value   = "21 to 28 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Below 21 C is undesirable for kinds of lowland rain forest."
  }

  figure "rest" {
    value   = "none"
    source  = ["K26"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "A breeder cooled to 18 C, and she went on eating (K26): no season without food."
  }

  figure "cooler" {
    value   = "2 to 3 C"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "humidity-soft" {
    value   = "65 to 90 %"
    source  = ["K88"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Our margin around the target; no source."
  }

  figure "humidity-target" {
    value    = "75 to 85 %"
    source   = ["K27", "K88"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "70 % (K88), a daily spray (K25)"
  }

  figure "humidity-premoult" {
    value   = "80 to 90 %"
    source  = ["K27"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "80 % and more (K27), with moving air."
  }

  figure "moisture" {
    value   = "damp"
    source  = ["K25", "K88"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "ventilation" {
    value   = "cross"
    source  = ["K25"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Well ventilated (K25); the openings are common practice."
  }

  figure "substrate-depth-min" {
    value    = "15 cm"
    source   = ["K25"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "10 cm of moist peat (K88), 10 to 15 cm (K25), very deep (K89), 5 cm with regret (K26)"
  }

  figure "floor-first" {
    value    = "2000 cm2"
    stages   = ["subadult", "adult"]
    source   = ["K25"]
    quality  = "society"
    seen     = "2026-11-25"
    disputed = "1200 cm2 (K88), 2400 cm2 (K26)"
    note     = "50 x 40 cm."
  }

  figure "floor-first" {
    value   = "600 cm2"
    stages  = ["juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Three by two leg spans of 10 cm."
  }

  figure "floor-first" {
    value   = "100 cm2"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Three by two leg spans of 4 cm."
  }

  figure "fall-max" {
    value   = "25 cm"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Between substrate and lid; a fall kills."
  }

  figure "keeping" {
    value   = "alone"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["K25"]
    quality = "society"
    seen    = "2026-11-25"
    note    = "It takes over rodent holes rather than digs."
  }

  figure "climbs" {
    value   = "seams"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "lid" {
    value   = "latched"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "hangs-to-moult" {
    value   = "false"
    source  = ["K62"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "Tarantulas turn on their backs; do not touch it."
  }

  figure "moults-as-adult" {
    value   = "true"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "Females do."
  }

  figure "drinks" {
    value   = "dish"
    source  = ["K25"]
    quality = "society"
    seen    = "2026-11-25"
    note    = "A large bowl, with no cotton in it."
  }

  figure "heater-not" {
    value   = "under"
    source  = ["K3"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Said of burrowing scorpions; common practice for burrowing spiders too."
  }

  figure "length" {
    value    = "10 cm"
    stages   = ["adult"]
    source   = ["K25"]
    quality  = "society"
    seen     = "2026-11-25"
    disputed = "span 25 to 30 cm (K27)"
    note     = "Body, about; leg span 25 to 28 cm."
  }

  figure "mass" {
    value   = "100 to 175 g"
    stages  = ["adult"]
    source  = ["K88", "K28"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "Over 100 g (K88); the record in captivity is 175 g (K28)."
  }

  figure "age-at-maturity" {
    value   = "3 to 5 years"
    source  = ["K27"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "lifespan" {
    value    = "15 to 25 years"
    source   = ["K89"]
    quality  = "keeper"
    seen     = "2026-11-25"
    disputed = "to 25 (K27), 14 years (K88)"
    note     = "Females; males 3 to 6 years (K89)."
  }

  figure "sac-time" {
    value   = "6 to 8 weeks"
    source  = ["N17"]
    quality = "society"
    seen    = "2026-11-28"
  }

  figure "sac-decide" {
    value   = "35 to 42 days"
    source  = ["N15"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Left with her it is torn open at about six weeks (N15, which does not say of what genus)."
  }

  figure "after-sac" {
    value   = "3 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "brood-size" {
    value    = "50 to 200"
    source   = ["N17"]
    quality  = "society"
    seen     = "2026-11-28"
    disputed = "about 50 (K88)"
  }

  figure "first-killed" {
    value   = "7 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "After the moult to a spiderling that walks free."
  }

  figure "first-meal" {
    value   = "10 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "7 to 10 days after the moult to a spiderling that walks free."
  }

  figure "wait-after-moult" {
    value   = "4 days"
    stages  = ["young"]
    source  = ["K84"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Common practice is 3 to 5 days for spiderlings. The fangs must be dark (K84)."
  }

  figure "wait-after-moult" {
    value   = "10 days"
    stages  = ["juvenile"]
    source  = ["K84"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "K84 has 10 to 14 days for medium spiders."
  }

  figure "wait-after-moult" {
    value    = "18 days"
    stages   = ["subadult", "adult"]
    source   = ["K84"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "14 to 21 days (K84)"
  }

  figure "handling-wait" {
    value    = "14 days"
    source   = ["K62"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "at least a week (K62)"
  }

  figure "moult-takes" {
    value   = "0.25 to 8 h"
    source  = ["K62"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "K62 has 15 minutes to several hours; the upper figure is common practice."
  }

  figure "premoult-fast" {
    value   = "3 to 21 days"
    stages  = ["young"]
    source  = ["N25a", "N25b"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "At the longest about 45 days. N25a speaks of a week or longer, N25b of a spiderling sealed in for more than a month; the numbers are common practice."
  }

  figure "premoult-fast" {
    value   = "2 to 6 weeks"
    stages  = ["juvenile"]
    source  = ["N25d", "K83"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "At the longest about 3 months. The sources speak of weeks to months; the numbers are common practice."
  }

  figure "premoult-fast" {
    value   = "1 to 3 months"
    stages  = ["subadult"]
    source  = ["N25d", "K83"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "At the longest about 5 months. The sources speak of weeks to months; the numbers are common practice."
  }

  figure "premoult-fast" {
    value   = "1 to 3 months"
    stages  = ["adult"]
    source  = ["N25c", "N25d"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "At the longest about 6 months and more. N25c speaks of two months; the numbers are common practice."
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

  figure "premoult-look" {
    value   = "90 days"
    stages  = ["adult"]
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
    value   = "150 days"
    stages  = ["subadult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "premoult-help" {
    value   = "180 days"
    stages  = ["adult"]
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
    value   = "60 days"
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
    value   = "90 days"
    stages  = ["adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "Common practice is 90 to 180 days."
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
    value   = "180 days"
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
    value   = "35 %"
    stages  = ["young"]
    source  = ["P23"]
    quality = "paper"
    seen    = "2026-11-25"
    note    = "Prey of 25 to 35 % of the body made heavier spiderlings than 5 to 15 %, and 45 to 55 % did not differ much."
  }

  figure "prey-length-share" {
    value   = "50 %"
    source  = ["K80"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Not longer than the abdomen (K80, of the redknee), taken here as half of the body."
  }

  figure "items-a-week" {
    value    = "0.7 to 1"
    stages   = ["adult"]
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "2 to 3 times a week (K88)"
    note     = "One meal in 7 to 10 days."
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
    source  = ["S37b", "S36b"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "10 days with a second dish. A week (S37b), one to two weeks (S36b)."
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
    value   = "5 to 7 days"
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
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "venom" {
    value   = "mild"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "hairs" {
    value   = "thrown"
    source  = ["K25", "K89"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "Type III, among the worst: gloves, eyes and airways covered."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "climate-origin" {
    value   = "Rain forest of northern South America."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "metabolic-kin" {
    value   = "tarantula"
    source  = ["P21"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Measured on Euathlus truculentus."
  }

  state "gravid" {
    care    = "dish, clean"
    manner  = "usual"
    words   = "look first"
    rule    = "look first: a sac? do nothing, log laid"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  state "sac" {
    care     = "live, killed"
    manner   = "held"
    rule     = "water through the hatch, no food, no misting, lift nothing"
    source   = ["N14", "N16"]
    quality  = "practice"
    seen     = "2026-11-28"
    disputed = "usually she goes on eating, and some keep food from her only so that insects do not disturb the sac (N15)"
    note     = "Nothing until the sac is away, then on the third day."
  }

  state "sac" {
    care    = "mist"
    manner  = "held"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
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
    longest = "2 days"
    source  = ["K25"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "K25 sprays daily."
  }

  need "food" {
    stages   = ["young"]
    longest  = "7 days"
    shortest = "3 days"
    source   = ["P23"]
    quality  = "practice"
    seen     = "2026-11-25"
    note     = "Common practice for spiderlings."
  }

  need "food" {
    stages   = ["juvenile"]
    longest  = "14 days"
    shortest = "4 days"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "21 days"
    shortest = "3 days"
    severity = "caution"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "2 to 3 times a week (K88), weekly (common practice)"
    note     = "Evidence for once a week and more often; the limit is common practice."
  }

  need "leftovers" {
    longest = "1 day"
    source  = ["K82"]
    quality = "keeper"
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

  care "moisten" {
    task    = "Water the substrate; leave a dry corner"
    every   = "day"
    source  = ["K25"]
    quality = "society"
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
    quality = "keeper"
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
    every      = "4 days"
    per_animal = 1
    prey       = "cricket small"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket adult"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 2
    prey       = "roach medium"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 1
    prey       = "roach adult"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }
}
