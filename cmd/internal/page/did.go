package page

import (
	"slices"
	"strings"

	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// events are the lines of a log of one day, by enclosure.
type events map[string][]*plan.Event

func eventsOf(c *plan.Collection, on civil.Date) events {
	out := events{}
	for i := len(c.Log) - 1; i >= 0 && c.Log[i].Date >= on; i-- {
		if e := &c.Log[i]; e.Date == on && e.Enclosure.Set() {
			out[e.Enclosure.V] = append(out[e.Enclosure.V], e)
		}
	}
	return out
}

// by says when and by whom something was done at a stop: "19:42, Lead keeper"; "" where the
// line says neither.
func (x events) by(c *plan.Collection, kind *schema.CareKind, s *rounds.Stop, u quantity.Units) string {
	for _, e := range x[s.Place.Name] {
		if shows(e, kind, s) {
			return signed(c, e, u)
		}
	}
	return ""
}

// shows reports whether a line tells of what was done at a stop.
func shows(e *plan.Event, kind *schema.CareKind, s *rounds.Stop) bool {
	if e.Group.V != "" && s.Item.Animals != "" && e.Group.V != s.Item.Animals {
		return false
	}
	if e.Word == schema.WordDone && len(e.Args) > 0 {
		return e.Args[0].V == kind.Name || strings.HasSuffix(s.Item.Said, " "+e.Args[0].V)
	}
	return e.Word.Feeds && kind.Meal || slices.Contains(e.Word.Does, kind)
}

// signed is when and by whom a line was written.
func signed(c *plan.Collection, e *plan.Event, u quantity.Units) string {
	var parts []string
	if e.Clock.Set() {
		parts = append(parts, wording.Clock(e.Clock.V, u))
	}
	if e.By.Set() {
		name := e.By.V
		if k := c.Keeper(name); k != nil {
			name = k.Shown()
		}
		parts = append(parts, name)
	}
	return strings.Join(parts, ", ")
}
