# All the watts of a heater inside stay inside.
collection "a-panel-in-a-small-box" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "22 to 26 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "heterometrus-silenus"

  housing {
    kind      = "glass"
    inside    = "40 x 30 x 30 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "15 cm"
    hides     = 1
  }

  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 1"
  }

  climate {
    thermometer = true

    heater "panel" {
      power      = "80 W"
      place      = "inside"
      thermostat = "28 C"
      guarded    = true
    }
  }
}
