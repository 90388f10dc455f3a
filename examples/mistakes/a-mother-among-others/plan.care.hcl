# A gravid female in the group: the others eat the young, or she does.
collection "a-mother-among-others" {
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
    inside    = "90 x 45 x 45 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 4
  }

  animals "adult" {
    count  = "1.1.0"
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 14"
  }

  animals "fern" {
    count  = "0.1.0"
    stage  = "adult"
    state  = "with brood"
    origin = "captive bred"
    paper  = "invoice 16"
  }

  climate {
    warm_end    = "27 to 28 C"
    cool_end    = "24 to 25 C"
    night       = "22 to 24 C"
    humidity    = "68 to 76 %"
    thermometer = true

    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "side"
      thermostat = "28 C"
    }
  }
}
