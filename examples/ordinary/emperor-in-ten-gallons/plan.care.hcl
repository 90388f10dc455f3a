# One grown emperor, a mat on the back, misted daily.
collection "emperor-in-ten-gallons" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "68 to 76 F"
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
  }

  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 1"
  }

  climate {
    warm_end    = "86 F"
    cool_end    = "70 to 76 F"
    night       = "68 to 75 F"
    thermometer = true

    heater "mat" {
      power      = "16 W"
      size       = "10 x 11 in"
      place      = "back"
      thermostat = "86 F"
    }
  }

  care "mist" {
    every  = "day"
    amount = "2 fl oz"
  }
}
