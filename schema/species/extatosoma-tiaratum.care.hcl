species "extatosoma-tiaratum" {
  title    = "giant prickly stick insect"
  latin    = "Extatosoma tiaratum (Macleay, 1826)"
  family   = "Phasmatidae"
  type     = "stick-insect"
  also     = ["PSG 9", "Macleay's spectre", "spiny leaf insect", "Australische Gespenstschrecke"]
  mistaken = ["Extatosoma popa"]
  note     = "One female may fill the room with nymphs a year after she died: eggs are counted, and what is too much is frozen. Hanging by one leg, dull and full, is a moult: no spraying then. The strain of Innisfail (PSG 9a) is not mixed with others (OK50b)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard = "10 to 34 C"
  temperature_soft = "18 to 28 C"
  night            = "17 to 20 C"
  rest             = "none"
  cooler           = "2 to 3 C"
  humidity_soft    = "50 to 85 %"
  humidity_target  = "60 to 75 %"
  hairs            = "none"
  speed            = "slow"

  figure "temperature-target" {
    value   = "20 to 25 C"
    source  = ["OK47"]
    quality = "keeper"
    note    = "No heater (OK47)."
  }

  figure "air" {
    value   = "20 to 25 C"
    source  = ["OK47"]
    quality = "keeper"
  }

  figure "floor-first" {
    value  = "500 cm2"
    stages = ["subadult", "adult"]
    note   = "900 cm2, 30 x 30 cm, for three to four; our division."
  }

  figure "floor-further" {
    value  = "200 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value   = "46 cm"
    stages  = ["adult"]
    source  = ["OK47"]
    quality = "keeper"
    note    = "Three lengths hang free below the roof."
  }

  figure "keeping" {
    value = "groups"
    note  = "In a crowd legs and wings are bitten."
  }

  figure "separation" {
    value = "keep with mother"
    note  = "Nymphs live with the grown. They look and run like ants, and need leaves on the day on which they hatch."
  }

  figure "length" {
    value    = "9 to 15 cm"
    stages   = ["adult"]
    source   = ["OK46"]
    quality  = "keeper"
    disputed = "females 12 to 14 cm (OK50b); to 20 cm in nature (an encyclopedia)"
    note     = "Females 13 to 15, males 9 to 10 cm (OK46); hatchlings 11 to 12 mm (OK46)."
  }

  figure "mass" {
    value    = "25 to 40 g"
    stages   = ["adult"]
    source   = ["OS20", "OS21", "OS22"]
    quality  = "society"
    disputed = "25 g (OS20), 30 g (OS21), 30 to 40 g (OS22)"
    note     = "Females; males 3 to 5 g as remembered."
  }

  figure "lifespan" {
    value    = "6 to 18 months"
    source   = ["OK46"]
    quality  = "keeper"
    disputed = "females 18, males 6 to 8 (OS20); females over 18 (OS22)"
    note     = "Females 14 to 18, males 6 to 12 (OK46)."
  }

  figure "growth-factor" {
    value   = "1.52"
    source  = ["OK46"]
    quality = "practice"
    note    = "From 11.5 to 140 mm in six moults, males 1.53 in five; 1.43 if females have seven. Our arithmetic."
  }

  figure "moults-to-adult" {
    value    = "5 to 6"
    source   = ["OK46"]
    quality  = "keeper"
    disputed = "6 to 7 (OS22)"
    note     = "Males five, females six."
  }

  figure "age-at-maturity" {
    value   = "5 months"
    source  = ["OK46"]
    quality = "keeper"
  }

  figure "sac-time" {
    value    = "4 to 9 months"
    source   = ["OS20"]
    quality  = "society"
    disputed = "4 to 9 months (OK47), 5 to 8 (OS22)"
    note     = "Fertilised eggs about four months, others about nine (OS20). On paper or vermiculite that is just damp; damp eggs turn dark (OS21)."
  }

  figure "brood-size" {
    value   = "1000"
    source  = ["OS22"]
    quality = "society"
    note    = "Eggs in a life, and more, flicked away one by one. Females without males lay fertile eggs too, which give daughters (OP12, OS22); mated ones lay more in a week, and those kept without any male more than those near males (OP12)."
  }

  figure "old-age" {
    value = "240 days"
    note  = "It falls, and lays fewer eggs."
  }

  figure "old-age-male" {
    value = "90 days"
  }

  figure "venom" {
    value = "none"
  }

  figure "defence" {
    value = "Its hind legs clamp, and their spines can draw blood: wash the scratch. Males fly. It smells of toffee or peanut butter."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Australia forbids export: ask for a proof that yours was bred. USA: look up the permit for exotic stick insects."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Forest of eastern Australia."
    source  = ["memory"]
    quality = "memory"
  }

  care "leaves" {
    task    = "Fresh bramble, hazel, oak, salal or eucalyptus in the jar, without young bramble shoots; nymphs on the old ones?"
    every   = "3 days"
    because = "young shoots can be noxious to the young (OS21)"
  }
}
