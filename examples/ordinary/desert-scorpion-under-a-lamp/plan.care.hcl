# A lamp by day, the room by night.
collection "desert-scorpion-under-a-lamp" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "21 to 27 C"
  humidity    = "35 to 50 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "hadrurus-arizonensis"

  housing {
    kind      = "glass"
    inside    = "60 x 40 x 40 cm"
    lid       = "part mesh, latched"
    gap       = "2 mm"
    vents     = "some"
    substrate = "sand and clay"
    moisture  = "dry"
    depth     = "20 cm"
    hides     = 1
    water     = "dish"
  }

  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 1"
  }

  climate {
    warm_end    = "30 C"
    thermometer = true

    heater "lamp" {
      power      = "40 W"
      place      = "above"
      hours      = "12 h"
      thermostat = "31 C"
    }
  }
}
