enclosure "burrow-a" {
  title   = "Burrow A"
  species = "pandinus-imperator"
  room    = "east"
  order   = 1

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

  animals "adults" {
    count   = "1.2.0"
    stage   = "adult"
    origin  = "captive bred"
    paper   = "EU-Q-2021-118"
    arrived = "2021-04-12"
    hidden  = 2
  }

  climate {
    warm_end    = "28 to 30 C"
    cool_end    = "24 to 26 C"
    night       = "22 to 25 C"
    humidity    = "55 to 65 %"
    thermometer = true

    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "side"
      thermostat = "30 C"
    }

    # Two thermometers, on the glass at the mat and at the far end: what is reckoned of the
    # heat is narrowed by them.
    measured {
      on   = "2026-10-18"
      spot = "29.5 C"
      air  = "23.5 C"
      room = "21 C"
    }
  }

  care "mist" {
    every  = "2 days"
    amount = "150 ml"
  }

  # Twice a day, since the door of this room is used by visitors.
  care "look" {
    every = "day"
    round = ["morning", "evening"]
  }

  care "count" {
    on = ["first sun"]
  }

  feeding "adults" {
    on         = ["mon", "thu"]
    per_animal = 2
    rotate     = ["cricket adult", "cricket adult", "roach medium"]
  }
}
