type "tree-gecko" {
  title   = "tree geckos"
  of      = "gecko"
  genera  = ["Correlophus", "Rhacodactylus", "Mniarogekko", "Phelsuma"]
  grown   = "10 to 11.5 cm"
  note    = "A weak type: forest geckos that hide by day and day geckos that bask have little in common but trees. No air and no damp is good for all of them."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "lifestyle" {
    value = "tree"
  }

  figure "eats" {
    value = "both"
    note  = "Fruit, nectar or a powder made of them, and insects."
  }

  figure "climbs" {
    value = "glass"
  }

  figure "lid" {
    value = "latched"
  }

  figure "ventilation" {
    value = "any"
    note  = "Wet in the evening, dry by day: a mesh top does that, and so do openings on two sides."
  }

  figure "drinks" {
    value = "droplets"
  }

  figure "humidity-hard" {
    value = "30 to 100 %"
    note  = "Less is wrong for every member; it is wet in the evening and dry by day."
  }

  figure "moisture" {
    value = "either"
  }

  figure "substrate-depth-min" {
    value = "2 cm"
    harm  = "comfort"
  }

  figure "floor-first" {
    value = "6 x 6 length"
    wrong = "3 x 3 length"
    harm  = "comfort"
    note  = "The upper figure is for a pair of day geckos."
  }

  figure "height-min" {
    value = "8 length"
    wrong = "3 length"
    harm  = "harms"
    note  = "The upper figure is for a pair of day geckos."
  }

  figure "fast-alarm" {
    value  = "10 days"
    stages = ["subadult", "adult"]
    note   = "A loss of a tenth of its weight is for a veterinarian at once."
  }

  need "moisture" {
    longest = "1 day"
    wrong   = "3 days"
    note    = "It drinks the droplets."
  }

  need "food" {
    longest = "2 days"
    wrong   = "4 days"
    stages  = ["young"]
  }

  need "food" {
    longest = "3 days"
    wrong   = "6 days"
    stages  = ["juvenile"]
  }

  need "food" {
    longest = "4 days"
    wrong   = "10 days"
    stages  = ["subadult", "adult"]
  }

  care "mist" {
    every = "day"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "day"
    per_animal = 3
    prey       = "cricket pinhead"
    gut_load   = true
    dusted     = true
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "2 days"
    per_animal = 3
    prey       = "cricket small"
    gut_load   = true
    dusted     = true
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "2 days"
    per_animal = 3
    prey       = "cricket medium"
    gut_load   = true
    dusted     = true
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "2 days"
    per_animal = 3
    prey       = "cricket medium"
    gut_load   = true
    dusted     = true
  }

  except "Correlophus" {
    because = "it is of cool islands and wants no basking place: air over 29.5 C kills it"

    figure "floor-first" {
      value = "4 x 4 length"
      wrong = "2.6 x 2.6 length"
      harm  = "comfort"
      note  = "45 x 45 cm at 11 cm."
    }

    figure "height-min" {
      value = "5.5 length"
      wrong = "3 length"
      harm  = "harms"
      note  = "60 cm at 11 cm."
    }
  }

  except "Phelsuma" {
    because = "it lives by day, in light and warmth"

    figure "uv-not" {
      value = "false"
      note  = "It basks under a lamp with ultraviolet light."
    }
  }
}
