package margin

import (
	"fmt"
	"slices"
	"strconv"

	"vivary/compile/explain"
	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema/wording"
)

// round says who does a round, how long it takes on its longest day of what it may take, and
// when it is next where that is neither today nor tomorrow.
func (l *lenses) round(x *plan.Round) (parts []string) {
	switch {
	case x.Unread:
		return nil
	case !slices.ContainsFunc(l.r.Roster.Parts(x), func(p *plan.Round) bool { return len(l.r.Roster.In[p]) > 0 }):
		return []string{"nothing is done in it"}
	}
	if who := x.Keeper.Or(l.r.Roster.People.Only); who != "" {
		if x.Turns != nil {
			who = person(l.r, who) + " and others by the rota " + x.Turns.Name.V
		} else {
			who = person(l.r, who)
		}
		parts = append(parts, who)
	}
	if minutes := l.r.Minutes(x); x.Within.Set() && minutes != nil {
		at := l.r.Horizon.Today
		for i := at; i < l.r.Horizon.Days; i++ {
			if minutes[i] > minutes[at] {
				at = i
			}
		}
		parts = append(parts, fmt.Sprintf("about %d min on its longest day, %s, of %d", minutes[at], day(l.r, l.r.Horizon.Date(at)), int(x.Within.V.Value)*max(1, x.People.V)))
	}
	days := l.r.Horizon.New()
	for _, part := range l.r.Roster.Parts(x) {
		for _, e := range l.r.Roster.In[part] {
			days.Union(e.Days)
		}
	}
	if d := days.Next(l.r.Horizon.Today); d > l.r.Horizon.Today+1 {
		parts = append(parts, "next: "+day(l.r, l.r.Horizon.Date(d)))
	}
	return parts
}

// keeper says since when somebody is away of whom nobody knew it before, or when they are away
// next, and who does their care then.
func (l *lenses) keeper(k *plan.Keeper) []string {
	for i := range l.r.Plan.Sudden {
		if s := &l.r.Plan.Sudden[i]; s.Keeper == k.Name.V && s.From <= l.r.Today && (s.Back == 0 || s.Back > l.r.Today) {
			return []string{"away since " + day(l.r, s.From) + ", as the log says"}
		}
	}
	for _, a := range l.r.Plan.Aways {
		if a.Name.V == k.Name.V && a.To.V > l.r.Today && !a.Unread {
			return []string{"away: " + explain.Absence(l.r, a)}
		}
	}
	return nil
}

// away says how many days an absence is, on how many of them somebody comes in place, and
// what is left out for it.
func (l *lenses) away(a *plan.Away) []string {
	from, to := max(0, int(a.From.V-l.r.Horizon.From)), min(l.r.Horizon.Days, int(a.To.V-l.r.Horizon.From))
	if a.Unread || !a.From.Set() || !a.To.Set() || to <= from || a.To.V <= l.r.Today {
		return nil
	}
	nobody := 0
	for i := from; i < to; i++ {
		if _, there := l.r.Roster.People.Doer(a.Name.V, i); !there {
			nobody++
		}
	}
	parts := []string{wording.Days(to - from)}
	if a.Cover.Set() {
		parts = append(parts, person(l.r, a.Cover.V)+" comes on "+strconv.Itoa(to-from-nobody))
	}
	if nobody > 0 {
		parts = append(parts, "nobody on "+strconv.Itoa(nobody))
	}
	if n := l.waiting(a, from, to); n > 0 {
		parts = append(parts, wording.Count(n, "meal waits", "meals wait"))
	}
	return parts
}

// waiting counts the meals that are left out for an absence.
func (l *lenses) waiting(a *plan.Away, from, to int) (n int) {
	for e := range l.r.Roster.All() {
		if !e.Kind.Meal {
			continue
		}
		var out horizon.Days
		for k := range e.Causes {
			c := &e.Causes[k]
			if c.Away == a && slices.Contains([]roster.Why{roster.Waits, roster.Nobody, roster.LeftIn}, c.Why) {
				if out == nil {
					out = l.r.Horizon.New()
				}
				out.Union(c.Days)
			}
		}
		if out != nil {
			out.Subtract(e.Days)
			n += out.CountFrom(from) - out.CountFrom(to)
		}
	}
	return n
}
