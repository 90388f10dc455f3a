species "stromatopelma-calceatum" {
  title    = "featherleg baboon"
  latin    = "Stromatopelma calceatum (Fabricius, 1793)"
  family   = "Theraphosidae"
  type     = "arboreal-tarantula"
  also     = ["feather leg"]
  former   = ["Scodra calceata", "Scodra griseipes", "Hyarachne horrida"]
  mistaken = ["Heteroscodra", "Stromatopelma calceatum griseipes"]
  note     = "Of all tree spiders here the one to leave to others: it stands and strikes again and again. Rehouse it with two people or inside a second tub, or not at all. Authors put it in different subfamilies. Names after A74."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft = "21 to 31 C"
  air              = "24 to 28 C"
  night            = "20 to 24 C"
  rest             = "none"
  cooler           = "2 to 3 C"
  humidity_soft    = "45 to 80 %"
  old_age_male     = "6 to 18 months"
  keeping          = "alone"
  hairs            = "none"
  speed            = "very quick"

  figure "temperature-hard" {
    value = "15 to 34 C"
    note  = "A precaution: no lethal temperature was found for it."
  }

  figure "temperature-target" {
    value    = "24 to 28 C"
    source   = ["A75", "A78"]
    quality  = "practice"
    disputed = "24 to 29 C by day (A78), 25.5 to 29 C (A75); wild ones often have over 30 C at noon and hide from it (A79)"
  }

  figure "humidity-target" {
    value    = "60 to 75 %"
    source   = ["A75", "A78"]
    quality  = "practice"
    disputed = "60 to 70 % (A75, A78); in the wild to 80 %, 60 to 70 % from November to February (A79)"
  }

  figure "moisture" {
    value = "either"
    note  = "Damp below."
  }

  figure "ventilation" {
    value   = "cross"
    source  = ["A79"]
    quality = "keeper"
    note    = "Openings in the lid alone bring mould and harm (A79)."
  }

  figure "substrate-depth-min" {
    value = "5 cm"
    note  = "5 to 8 cm."
  }

  figure "floor-first" {
    value    = "600 cm2"
    stages   = ["subadult", "adult"]
    disputed = "30 x 30 cm (A75, A29), 20 to 25 cm (A78); young 20 x 20 cm (A29)"
  }

  figure "height-min" {
    value    = "40 cm"
    stages   = ["subadult", "adult"]
    disputed = "30 cm (A75, A78), 45 cm (A79, A29); young 30 cm (A29)"
    note     = "It webs the box full."
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
    value   = "6 cm"
    stages  = ["adult"]
    source  = ["A75"]
    quality = "keeper"
  }

  figure "span" {
    value    = "13 to 15 cm"
    stages   = ["adult"]
    source   = ["A29", "A76"]
    quality  = "keeper"
    disputed = "15 cm (A75)"
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
    value   = "14 to 30 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 14 to 18, females 24 to 30 months. It grows fast (A75, A76)."
  }

  figure "lifespan" {
    value    = "12 to 15 years"
    source   = ["A75"]
    quality  = "keeper"
    disputed = "females to 15 years (A76)"
    note     = "Females; males 3 to 4 years (A75)."
  }

  figure "brood-size" {
    value   = "100 to 200"
    source  = ["memory"]
    quality = "memory"
  }

  figure "sac-time" {
    value   = "6 to 8 weeks"
    source  = ["memory"]
    quality = "memory"
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
    source  = ["A3", "A2"]
    quality = "paper"
    note    = "Its subfamily is one of the three with most cramps (A3); old reports tell of muscle spasms after its bites (A2). Palm climbers of Sierra Leone are bitten often, each old cutter of palm wine several times (A77). Keepers tell of severe pain, cramps, sweating and nausea (A76). After a bite: wash, rings off, keep the limb still; do not cut, suck or bind. Somebody stays for 24 h. Spreading pain, cramps, a tight chest or trouble with breath: hospital at once, with the name of the species on paper. Cramps can start after hours and come back for days (A1 to A3; the advice is common practice)."
  }

  figure "defence" {
    value = "Stands and strikes repeatedly. No hairs."
    note  = "Two people, or a box opened inside a second tub; a catch cup in reach."
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

  figure "climate-origin" {
    value   = "Palms, in Sierra Leone among others: often over 30 C at noon, when it hides; air to 80 %, 60 to 70 % from November to February."
    source  = ["A77", "A79"]
    quality = "keeper"
  }

  care "mist" {
    every   = "4 days"
    source  = ["A78"]
    quality = "keeper"
  }
}
