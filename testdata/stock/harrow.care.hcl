collection "harrow-racks" {
  time_zone = "Europe/London"
}
room "racks" {
  temperature = "22 to 25 C"
}
keeper "owner" {
  title = "Owner"
}
round "evening" {
  at     = "19:30"
  keeper = "owner"
}
seller "fen" {
  title    = "Fen Feeders"
  delivers = ["thu"]
  lead     = 2
}
supply "medium" {
  prey   = "cricket medium"
  seller = "fen"
  packs  = [25]
  margin = "15 %"
  gut_load = "48 h"
}
supply "small" {
  prey   = "cricket small"
  seller = "fen"
  packs  = [250]
  weekly = 300
  margin = "15 %"
}
template "t" {
  species = "pandinus-imperator"
  housing {
    kind = "glass"
    inside = "76 x 46 x 41 cm"
    lid = "solid, latched"
    hides = 1
  }
}
enclosure "adult" {
  numbers = "1 to 40"
  template = "t"
  animals "one" {
    count = 1
    stage = "adult"
  }
  feeding "one" {
    every = "7 days"
    prey = "cricket medium"
    per_animal = 1
  }
}
enclosure "juv-a" {
  numbers = "1 to 30"
  template = "t"
  animals "one" {
    count = 1
    stage = "juvenile"
  }
  feeding "one" {
    every = "4 days"
    from = "2026-11-01"
    prey = "cricket small"
    per_animal = 2
  }
}
enclosure "juv-b" {
  numbers = "1 to 30"
  template = "t"
  animals "one" {
    count = 1
    stage = "juvenile"
  }
  feeding "one" {
    every = "4 days"
    from = "2026-11-02"
    prey = "cricket small"
    per_animal = 2
  }
}
enclosure "juv-c" {
  numbers = "1 to 30"
  template = "t"
  animals "one" {
    count = 1
    stage = "juvenile"
  }
  feeding "one" {
    every = "4 days"
    from = "2026-11-03"
    prey = "cricket small"
    per_animal = 2
  }
}
enclosure "juv-d" {
  numbers = "1 to 30"
  template = "t"
  animals "one" {
    count = 1
    stage = "juvenile"
  }
  feeding "one" {
    every = "4 days"
    from = "2026-11-04"
    prey = "cricket small"
    per_animal = 2
  }
}
tub "cricket-tub" {
  prey = "cricket medium"
  temperature = "28 C"
}
culture "flies" {
  prey = "fruit-fly melanogaster"
  temperature = "25 C"
}
