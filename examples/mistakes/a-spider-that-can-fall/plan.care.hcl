# A tall tank looks generous. A heavy spider that falls from its lid bursts.
collection "a-spider-that-can-fall" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "22 to 26 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "tower" {
  species = "brachypelma-hamorii"

  housing {
    kind      = "glass"
    inside    = "45 x 45 x 60 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir"
    moisture  = "damp below"
    depth     = "10 cm"
    hides     = 1
  }

  animals "adult" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 15"
  }
}
