# Foam sends twice as much of the heat in, and takes away the safety of the mat.
collection "foam-behind-a-mat" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "20 to 26 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "heterometrus-silenus"

  housing {
    kind      = "glass"
    inside    = "60 x 45 x 40 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 1

    face "back" {
      backing = "foam"
      thick   = "20 mm"
    }
  }

  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 1"
  }

  climate {
    thermometer = true

    heater "mat" {
      power      = "30 W"
      size       = "30 x 40 cm"
      place      = "back"
      thermostat = "29 C"
    }
  }
}
