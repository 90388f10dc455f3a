package measure

import (
	"vivary/compile/life"
	"vivary/plan"
)

// Held is a reading of the log, held against the limits of its place on its day.
type Held struct {
	*life.Reading
	Outside *Limit // the worst that it is outside of; nil for none
}

// HeldOf holds what the log says was measured in an enclosure against its limits. Of a reading
// that says no place only what harms is asked of a temperature, since the warm spot and the far
// end are not to have the same.
func HeldOf(c *plan.Collection, l *life.Enclosure) (all []Held) {
	limits := map[string][]*Limit{}
	for i := range l.Shown {
		x := &l.Shown[i]
		place := x.Where
		if place != Spot && place != Room {
			place = Air
		}
		if _, known := limits[place]; !known {
			limits[place] = LimitsOf(c, l.Plan, place)
		}
		all = append(all, Held{x, outside(limits[place], x)})
	}
	return all
}

// outside is the worst limit that a reading is outside of; limits stand with the worst first.
func outside(limits []*Limit, x *life.Reading) *Limit {
	for _, m := range limits {
		if m.Damp != x.Damp || m.Level != Harm && x.Where == "" && !x.Damp {
			continue
		}
		if !m.At(x.On, x.Where == "night").Contains(x.Value.Value) {
			return m
		}
	}
	return nil
}
