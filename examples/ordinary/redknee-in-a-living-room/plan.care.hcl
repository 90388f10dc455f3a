# A warm room and no heater.
collection "redknee-in-a-living-room" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "19 to 25 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "brachypelma-hamorii"

  housing {
    kind      = "glass"
    inside    = "45 x 40 x 30 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir and topsoil"
    moisture  = "damp below"
    depth     = "12 cm"
    hides     = 1
  }

  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 1"
  }
}
