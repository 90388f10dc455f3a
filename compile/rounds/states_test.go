package rounds_test

import (
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/internal/planned"
	"vivary/schema"
	"vivary/schema/civil"
)

// inState is a round of the day year begins with, at two boxes of which the first has
// two groups, that are in the states of a test.
func inState(t *testing.T, change func(*life.Enclosure)) (*compile.Result, rounds.Sheet) {
	t.Helper()
	const box = `
  species = "pandinus-imperator"
  housing {
    kind   = "glass"
    inside = "60 x 40 x 40 cm"
    lid    = "solid, latched"
  }
  care "look" {
    every = "day"
  }
  care "water" {
    every = "day"
  }
  care "mist" {
    task  = "Three strokes of the spray."
    every = "day"
  }
  animals "adults" {
    count = 3
    stage = "adult"
  }
  feeding "adults" {
    every      = "day"
    per_animal = 2
    prey       = "cricket adult"
  }
`
	r := compiled(t, planned.With("collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\nround \"evening\" {\n  at = \"19:30\"\n}\nenclosure \"fern\" {\n  title = \"Fern\""+box+
		"  animals \"young\" {\n    count = 2\n    stage = \"juvenile\"\n  }\n  feeding \"young\" {\n    off     = true\n    because = \"fixture\"\n  }\n}\nenclosure \"oak\" {\n  title = \"Oak\""+box+"}\n", ""))
	change(r.Lives[0])
	s, _ := roster.Share(r.Plan, r.Horizon, nil)
	sheets := make([]roster.Sheet, len(r.Lives))
	for i, l := range r.Lives {
		sheets[i] = s.Enclosure(l)
	}
	r.Roster = roster.Make(s, r.Lives, sheets, nil)
	round := r.Roster.Rounds[0]
	return r, rounds.New(r.Roster, round, picks(r, round)).On(r.Horizon.Today)
}

// while is a hold over some days round today.
func while(s *schema.State, why, end string, days civil.Date) life.Hold {
	return life.Hold{From: year.From - 3, Until: year.From + days, State: s, Why: why, End: end}
}

// TestStatesAreSaid: what may be done is said once for a group, the strictest state
// first and what it includes not beside it; what the heading of the last part says, and
// what the mother's line says of the young on her, is not said at all.
func TestStatesAreSaid(t *testing.T) {
	strict := &schema.State{Name: "strict", Is: "strict", Rule: "lift nothing"}
	for r := range strict.May {
		strict.May[r].Manner = schema.Hatch
	}
	mild := &schema.State{Name: "mild", Is: "mild", Rule: "look first"}
	mild.May[schema.RowDish] = schema.May{Manner: schema.Hatch}
	other := &schema.State{Name: "other", Is: "other", Rule: "do not dig"}
	other.May[schema.RowDeep].Manner = schema.Held
	word := &schema.State{Name: "word", Is: "under treatment", Rule: "as the veterinarian says"}
	season := &schema.State{Name: "rest", Is: "rest"}
	season.May[schema.RowKilled].Manner = schema.Held
	for _, c := range []struct {
		title  string
		adults []life.Hold
		want   []string
	}{
		{"one", []life.Hold{while(mild, "seen fat", "until Sat", 9)}, []string{"Fern (adults): seen fat: look first (until Sat)"}},
		{"one that includes another", []life.Hold{while(mild, "seen fat", "until Sat", 9), while(strict, "moulted", "until Sun", 9)}, []string{"Fern (adults): moulted: lift nothing (until Sun)"}},
		{"two, of one cause", []life.Hold{while(other, "moulted", "until Sat", 9), while(strict, "moulted", "until Sun", 9)}, []string{"Fern (adults): moulted: lift nothing (until Sun); do not dig (until Sat)"}},
		{"two of a kind", []life.Hold{while(mild, "first", "until Sat", 5), while(mild, "second", "until Sun", 9)}, []string{"Fern (adults): second: look first (until Sun)"}},
		{"one without a hold", []life.Hold{while(word, "", "", 9), while(strict, "moulted", "until Sun", 9)}, []string{"Fern (adults): moulted: lift nothing (until Sun); under treatment: as the veterinarian says"}},
		{"a season", []life.Hold{while(season, "rest", "until March", 9)}, []string{"Fern (adults): rest: no food (until March)"}},
		{"apart", []life.Hold{while(schema.StateQuarantine, "arrived", "until March", 9)}, nil},
		{"over", []life.Hold{while(mild, "seen fat", "until Sat", 0)}, nil},
	} {
		_, s := inState(t, func(l *life.Enclosure) {
			l.Groups[0].Holds = c.adults
			l.Groups[1].Mother, l.Groups[1].Holds = l.Groups[0], []life.Hold{while(schema.StateNewborn, "born", "", 9)}
		})
		if !slices.Equal(s.Held, c.want) {
			t.Errorf("%s: %q\nwant %q", c.title, s.Held, c.want)
		}
	}
}

// TestMannerIsSaid: what may be done only so and so says it behind the task, also behind
// a keeper's own words, but for what the line of the state says already; and one small
// item is one.
func TestMannerIsSaid(t *testing.T) {
	state := &schema.State{Name: "brood", Is: "young on her", Rule: "lift nothing"}
	state.May[schema.RowLook] = schema.May{Manner: schema.Outside, Words: "a display outside"}
	state.May[schema.RowWater] = schema.May{Manner: schema.Hatch}
	state.May[schema.RowMist] = schema.May{Manner: schema.Hatch, Words: "far end only"}
	state.May[schema.RowLive] = schema.May{Manner: schema.Held}
	state.May[schema.RowKilled] = schema.May{Manner: schema.Hatch, Words: "one small item at her door"}
	_, s := inState(t, func(l *life.Enclosure) {
		l.Groups[0].Holds = []life.Hold{while(state, "young since Monday", "until Sat", 9)}
	})
	got := strings.Join(s.Lines, "\n")
	for _, want := range []string{
		"Fern (adults): young since Monday: lift nothing (until Sat)",
		"lid shut? animals seen or hidden (a display outside)",
		"fresh water; take out",
		"three strokes of the spray. (far end only)",
		"feed 1 killed adult cricket each (adults, 3 in all, for 3 animals, one small item at her door)",
		"feed 2 adult crickets each (6 in all, for 3 animals)",
	} {
		if !strings.Contains(strings.ToLower(got), strings.ToLower(want)) {
			t.Errorf("no %q in\n%s", want, got)
		}
	}
}

// TestNoTaskAgainstItsLine: whatever a state holds stands in no round beside the line
// that says so.
func TestNoTaskAgainstItsLine(t *testing.T) {
	for _, state := range schema.States {
		_, s := inState(t, func(l *life.Enclosure) { l.Groups[0].Holds = []life.Hold{while(state, "seen", "until Sat", 9)} })
		for _, d := range s.Due {
			for _, stop := range d.Stops {
				row := d.Kind.Row
				if stop.Item.Prey.Killed {
					row = schema.RowKilled
				}
				if stop.Place.Name == "fern" && state.May[row].Manner == schema.Held && !d.Kind.Water {
					t.Errorf("%s: %s, of %s", state.Name, d.Text, s.Held)
				}
			}
		}
	}
}
