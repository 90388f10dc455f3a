# A mat that is always on. The accept block does not help.
collection "mat-without-thermostat" {
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

  animals "adult" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 14"
  }

  climate {
    warm_end    = "27 to 28 C"
    cool_end    = "24 to 25 C"
    night       = "22 to 24 C"
    humidity    = "68 to 76 %"
    thermometer = true

    heater "mat" {
      power = "25 W"
      size  = "28 x 43 cm"
      place = "side"
    }
  }

  accept "heater-bare" {
    because = "it never feels hot"
    until   = "2027-12-31"
  }
}
