package roster_test

import (
	"fmt"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/internal/planned"
	"vivary/schema/civil"
)

// sheet is a species without care of its own, so that a plan has only the care
// that stands in it.
const sheet = `
species "fixture" {
  title = "fixture"
  stage "juvenile" {
    instars = "4 to 5"
  }
  stage "adult" {
    instars = "6"
  }
}
room "east" {
  temperature = "21 to 24 C"
}
`

// box returns an enclosure block with housing and the given rest.
func box(name, rest string) string {
	return "enclosure \"" + name + "\" {\n  species = \"fixture\"\n  housing {\n    kind   = \"glass\"\n    inside = \"60 x 40 x 40 cm\"\n    lid    = \"solid, latched\"\n  }\n" + rest + "}\n"
}

// one is the animals of a box with one group.
const one = "  animals \"only\" {\n    count = 2\n    stage = \"juvenile\"\n  }\n"

// house is a collection in London with the given blocks.
func house(blocks ...string) string {
	return "collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\n" + sheet + strings.Join(blocks, "")
}

// compiled compiles a plan and a log as of noon of a day.
func compiled(t testing.TB, text, log string, on civil.Date) *compile.Result {
	t.Helper()
	c, found := planned.Sound(t, planned.With(text, log))
	return compile.Compile(c, found, on.At(12*60, c.Location))
}

// find returns the series of that name; the first where it is in several rounds.
func find(t testing.TB, r *compile.Result, enclosure, name string) *roster.Entry {
	t.Helper()
	for s := range r.Roster.All() {
		if s.Life.Plan.Name.V == enclosure && s.Name == name {
			return s
		}
	}
	t.Fatalf("no series %s/%s", enclosure, name)
	return nil
}

// days lists the days of a series from a day until before another.
func days(r *compile.Result, s *roster.Entry, from, until civil.Date) string {
	var out []string
	for d := from; d < until; d++ {
		if i, ok := r.Horizon.Index(d); ok && s.Days.Has(i) {
			_, m, day := d.YMD()
			out = append(out, fmt.Sprintf("%s %d %s", d.Weekday().String()[:3], day, m.String()[:3]))
		}
	}
	return strings.Join(out, ", ")
}

var day = planned.Day
