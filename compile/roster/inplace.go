package roster

import (
	"slices"

	"vivary/compile/life"
	"vivary/compile/recur"
	"vivary/schema"
	"vivary/schema/civil"
)

// The first meal after a moult, and others that the log brings, stand in place of
// the usual ones, in the rules of which nothing is known of them.

// fromOffered counts meals that run from the last one from those that stood in
// place of it too. What the rules have before such a meal is kept where it was, or
// will be, given in the window: what is left of it is still to be taken out.
func (b *builder) fromOffered(g *life.Group, rules []recur.Rule, every int) []recur.Rule {
	for _, at := range g.Offered {
		var kept []recur.Rule
		_, until := rules[len(rules)-1].Bounds()
		for _, r := range rules {
			if r = r.Between(recur.MinDate, at-1); b.given(g, r, b.Horizon.Now()-horizonKept, at) {
				kept = append(kept, r)
			}
		}
		rules = append(kept, recur.EveryDays(every, at).Between(at+1, until))
	}
	return rules
}

// horizonKept is for how many days before today meals of an interval that began
// anew are still known: what is left of them is taken out by then.
const horizonKept = 7

// given reports whether a rule has a day from one until another on which the group
// may be fed.
func (b *builder) given(g *life.Group, r recur.Rule, from, until civil.Date) bool {
	held := func(d civil.Date) bool {
		in := func(h life.Hold) bool { return h.Takes(schema.KindFeed) && h.From <= d && d < h.Until }
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
func (b *builder) inPlace(e *Entry) {
	if !e.isMeal() {
		return
	}
	for _, at := range e.Group.Offered {
		i := b.attended(e, int(at-b.Horizon.From))
		if i < 0 || i >= b.Horizon.Days {
			continue
		}
		if e.Days.Has(i) {
			b.take(e, Cause{Why: InPlace, At: e.Origin}, i)
		}
		b.tooSoon(e, i)
	}
}

// soonest is after how many days no meal is too soon, however rare they are (common
// practice, no source).
const soonest = 14

// tooSoon leaves out the meal after one on day i where less than half the usual time
// has gone by, unless the one after it would come too late.
func (b *builder) tooSoon(e *Entry, i int) {
	next := e.Days.Next(i + 1)
	if next < 0 {
		return
	}
	most, least := b.mealGaps(e, i)
	after := e.Days.Next(next + 1)
	if after >= 0 {
		least = max(least, min((after-next+1)/2, soonest))
	}
	if next-i < least && (after < 0 || most == 0 || after-i <= most) {
		b.take(e, Cause{Why: TooSoon, At: e.Origin}, next)
	}
}

// attended returns the first day from i on when somebody does what keeper would do.
func (b *builder) attended(e *Entry, i int) int {
	if d := b.People.Of(e.Keeper); d != nil && i >= 0 && i < b.Horizon.Days {
		return b.unless(d, e.Shut).present(i)
	}
	return i
}
