package compile_test

import (
	"fmt"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/internal/randomplan"
)

// dueToday are the entries of today that a line of the log can say to be done.
func dueToday(r *compile.Result) (all []*roster.Entry) {
	for e := range r.Roster.All() {
		if e.Days.Has(r.Horizon.Today) && e.Ask == nil && e.Once == nil {
			all = append(all, e)
		}
	}
	return all
}

// TestWhatIsNotedIsTicked: of all that is due today in whatever plan, nothing is ticked
// that no line of today speaks of; and once a line says of each that it was done, none is
// left in a list, and each stands once among what was done.
func TestWhatIsNotedIsTicked(t *testing.T) {
	n := 0
	for seed := range uint64(80) {
		p := randomplan.New(seed)
		files := p.Files(p.Today - 1)
		before := after(t, files, p.Today, nil)
		if before.Roster == nil || before.Refused() {
			continue
		}
		due, ticks := dueToday(before), before.Roster.Ticks()
		var log strings.Builder
		for _, e := range due {
			if ticks.Has(e, before.Horizon.Today) {
				t.Errorf("seed %d: %s is ticked, and no line says so", seed, e.ID)
			}
			fmt.Fprintf(&log, "%s %s %s %s\n", p.Today, e.At(), e.Plan().Name.V, e.Said())
		}
		files["all.care.log"] = log.String()
		r := after(t, files, p.Today, nil)
		if r.Refused() {
			t.Fatalf("seed %d: what was done refuses: %v", seed, r.Findings)
		}
		ticks = r.Roster.Ticks()
		has := func(e *roster.Entry) bool { return ticks.Has(e, r.Horizon.Today) }
		for _, round := range r.Roster.Rounds {
			picks := r.Roster.Picks(round, "")
			if len(picks) == 0 {
				continue
			}
			day := rounds.Ticked(r.Roster, round, picks, has).On(r.Horizon.Today)
			for _, d := range day.Due {
				for _, s := range d.Stops {
					if s.Item.Passing || strings.Contains(d.Text, "log") {
						continue // a question, or what follows from what was logged
					}
					t.Errorf("seed %d: %s at %s is left of %s\n%s", seed, d.Text, s.Place.Name, round.Name.V, log.String())
				}
			}
			for _, x := range day.Ticks {
				n += len(x.Stops)
			}
		}
		if t.Failed() {
			break
		}
	}
	if n < 200 {
		t.Errorf("only %d were ticked", n)
	}
}
