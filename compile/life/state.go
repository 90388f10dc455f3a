package life

import (
	"strconv"

	"vivary/schema"
	"vivary/schema/civil"
)

// state is a state as the sheet of the animals has it.
func (r *reader) state(t *track, s *schema.State) *schema.State { return t.Sheet.State(s) }

// Part reports whether a hold on a day is of some of the group only.
func (g *Group) Part(on civil.Date) bool {
	for i := range g.Holds {
		if h := &g.Holds[i]; h.Part && h.From <= on && on < h.Until {
			return true
		}
	}
	return false
}

// dated is a day with its year, in the few words of an entry. Whatever the log says a day
// of is told with its year here; a round of a day near it leaves the year out.
func dated(on civil.Date) string {
	y, _, _ := on.YMD()
	return on.Brief() + " " + strconv.Itoa(y)
}
