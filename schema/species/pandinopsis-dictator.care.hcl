species "pandinopsis-dictator" {
  title    = "dictator scorpion"
  latin    = "Pandinopsis dictator (Pocock, 1888)"
  family   = "Scorpionidae"
  type     = "tropical-burrowing-scorpion"
  former   = ["Pandinus dictator"]
  mistaken = ["Pandinus imperator", "Pandinus gambiensis", "Pandinus roeseli"]
  note     = "Of rain forest: less heat and more damp than an emperor of the savanna. It is told from Pandinus imperator, P. gambiensis and P. roeseli only by sensory hairs and foot spines (C41), and emperors are sold under its name. Most are caught in the wild: 60 to 90 days of quarantine, and papers of origin always. Grown ones may fast for months."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "22 to 32 C"
  temperature_target      = "23 to 28 C"
  warm_spot               = "27 to 32 C"
  air                     = "23 to 28 C"
  night                   = "20 to 24 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "65 to 90 %"
  humidity_target         = "75 to 85 %"
  substrate_depth_min     = "15 cm"
  substrate_depth_advised = "20 cm"
  moults_to_adult         = "6"
  age_at_maturity         = "36 to 60 months"
  gestation_longest       = "24 months"
  hairs                   = "none"
  speed                   = "slow"

  figure "temperature-hard" {
    value = "15 to 35 C"
    note  = "A precaution: no lethal temperature was found, and no thermometer figure of this species; all heat is as for the emperor."
  }

  figure "moisture" {
    value = "damp"
    note  = "And air must move. Scorpionidae lose body water already at a loss of 5 % of their mass (C7)."
  }

  figure "drinks" {
    value = "dish"
    note  = "A large and shallow one."
  }

  figure "floor-first" {
    value    = "1900 cm2"
    stages   = ["subadult", "adult"]
    disputed = "a box of 38 L, 1290 cm2, at least (C61)"
    note     = "Six times the square of 18 cm: three lengths long and two wide (C139); our arithmetic."
  }

  figure "floor-further" {
    value  = "900 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["subadult", "adult"]
  }

  figure "keeping" {
    value    = "alone, or mother with brood"
    disputed = "a burrow sometimes held more than one (C50)"
    note     = "Those that were raised together may stay so, three at the most. Nothing was found on cannibalism."
  }

  figure "gap-max" {
    value  = "10 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "3 mm"
    stages = ["young"]
  }

  figure "length" {
    value    = "17 to 20 cm"
    stages   = ["adult"]
    source   = ["C50"]
    quality  = "society"
    disputed = "to 20 cm (C60, C61), more than 14 cm (C32)"
  }

  figure "mass" {
    value   = "25 to 45 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    note    = "By the emperor; no weighing of this species was found."
  }

  figure "growth-factor" {
    value   = "1.26"
    source  = ["C3"]
    quality = "paper"
    note    = "Theory; not measured on this species."
  }

  figure "lifespan" {
    value    = "6 to 10 years"
    disputed = "10 to 15 years, unsupported (C61)"
  }

  figure "gestation" {
    value    = "9 to 18 months"
    disputed = "long (C50)"
    note     = "By the emperor."
  }

  figure "brood-size" {
    value    = "10 to 30"
    disputed = "small litters (C50)"
    note     = "By the emperor."
  }

  figure "on-mother" {
    value   = "14 to 21 days"
    source  = ["C50"]
    quality = "practice"
    note    = "To the first moult (C50); the days are common practice."
  }

  figure "separation" {
    value   = "keep with mother"
    source  = ["C35"]
    quality = "practice"
    note    = "Shown by an experiment on the emperor (C35)."
  }

  figure "venom" {
    value = "mild"
    note  = "No report of this species; of the genus local pain is known, and no deaths. Wash, cool, watch breathing and swelling for an hour; an allergy is an emergency."
  }

  figure "defence" {
    value = "Slow, and pinches hard."
  }

  figure "cites" {
    value   = "II"
    source  = ["C41", "G2"]
    quality = "society"
    note    = "As Pandinus dictator: proposed in 1994, in force since 1995. P. roeseli counts as included (C32)."
  }

  figure "law" {
    value   = "European Union Annex B (from memory): look up the duties of proof and report. Imports from Cameroon were under review in 2014 (C40, result not seen)."
    source  = ["C40", "memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Rain forest of Cameroon, Gabon, Congo and Equatorial Guinea."
    source  = ["C41", "C60"]
    quality = "keeper"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "3 days"
    per_animal = 1
    prey       = "cricket small"
    killed     = true
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "4 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket adult"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "5 days"
    per_animal = 1
    rotate     = ["cricket adult", "cricket adult", "roach medium"]
  }
}
