package check

import (
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/quantity"
)

// What a room and a heater of an animal house can have at the most. Judgement, far beyond
// what there is.
const (
	coldestRoom, hottestRoom  = -60.0, 70.0  // °C
	weakestHeater, mostHeater = 0.2, 3000.0  // W
	smallestSide, longestSide = 10.0, 3000.0 // mm
)

// figureImpossible finds figures that are mostly a slip of a unit or of a zero. What is
// reckoned with one is no number.
func figureImpossible(r *Rule, c *Collection) {
	add := func(at source.Place, in finding.Box, text, limit string) {
		c.Add(finding.Finding{Rule: &r.Rule, At: at, In: in, Text: text, Limit: limit, Source: r.Source, Write: "the figure as it is, with its unit"})
	}
	for _, room := range c.Plan.Rooms {
		if t := room.Temperature; t.Set() && (t.V.Low < coldestRoom || t.V.High > hottestRoom) {
			add(t.At, finding.Box{}, "room "+room.Name.V+" is said to be at "+t.V.String(), quantity.FormatRange(coldestRoom, hottestRoom, t.V.Unit))
		}
	}
	seen := map[*plan.Heater]bool{} // one of a template is in many
	for _, e := range c.Plan.Enclosures {
		if e.Climate == nil {
			continue
		}
		for _, h := range e.Climate.Heaters {
			p, z, x, on := h.Power, h.Size, h.Covers, h.Hours
			power := p.Set() && (p.V.Value < weakestHeater || p.V.Value > mostHeater)
			size := z.Set() && (min(z.V.Length, z.V.Width) < smallestSide || max(z.V.Length, z.V.Width) > longestSide)
			covers := x.Set() && (x.V.Value <= 0 || x.V.Value > 100)
			hours := on.Set() && (on.V.Value <= 0 || on.V.Value > 24*60)
			if !power && !size && !covers && !hours || seen[h] {
				continue
			}
			seen[h] = true
			name := "the " + h.Name.V
			if power {
				add(p.At, e.Box(), name+" is said to have "+p.V.String(), quantity.FormatRange(weakestHeater, mostHeater, p.V.Unit))
			}
			if size {
				add(z.At, e.Box(), name+" is said to be "+z.V.String(), quantity.FormatRange(smallestSide, longestSide, z.V.Unit)+" for a side")
			}
			if covers {
				add(x.At, e.Box(), name+" is said to cover "+x.V.String()+" of its wall or floor", "more than nothing, and all of it at the most")
			}
			if hours {
				add(on.At, e.Box(), name+" is said to be on for "+on.V.String()+" a day", "more than nothing, and 24 h at the most")
			}
		}
	}
}
