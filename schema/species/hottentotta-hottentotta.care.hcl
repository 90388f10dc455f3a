species "hottentotta-hottentotta" {
  title    = "red Togo scorpion"
  latin    = "Hottentotta hottentotta (Fabricius, 1787)"
  family   = "Buthidae"
  type     = "bark-scorpion"
  also     = ["alligator back scorpion"]
  former   = ["Buthotus hottentotta", "Hottentotta caboverdensis"]
  mistaken = ["Babycurus", "Odonturus"]
  note     = "Bears young without a male: of the Cape Verde stock, H. caboverdensis of old, only females are known in the hobby (C136), elsewhere there are males (C136), and it is on the list of eight such scorpions (C110). From 90 days after her last moult every grown female may be gravid, for life, mated or not, and broods repeat. One animal founds a colony: never let loose, never given away without its name. Babycurus and Odonturus have a tooth under the sting, this has none. Alligator back is the name of others too; six other Hottentotta are dangerous."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_hard        = "12 to 38 C"
  temperature_soft        = "20 to 35 C"
  temperature_target      = "25 to 30 C"
  air                     = "25 to 30 C"
  night                   = "20 to 23 C"
  rest                    = "none"
  cooler                  = "2 to 3 C"
  substrate_depth_min     = "4 cm"
  substrate_depth_advised = "6 cm"
  moults_to_adult         = "5 to 6"
  on_mother               = "5 to 9 days"
  separation              = "separate"
  hairs                   = "none"
  speed                   = "quick"

  figure "warm-spot" {
    value   = "31 to 34 C"
    source  = ["C136"]
    quality = "practice"
    note    = "Gravid females sit by the heat in the open by day, some weeks before the birth (C136)."
  }

  figure "humidity-soft" {
    value = "30 to 75 %"
    note  = "From the edge of the Sahel to the forest of Guinea: ask where yours are from."
  }

  figure "humidity-target" {
    value = "45 to 65 %"
    note  = "Ask where yours are from."
  }

  figure "moisture" {
    value = "either"
    note  = "Dry, with a damp corner."
  }

  figure "lifestyle" {
    value   = "crevice"
    source  = ["C136"]
    quality = "keeper"
    note    = "Under stones and bark, in a shallow scrape; no burrows."
  }

  figure "floor-first" {
    value  = "250 cm2"
    stages = ["subadult", "adult"]
  }

  figure "floor-further" {
    value  = "100 cm2"
    stages = ["subadult", "adult"]
  }

  figure "height-min" {
    value  = "15 cm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "2 mm"
    stages = ["subadult", "adult"]
  }

  figure "gap-max" {
    value  = "1 mm"
    stages = ["young"]
  }

  figure "length" {
    value    = "5 to 8 cm"
    stages   = ["adult"]
    source   = ["C136"]
    quality  = "keeper"
    disputed = "5.5 to 8 cm (C137)"
    note     = "With the tail; males are smaller (C136)."
  }

  figure "mass" {
    value   = "1.5 to 3 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "3 to 5 years"
    source   = ["memory"]
    quality  = "memory"
    disputed = "4 to 6 years for the genus (a keeper's text)"
  }

  figure "growth-factor" {
    value   = "1.26"
    source  = ["C3"]
    quality = "practice"
    note    = "By theory; none is measured on this species."
  }

  figure "age-at-maturity" {
    value   = "6 to 12 months"
    source  = ["C13"]
    quality = "practice"
    note    = "Kin of the same way of life, Tityus confluens, moults on days 5, 38, 106 and 157 (C13)."
  }

  figure "gestation" {
    value    = "3 to 6 months"
    source   = ["memory"]
    quality  = "memory"
    disputed = "86 to 184 days in Tityus confluens (C13)"
    note     = "Counted from the last moult or the last brood where no male was there; broods repeat."
  }

  figure "gestation-longest" {
    value = "9 months"
    note  = "Our estimate."
  }

  figure "brood-size" {
    value   = "20 to 50"
    source  = ["memory"]
    quality = "memory"
  }

  figure "keeping" {
    value = "alone"
    note  = "Groups of sisters of one size are kept too, with caution."
  }

  figure "venom" {
    value    = "painful"
    source   = ["C138", "C140"]
    quality  = "practice"
    disputed = "no serious effects to some keepers, probably significant to others (C138)"
    note     = "A precaution: six other Hottentotta, gentili, jayakari, saulcyi, schach, tamulus and zagrosensis, are named medically significant, this one is not (C138, quoting C26), and the genus is on licence lists (C140). Where somebody untrained or a stand-in does the work, take it for medically significant. Wash and cool the sting, and a doctor early; signs away from the sting or of an allergy are an emergency."
  }

  figure "defence" {
    value   = "Calm; it threatens only when it is disturbed for long."
    source  = ["C136"]
    quality = "keeper"
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Look up the licence: Bavaria and Berlin have the genus on their lists (C140), whatever this species' venom; Hesse forbids private keeping of what its list names (C141). Great Britain has the family Buthidae on its list of dangerous wild animals (as remembered)."
    source  = ["C140", "C141", "memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "West Africa, from the edge of the Sahel to the forest of Guinea; Cape Verde (C136)."
    source  = ["C136", "memory"]
    quality = "memory"
  }

  figure "sexing" {
    value   = "Males are smaller; in stock from Cape Verde there are none."
    source  = ["C136"]
    quality = "keeper"
  }

  need "moisture" {
    longest = "10 days"
    note    = "One corner made damp, once a week."
  }

  care "mist" {
    every = "7 days"
    task  = "Mist the damp corner"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "4 days"
    per_animal = 3
    prey       = "cricket pinhead"
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "5 days"
    per_animal = 1
    prey       = "cricket small"
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "6 days"
    per_animal = 1
    prey       = "cricket medium"
  }
}
