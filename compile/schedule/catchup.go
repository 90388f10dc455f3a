package schedule

import (
	"vivary/plan"
	"vivary/schema/civil"
)

// lookBack is how many days before today are looked at for what was left undone.
const lookBack = 60

// catchUp brings back, once, what was left undone before today: its last occasion
// was skipped by the log, or fell into an absence without anybody there that ends
// today or is not over yet. What is older counts as caught up when it was due.
//
// A meal that is caught up takes the place of the next, where that comes too soon
// after it: nothing is fed double.
func (b *builder) catchUp(s *Series) {
	h := b.s.Horizon
	if s.Once != nil || !b.mayOwe(s) {
		return
	}
	s.Last = h.From - lookBack - 1
	done, logged := b.life.Done[s.Name]
	for d := h.From - 1; d >= h.From-lookBack; d-- {
		if logged && done >= d {
			s.Last = done
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
	if at < 0 || s.Held != nil && s.Held.Has(at) {
		return
	}
	s.CaughtUp = at
	b.put(s, at)
	if s.Kind == kindFeed && s.Group != nil {
		if next := s.Days.Next(at + 1); next >= 0 {
			_, least := b.mealGaps(s)
			if after := s.Days.Next(next + 1); after >= 0 {
				least = max(least, (after-next+1)/2)
			}
			if next-at < least {
				b.leave(s, next)
			}
		}
	}
}

// mayOwe reports whether anything could have been left undone.
func (b *builder) mayOwe(s *Series) bool {
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
func (b *builder) undone(s *Series, d civil.Date) bool {
	for _, x := range b.life.Skipped[s.Name] {
		if x == d {
			return true
		}
	}
	for k := range b.s.People.Absences {
		a := b.s.People.Absences[k].Away
		if a.Name.V == s.Keeper && a.From.V <= d && d < a.To.V && !(a.Cover.Set() && visited(a, d)) {
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

func (b *builder) heldThen(s *Series, d civil.Date) bool {
	held := false
	s.EachHeld(d, d+1, func(civil.Date) { held = true })
	return held
}

// skipToday takes out what the log says was skipped today; it is done tomorrow.
func (b *builder) skipToday(s *Series) {
	for _, d := range b.life.Skipped[s.Name] {
		if d == b.s.Horizon.From && s.Days.Has(0) {
			s.Owed = true
			s.Days.Remove(0)
			if s.Left == nil {
				s.Left = b.days()
			}
			s.Left.Add(0)
		}
	}
}

// firstThere returns the first day on which the round is held and somebody is
// there, from today on, or tomorrow where today was skipped; -1 for none.
func (b *builder) firstThere(s *Series) int {
	for i := range min(lookBack, b.s.Horizon.Days) {
		if s.Left != nil && s.Left.Has(i) && i == 0 || b.rounds.held[s.Round] != nil && !b.rounds.on(s.Round, i) {
			continue
		}
		if _, there := b.s.People.Doer(s.Keeper, i); there {
			return i
		}
	}
	return -1
}
