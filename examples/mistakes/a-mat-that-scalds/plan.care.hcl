# More watts on less wall: when its thermostat sticks the glass burns within minutes.
collection "a-mat-that-scalds" {
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
  species = "pandinus-imperator"

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

  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 1"
  }

  climate {
    night       = "20 to 24 C"
    thermometer = true

    heater "mat" {
      power      = "60 W"
      size       = "20 x 30 cm"
      place      = "side"
      thermostat = "30 C"
    }
  }
}
