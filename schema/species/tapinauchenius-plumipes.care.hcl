species "tapinauchenius-plumipes" {
  title    = "purple tree spider"
  latin    = "Tapinauchenius plumipes (C. L. Koch, 1842)"
  family   = "Theraphosidae"
  type     = "arboreal-tarantula"
  also     = ["Trinidad mahogany tarantula"]
  former   = ["Tapinauchenius purpureus", "Tapinauchenius violaceus"]
  mistaken = ["Tapinauchenius gigas", "Psalmopoeus"]
  note     = "Every Tapinauchenius may be sold as this one: a strain sold as T. purpureus was named plumipes by a specialist in 2000 (A55), and which names are synonyms wants checking. Pseudoclamoris joined the genus in 2022 (A54). A risk of escape above all others: every opening inside a second tub."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft        = "20 to 29 C"
  air                     = "22 to 27 C"
  night                   = "19 to 23 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  humidity_soft           = "50 to 85 %"
  substrate_depth_advised = "8 cm"
  separation              = "separate"
  old_age_male            = "6 months"

  figure "temperature-hard" {
    value = "15 to 32 C"
    note  = "A precaution: no lethal temperature of it is known."
  }

  figure "temperature-target" {
    value    = "22 to 27 C"
    disputed = "21 to 27 C (A56)"
  }

  figure "humidity-target" {
    value    = "65 to 80 %"
    disputed = "70 to 85 % (A56)"
  }

  figure "moisture" {
    value = "damp"
    note  = "Damp below."
  }

  figure "lifestyle" {
    value   = "tree"
    source  = ["A56"]
    quality = "keeper"
    note    = "It builds a tube in the cork and a chamber under the ground."
  }

  figure "floor-first" {
    value  = "400 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value    = "35 cm"
    stages   = ["subadult", "adult"]
    disputed = "at least 36 cm (A56)"
  }

  figure "substrate-depth-min" {
    value = "6 cm"
    note  = "It builds a chamber under the ground (A56)."
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["juvenile", "subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
  }

  figure "length" {
    value  = "4 to 5 cm"
    stages = ["adult"]
    note   = "Our estimate from its leg span."
  }

  figure "span" {
    value   = "10 to 11 cm"
    stages  = ["adult"]
    source  = ["A54"]
    quality = "keeper"
    note    = "Of the genus. Males are clearly smaller than females (A55)."
  }

  figure "mass" {
    value   = "4 to 9 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "8 to 12 years"
    source   = ["memory"]
    quality  = "memory"
    disputed = "to 18 years (A56, doubtful)"
    note     = "Females; males 2 to 3 years. Males live 6 to 18 months after their last moult."
  }

  figure "growth-factor" {
    value    = "1.25 to 1.4"
    source   = ["A53"]
    quality  = "practice"
    disputed = "1.38 (A53, of Grammostola vachoni, a slow kind of temperate places)"
  }

  figure "age-at-maturity" {
    value   = "18 to 24 months"
    source  = ["A56"]
    quality = "keeper"
    note    = "Young are of one colour, with no change of pattern (A54)."
  }

  figure "sac-time" {
    value   = "6 to 8 weeks"
    source  = ["memory"]
    quality = "memory"
    note    = "Leave her undisturbed; she needs no food with the sac (A52)."
  }

  figure "brood-size" {
    value    = "32 to 200"
    source   = ["A54", "A55"]
    quality  = "keeper"
    disputed = "to 200 in the genus (A54), one sac with 32 eggs and young (A55)"
    note     = "A second fertile sac came 18 months after; 3 to 4 months are usual (A55)."
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
    value = "alone"
    note  = "A male was killed at the third mating (A55)."
  }

  figure "venom" {
    value   = "mild"
    source  = ["A54"]
    quality = "keeper"
    note    = "After a bite: wash, cool, rest; trouble in breathing or a swelling face is an emergency."
  }

  figure "hairs" {
    value   = "none"
    source  = ["A54"]
    quality = "keeper"
  }

  figure "speed" {
    value   = "very quick"
    source  = ["A55"]
    quality = "keeper"
    note    = "Perhaps the fastest of tarantulas. Catch cup in reach, and the box opened inside a larger tub."
  }

  figure "defence" {
    value   = "It can be aggressive, and cannot stridulate to warn; it drops into water and floats."
    source  = ["A54", "A55", "A56"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "None known; look up local rules. Not named in the lists of dangerous animals that were seen."
    source  = ["memory"]
    quality = "memory"
  }

  figure "sexing" {
    value   = "Males are clearly smaller than females."
    source  = ["A55"]
    quality = "keeper"
  }

  care "mist" {
    every = "3 days"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket pinhead"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "8 days"
    per_animal = 1
    prey       = "cricket large"
  }
}
