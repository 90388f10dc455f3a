species "theraphosa-blondi" {
  title    = "goliath birdeater"
  latin    = "Theraphosa blondi (Latreille, 1804)"
  family   = "Theraphosidae"
  type     = "humid-terrestrial-tarantula"
  also     = ["goliath tarantula", "burgundy goliath birdeater"]
  former   = ["Theraphosa leblondi"]
  mistaken = ["Theraphosa stirmi"]
  note     = "Theraphosa stirmi, described from Guyana in 2010, is most of the trade (K28) and another species: this is the nearest sheet to it that there is."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-25"

  keeping = "alone"
  climbs  = "seams"

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
    value    = "18 to 32 C"
    source   = ["K26"]
    disputed = "a breeder cooled to 18 C in winter and warmed to 29 to 35 C from March (K26)"
  }

  figure "temperature-soft" {
    value  = "21 to 30 C"
    source = ["K88", "K25"]
    note   = "Our margin around the target; no source."
  }

  figure "temperature-target" {
    value    = "24 to 28 C"
    source   = ["K27"]
    quality  = "keeper"
    disputed = "23 to 26 C (K88), 27 to 29 C (K25)"
  }

  figure "air" {
    value = "21 to 28 C"
    seen  = "2026-11-28"
    note  = "Below 21 C is undesirable for kinds of lowland rain forest."
  }

  figure "rest" {
    value  = "none"
    source = ["K26"]
    seen   = "2026-11-28"
    note   = "A breeder cooled to 18 C, and she went on eating (K26): no season without food."
  }

  figure "cooler" {
    value = "2 to 3 C"
    seen  = "2026-11-28"
  }

  figure "humidity-soft" {
    value  = "65 to 90 %"
    source = ["K88"]
    note   = "Our margin around the target; no source."
  }

  figure "humidity-target" {
    value    = "75 to 85 %"
    source   = ["K27", "K88"]
    disputed = "70 % (K88), a daily spray (K25)"
  }

  figure "humidity-premoult" {
    value  = "80 to 90 %"
    source = ["K27"]
    note   = "80 % and more (K27), with moving air."
  }

  figure "moisture" {
    value   = "damp"
    source  = ["K25", "K88"]
    quality = "keeper"
  }

  figure "ventilation" {
    value  = "cross"
    source = ["K25"]
    note   = "Well ventilated (K25); the openings are common practice."
  }

  figure "substrate-depth-min" {
    value    = "15 cm"
    source   = ["K25"]
    disputed = "10 cm of moist peat (K88), 10 to 15 cm (K25), very deep (K89), 5 cm with regret (K26)"
  }

  figure "floor-first" {
    value    = "2000 cm2"
    stages   = ["subadult", "adult"]
    source   = ["K25"]
    quality  = "society"
    disputed = "1200 cm2 (K88), 2400 cm2 (K26)"
    note     = "50 x 40 cm."
  }

  figure "floor-first" {
    value  = "600 cm2"
    stages = ["juvenile"]
    note   = "Three by two leg spans of 10 cm."
  }

  figure "floor-first" {
    value  = "100 cm2"
    stages = ["young"]
    note   = "Three by two leg spans of 4 cm."
  }

  figure "fall-max" {
    value = "25 cm"
    note  = "Between substrate and lid; a fall kills."
  }

  figure "lifestyle" {
    value   = "burrower"
    source  = ["K25"]
    quality = "society"
    note    = "It takes over rodent holes rather than digs."
  }

  figure "hangs-to-moult" {
    value   = "false"
    source  = ["K62"]
    quality = "keeper"
    note    = "Tarantulas turn on their backs; do not touch it."
  }

  figure "moults-as-adult" {
    value   = "true"
    source  = ["memory"]
    quality = "memory"
    note    = "Females do."
  }

  figure "drinks" {
    value   = "dish"
    source  = ["K25"]
    quality = "society"
    note    = "A large bowl, with no cotton in it."
  }

  figure "heater-not" {
    value  = "under"
    source = ["K3"]
    note   = "Said of burrowing scorpions; common practice for burrowing spiders too."
  }

  figure "length" {
    value    = "10 cm"
    stages   = ["adult"]
    source   = ["K25"]
    quality  = "society"
    disputed = "span 25 to 30 cm (K27)"
    note     = "Body, about; leg span 25 to 28 cm."
  }

  figure "mass" {
    value   = "100 to 175 g"
    stages  = ["adult"]
    source  = ["K88", "K28"]
    quality = "keeper"
    note    = "Over 100 g (K88); the record in captivity is 175 g (K28)."
  }

  figure "age-at-maturity" {
    value   = "3 to 5 years"
    source  = ["K27"]
    quality = "keeper"
  }

  figure "lifespan" {
    value    = "15 to 25 years"
    source   = ["K89"]
    quality  = "keeper"
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
    value  = "35 to 42 days"
    source = ["N15"]
    seen   = "2026-11-28"
    note   = "Left with her it is torn open at about six weeks (N15, which does not say of what genus)."
  }

  figure "brood-size" {
    value    = "50 to 200"
    source   = ["N17"]
    quality  = "society"
    seen     = "2026-11-28"
    disputed = "about 50 (K88)"
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
    value  = "10 days"
    stages = ["juvenile"]
    source = ["K84"]
    note   = "K84 has 10 to 14 days for medium spiders."
  }

  figure "wait-after-moult" {
    value    = "18 days"
    stages   = ["subadult", "adult"]
    source   = ["K84"]
    disputed = "14 to 21 days (K84)"
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
    note   = "Common practice is 90 to 180 days."
  }

  figure "refusal-pause" {
    value  = "3 days"
    stages = ["young"]
    source = ["P11"]
    seen   = "2026-11-28"
    note   = "Young that starve die (P11, of Rhopalurus rochai): the pause is short, and then a smaller item is offered, killed. The figure is common practice."
  }

  figure "prey-mass-share" {
    value   = "35 %"
    stages  = ["young"]
    source  = ["P23"]
    quality = "paper"
    note    = "Prey of 25 to 35 % of the body made heavier spiderlings than 5 to 15 %, and 45 to 55 % did not differ much."
  }

  figure "prey-length-share" {
    value  = "50 %"
    source = ["K80"]
    note   = "Not longer than the abdomen (K80, of the redknee), taken here as half of the body."
  }

  figure "items-a-week" {
    value    = "0.7 to 1"
    stages   = ["adult"]
    disputed = "2 to 3 times a week (K88)"
    note     = "One meal in 7 to 10 days."
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
    value   = "4 to 6 months"
    source  = ["K62"]
    quality = "keeper"
  }

  figure "venom" {
    value   = "mild"
    source  = ["memory"]
    quality = "memory"
  }

  figure "hairs" {
    value   = "thrown"
    source  = ["K25", "K89"]
    quality = "keeper"
    note    = "Type III, among the worst: gloves, eyes and airways covered."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Rain forest of northern South America."
    source  = ["memory"]
    quality = "memory"
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
    longest = "2 days"
    source  = ["K25"]
    note    = "K25 sprays daily."
  }

  need "food" {
    stages   = ["young"]
    longest  = "7 days"
    shortest = "3 days"
    source   = ["P23"]
    note     = "Common practice for spiderlings."
  }

  need "food" {
    stages   = ["juvenile"]
    longest  = "14 days"
    shortest = "4 days"
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "21 days"
    shortest = "3 days"
    severity = "caution"
    disputed = "2 to 3 times a week (K88), weekly (common practice)"
    note     = "Evidence for once a week and more often; the limit is common practice."
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

  care "mist" {
    off     = true
    because = "the substrate is watered daily"
  }

  care "moisten" {
    task    = "Water the substrate; leave a dry corner"
    every   = "day"
    source  = ["K25"]
    quality = "society"
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
