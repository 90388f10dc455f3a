type "roach-colony" {
  title   = "cockroach colonies"
  of      = "colony"
  genera  = ["Blaptica", "Shelfordella", "Blatta", "Gromphadorhina", "Princisia", "Elliptorhina", "Nauphoeta", "Blaberus", "Eublaberus", "Archimandrita"]
  grown   = "5 to 10 cm"
  note    = "Card or bark to sit in, dry but for one corner. Dust of skins and droppings makes people allergic: a mask when it is cleaned out."
  source  = ["practice"]
  quality = "practice"
  seen    = "2026-11-28"

  figure "eats" {
    value = "plants first"
    note  = "Dry food, greens and fruit."
  }

  figure "moults-as-adult" {
    value = "false"
  }

  figure "drinks" {
    value = "dish"
    note  = "With moss or gel in it, or they drown."
  }

  figure "humidity-hard" {
    value = "15 to 95 %"
    note  = "Outside it is wrong for every member."
  }

  figure "moisture" {
    value = "either"
    note  = "Dry, with one wet corner."
  }

  figure "temperature-hard" {
    value = "12 to 40 C"
    note  = "Outside it is wrong for every member."
  }

  figure "substrate-depth-min" {
    value = "2 cm"
    harm  = "comfort"
  }

  figure "floor-first" {
    value = "4 cm2"
    harm  = "comfort"
    note  = "One to 4 cm2 of floor, with card that stands on end beside."
  }

  figure "floor-further" {
    value = "4 cm2"
    harm  = "comfort"
  }

  figure "gap-max" {
    value = "1 mm"
    wrong = "2 mm"
    note  = "For the young; our estimate."
  }

  figure "unattended" {
    value = "5 days"
    wrong = "10 days"
  }

  figure "substrate-change" {
    value = "12 months"
  }

  need "water" {
    longest = "3 days"
    wrong   = "7 days"
  }

  need "food" {
    longest = "3 days"
    wrong   = "10 days"
  }

  need "heat" {
    longest = "3 days"
    wrong   = "7 days"
  }

  need "device-test" {
    longest  = "30 days"
    wrong    = "90 days"
    severity = "caution"
  }

  care "water" {
    task  = "Fresh water or gel"
    every = "2 days"
  }

  care "heat" {
    every = "3 days"
  }

  care "food" {
    kind  = "leaves"
    task  = "Dry food and greens; what is left of the wet food out"
    every = "3 days"
  }

  care "device-test" {
    every = "30 days"
  }

  care "deep-clean" {
    task  = "Clean out with a mask on: droppings and skins out, look for young in them"
    every = "12 months"
  }

  except "Gromphadorhina" {
    because = "it climbs glass, and pushes a lid up"

    figure "climbs" {
      value = "glass"
    }

    figure "lid" {
      value = "latched"
    }
  }

  except "Nauphoeta" {
    because = "it climbs glass"

    figure "climbs" {
      value = "glass"
    }

    figure "lid" {
      value = "latched"
    }
  }

  except "Macropanesthia" {
    because = "it digs deep, eats dead leaves and lives in pairs"
    source  = ["memory"]
    quality = "memory"
  }

  except "Polyphaga" {
    because = "it lives in dry sand"
    source  = ["memory"]
    quality = "memory"
  }

  except "Therea" {
    because = "its young live in damp litter and sand"
    source  = ["memory"]
    quality = "memory"
  }
}
