# The thermostat sees the cool end, and never how hot its heater gets.
collection "the-probe-at-the-cool-end" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "18 to 22 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "pandinus-imperator"

  housing {
    kind      = "glass"
    inside    = "20 x 10 x 12 in"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "6 in"
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
    night       = "20 to 22 C"
    thermometer = true

    heater "mat" {
      power      = "22 W"
      size       = "25 x 36 cm"
      place      = "back"
      thermostat = "28 C"
      probe      = "cool end"
    }
  }
}
