# Twelve tubs, one cable, one thermostat and one thermometer.
collection "a-rack-of-tubs" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "21 to 25 C"
  humidity    = "50 to 65 %"
}

round "evening" {
  at = "19:30"
}

rack "shelf" {
  room        = "room"
  thermometer = true

  heater "cable" {
    power      = "48 W"
    length     = "4.8 m"
    place      = "back"
    contact    = "gap"
    thermostat = "28 C"
  }
}

template "tub" {
  species = "heterometrus-silenus"
  rack    = "shelf"

  housing {
    kind      = "tub"
    inside    = "40 x 30 x 32 cm"
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
    paper  = "invoice 2"
  }
}

enclosure "tub-1" {
  template = "tub"
}

enclosure "tub-2" {
  template = "tub"
}

enclosure "tub-3" {
  template = "tub"
}

enclosure "tub-4" {
  template = "tub"
}

enclosure "tub-5" {
  template = "tub"
}

enclosure "tub-6" {
  template = "tub"
}

enclosure "tub-7" {
  template = "tub"
}

enclosure "tub-8" {
  template = "tub"
}

enclosure "tub-9" {
  template = "tub"
}

enclosure "tub-10" {
  template = "tub"
}

enclosure "tub-11" {
  template = "tub"
}

enclosure "tub-12" {
  template = "tub"
}
