package compile_test

import (
	"slices"
	"strings"
	"testing"

	"vivary/compile/life"
	"vivary/plan/finding"
)

// A mantis that was grown 160 days ago and eats no more is old, not ill: it is made easy
// for it, and nothing is urgent. One that was grown 30 days ago is asked about. What is
// usual for its age is our reading of a page of facts (no source).
func TestOldAge(t *testing.T) {
	box := setupHead + `enclosure "box" {
  species = "sphodromantis-lineola"
  room    = "warm"
  housing {
    kind    = "mesh"
    inside  = "30 x 30 x 40 cm"
    lid     = "mesh, latched"
    gap     = "1 mm"
    vents   = "all"
    perches = true
  }
  animals "one" {
    count = "0.1"
    stage = "adult"
  }
}
`
	refusals := "2027-02-01 box fed\n2027-02-05 box refused\n2027-02-10 box refused\n2027-02-15 box refused\n2027-02-20 box refused\n"
	for _, c := range []struct {
		name, grown string
		urgent      bool
	}{
		{"old", "2026-09-20 box matured\n", false},
		{"in its prime", "2027-01-25 box matured\n", true},
		{"of no known age", "", true},
	} {
		r := on(t, "2027-03-02", box, c.grown+refusals)
		var urgent []string
		for _, f := range r.Findings {
			if f.Severity == finding.Urgent {
				urgent = append(urgent, f.Text)
			}
			if f.Rule.ID == "moult-of-adult" {
				t.Errorf("%s: %s", c.name, f.Text)
			}
		}
		if (len(urgent) > 0) != c.urgent {
			t.Errorf("%s: urgent: %q", c.name, urgent)
		}
		eased := slices.ContainsFunc(r.Lives[0].Tasks, func(x life.Task) bool { return strings.Contains(x.Text, "make it easy") })
		for _, g := range r.Lives[0].Groups {
			eased = eased || slices.ContainsFunc(g.Tasks, func(x life.Task) bool { return strings.Contains(x.Text, "make it easy") })
		}
		if eased == c.urgent {
			t.Errorf("%s: made easy for it: %t", c.name, eased)
		}
	}
}
