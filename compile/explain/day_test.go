package explain

import (
	"strings"
	"testing"

	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/schema"
)

// TestStateIsExplained: why says how a care is done while animals are in a state, on
// whose word, and what makes a day of it stay out.
func TestStateIsExplained(t *testing.T) {
	r := quillmoor(t)
	state := &schema.State{Name: "made-up", Is: "made up", Rule: "lift nothing"}
	state.May[schema.RowMist] = schema.May{Manner: schema.Hatch, Words: "far end only", Source: "K1"}
	state.May[schema.RowWater] = schema.May{Manner: schema.Hatch}
	state.May[schema.RowLive] = schema.May{Manner: schema.Held}
	state.May[schema.RowKilled] = schema.May{Every: 7, From: 3}
	at := -1
	for i, l := range r.Lives {
		if l.Plan.Name.V == "burrow-a" {
			at = i
			l.Groups[0].Holds = []life.Hold{{From: r.Today, Until: r.Today + 60, State: state, Why: "seen on Monday", End: "until spring"}}
		}
	}
	s, _ := roster.Share(r.Plan, r.Horizon, nil)
	sheets := make([]roster.Sheet, len(r.Lives))
	for i, l := range r.Lives {
		sheets[i] = s.Enclosure(l)
	}
	r.Roster = roster.Make(s, r.Lives, sheets, nil)
	said := map[string]bool{}
	for k := range r.Roster.Of[at] {
		e := &r.Roster.Of[at][k]
		for d := r.Today; d < r.Today+60; d++ {
			for _, line := range why(r, e, d) {
				said[line] = true
			}
		}
	}
	for _, want := range []string{
		"how: through the hatch, far end only: seen on Monday; until spring; state made-up, source K1",
		"how: through the hatch, lift nothing: seen on Monday; until spring; state made-up, common practice",
		"prey killed first: seen on Monday; until spring",
		"no: at most once in 7 days: seen on Monday; until spring",
	} {
		if !said[want] {
			all := ""
			for line := range said {
				all += line + "\n"
			}
			t.Errorf("nothing says %q:\n%s", want, all)
		}
	}
	if lines := strings.Join(holds(r, at, r.Lives[at].Groups[0].Holds), "\n"); !strings.HasSuffix(lines, "(seen on Monday; until spring): lift nothing") {
		t.Errorf("the enclosure says %s", lines)
	}
}
