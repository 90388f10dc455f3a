package tidy_test

import "strings"

// cases are texts as somebody wrote them and as they are when they are tidy.
var cases = []struct{ name, text, want string }{
	{"order, alignment and blank lines", `
enclosure   "tub-7"{
room="east"
    species = "pandinus-imperator"
  animals "one" { count = 1 }
  housing {

    depth="16cm"
    inside =   "60x45x40 cm"

  }
  care "mist" {
    amount = "150ml"
    every = "day"
  }
  climate {
    heater "mat" {
      thermostat = "28C"
      power = "25W"
    }
    humidity = "75-85%"
  }
  title = "Tub 7"
}
round "evening" {
  at = "7:30pm"
}
`, `enclosure "tub-7" {
  title   = "Tub 7"
  species = "pandinus-imperator"
  room    = "east"

  housing {
    inside = "60 x 45 x 40 cm"
    depth  = "16 cm"
  }

  animals "one" { count = 1 }

  climate {
    humidity = "75 to 85 %"

    heater "mat" {
      power      = "25 W"
      thermostat = "28 C"
    }
  }

  care "mist" {
    every  = "day"
    amount = "150 ml"
  }
}

round "evening" {
  at = "7:30 pm"
}
`},
	{"blocks of one type keep their order, and so do outermost blocks", `
room "west" {
  order = 2
}
collection "c" {
}
room "east" {
  order = 1
}
enclosure "a" {
  care "water" {
  }
  accept "hides-few" {
  }
  care "look" {
  }
}
`, `room "west" {
  order = 2
}

collection "c" {
}

room "east" {
  order = 1
}

enclosure "a" {
  care "water" {
  }

  care "look" {
  }

  accept "hides-few" {
  }
}
`},
	{"a comment goes with what stands beneath it, and one behind a line stays there", `
# What this file is.

# The east room,
// next to the door.
room "east" { # behind the brace
  order = 1 # first
  # As the thermometer shows it.
  temperature = "22-25 C" // over a year
  # at the end
} # behind the block
# beneath it

# The last word.
`, `# What this file is.

# The east room,
// next to the door.
room "east" { # behind the brace
  # As the thermometer shows it.
  temperature = "22 to 25 C" // over a year
  order       = 1            # first
  # at the end
} # behind the block
# beneath it

# The last word.
`},
	{"nothing moves past a comment by itself", `
enclosure "a" {
  room = "east"
  species = "x"
  # beneath the two

  # The box.

  housing {
  }
  round = "evening"
  # The animal.
  animals "one" {
  }

  # The rest.

  # Watered by hand.
  care "water" {
  }
  climate {
  }
}
`, `enclosure "a" {
  species = "x"
  room    = "east"
  # beneath the two

  # The box.

  round = "evening"

  housing {
  }

  # The animal.
  animals "one" {
  }

  # The rest.

  climate {
  }

  # Watered by hand.
  care "water" {
  }
}
`},
	{"a blank line makes groups of attributes", `
species "x" {
  latin = "X x"
  title = "x"


  venom = "mild"
  length = "9-15cm"
  figure "keeping" {
    note = "n"
    value = "alone"
  }
}
`, `species "x" {
  title = "x"
  latin = "X x"

  length = "9-15cm"
  venom  = "mild"

  figure "keeping" {
    value = "alone"
    note  = "n"
  }
}
`},
	{"blocks on one line", `
keeper "lead" { title = "Lead" }
keeper "relief" {title="Relief"} # at the weekend
keeper "me" {}

keeper "other" { title = "Other" }
enclosure "tub" {
  numbers = "1-40"
  number "7" { stage = "adult" }
  number "12 to 14" { born = "2 June 2024" }
  # The large one.
  number "19" { depth = "20cm" }
  number "21" {
    depth = "20cm"
  }
  number "22" { stage = "adult" }
}
`, `keeper "lead"   { title = "Lead" }
keeper "relief" { title = "Relief" } # at the weekend
keeper "me"     {}

keeper "other" { title = "Other" }

enclosure "tub" {
  numbers = "1 to 40"

  number "7"        { stage = "adult" }
  number "12 to 14" { born = "2024-06-02" }
  # The large one.
  number "19" { depth = "20 cm" }

  number "21" {
    depth = "20 cm"
  }

  number "22" { stage = "adult" }
}
`},
	{"lists", `
round "r" {
  on = [ "Tuesday","FRI" , ]
  not_on = ["1 apr",
    "24 Dec - 2 Jan", "2027-3-4" , # a strike
    # Too many visitors.
    "school-holidays"]
  also_on = [ # by hand
    "15th",

    "last"
    # and no more
  ]
  at = "19:30"
  note = "x"
}
`, `round "r" {
  at = "19:30"
  on = ["tue", "fri"]
  not_on = [
    "1 apr",
    "24 dec to 2 jan", "2027-03-04", # a strike
    # Too many visitors.
    "school-holidays",
  ]
  also_on = [ # by hand
    "15th",

    "last",
    # and no more
  ]
  note = "x"
}
`},
	{"comments between words", `
/* a */ room /* b */ "east" /* c */ { /* d */
  order /* e */ = /* f */ 1 /* g
     h */
  /* i */ title = "East"
  round = ["a", /* j */ "b"]
}
`, `/* a */
room /* b */ "east" /* c */ { /* d */
  /* i */
  title = "East"
  order /* e */ = /* f */ 1 /* g
     h */
  round = ["a", /* j */ "b"]
}
`},
	{"a name that is none stays where it is, and the first of two stays the first", `
round "r" {
  within = "30 min"
  keper = "lead"
  at = "8 am"
  at = "20:00"
}
`, `round "r" {
  at     = "8:00 am"
  at     = "20:00"
  within = "30 min"
  keper  = "lead"
}
`},
	{"names without quotes, escapes and other letters", "\ufeffroom east {\r\n\ttitle = \"Os\\u0074raum – \\\"kühl\\\"\"  \r\n\r\n\r\n\ttemperature = \"70\u00a0°F to 77\"\r\n}",
		"room \"east\" {\n  title = \"Os\\u0074raum – \\\"kühl\\\"\"\n\n  temperature = \"70 to 77 F\"\n}\n"},
	{"a long value does not move the comments of others", `
room "a" {
  title = "` + strings.Repeat("x", 120) + `" # a
  order = 1 # b
  locked = true # c
}
`, `room "a" {
  title  = "` + strings.Repeat("x", 120) + `" # a
  order  = 1    # b
  locked = true # c
}
`},
	{"what cannot be read stays as it is, to the byte, and the others do not", `
room "a" {order=1}
  room "b" {
	 order = "2  # the quote is missing
  }

# of c

room "c"{
order=3
}
care "x" {
 every= "day"
}
    order=3
room "d" {order=4}
`, `room "a" { order = 1 }
  room "b" {
	 order = "2  # the quote is missing
  }

# of c

room "c" {
  order = 3
}
care "x" {
 every= "day"
}
    order=3
room "d" { order = 4 }
`},
}
