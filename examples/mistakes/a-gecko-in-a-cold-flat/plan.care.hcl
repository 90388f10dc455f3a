# "It is a warm flat." A gecko that finds no warm surface cannot digest what it eats.
collection "a-gecko-in-a-cold-flat" {
  time_zone = "Europe/London"
}

room "room" {
  temperature = "17 to 21 C"
  humidity    = "45 to 60 %"
}

round "evening" {
  at = "19:30"
}

enclosure "box" {
  species = "eublepharis-macularius"

  housing {
    kind      = "glass"
    inside    = "90 x 45 x 40 cm"
    lid       = "part mesh, latched"
    gap       = "3 mm"
    vents     = "cross"
    substrate = "loam and sand"
    moisture  = "dry"
    depth     = "4 cm"
    hides     = 3
  }

  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 1"
  }
}
