# A large spider of the rain forest in a room that is 15 to 19 C all year.
collection "a-giant-by-the-window" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "15 to 19 C"
  humidity    = "60 to 80 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "theraphosa-blondi"

  housing {
    kind      = "glass"
    inside    = "60 x 60 x 40 cm"
    lid       = "solid, locked"
    vents     = "cross"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "20 cm"
    hides     = 1
  }

  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 1"
  }
}
