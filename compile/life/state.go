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

// yearSaid is how many days from today on a day is said with its year.
const yearSaid = 300

// when is a day in the few words of an entry, with its year where it is not this one.
func (r *reader) when(on civil.Date) string {
	if d := r.today - on; d > yearSaid || d < -yearSaid {
		y, _, _ := on.YMD()
		return on.Brief() + " " + strconv.Itoa(y)
	}
	return on.Brief()
}
