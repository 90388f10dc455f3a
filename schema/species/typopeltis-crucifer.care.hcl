species "typopeltis-crucifer" {
  title    = "Taiwan whip scorpion"
  latin    = "Typopeltis crucifer Pocock, 1894"
  family   = "Thelyphonidae"
  type     = "vinegaroon"
  also     = ["Asian vinegaroon", "whip scorpion", "vinegaroon"]
  former   = ["Typopeltis sp."]
  mistaken = ["Thelyphonus"]
  note     = "Three forms in Taiwan, of the north, the west, and the east and south, are told by the female plate and the male palp (OP4). Thelyphonus of Thailand is sold as it and is kept in the same way, a little warmer and without a rest. Its brood times were counted. It sprays at the eyes: mind that at each opening of the lid."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard        = "8 to 34 C"
  temperature_soft        = "18 to 29 C"
  night                   = "18 to 22 C"
  humidity_soft           = "65 to 90 %"
  substrate_depth_advised = "15 cm"
  gap_max                 = "2 mm"
  hairs                   = "none"
  speed                   = "quick"
  rest_full_heat          = "14 days"
  rest_step               = "2 to 3 C"
  rest_water              = "7 days"
  rest_first_meal         = "3 to 7 days"
  rest_full_meals         = "7 days"

  stage "newborn" {
    instars = "1"
    note    = "On the mother."
    source  = ["P31"]
  }

  stage "young" {
    instars = "2"
    note    = "Four nymph stages, then adult, as its kin (P31)."
    source  = ["P31"]
  }

  stage "juvenile" {
    instars = "3 to 4"
    note    = "Four nymph stages, then adult, as its kin (P31)."
    source  = ["P31"]
  }

  stage "subadult" {
    instars = "5"
    note    = "Four nymph stages, then adult, as its kin (P31)."
    source  = ["P31"]
  }

  stage "adult" {
    instars = "6"
    note    = "Four nymph stages, then adult, as its kin (P31)."
    source  = ["P31"]
  }

  figure "temperature-target" {
    value    = "22 to 27 C"
    source   = ["memory"]
    quality  = "memory"
    disputed = "23 to 28 C, mean 25 C, and hot days of a steady 30 C with no harm told (OS4, of Thelyphonus)"
  }

  figure "air" {
    value   = "22 to 27 C"
    source  = ["memory"]
    quality = "memory"
  }

  figure "rest" {
    value   = "optional"
    source  = ["memory"]
    quality = "memory"
    note    = "Of the subtropics: possible, not needed."
  }

  figure "winter-rest" {
    value   = "14 to 18 C"
    source  = ["memory"]
    quality = "memory"
  }

  figure "rest-length" {
    value   = "6 to 10 weeks"
    source  = ["memory"]
    quality = "memory"
  }

  figure "humidity-target" {
    value    = "75 to 85 %"
    source   = ["OS4"]
    quality  = "practice"
    disputed = "80 %, as a Thelyphonus was kept (OS4)"
  }

  figure "drinks" {
    value   = "dish"
    source  = ["OS4"]
    quality = "society"
  }

  figure "substrate-depth-min" {
    value   = "10 cm"
    source  = ["OP4", "OS4"]
    quality = "practice"
    note    = "It digs, and closes the entrance to moult and to lay (OP4). On 3 cm in a cricket box there was no brood (OS4)."
  }

  figure "floor-first" {
    value  = "600 cm2"
    stages = ["subadult", "adult"]
    note   = "As Mastigoproctus."
  }

  figure "length" {
    value    = "40 mm"
    stages   = ["adult"]
    source   = ["OK28c"]
    quality  = "keeper"
    disputed = "30 mm in Thelyphonus (OS4)"
    note     = "About, without the whip."
  }

  figure "mass" {
    value   = "2 to 4 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value   = "5 to 7 years"
    source  = ["memory"]
    quality = "memory"
    note    = "A mother may die after her brood."
  }

  figure "growth-factor" {
    value   = "1.11 to 1.57"
    source  = ["OP4"]
    quality = "paper"
    note    = "Of the carapace, at 174 moults."
  }

  figure "moults-to-adult" {
    value   = "5"
    source  = ["P31"]
    quality = "practice"
    note    = "Four as free nymphs, as its kin (P31), and the one on the mother."
  }

  figure "instar-length" {
    value   = "1 year"
    instar  = 2
    source  = ["OP4"]
    quality = "paper"
    note    = "About one moult a year, of 40 animals, in no fixed season."
  }

  figure "instar-length" {
    value   = "1 year"
    instar  = 3
    source  = ["OP4"]
    quality = "paper"
    note    = "About one moult a year, of 40 animals, in no fixed season."
  }

  figure "instar-length" {
    value   = "1 year"
    instar  = 4
    source  = ["OP4"]
    quality = "paper"
    note    = "About one moult a year, of 40 animals, in no fixed season."
  }

  figure "instar-length" {
    value   = "1 year"
    instar  = 5
    source  = ["OP4"]
    quality = "paper"
    note    = "About one moult a year, of 40 animals, in no fixed season."
  }

  figure "age-at-maturity" {
    value   = "4 to 5 years"
    source  = ["OP4", "P31"]
    quality = "practice"
  }

  figure "sac-time" {
    value   = "29 to 32 days"
    source  = ["OP4"]
    quality = "paper"
    note    = "From laying to hatching, of five. Fifteen laid in June to August."
  }

  figure "on-mother" {
    value   = "29 to 36 days"
    source  = ["OP4"]
    quality = "paper"
    note    = "Of four broods: 58 to 68 days from the laying until the young are off."
  }

  figure "brood-size" {
    value   = "21 to 47"
    source  = ["OP4"]
    quality = "paper"
    note    = "Of four broods."
  }

  figure "undisturbed" {
    value   = "50 days"
    source  = ["OP4"]
    quality = "practice"
    note    = "From hatching: until 14 days after the young are off; about 90 days from the day on which she seals herself in."
  }

  figure "separation" {
    value = "separate"
    note  = "They eat each other."
  }

  figure "separate-within" {
    value = "7 to 14 days"
    note  = "Once they have eaten."
  }

  figure "keeping" {
    value    = "alone, or mother with brood"
    source   = ["OS26"]
    quality  = "society"
    disputed = "small groups that did well, with no numbers (OS4, of Thelyphonus)"
    note     = "Very aggressive to each other."
  }

  figure "venom" {
    value = "none"
  }

  figure "spray" {
    value   = "acid"
    source  = ["OS4", "OP4"]
    quality = "society"
  }

  figure "defence" {
    value  = "Sprays a mix of acetic acid: eyes burn and are washed out with cold water, and it is smelt at each opening of the box (OS4). A hard touch of the abdomen brings the spray and flight, one from the front raised palps only; males spray less readily than females and nymphs (OP4)."
    source = ["OS4", "OP4"]
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Taiwan."
    source  = ["OP4"]
    quality = "paper"
  }

  figure "items-a-week" {
    value    = "1 to 2"
    stages   = ["adult"]
    source   = ["OP4", "OS4"]
    quality  = "practice"
    disputed = "a large cricket every two days was always eaten, by a Thelyphonus of 3 cm (OS4)"
    note     = "It eats arthropods and snails (OP4)."
  }

  care "mist" {
    every = "3 days"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket medium"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }
}
