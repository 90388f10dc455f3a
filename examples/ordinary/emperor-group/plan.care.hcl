# A group in a long tank: a mat at the side.
collection "emperor-group" {
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
    inside    = "120 x 50 x 45 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 5
  }

  animals "adults" {
    count  = "1.2.0"
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 4"
  }

  climate {
    warm_end    = "29 C"
    night       = "20 to 24 C"
    thermometer = true

    heater "mat" {
      power      = "30 W"
      size       = "35 x 43 cm"
      place      = "side"
      thermostat = "29 C"
    }
  }

  care "mist" {
    every  = "day"
    amount = "150 ml"
  }
}
