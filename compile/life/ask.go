package life

import (
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// past reports whether another question stands in the place of this one on a day.
func (a *Ask) past(on civil.Date) bool { return a.Until != 0 && on >= a.Until }

// ask makes findings of the questions that are open today.
func (r *reader) ask(asks []Ask) {
	for i := range asks {
		a := &asks[i]
		if a.Said == "" || a.From > r.today && !a.Undated || a.past(r.today) {
			continue
		}
		f := finding.Finding{Rule: a.Rule, At: a.At, Text: a.Said, Limit: a.Limit, Source: r.c.Library.Cite(a.Cited), Write: a.Write}
		switch {
		case a.Rule != nil:
		case a.Urgent:
			f.Rule = ruleNow
		default:
			f.Rule = ruleOpen
		}
		r.found.Add(f)
	}
}
