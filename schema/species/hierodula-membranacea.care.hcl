species "hierodula-membranacea" {
  title   = "giant Asian mantis"
  latin   = "Hierodula membranacea (Burmeister, 1838)"
  family  = "Mantidae"
  type    = "mantis"
  also    = ["giant Asian praying mantis"]
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-25"

  venom = "none"

  stage "young" {
    instars = "1 to 3"
    note    = "Nine instars in females and eight in males as remembered, the adult counted. The free hatchling is the first here, and L2 for keepers who count the moult at hatching (OK45)."
    source  = ["memory"]
    quality = "memory"
  }

  stage "juvenile" {
    instars = "4 to 6"
    note    = "Nine instars in females and eight in males as remembered, the adult counted."
    source  = ["memory"]
    quality = "memory"
  }

  stage "subadult" {
    instars = "7 to 8"
    note    = "Nine instars in females and eight in males as remembered, the adult counted."
    source  = ["memory"]
    quality = "memory"
  }

  stage "adult" {
    instars = "9"
    note    = "Nine instars in females and eight in males as remembered, the adult counted."
    source  = ["memory"]
    quality = "memory"
  }

  figure "temperature-hard" {
    value  = "16 to 35 C"
    source = ["K35", "K103"]
    note   = "The target is from sources; the limits are common practice."
  }

  figure "temperature-soft" {
    value  = "20 to 30 C"
    source = ["K35", "K103"]
  }

  figure "temperature-target" {
    value    = "22 to 28 C"
    source   = ["K35", "K103"]
    disputed = "20 to 28 C (K35), 22 to 30 C (K103)"
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
    value  = "45 to 75 %"
    source = ["K103"]
    note   = "Our margin around the target; no source. Wet air raises the risk of disease (K103)."
  }

  figure "humidity-target" {
    value    = "55 to 70 %"
    source   = ["K103"]
    disputed = "60 to 70 % (K103)"
  }

  figure "moisture" {
    value  = "either"
    source = ["K103"]
  }

  figure "ventilation" {
    value  = "cross"
    source = ["K103"]
    note   = "Wet air raises the risk of disease; the openings are common practice."
  }

  figure "floor-first" {
    value  = "16 cm2"
    stages = ["young"]
    note   = "Twice the body length each way, for the largest animal of the stage."
  }

  figure "floor-first" {
    value  = "64 cm2"
    stages = ["juvenile"]
    note   = "Twice the body length each way, for the largest animal of the stage."
  }

  figure "floor-first" {
    value  = "160 cm2"
    stages = ["subadult"]
    note   = "Twice the body length each way, for the largest animal of the stage."
  }

  figure "floor-first" {
    value  = "256 cm2"
    stages = ["adult"]
    note   = "Twice the body length each way, for the largest animal of the stage."
  }

  figure "height-min" {
    value  = "6 cm"
    stages = ["young"]
    note   = "Three body lengths, for the largest animal of the stage."
  }

  figure "height-min" {
    value  = "12 cm"
    stages = ["juvenile"]
    note   = "Three body lengths, for the largest animal of the stage."
  }

  figure "height-min" {
    value  = "19 cm"
    stages = ["subadult"]
    note   = "Three body lengths, for the largest animal of the stage."
  }

  figure "height-min" {
    value  = "24 cm"
    stages = ["adult"]
    note   = "Three body lengths, for the largest animal of the stage."
  }

  figure "keeping" {
    value   = "alone"
    source  = ["K103"]
    quality = "keeper"
    note    = "Strongly cannibal; the female eats the male. Small nymphs, to the third, are at times kept together (common practice)."
  }

  figure "lifestyle" {
    value  = "tree"
    source = ["K103"]
  }

  figure "climbs" {
    value = "glass"
    note  = "Small nymphs; adults climb mesh and twigs. A roof of mesh or twigs to hang from."
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
    note   = "Fruit flies pass wider ones."
  }

  figure "hangs-to-moult" {
    value   = "true"
    source  = ["K105"]
    quality = "keeper"
    note    = "It must not be disturbed, and no prey may be in the box."
  }

  figure "length" {
    value  = "1.3 to 2 cm"
    stages = ["young"]
    source = ["P6"]
    note   = "From 8 cm for an adult, by a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value  = "2.5 to 4 cm"
    stages = ["juvenile"]
    source = ["P6"]
    note   = "From 8 cm for an adult, by a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value  = "5 to 6.4 cm"
    stages = ["subadult"]
    source = ["P6"]
    note   = "From 8 cm for an adult, by a factor of 1.26; our arithmetic."
  }

  figure "length" {
    value    = "7 to 9 cm"
    stages   = ["adult"]
    source   = ["K103"]
    quality  = "keeper"
    disputed = "females 7 to 10 cm, males 1 to 2 cm less (K35); males about 7.5 cm, females about 8.5 cm (K102)"
  }

  figure "mass" {
    value   = "4 to 7 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    note    = "Females."
  }

  figure "moults-to-adult" {
    value    = "7 to 8"
    source   = ["memory"]
    quality  = "memory"
    seen     = "2026-11-28"
    disputed = "males one or two fewer than females, in mantises (OK45)"
    note     = "Where a pair of one brood is wanted, males are kept cooler and on less food and females warmer, so that both are grown together (OK45)."
  }

  figure "age-at-maturity" {
    value   = "6 months"
    source  = ["memory"]
    quality = "memory"
    note    = "About."
  }

  figure "old-age" {
    value = "120 days"
    note  = "Our reading of the other mantises; females are grown for about six months."
  }

  figure "old-age-male" {
    value = "45 days"
    note  = "Our reading of the other mantises; males are grown for two to three months."
  }

  figure "lifespan" {
    value   = "8 to 12 months"
    source  = ["memory"]
    quality = "memory"
    note    = "About six months to adult; then females about six months, males two to three."
  }

  figure "sac-time" {
    value  = "40 to 45 days"
    source = ["K106", "N10"]
    seen   = "2026-11-28"
    note   = "About six weeks (K106); 40 days in Hierodula majuscula (N10)."
  }

  figure "brood-size" {
    value   = "150"
    source  = ["K106"]
    quality = "keeper"
    note    = "At most, from each of several oothecae, after about six weeks."
  }

  figure "separation" {
    value  = "separate"
    source = ["K103"]
    note   = "By the fourth nymph stage."
  }

  figure "separate-within" {
    value  = "30 days"
    source = ["N10"]
    seen   = "2026-11-28"
    note   = "Hierodula majuscula is at its fourth instar within a month (N10)."
  }

  figure "first-killed" {
    value  = "1 day"
    source = ["N24"]
    seen   = "2026-11-28"
    note   = "Fruit flies, alive: it takes nothing that does not move."
  }

  figure "first-meal" {
    value  = "2 days"
    source = ["N24"]
    seen   = "2026-11-28"
    note   = "Of many hatchlings those without a catch died after 4 to 5 days (N24, weak)."
  }

  figure "wait-after-moult" {
    value    = "3 days"
    source   = ["K105"]
    disputed = "a couple of days (K105), 2 to 3 days (common practice)"
  }

  figure "moult-takes" {
    value   = "20 to 30 min"
    source  = ["N23"]
    quality = "keeper"
    seen    = "2026-11-28"
    note    = "The last moult takes hours. Nymphs harden in a day, adults in one to four (N23)."
  }

  figure "premoult-fast" {
    value  = "1 to 3 days"
    stages = ["young"]
    source = ["N23", "K104"]
    seen   = "2026-11-28"
    note   = "N23 speaks of a few days, K104 of one to two weeks; the numbers are common practice."
  }

  figure "premoult-fast" {
    value  = "2 to 5 days"
    stages = ["juvenile"]
    source = ["N23", "K104"]
    seen   = "2026-11-28"
    note   = "N23 speaks of a few days, K104 of one to two weeks; the numbers are common practice."
  }

  figure "premoult-fast" {
    value  = "4 to 14 days"
    stages = ["subadult"]
    source = ["N23", "K104"]
    seen   = "2026-11-28"
    note   = "N23 speaks of a few days, K104 of one to two weeks; the numbers are common practice."
  }

  figure "fast-look" {
    value  = "3 days"
    stages = ["young"]
    source = ["N24"]
    seen   = "2026-11-28"
  }

  figure "fast-look" {
    value  = "7 days"
    stages = ["juvenile", "subadult"]
    source = ["K104"]
    seen   = "2026-11-28"
  }

  figure "fast-look" {
    value  = "7 days"
    stages = ["adult"]
    source = ["K104"]
    seen   = "2026-11-28"
  }

  figure "fast-try" {
    value  = "2 days"
    stages = ["young"]
    source = ["N24"]
    seen   = "2026-11-28"
  }

  figure "fast-alarm" {
    value  = "4 days"
    stages = ["young"]
    source = ["N24"]
    seen   = "2026-11-28"
    note   = "Of many hatchlings those without a catch died after 4 to 5 days (N24, weak); the figure is common practice."
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["juvenile", "subadult"]
    source = ["K104"]
    seen   = "2026-11-28"
    note   = "A fast of one to two weeks usually means a moult (K104)."
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["adult"]
    source = ["K104"]
    seen   = "2026-11-28"
    note   = "An adult does not moult any more: old age?"
  }

  figure "fast-help" {
    value  = "7 days"
    stages = ["young"]
    source = ["N24"]
    seen   = "2026-11-28"
  }

  figure "fast-help" {
    value  = "30 days"
    stages = ["juvenile", "subadult"]
    source = ["K104"]
    seen   = "2026-11-28"
  }

  figure "fast-help" {
    value  = "30 days"
    stages = ["adult"]
    source = ["K104"]
    seen   = "2026-11-28"
  }

  figure "prey-length-share" {
    value   = "50 %"
    source  = ["K104"]
    quality = "keeper"
  }

  figure "items-a-week" {
    value  = "2 to 3"
    stages = ["adult"]
    source = ["K104"]
    note   = "A meal about every three days."
  }

  figure "mites-clear" {
    value = "30 days"
    seen  = "2026-11-28"
    note  = "Of clean looks each week."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "USA: look up the permit for keeping exotic invertebrates."
    source  = ["G9"]
    quality = "guideline"
  }

  figure "sexing" {
    value   = "From the middle nymphs on females have six visible belly segments, males eight."
    source  = ["K106"]
    quality = "keeper"
  }

  state "gravid" {
    care   = "all"
    manner = "usual"
    rule   = "fed as ever; an ootheca? log laid"
    seen   = "2026-11-28"
  }

  state "sac" {
    care   = "all"
    manner = "usual"
    is     = "after laying an ootheca"
    rule   = "as ever; leave what the ootheca hangs on"
    seen   = "2026-11-28"
  }

  state "gravid-late" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
    note   = "There is no brood care."
  }

  state "birth" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
    note   = "There is no brood care."
  }

  state "brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
    note   = "There is no brood care."
  }

  state "young-round" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
    note   = "There is no brood care."
  }

  state "after-brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
    note   = "There is no brood care."
  }

  state "newborn" {
    care   = "all"
    manner = "usual"
    is     = "just hatched"
    rule   = "fruit flies from the first day"
    source = ["N24"]
    seen   = "2026-11-28"
  }

  need "look" {
    longest = "1 day"
  }

  need "moisture" {
    longest = "2 days"
    note    = "It drinks the droplets."
  }

  need "food" {
    stages  = ["young"]
    longest = "3 days"
  }

  need "food" {
    stages  = ["juvenile"]
    longest = "5 days"
    note    = "A meal every two to three days."
  }

  need "food" {
    stages   = ["subadult", "adult"]
    longest  = "7 days"
    shortest = "2 days"
    severity = "caution"
    source   = ["K104"]
    note     = "A meal about every three days (K104)."
  }

  need "leftovers" {
    longest = "1 day"
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

  feeding "adult" {
    stages     = ["adult"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket adult"
    source     = ["K104"]
    quality    = "keeper"
    seen       = "2026-11-25"
  }
}
