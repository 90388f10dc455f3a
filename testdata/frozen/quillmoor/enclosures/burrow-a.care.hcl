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

  # Twice a day, since the door of this room is used by visitors.
  care "look" {
    every = "day"
    round = ["morning", "evening"]
  }

  care "count" {
    on = ["first sun"]
  }

  # Silences one finding until a date, with a reason that a reviewer can weigh.
  accept "heat-short" {
    because = "27 C in the middle of the tank all January, by two thermometers"
    until   = "2027-03-01"
  }

  feeding "adults" {
    on         = ["tue", "fri"]
    per_animal = 2
    rotate     = ["cricket adult", "cricket adult", "roach medium"]
  }
}
