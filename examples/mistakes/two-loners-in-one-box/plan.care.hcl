# Two desert scorpions in one box: the smaller one is prey.
collection "two-loners-in-one-box" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "20 to 26 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "dune" {
  species = "hadrurus-arizonensis"

  housing {
    kind      = "glass"
    inside    = "60 x 45 x 40 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "sand and clay"
    moisture  = "damp below"
    depth     = "20 cm"
    hides     = 2
  }

  animals "pair" {
    count = "1.1.0"
    stage = "adult"
  }
}
