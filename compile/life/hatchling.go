package life

import (
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// together is for how many days after they hatched young may share a box where the sheet
// does not say. Slings and nymphs are parted when they begin to hunt each other, weeks
// after they are free (common practice, no source).
const together = 30

// Hatchling reports whether the group is a brood of the log that is so young that all of
// it may still be in one box. It is then no company, and takes no room to speak of.
func (g *Group) Hatchling(on civil.Date) bool {
	if g.Born == 0 || g.Sheet == nil {
		return false
	}
	if stage := g.Stage(on); stage != newborn && stage != "young" {
		return false
	}
	return on < after(g.Born, spanOf(g.Sheet.Figure(schema.FigureSeparateWithin, "young")).or(together).high)
}

// cameOut is young that came out of a sac or a clutch where nobody lived till then: in the
// cup to which the sac was taken.
func (r *reader) cameOut(t *track, e *plan.Event) {
	n, ok := r.howMany(e, 0, mostBorn)
	if !ok {
		return
	}
	b := &brood{mother: t, young: t, born: see(e), last: e.Date, number: r.likely(t, n, e), separated: see(e)}
	as := Stretch{Stage: newborn, Instar: 1}
	if !t.Bears() {
		as, b.first = Stretch{Stage: "young", Instar: 2}, b.born // what leaves the sac is free
	}
	t.enter(as, e.Date)
	t.of = b
	t.number(e.Date, r.size(b))
}
