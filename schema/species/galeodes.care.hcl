species "galeodes" {
  title    = "Galeodes camel spider"
  latin    = "Galeodes Olivier, 1791"
  family   = "Galeodidae"
  type     = "camel-spider"
  also     = ["camel spider", "sun spider", "wind scorpion", "solifuge", "Walzenspinne", "Galeodes arabs", "Galeodes granti"]
  mistaken = ["Solifugae"]
  note     = "Some 200 names stand in the genus (OK94), and any camel spider is sold by its names; G. arabs C. L. Koch and G. granti Pocock are in the trade. Adults die within months whatever one does: of a first refusal ask whether it is old, or gravid and dug in. No handling at all; work at the lid only while it is seen."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft  = "20 to 38 C"
  warm_spot         = "35 to 38 C"
  night             = "20 to 24 C"
  humidity_soft     = "15 to 55 %"
  humidity_target   = "25 to 40 %"
  ventilation       = "cross"
  lifestyle         = "burrower"
  hangs_to_moult    = "false"
  gap_max           = "2 mm"
  hairs             = "none"
  speed             = "very quick"
  prey_length_share = "50 %"
  rest_full_heat    = "14 days"
  rest_step         = "2 to 3 C"
  rest_water        = "7 days"
  rest_first_meal   = "3 to 7 days"
  rest_full_meals   = "7 days"
  unattended_rest   = "7 days"

  figure "temperature-hard" {
    value   = "8 to 45 C"
    source  = ["OS1"]
    quality = "practice"
    note    = "G. granti lived for 24 hours at 49 C in air below 10 % (OS1, of Cloudsley-Thompson 1962); 45 C leaves a margin of four degrees."
  }

  figure "temperature-target" {
    value    = "28 to 32 C"
    source   = ["OK94"]
    quality  = "practice"
    disputed = "above 30 C (OK94)"
  }

  figure "air" {
    value   = "28 to 32 C"
    source  = ["OK94"]
    quality = "practice"
  }

  figure "rest" {
    value   = "optional"
    source  = ["OP5"]
    quality = "practice"
    note    = "G. caspius is out in summer only, and in burrows for the rest of the year (OP5). Only for a subadult or adult that has dug itself in."
  }

  figure "winter-rest" {
    value = "12 to 18 C"
  }

  figure "rest-length" {
    value = "8 to 16 weeks"
  }

  figure "drinks" {
    value   = "droplets"
    source  = ["OS1"]
    quality = "society"
    note    = "G. arabs chewed wet leaves; else the water is in the prey. A wet leaf, or a drop in a small dish."
  }

  figure "substrate-depth-min" {
    value   = "15 cm"
    source  = ["OK94"]
    quality = "practice"
    note    = "Deep sand that holds a tunnel (OK94), damp below at one end: the burrow is where it hides, moults, digests and lays (OS2)."
  }

  figure "floor-first" {
    value  = "100 cm2"
    stages = ["young"]
    note   = "Our estimate."
  }

  figure "floor-first" {
    value  = "400 cm2"
    stages = ["juvenile"]
    note   = "Our estimate."
  }

  figure "floor-first" {
    value  = "1200 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "30 cm"
    stages = ["subadult", "adult"]
  }

  figure "lid" {
    value   = "latched"
    source  = ["OK95"]
    quality = "practice"
    note    = "Over the whole top: it climbs glass with its sticky palps (OK95, of G. arabs; OK96, of another), so that a wall is no wall."
  }

  figure "moults-as-adult" {
    value   = "false"
    source  = ["memory"]
    quality = "memory"
  }

  figure "wait-after-moult" {
    value  = "7 days"
    stages = ["young", "juvenile"]
    note   = "As a vinegaroon; our estimate, none was found."
  }

  figure "wait-after-moult" {
    value  = "14 days"
    stages = ["subadult", "adult"]
    note   = "As a vinegaroon; our estimate, none was found."
  }

  figure "length" {
    value    = "4 to 7 cm"
    stages   = ["adult"]
    source   = ["OK94"]
    quality  = "keeper"
    disputed = "over 15 cm with its legs; imports are young of 4 to 5 cm (OK94)"
  }

  figure "mass" {
    value   = "3 to 8 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
    note    = "Fed."
  }

  figure "moults-to-adult" {
    value   = "8 to 10"
    source  = ["memory"]
    quality = "memory"
    note    = "Instars of Eremobates."
  }

  figure "lifespan" {
    value    = "0.5 to 1 years"
    source   = ["OP6"]
    quality  = "practice"
    disputed = "half a year, one year or several years by species (OP6)"
    note     = "Grown ones live for weeks to months (from memory). The longest in captivity was not found."
  }

  figure "old-age" {
    value = "90 days"
    note  = "After the last moult, or 30 days after it came as an adult: slow and shrunken. One that is gravid digs itself in."
  }

  figure "old-age-male" {
    value = "30 days"
  }

  figure "brood-size" {
    value   = "20 to 164"
    source  = ["OS2"]
    quality = "society"
    note    = "Of Eremobates durangonus, which lays 11.3 days after mating; some species lay more than once. Females of G. caspius guard the eggs in the burrow until they hatch (OP5)."
  }

  figure "on-mother" {
    value   = "9 to 12 days"
    source  = ["OS3"]
    quality = "society"
    note    = "Until the first instar, of two Eremobates in the laboratory; it does not feed."
  }

  figure "separation" {
    value   = "separate"
    source  = ["OS3"]
    quality = "society"
    note    = "From the second instar on they scatter and eat each other. Termites, springtails, fruit flies."
  }

  figure "keeping" {
    value   = "alone"
    source  = ["OP5"]
    quality = "paper"
    note    = "Always. Females of G. caspius ate males before or after mating."
  }

  figure "venom" {
    value   = "none"
    source  = ["OK96", "memory"]
    quality = "memory"
    note    = "It has none; the bite is painful all the same."
  }

  figure "defence" {
    value   = "A painful bite that can draw blood and become infected (OK96): wash it, and treat it as a cut. It rasps or hisses, and runs very fast, at 10 mph as is claimed (OK94)."
    source  = ["OK94", "OK96"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value = "Nearly all are caught in the wild: look up what their country lets out."
  }

  figure "climate-origin" {
    value   = "Deserts: small nymphs sit and wait in bushes, large ones hunt on the ground at night."
    source  = ["OP5"]
    quality = "paper"
  }

  figure "items-a-week" {
    value   = "4"
    stages  = ["adult"]
    source  = ["OK94"]
    quality = "practice"
    note    = "Voracious, on large crickets (OK94). Stop when the abdomen is one and a half times as wide as the head: overfed ones stop, dig in or die. Breathing by tracheae it spends much when it is active (OS1)."
  }

  figure "refusal-pause" {
    value  = "3 days"
    stages = ["subadult"]
    note   = "As a juvenile: it is a nymph still, and goes no longer than seven days without an offer."
  }

  need "water" {
    longest = "7 days"
    note    = "What it drinks is in its prey."
  }

  need "food" {
    longest = "7 days"
    stages  = ["young"]
  }

  need "food" {
    longest = "7 days"
    stages  = ["juvenile"]
  }

  need "food" {
    longest = "7 days"
    stages  = ["subadult"]
    note    = "A nymph still."
  }

  need "food" {
    longest = "14 days"
    stages  = ["adult"]
  }

  care "water" {
    task  = "Give a wet leaf, or a few drops in a small dish"
    every = "7 days"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "4 days"
    per_animal = 2
    prey       = "cricket medium"
  }
}
