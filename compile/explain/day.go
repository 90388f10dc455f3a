package explain

import (
	"strings"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/schedule"
	"vivary/schema/civil"
)

// why says why a care is, or is not, on a day.
func why(r *compile.Result, s *schedule.Series, d civil.Date) string {
	i, on := r.Horizon.Index(d)
	if !on {
		return "not on the horizon, which runs from " + r.Horizon.From.Words() + " to " + r.Horizon.Last().Words()
	}
	planned := false
	for _, rule := range s.Rules {
		planned = planned || rule.Contains(d)
	}
	switch {
	case s.Held != nil && s.Held.Has(i):
		var reasons []string
		s.EachHold(func(h *life.Hold) {
			if h.From <= d && d < h.Until {
				reasons = append(reasons, h.Why+"; "+h.End)
			}
		})
		return "held: " + strings.Join(reasons, ", and ")
	case s.Left != nil && s.Left.Has(i):
		return s.Keeper + " is away: it is done on a visit, before leaving or on the return, or left out where the animals can wait"
	case s.Days.Has(i) && planned:
		return "yes: " + s.Words()
	case s.Days.Has(i):
		return "yes: moved here from a day without a round, or caught up after an absence"
	case planned:
		return "no: there is no " + s.Round.Shown() + " on that day; it is moved to the nearest that its window allows"
	}
	if next := s.Days.Next(i); next >= 0 {
		return "no: " + s.Words() + "; next " + r.Horizon.Date(next).Words()
	}
	return "no: it does not come up again"
}
