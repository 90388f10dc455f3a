package main

import (
	"fmt"
	"strings"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/prove"
	"vivary/compile/schedule"
	"vivary/schema/civil"
)

// whyOn says why a care is, or is not, on a day.
func whyOn(r *compile.Result, s *schedule.Series, d civil.Date) string {
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

// proofLine prints one row of the proof.
func proofLine(w *world, r *compile.Result, p *prove.Proof) {
	who := p.Life.Plan.Name.V
	if p.Group != nil {
		who += " " + p.Group.Animals.Name.V
	}
	state := "met"
	if !p.Met() {
		state = "BROKEN"
	}
	by := "nothing"
	if len(p.By) > 0 {
		var names []string
		for _, s := range p.By {
			names = append(names, s.Name)
		}
		by = strings.Join(names, ", ")
	}
	away := ""
	if p.Longest > p.Allowed && p.Met() {
		away = fmt.Sprintf(" (%d while nobody is there)", p.Unattended)
	}
	fmt.Fprintf(w.out, "  %-12s %-22s %-6s longest %2d of %2d days%s, on %d days, by %s\n", p.Name.Name, who, state, p.Longest, p.Allowed, away, p.Times, by)
}
