package margin

import (
	"strings"
	"testing"

	"vivary/compile"
	"vivary/internal/planned"
	"vivary/plan"
)

// hinted are the hints of a plan by the line behind which they stand.
func hinted(t *testing.T, text, log string) map[string]string {
	t.Helper()
	c, found := planned.Files(t, planned.With(text, log))
	r := compile.Compile(c, found, monday)
	id := c.Files.Files()[0]
	out := map[string]string{}
	for _, n := range Hints(r, id, whole(r, id)) {
		line, _, _ := c.Files.Line(n.At)
		out[strings.TrimSpace(line)] = n.Text
	}
	return out
}

const boxed = `collection "c" {
  time_zone = "UTC"
  units     = "US"
}
room "a" { temperature = "70 to 77 F" }
enclosure "b" {
  species = "pandinus-imperator"
  room    = "a"
  housing {
    kind   = "glass"
    inside = "76 x 46 x 41 cm"
    depth  = "6 in"
    lid    = "solid, latched"
  }
  animals "one" {
    count = 1
    stage = "adult"
  }
  climate {
    humidity = "75 to 85 %"
    heater "mat" {
      power      = "28 W"
      place      = "side"
      thermostat = "86 F"
    }
  }
  care "mist" { every = "day" }
  care "spot-clean" { on = ["tue", "sat"] }
  care "count" { on = ["1 apr"] }
  care "dish" { 
    every = "5 days"
    until = "2026-11-01"
  }
  feeding "one" { every = "4 days" }
}
`

// What is typed in other units than its keeper reads is told in those, figures of the sheet
// too; what stands in the text already is not said again.
func TestHints(t *testing.T) {
	got := hinted(t, boxed, "2026-11-30 b done spot-clean\n")
	for line, want := range map[string]string{
		`species = "pandinus-imperator"`:            "spot 80 to 90 F, air 71.6 to 82.4 F, water every 2 days",
		`inside = "76 x 46 x 41 cm"`:                "30 x 18 x 16 in",
		`depth  = "6 in"`:                           "",
		`power      = "28 W"`:                       "needs ",
		`care "spot-clean" { on = ["tue", "sat"] }`: "tomorrow, Sat 5 Dec",
		`care "count" { on = ["1 apr"] }`:           "Thu 1 Apr",
		`care "mist" { every = "day" }`:             "",
		`every = "5 days"`:                          "not until ",
		`humidity = "75 to 85 %"`:                   "",
	} {
		if text := got[line]; want == "" && text != "" || !strings.Contains(text, want) {
			t.Errorf("%s: %q, not %q", line, text, want)
		}
	}
	if s := got[`species = "pandinus-imperator"`]; strings.Contains(s, "%") || strings.Contains(s, "feed") || !strings.Contains(s, "water") {
		t.Errorf("what the plan says is told as the sheet's: %q", s)
	}
}

// Of several enclosures of one block only what is true of all is said.
func TestHintsOfSeveral(t *testing.T) {
	const to = "  numbers = \"1 to 6\"\n  species"
	got := hinted(t, strings.Replace(boxed, "  species", to, 1), "")
	if s := got[`feeding "one" { every = "4 days" }`]; s != "" {
		t.Errorf("six have their days at once: %q", s)
	}
	if s := got[`care "spot-clean" { on = ["tue", "sat"] }`]; s != "tomorrow, Sat 5 Dec" {
		t.Errorf("all six are cleaned on the same days: %q", s)
	}
	if got[`power      = "28 W"`] == "" || got[`species = "pandinus-imperator"`] == "" {
		t.Errorf("%v", got)
	}
	apart := strings.Replace(strings.Replace(boxed, "  species", to, 1), "  care \"mist\"", "  number \"3\" { inside = \"30 x 30 x 30 cm\" }\n  care \"mist\"", 1)
	if s := hinted(t, apart, "")[`power      = "28 W"`]; s != "" {
		t.Errorf("one of them is smaller: %q", s)
	}
}

// The two days behind care are the first two that the roster has, whatever day it is.
func TestHintedDaysAreTheRosters(t *testing.T) {
	for n := range 30 {
		c, found := planned.Files(t, planned.With(boxed, ""))
		r := compile.Compile(c, found, monday.AddDate(0, 0, n))
		id := c.Files.Files()[0]
		for _, x := range Hints(r, id, whole(r, id)) {
			block := careAt(r.Plan, x)
			if block == nil {
				continue
			}
			for k := range r.Roster.Of[0] {
				if e := &r.Roster.Of[0][k]; e.Origin == block.At && e.Kind.OfMeal == 0 {
					first := e.Days.Next(r.Horizon.Today)
					want := "not until"
					if first >= 0 {
						want = dayOf(r, first)
					}
					if second := e.Days.Next(first + 1); !strings.Contains(x.Text, want) || first >= 0 && second >= 0 && !strings.Contains(x.Text, dayOf(r, second)) {
						t.Errorf("%s: %q on %s", e.Name, x.Text, r.Today)
					}
				}
			}
		}
	}
}

// careAt is the care block in which a hint about days stands, or nil.
func careAt(c *plan.Collection, n Note) *plan.Head {
	e := c.Enclosures[0]
	for _, x := range e.Care {
		if x.Whole.Start < n.At.Start && n.At.End < x.Whole.End {
			return &x.Head
		}
	}
	for _, x := range e.Feeding {
		if x.Whole.Start < n.At.Start && n.At.End < x.Whole.End {
			return &x.Head
		}
	}
	return nil
}

// Only what stands in the stretch that is looked at is told.
func TestHintsOfAStretch(t *testing.T) {
	r := compiled(t, "../../examples/quillmoor")
	for _, id := range r.Plan.Files.Files() {
		all := Hints(r, id, whole(r, id))
		for _, n := range all {
			if one := Hints(r, id, n.At); len(one) != 1 || one[0] != n {
				t.Errorf("%v alone: %v", n, one)
			}
		}
	}
}
