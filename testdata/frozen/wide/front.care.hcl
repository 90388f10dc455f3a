enclosure "sedge" {
  title    = "Sedge"
  species  = "reed-prowler"
  room     = "front"
  order    = 1
  formerly = "tank-1"

  housing {
    kind   = "glass"
    inside = "80 x 50 x 45 cm"
    lid    = "solid, latched"
  }

  animals "grown" {
    count    = 2
    stage    = "juvenile"
    formerly = "pair"
  }

  care "look" {
    every = "day"
    round = ["dawn", "dusk"]
  }

  care "spray" {
    kind     = "mist"
    formerly = "mist"
    every    = "3 days"
    at       = ["08:10", "18:20"]
    keeper   = "odran"
    amount   = "80 ml"
  }

  care "moisture" {
    cron   = "15 7,17 * * 1"
    keeper = "odran"
  }

  care "count" {
    cron   = "30 12 13 * 5"
    keeper = "odran"
  }

  care "heat" {
    every  = "3 days"
    at     = "16:40"
    keeper = "imke"
  }

  care "water" {
    every = "2 days"
    round = "dusk"
    from  = "2026-03-01"
  }

  feeding "grown" {
    on         = ["tue", "fri"]
    round      = "dusk"
    per_animal = 3
    rotate     = ["cricket medium", "roach hatchling", "cricket medium"]
    gut_load   = true
  }

  season "low water" {
    from    = "1 mar"
    to      = "20 apr"
    feeding = "half"
    misting = "half"
  }
}

enclosure "rush" {
  title   = "Rush"
  species = "reed-prowler"
  room    = "front"
  order   = 2

  housing {
    kind   = "glass"
    inside = "60 x 40 x 40 cm"
    lid    = "solid, latched"
  }

  animals "mother" {
    title = "Bree"
    count = "0.1.0"
    stage = "adult"
  }

  care "water" {
    after_last = "3 days"
    round      = "twice-weekly"
    window     = "2 days"
  }

  care "weigh" {
    on    = ["last"]
    round = "dusk"
    from  = "2026-03-01"
    until = "2027-08-31"
  }

  care "deep-clean" {
    every = "5 weeks"
    round = "dawn"
  }

  feeding "mother" {
    every      = "10 days"
    round      = "dawn"
    per_animal = 1
    prey       = "cricket small"
    leftovers  = "2 days"
    gut_load   = true
  }
}
