# The desert shelf, with a cool rest in winter, and two spiders.
enclosure "dune-1" {
  species = "hadrurus-arizonensis"
  room    = "west"
  order   = 1

  housing {
    kind      = "glass"
    inside    = "45 x 30 x 40 cm"
    lid       = "part mesh, latched"
    gap       = "1.5 mm"
    vents     = "some"
    vents_at  = "top"
    substrate = "sand and clay, packed"
    moisture  = "damp below"
    depth     = "20 cm"
    hides     = 1
  }

  animals "mesa" {
    title   = "Mesa"
    count   = "0.1.0"
    stage   = "adult"
    origin  = "captive bred"
    arrived = "2022-09-03"
  }

  climate {
    warm_end    = "28 to 31 C"
    cool_end    = "22 to 25 C"
    night       = "20 to 22 C"
    humidity    = "30 to 45 %"
    thermometer = true

    heater "ceramic" {
      power      = "75 W"
      place      = "above"
      thermostat = "30 C"
      guarded    = true
    }
  }

  season "cool rest" {
    from    = "15 nov"
    to      = "20 feb"
    ramp    = "4 C"
    feeding = "none"
    heating = "off"

    climate {
      warm_end = "19 to 20 C"
      cool_end = "19 to 20 C"
    }
  }
}

enclosure "dune-2" {
  species = "hadrurus-arizonensis"
  room    = "west"
  order   = 2

  housing {
    kind      = "tub"
    inside    = "30 x 20 x 25 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "sand and clay, packed"
    moisture  = "damp below"
    depth     = "16 cm"
    hides     = 1
  }

  animals "flint" {
    title  = "Flint"
    count  = 1
    instar = 4
    origin = "captive bred"
  }

  climate {
    warm_end    = "27 to 28 C"
    cool_end    = "21 to 24 C"
    night       = "20 to 22 C"
    humidity    = "30 to 45 %"
    thermometer = true

    heater "cable" {
      power      = "4 W"
      length     = "40 cm"
      place      = "back"
      contact    = "gap"
      thermostat = "28 C"
    }
  }
}

enclosure "scrub-1" {
  species = "brachypelma-hamorii"
  room    = "west"
  order   = 3

  housing {
    kind      = "glass"
    inside    = "45 x 40 x 30 cm"
    lid       = "part mesh, latched"
    gap       = "2 mm"
    vents     = "some"
    vents_at  = "top"
    substrate = "coir and topsoil"
    moisture  = "damp below"
    depth     = "12 cm"
    hides     = 1
  }

  animals "marla" {
    title   = "Marla"
    count   = "0.1.0"
    stage   = "adult"
    origin  = "captive bred"
    paper   = "EU-Q-2019-007"
    arrived = "2019-05-20"
  }

  climate {
    humidity    = "50 to 62 %"
    thermometer = true
  }
}

enclosure "scrub-2" {
  species = "brachypelma-hamorii"
  room    = "west"
  order   = 4

  housing {
    kind      = "tub"
    inside    = "15 x 12 x 14 cm"
    lid       = "solid, latched"
    vents     = "few"
    vents_at  = "top"
    substrate = "coir and topsoil"
    moisture  = "damp below"
    depth     = "10 cm"
    hides     = 1
  }

  animals "tansy" {
    title  = "Tansy"
    count  = 1
    stage  = "juvenile"
    origin = "captive bred"
    paper  = "EU-Q-2025-031"
  }

  climate {
    humidity    = "50 to 65 %"
    thermometer = true
  }
}
