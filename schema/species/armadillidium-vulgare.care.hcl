species "armadillidium-vulgare" {
  title    = "common pill woodlouse"
  latin    = "Armadillidium vulgare (Latreille, 1804)"
  family   = "Armadillidiidae"
  type     = "woodlouse-colony"
  also     = ["common pill bug", "roly-poly", "Rollassel", "Magic Potion", "Punta Cana", "isopod", "pill bug"]
  mistaken = ["Glomeris", "Armadillidium nasatum"]
  note     = "Slow, long-lived and of drier places: the better clean-up crew beside soft animals, and still out for moulting slings. One that turns blue or violet has a virus: take it out."
  source   = ["practice"]
  quality  = "practice"
  seen     = "2026-11-28"

  temperature_soft    = "12 to 28 C"
  temperature_target  = "18 to 26 C"
  air                 = "18 to 26 C"
  winter_rest         = "5 to 12 C"
  rest                = "optional"
  ventilation         = "cross"
  substrate_depth_min = "5 cm"
  volume_first        = "6 L"
  hairs               = "none"
  speed               = "slow"

  figure "temperature-hard" {
    value = "2 to 32 C"
    note  = "A precaution; it stands more heat and dryness than most kinds (OK73)."
  }

  figure "humidity-target" {
    value   = "50 to 70 %"
    source  = ["OP16"]
    quality = "practice"
    note    = "Rolled up it loses 34.8 % less water and 37.1 % less carbon dioxide at 18 C, and gains nothing above 53 % (OP16)."
  }

  figure "humidity-soft" {
    value = "40 to 85 %"
    note  = "Our margin."
  }

  figure "moisture" {
    value   = "damp"
    source  = ["OP16"]
    quality = "practice"
    note    = "A third wet. It seeks soil with more than a tenth of water and avoids floods (OP16)."
  }

  figure "keeping" {
    value   = "groups"
    source  = ["OP28"]
    quality = "paper"
    note    = "Gathering saves water and oxygen and speeds growth (OP28)."
  }

  figure "length" {
    value    = "10 to 18 mm"
    stages   = ["adult"]
    source   = ["OK73"]
    quality  = "practice"
    disputed = "to 18 mm (OK73)"
  }

  figure "mass" {
    value   = "80 to 200 mg"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value    = "3 years"
    source   = ["OK73"]
    quality  = "keeper"
    disputed = "2 to 5 years (an encyclopedia)"
  }

  figure "moult-takes" {
    value = "2 to 4 days"
    note  = "Rear first, the front about three days later, every 29 days or so (an encyclopedia)."
  }

  figure "age-at-maturity" {
    value   = "1 year"
    source  = ["OK27b"]
    quality = "practice"
    note    = "About. In the kin A. granulatum the first three stages last 6 hours, 15 and 32 days (OP23)."
  }

  figure "brood-size" {
    value    = "23 to 31"
    source   = ["OP15"]
    quality  = "paper"
    disputed = "20 to 96 (a weak page)"
    note     = "27 of 39 eggs; 13 days in the pouch (OP15), or 32 days and free on the 25th (OK27b): climate. The first at one to three years, then one or two a year."
  }

  figure "venom" {
    value = "none"
  }

  figure "cites" {
    value = "none"
  }

  figure "law" {
    value   = "USA: look up the permit for moving woodlice from state to state."
    source  = ["memory"]
    quality = "memory"
  }

  figure "climate-origin" {
    value   = "Europe, on lime; carried all over the world."
    source  = ["OK73"]
    quality = "practice"
  }

  care "protein" {
    kind  = "other"
    task  = "Protein, lichen, greens; is there lime?"
    every = "14 days"
  }
}
