# A male that came in autumn, apart from the others until his quarantine is over.
enclosure "arrival-1" {
  species = "pandinus-imperator"
  room    = "annex"

  housing {
    kind      = "glass"
    inside    = "50 x 30 x 36 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "coir"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 1
  }

  animals "alder" {
    title  = "Alder"
    count  = "1.0.0"
    stage  = "adult"
    origin = "captive bred"
    paper  = "EU-Q-2026-204"
  }

  climate {
    warm_end    = "27 to 28 C"
    cool_end    = "24 to 25 C"
    night       = "22 to 24 C"
    humidity    = "70 to 80 %"
    thermometer = true

    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "back"
      thermostat = "28 C"
    }
  }
}
