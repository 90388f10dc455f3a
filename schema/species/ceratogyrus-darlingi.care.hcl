species "ceratogyrus-darlingi" {
  title    = "rear-horned baboon"
  latin    = "Ceratogyrus darlingi Pocock, 1897"
  family   = "Theraphosidae"
  type     = "fossorial-tarantula"
  also     = ["East African horned baboon"]
  former   = ["Ceratogyrus bechuanicus", "Ceratogyrus darlingii"]
  mistaken = ["Ceratogyrus marshalli", "Ceratogyrus sanderi"]
  note     = "C. bechuanicus is counted here today, from memory; C. marshalli has a straight, tall horn. The egg sac is a flat sheet fixed to floor or wall: do not take it for web and clean it away. It cannot be turned or pulled like others (told of C. bechuanicus, A115)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "18 to 31 C"
  air                     = "21 to 28 C"
  night                   = "17 to 21 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "30 to 75 %"
  ventilation             = "cross"
  substrate_depth_advised = "18 cm"
  old_age_male            = "6 to 18 months"
  keeping                 = "alone"
  hairs                   = "none"
  speed                   = "quick"

  state "sac" {
    care    = "clean"
    manner  = "held"
    rule    = "a flat sheet on floor or wall may be the sac: leave all silk, never pull it"
    source  = ["A115"]
    quality = "keeper"
  }

  figure "temperature-hard" {
    value = "12 to 35 C"
    note  = "A precaution: no lethal temperature was found for it."
  }

  figure "temperature-target" {
    value    = "21 to 28 C"
    source   = ["A113", "A114"]
    quality  = "practice"
    disputed = "20 to 24.5 C in winter and 22 to 26.5 C in summer, eating and growing all year (A113); Bulawayo 26 to 28 C in the mean (A114)"
    note     = "A cool season of 20 to 22 C is borne and not needed."
  }

  figure "humidity-target" {
    value    = "45 to 65 %"
    source   = ["A113", "A114"]
    quality  = "practice"
    disputed = "Bulawayo: 74 % in February, 63 % in April, 42 % in September, 62 % in December (A114)"
    note     = "The grown dry with a dish, slings and juveniles moist with a top that dries (A113)."
  }

  figure "moisture" {
    value   = "either"
    source  = ["A113"]
    quality = "keeper"
    note    = "Damp below."
  }

  figure "substrate-depth-min" {
    value    = "12 cm"
    source   = ["A112"]
    quality  = "practice"
    disputed = "half to three quarters of the box (A112)"
  }

  figure "floor-first" {
    value    = "500 cm2"
    stages   = ["subadult", "adult"]
    disputed = "30 x 30 x 30 cm (A114)"
    note     = "With a piece of cork to begin a burrow at."
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
    value  = "4.6 to 5.9 cm"
    stages = ["adult"]
    note   = "No body length was found: from a span of 13 cm, 2.2 to 2.8 times the body; our arithmetic."
  }

  figure "span" {
    value   = "13 cm"
    stages  = ["adult"]
    source  = ["A111", "A112"]
    quality = "keeper"
    note    = "To 13 cm."
  }

  figure "mass" {
    value   = "9 to 15 g"
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
    value   = "12 to 30 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 12 to 20, females 24 to 30 months. It grows at a medium to fast pace (A111)."
  }

  figure "lifespan" {
    value   = "13 to 15 years"
    source  = ["A111", "A112"]
    quality = "keeper"
    note    = "Females; males 2 to 4 years (A111, A112)."
  }

  figure "brood-size" {
    value   = "80 to 160"
    source  = ["memory"]
    quality = "memory"
  }

  figure "sac-time" {
    value   = "4 to 6 weeks"
    source  = ["memory"]
    quality = "memory"
  }

  figure "sac-decide" {
    value   = "35 to 42 days"
    source  = ["A115"]
    quality = "practice"
    note    = "There is nothing to take: the sac stays where it is fixed (A115)."
  }

  figure "separation" {
    value = "separate"
    note  = "Each alone by its third moult, as for kin; our estimate."
  }

  figure "wait-after-moult" {
    value  = "10 days"
    stages = ["subadult", "adult"]
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["juvenile"]
  }

  figure "venom" {
    value   = "medically significant"
    source  = ["A3"]
    quality = "paper"
    note    = "By its subfamily, the Harpactirinae, one of the three with most cramps (A3); no human case of this genus was found in a paper. Keepers tell of pain, cramps, nausea and headache (A111). After a bite: wash, rings off, keep the limb still; do not cut, suck or bind. Somebody stays for 24 h. Spreading pain, cramps, a tight chest or trouble with breath: hospital at once, with the name of the species on paper. Cramps can start after hours and come back for days (A1 to A3; the advice is common practice)."
  }

  figure "defence" {
    value = "Threatens and strikes. No hairs."
    note  = "Catch cup in reach, and the box opened inside a larger tub."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
    note    = "Proposals for more tarantulas were before the conference of late 2025 (A15); which, and how they went, was not found: look it up."
  }

  figure "law" {
    value   = "South African provinces protect baboon spiders, Ceratogyrus among them, and some places ask a licence for dangerous animals. Look up what holds where you live."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Savanna of 20 to 31 C (A113). Bulawayo has 122 mm of rain in December, 48 in March and none in June (A114)."
    source  = ["A113", "A114"]
    quality = "practice"
  }

  need "moisture" {
    longest = "10 days"
    note    = "The grown live dry with a dish (A113)."
  }

  need "moisture" {
    stages  = ["young", "juvenile"]
    longest = "4 days"
  }

  care "mist" {
    kind  = "moisten"
    task  = "Pour water into one corner"
    every = "7 days"
  }

  care "droplets" {
    kind   = "mist"
    task   = "Mist one wall and the silk, for droplets to drink"
    stages = ["young", "juvenile"]
    every  = "4 days"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "6 days"
    per_animal = 1
    prey       = "cricket small"
  }
}
