type "woodlouse-colony" {
  title   = "woodlouse colonies"
  of      = "colony"
  genera  = ["Porcellio", "Porcellionides", "Armadillidium", "Trachelipus", "Philoscia", "Oniscus", "Cubaris"]
  grown   = "10 to 24 mm"
  note    = "A third of the box is wet, two thirds are drier; bark, leaves and lime always. A hungry colony gnaws at soft animals."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "eats" {
    value = "plants first"
    note  = "Dead leaves and rotted wood, with a little that is dead: fish flake, dried shrimp."
  }

  figure "moults-as-adult" {
    value = "true"
  }

  figure "drinks" {
    value = "soil"
  }

  figure "humidity-hard" {
    value = "25 to 100 %"
    note  = "Less, with no wet part, is wrong for every member."
  }

  figure "moisture" {
    value   = "damp"
    source  = ["K118"]
    quality = "keeper"
    note    = "A third of the box is always wet; dry through kills."
  }

  figure "temperature-hard" {
    value = "2 to 32 C"
    note  = "Outside it is wrong for every member."
  }

  figure "substrate-depth-min" {
    value = "4 cm"
    wrong = "1.5 cm"
    harm  = "harms"
    note  = "Leaf mould, soil, rotten wood, leaves, bark, and lime or cuttlefish."
  }

  figure "floor-first" {
    value = "400 cm2"
    harm  = "comfort"
    note  = "For a start of twenty."
  }

  figure "floor-further" {
    value = "0 cm2"
    note  = "Nobody counts them: thin out."
  }

  figure "gap-max" {
    value = "0.5 mm"
    wrong = "1.5 mm"
    note  = "For the young; the upper figure is our estimate."
  }

  figure "unattended" {
    value = "14 days"
    wrong = "28 days"
  }

  need "moisture" {
    longest = "4 days"
    wrong   = "7 days"
    note    = "One side never dries out."
  }

  need "food" {
    longest = "31 days"
    wrong   = "90 days"
    note    = "Leaves are the food."
  }

  care "moisten" {
    task  = "Water the wet third"
    every = "3 days"
  }

  care "leaves" {
    every = "4 weeks"
  }

  except "Hemilepistus" {
    because = "it digs families' burrows in desert soil"
    source  = ["memory"]
    quality = "memory"
  }

  except "Porcellio" {
    because = "its large kinds are of dry country and want moving air"

    figure "ventilation" {
      value = "cross"
    }
  }

  except "Cubaris" {
    because = "it is of wet caves and forest, and dries out fast"

    need "moisture" {
      longest = "3 days"
      wrong   = "6 days"
    }
  }

  except "Oniscus" {
    because = "it lives wetter than the others"

    need "moisture" {
      longest = "3 days"
      wrong   = "6 days"
    }
  }
}
