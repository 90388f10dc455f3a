species "pterinochilus-murinus" {
  title    = "orange baboon tarantula"
  latin    = "Pterinochilus murinus Pocock, 1897"
  family   = "Theraphosidae"
  type     = "dry-terrestrial-tarantula"
  also     = ["OBT", "orange baboon", "Usambara baboon", "Mombasa golden starburst", "pterror", "Rote Usambara"]
  former   = ["Pterinochilus mamillatus", "Pterinochilus hindei", "Pterinochilus vosseleri", "Pterinochilus leetzi", "Harpactira elevata"]
  mistaken = ["Pterinochilus chordatus", "Pterinochilus lugardi"]
  note     = "A hardy body, and the worst bite at a beginner's price. It burrows, climbs and webs heavily: open nothing while it sits on silk at the lid. Pair only animals of one region, whose courtships differ (A95)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft = "19 to 31 C"
  air              = "22 to 28 C"
  rest             = "none"
  cooler           = "2 to 3 C"
  humidity_soft    = "30 to 75 %"
  old_age_male     = "6 to 18 months"
  hairs            = "none"
  speed            = "very quick"

  figure "temperature-hard" {
    value = "13 to 35 C"
    note  = "A precaution: no lethal temperature was found for it."
  }

  figure "temperature-target" {
    value    = "22 to 28 C"
    source   = ["A95", "A97", "A99"]
    quality  = "practice"
    disputed = "20 to 24 C (A99), 24 to 30 C (A95), 23 to 30 C (A97)"
  }

  figure "night" {
    value    = "18 to 22 C"
    source   = ["A99"]
    quality  = "practice"
    disputed = "18 to 20 C (A99)"
  }

  figure "humidity-target" {
    value    = "45 to 65 %"
    source   = ["A97", "A99"]
    quality  = "practice"
    disputed = "40 to 60 % (A99), 65 to 70 % (A97), not too dry (A95), bone-dry coir with a dish (A100)"
  }

  figure "moisture" {
    value = "either"
    note  = "Dry, with a damp corner at the bottom (A99)."
  }

  figure "lifestyle" {
    value = "ground"
    note  = "It burrows and climbs. Cork to web on."
  }

  figure "substrate-depth-min" {
    value    = "10 cm"
    source   = ["A99", "K14"]
    quality  = "keeper"
    disputed = "15 cm (A95)"
  }

  figure "substrate-depth-advised" {
    value   = "15 cm"
    source  = ["A95"]
    quality = "keeper"
  }

  figure "floor-first" {
    value    = "600 cm2"
    stages   = ["subadult", "adult"]
    disputed = "40 x 30 x 40 cm (A99), 38 to 76 L (K14)"
  }

  figure "height-min" {
    value  = "35 cm"
    stages = ["subadult", "adult"]
    note   = "25 to 30 cm above 10 cm of soil: our arithmetic."
  }

  figure "fall-max" {
    value = "30 cm"
    note  = "25 to 30 cm above the soil are advised: a light spider that climbs on its silk."
  }

  figure "gap-max" {
    value  = "3 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
    note   = "Our estimate: what leaves the sac is far smaller than a young one of its type."
  }

  figure "length" {
    value    = "5 to 6 cm"
    stages   = ["adult"]
    source   = ["A97"]
    quality  = "keeper"
    disputed = "females just over 6 cm, males just over 5 cm (A96)"
  }

  figure "span" {
    value    = "10 to 15 cm"
    stages   = ["adult"]
    source   = ["A94", "A97"]
    quality  = "keeper"
    disputed = "12 to 15 cm (A97); females 10 to 15 cm, males 7.5 to 10 cm (A94)"
  }

  figure "mass" {
    value   = "8 to 15 g"
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
    value   = "9 to 24 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 9 to 14, females 14 to 24 months. It grows fast (A98)."
  }

  figure "lifespan" {
    value    = "14 years"
    source   = ["A98"]
    quality  = "keeper"
    disputed = "5 to 10 years (A99)"
    note     = "Females; males 4 years (A98)."
  }

  figure "brood-size" {
    value   = "80 to 200"
    source  = ["memory"]
    quality = "memory"
    note    = "Often a second and a third sac without mating again."
  }

  figure "sac-time" {
    value   = "4 to 6 weeks"
    source  = ["memory"]
    quality = "memory"
    note    = "It hangs in a hammock of silk."
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

  figure "keeping" {
    value   = "alone"
    source  = ["A95"]
    quality = "keeper"
    note    = "Strictly."
  }

  figure "venom" {
    value    = "medically significant"
    source   = ["A2", "A3"]
    quality  = "paper"
    disputed = "harmless (A95), not serious (A94): the papers overrule both"
    note     = "Strong pain at the bite, swelling, cramps of the whole body again and again, for seven days in one of two men (A2). After a bite: wash, rings off, keep the limb still; do not cut, suck or bind. Somebody stays for 24 h. Spreading pain, cramps, a tight chest or trouble with breath: hospital at once, with the name of the species on paper. Cramps can start after hours and come back for days (A1 to A3; the advice is common practice)."
  }

  figure "defence" {
    value   = "Bites without a threat before it. No hairs."
    source  = ["A94"]
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
    value   = "Named in the rules on dangerous animals of Hesse, and likely of others. Look up what holds where you live."
    source  = ["A16"]
    quality = "keeper"
  }

  care "mist" {
    stages  = ["juvenile", "subadult", "adult"]
    every   = "7 days"
    source  = ["A99"]
    quality = "keeper"
  }

  care "droplets" {
    kind   = "mist"
    task   = "Mist one wall and the silk, for droplets to drink"
    stages = ["young"]
    every  = "4 days"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "8 days"
    per_animal = 1
    prey       = "cricket medium"
  }
}
