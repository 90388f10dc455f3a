enclosure "clover" {
  species = "reed-prowler"
  room    = "loft"

  housing {
    kind   = "tub"
    inside = "40 x 30 x 25 cm"
    lid    = "solid, latched"
  }

  animals "one" {
    count  = 1
    instar = 3
  }

  care "moisten" {
    on     = ["mon", "sat"]
    amount = "40 ml"
  }

  care "handle" {
    on    = ["wed"]
    every = "2 weeks"
  }

  care "dish" {
    on = ["first sun", "15th"]
  }

  feeding "one" {
    after_last = "6 days"
    per_animal = 1
    prey       = "cricket small"
  }
}

# Leaves everything to its sheet.
enclosure "vetch" {
  species = "reed-prowler"
  room    = "loft"

  housing {
    kind   = "tub"
    inside = "50 x 40 x 30 cm"
    lid    = "solid, latched"
  }

  animals "newcomer" {
    count = "0.1.0"
    stage = "adult"
  }

  care "device-test" {
    every = "2 months"
    from  = "2026-12-31"
  }

  care "other" {
    task  = "look through the label and the papers"
    on    = ["1 apr", "29 feb"]
    round = "dusk"
  }
}
