package schedule

import "vivary/compile/horizon"

// absences says what becomes of a series while its keeper is away.
//
// What animals need every few days is done by the stand-in on the days of the
// visits: what falls between two visits is done at the next, once. Meals are left
// out where the animals can wait until the return, and are killed prey where
// nobody comes the next day to take out what is left. Everything else waits for
// the keeper: it is done before leaving where a need depends on it, and on the
// return.
func (b *builder) absences(s *Series) {
	for k := range b.s.People.Absences {
		a := &b.s.People.Absences[k]
		if a.Away.Name.V != s.Keeper {
			continue
		}
		switch {
		case s.Kind.Name == "feed" && s.Meal != nil:
			b.mealsAway(s, a)
		case s.Once != nil || forStandIn(s):
			b.toVisits(s, a)
		default:
			b.around(s, a)
		}
	}
}

// forStandIn reports whether somebody who stands in does this kind of care: what
// keeps an animal alive and opens nothing that must stay shut.
func forStandIn(s *Series) bool {
	switch s.Kind.Name {
	case "look", "watch", "heat", "moisture", "water", "mist", "moisten", "leftovers", "leaves", "spot-clean", "dish":
		return true
	}
	return false
}

// toVisits moves what falls between visits to the next, or to the return.
func (b *builder) toVisits(s *Series, a *Absence) {
	for i := s.Days.Next(a.From); i >= 0 && i < a.To; i = s.Days.Next(i + 1) {
		if !a.Visits.Has(i) {
			b.leave(s, i)
			b.put(s, a.present(i))
		}
	}
}

// around takes a series out of an absence. It is done on the return, and on the
// last day before leaving too where a need depends on it.
func (b *builder) around(s *Series, a *Absence) {
	any := false
	for i := s.Days.Next(a.From); i >= 0 && i < a.To; i = s.Days.Next(i + 1) {
		b.leave(s, i)
		any = true
	}
	if !any {
		return
	}
	b.put(s, a.To)
	if s.Kind.Needs != "" && a.From > 0 {
		b.put(s, a.From-1)
	}
}

// mealsAway moves the last meal before leaving so that its leftovers are taken
// out in time, and says what becomes of the meals that fall into the absence.
func (b *builder) mealsAway(s *Series, a *Absence) {
	after := 1
	if s.Meal.Leftovers.Set() {
		after = wholeDays(s.Meal.Leftovers.V)
	}
	most, least := b.mealGaps(s)
	if !s.Meal.Killed.V {
		for i := max(0, a.From-after); i < a.From; i++ {
			if !s.Days.Has(i) || i+after >= a.To || a.Visits.Has(i+after) || a.From-1-after < 0 {
				continue
			}
			b.leave(s, i)
			if to := a.From - 1 - after; to-before(s.Days, to) >= least {
				b.put(s, to)
			}
		}
	}
	if first := s.Days.Next(a.From); first < 0 || first >= a.To {
		return
	}
	last := before(s.Days, a.From)
	if a.To-last <= most {
		for i := s.Days.Next(a.From); i >= 0 && i < a.To; i = s.Days.Next(i + 1) {
			b.leave(s, i)
		}
		if next := s.Days.Next(a.To); next < 0 || next-last > most {
			b.put(s, a.To)
		}
		return
	}
	feeds := b.trained(a.Away.Cover.V, "feeding")
	planned := s.Days.Clone()
	for i := planned.Next(a.From); i >= 0 && i < a.To; i = planned.Next(i + 1) {
		at := a.present(i)
		if at != i || at-last < least {
			b.leave(s, i)
		}
		if at-last < least {
			continue // moved so near to the one before that it falls out
		}
		last = at
		b.put(s, at)
		if at < a.To && !s.Meal.Killed.V && (!feeds || a.present(at+1)-at > after) {
			if s.Killed == nil {
				s.Killed = b.days()
			}
			s.Killed.Add(at)
		}
	}
}

// mealGaps returns the longest and the shortest time between two meals of a group,
// in days.
func (b *builder) mealGaps(s *Series) (most, least int) {
	for _, n := range b.life.Plan.Sheet.NeedsOf(s.Group.Stage(b.s.Horizon.From)) {
		if n.Name.V != "food" {
			continue
		}
		if n.Longest.Set() {
			most = wholeDays(n.Longest.V)
		}
		if n.Shortest.Set() {
			least = wholeDays(n.Shortest.V)
		}
	}
	return most, least
}

// before returns the last day of a set before i. Where there is none it is the day
// before the horizon: what was due before it counts as done.
func before(days horizon.Days, i int) int {
	last := -1
	for k := days.Next(0); k >= 0 && k < i; k = days.Next(k + 1) {
		last = k
	}
	return last
}

func (b *builder) trained(keeper, skill string) bool {
	k := b.s.Plan.Keeper(keeper)
	if k == nil {
		return false
	}
	for _, t := range k.Trained.V {
		if t == skill {
			return true
		}
	}
	return false
}

// leave takes a day out of a series because nobody is there to do it.
func (b *builder) leave(s *Series, i int) {
	if s.Left == nil {
		s.Left = b.days()
	}
	s.Left.Add(i)
	s.Days.Remove(i)
}

func (b *builder) put(s *Series, i int) {
	if i >= 0 && i < b.s.Horizon.Days {
		s.Days.Add(i)
	}
}

// present returns the first day from i on when somebody is there: a visit, or the
// day of return.
func (a *Absence) present(i int) int {
	if v := a.Visits.Next(i); v >= 0 && v < a.To {
		return v
	}
	return a.To
}
