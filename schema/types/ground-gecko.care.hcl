type "ground-gecko" {
  title   = "ground geckos"
  of      = "gecko"
  genera  = ["Eublepharis", "Coleonyx", "Hemitheconyx", "Goniurosaurus"]
  grown   = "5.2 to 13 cm"
  note    = "A warm spot, a cool end and a moist box, each of its own."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "lifestyle" {
    value   = "ground"
    source  = ["K112"]
    quality = "keeper"
  }

  figure "eats" {
    value = "prey"
  }

  figure "climbs" {
    value   = "no"
    source  = ["K112"]
    quality = "keeper"
    note    = "No toe pads."
  }

  figure "lid" {
    value = "any"
  }

  figure "drinks" {
    value = "dish"
  }

  figure "temperature-hard" {
    value = "10 to 40 C"
    note  = "Outside it is wrong for every member."
  }

  figure "humidity-hard" {
    value = "10 to 95 %"
    note  = "Outside it is wrong for every member; how damp differs from species to species."
  }

  figure "substrate-depth-min" {
    value = "0 cm"
    note  = "Some want none: solid flooring will do."
  }

  figure "floor-first" {
    value   = "4 x 3 length"
    wrong   = "3 x 2 length"
    harm    = "comfort"
    source  = ["G6"]
    quality = "guideline"
    note    = "For a pair (G6); the lower figure is our estimate."
  }

  figure "floor-further" {
    value   = "1.5 x 1.2 length"
    source  = ["G6"]
    quality = "guideline"
    note    = "15 % of the floor."
  }

  figure "height-min" {
    value   = "2 length"
    harm    = "comfort"
    source  = ["G6"]
    quality = "guideline"
  }

  figure "fast-alarm" {
    value  = "14 days"
    stages = ["subadult", "adult"]
    note   = "A loss of a tenth of its weight is for a veterinarian at once."
  }

  need "water" {
    longest = "2 days"
    wrong   = "3 days"
    note    = "A dish is never empty."
  }

  need "moisture" {
    longest = "3 days"
    wrong   = "7 days"
    source  = ["K36"]
    note    = "The moist box never dries out, or skin sticks to the toes."
  }

  need "food" {
    longest = "2 days"
    wrong   = "4 days"
    stages  = ["young"]
  }

  need "food" {
    longest = "4 days"
    wrong   = "8 days"
    stages  = ["juvenile"]
  }

  need "food" {
    longest  = "7 days"
    wrong    = "14 days"
    stages   = ["subadult", "adult"]
    shortest = "2 days"
  }

  care "moist-box" {
    kind  = "moisten"
    task  = "Dampen the moist box, not the floor"
    every = "2 days"
  }

  feeding "young" {
    stages     = ["young"]
    every      = "day"
    per_animal = 3
    prey       = "cricket small"
    gut_load   = true
    dusted     = true
    because    = "Prey is smaller than the head is wide (K108)."
  }

  feeding "juvenile" {
    stages     = ["juvenile"]
    every      = "2 days"
    per_animal = 4
    prey       = "cricket medium"
    gut_load   = true
    dusted     = true
    because    = "Prey is smaller than the head is wide (K108)."
  }

  feeding "subadult" {
    stages     = ["subadult"]
    every      = "3 days"
    per_animal = 4
    prey       = "cricket medium"
    gut_load   = true
    dusted     = true
    because    = "Prey is smaller than the head is wide (K108)."
  }

  feeding "adult" {
    stages     = ["adult"]
    every      = "3 days"
    per_animal = 4
    prey       = "cricket medium"
    gut_load   = true
    dusted     = true
    because    = "Prey is smaller than the head is wide (K108)."
  }

  except "Goniurosaurus" {
    because = "it is of cool wet forest, climbs, and wants 60 to 80 % of damp"
  }

  except "Hemitheconyx" {
    because = "it is of damp country, and wants 50 to 80 %"

    figure "humidity-soft" {
      value = "45 to 85 %"
      note  = "Our margin."
    }

    figure "humidity-target" {
      value = "50 to 80 %"
    }

    figure "moisture" {
      value = "damp"
    }
  }

  except "Coleonyx" {
    because = "it is small, dries out and chills fast, and takes small prey"

    need "food" {
      longest = "5 days"
      wrong   = "10 days"
      stages  = ["subadult", "adult"]
    }
  }

  except "Stenodactylus" {
    because = "it is a small gecko of dry sand, and digs"
    source  = ["memory"]
    quality = "memory"
  }

  except "Tropiocolotes" {
    because = "it is a tiny gecko of dry sand, which lives in groups and takes tiny prey"
    source  = ["memory"]
    quality = "memory"
  }
}
