# Each line that is found says so: the rule, and a part of the text.
collection "c" {
  time_zone = "Europe/London"
  altitude  = 240                    # want unit "altitude: .240. has no unit"
}

room "east" {
  temperature = "18 to 22 C"
  humidty     = "40 to 55 %"         # want unknown-word "did you mean humidity"
}

room "west" {
  temperature = "30"                 # want unit "has no unit"
}

keeper "lead" {
  trained = "venom, juggling"        # want unknown-word "cannot be .juggling."
}

round "evening" {
  at     = "19:30"
  keeper = "laed"                    # want unknown-name "did you mean .lead."
}

round "night" {
  at = "25:00"                       # want time-of-day "is not a time of day"
}

round "early" {
  at = "01:30"                       # want time-of-day "between 00:00 and 03:59"
}

away "lead" {
  from = "2027-02-31"                # want date "no 31 February in 2027"
  to   = "2027-03-04"
}

away "lead" {
  from = "2027-06-10"
  to   = "2027-06-01"                # want date "before the first day away"
}

away "leed" {                        # want unknown-name "did you mean .lead."
  from = "2027-06-10"
  to   = "2027-06-12"
}

calendar "all" {
  remind = "10 parsecs"              # want unit "parsecs"
  color  = "puce"                    # want unknown-word "color cannot be .puce."
  kinds  = ["feeed"]                 # want unknown-name "did you mean .feed."
}

enclosure "burrow-a" {
  species = "pandinus-imperatr"      # want unknown-name "near it by name is pandinus-imperator"
  room    = "east"

  housing {
    inside = "76 x 46 cm"            # want value "76 x 46 cm"
    lid    = "solid, latchd"         # want unknown-word "did you mean .latched."
    depth  = "16 gal"                # want unit "gal"
    depth  = "16 cm"                 # want twice "written twice"
  }

  animals "adults" {
    count = "1.2"
    stage = "egg"                    # want unknown-word "stage cannot be"
  }

  animals "adults" {                 # want twice "is there twice"
    count = 1
  }

  climate {
    warm_end = "32 to 27 C"          # want value "32"
    cool_end = "26 %"                # want unit "26 %"
    heater = "mat"                   # want value "is a block, not a value"

    heater "mat" {
      power      = "-5 W"            # want value "-5 W"
      place      = "beside"          # want unknown-word "place cannot be"
      thermostat = "${1 + 1} C"      # want value "a plan computes nothing"
    }
  }

  care "mits" {                      # want unknown-word "did you mean mist"
    every = "day"
  }

  care "mist" {
    every = "3 moons"                # want unit "moons"
    on    = ["tue", "blursday"]      # want unknown-name "neither a day nor the name of a dates block"
    from  = "2027-05-01"
    until = "2027-04-01"             # want date "before the first"
  }

  feeding "youngsters" {             # want unknown-name "no animals block in this enclosure"
    prey = "cricket gigantic"        # want unknown-name "no size of cricket"
  }

  feeding "adults" {
    per_animal = "four"              # want value "number without quotes"
    rotate     = ["crickt adult"]    # want unknown-name "near it by name is cricket"
  }

  accept {                           # want missing "has no rule"
    because = "no reason"
    until   = "2027-01-01"
  }
}

enclosure "burrow-b" {               # want missing "no housing block"
  species = "Buthus imperator"       # want old-name "a former name"
  room    = "east"

  animals "one" {                    # want missing "has no count"
    stage = "adult"
  }
}

enclosure "burrow-c" {
  species = "heterometrus"
  room    = "nowhere"                # want unknown-name "no room"

  housing {                          # want missing "has no lid"
    inside = "20 x 10 x 12 in"
  }

  animals "one" {
    count = 1
  }
}

enclosure "Burrow D" {               # want value "cannot be a name"
  template = "tub"                   # want unknown-name "no template"
  species  = "pandinus-imperator"
  room     = "east"

  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
  }

  animals "one" {
    count = 1
  }
}

enclozure "burrow-e" {               # want unknown-word "did you mean enclosure"
}

loose = "1"                          # want unknown-word "outside every block"

keeper "relief" {
  title   = "\u001b[2J"              # want value "cannot be seen"
  trained = ["venom"]                # want value "one value, not a list"
}

calendar "none" {
  rounds = []                        # want value "empty list"
}

round "dawn" {
  at = "03:59"                       # want time-of-day "between 00:00 and 03:59"
}

round "odd" {
  at = "19:30"
  on = ["1srth"]                     # want value "is not a day"
}

source "own" {
  cite = "records of the house"
  kind = "own"
}

source "own" {                       # want twice "source .own. is there twice"
  cite = "other records"
  kind = "own"
}

species "here" {
  like = "pandinus-imperatr"         # want unknown-name "near it by name is pandinus-imperator"

  figure "keeping" {
    value   = "in pairs"             # want unknown-word "value cannot be"
    stages  = ["adlut"]
    because = "tried"
    source  = ["own"]
    review  = "2027-09-01"
  }

  need "water" {
    longest = "3 days"
    stages  = ["adlut"]              # want unknown-word "no stage .adlut.: did you mean adult"
    because = "tried"
    source  = ["own"]
    review  = "2027-09-01"
  }

  care "mits" {                      # want unknown-word "did you mean mist"
    every = "day"
  }

  feeding "adult" {
    every = "week"
    prey  = "cricket"                # want unknown-name "size of the cricket is not said"
  }

  feeding {                          # want missing "feeding has no animals after it"
    prey  = "10 crickets"            # want value "said by per_animal"
    every = "week"
  }
}

species "ring" {
  like = "gnir"                      # want value "leads back to .ring."
}

species "gnir" {
  like = "ring"                      # want value "leads back to .gnir."
}

feeder "silkworm" {
  figure "enrgy" {                   # want unknown-word "did you mean energy"
    value = "5 kJ/g"
  }
}

template "t" {
  formerly = "s"                     # want unknown-word "no attribute .formerly."
}

enclosure "from-nowhere" {           # its lid may be in the template: nothing is missing yet
  template = "tt"                    # want unknown-name "there is no template"
  room     = "east"
}
