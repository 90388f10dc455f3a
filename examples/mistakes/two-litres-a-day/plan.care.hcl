# A misting system set to two litres a day floods the substrate within days.
collection "two-litres-a-day" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "22 to 26 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "heterometrus-silenus"

  housing {
    kind      = "glass"
    inside    = "20 x 10 x 12 in"
    lid       = "solid, latched"
    vents     = "few"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "6 in"
    hides     = 1
  }

  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 1"
  }

  care "mist" {
    every  = "day"
    amount = "2 L"
  }
}
