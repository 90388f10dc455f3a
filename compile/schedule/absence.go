package schedule

import (
	"slices"

	"vivary/schema"
	"vivary/schema/civil"
)

// absences says what becomes of a series while its keeper is away.
//
// What animals need every few days is done by the stand-in on the days of the
// visits: what falls between two visits is done at the next, once. Meals are left
// out where the animals can wait until the return, and are killed prey where
// nobody comes the next day to take out what is left. Everything else waits for
// the keeper: it is done before leaving where a need depends on it, and on the
// return.
func (b *builder) absences(s *Series) {
	for k := range b.s.People.over {
		a := &b.s.People.over[k]
		if a.Away.Name.V == s.Keeper && s.isMeal() {
			b.mealsBefore(s, a)
		}
	}
	for k := range b.s.People.Absences {
		a := &b.s.People.Absences[k]
		if a.Away.Name.V != s.Keeper {
			continue
		}
		switch {
		case s.isMeal():
			b.mealsAway(s, a)
		case s.Once != nil:
			b.onceAway(s, a)
		case s.Kind.StandIn:
			b.toVisits(s, a)
		default:
			b.around(s, a)
		}
	}
}

// toVisits moves what falls between visits to the next, or to the return.
func (b *builder) toVisits(s *Series, a *Absence) {
	for i := a.since(s); i < a.To; i++ {
		if b.due(s, i) && !a.visit(i) {
			b.leave(s, i)
			b.put(s, a.present(i))
		}
	}
}

// around takes a series out of an absence. It is done on the return, and on the
// last day before leaving too where a need depends on it; feeders that were for a meal
// of the next day need nothing on the return.
func (b *builder) around(s *Series, a *Absence) {
	any := false
	for i := a.since(s); i < a.To; i++ {
		if b.due(s, i) {
			b.leave(s, i)
			any = true
		}
	}
	if !any || s.After != 0 {
		return
	}
	b.put(s, a.To)
	if s.Kind.Needs != nil && a.From > 0 {
		b.put(s, a.From-1)
	}
}

// mealsAway moves the last meal before leaving so that its leftovers are taken
// out in time, and says what becomes of the meals that fall into the absence.
func (b *builder) mealsAway(s *Series, a *Absence) {
	after := leftoversAfter(s.Meal)
	most, least := b.mealGaps(s)
	begin := a.begin()
	last := b.lastMeal(s, a.Before)
	// stays reports whether live prey of a day before leaving would stay in.
	stays := func(i int) bool { return !s.Meal.Killed.V && i+after >= begin && i+after < a.To && !a.visit(i+after) }
	for i := begin - after; i < begin && begin == a.Before; i++ {
		if to := begin - 1 - after; b.due(s, i) && stays(i) {
			b.leave(s, i)
			if last = b.lastMeal(s, to); to-last >= least {
				b.put(s, to)
				last = to
			}
		}
	}
	planned := b.planned(s, begin, a.To)
	if len(planned) == 0 {
		return
	}
	if a.To-last <= most {
		for _, i := range planned {
			b.leave(s, i)
		}
		if next, ok := b.next(s, a.To-1); !ok || next-last > most {
			b.put(s, a.To)
		}
		return
	}
	for _, i := range planned {
		at := a.present(i)
		if at != i || at-last < least {
			b.leave(s, i)
		}
		if at-last < least {
			continue // moved so near to the one before that it falls out
		}
		last = at
		b.give(s, a, at, after)
	}
}

// mealsBefore notes what became of the meals of an absence that is over: what is left
// of them may still have to be taken out. Where nobody stood in they were caught up on
// the return.
func (b *builder) mealsBefore(s *Series, a *Absence) {
	if a.Away.Cover.Set() {
		b.mealsAway(s, a)
		return
	}
	planned := b.planned(s, max(a.Before, -LookBack), a.To)
	for _, i := range planned {
		b.leave(s, i)
	}
	if len(planned) > 0 {
		b.put(s, a.To)
	}
}

// give puts a meal on a day of an absence, or of the return. Where what is left of
// it would stay in, the prey is killed first, unless the plan has it live.
func (b *builder) give(s *Series, a *Absence, i, after int) {
	b.put(s, i)
	if i >= a.From && i < a.To && !s.Meal.Killed.Set() && b.alone(a, i, after) {
		if s.Killed == nil {
			s.Killed = b.days()
		}
		s.Killed.Add(i)
	}
}

// alone reports whether live prey given on day i must not be: nobody comes in time
// to take out what is left, or whoever comes is not to feed it.
func (b *builder) alone(a *Absence, i, after int) bool {
	return i >= a.From && !b.trained(a.Away.Cover.V, "feeding") || a.present(i+1)-i > after
}

// onceAway moves a task of the log, and has its prey killed where nobody is there to
// take out what is left. Two absences have it killed once: its words are then no more
// those of the log.
func (b *builder) onceAway(s *Series, a *Absence) {
	b.toVisits(s, a)
	i := s.Days.Next(max(0, a.From-1))
	if s.Once.Meal && i >= 0 && i < a.To && b.alone(a, i, 1) && !s.Once.Killed && s.Task == s.Once.Text {
		s.Task += ", killed"
	}
}

// due reports whether a series has day i, which may lie before the horizon.
func (b *builder) due(s *Series, i int) bool {
	if i >= 0 {
		return i < b.s.Horizon.Days && s.Days.Has(i)
	}
	if given, changed := s.past[i]; changed {
		return given
	}
	d := b.s.Horizon.From + civil.Date(i)
	return s.planned(d) && !b.heldThen(s, d)
}

// planned returns the days of a series from one until another.
func (b *builder) planned(s *Series, from, until int) []int {
	var out []int
	for i := from; i < until; i++ {
		if b.due(s, i) {
			out = append(out, i)
		}
	}
	return out
}

// lastMeal returns the last day before i on which a group is fed, or was. Where none
// is known it is the day before the horizon: what was due before it counts as done.
func (b *builder) lastMeal(s *Series, i int) int {
	h, g := b.s.Horizon, s.Group
	for k := i - 1; k >= -LookBack; k-- {
		if b.due(s, k) || g.HasFed && g.Fed == h.From+civil.Date(k) || slices.Contains(g.Offered, h.From+civil.Date(k)) {
			return k
		}
	}
	return -1
}

// mealGaps returns the longest and the shortest time between two meals of a group,
// in days.
func (b *builder) mealGaps(s *Series) (most, least int) {
	for _, n := range b.life.Plan.Sheet.NeedsOf(s.Group.Stage(b.s.Horizon.From)) {
		if n.What != schema.NeedFood {
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

func (b *builder) trained(keeper, skill string) bool {
	k := b.s.Plan.Keeper(keeper)
	return k != nil && slices.Contains(k.Trained.V, skill)
}

// leave takes a day out of a series because nobody is there to do it.
func (b *builder) leave(s *Series, i int) {
	if i < 0 {
		s.note(i, false)
		return
	}
	if s.Left == nil {
		s.Left = b.days()
	}
	s.Left.Add(i)
	s.Days.Remove(i)
}

// pass takes a day out of a series though somebody may be there: the log says that
// it was skipped, or another meal stands in its place.
func (b *builder) pass(s *Series, i int) {
	b.leave(s, i)
	if i < 0 {
		return
	}
	if s.Passed == nil {
		s.Passed = b.days()
	}
	s.Passed.Add(i)
}

func (b *builder) put(s *Series, i int) {
	if i < 0 {
		s.note(i, true)
	} else if i < b.s.Horizon.Days {
		s.Days.Add(i)
	}
}

// note notes what an absence made of a meal before the horizon.
func (s *Series) note(i int, given bool) {
	if !s.isMeal() {
		return
	}
	if s.past == nil {
		s.past = map[int]bool{}
	}
	s.past[i] = given
}

// begin returns the first day of an absence as a place on the horizon. It lies
// before the horizon where somebody stands in and the absence has begun: what fell
// between two visits is done at the next, whenever the plan is built. Where nobody
// stands in, what was left undone is caught up.
func (a *Absence) begin() int {
	if a.Away.Cover.Set() {
		return max(a.Before, -LookBack)
	}
	return a.From
}

// since is begin for a series. What goes with meals has no days of its own before the
// horizon: those meals may have been moved, and bring it where they were given.
func (a *Absence) since(s *Series) int {
	if s.After != 0 {
		return a.From
	}
	return a.begin()
}

// visit reports whether the stand-in comes, or came, on a day of the absence.
func (a *Absence) visit(i int) bool {
	if i >= 0 {
		return i < a.To && a.Visits.Has(i)
	}
	return a.Away.Cover.Set() && i >= a.Before && i < a.To && visited(a.Away, a.Away.From.V+civil.Date(i-a.Before))
}

// present returns the first day from i on when somebody is there: a visit, or the
// day of return.
func (a *Absence) present(i int) int {
	for ; i < 0 && i < a.To; i++ {
		if a.visit(i) {
			return i
		}
	}
	if i >= a.To {
		return a.To
	}
	if v := a.Visits.Next(i); v >= 0 && v < a.To {
		return v
	}
	return a.To
}
