# The house in which a keeper's daily jobs are timed: forty tubs, a larger box, two people.
collection "house" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "23 to 26 C"
  humidity    = "50 to 65 %"
}

keeper "lead" {
  trained = "hairs, feeding, venom, breeding"
}

keeper "relief" {
  trained = "hairs, feeding, venom, breeding"
}

round "morning" {
  at     = "08:00"
  keeper = "relief"
}

round "evening" {
  at     = "19:30"
  keeper = "lead"
}

template "tarantula" {
  species = "tliltocatl-albopilosus"

  housing {
    kind      = "tub"
    inside    = "15 x 12 x 16 cm"
    lid       = "solid, latched"
    vents     = "cross"
    substrate = "coir and topsoil"
    moisture  = "damp below"
    depth     = "10 cm"
    hides     = 1
  }

  animals "one" {
    count  = 1
    stage  = "juvenile"
    origin = "captive bred"
    paper  = "own brood"
  }
}

enclosure "tub" {
  numbers  = "1 to 40"
  template = "tarantula"
  round    = "evening"

  feeding "one" {
    on         = ["tue"]
    per_animal = 1
    rotate     = ["cricket small", "roach small"]
  }
}

enclosure "box" {
  template = "tarantula"
  round    = "morning"

  housing {
    inside = "35 x 30 x 22 cm"
    depth  = "16 cm"
  }

  animals "one" {
    stage = "subadult"
  }
}

enclosure "empty" {
  template = "tarantula"
  round    = "evening"

  housing {
    inside = "35 x 30 x 22 cm"
    depth  = "16 cm"
    places = 1
  }

  animals "one" {
    count = 0
  }
}
