species "poecilotheria-metallica" {
  title   = "Gooty sapphire ornamental tarantula"
  latin   = "Poecilotheria metallica Pocock, 1899"
  family  = "Theraphosidae"
  type    = "arboreal-tarantula"
  also    = ["Gooty sapphire ornamental", "Gooty sapphire", "peacock parachute spider", "metallic blue tarantula", "pokie"]
  note    = "Nothing looks like it when blue; slings are grey, the blue comes later (A64). Darkness and one tight tube matter more than the size of the box. A buyer needs its paper of origin."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  temperature_soft        = "20 to 29 C"
  air                     = "22 to 27 C"
  night                   = "19 to 23 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "45 to 80 %"
  substrate_depth_min     = "5 cm"
  substrate_depth_advised = "8 cm"
  first_meal              = "7 days"
  old_age_male            = "6 months"
  hairs                   = "none"

  figure "temperature-hard" {
    value = "15 to 33 C"
    note  = "A precaution: no lethal temperature of it is known."
  }

  figure "temperature-target" {
    value    = "22 to 27 C"
    disputed = "25.5 C by day with a drop at night, and no heater of its own (A68), 22 to 26.5 C for the genus (A62)"
  }

  figure "humidity-target" {
    value = "60 to 75 %"
    note  = "No plain figure found. Soil damp below."
  }

  figure "floor-first" {
    value    = "600 cm2"
    stages   = ["subadult", "adult"]
    disputed = "30 x 30 x 45 cm, in which it was bred, with a cork tube and flat cork (A68)"
  }

  figure "height-min" {
    value    = "40 cm"
    stages   = ["subadult", "adult"]
    disputed = "45 cm (A68)"
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
    value   = "5.2 to 6 cm"
    stages  = ["adult"]
    source  = ["A64", "A65"]
    quality = "keeper"
    note    = "52 mm on average (A64), to 6 cm (A65)."
  }

  figure "span" {
    value    = "15 to 20 cm"
    stages   = ["adult"]
    source   = ["A66"]
    quality  = "keeper"
    disputed = "20 cm (A67)"
  }

  figure "mass" {
    value   = "12 to 20 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value   = "11 to 15 years"
    source  = ["A64", "A66", "A67"]
    quality = "keeper"
    note    = "Females 11 to 12, to 15; males 3 to 4 years. Males live 6 to 18 months after their last moult."
  }

  figure "growth-factor" {
    value    = "1.25 to 1.4"
    source   = ["A53"]
    quality  = "practice"
    disputed = "1.38 (A53, of Grammostola vachoni, a slow kind of temperate places)"
  }

  figure "age-at-maturity" {
    value   = "12 to 36 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Males 12 to 18, females 24 to 36. It grows fast (A67)."
  }

  figure "sac-time" {
    value    = "6 to 9 weeks"
    source   = ["memory"]
    quality  = "memory"
    disputed = "of tarantulas in general 6 to 12 weeks, with eggs that hatch in 25 to 42 days and moult again 17 to 40 days later (A50), 4 to 6 weeks and up to 6 more (A51)"
    note     = "Leave her undisturbed; she needs no food with the sac (A52)."
  }

  figure "brood-size" {
    value    = "50 to 120"
    source   = ["memory"]
    quality  = "memory"
    disputed = "105 young from one sac (A68), small clutches told as a reason for its price (A69)"
    note     = "One breeder had his female in January 2010 and found a male only in September (A68): plan the mating by her moult."
  }

  figure "separation" {
    value    = "separate"
    source   = ["A36"]
    quality  = "practice"
    disputed = "young of P. regalis may stay with their mother for some weeks (A36)"
    note     = "By moult 3 to 4."
  }

  figure "wait-after-moult" {
    value  = "10 days"
    stages = ["adult"]
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["juvenile"]
  }

  figure "keeping" {
    value    = "alone"
    source   = ["A36", "A37"]
    quality  = "practice"
    disputed = "reared in groups by one breeder (A37); groups of one sac of P. regalis without attack (A36)"
    note     = "No pairs. Who keeps a group states so with a reason: one sac, one size, a hide for each and one more, more prey than animals, split when one is a third larger; never mixed sacs."
  }

  figure "venom" {
    value    = "medically significant"
    source   = ["A1", "A2", "A3"]
    quality  = "paper"
    disputed = "pain from a week to a month (A64, weak)"
    note     = "Of the genus: severe cramps start hours after the bite and last or return for days (A1). After a bite: wash, rings off, keep the limb still; no cutting, sucking or binding. Somebody stays for 24 hours; spreading pain, cramps, chest or breath mean hospital at once, with the name of the species on paper. Cramps can start after hours and come back for days."
  }

  figure "speed" {
    value = "very quick"
    note  = "Catch cup in reach, and the box opened inside a larger tub."
  }

  figure "defence" {
    value   = "The shyest of its genus; light makes it bolt."
    source  = ["A66"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "II"
    source  = ["A6", "A7", "A8"]
    quality = "guideline"
    note    = "As the whole genus."
  }

  figure "law" {
    value   = "Listed as a whole genus since 26 November 2019, in the European Union from 14 December 2019, Annex B: keep the paper of origin for each animal and each sac, and look up what else is asked. In Germany invertebrates need proof of origin and no report (A13, A14). Rules on dangerous animals name the genus in some places, Saarland since 19 January 2024 (A15): look it up. United States: not among the five Sri Lankan species of the Endangered Species Act (A11); it was in a petition of 2010 (A12)."
    source  = ["A6", "A7", "A8", "A11", "A12", "A13", "A14", "A15"]
    quality = "keeper"
  }

  figure "climate-origin" {
    value   = "India, as remembered: a range of under 100 km2 in the wild; critically endangered by the list of the IUCN (A66)."
    source  = ["A66", "memory"]
    quality = "memory"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 2
    prey       = "cricket adult"
  }
}
