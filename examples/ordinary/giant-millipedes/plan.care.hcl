# Deep leaf litter in a room that is warm enough.
collection "giant-millipedes" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "21 to 26 C"
  humidity    = "50 to 65 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "archispirostreptus-gigas"

  housing {
    kind      = "glass"
    inside    = "80 x 50 x 50 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "leaf litter, rotten wood and topsoil"
    moisture  = "damp"
    depth     = "30 cm"
    hides     = 2
  }

  animals "adults" {
    count  = 4
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 9"
  }
}
