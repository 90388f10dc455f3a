# Slips of the pen: each is found in one run, with its place.
collection "words-and-units" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "22 to 25 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "pandinus-imperater"

  housing {
    kind      = "glass"
    inside    = "60 x 45 x 40 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 1
  }

  animals "adult" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 14"
  }

  climate {
    warm_end = "30"
    humidty  = "75 to 85 %"
  }

  care "mist" {
    every = "2 dyas"
  }
}
