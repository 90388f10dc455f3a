# Saltern Row is an invention. So are its people, its animals and its two species.
collection "saltern" {
  title      = "Saltern Row"
  time_zone  = "Europe/Dublin"
  quarantine = "40 days"
}

room "front" {
  temperature = "21 to 24 C"
  order       = 1
  formerly    = "parlour"
}

room "loft" {
  temperature = "20 to 24 C"
  order       = 2
  round       = "dawn"
}

keeper "imke" {
  title   = "Imke"
  trained = "breeding, feeding"
  phone   = "in the hall"
}

keeper "odran" {
  title   = "Odran"
  trained = "feeding"
  phone   = "in the hall"
}

round "dawn" {
  at       = "07:45"
  keeper   = "odran"
  within   = "30 min"
  formerly = "early"
}

round "dusk" {
  at     = "19:15"
  keeper = "imke"
  within = "45 min"
}

round "twice-weekly" {
  at     = "21:00"
  keeper = "imke"
  on     = ["mon", "thu"]
}

# One absence that is going on at the second build, one with a stand-in every day,
# one that nobody covers, and one of the other keeper.
away "imke" {
  from   = "2026-11-21"
  to     = "2026-11-29"
  cover  = "odran"
  visits = ["tue", "thu", "sat"]
}

away "imke" {
  from  = "2027-02-06"
  to    = "2027-02-13"
  cover = "odran"
}

away "imke" {
  from = "2027-05-08"
  to   = "2027-05-10"
}

away "odran" {
  from   = "2027-07-03"
  to     = "2027-07-17"
  cover  = "imke"
  visits = ["mon", "wed", "fri", "sun"]
}

calendar "clocks" {
  kinds  = ["mist", "moisture", "heat", "count"]
  remind = "10 min"
  color  = "olive"
}

calendar "late" {
  rounds   = ["dusk", "twice-weekly"]
  formerly = "evenings"
}

calendar "chores" {
  entry = "per care"
}

calendar "odran" {
  keepers = ["odran"]
  rounds  = ["dawn", "dusk"]
}

calendar "imke" {
  keepers    = ["imke"]
  enclosures = ["rush", "clover"]
  entry      = "per care"
}

calendar "loft" {
  rooms = ["loft"]
}

calendar "kitchen" {
  kinds = ["feed", "leftovers", "gut-load"]
}

calendar "water" {
  kinds = ["water", "mist"]
  entry = "per care"
}
