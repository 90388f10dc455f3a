species "porcellio-laevis" {
  title   = "swift woodlouse"
  latin   = "Porcellio laevis Latreille, 1804"
  family  = "Porcellionidae"
  type    = "woodlouse-colony"
  also    = ["smooth woodlouse", "Dairy Cow", "isopod"]
  note    = "The fastest breeder and the biggest eater: thin out every three months, never starve it. Hungry for protein it gnaws at moulting, soft or slow animals: no clean-up crew with slings, moulting whip spiders or gecko eggs. A shop calls Dairy Cow an Armadillidium and a page calls it Porcellio scaber: both wrong (OK72, weak)."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  temperature_hard    = "3 to 32 C"
  temperature_soft    = "15 to 30 C"
  rest                = "none"
  cooler              = "2 to 3 C"
  substrate_depth_min = "5 cm"
  hairs               = "none"
  speed               = "quick"

  figure "temperature-target" {
    value   = "20 to 30 C"
    source  = ["OK70"]
    quality = "keeper"
    note    = "Animals of colder homes recover faster from a chill (OP13). The kin P. scaber grows almost three times slower at 15 C than at 22 C (P45), its embryos twice as fast at 20 C as at 15 C (OP26), and half of it die at -1.4 to -4.6 C (OP24)."
  }

  figure "air" {
    value   = "20 to 30 C"
    source  = ["OK70"]
    quality = "keeper"
  }

  figure "humidity-target" {
    value   = "50 to 70 %"
    source  = ["OK70"]
    quality = "keeper"
    note    = "A third wet, two thirds drier: wet all over kills."
  }

  figure "humidity-soft" {
    value = "45 to 85 %"
    note  = "Our margin."
  }

  figure "volume-first" {
    value   = "6 L"
    source  = ["OK70"]
    quality = "keeper"
    note    = "For a start of twenty."
  }

  figure "keeping" {
    value = "groups"
  }

  figure "climbs" {
    value = "seams"
    note  = "Silicone and rough walls."
  }

  figure "length" {
    value    = "15 to 24 mm"
    stages   = ["adult"]
    source   = ["OK70"]
    quality  = "keeper"
    disputed = "to 20 mm and more (OK71), 12 to 18 mm (a shop)"
  }

  figure "mass" {
    value   = "100 to 250 mg"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "2 to 3 years"
    source   = ["OK70"]
    quality  = "keeper"
    disputed = "1 to 2 years (as remembered)"
  }

  figure "age-at-maturity" {
    value   = "3 to 4 months"
    source  = ["memory"]
    quality = "memory"
    note    = "Warm. In the kin P. dilatatus the first three stages last 19 hours, 12.7 and 12.7 days at 23 C (N26)."
  }

  figure "brood-size" {
    value   = "20 to 80"
    source  = ["memory"]
    quality = "memory"
    note    = "In a pouch. Five minutes of running a day shortened brooding, and tended to fewer young (OP14): do not stir the box. Bigger mothers have more young (OP27)."
  }

  figure "venom" {
    value = "none"
  }

  figure "cites" {
    value = "none"
  }

  figure "law" {
    value = "None found: it lives all over the world."
  }

  figure "climate-origin" {
    value = "All over the world, with people."
  }

  care "protein" {
    kind  = "other"
    task  = "Fish flake or dried shrimp, greens; is there lime?"
    every = "7 days"
  }
}
