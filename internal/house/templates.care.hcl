# Boxes in which their species can live, for tests: a plan that takes one of these has
# nothing to answer for but its animals.

template "emperor" {
  species = "pandinus-imperator"
  room    = "house"

  housing {
    kind      = "glass"
    inside    = "60 x 45 x 40 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 2
  }

  climate {
    warm_end    = "28 to 29 C"
    cool_end    = "24 to 25 C"
    night       = "22 to 25 C"
    humidity    = "72 to 82 %"
    thermometer = true

    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "back"
      thermostat = "29 C"
    }
  }
}

template "emperors" {
  species = "pandinus-imperator"
  room    = "house"

  housing {
    kind      = "glass"
    inside    = "90 x 45 x 45 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 5
  }

  climate {
    warm_end    = "28 to 30 C"
    cool_end    = "24 to 26 C"
    night       = "22 to 25 C"
    humidity    = "70 to 80 %"
    thermometer = true

    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "side"
      thermostat = "30 C"
    }
  }
}

template "emperor-tub" {
  species = "pandinus-imperator"
  room    = "house"

  housing {
    kind      = "tub"
    inside    = "40 x 30 x 32 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 1
  }

  climate {
    warm_end    = "27 to 28 C"
    cool_end    = "24 to 25 C"
    night       = "22 to 24 C"
    humidity    = "70 to 80 %"
    thermometer = true

    heater "mat" {
      power      = "8 W"
      size       = "20 x 20 cm"
      place      = "back"
      thermostat = "28 C"
    }
  }
}

template "forest" {
  species = "heterometrus"
  room    = "house"

  housing {
    kind      = "tub"
    inside    = "40 x 30 x 32 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 1
  }

  climate {
    warm_end    = "27 to 28 C"
    cool_end    = "24 to 25 C"
    night       = "22 to 24 C"
    humidity    = "70 to 80 %"
    thermometer = true

    heater "mat" {
      power      = "8 W"
      size       = "20 x 20 cm"
      place      = "back"
      thermostat = "28 C"
    }
  }
}

template "desert" {
  species = "hadrurus-arizonensis"
  room    = "house"

  housing {
    kind      = "tub"
    inside    = "45 x 30 x 30 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "sand and clay, packed"
    moisture  = "damp below"
    depth     = "20 cm"
    hides     = 1
  }

  climate {
    warm_end    = "27 to 28 C"
    cool_end    = "23 to 25 C"
    night       = "20 to 22 C"
    humidity    = "30 to 45 %"
    thermometer = true

    heater "mat" {
      power      = "12 W"
      size       = "22 x 28 cm"
      place      = "side"
      thermostat = "28 C"
    }
  }
}

template "redknee" {
  species = "brachypelma-hamorii"
  room    = "house"

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

  climate {
    humidity    = "50 to 62 %"
    thermometer = true
  }
}

template "redknee-tub" {
  species = "brachypelma-hamorii"
  room    = "house"

  housing {
    kind      = "tub"
    inside    = "15 x 12 x 14 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "coir and topsoil"
    moisture  = "damp below"
    depth     = "10 cm"
    hides     = 1
  }

  climate {
    humidity    = "50 to 65 %"
    thermometer = true
  }
}

template "vinegaroon" {
  species = "mastigoproctus-giganteus"
  room    = "house"

  housing {
    kind      = "tub"
    inside    = "40 x 30 x 32 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 1
  }

  climate {
    humidity    = "62 to 78 %"
    thermometer = true
  }
}

template "millipedes" {
  species = "archispirostreptus-gigas"
  room    = "house"

  housing {
    kind      = "tub"
    inside    = "80 x 50 x 45 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "leaf litter and topsoil"
    moisture  = "damp"
    depth     = "30 cm"
    hides     = 4
  }

  climate {
    humidity    = "72 to 88 %"
    thermometer = true
  }
}

template "woodlice" {
  species = "porcellio-scaber"
  room    = "house"

  housing {
    kind      = "tub"
    inside    = "80 x 50 x 45 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "leaf litter and topsoil"
    moisture  = "damp"
    depth     = "18 cm"
    hides     = 20
  }

  climate {
    humidity    = "72 to 88 %"
    thermometer = true
  }
}

template "whip" {
  species = "damon-diadema"
  room    = "house"

  housing {
    kind      = "glass"
    inside    = "45 x 45 x 60 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "6 cm"
    hides     = 2
    perches   = true
  }

  climate {
    warm_end    = "25 to 27 C"
    humidity    = "75 to 85 %"
    thermometer = true
  }
}
