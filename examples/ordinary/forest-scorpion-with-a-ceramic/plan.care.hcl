# A ceramic heater over a part of mesh, guarded, day and night.
collection "forest-scorpion-with-a-ceramic" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "19 to 24 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "heterometrus-silenus"

  housing {
    kind      = "glass"
    inside    = "60 x 45 x 45 cm"
    lid       = "part mesh, latched"
    gap       = "3 mm"
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
    night       = "20 to 23 C"
    thermometer = true

    heater "ceramic" {
      power      = "60 W"
      place      = "above"
      thermostat = "28 C"
      guarded    = true
    }
  }

  care "mist" {
    every  = "day"
    amount = "100 ml"
  }
}
