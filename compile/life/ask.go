package life

import (
	"slices"
	"strings"

	"vivary/plan/finding"
)

// whereAsk begins the name of the question where animals are that were taken out.
const whereAsk = "where/"

// Astray reports whether the group was taken out of the enclosure and nobody has said to
// where: it is kept in mind there, and takes no room.
func (g *Group) Astray() bool {
	return slices.ContainsFunc(g.Asks, func(a Ask) bool { return strings.HasPrefix(a.Name, whereAsk) })
}

// ask makes findings of the questions that are open today.
func (r *reader) ask(asks []Ask) {
	for i := range asks {
		a := &asks[i]
		if a.Said == "" || a.From > r.today || a.Until != 0 && a.Until <= r.today {
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
