# Juveniles in tubs of one kind. Each tub says only what differs.
template "tub" {
  species = "pandinus-imperator"
  room    = "east"

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

    heater "cable" {
      power      = "4 W"
      length     = "40 cm"
      place      = "back"
      contact    = "gap"
      thermostat = "28 C"
    }
  }
}

enclosure "tub-1" {
  template = "tub"

  animals "bracken" {
    title  = "Bracken"
    count  = 1
    instar = 4
    origin = "captive bred"
    paper  = "bred here, 2024 moss"
    brood  = "2024 moss"
  }
}

enclosure "tub-2" {
  template = "tub"

  animals "sedge" {
    title  = "Sedge"
    count  = 1
    instar = 5
    origin = "captive bred"
    paper  = "bred here, 2024 moss"
    brood  = "2024 moss"
  }
}

enclosure "tub-3" {
  template = "tub"

  animals "rush" {
    title  = "Rush"
    count  = 1
    instar = 6
    origin = "captive bred"
    paper  = "bred here, 2023 moss"
    brood  = "2023 moss"
  }
}

enclosure "tub-4" {
  template = "tub"

  animals "fescue" {
    title  = "Fescue"
    count  = 1
    instar = 4
    origin = "captive bred"
    paper  = "bred here, 2024 moss"
    brood  = "2024 moss"
  }
}
