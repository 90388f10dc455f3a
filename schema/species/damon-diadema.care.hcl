species "damon-diadema" {
  title    = "Tanzanian whip spider"
  latin    = "Damon diadema (Simon, 1876)"
  family   = "Phrynichidae"
  also     = ["tailless whip scorpion"]
  mistaken = ["Damon variegatus"]
  note     = "Often sold as Damon variegatus; two thorns beneath the trochanter of the palp point to diadema (K23). D. medioventris is the West African one (from memory)."

  stage "newborn" {
    instars = "1"
    note    = "On the mother, before the first moult."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  stage "young" {
    instars = "2 to 3"
    note    = "Six to eight moults are remembered, seven are taken here."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  stage "juvenile" {
    instars = "4 to 6"
    note    = "Six to eight moults are remembered, seven are taken here."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  stage "subadult" {
    instars = "7"
    note    = "Six to eight moults are remembered, seven are taken here."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  stage "adult" {
    instars = "8"
    note    = "Six to eight moults are remembered, seven are taken here."
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "temperature-hard" {
    value   = "15 to 32 C"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "temperature-soft" {
    value   = "20 to 30 C"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "A margin around the target."
  }

  figure "temperature-target" {
    value   = "22 to 28 C"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "23 to 28 C as remembered; no source text was visible."
  }

  figure "air" {
    value   = "20 to 28 C"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-28"
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
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "A margin around the target."
  }

  figure "humidity-target" {
    value   = "70 to 85 %"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "No source text was visible."
  }

  figure "moisture" {
    value   = "damp"
    source  = ["K23"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "substrate-depth-min" {
    value    = "4 cm"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
    disputed = "5 to 8 cm of moist coir or soil (common practice)"
  }

  figure "substrate-depth-advised" {
    value   = "5 to 8 cm"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "floor-first" {
    value   = "900 cm2"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "30 x 30 cm, 45 cm high."
  }

  figure "floor-further" {
    value   = "300 cm2"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "45 x 45 cm for a group of four or so; our arithmetic."
  }

  figure "volume-first" {
    value   = "40 L"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "height-min" {
    value   = "40 cm"
    stages  = ["subadult", "adult"]
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
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
    seen    = "2026-11-25"
    note    = "Cave mouths, tree hollows, forest. Bark at 45 degrees or steeper, with room below to hang."
  }

  figure "climbs" {
    value   = "seams"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Bark well, smooth glass poorly or not at all."
  }

  figure "lid" {
    value   = "latched"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "A lid that fits all round."
  }

  figure "gap-max" {
    value   = "1.5 mm"
    stages  = ["newborn", "young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Small young pass a mesh of 2 mm."
  }

  figure "hangs-to-moult" {
    value   = "true"
    source  = ["K71"]
    quality = "keeper"
    seen    = "2026-11-25"
    note    = "Head down from bark or the roof. Without a place to hang, or disturbed, it dies (common practice)."
  }

  figure "moults-as-adult" {
    value   = "true"
    source  = ["P32", "memory"]
    quality = "memory"
    seen    = "2026-11-25"
    note    = "Charinus guto, of another family, does (P32)."
  }

  figure "drinks" {
    value   = "droplets"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "And from a shallow dish."
  }

  figure "length" {
    value    = "28 mm"
    stages   = ["adult"]
    source   = ["K23"]
    quality  = "society"
    seen     = "2026-11-25"
    disputed = "25 to 50 mm (K22); leg span 17 to 19 cm, 25 cm at the most (K69)"
    note     = "The body, at the most; leg span 15 to 25 cm."
  }

  figure "mass" {
    value   = "2 to 5 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "moults-to-adult" {
    value   = "6 to 8"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "age-at-maturity" {
    value   = "12 to 18 months"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "lifespan" {
    value    = "6 to 10 years"
    source   = ["K22", "memory"]
    quality  = "memory"
    seen     = "2026-11-25"
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
    seen    = "2026-11-25"
    note    = "Carried as eggs in a sac below the body (K22) for three months (from memory); Charinus guto 59 days (P32)."
  }

  figure "on-mother" {
    value    = "7 to 14 days"
    source   = ["memory"]
    quality  = "memory"
    seen     = "2026-11-25"
    disputed = "10 days in Charinus guto (P32)"
  }

  figure "separation" {
    value   = "keep with mother"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Young stay where food is plenty, until they are mature (OP1)."
  }

  figure "first-killed" {
    value   = "3 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "After they leave her."
  }

  figure "first-meal" {
    value   = "10 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "3 to 7 days after they leave her is usual; the limit is that of scorpions."
  }

  figure "undisturbed" {
    value   = "14 days"
    source  = ["P32"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "From hatching. In Charinus guto the young ride for 10 days (P32); one that falls off before is lost (from memory). Before, from the laying on, she is left alone with the sac."
  }

  figure "wait-after-moult" {
    value   = "5 days"
    stages  = ["young", "juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "As small spiders and scorpions."
  }

  figure "wait-after-moult" {
    value   = "7 days"
    stages  = ["subadult", "adult"]
    source  = ["K71"]
    quality = "practice"
    seen    = "2026-11-25"
    note    = "Its colour is normal in about 36 hours (K71); the figure is common practice."
  }

  figure "handling-wait" {
    value   = "14 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "premoult-fast" {
    value   = "1 to 2 weeks"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "premoult-fast" {
    value   = "1 to 3 weeks"
    stages  = ["juvenile"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "premoult-fast" {
    value   = "2 to 6 weeks"
    stages  = ["subadult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "premoult-fast" {
    value   = "2 to 8 weeks"
    stages  = ["adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
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
    value   = "60 days"
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
    value   = "90 days"
    stages  = ["subadult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  figure "premoult-help" {
    value   = "90 days"
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
    note    = "As scorpions."
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

  figure "prey-length-share" {
    value   = "100 %"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "items-a-week" {
    value   = "1"
    stages  = ["adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "items-a-week" {
    value   = "2"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  figure "unattended" {
    value   = "7 days"
    stages  = ["subadult", "adult"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "10 days with a second dish."
  }

  figure "unattended" {
    value   = "2 days"
    stages  = ["young"]
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "It drinks what is sprayed."
  }

  figure "unattended" {
    value    = "3 days"
    stages   = ["juvenile"]
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-28"
    disputed = "5 days (common practice)"
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
    quality = "practice"
    seen    = "2026-11-25"
    note    = "For a damp set-up without springtails; K62 says it of a tarantula tank."
  }

  figure "venom" {
    value   = "none"
    source  = ["K72"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "defence" {
    value   = "Thorns on the palps can prick."
    source  = ["K72"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    seen    = "2026-11-25"
  }

  figure "climate-origin" {
    value   = "Cave mouths, tree hollows, rain forest to savanna in Kenya and Tanzania."
    source  = ["K23"]
    quality = "society"
    seen    = "2026-11-25"
  }

  figure "sexing" {
    value   = "From instar 4 the male's palps grow faster (K23); certain at about 25 mm, when the male's \"elbow\" passes the first joint of the walking legs (K22)."
    source  = ["K22", "K23"]
    quality = "keeper"
    seen    = "2026-11-25"
  }

  figure "metabolic-kin" {
    value   = "none"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  state "gravid" {
    care    = "dish, clean"
    manner  = "usual"
    words   = "look first"
    rule    = "look first: a sac under her? do nothing, log laid"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
  }

  state "sac" {
    care    = "killed"
    manner  = "hatch"
    words   = "one small item at the far end"
    every   = "14 days"
    rule    = "water through the hatch, a small killed item every two weeks, lift nothing"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-28"
    note    = "She eats little with a sac."
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
    note    = "It drinks droplets. No mist on a moulting animal."
  }

  need "food" {
    stages  = ["young"]
    longest = "7 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  need "food" {
    stages  = ["juvenile"]
    longest = "10 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "21 days"
    shortest = "3 days"
    severity = "caution"
    source   = ["practice"]
    quality  = "practice"
    seen     = "2026-11-25"
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
    task    = "Mist the bark, not the animals"
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
    prey       = "cricket pinhead"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket small"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket medium"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "7 days"
    per_animal = 1
    prey       = "cricket adult"
    source     = ["practice"]
    quality    = "practice"
    seen       = "2026-11-25"
  }
}
