# Two pairs of emperor scorpions.
template "burrow" {
  species = "pandinus-imperator"
  room    = "main"

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

  care "mist" {
    every  = "day"
    amount = "150 ml"
  }

  feeding "pair" {
    on         = ["tue", "fri"]
    per_animal = 2
    rotate     = ["cricket adult", "cricket adult", "roach medium"]
  }
}

enclosure "burrow-1" {
  template = "burrow"
  order    = 1

  animals "pair" {
    count  = "1.1.0"
    stage  = "adult"
    origin = "captive bred"
    paper  = "SB-2022-04"
  }
}

enclosure "burrow-2" {
  template = "burrow"
  order    = 2

  animals "pair" {
    count  = "1.1.0"
    stage  = "adult"
    origin = "captive bred"
    paper  = "SB-2023-11"
  }
}
