// Package house makes a house for tests: boxes in which their species can live, people
// who come and go, and a year of what happens there, told by the log. The house knows
// the truth of every day, so that a test can hold what the program says against it.
package house

import _ "embed"

// Templates are boxes in which their species can live, one template each: a plan that
// takes one has nothing to answer for but its animals. They stand in the room "house".
//
//go:embed templates.care.hcl
var Templates string

// Common is the file that a small plan of one room and one round begins with.
const Common = `collection "house" {
  time_zone  = "Europe/London"
  quarantine = "60 days"
}

room "house" {
  temperature = "22 to 25 C"
  humidity    = "50 to 60 %"
}

round "evening" {
  at     = "19:30"
  within = "300 min"
}
`
