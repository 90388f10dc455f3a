species "hadrurus-spadix" {
  title    = "black-back hairy scorpion"
  latin    = "Hadrurus spadix Stahnke, 1940"
  family   = "Hadruridae"
  type     = "desert-burrowing-scorpion"
  also     = ["black-back scorpion", "northern desert hairy scorpion"]
  mistaken = ["Hadrurus arizonensis"]
  note     = "H. arizonensis has a yellow triangle between eyes and jaws; here the whole carapace and back are dark and the legs yellow (C87). Kept alike (C89), with a colder winter and still less wet. The hardest of the hairy ones to raise: the young die at moults (as remembered). It fasts for long. The family is Hadruridae, Caraboctonidae or Iuridae by author."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "12 to 36 C"
  air                     = "22 to 30 C"
  night                   = "18 to 22 C"
  humidity_soft           = "15 to 55 %"
  substrate_depth_advised = "20 cm"
  moults_to_adult         = "6"
  gestation               = "6 to 12 months"
  gestation_longest       = "14 months"
  on_mother               = "7 to 28 days"
  separation              = "separate"
  separate_within         = "3 to 14 days"
  hairs                   = "none"
  speed                   = "quick"
  rest_full_heat          = "14 days"
  rest_step               = "2 to 3 C"
  rest_first_meal         = "3 to 7 days"
  rest_full_meals         = "7 days"
  rest_water              = "14 to 30 days"
  unattended_rest         = "21 days"

  figure "temperature-hard" {
    value   = "5 to 40 C"
    source  = ["C15"]
    quality = "practice"
    note    = "A precaution: desert scorpions die at 45 to 47 C (C15); nothing was measured on this species."
  }

  figure "temperature-target" {
    value    = "24 to 30 C"
    source   = ["C86", "C87"]
    quality  = "practice"
    disputed = "by day 30 to 35 C (C86), 24 to 29 C (C87)"
  }

  figure "warm-spot" {
    value    = "30 to 35 C"
    source   = ["C86"]
    quality  = "practice"
    disputed = "24 to 29 C (C87); kin H. arizonensis 27 to 35 C, one spot to 40 C (C88)"
  }

  figure "rest" {
    value   = "optional"
    source  = ["C91"]
    quality = "practice"
    note    = "No heater in winter (C91)."
  }

  figure "winter-rest" {
    value = "8 to 15 C"
    note  = "Its range goes north to Oregon and Idaho (C87): a colder rest than that of H. arizonensis."
  }

  figure "rest-length" {
    value = "8 to 14 weeks"
  }

  figure "humidity-target" {
    value    = "20 to 40 %"
    source   = ["C86", "C88"]
    quality  = "practice"
    disputed = "about 30 % (C86), at most 40 % (C88)"
  }

  figure "moisture" {
    value   = "arid"
    source  = ["C87", "C88"]
    quality = "practice"
    note    = "A wet one dies of a fungus (C87). The soil is filled in damp and dries for three to four weeks before the animal goes in (C88); then dry, with one deep corner damp by a tube."
  }

  figure "drinks" {
    value    = "dish"
    source   = ["C86", "C88"]
    quality  = "practice"
    disputed = "no dish (C86), a bottle cap (C88)"
    note     = "A small dish, for one or two days a week."
  }

  figure "substrate-depth-min" {
    value   = "15 cm"
    source  = ["C88"]
    quality = "keeper"
    note    = "15 to 20 cm. Stones stand on the glass of the floor, not on sand."
  }

  figure "floor-first" {
    value    = "600 cm2"
    stages   = ["subadult", "adult"]
    disputed = "a box of 6 to 10 L (C87), 40 x 30 cm (C88)"
    note     = "Three lengths long and two wide would be 730 cm2 at 11 cm."
  }

  figure "gap-max" {
    value  = "6 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["young"]
  }

  figure "looks" {
    value   = "The whole carapace and back dark, the legs yellow; H. arizonensis has a yellow triangle between eyes and jaws."
    stages  = ["adult"]
    source  = ["C87"]
    quality = "keeper"
  }

  figure "length" {
    value    = "10 to 13 cm"
    stages   = ["adult"]
    source   = ["C86", "C87", "C90"]
    quality  = "practice"
    disputed = "8 to 10 cm (C87), about 15 cm (C86), 8 to 15 cm (C90)"
    note     = "With the tail."
  }

  figure "mass" {
    value  = "4 to 8 g"
    stages = ["adult"]
    note   = "As Hadrurus arizonensis."
  }

  figure "lifespan" {
    value    = "8 to 15 years"
    source   = ["C90"]
    quality  = "practice"
    disputed = "20 years, as claimed (C90)"
  }

  figure "growth-factor" {
    value   = "1.27"
    source  = ["C33"]
    quality = "practice"
    note    = "The carapace of Hadrurus gertschi, which has seven instars."
  }

  figure "age-at-maturity" {
    value   = "4 to 7 years"
    source  = ["C33"]
    quality = "practice"
    note    = "Hadrurus gertschi takes at least four years (C33); the upper figure is that of H. arizonensis."
  }

  figure "brood-size" {
    value    = "12 to 35"
    source   = ["C90", "N12"]
    quality  = "practice"
    disputed = "about 12 (C90), to 35 for the genus (N12)"
  }

  figure "keeping" {
    value   = "alone"
    source  = ["C86", "C87"]
    quality = "keeper"
    note    = "Fights and cannibalism."
  }

  figure "venom" {
    value   = "painful"
    source  = ["C86"]
    quality = "keeper"
    note    = "Painful, and of low toxicity (C86). Of its kin H. arizonensis it takes 168 to 198 mg/kg to kill half of the mice, of Androctonus australis 0.32 to 6 mg/kg (C92). A precaution: children, the old and people with an allergy. Wash and cool the sting, watch breathing and swelling for an hour; a doctor if anything happens away from the sting, or to a child, or to somebody pregnant, old or ill. Signs of an allergy are an emergency."
  }

  figure "spray" {
    value   = "venom"
    source  = ["N13"]
    quality = "keeper"
    note    = "One was filmed."
  }

  figure "defence" {
    value   = "Nervous; stings rather than pinches (C86). One was filmed spraying venom (N13): goggles when the box is open; eyes are rinsed with water at once, then a doctor."
    source  = ["C86", "N13", "C133"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Look up the rules for collecting in the western USA (as remembered)."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Deserts of western North America, north to Oregon and Idaho."
    source  = ["C87"]
    quality = "keeper"
  }

  state "rest" {
    care   = "mist"
    manner = "held"
    note   = "Cold and wet kills a desert scorpion."
  }

  care "water" {
    every = "7 days"
    task  = "Fresh water in a bottle cap, for a day or two"
  }

  care "moisten" {
    every = "30 days"
    task  = "A little water through the tube into the deep corner"
  }
}
