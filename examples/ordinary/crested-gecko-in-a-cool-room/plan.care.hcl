# No heater, a room that stays cool in summer.
collection "crested-gecko-in-a-cool-room" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "20 to 25 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "correlophus-ciliatus"

  housing {
    kind      = "glass"
    inside    = "45 x 45 x 60 cm"
    lid       = "part mesh, latched"
    gap       = "3 mm"
    vents     = "cross"
    substrate = "coir and topsoil"
    moisture  = "damp below"
    depth     = "5 cm"
    hides     = 3
    perches   = true
  }

  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 1"
  }
}
