room "east" {
  title       = "East room"
  temperature = "22 to 25 C"
  humidity    = "50 to 65 %"
  order       = 1
  round       = "evening"
}

room "west" {
  title       = "West room"
  temperature = "19 to 24 C"
  humidity    = "35 to 50 %"
  order       = 2
  round       = "evening"
}

room "annex" {
  title       = "Annex, for new animals"
  temperature = "22 to 25 C"
  humidity    = "45 to 60 %"
  order       = 3
  round       = "evening"
}
