package life

import (
	"slices"
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// Racks reads what the log says of the care of racks themselves: of what is done once for
// all in them. Nobody lives in a rack; what was measured in one has been said of each of
// its enclosures. The lives are in the order of the racks.
func Racks(c *plan.Collection, today civil.Date) (lives []*Enclosure, found []finding.Finding) {
	of := make(map[string]*reader, len(c.Racks))
	for _, k := range c.Racks {
		r := &reader{c: c, today: today, out: &Enclosure{Plan: k.Stop}, cares: map[string]bool{}}
		for _, kind := range schema.CareKinds {
			if kind.OfRack != "" {
				r.cares[kind.OfRack], r.cares[kind.Name] = true, true
			}
		}
		of[k.Name.V] = r
		lives = append(lives, r.out)
	}
	for i := range c.Log {
		e := &c.Log[i]
		r := of[e.Enclosure.V]
		if r == nil || e.Word != schema.WordDone && e.Word != schema.WordSkipped {
			continue
		}
		if e.Date <= today && len(e.Args) > 0 {
			if kind := schema.KindCalled(e.Args[0].V); kind != nil && kind.OfRack != "" {
				r.note(kind.OfRack, e)
				continue
			}
		}
		if name := boxCare(c.Rack(e.Enclosure.V), r, e); name != "" {
			found = append(found, finding.Finding{Rule: ruleCare, At: e.Args[0].At, Text: strconv.Quote(name) + " is not done once for all in rack " + e.Enclosure.V + ": in which of its enclosures it was is not said",
				Write: "a line for each where it was done: " + c.Rack(e.Enclosure.V).Enclosures[0].Name.V + " " + e.Word.Name + " " + name})
			continue
		}
		r.line(e)
		found, r.found.All = append(found, r.found.All...), nil
	}
	return lives, found
}

// boxCare is the care of which a line tells that is not done once for the rack, but in its
// enclosures; "" for none.
func boxCare(k *plan.Rack, r *reader, e *plan.Event) string {
	if len(e.Args) == 0 || len(k.Enclosures) == 0 || r.knows(e.Args[0].V) {
		return ""
	}
	name := e.Args[0].V
	if schema.KindCalled(name) != nil {
		return name
	}
	for _, x := range k.Enclosures {
		if slices.ContainsFunc(x.Care, func(c *plan.Care) bool { return c.Name.V == name }) {
			return name
		}
		if x.Sheet != nil && slices.ContainsFunc(x.Sheet.Care, func(c *plan.Care) bool { return c.Name.V == name }) {
			return name
		}
	}
	return ""
}
