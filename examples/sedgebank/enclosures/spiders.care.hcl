# Grown tarantulas, each alone, in a room that is warm enough for them.
enclosure "knee" {
  title   = "Knee"
  numbers = "1 to 4"
  species = "brachypelma-hamorii"
  room    = "main"
  order   = 3

  housing {
    kind      = "glass"
    inside    = "45 x 40 x 30 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir and topsoil"
    moisture  = "damp below"
    depth     = "12 cm"
    hides     = 1
  }

  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "SB-2019-02"
  }
}
