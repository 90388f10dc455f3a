species "centruroides-sculpturatus" {
  title    = "Arizona bark scorpion"
  latin    = "Centruroides sculpturatus Ewing, 1928"
  family   = "Buthidae"
  type     = "bark-scorpion"
  also     = ["Arizona bark", "Arizona-Rindenskorpion"]
  former   = ["Centruroides gertschi"]
  mistaken = ["Centruroides exilicauda", "Centruroides vittatus"]
  note     = "A danger to life, to children most: every line of its care is for somebody who is trained, and a plan for an escape hangs on the box. Medical texts still say exilicauda (C43); the true C. exilicauda of Baja California is weaker. In German shops C. vittatus goes by its name (C66). One encyclopedia prints Wood, 1863, the author of exilicauda (C103)."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft  = "12 to 36 C"
  warm_spot         = "30 to 35 C"
  air               = "24 to 32 C"
  night             = "18 to 23 C"
  rest              = "optional"
  winter_rest       = "10 to 15 C"
  rest_length       = "8 to 12 weeks"
  rest_full_heat    = "14 days"
  rest_step         = "2 to 3 C"
  rest_water        = "14 to 30 days"
  rest_first_meal   = "3 to 7 days"
  rest_full_meals   = "7 days"
  unattended_rest   = "21 days"
  humidity_soft     = "20 to 60 %"
  gestation_longest = "14 months"
  hairs             = "none"
  speed             = "very quick"

  figure "temperature-hard" {
    value   = "0 to 40 C"
    source  = ["C14"]
    quality = "practice"
    note    = "A precaution: of the kin C. hentzi half died at 43.7 C in dry air (12 %) and 45.1 C at 72 %, and at -4.5 and -4.7 C (C14)."
  }

  figure "temperature-target" {
    value   = "24 to 32 C"
    source  = ["C105"]
    quality = "keeper"
  }

  figure "humidity-hard" {
    value = "0 to 80 %"
    note  = "Our estimate, wide: more is wet with no dry part."
  }

  figure "humidity-target" {
    value    = "35 to 50 %"
    disputed = "low (C105); but it lives by rivers, under mesquite and cottonwood (C104)"
  }

  figure "moisture" {
    value = "arid"
    note  = "With one damp corner."
  }

  figure "floor-first" {
    value    = "300 cm2"
    stages   = ["subadult", "adult"]
    disputed = "a box of 38 L with 10 cm of soil (C105)"
    note     = "It does not burrow (C104)."
  }

  figure "height-min" {
    value  = "20 cm"
    stages = ["subadult", "adult"]
    note   = "Bark to climb on."
  }

  figure "keeping" {
    value    = "alone, or mother with brood"
    disputed = "packs of 20 to 30 in winter (C103), small groups (C105)"
    note     = "For safety: one animal can be counted. It is sociable, and a cannibal when hungry."
  }

  figure "gap-max" {
    value   = "1 mm"
    stages  = ["juvenile", "subadult", "adult"]
    source  = ["C104"]
    quality = "practice"
    note    = "It gets through 1.6 mm (C104). Two closures."
  }

  figure "gap-max" {
    value  = "0.5 mm"
    stages = ["young"]
    note   = "The young pass 1 mm; the figure is our estimate."
  }

  figure "looks" {
    value   = "Plain yellow-brown as a rule; C. vittatus has stripes and a dark triangle."
    stages  = ["adult"]
    source  = ["C96", "memory"]
    quality = "memory"
  }

  figure "length" {
    value    = "5 to 8 cm"
    stages   = ["adult"]
    source   = ["C43", "C103"]
    quality  = "practice"
    disputed = "5 to 7 cm (C43), males to 8, females to 7 cm (C103)"
  }

  figure "mass" {
    value   = "0.8 to 1.5 g"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "moults-to-adult" {
    value   = "5 to 6"
    source  = ["C2"]
    quality = "practice"
    note    = "Six or seven instars, as its kin C. gracilis (C2)."
  }

  figure "age-at-maturity" {
    value = "12 to 24 months"
  }

  figure "lifespan" {
    value    = "3 to 6 years"
    source   = ["C103", "C105"]
    quality  = "keeper"
    disputed = "to 6 years (C103), 3 to 5 (C105)"
  }

  figure "gestation" {
    value    = "5 to 9 months"
    source   = ["C103"]
    quality  = "practice"
    disputed = "several months (C103)"
  }

  figure "brood-size" {
    value   = "25 to 35"
    source  = ["C103", "C105"]
    quality = "keeper"
    note    = "Larger females have more young, not larger ones (C18)."
  }

  figure "on-mother" {
    value    = "7 to 21 days"
    source   = ["C103"]
    quality  = "practice"
    disputed = "up to 3 weeks (C103)"
  }

  figure "separation" {
    value = "separate"
    note  = "The young are venomous and pass 1 mm: no brood without a second tight box, and all are counted."
  }

  figure "venom" {
    value   = "medically significant"
    source  = ["C43", "C54"]
    quality = "society"
    note    = "The only species of the USA with a venom that can kill; children fare worst. Signs climb for about 5 h and last 1 to 2 days, tingling for weeks (C54). On the list as exilicauda (C43). Emergency number and poison centre at once, without waiting for signs: they begin within 4 h (C23), 1 to 8 h (C22), 4 to 12 h (C130). Watched for 12 to 24 h, children and people at risk in hospital (C23). The name of the species on paper at the box and in the pocket; no cutting, sucking or tourniquet."
  }

  figure "defence" {
    value = "Fast; climbs all but clean glass."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  figure "law" {
    value   = "Germany: look up the law of the state; the genus is on the lists of Bavaria and Berlin (C140), and Hesse has a list too (C141). Great Britain: look up the schedule of dangerous wild animals (the family Buthidae, from memory). Some states of the USA restrict it (from memory): look it up."
    source  = ["C140", "C141", "memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Arizona: by rivers, under mesquite and cottonwood (C104); in winter in packs of 20 to 30 (C103)."
    source  = ["C103", "C104"]
    quality = "keeper"
  }

  need "moisture" {
    longest  = "10 days"
    severity = "caution"
    note     = "Our estimate: the damp corner is wetted once a week, and a dish is always full."
  }

  care "mist" {
    every = "7 days"
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "4 days"
    per_animal = 1
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
    every      = "7 days"
    per_animal = 2
    prey       = "cricket small"
  }
}
