# A mat under a third of the floor, thin loam over it, the probe on the loam.
collection "leopard-gecko-on-loam" {
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
  species = "eublepharis-macularius"

  housing {
    kind      = "glass"
    inside    = "90 x 45 x 45 cm"
    lid       = "part mesh, latched"
    gap       = "3 mm"
    vents     = "cross"
    substrate = "packed loam"
    moisture  = "dry"
    depth     = "3 cm"
    hides     = 3
    stands_on = "feet"
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
      power      = "24 W"
      size       = "28 x 43 cm"
      place      = "under"
      thermostat = "32 C"
      probe      = "spot"
    }
  }
}
