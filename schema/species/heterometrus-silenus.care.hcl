species "heterometrus-silenus" {
  title    = "Vietnam forest scorpion"
  latin    = "Heterometrus silenus (Simon, 1884)"
  family   = "Scorpionidae"
  type     = "tropical-burrowing-scorpion"
  also     = ["giant blue", "Thai black"]
  mistaken = ["Heterometrus petersii", "Heterometrus spinifer", "Heterometrus laoticus", "Heterometrus longimanus", "Heterometrus swammerdami", "Heterometrus fulvipes", "Heterometrus indus", "Heterometrus scaber", "Heterometrus cyaneus"]
  note     = "Care is that of the genus; the name differs. It was sold and written as H. petersii (in part, C30) and H. spinifer; H. laoticus comes from the same countries and shops. Since 2020 the genus has eight species, and 28 went to other genera (C31, C68): labels such as swammerdami, fulvipes, indus, scaber (India, Sri Lanka) and cyaneus (Java) now mean other genera (from memory), of which there is no sheet; care is probably alike, and India is drier in winter."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "21 to 32 C"
  warm_spot               = "27 to 30 C"
  night                   = "20 to 23 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "60 to 90 %"
  humidity_target         = "75 to 85 %"
  substrate_depth_min     = "12 cm"
  substrate_depth_advised = "15 cm"
  growth_factor           = "1.26"
  on_mother               = "14 to 28 days"
  gestation_longest       = "18 months"
  hairs                   = "none"
  speed                   = "quick"

  figure "air" {
    value    = "21 to 29 C"
    source   = ["K3"]
    note     = "Our reading: 24 to 29 C are given, and whether of the spot or of the air is not said; either is taken as met, and 21 C is what is borne for long."
    disputed = "25.5 to 29.5 C for the genus (C52)"
  }

  figure "temperature-hard" {
    value = "15 to 35 C"
    note  = "A precaution: no lethal temperature was found."
  }

  figure "temperature-target" {
    value    = "24 to 29 C"
    disputed = "25.5 to 29.5 C for the genus, which is sensitive to temperature (C52)"
  }

  figure "moisture" {
    value = "damp"
    note  = "Scorpionidae lose body water already at a loss of 5 % of their mass (C7)."
  }

  figure "floor-first" {
    value    = "1200 cm2"
    stages   = ["subadult", "adult"]
    disputed = "870 cm2 by the rule of three lengths by two (C139)"
    note     = "As the genus."
  }

  figure "floor-further" {
    value  = "600 cm2"
    stages = ["subadult", "adult"]
    note   = "Company with caution only."
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["subadult", "adult"]
  }

  figure "keeping" {
    value    = "alone, or mother with brood"
    source   = ["K3"]
    quality  = "keeper"
    disputed = "ten together for years in a zoo without an incident (C52); H. laoticus communal, but cannibalism occurs, and very violent when caught (C69)"
    note     = "A group only of one size, and with caution."
  }

  figure "gap-max" {
    value  = "8 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["young"]
  }

  figure "looks" {
    value   = "Uniformly black with a weak shine, the carapace grainy."
    stages  = ["adult"]
    source  = ["C30"]
    quality = "paper"
  }

  figure "length" {
    value    = "9 to 12.5 cm"
    stages   = ["adult"]
    source   = ["C30"]
    quality  = "paper"
    disputed = "H. laoticus to 12 cm (C51)"
    note     = "Uniformly black with a weak shine, the carapace granular."
  }

  figure "mass" {
    value   = "12 to 25 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "moults-to-adult" {
    value   = "6 to 7"
    source  = ["C52"]
    quality = "society"
    note    = "Of the genus; none was measured."
  }

  figure "age-at-maturity" {
    value   = "12 to 36 months"
    source  = ["C52"]
    quality = "society"
    note    = "Of the genus."
  }

  figure "lifespan" {
    value   = "5 to 8 years"
    source  = ["K15", "K66"]
    quality = "keeper"
    note    = "Of the genus."
  }

  figure "gestation" {
    value    = "5 to 12 months"
    source   = ["C52", "K58"]
    quality  = "practice"
    disputed = "5 to 8 months (C52), 8 to 12 (K58, citing Polis)"
  }

  figure "brood-size" {
    value    = "15 to 40"
    source   = ["K58", "K67"]
    quality  = "practice"
    disputed = "7 to 28 in Thai giant scorpions, about one an hour, 12 to 24 h in all (C70)"
    note     = "As the genus."
  }

  figure "separation" {
    value = "keep with mother"
    note  = "The mother feeds them. Each alone from instar 3."
  }

  figure "venom" {
    value   = "mild"
    source  = ["C51"]
    quality = "society"
    note    = "As a bee, of the kin H. laoticus (C51): LD50 in mice about 190 mg/kg under the skin, no deaths (C69). An old note that H. swammerdami killed people (C52) was not confirmed anywhere. Wash, cool, watch breathing and swelling for an hour; an allergy is an emergency."
  }

  figure "defence" {
    value   = "Defensive; stings more readily than an emperor."
    source  = ["C52"]
    quality = "society"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Forest of South-East Asia, in burrows; the Philippines as its type locality is an error (C30). The genus: South-East Asia, the Andamans, Hainan (C31)."
    source  = ["C30", "C31"]
    quality = "practice"
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
    every      = "4 days"
    per_animal = 1
    prey       = "cricket adult"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "4 days"
    per_animal = 1
    rotate     = ["cricket adult", "cricket adult", "roach medium"]
  }
}
