# A shut tub of damp sand: mites and fungus.
collection "a-desert-box-that-never-dries" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "22 to 27 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "hadrurus-arizonensis"

  housing {
    kind      = "tub"
    inside    = "45 x 30 x 30 cm"
    lid       = "solid, latched"
    vents     = "none"
    substrate = "sand and clay"
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
