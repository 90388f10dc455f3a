package food

import (
	"vivary/compile/climate"
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
)

func isMeal(s *roster.Entry, g *life.Group) bool {
	return s.Group == g && s.Kind != nil && s.Kind.Meal && s.Meal != nil && s.Once == nil && len(s.Menu) > 0
}

// shortest is over how many days a rate can be told.
const shortest = 28

// Rate is how many meals a week a series of meals has, those that are held included; 0
// where it is for a time too short to tell.
func Rate(h horizon.Horizon, m *roster.Entry) float64 {
	from, until, t := h.Today, h.Days, m.Timing
	if t.From.Set() {
		from = max(from, int(t.From.V-h.From))
	}
	if t.Until.Set() {
		until = min(until, int(t.Until.V-h.From)+1)
	}
	if until-from < shortest {
		return 0
	}
	if n := turn(t); n < until-from {
		until -= (until - from) % n // whole turns, or the rate would be another one each day
	}
	count := func(d horizon.Days) int { return d.CountFrom(h.Today) - d.CountFrom(until) }
	days := count(m.Days)
	if held := m.Out(roster.Held, roster.Halved); held != nil {
		days += count(held)
	}
	return 7 * float64(days) / float64(until-from)
}

// turn is after how many days a timing begins anew: a year for what goes by months.
func turn(t *plan.Timing) int {
	const week, year = 7, 365
	switch every := t.Every.V; {
	case t.Every.Set() && every.Unit == quantity.Day:
		return max(1, every.N)
	case t.Every.Set() && every.Unit == quantity.Week:
		return week * max(1, every.N)
	case t.AfterLast.Set():
		return max(1, int(t.AfterLast.V.Value/(24*60)))
	case len(t.On) > 0 && t.On[0].V.Kind == plan.EachWeekday:
		return week
	}
	return year
}

// offered returns how many items a week one animal gets of a series, and the energy of
// one, in kJ, as the mean of the menu.
func offered(s *roster.Roster, m *roster.Entry) (items float64, each climate.Band[float64], ok bool) {
	rate := Rate(s.Horizon, m)
	if rate == 0 {
		return 0, each, true // a menu for a time, not the usual one
	}
	n := float64(len(m.Menu))
	for k := range m.Menu {
		e, ok := Energy(s.Plan.Library, m.Menu[k].Prey)
		if !ok {
			return 0, each, false
		}
		each.Low += e.Low / n
		each.Likely += e.Likely / n
		each.High += e.High / n
	}
	return rate * m.Menu[0].Items, each, true
}

// Energy returns the energy in one item of prey, in kJ: its mass times the energy of
// a gram, that of its size where the sheet has one (a nymph is leaner than the grown
// insect). It is false where either is not known.
func Energy(l *plan.Library, p plan.Prey) (climate.Band[float64], bool) {
	f := l.Feeder(p.Feeder)
	if f == nil {
		return climate.Band[float64]{}, false
	}
	size, gram := f.Size(p.Size), f.Figure(schema.FeederEnergy)
	if size == nil || !size.Mass.Set() || gram == nil && !size.Energy.Set() {
		return climate.Band[float64]{}, false
	}
	m, e := size.Mass.V, size.Energy.V
	if !size.Energy.Set() {
		e = gram.Range
	}
	return climate.Band[float64]{Low: m.Low * e.Low, Likely: (m.Low + m.High) / 2 * (e.Low + e.High) / 2, High: m.High * e.High}, true
}
