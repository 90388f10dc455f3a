species "porcellio-scaber" {
  title   = "rough woodlouse"
  latin   = "Porcellio scaber Latreille, 1804"
  family  = "Porcellionidae"
  type    = "woodlouse-colony"
  also    = ["isopod"]
  note    = "Kept as clean-up crew, culture and prey. It may nibble a moulting animal when hungry, and does not live in dry tanks."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-25"

  keeping = "groups"
  venom   = "none"

  stage "newborn" {
    note = "In the mother's pouch."
  }

  stage "young" {
    note = "Instars are not counted; a culture holds all sizes."
  }

  stage "juvenile" {
    note = "Instars are not counted; a culture holds all sizes."
  }

  stage "subadult" {
    note = "Instars are not counted; a culture holds all sizes."
  }

  stage "adult" {
    note = "Instars are not counted; a culture holds all sizes."
  }

  figure "temperature-hard" {
    value  = "5 to 30 C"
    source = ["OP24"]
    seen   = "2026-11-28"
    note   = "Half die at -1.4 C in August and at -4.6 C in December (OP24): 5 C is a precaution. Of the heat nothing was found."
  }

  figure "temperature-soft" {
    value = "12 to 27 C"
    note  = "Our margin around the target; no source."
  }

  figure "temperature-target" {
    value    = "18 to 24 C"
    source   = ["P45", "OP26"]
    seen     = "2026-11-28"
    disputed = "15 to 25 C (common practice)"
    note     = "Broods and young grow almost three times slower at 15 C than at 22 C (P45); embryos twice as fast at 20 C as at 15 C (OP26)."
  }

  figure "air" {
    value = "12 to 24 C"
    seen  = "2026-11-28"
  }

  figure "winter-rest" {
    value = "5 to 12 C"
    seen  = "2026-11-28"
  }

  figure "rest" {
    value = "optional"
    seen  = "2026-11-28"
  }

  figure "humidity-soft" {
    value  = "60 to 95 %"
    source = ["K118"]
    note   = "Our margin around the target; no source."
  }

  figure "humidity-target" {
    value  = "70 to 90 %"
    source = ["K118"]
    note   = "On the wet side; it needs a wet and a dry side (K118)."
  }

  figure "moisture" {
    value   = "damp"
    source  = ["K118"]
    quality = "keeper"
    note    = "A third of the box is always wet."
  }

  figure "substrate-depth-min" {
    value    = "4 cm"
    disputed = "5 to 8 cm (common practice)"
    note     = "Leaf mould, soil, rotten wood, leaves, bark, and lime or cuttlefish."
  }

  figure "floor-first" {
    value = "400 cm2"
    note  = "For a culture."
  }

  figure "volume-first" {
    value = "6 L"
    note  = "For a start of twenty."
  }

  figure "hangs-to-moult" {
    value   = "false"
    source  = ["K119"]
    quality = "keeper"
    note    = "It moults in two halves, the rear first."
  }

  figure "length" {
    value    = "12 to 17 mm"
    stages   = ["adult"]
    source   = ["K117", "memory"]
    quality  = "memory"
    disputed = "to 20 mm (K117)"
  }

  figure "mass" {
    value   = "60 to 150 mg"
    stages  = ["adult"]
    source  = ["memory"]
    quality = "memory"
  }

  figure "lifespan" {
    value   = "2 to 3 years"
    source  = ["memory"]
    quality = "memory"
  }

  figure "brood-size" {
    value  = "50 to 100"
    source = ["K120"]
    note   = "Over 100 eggs at most, of which about half become young; one to three broods a year (K120). In Porcellio dilatatus the first three stages last 19 hours, 12.7 and 12.7 days (N26)."
  }

  figure "cites" {
    value   = "none"
    source  = ["memory"]
    quality = "memory"
  }

  state "gravid" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
    note   = "Eggs and young are in her pouch."
  }

  state "gravid-late" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
  }

  state "sac" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
    note   = "Eggs and young are in her pouch."
  }

  state "birth" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
  }

  state "brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
  }

  state "young-round" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
  }

  state "newborn" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
  }

  state "after-brood" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
  }

  state "premoult" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
  }

  state "moulting" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
  }

  state "soft" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
  }

  state "hardening" {
    care   = "all"
    manner = "usual"
    rule   = "as ever"
    seen   = "2026-11-28"
  }

  need "look" {
    longest = "7 days"
    note    = "A culture is looked at with its watering."
  }

  need "moisture" {
    longest = "4 days"
    note    = "It has no layer of wax: one side never dries out."
  }

  need "food" {
    longest = "31 days"
    note    = "Leaves are the food."
  }

  care "moisten" {
    every   = "3 days"
    source  = ["practice"]
    quality = "practice"
    seen    = "2026-11-25"
  }
}
