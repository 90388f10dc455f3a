species "damon-diadema" {
  title    = "Tanzanian whip spider"
  latin    = "Damon diadema (Simon, 1876)"
  family   = "Phrynichidae"
  type     = "whip-spider"
  also     = ["tailless whip scorpion", "whip spider"]
  mistaken = ["Damon variegatus", "Euphrynichus bacillifer"]
  note     = "Often sold as Damon variegatus; two thorns beneath the trochanter of the palp point to diadema (K23). D. medioventris is the West African one (from memory)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-25"

  substrate_depth_advised = "5 to 8 cm"

  stage "newborn" {
    instars = "1"
    note    = "On the mother, before the first moult."
    source  = ["memory"]
    quality = "memory"
  }

  stage "young" {
    instars = "2 to 3"
    note    = "Six to eight moults are remembered, seven are taken here."
    source  = ["memory"]
    quality = "memory"
  }

  stage "juvenile" {
    instars = "4 to 6"
    note    = "Six to eight moults are remembered, seven are taken here."
    source  = ["memory"]
    quality = "memory"
  }

  stage "subadult" {
    instars = "7"
    note    = "Six to eight moults are remembered, seven are taken here."
    source  = ["memory"]
    quality = "memory"
  }

  stage "adult" {
    instars = "8"
    note    = "Six to eight moults are remembered, seven are taken here."
    source  = ["memory"]
    quality = "memory"
  }

  figure "temperature-hard" {
    value   = "15 to 32 C"
    source  = ["memory"]
    quality = "memory"
  }

  figure "temperature-soft" {
    value   = "20 to 30 C"
    source  = ["memory"]
    quality = "memory"
    note    = "A margin around the target."
  }

  figure "temperature-target" {
    value   = "22 to 28 C"
    source  = ["memory"]
    quality = "memory"
    note    = "23 to 28 C as remembered; no source text was visible."
  }

  figure "air" {
    value   = "20 to 28 C"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-28"
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
    value   = "60 to 90 %"
    source  = ["memory"]
    quality = "memory"
    note    = "A margin around the target."
  }

  figure "humidity-target" {
    value   = "70 to 85 %"
    source  = ["memory"]
    quality = "memory"
    note    = "No source text was visible."
  }

  figure "moisture" {
    value  = "damp"
    source = ["K23"]
  }

  figure "substrate-depth-min" {
    value    = "4 cm"
    disputed = "5 to 8 cm of moist coir or soil (common practice)"
  }

  figure "floor-first" {
    value  = "900 cm2"
    stages = ["subadult", "adult"]
    note   = "30 x 30 cm, 45 cm high."
  }

  figure "volume-first" {
    value  = "40 L"
    stages = ["subadult", "adult"]
  }

  figure "floor-further" {
    value = "300 cm2"
    note  = "45 x 45 cm for a group of four or so; our arithmetic."
  }

  figure "height-min" {
    value   = "40 cm"
    stages  = ["subadult", "adult"]
    source  = ["memory"]
    quality = "memory"
    note    = "Twice the span of the walking legs, three body lengths at the least."
  }

  figure "keeping" {
    value   = "groups of one male"
    source  = ["OP1", "K70", "K22"]
    quality = "paper"
    seen    = "2026-11-28"
    note    = "A mother and her young get on in a group until they are mature, then they fight (OP1): young stay together, of grown males one stays. Males fight (K70). Large groups in the wild (K22)."
  }

  figure "lifestyle" {
    value   = "bark"
    source  = ["K23"]
    quality = "society"
    note    = "Cave mouths, tree hollows, forest. Bark at 45 degrees or steeper, with room below to hang."
  }

  figure "climbs" {
    value = "seams"
    note  = "Bark well, smooth glass poorly or not at all."
  }

  figure "lid" {
    value = "latched"
    note  = "A lid that fits all round."
  }

  figure "gap-max" {
    value  = "1.5 mm"
    stages = ["newborn", "young"]
    note   = "Small young pass a mesh of 2 mm."
  }

  figure "hangs-to-moult" {
    value   = "true"
    source  = ["K71"]
    quality = "keeper"
    note    = "Head down from bark or the roof. Without a place to hang, or disturbed, it dies (common practice)."
  }

  figure "moults-as-adult" {
    value   = "true"
    source  = ["P32", "memory"]
    quality = "memory"
    note    = "Charinus guto, of another family, does (P32)."
  }

  figure "drinks" {
    value = "droplets"
    note  = "And from a shallow dish."
  }

  figure "span" {
    value    = "15 to 19 cm"
    stages   = ["adult"]
    source   = ["K69"]
    disputed = "17 to 19 cm, at most 25 cm, of Damon variegatus (K69), 58 cm claimed (K22)"
  }

  figure "length" {
    value    = "28 mm"
    stages   = ["adult"]
    source   = ["K23"]
    quality  = "society"
    disputed = "25 to 50 mm (K22); leg span 17 to 19 cm, 25 cm at the most (K69)"
    note     = "The body, at the most; leg span 15 to 25 cm."
  }

  figure "mass" {
    value   = "2 to 5 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "moults-to-adult" {
    value   = "6 to 8"
    source  = ["memory"]
    quality = "memory"
  }

  figure "age-at-maturity" {
    value   = "12 to 18 months"
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "6 to 10 years"
    source   = ["K22", "memory"]
    quality  = "memory"
    disputed = "10 to 15 years as a guess, one female about 6 (K22), 5 to 8 (from memory)"
  }

  figure "sac-time" {
    value   = "60 to 100 days"
    source  = ["P32", "memory"]
    quality = "memory"
    seen    = "2026-11-28"
    note    = "Three months as remembered; Charinus guto 59 days (P32)."
  }

  figure "brood-size" {
    value   = "20 to 50"
    source  = ["memory"]
    quality = "memory"
    note    = "Carried as eggs in a sac below the body (K22) for three months (from memory); Charinus guto 59 days (P32)."
  }

  figure "on-mother" {
    value    = "7 to 14 days"
    source   = ["memory"]
    quality  = "memory"
    disputed = "10 days in Charinus guto (P32)"
  }

  figure "separation" {
    value = "keep with mother"
    note  = "Young stay where food is plenty, until they are mature (OP1)."
  }

  figure "undisturbed" {
    value  = "14 days"
    source = ["P32"]
    seen   = "2026-11-28"
    note   = "From hatching. In Charinus guto the young ride for 10 days (P32); one that falls off before is lost (from memory). Before, from the laying on, she is left alone with the sac."
  }

  figure "wait-after-moult" {
    value  = "5 days"
    stages = ["young", "juvenile"]
    note   = "As small spiders and scorpions."
  }

  figure "wait-after-moult" {
    value  = "7 days"
    stages = ["subadult", "adult"]
    source = ["K71"]
    note   = "Its colour is normal in about 36 hours (K71); the figure is common practice."
  }

  figure "fast-look" {
    value  = "7 days"
    stages = ["young"]
    seen   = "2026-11-28"
  }

  figure "fast-alarm" {
    value  = "7 days"
    stages = ["young"]
    seen   = "2026-11-28"
    note   = "Young that starve die within weeks; smaller and killed food first, every third day, out again on the next."
  }

  figure "fast-alarm" {
    value  = "30 days"
    stages = ["juvenile"]
    seen   = "2026-11-28"
  }

  figure "fast-alarm" {
    value  = "60 days"
    stages = ["adult"]
    seen   = "2026-11-28"
    note   = "As scorpions."
  }

  figure "refusal-pause" {
    value  = "3 days"
    stages = ["young"]
    source = ["P11"]
    seen   = "2026-11-28"
    note   = "Young that starve die (P11, of Rhopalurus rochai): the pause is short, and then a smaller item is offered, killed. The figure is common practice."
  }

  figure "items-a-week" {
    value  = "1"
    stages = ["adult"]
  }

  figure "items-a-week" {
    value  = "2"
    stages = ["young"]
  }

  figure "unattended" {
    value  = "7 days"
    stages = ["subadult", "adult"]
    seen   = "2026-11-28"
    note   = "10 days with a second dish."
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
    value  = "4 to 6 months"
    source = ["K62"]
    note   = "For a damp set-up without springtails; K62 says it of a tarantula tank."
  }

  figure "venom" {
    value   = "none"
    source  = ["K72"]
    quality = "keeper"
  }

  figure "defence" {
    value   = "Thorns on the palps can prick."
    source  = ["K72"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Cave mouths, tree hollows, rain forest to savanna in Kenya and Tanzania."
    source  = ["K23"]
    quality = "society"
  }

  figure "sexing" {
    value   = "From instar 4 the male's palps grow faster (K23); certain at about 25 mm, when the male's \"elbow\" passes the first joint of the walking legs (K22)."
    source  = ["K22", "K23"]
    quality = "keeper"
  }

  state "gravid" {
    care   = "dish, clean"
    manner = "usual"
    words  = "look first"
    rule   = "look first: a sac under her? do nothing, log laid"
    seen   = "2026-11-28"
  }

  state "sac" {
    care   = "killed"
    manner = "hatch"
    words  = "one small item at the far end"
    every  = "14 days"
    rule   = "water through the hatch, a small killed item every two weeks, lift nothing"
    seen   = "2026-11-28"
    note   = "She eats little with a sac."
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
    note    = "It drinks droplets. No mist on a moulting animal."
  }

  need "food" {
    stages  = ["young"]
    longest = "7 days"
  }

  need "food" {
    stages  = ["juvenile"]
    longest = "10 days"
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "21 days"
    shortest = "3 days"
    severity = "caution"
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

  care "mist" {
    task    = "Mist the bark, not the animals"
    every   = "2 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket pinhead"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }
}
