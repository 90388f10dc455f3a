# A tree spider with openings on opposite sides, in a warm room.
collection "pinktoe-in-a-tall-box" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "23 to 27 C"
  humidity    = "50 to 65 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "avicularia-avicularia"

  housing {
    kind      = "glass"
    inside    = "30 x 30 x 45 cm"
    lid       = "solid, latched"
    vents     = "cross"
    substrate = "coir and topsoil"
    moisture  = "damp below"
    depth     = "6 cm"
    hides     = 1
    perches   = true
  }

  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 1"
  }
}
