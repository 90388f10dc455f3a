package plan_test

import (
	"strings"
	"testing"

	"vivary/internal/planned"
	"vivary/plan/finding"
)

// TestBlankTitle: a title of nothing but blanks is a caution that says what to write, and
// the name stands in its place: no entry of a calendar has a blank line for its title.
func TestBlankTitle(t *testing.T) {
	for _, blank := range []string{"", "  ", `\t \n`, "\u00a0\u2003"} {
		c, found := planned.Sound(t, map[string]string{"a.care.hcl": `
collection "c" {
  time_zone = "Europe/London"
  title     = "` + blank + `"
}
round "evening" {
  at    = "19:30"
  title = "` + blank + `"
}
enclosure "tub-7" {
  title   = "` + blank + `"
  species = "pandinus-imperator"
  housing {
    inside = "60 x 40 x 40 cm"
    lid    = "solid, latched"
  }
  animals "only" {
    count = 1
    stage = "adult"
  }
  care "leaves" {
    kind  = "other"
    task  = "` + blank + `"
    every = "day"
  }
}
`})
		n := 0
		for _, f := range found {
			if f.Rule.ID == "value" && strings.Contains(f.Text, "is blank") {
				n++
				if f.Severity != finding.Caution || !strings.Contains(f.Write, "leave it out") {
					t.Errorf("%q: %s (%s)", blank, f.Text, f.Write)
				}
			}
		}
		if n != 4 {
			t.Errorf("%q: %d findings, want 4", blank, n)
		}
		for _, shown := range []string{c.Title(), c.Rounds[0].Shown(), c.Enclosures[0].Shown(), c.Enclosures[0].Care[0].Task.Or("leaves")} {
			if strings.TrimSpace(shown) == "" || strings.HasPrefix(shown, " ") {
				t.Errorf("%q is shown as %q", blank, shown)
			}
		}
	}
}
