# Young ghost mantids, each in a cup of its own, fed on flies.
enclosure "cup" {
  title   = "Cup"
  numbers = "1 to 8"
  species = "phyllocrania-paradoxa"
  room    = "warm"
  order   = 7

  housing {
    kind      = "tub"
    inside    = "10 x 10 x 15 cm"
    lid       = "mesh, latched"
    gap       = "0.4 mm"
    vents     = "cross"
    substrate = "coir"
    moisture  = "damp below"
    depth     = "1 cm"
    perches   = true
    water     = "none"
  }

  animals "one" {
    count  = 1
    stage  = "young"
    origin = "captive bred"
    paper  = "SB-2026-31"
  }

  feeding "one" {
    every      = "2 days"
    per_animal = 4
    prey       = "fruit-fly hydei"
  }
}
