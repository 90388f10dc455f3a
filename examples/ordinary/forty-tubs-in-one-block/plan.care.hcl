# Forty young tarantulas of two broods, in boxes with numbers. 33 died, and 41 came.
collection "forty-tubs-in-one-block" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "23 to 26 C"
  humidity    = "50 to 65 %"
}

round "evening" {
  at = "19:30"
}

enclosure "tub" {
  numbers = "1 to 32, 34 to 41"
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
    brood  = "2024-05 fern"
  }

  number "7"        { length = "28 mm" }
  number "12"       { note = "lost a leg in May, eats well" }
  number "21 to 40" { brood = "2024-07 moss" }
  number "41"       { brood = "2024-04 heath" }

  number "19" {
    stage  = "subadult"
    inside = "35 x 30 x 22 cm"
    depth  = "16 cm"
  }
}
