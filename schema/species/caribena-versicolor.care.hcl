species "caribena-versicolor" {
  title    = "Antilles pinktoe tarantula"
  latin    = "Caribena versicolor (Walckenaer, 1837)"
  family   = "Theraphosidae"
  type     = "arboreal-tarantula"
  also     = ["Martinique pinktoe", "matoutou falaise"]
  former   = ["Avicularia versicolor"]
  mistaken = ["Avicularia avicularia", "Ybyrapora diversipes"]
  note     = "Avicularia versicolor until 2017 (K30). Blue spiderlings turn green, red and purple (K90)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-25"

  keeping        = "alone"
  hangs_to_moult = "false"

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
    value  = "15 to 33 C"
    source = ["K30"]
    note   = "The target is from K30; the limits are common practice."
  }

  figure "temperature-soft" {
    value  = "20 to 30 C"
    source = ["K30"]
    note   = "Our margin around the target; no source."
  }

  figure "temperature-target" {
    value    = "22 to 28 C"
    source   = ["K30"]
    disputed = "23 to 28 C (K30)"
  }

  figure "air" {
    value = "20 to 28 C"
    seen  = "2026-11-28"
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
    value  = "45 to 80 %"
    source = ["K30", "K31"]
    note   = "Our margin around the target; no source."
  }

  figure "humidity-target" {
    value    = "55 to 75 %"
    source   = ["K30", "K31"]
    disputed = "65 to 70 % (K30), mostly dry with a dish (K31)"
    note     = "Moving air matters more than the figure: wet still air kills spiderlings (K29, K92, K93)."
  }

  figure "moisture" {
    value  = "either"
    source = ["K31", "K29"]
  }

  figure "ventilation" {
    value   = "cross"
    source  = ["K29"]
    quality = "keeper"
  }

  figure "substrate-depth-min" {
    value    = "2 cm"
    disputed = "thin, mostly dry, 3 to 5 cm (common practice)"
  }

  figure "floor-first" {
    value   = "400 cm2"
    stages  = ["subadult", "adult"]
    source  = ["K31"]
    quality = "keeper"
    note    = "20 x 20 cm, 30 cm high."
  }

  figure "floor-first" {
    value  = "100 cm2"
    stages = ["juvenile"]
  }

  figure "floor-first" {
    value  = "25 cm2"
    stages = ["young"]
  }

  figure "volume-first" {
    value   = "12 L"
    stages  = ["subadult", "adult"]
    source  = ["K31"]
    quality = "keeper"
  }

  figure "height-min" {
    value   = "30 cm"
    stages  = ["subadult", "adult"]
    source  = ["K31"]
    quality = "keeper"
  }

  figure "lifestyle" {
    value   = "tree"
    source  = ["K31", "K29"]
    quality = "keeper"
    note    = "A cork tube and foliage up high."
  }

  figure "climbs" {
    value   = "glass"
    source  = ["K90"]
    quality = "society"
    note    = "Glass and wet smooth surfaces; it jumps (K29)."
  }

  figure "lid" {
    value = "latched"
    note  = "Fits all round."
  }

  figure "moults-as-adult" {
    value   = "true"
    source  = ["memory"]
    quality = "memory"
    note    = "Females do."
  }

  figure "drinks" {
    value   = "dish"
    source  = ["K29", "K31"]
    quality = "keeper"
    note    = "Spiderlings from droplets or damp moss (K29)."
  }

  figure "looks" {
    value   = "Blue."
    stages  = ["young"]
    source  = ["K90"]
    quality = "society"
  }

  figure "looks" {
    value   = "Green, red and purple."
    stages  = ["adult"]
    source  = ["K90"]
    quality = "society"
  }

  figure "length" {
    value    = "5 to 7 cm"
    stages   = ["adult"]
    source   = ["K30"]
    quality  = "keeper"
    disputed = "leg span 10 to 14 cm (K91), 15 cm (K29), 15 to 16 cm (K30), 18 cm (K90), 20 cm (G5)"
    note     = "Body; leg span 12 to 15 cm."
  }

  figure "mass" {
    value   = "8 to 20 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    note    = "As spiders of its size; weigh your own."
  }

  figure "lifespan" {
    value   = "12 years"
    source  = ["K29"]
    quality = "keeper"
    note    = "Females, about; males 3 to 4 years."
  }

  figure "sac-time" {
    value   = "5 to 8 weeks"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-28"
  }

  figure "sac-decide" {
    value  = "35 to 42 days"
    source = ["N15"]
    seen   = "2026-11-28"
    note   = "Left with her it is torn open at about six weeks (N15, which does not say of what genus)."
  }

  figure "brood-size" {
    value   = "80 to 150"
    source  = ["memory"]
    quality = "memory"
    note    = "In a sac for 5 to 8 weeks."
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
    note   = "3 to 5 days for spiderlings."
  }

  figure "wait-after-moult" {
    value   = "7 days"
    stages  = ["juvenile", "subadult", "adult"]
    source  = ["K84"]
    quality = "keeper"
    note    = "K84 has 7 to 10 days for small and tree-living species."
  }

  figure "handling-wait" {
    value    = "14 days"
    source   = ["K62"]
    disputed = "at least a week (K62)"
  }

  figure "moult-takes" {
    value  = "0.25 to 8 h"
    source = ["K62"]
    seen   = "2026-11-28"
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
    value  = "35 %"
    stages = ["young"]
    source = ["P23"]
    note   = "On Theraphosa spiderlings."
  }

  figure "prey-length-share" {
    value  = "50 %"
    source = ["K80"]
    note   = "Not longer than the abdomen (K80, of the redknee), taken here as half of the body."
  }

  figure "unattended" {
    value  = "7 days"
    stages = ["subadult", "adult"]
    source = ["S37b", "S36b"]
    seen   = "2026-11-28"
    note   = "10 days with a second dish. A week (S37b), one to two weeks (S36b)."
  }

  figure "unattended" {
    value  = "2 days"
    stages = ["young"]
    seen   = "2026-11-28"
    note   = "It drinks what is sprayed."
  }

  figure "unattended" {
    value    = "3 days"
    stages   = ["juvenile"]
    seen     = "2026-11-28"
    disputed = "5 days (common practice)"
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
    source  = ["K30"]
    quality = "keeper"
  }

  figure "hairs" {
    value   = "contact"
    source  = ["memory"]
    quality = "memory"
    note    = "As the kin in Avicularia."
  }

  figure "cites" {
    value   = "III"
    source  = ["G4"]
    quality = "guideline"
    note    = "Listed by France: announced in June 2022, in force from the last quarter of 2022. France issues no export permits."
  }

  figure "law" {
    value    = "France: protected in Martinique since 9 November 1995 and everywhere since the order of 3 August 2017 (G5). European Union Annex C as remembered. Keep the paper that proves the origin."
    source   = ["G4", "G5", "memory"]
    quality  = "memory"
    disputed = "IUCN Endangered (K90); not threatened with extinction at present (G4)"
  }

  figure "climate-origin" {
    value   = "Martinique, on trees."
    source  = ["G5", "K90"]
    quality = "society"
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
    stages  = ["young", "juvenile"]
    longest = "4 days"
    source  = ["K29"]
    note    = "Spiderlings are misted twice a week."
  }

  need "food" {
    stages   = ["young"]
    longest  = "7 days"
    shortest = "3 days"
  }

  need "food" {
    stages   = ["juvenile"]
    longest  = "14 days"
    shortest = "4 days"
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "21 days"
    shortest = "5 days"
    severity = "caution"
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
    task    = "Mist lightly; all dry again by the next day"
    stages  = ["young", "juvenile"]
    every   = "3 days"
    source  = ["K29"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  care "mist" {
    stages  = ["newborn", "subadult", "adult"]
    off     = true
    because = "grown ones drink from the dish, and wet still air is the risk"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "4 days"
    per_animal = 1
    rotate     = ["cricket pinhead", "fruit-fly hydei"]
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }
}
