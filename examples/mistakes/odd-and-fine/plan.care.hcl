# Nothing is wrong here, though it looks odd: a desert scorpion kept cool and unfed all winter.
collection "odd-and-fine" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "20 to 26 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "dune" {
  species = "hadrurus-arizonensis"

  housing {
    kind      = "glass"
    inside    = "45 x 30 x 40 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "sand and clay, packed"
    moisture  = "damp below"
    depth     = "20 cm"
    hides     = 1
  }

  animals "mesa" {
    count   = "0.1.0"
    stage   = "adult"
    origin  = "captive bred"
    arrived = "2022-09-03"
  }

  climate {
    warm_end    = "27 to 29 C"
    cool_end    = "22 to 24 C"
    night       = "20 to 22 C"
    humidity    = "30 to 45 %"
    thermometer = true

    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "side"
      thermostat = "28 C"
    }
  }

  season "cool rest" {
    from    = "15 nov"
    to      = "20 feb"
    ramp    = "5 C"
    feeding = "none"
    heating = "off"

    climate {
      warm_end = "20 to 21 C"
      cool_end = "20 to 21 C"
    }
  }
}
