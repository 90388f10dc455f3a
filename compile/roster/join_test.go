package roster_test

import (
	"slices"
	"testing"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/internal/planned"
	"vivary/internal/randomplan"
	"vivary/plan"
)

// TestJoined: what is put together from the parts of each enclosure is what going over all
// entries gives, in walking order, with what is done for a rack before its first enclosure.
func TestJoined(t *testing.T) {
	racked, unshown, several := 0, 0, 0
	for seed := range uint64(80) {
		p := randomplan.New(seed)
		if seed%2 == 0 {
			p.Rack(true, 4)
		}
		c, found := planned.Files(t, p.Files(p.Today))
		if c.Location == nil {
			continue
		}
		r := compile.Compile(c, found, p.Today.At(12*60, c.Location)).Roster
		if r == nil {
			continue
		}
		in := map[*plan.Round][]*roster.Entry{}
		at := map[*roster.Entry]int{}
		var hidden []*roster.Entry
		for e := range r.All() {
			in[e.Round] = append(in[e.Round], e)
			at[e] = len(at)
			if e.Unshown(0) >= 0 {
				hidden = append(hidden, e)
			}
			if e.Rack != nil {
				racked++
			}
		}
		for _, x := range r.Rounds {
			if !slices.Equal(in[x], r.In[x]) {
				t.Errorf("seed %d: in round %s are %d entries, not %d, or in another order", seed, x.Name.V, len(r.In[x]), len(in[x]))
			}
		}
		if !slices.Equal(hidden, r.Unshown) {
			t.Errorf("seed %d: %d entries are unshown, not %d, or in another order", seed, len(r.Unshown), len(hidden))
		}
		for i := range r.Calendars {
			k := &r.Calendars[i]
			if !slices.IsSortedFunc(k.Picks(), func(a, b roster.Pick) int { return at[a.Entry] - at[b.Entry] }) || k.Empty != (len(k.Picks()) == 0) {
				t.Errorf("seed %d: calendar %s is not in walking order, or empty is not what it is", seed, k.Plan.Name.V)
			}
		}
		unshown += len(hidden)
		several += len(r.Calendars) - 1
	}
	if racked == 0 || unshown == 0 || several == 0 {
		t.Errorf("%d entries are of racks, %d are unshown, and there are %d more calendars", racked, unshown, several)
	}
}
