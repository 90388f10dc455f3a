# Quillmoor Field Centre is an invention. So are its people and its animals.
collection "quillmoor" {
  title      = "Quillmoor Field Centre"
  time_zone  = "Europe/London"
  web        = "https://care.quillmoor.example/feeds"
  quarantine = "60 days"
}

keeper "lead" {
  title   = "Lead keeper"
  phone   = "the office"
  trained = "venom, hairs, breeding, feeding"
  budget  = "110 min"
}

keeper "relief" {
  title   = "Relief keeper"
  phone   = "the farm shop"
  trained = "hairs, feeding"
  budget  = "90 min"
}

contact "vet" {
  title = "Practice on the green"
  phone = "on the door"
}

round "morning" {
  at     = "08:15"
  keeper = "lead"
  within = "30 min"
}

round "evening" {
  at     = "19:30"
  keeper = "lead"
  within = "60 min"
}

# A fortnight in July. The relief keeper comes on four days of the week.
away "lead" {
  from   = "2027-07-10"
  to     = "2027-07-24"
  cover  = "relief"
  visits = ["mon", "wed", "fri", "sat"]
}

# A week at Easter.
away "lead" {
  from   = "2027-03-26"
  to     = "2027-04-04"
  cover  = "relief"
  visits = ["mon", "fri"]
}

# A short look in the morning, at the east room only.
calendar "morning" {
  rounds = ["morning"]
  color  = "teal"
}

calendar "evening" {
  rounds = ["evening"]
  remind = "10 min"
  color  = "olive"
}

# For whoever stands in: only what the relief keeper does.
calendar "relief" {
  title   = "Relief at Quillmoor"
  keepers = ["relief"]
  remind  = "30 min"
}

# A repeating entry for each care, with the lines of states on their days.
calendar "desert" {
  title = "Desert shelf, care by care"
  rooms = ["west"]
  entry = "per care"
}
