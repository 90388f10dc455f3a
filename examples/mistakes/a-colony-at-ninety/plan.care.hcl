# A colony held at 90 F throughout, as some do. The sources disagree.
collection "a-colony-at-ninety" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "72 to 78 F"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "pandinus-imperator"

  housing {
    kind      = "glass"
    inside    = "90 x 45 x 45 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 4
  }

  animals "adult" {
    count  = 3
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 14"
  }

  climate {
    warm_end    = "90 F"
    cool_end    = "90 F"
    night       = "90 F"
    humidity    = "68 to 76 %"
    thermometer = true

    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "side"
      thermostat = "90 F"
    }
  }
}
