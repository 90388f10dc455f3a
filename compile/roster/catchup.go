package roster

import (
	"slices"

	"vivary/schema/civil"
)

// catchUp takes out what the log says was skipped, and brings it back, once: where
// nothing stands between the last day that was skipped and today, it is done on the
// first day there is, from today on. It comes back every day until the log says
// that it was done, or until its next day comes.
//
// A meal that is caught up takes the place of the next, where that comes too soon
// after it: nothing is fed double.
func (b *builder) catchUp(e *Entry) {
	last := b.skip(e)
	if last < 0 || e.Once != nil {
		return
	}
	if b.stoodSince(e, last) {
		return
	}
	at := b.firstThere(e, max(b.Horizon.Today, last+1))
	if at < 0 || !b.on(e, at) || b.forbidden(e, at) {
		return
	}
	c := Cause{Why: CaughtUp, At: e.Origin, Last: b.lastDone(e, last)}
	b.put(e, c, at)
	if e.isMeal() {
		b.give(e, at, leftoversAfter(e.Meal))
		b.tooSoon(e, at)
	}
}

// stoodSince reports whether an entry, or a meal in its place, stood between day i and
// today.
func (b *builder) stoodSince(e *Entry, i int) bool {
	since := func(k int) bool { return k > i && k < b.Horizon.Today }
	for k := i + 1; len(e.others) > 0 && k < b.Horizon.Today; k++ {
		if d := b.Horizon.Date(k); !b.on(e, k) && b.elsewhere(e, k) && e.Planned(d) && !slices.Contains(b.life.Skipped[e.ID.Care], d) {
			return true // whoever had that day did it
		}
	}
	return since(e.Days.Last(b.Horizon.Today)) || e.isMeal() && slices.ContainsFunc(e.Group.Offered, func(at civil.Date) bool {
		return since(b.attended(e, int(at-b.Horizon.From)))
	})
}

// skip takes out the days that the log says were skipped, and returns the last, or -1.
// A care that was to be done on none of them owes nothing.
func (b *builder) skip(e *Entry) int {
	last := -1
	for _, d := range b.life.Skipped[e.ID.Care] {
		i, ok := b.Horizon.Index(d)
		if !ok || i > b.Horizon.Today {
			continue
		}
		switch {
		case e.Days.Has(i):
			b.take(e, Cause{Why: Skipped, At: e.Origin}, i)
			last = max(last, i)
		case !b.on(e, i) && b.elsewhere(e, i) && e.Planned(d):
			last = max(last, i) // whoever has the next day owes it
		}
	}
	return last
}

// lastDone returns the last day before i on which it was done, zero for none known.
func (b *builder) lastDone(e *Entry, i int) civil.Date {
	if k := e.Days.Last(i); k >= 0 {
		return b.Horizon.Date(k)
	}
	return 0
}

// forbidden reports whether an entry must not be done on day i: a hold takes it out,
// or a meal that stands in its place is still to come.
func (b *builder) forbidden(e *Entry, i int) bool {
	out := e.heldOn(b.Horizon.Date(i))
	if e.isMeal() {
		out = out || slices.ContainsFunc(e.Group.Offered, func(at civil.Date) bool {
			return b.attended(e, int(at-b.Horizon.From)) >= b.Horizon.Today
		})
	}
	return out
}

// firstThere returns the first day from i on when the round is held and somebody is
// there who does it, or another's in which it is done too; -1 for none.
func (b *builder) firstThere(e *Entry, i int) int {
	for ; i < b.Horizon.Days; i++ {
		switch {
		case b.on(e, i):
		case b.elsewhere(e, i):
			return i
		default:
			continue
		}
		if who, there := b.Doer(e, i); there && (who == e.Keeper || e.Kind.StandIn || e.Feeds()) && b.fit(e, i) {
			return i
		}
	}
	return -1
}
