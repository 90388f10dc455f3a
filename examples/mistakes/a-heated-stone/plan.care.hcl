# It has hot places, and an animal does not draw back from heat that burns it.
collection "a-heated-stone" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "21 to 25 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "eublepharis-macularius"

  housing {
    kind      = "glass"
    inside    = "90 x 45 x 40 cm"
    lid       = "part mesh, latched"
    gap       = "3 mm"
    vents     = "cross"
    substrate = "loam and sand"
    moisture  = "dry"
    depth     = "4 cm"
    hides     = 3
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

    heater "rock" {
      power      = "10 W"
      place      = "inside"
      thermostat = "32 C"
      guarded    = true
    }
  }
}
