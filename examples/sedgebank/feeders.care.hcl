# Where the food of the animals comes from. How many are ordered follows from the meals.
seller "fen" {
  title    = "Fen Feeders"
  delivers = ["tue to fri"]
  lead     = 2
  closed   = ["24 dec to 2 jan"]
}

# A second one, who needs a day longer.
seller "moor" {
  title    = "Moor Insects"
  delivers = ["wed", "thu"]
  lead     = 3
  depot    = true
}

supply "adult-crickets" {
  title    = "Adult crickets"
  prey     = "cricket adult"
  gut_load = "24 h"
  room     = "warm"
  seller   = "fen"
  packs    = [25, 100]
  margin   = "15 %"
}

supply "medium-roaches" {
  title        = "Medium roaches"
  prey         = "roach medium"
  allowed_here = true
  room         = "warm"
  seller       = "moor"
  packs        = [20, 50]
  every        = "2 weeks"
  margin       = "10 %"
}

tub "cricket-tub" {
  title       = "Cricket tub"
  prey        = "cricket adult"
  room        = "warm"
  temperature = "26 to 30 C"
}

# Young mantids live on flies. Two jars yield at once, set up apart in time.
culture "flies" {
  title       = "Fruit flies"
  prey        = "fruit-fly hydei"
  room        = "warm"
  temperature = "25 C"
  lead        = "19 days"
  lasts       = "11 days"
  at_once     = 2
  yields      = "60 to 120"
}
