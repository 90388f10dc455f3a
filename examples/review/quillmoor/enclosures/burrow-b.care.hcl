# A female that was mated in April, and her brood.
enclosure "burrow-b" {
  title   = "Burrow B"
  species = "pandinus-imperator"
  room    = "east"
  order   = 2

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

  animals "fern" {
    title   = "Fern"
    count   = "0.1.0"
    stage   = "adult"
    origin  = "captive bred"
    paper   = "EU-Q-2021-119"
    arrived = "2021-04-12"
  }

  climate {
    warm_end    = "28 to 29 C"
    cool_end    = "24 to 25 C"
    night       = "22 to 25 C"
    humidity    = "72 to 82 %"
    thermometer = true

    heater "mat" {
      power      = "40 W"
      size       = "28 x 43 cm"
      place      = "back"
      thermostat = "29 C"
    }
  }

  care "mist" {
    every  = "day"
    amount = "60 ml"
  }

  # Silences one finding until a date, with a reason that a reviewer can weigh.
  accept "outgrows-soon" {
    because = "her young are to be placed, and a tank of 120 x 80 cm is being built"
    until   = "2027-03-01"
  }
}
