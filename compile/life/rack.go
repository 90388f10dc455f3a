package life

import (
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// Racks reads what the log says of the care of racks themselves: of the reading of their
// thermometers. Nobody lives in a rack; what was measured in one has been said of each of
// its enclosures. The lives are in the order of the racks.
func Racks(c *plan.Collection, today civil.Date) (lives []*Enclosure, found []finding.Finding) {
	of := make(map[string]*reader, len(c.Racks))
	for _, k := range c.Racks {
		r := &reader{c: c, today: today, out: &Enclosure{Plan: k.Stop}, cares: map[string]bool{schema.RackReading: true, schema.KindHeat.Name: true}}
		of[k.Name.V] = r
		lives = append(lives, r.out)
	}
	for i := range c.Log {
		e := &c.Log[i]
		r := of[e.Enclosure.V]
		if r == nil || e.Word != schema.WordDone && e.Word != schema.WordSkipped {
			continue
		}
		if e.Date <= today && len(e.Args) > 0 && e.Args[0].V == schema.KindHeat.Name {
			r.note(schema.RackReading, e)
			continue
		}
		r.line(e)
		found, r.found.All = append(found, r.found.All...), nil
	}
	return lives, found
}
