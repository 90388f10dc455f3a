species "phyllium-philippinicum" {
  title    = "Philippine leaf insect"
  latin    = "Phyllium philippinicum Hennemann, Conle, Gottardo & Bresseel, 2009"
  family   = "Phylliidae"
  type     = "stick-insect"
  also     = ["PSG 278", "walking leaf", "Wandelndes Blatt", "leaf insect"]
  former   = ["Phyllium sp. Philippines"]
  mistaken = ["Phyllium siccifolium", "Pulchriphyllium giganteum", "Pulchriphyllium bioculatum"]
  note     = "It sways when it is touched and sits still all day otherwise: heads are counted from below with a torch. The hairy eggs stay in the litter, which is kept and never thrown out. Many nymphs die in their first two weeks."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard = "15 to 33 C"
  temperature_soft = "20 to 29 C"
  night            = "18 to 20 C"
  rest             = "none"
  cooler           = "2 to 3 C"
  humidity_soft    = "50 to 90 %"
  hairs            = "none"
  speed            = "slow"

  figure "temperature-target" {
    value    = "22 to 28 C"
    source   = ["OK53"]
    quality  = "keeper"
    disputed = "22 to 27 C (OK54)"
  }

  figure "air" {
    value    = "22 to 28 C"
    source   = ["OK53"]
    quality  = "keeper"
    disputed = "22 to 27 C (OK54)"
  }

  figure "humidity-target" {
    value    = "60 to 80 %"
    source   = ["OK54", "OK56"]
    quality  = "keeper"
    disputed = "70 to 90 % (OK53), 40 to 50 % (OK50)"
    note     = "A mist in the evening that is dry by the morning: too wet is fungus, too dry a stuck moult (OK50)."
  }

  figure "floor-first" {
    value    = "300 cm2"
    stages   = ["subadult", "adult"]
    disputed = "30 x 30 x 60 cm for four to six (OK56)"
    note     = "900 cm2 for four to six; our division."
  }

  figure "floor-further" {
    value  = "150 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value    = "40 cm"
    stages   = ["adult"]
    disputed = "60 cm (OK56)"
    note     = "60 cm is better. A rough wall of cork is liked for the moult."
  }

  figure "gap-max" {
    value  = "1.5 mm"
    stages = ["juvenile"]
  }

  figure "gap-max" {
    value    = "4 mm"
    stages   = ["subadult", "adult"]
    disputed = "1.5 mm for all"
    note     = "Grown, they are flat, and wider than a finger is thick: our estimate. What hatches in the litter leaves by 1 mm."
  }

  figure "keeping" {
    value = "groups"
    note  = "They nibble at each other where leaves are short (as remembered)."
  }

  figure "length" {
    value    = "5.5 to 9.8 cm"
    stages   = ["adult"]
    source   = ["OK52"]
    quality  = "keeper"
    disputed = "females 7, males 6 cm (OK51)"
    note     = "Females 65 to 98 mm long and 29 to 41 wide, males 55 to 68 long (OK52)."
  }

  figure "mass" {
    value   = "4 to 6 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    note    = "Females."
  }

  figure "lifespan" {
    value    = "6 to 12 months"
    source   = ["OK54"]
    quality  = "keeper"
    disputed = "to one year (OK51); 6 to 9 months as adult (OK50)"
    note     = "Males live for weeks as adult (as remembered)."
  }

  figure "moults-to-adult" {
    value   = "5 to 6"
    source  = ["memory"]
    quality = "memory"
    note    = "Males five, females six; one a month (OK50)."
  }

  figure "age-at-maturity" {
    value   = "5 to 6 months"
    source  = ["OK50"]
    quality = "keeper"
  }

  figure "sac-time" {
    value    = "4 to 8 months"
    source   = ["OK55"]
    quality  = "keeper"
    disputed = "4 months (OK50)"
  }

  figure "brood-size" {
    value    = "300"
    source   = ["OK55"]
    quality  = "keeper"
    disputed = "1 to 3 eggs a day (OK50), one in two or three days (OK55)"
    note     = "Eggs in a life, of the genus; from four weeks after the last moult on (OK55). Whether females without males have young is disputed: yes, but weak ones (OK54), unclear (OK50). Plan on males."
  }

  figure "old-age" {
    value = "120 days"
    note  = "Brown edges."
  }

  figure "old-age-male" {
    value = "21 days"
  }

  figure "venom" {
    value = "none"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "The Philippines rule on export: ask for a proof that yours was bred. USA: look up the permit for exotic stick insects."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Wet forest of the Philippines."
    source  = ["memory"]
    quality = "memory"
  }

  figure "sexing" {
    value   = "From the third moult on."
    source  = ["OK50"]
    quality = "keeper"
    note    = "Hatchlings are reddish, and green after the first moult."
  }

  care "leaves" {
    task  = "Fresh bramble, oak, hazel, rose, raspberry or salal in the jar, edges cut for hatchlings; nymphs on the old ones?"
    every = "3 days"
  }

  care "spot-clean" {
    task  = "Droppings out, litter with the eggs stays; mould?"
    every = "14 days"
  }
}
