package roster

import (
	"slices"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// LookBack is how many days before today are looked at for what was left undone.
const LookBack = 60

// catchUp brings back, once, what was left undone before today: its last occasion
// was skipped by the log, or fell into an absence without anybody there that ends
// today or is not over yet. What is older counts as caught up when it was due.
//
// A meal that is caught up takes the place of the next, where that comes too soon
// after it: nothing is fed double.
func (b *builder) catchUp(s *Entry) {
	h := b.s.Horizon
	if s.Once != nil || !b.mayOwe(s) {
		return
	}
	s.Last = h.From - LookBack - 1
	done, logged := b.life.Done[s.Name]
	for d := h.From - 1; d >= h.From-LookBack; d-- {
		if logged && done >= d {
			s.Last = done
			break
		}
		if s.isMeal() && slices.Contains(s.Group.Offered, d) {
			s.Last = d
			break
		}
		if !s.planned(d) || b.heldThen(s, d) {
			continue
		}
		if !b.undone(s, d) {
			s.Last = d
			break
		}
		s.Owed = true
	}
	b.skipToday(s)
	if !s.Owed {
		return
	}
	at := b.firstThere(s)
	if at < 0 || b.forbidden(s, at) {
		return
	}
	s.CaughtUp = at
	b.put(s, at)
	if !s.isMeal() {
		return
	}
	for k := range b.s.People.Absences {
		if a := &b.s.People.Absences[k]; a.Away.Name.V == s.Keeper {
			b.give(s, a, at, leftoversAfter(s.Meal))
		}
	}
	b.tooSoon(s, at)
}

// forbidden reports whether a series must not be done on day i: a hold takes it out,
// or a meal that stands in its place is still to come.
func (b *builder) forbidden(s *Entry, i int) bool {
	d, out := b.s.Horizon.Date(i), false
	s.EachHold(func(h *life.Hold) { out = out || h.From <= d && d < h.Until })
	if s.isMeal() {
		out = out || slices.ContainsFunc(s.Group.Offered, func(at civil.Date) bool {
			return b.attended(s.Keeper, int(at-b.s.Horizon.From)) >= 0
		})
	}
	return out
}

// mayOwe reports whether anything could have been left undone.
func (b *builder) mayOwe(s *Entry) bool {
	if len(b.life.Skipped[s.Name]) > 0 {
		return true
	}
	for k := range b.s.People.Absences {
		if a := &b.s.People.Absences[k]; a.Away.Name.V == s.Keeper && a.Before < 0 {
			return true
		}
	}
	return false
}

// undone reports whether what was planned on a past day was not done.
func (b *builder) undone(s *Entry, d civil.Date) bool {
	if slices.Contains(b.life.Skipped[s.Name], d) {
		return true
	}
	for k := range b.s.People.Absences {
		a := b.s.People.Absences[k].Away
		if a.Name.V == s.Keeper && a.From.V <= d && d < a.To.V && !a.Cover.Set() {
			return true
		}
	}
	return false
}

func visited(a *plan.Away, d civil.Date) bool {
	if len(a.Visits) == 0 {
		return true
	}
	for _, v := range a.Visits {
		if v.V.Is(d) {
			return true
		}
	}
	return false
}

func (b *builder) heldThen(s *Entry, d civil.Date) bool {
	held := false
	s.EachHeld(d, d+1, func(civil.Date) { held = true })
	return held
}

// skipToday takes out what the log says was skipped today; it is done tomorrow.
func (b *builder) skipToday(s *Entry) {
	if s.Days.Has(0) && slices.Contains(b.life.Skipped[s.Name], b.s.Horizon.From) {
		s.Owed = true
		b.pass(s, 0)
	}
}

// firstThere returns the first day on which the round is held and somebody is
// there who does it, from today on, or tomorrow where today was skipped; -1 for none.
func (b *builder) firstThere(s *Entry) int {
	for i := range min(LookBack, b.s.Horizon.Days) {
		if s.Left != nil && s.Left.Has(i) && i == 0 || b.rounds.held[s.Round] != nil && !b.rounds.on(s.Round, i) {
			continue
		}
		if who, there := b.s.People.Doer(s.Keeper, i); there && (who == s.Keeper || s.Kind.StandIn || s.Kind == schema.KindFeed) {
			return i
		}
	}
	return -1
}
