package feeds

import (
	"strconv"
	"strings"

	"vivary/compile/horizon"
	"vivary/compile/ical"
	"vivary/compile/life"
	"vivary/compile/recur"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/schema/civil"
)

// long is from how many days on a state is a series of its own in a calendar by care, and
// many from how many times on what is done in a trip of somebody's, or because of the log:
// each day as an entry would be thousands in a house with broods and cool rests (common
// practice, no source).
const long, many = 15, 4

// stretch is days of a care that are done alike, in a way that is not that of every day.
type stretch struct {
	name string // stable: part of the entry's identity
	days horizon.Days
}

// otherwise adds the days of a care that are not as ever: as a series those that go on
// for long, the others as an entry each.
func (s *selection) otherwise(feed *ical.Feed, base ical.Entry, x *roster.Entry, days horizon.Days, parts []recur.Rule, last *ical.Memory) {
	one := s.r.Horizon.New()
	var all []stretch
	for i := days.Next(s.r.Horizon.Today); i >= 0 && i < s.until(); i = days.Next(i + 1) {
		name := ""
		if planned(parts, s, i) {
			name = s.alike(x, parts, i)
		}
		if name == "" {
			one.Add(i)
			continue
		}
		k := 0
		for k < len(all) && all[k].name != name {
			k++
		}
		if k == len(all) {
			all = append(all, stretch{name, s.r.Horizon.New()})
		}
		all[k].days.Add(i)
	}
	for _, st := range all {
		first := st.days.Next(0)
		until := s.r.Horizon.Date(st.days.Last(s.r.Horizon.Days))
		var item *roster.Portion
		if len(x.Menu) == 1 {
			item = &x.Menu[0]
		}
		for k, rule := range parts {
			e := base
			e.UID = s.uid("care", x.ID.String(), st.name, part(k))
			e.Summary = s.words(x, first, item)
			s.mind(&e, x, x.Manner(first))
			if s.repeat(&e, rule.Between(recur.MinDate, until), st.days, nil, last) {
				feed.Entries = append(feed.Entries, e)
			}
		}
	}
	s.each(feed, base, x, one)
}

func planned(parts []recur.Rule, s *selection, i int) bool {
	for _, r := range parts {
		if r.Contains(s.r.Horizon.Date(i)) {
			return true
		}
	}
	return false
}

// alike names how a care is done on day i, where it is done so for long: in a state, or
// while somebody is away. It goes by how long these are in the plan and the log, not by
// how many days of them are to come, so that an entry keeps its form.
func (s *selection) alike(x *roster.Entry, parts []recur.Rule, i int) string {
	if fill := rounds.FillUps(x); fill != nil && fill.Has(i) {
		return "" // each says until when nobody comes
	}
	var name []string
	if !s.own(x) {
		r := s.r.Roster.AwayOn(x.Keeper, i)
		if r == nil || !often(parts, r.Begun, r.Ends) {
			return ""
		}
		name = append(name, "for "+x.Keeper+" from "+r.Begun.String())
	}
	if m := x.Manner(i); m != nil {
		if !lasts(m.Hold) || m.May.Every > 1 {
			return ""
		}
		name = append(name, stateOf(m.Hold), m.May.String())
	}
	if x.Killed != nil && x.Killed.Has(i) {
		switch c := x.KilledFor(i); {
		case c == nil || c.Away != nil && s.own(x) || c.Hold != nil && !lasts(c.Hold):
			return ""
		case c.Hold != nil:
			name = append(name, "killed "+stateOf(c.Hold))
		default:
			name = append(name, "killed "+strconv.Itoa(len(x.Menu)))
		}
	}
	return strings.Join(name, ", ")
}

// often reports whether rules come up many times from one day until another.
func often(parts []recur.Rule, from, until civil.Date) bool {
	n := 0
	for _, r := range parts {
		for d, ok := r.Next(from); ok && d < until && n < many; d, ok = r.Next(d + 1) {
			n++
		}
	}
	return n >= many
}

func stateOf(h *life.Hold) string { return h.State.Name + " from " + h.From.String() }

// lasts reports whether a state goes on for long.
func lasts(h *life.Hold) bool { return h.Open || h.Until-h.From >= long }
