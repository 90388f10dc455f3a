package life

import (
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// Rack reads what the log says of the care of a rack itself: of the reading of its
// thermometer. Nobody lives in it; what was measured there has been said of each of its
// enclosures.
func Rack(c *plan.Collection, k *plan.Rack, today civil.Date) (*Enclosure, []finding.Finding) {
	r := &reader{c: c, today: today, out: &Enclosure{Plan: k.Stop}, cares: map[string]bool{schema.RackReading: true, schema.KindHeat.Name: true}}
	for i := range c.Log {
		e := &c.Log[i]
		if e.Enclosure.V != k.Name.V || e.Word != schema.WordDone && e.Word != schema.WordSkipped {
			continue
		}
		if e.Date <= today && len(e.Args) > 0 && e.Args[0].V == schema.KindHeat.Name {
			r.note(schema.RackReading, e)
			continue
		}
		r.line(e)
	}
	return r.out, r.found.All
}
