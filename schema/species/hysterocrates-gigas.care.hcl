species "hysterocrates-gigas" {
  title    = "Cameroon red baboon"
  latin    = "Hysterocrates gigas Pocock, 1897"
  family   = "Theraphosidae"
  type     = "fossorial-tarantula"
  also     = ["giant baboon", "tawny red baboon"]
  mistaken = ["Pelinobius muticus", "Hysterocrates sp.", "Hysterocrates hercules", "Hysterocrates crassipes", "Hysterocrates ederi"]
  note     = "Most that are sold as gigas are undetermined Hysterocrates; the trade mixes hercules, crassipes and ederi with it (from memory). Black after a moult, brown-red before the next (A116, A118): the colour tells when. Seldom seen: look at the mouth of the burrow and at the dish."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft = "20 to 29 C"
  air              = "22 to 26 C"
  rest             = "none"
  cooler           = "2 to 3 C"
  humidity_soft    = "65 to 92 %"
  old_age_male     = "6 to 18 months"
  hairs            = "none"
  speed            = "quick"

  figure "temperature-hard" {
    value = "16 to 32 C"
    note  = "A precaution: no lethal temperature was found for it."
  }

  figure "temperature-target" {
    value    = "22 to 26 C"
    source   = ["A119"]
    quality  = "practice"
    disputed = "22 to 25.5 C, of African burrowers (A119); from 21 C up (A116, its upper figure was not seen)"
  }

  figure "night" {
    value    = "20 to 22 C"
    disputed = "22 to 24 C, of African burrowers (A119)"
  }

  figure "humidity-target" {
    value    = "75 to 85 %"
    source   = ["A116"]
    quality  = "practice"
    disputed = "60 to 90 % (A116), 50 to 70 % with good air, of baboons in general (A119)"
  }

  figure "moisture" {
    value = "damp"
    note  = "Damp to wet: it must never dry through."
  }

  figure "ventilation" {
    value = "any"
    note  = "In the lid or a side."
  }

  figure "drinks" {
    value   = "dish"
    source  = ["A117"]
    quality = "keeper"
    note    = "A large dish: it bathes, and takes prey in shallow water (A117)."
  }

  figure "substrate-depth-min" {
    value    = "20 cm"
    disputed = "deep, without a figure (A118, A119)"
    note     = "Packed, with a piece of cork to begin at."
  }

  figure "substrate-depth-advised" {
    value = "30 cm"
  }

  figure "floor-first" {
    value  = "900 cm2"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "5 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
    note   = "Our estimate: what leaves the sac is far smaller than a young one of its type."
  }

  figure "length" {
    value  = "7 to 9 cm"
    stages = ["adult"]
    note   = "Of females. No body length was found: from a span of 20 cm, 2.2 to 2.8 times the body; our arithmetic."
  }

  figure "span" {
    value   = "13 to 20 cm"
    stages  = ["adult"]
    source  = ["A116", "A117"]
    quality = "keeper"
    note    = "Females to 20 cm, males about 13 cm."
  }

  figure "mass" {
    value   = "25 to 50 g"
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

  figure "lifespan" {
    value   = "15 to 20 years"
    source  = ["A117"]
    quality = "keeper"
    note    = "Females; males 3 to 4 years (A117), about 4 (A116)."
  }

  figure "brood-size" {
    value   = "80 to 200"
    source  = ["memory"]
    quality = "memory"
  }

  figure "sac-time" {
    value   = "8 to 10 weeks"
    source  = ["memory"]
    quality = "memory"
  }

  figure "separation" {
    value   = "keep with mother"
    source  = ["memory"]
    quality = "memory"
    note    = "For months, until the young leave by themselves."
  }

  figure "keeping" {
    value   = "alone, or mother with brood"
    source  = ["memory"]
    quality = "memory"
    note    = "The young stay with her for months; nothing was found in a text."
  }

  figure "wait-after-moult" {
    value  = "10 days"
    stages = ["subadult", "adult"]
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["juvenile"]
  }

  figure "refusals-to-pause" {
    value   = "1"
    stages  = ["subadult", "adult"]
    source  = ["A120"]
    quality = "keeper"
    note    = "One item left means pre-moult: wait a week (A120)."
  }

  figure "refusal-pause" {
    value   = "7 days"
    stages  = ["subadult", "adult"]
    source  = ["A120"]
    quality = "keeper"
  }

  figure "venom" {
    value   = "painful"
    source  = ["A117"]
    quality = "practice"
    note    = "Treat it as significant: strong by keepers' word (A117), without a case in a paper; kin, Eumenophorus, gave spasms (A2). After a bite: wash, rings off, keep the limb still; do not cut, suck or bind. Somebody stays for 24 h. Spreading pain, cramps, a tight chest or trouble with breath: hospital at once, with the name of the species on paper. Cramps can start after hours and come back for days (A1 to A3; the advice is common practice)."
  }

  figure "defence" {
    value   = "Rears and strikes again and again. No hairs."
    source  = ["A118"]
    quality = "keeper"
    note    = "Catch cup in reach, and the box opened inside a larger tub."
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

  figure "sexing" {
    value   = "Plain only after up to four years."
    source  = ["A116"]
    quality = "keeper"
    note    = "It grows at a medium to fast pace (A117)."
  }

  need "water" {
    longest = "1 day"
    note    = "It drinks much: a dish is never empty for longer than a day."
  }

  need "moisture" {
    longest = "7 days"
  }

  need "moisture" {
    stages  = ["young"]
    longest = "4 days"
  }

  care "water" {
    every = "day"
  }

  care "mist" {
    kind  = "moisten"
    task  = "Pour water in, so that it never dries through"
    every = "7 days"
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
    source     = ["A120"]
    quality    = "practice"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "6 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "9 days"
    per_animal = 2
    rotate     = ["roach medium", "cricket adult"]
  }
}
