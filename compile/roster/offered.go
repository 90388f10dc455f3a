package roster

import (
	"slices"

	"vivary/compile/life"
	"vivary/compile/recur"
	"vivary/schema/civil"
)

// The first meal after a moult, and others that the log brings, stand in place of
// the usual ones, in the rules of which nothing is known of them.

// fromOffered counts meals that run from the last one from those that stood in
// place of it too. What the rules have before such a meal is kept where it was, or
// will be, given within so many days before today: what is left of it is still to
// be taken out.
func (b *builder) fromOffered(g *life.Group, rules []recur.Rule, every, before int) []recur.Rule {
	for _, at := range g.Offered {
		var kept []recur.Rule
		_, until := rules[len(rules)-1].Bounds()
		for _, r := range rules {
			if r = r.Between(recur.MinDate, at-1); b.given(g, r, b.s.Horizon.From-civil.Date(before), at) {
				kept = append(kept, r)
			}
		}
		rules = append(kept, recur.EveryDays(every, at).Between(at+1, until))
	}
	return rules
}

// given reports whether a rule has a day from one until another on which the group
// may be fed.
func (b *builder) given(g *life.Group, r recur.Rule, from, until civil.Date) bool {
	held := func(d civil.Date) bool {
		in := func(h life.Hold) bool { return h.What&life.Meals != 0 && h.From <= d && d < h.Until }
		return slices.ContainsFunc(g.Holds, in) || slices.ContainsFunc(b.life.Holds, in)
	}
	for d, ok := r.Next(from); ok && d < until; d, ok = r.Next(d + 1) {
		if !held(d) {
			return true
		}
	}
	return false
}

// inPlace leaves out the usual meal on the day of one that stands in its place, and
// the next where it comes too soon: nothing is fed double.
func (b *builder) inPlace(s *Entry) {
	if !s.isMeal() {
		return
	}
	for _, at := range s.Group.Offered {
		i := b.attended(s.Keeper, int(at-b.s.Horizon.From))
		if i < -LookBack || i >= b.s.Horizon.Days {
			continue
		}
		if b.due(s, i) {
			b.pass(s, i)
		}
		b.tooSoon(s, i)
	}
}

// soonest is after how many days no meal is too soon, however rare they are (common
// practice, no source).
const soonest = 14

// tooSoon leaves out the meal after one on day i where less than half the usual time
// has gone by, unless the one after it would come too late.
func (b *builder) tooSoon(s *Entry, i int) {
	next, ok := b.next(s, i)
	if !ok {
		return
	}
	most, least := b.mealGaps(s)
	after, more := b.next(s, next)
	if more {
		least = max(least, min((after-next+1)/2, soonest))
	}
	if next-i < least && (!more || most == 0 || after-i <= most) {
		b.pass(s, next)
	}
}

// next returns the first day of a series after day i, which may lie before the horizon.
func (b *builder) next(s *Entry, i int) (int, bool) {
	for i++; i < 0; i++ {
		if b.due(s, i) {
			return i, true
		}
	}
	i = s.Days.Next(i)
	return i, i >= 0
}

// leftBehind adds looks for what is left of the meals that stand in place of others,
// and of those that were given on a visit and are not looked after before the next.
func (b *builder) leftBehind(s, meal *Entry) {
	add := func(i int) {
		if i += s.After; i < 0 {
			i = b.attended(s.Keeper, i)
		}
		if i >= 0 {
			b.put(s, i)
		}
	}
	for _, at := range s.Group.Offered {
		add(b.attended(s.Keeper, int(at-b.s.Horizon.From)))
	}
	for i, given := range meal.past {
		if given {
			add(i)
		}
	}
}

// attended returns the first day from i on when somebody does what keeper would do.
// Days before the horizon are known in absences that ended not long before it.
func (b *builder) attended(keeper string, i int) int {
	for _, all := range [2][]Absence{b.s.People.over, b.s.People.Absences} {
		for k := range all {
			if a := &all[k]; a.Away.Name.V == keeper && a.Before <= i && i < a.To {
				return a.present(i)
			}
		}
	}
	return i
}
