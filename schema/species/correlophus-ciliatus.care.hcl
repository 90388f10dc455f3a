species "correlophus-ciliatus" {
  title    = "crested gecko"
  latin    = "Correlophus ciliatus Guichenot, 1866"
  family   = "Diplodactylidae"
  type     = "tree-gecko"
  also     = ["eyelash gecko", "Kronengecko", "crestie"]
  former   = ["Rhacodactylus ciliatus"]
  mistaken = ["Rhacodactylus auriculatus", "gargoyle gecko"]
  note     = "A room in July is the danger: it is in trouble at 27 C, and not at 35. A tail that flops over its back, lime sacs and toes after a shed are looked at every month. Hatchlings under 5 g are kept at 21 to 23 C, no warmer (OK78), and under twelve weeks in no more than 38 L, or they do not find their food (OK80)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft = "18 to 26.5 C"
  humidity_soft    = "40 to 85 %"
  group_max        = "3"
  hairs            = "none"
  speed            = "quick"

  figure "temperature-hard" {
    value    = "10 to 29.5 C"
    source   = ["OK75", "OK77", "OK81"]
    quality  = "practice"
    disputed = "stress over 27 to 28 C (OK75), stress over 28.5 and death at 29.5 C (OK81), fatal quickly above 29.5 C (OK77)"
  }

  figure "temperature-target" {
    value    = "22 to 25.5 C"
    source   = ["OK75", "OK76"]
    quality  = "keeper"
    disputed = "20 to 26.5 C, 24 to 26.5 in summer and 20 to 24 in winter (OK77); 21 to 25 C (OK79); hot spots of 27 to 28 C (OK81)"
    note     = "No hot spot is needed. No heater (OK79), or a small one with a thermostat (OK77)."
  }

  figure "air" {
    value   = "22 to 25.5 C"
    source  = ["OK75", "OK76"]
    quality = "keeper"
  }

  figure "night" {
    value    = "18 to 21 C"
    source   = ["OK76"]
    quality  = "keeper"
    disputed = "15.5 to 20 C now and then (OK77)"
  }

  figure "rest" {
    value = "none"
    note  = "No cold: see cooler."
  }

  figure "cooler" {
    value   = "2 to 4 C"
    source  = ["OK77", "OK86"]
    quality = "practice"
    note    = "Two to three months at 20 to 22 C, when it eats less; females need the break from laying (OK77, OK86)."
  }

  figure "humidity-target" {
    value   = "50 to 70 %"
    source  = ["OK76", "OK78"]
    quality = "practice"
    note    = "A wet evening and a dry day: the water is gone in 6 to 12 hours (OK76, OK78). Always wet makes bad sheds (OK78)."
  }

  figure "uv-not" {
    value    = "false"
    disputed = "not needed (OK82), a low level is good (OK76), an index of 6 to 8 in the sun of its home and 10 to 20 % of that in shade (OK83)"
    note     = "Optional and useful, by light of 12 hours: an index of 0 to 0.7, as for animals of the shade (OK92). Without a lamp vitamin D3 is in the food; young leopard geckos made it under 33 to 51 uW/cm2 (OP18)."
  }

  figure "floor-first" {
    value   = "900 cm2"
    stages  = ["subadult", "adult"]
    source  = ["OK75", "OK80"]
    quality = "keeper"
    note    = "30 x 30 x 46 cm (OK75, OK80); 45 x 45 x 60 cm is advised. Three have 75 L and a tall box."
  }

  figure "floor-first" {
    value  = "600 cm2"
    stages = ["juvenile"]
    note   = "Our estimate, between a hatchling and a grown one."
  }

  figure "floor-further" {
    value  = "900 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value    = "40 cm"
    stages   = ["subadult", "adult"]
    disputed = "45 cm is better (OK75)"
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["juvenile"]
    note   = "Our estimate, between a hatchling and a grown one."
  }

  figure "gap-max" {
    value  = "3 mm"
    stages = ["young"]
  }

  figure "gap-max" {
    value  = "5 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "keeping" {
    value    = "groups of one male"
    source   = ["OK75", "OK85b"]
    quality  = "keeper"
    disputed = "alone is the default (common practice)"
    note     = "One male to a box, always (OK75, OK85b); a male and two females are possible, never mixed sizes."
  }

  figure "length" {
    value   = "10 to 11.5 cm"
    stages  = ["adult"]
    source  = ["OS19"]
    quality = "society"
    note    = "Snout to vent; 20 cm with the tail."
  }

  figure "mass" {
    value    = "45 to 65 g"
    stages   = ["adult"]
    source   = ["OK79"]
    quality  = "keeper"
    disputed = "breeds from 40 g on (OK84, weak)"
  }

  figure "lifespan" {
    value    = "15 to 20 years"
    source   = ["OS19"]
    quality  = "society"
    disputed = "8 to 20 and more (OK79)"
  }

  figure "age-at-maturity" {
    value    = "12 to 18 months"
    disputed = "breeds at 24 months (OK84, weak)"
  }

  figure "sac-time" {
    value    = "60 to 120 days"
    source   = ["OK86"]
    quality  = "practice"
    disputed = "60 to 70 days at 24 to 27 C, 90 to 120 at 20 to 23 C (OK84, weak), 60 to 90 (OK86)"
  }

  figure "brood-size" {
    value    = "2"
    source   = ["OK86"]
    quality  = "keeper"
    disputed = "every 25 to 40 days, 7 to 9 clutches, then 10 to 12 weeks off (OK84, weak)"
    note     = "Every 4 to 6 weeks for 8 to 10 months; sperm is stored, and infertile eggs come without a male too. Hatchlings eat after their first shed (OK86)."
  }

  figure "venom" {
    value = "none"
  }

  figure "defence" {
    value   = "It jumps, and drops its tail, which does not grow again (OK85b). Wash hands: salmonella."
    source  = ["OK85b"]
    quality = "practice"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    note    = "Not found in it: look it up. A veterinary text takes the list of IUCN for CITES."
  }

  figure "law" {
    value   = "New Caledonia protects it: look up export, and have a proof that yours was bred."
    source  = ["OK79"]
    quality = "practice"
  }

  figure "climate-origin" {
    value   = "Cool wet forest of New Caledonia."
    source  = ["OK97"]
    quality = "practice"
  }

  figure "sexing" {
    value   = "At five to nine months."
    source  = ["OS19"]
    quality = "society"
  }

  need "food" {
    longest = "3 days"
    stages  = ["subadult", "adult"]
  }

  care "diet" {
    kind    = "leaves"
    task    = "Powder diet mixed fresh; out within 24 hours"
    every   = "2 days"
    stages  = ["juvenile", "subadult", "adult"]
    because = "three evenings a week (OK79)"
  }

  care "diet-young" {
    kind   = "leaves"
    task   = "Powder diet mixed fresh; the old out"
    every  = "day"
    stages = ["young"]
  }

  care "weigh" {
    every  = "30 days"
    stages = ["juvenile", "subadult", "adult"]
  }

  care "lime-sacs" {
    kind    = "other"
    task    = "Tail straight? Toes clean? Lime sacs in the palate of laying females: empty is for a veterinarian"
    every   = "30 days"
    because = "empty, it shakes, wobbles and dies (OK86)"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 2
    prey       = "cricket pinhead"
    gut_load   = true
    dusted     = true
    because    = "No longer than the head is wide."
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "4 days"
    per_animal = 2
    prey       = "cricket small"
    gut_load   = true
    dusted     = true
    because    = "No longer than the head is wide."
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 2
    prey       = "cricket medium"
    gut_load   = true
    dusted     = true
    because    = "No longer than the head is wide. The powder diet is the food and has its calcium; vitamin D3 with every second or third dusting where there is no lamp."
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "7 days"
    per_animal = 2
    prey       = "cricket medium"
    gut_load   = true
    dusted     = true
    because    = "No longer than the head is wide. The powder diet is the food and has its calcium; vitamin D3 with every second or third dusting where there is no lamp."
  }
}
