species "scorpio-maurus" {
  title    = "large-clawed scorpion"
  latin    = "Scorpio maurus Linnaeus, 1758"
  family   = "Scorpionidae"
  type     = "desert-burrowing-scorpion"
  also     = ["Maurus scorpion", "Israeli gold scorpion"]
  former   = ["Scorpio maurus tunetanus"]
  mistaken = ["Scorpio palmatus", "Scorpio maurus palmatus", "Scorpio fuscus", "Scorpio maurus fuscus", "Scorpio mogadorensis", "Pandinoides"]
  note     = "Since the revisions Scorpio is about 16 species, palmatus, fuscus and mogadorensis among them (C84), and a label rarely says which. A desert animal, and yet never dry through: it loses water fast, and in boxes it is often dead within months, though it can grow old. Its lower soil stays damp, always."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "12 to 36 C"
  temperature_target      = "23 to 28 C"
  air                     = "23 to 28 C"
  humidity_soft           = "25 to 65 %"
  humidity_target         = "35 to 50 %"
  substrate_depth_advised = "25 to 30 cm"
  moults_to_adult         = "5 to 6"
  hairs                   = "none"
  speed                   = "quick"
  rest_full_heat          = "14 days"
  rest_step               = "2 to 3 C"
  rest_first_meal         = "3 to 7 days"
  rest_full_meals         = "7 days"
  rest_water              = "7 to 14 days"
  unattended_rest         = "14 days"

  figure "temperature-hard" {
    value   = "5 to 40 C"
    source  = ["C15"]
    quality = "practice"
    note    = "A precaution: desert scorpions die at 45 to 47 C (C15); nothing was measured on this species."
  }

  figure "warm-spot" {
    value   = "30 to 35 C"
    source  = ["C82"]
    quality = "keeper"
  }

  figure "night" {
    value    = "18 to 25 C"
    source   = ["C82"]
    quality  = "practice"
    disputed = "20 to 25 C (C82)"
  }

  figure "rest" {
    value   = "optional"
    source  = ["C82"]
    quality = "practice"
    note    = "8 to 12 weeks at 10 to 15 C (C82)."
  }

  figure "winter-rest" {
    value   = "10 to 15 C"
    source  = ["C82"]
    quality = "keeper"
    note    = "Above the soil it is dry then, below it stays faintly damp: dish and damp are looked after more often than with other desert scorpions; our estimate."
  }

  figure "rest-length" {
    value   = "8 to 12 weeks"
    source  = ["C82"]
    quality = "keeper"
  }

  figure "moisture" {
    value   = "damp"
    source  = ["C6", "C7", "C83"]
    quality = "practice"
    note    = "Dry on top, damp below, always: it cannot be kept easily dry (C83). Body water falls at a loss of 5 % of its mass (C7); after a loss of 10 % its blood is 23 % denser, that of scorpions of the family Buthidae beside it 5 to 9 % (C6). One that weighs 5 % less after two weeks of the same meals wants dish and damp looked at first. It is not misted."
  }

  figure "substrate-depth-min" {
    value    = "20 cm"
    source   = ["C83", "C84", "C85"]
    quality  = "practice"
    disputed = "wild burrows of about 40 cm (C83), over 30 cm (C84), to 1 m (C85)"
    note     = "Loam and sand that hold, and a begun tunnel with a bend."
  }

  figure "height-min" {
    value  = "32 cm"
    stages = ["subadult", "adult"]
    note   = "The least depth and 12 cm above it."
  }

  figure "floor-first" {
    value  = "300 cm2"
    stages = ["subadult", "adult"]
    note   = "Six times the square of 7 cm: three lengths long and two wide; our arithmetic."
  }

  figure "gap-max" {
    value  = "4 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1.5 mm"
    stages = ["young"]
  }

  figure "length" {
    value    = "6 to 8 cm"
    stages   = ["adult"]
    source   = ["C82"]
    quality  = "keeper"
    disputed = "5 to 8 cm (C84)"
    note     = "With the tail; palmatus about 6 cm."
  }

  figure "mass" {
    value   = "2 to 3 g"
    stages  = ["adult"]
    source  = ["C83"]
    quality = "keeper"
  }

  figure "lifespan" {
    value   = "9 to 17 years"
    source  = ["C8"]
    quality = "paper"
    note    = "In the wild, of S. m. fuscus: 9 years, perhaps 17. In boxes often dead in months; a shop's text puts that down to wrong management."
  }

  figure "growth-factor" {
    value   = "1.26"
    source  = ["C3"]
    quality = "practice"
    note    = "By theory; none is measured on this species."
  }

  figure "age-at-maturity" {
    value   = "20 to 30 months"
    source  = ["C8"]
    quality = "practice"
    note    = "Of S. m. fuscus: adult in its second year, the first brood at three, then probably one every second year, four to eight in all (C8)."
  }

  figure "gestation" {
    value   = "14 to 15 months"
    source  = ["memory"]
    quality = "memory"
  }

  figure "gestation-longest" {
    value = "18 months"
    note  = "Our estimate."
  }

  figure "brood-size" {
    value   = "8 to 30"
    source  = ["memory"]
    quality = "memory"
  }

  figure "on-mother" {
    value   = "10 to 16 days"
    source  = ["memory"]
    quality = "memory"
  }

  figure "separation" {
    value = "keep with mother"
    note  = "For some weeks."
  }

  figure "keeping" {
    value    = "alone, or mother with brood"
    source   = ["C83", "C84"]
    quality  = "keeper"
    disputed = "two or three in 20 x 20 x 30 cm, watched; they wound each other (C82)"
  }

  figure "venom" {
    value   = "mild"
    source  = ["C83", "C85"]
    quality = "keeper"
    note    = "A weak nerve poison, no deaths (C85), not medically important (C83); as a bee, painful at worst. Wash and cool the sting, watch breathing and swelling for an hour; signs of an allergy are an emergency."
  }

  figure "defence" {
    value   = "Defends itself with the claws and rarely stings."
    source  = ["C82", "C83"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Dry country from North Africa to the Near East, in burrows of its own. Those of palmatus have a platform 2 to 5 cm under the ground by the door, two bends at least, and an end chamber that stays within 2 to 4 K (C9)."
    source  = ["C9", "memory"]
    quality = "memory"
  }

  need "moisture" {
    longest = "21 days"
    note    = "Water into the deep soil, every two to three weeks."
  }

  care "water" {
    every = "2 days"
  }

  care "moisten" {
    every = "14 days"
    task  = "Water through the tube to the bottom"
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
    every      = "7 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 1
    prey       = "cricket medium"
  }
}
