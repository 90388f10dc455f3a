package life

import (
	"vivary/plan"
	"vivary/schema"
)

// Lines sorts the lines of a collection's log by the enclosure that they are
// about. A move stands under both enclosures, and where all of a group moved, what
// is known of their mating and their brood goes with them.
func Lines(c *plan.Collection) map[string][]plan.Event {
	lines := map[string][]plan.Event{}
	put := func(name string, e plan.Event) { lines[name] = append(lines[name], e) }
	type group struct{ enclosure, name string }
	breeding := map[group][]plan.Event{}
	for _, e := range c.Log {
		put(e.Enclosure.V, e)
		at := group{e.Enclosure.V, e.Group.V}
		switch e.Word {
		case schema.WordMated, schema.WordGravid, schema.WordFirstMoult:
			breeding[at] = append(breeding[at], e)
		case schema.WordBorn:
			breeding[at] = []plan.Event{e}
		case schema.WordSeparated:
			delete(breeding, at)
		case schema.WordMoved:
			if len(e.Args) == 0 || e.Args[0].V == e.Enclosure.V {
				continue
			}
			to := c.Enclosure(e.Args[0].V)
			if to == nil {
				continue
			}
			put(to.Name.V, e)
			from := c.Enclosure(e.Enclosure.V).Group(e.Group.V)
			joined := joins(to, &e)
			if joined == "" || from == nil || e.Number.Set() && int(e.Number.V) < from.Count.V.Total() {
				continue
			}
			there := group{to.Name.V, joined}
			for _, b := range breeding[at] {
				b.Enclosure.V, b.Group.V = there.enclosure, there.name
				put(there.enclosure, b)
				breeding[there] = append(breeding[there], b)
			}
			delete(breeding, at)
		}
	}
	return lines
}

// joins names the animals that a move joins: those written after the enclosure,
// else the only ones there, else those of the same name. It is "" for none.
func joins(to *plan.Enclosure, e *plan.Event) string {
	name := e.Group.V
	switch {
	case len(e.Args) > 1:
		name = e.Args[1].V
	case len(to.Animals) == 1:
		return to.Animals[0].Name.V
	}
	if to.Group(name) == nil {
		return ""
	}
	return name
}
