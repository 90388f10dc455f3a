species "monocentropus-balfouri" {
  title   = "Socotra Island blue baboon"
  latin   = "Monocentropus balfouri Pocock, 1897"
  family  = "Theraphosidae"
  type    = "dry-terrestrial-tarantula"
  also    = ["Socotra blue baboon", "Blaue Jemen-Vogelspinne", "blue baboon"]
  note    = "Called a baboon, though it is one of the Eumenophorinae. It takes a burrow where it finds one, and is often to be seen for one that does (A104). The young stay with the mother, who feeds them (A105). Groups are keepers' experience only."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  temperature_soft = "20 to 31 C"
  air              = "22 to 28 C"
  night            = "19 to 22 C"
  rest             = "none"
  cooler           = "2 to 3 C"
  humidity_soft    = "30 to 70 %"
  old_age_male     = "6 to 18 months"
  hairs            = "none"
  speed            = "very quick"

  figure "temperature-hard" {
    value = "15 to 35 C"
    note  = "A precaution: no lethal temperature was found for it."
  }

  figure "temperature-target" {
    value    = "22 to 28 C"
    source   = ["A104", "A110"]
    quality  = "practice"
    disputed = "a room of 21 to 26 C is enough (A104), room temperature (A109), warm end 27 to 29 C and cool end 21 to 24 C (A110)"
  }

  figure "humidity-target" {
    value    = "40 to 60 %"
    source   = ["A110"]
    quality  = "keeper"
    disputed = "deep dry substrate and a dish (A104); slings were reared on damp peat (A109)"
  }

  figure "moisture" {
    value = "either"
    note  = "Dry on top, with a damp corner at the bottom."
  }

  figure "lifestyle" {
    value = "ground"
    note  = "It digs where it finds no burrow. Sink stones to the floor of the box before the soil goes in."
  }

  figure "substrate-depth-min" {
    value    = "10 cm"
    source   = ["A110"]
    quality  = "keeper"
    disputed = "10 to 12.5 cm (A110)"
  }

  figure "substrate-depth-advised" {
    value = "15 cm"
  }

  figure "floor-first" {
    value    = "600 cm2"
    stages   = ["subadult", "adult"]
    disputed = "30 x 30 x 30 cm for one (A110)"
  }

  figure "floor-further" {
    value  = "200 cm2"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "3 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
    note   = "Our estimate: what leaves the sac is far smaller than a young one of its type."
  }

  figure "length" {
    value   = "5 to 7 cm"
    stages  = ["adult"]
    source  = ["A102"]
    quality = "keeper"
  }

  figure "span" {
    value   = "17 to 18 cm"
    stages  = ["adult"]
    source  = ["A102"]
    quality = "keeper"
  }

  figure "mass" {
    value   = "10 to 18 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "growth-factor" {
    value    = "1.25 to 1.4"
    source   = ["A53"]
    quality  = "practice"
    disputed = "1.38 in Grammostola vachoni, of cool country (A53)"
  }

  figure "age-at-maturity" {
    value   = "18 to 42 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 18 to 30, females 30 to 42 months. Slow as slings (A108, A109)."
  }

  figure "lifespan" {
    value   = "10 to 14 years"
    source  = ["A103"]
    quality = "keeper"
    note    = "Females; males 3 to 4 years (A103)."
  }

  figure "brood-size" {
    value   = "30 to 80"
    source  = ["memory"]
    quality = "memory"
  }

  figure "sac-time" {
    value   = "6 to 8 weeks"
    source  = ["memory"]
    quality = "memory"
  }

  figure "separation" {
    value   = "keep with mother"
    source  = ["A105"]
    quality = "keeper"
    note    = "Leave them for months: she brings food to them (A102, A105)."
  }

  figure "first-killed" {
    value = "7 days"
    note  = "Slings often refuse live prey and take cut mealworm (A109)."
  }

  figure "wait-after-moult" {
    value  = "10 days"
    stages = ["subadult", "adult"]
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["juvenile"]
  }

  figure "keeping" {
    value    = "groups"
    source   = ["A106", "A107"]
    quality  = "keeper"
    disputed = "in a student's trial of 49 of one sac with equal food and room, 7 groups of 5 against 14 alone for 180 days, growth was slower than was expected; the result was not seen (A108)"
    note     = "With caution: one sac, one size, 5 to 9 to begin with, a burrow begun for each, more prey items than animals, scattered, and what is left counted; no newcomers. Nine slings for a year (A106), heads not counted; five of one sac all alive after 8 months, from 4 to 6.5 cm of span (A107)."
  }

  figure "group-max" {
    value   = "9"
    source  = ["A106"]
    quality = "practice"
    note    = "The largest group of which a keeper tells."
  }

  figure "venom" {
    value   = "painful"
    source  = ["A101"]
    quality = "practice"
    note    = "Treat it as significant: its strength is not known, and no case of it was found. The belief of Socotra in a deadly bite is not supported (A101); kin, Eumenophorus, gave spasms (A2). After a bite: wash, rings off, keep the limb still; do not cut, suck or bind. Somebody stays for 24 h. Spreading pain, cramps, a tight chest or trouble with breath: hospital at once, with the name of the species on paper. Cramps can start after hours and come back for days (A1 to A3; the advice is common practice)."
  }

  figure "defence" {
    value    = "More skittish than fierce in one home. No hairs."
    source   = ["A104"]
    quality  = "keeper"
    disputed = "it defends itself more than others (A105)"
    note     = "Catch cup in reach, and the box opened inside a larger tub."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    note    = "Proposals for more tarantulas were before the conference of late 2025 (A15); which, and how they went, was not found: look it up."
  }

  figure "law" {
    value = "Some places ask a licence for dangerous animals; this species was not named in what was seen. Look up what holds where you live."
  }

  figure "climate-origin" {
    value   = "Socotra: 28 C in the mean, 193 mm of rain a year, from the coast to 850 m."
    source  = ["A102", "A103"]
    quality = "keeper"
  }

  care "moisten" {
    task  = "Pour water into one corner"
    every = "10 days"
  }

  care "droplets" {
    kind   = "mist"
    task   = "Mist one wall and the silk, for droplets to drink"
    stages = ["young"]
    every  = "4 days"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket pinhead"
    killed     = true
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "6 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "8 days"
    per_animal = 1
    prey       = "cricket medium"
  }
}
