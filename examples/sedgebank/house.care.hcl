# Sedgebank Rearing Rooms is an invention: its people, its sellers and its animals too. It shows what
# a house has around its animals: where their food comes from, what is due and when, and who has
# how much time.
collection "sedgebank" {
  title     = "Sedgebank Rearing Rooms"
  time_zone = "Europe/London"
}

room "main" {
  title       = "Main room"
  temperature = "22 to 25 C"
  humidity    = "50 to 65 %"
  order       = 1
  round       = ["weekday", "weekend"]
}

room "warm" {
  title       = "Warm room"
  temperature = "25 to 28 C"
  humidity    = "50 to 65 %"
  order       = 2
  round       = ["weekday", "weekend"]
}

keeper "lead" {
  title   = "Lead keeper"
  phone   = "by the door of the office"
  trained = "hairs, breeding, feeding"
  week    = "12 h"
  rest    = "11 h"
}

keeper "second" {
  title   = "Second keeper"
  phone   = "the card in the warm room"
  trained = "hairs, feeding"
  week    = "12 h"
  rest    = "11 h"
}

contact "vet" {
  title = "Practice on the green"
  phone = "on the door"
}

round "weekday" {
  title  = "Weekday round"
  at     = "18:30"
  keeper = "lead"
  within = "120 min"
  start  = "10 min"
  on     = ["mon to fri"]
}

round "weekend" {
  title  = "Weekend round"
  at     = "10:00"
  keeper = "second"
  within = "120 min"
  start  = "10 min"
  on     = ["sat", "sun"]
}

# The lead keeper is away in spring, and the second one comes on every day.
away "lead" {
  from  = "2027-04-05"
  to    = "2027-04-12"
  cover = "second"
}

calendar "lead" {
  title  = "Lead keeper's rounds"
  rounds = ["weekday"]
  remind = "10 min"
}

calendar "second" {
  title   = "Second keeper's rounds"
  keepers = ["second"]
  remind  = "30 min"
}

calendar "dates" {
  title   = "Dates of the house"
  keepers = ["lead", "second"]
  entry   = "per date"
}
