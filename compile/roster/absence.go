package roster

import (
	"vivary/compile/horizon"
	"vivary/schema"
)

// absences says what becomes of an entry while its keeper is away.
//
// What animals need every few days is done by the stand-in on the days of the
// visits: what falls between two visits is done at both of them, and what falls
// between leaving and the first at both of these. So it never depends on the phase
// of an interval whether a trip is sound, and dishes are full when the last to be
// there goes. Meals are left out where the animals can wait until the return, and
// are killed prey where nobody comes the next day to take out what is left.
// Everything else waits for the keeper: it is done before leaving where a need
// depends on it, and on the return.
func (b *builder) absences(e *Entry) {
	b.shut(e)
	unfit := b.unfit(e)
	var planned horizon.Days
	if unfit != nil {
		planned = e.Days.Clone()
		defer func() { b.notDone(e, unfit, planned) }()
	}
	d := b.People.Of(e.Keeper)
	if d == nil {
		return
	}
	d = b.unless(d, unfit)
	for k := range d.Runs {
		r := &d.Runs[k]
		switch {
		case e.isMeal():
			b.mealsAway(e, d, r)
		case e.Once != nil:
			b.onceAway(e, d, r)
		case e.Kind.StandIn:
			b.toVisits(e, d, r)
		default:
			b.around(e, r)
		}
	}
}

// toVisits moves what falls on days without anybody to the days with somebody before
// and after them.
func (b *builder) toVisits(e *Entry, d *Duty, r *Run) {
	due := b.within(e, r)
	for _, i := range due {
		if d.Visits.Has(i) {
			continue
		}
		away := r.block(i)
		b.take(e, Cause{Why: Nobody, Away: away, At: away.At}, i)
		if e.needs() && e.After == 0 {
			b.last(e, d, r, i)
		}
		b.next(e, d, r, i)
	}
}

// last puts what falls on day i, when nobody comes, on the last day before it with
// somebody: it is the last fill-up.
func (b *builder) last(e *Entry, d *Duty, r *Run, i int) {
	to := d.before(i)
	for to >= 0 && !b.on(e, to) {
		to = d.before(to - 1)
	}
	if away := r.block(max(to, r.From)); to >= 0 && !(away.Logged && to < r.From) {
		b.put(e, Cause{Why: Leaving, Away: away, At: away.At}, to)
	}
}

// next puts what falls on day i, when nobody comes, on the first day after it with
// somebody: a visit, or the return.
func (b *builder) next(e *Entry, d *Duty, r *Run, i int) {
	to := b.nextRound(e, d, i)
	c := Cause{Why: Visit, Away: r.block(min(to, r.To-1)), At: r.block(min(to, r.To-1)).At}
	if to >= r.To {
		c.Why, c.Last = Return, b.lastDone(e, i)
	}
	b.put(e, c, to)
}

// nextRound returns the first day from i on with somebody, on which the round of an
// entry is held.
func (b *builder) nextRound(e *Entry, d *Duty, i int) int {
	to := d.present(i)
	for to < b.Horizon.Days && !b.on(e, to) {
		to = d.present(to + 1)
	}
	return to
}

// within returns the days of an entry in a run of days away.
func (b *builder) within(e *Entry, r *Run) []int {
	var out []int
	for i := e.Days.Next(r.From); i >= 0 && i < r.To; i = e.Days.Next(i + 1) {
		out = append(out, i)
	}
	return out
}

// around takes an entry out of a run of days away. It is done on the return, and on
// the last day before leaving too where a need depends on it; feeders that were for
// a meal of the next day need nothing on the return.
func (b *builder) around(e *Entry, r *Run) {
	due := b.within(e, r)
	for _, i := range due {
		b.take(e, Cause{Why: Nobody, Away: r.block(i), At: r.block(i).At}, i)
	}
	if len(due) == 0 || e.After != 0 {
		return
	}
	d := b.People.Of(e.Keeper)
	first, last := r.Blocks[0], r.block(r.To-1)
	b.put(e, Cause{Why: Return, Away: last, At: last.At}, b.ownRound(e, d, r.To, 1))
	if e.Kind.Needs != nil && !first.Logged {
		b.put(e, Cause{Why: Leaving, Away: first, At: first.At}, b.ownRound(e, d, r.From-1, -1))
	}
}

// ownRound returns the first day from i on, or back, on which the keeper is there and
// the round of an entry is held; -1 or the end of the window for none.
func (b *builder) ownRound(e *Entry, d *Duty, i, step int) int {
	for i >= 0 && i < b.Horizon.Days && (d.Away.Has(i) || !b.on(e, i)) {
		i += step
	}
	return i
}

// mealsAway moves the last meal before leaving so that its leftovers are taken
// out in time, and says what becomes of the meals that fall into the absence.
func (b *builder) mealsAway(e *Entry, d *Duty, r *Run) {
	after := leftoversAfter(e.Meal)
	most, least := b.mealGaps(e, r.From)
	last := b.beforeLeaving(e, d, r, after, least)
	due := b.within(e, r)
	if len(due) == 0 {
		return
	}
	if r.To-last <= most {
		for _, i := range due {
			b.take(e, Cause{Why: Waits, Away: r.block(i), At: r.block(i).At}, i)
		}
		if next := e.Days.Next(r.To); next < 0 || next-last > most {
			to := b.ownRound(e, d, r.To, 1)
			b.put(e, Cause{Why: Return, Away: r.block(r.To - 1), At: r.block(r.To - 1).At}, to)
			b.tooSoon(e, to)
		}
		return
	}
	moved := false
	for _, i := range due {
		at := i
		if !d.Visits.Has(i) {
			at = b.nextRound(e, d, i)
		}
		switch {
		case at == last:
			if at != i {
				b.take(e, Cause{Why: Nobody, Away: r.block(i), At: r.block(i).At}, i)
			}
			continue // one that was moved there is this one
		case at-last < least:
			b.take(e, Cause{Why: TooSoon, Away: r.block(i), At: r.block(i).At}, i)
			continue
		case at != i:
			b.take(e, Cause{Why: Nobody, Away: r.block(i), At: r.block(i).At}, i)
			b.next(e, d, r, i)
		}
		last, moved = at, at != i
		b.give(e, at, after)
	}
	if moved {
		b.tooSoon(e, last) // the first after the run
	}
}

// beforeLeaving moves live meals of the last days before a run of days away to where
// what is left of them is still taken out. It returns the last meal before the run.
func (b *builder) beforeLeaving(e *Entry, d *Duty, r *Run, after, least int) int {
	last := b.lastMeal(e, r.From)
	stays := func(i int) bool {
		k := i + after
		return !e.Meal.Killed.V && k >= r.From && k < r.To && !d.Visits.Has(k)
	}
	away := r.Blocks[0]
	if away.Logged {
		return last
	}
	for i := max(0, r.From-after); i < r.From; i++ {
		if !e.Days.Has(i) || !stays(i) {
			continue
		}
		b.take(e, Cause{Why: LeftIn, Away: away, At: away.At}, i)
		to := r.From - 1 - after
		if last = b.lastMeal(e, to); to >= 0 && to-last >= least {
			b.put(e, Cause{Why: Leaving, Away: away, At: away.At}, to)
			last = to
		}
	}
	return last
}

// give says of a meal of day i whether its prey is killed first: where what is left of
// it would stay in, or whoever gives it is not to feed it live, unless the plan has
// it live.
func (b *builder) give(e *Entry, i, after int) {
	if i < 0 || i >= b.Horizon.Days || e.Meal != nil && e.Meal.Killed.Set() || !b.alone(e, i, after) {
		return
	}
	if e.Killed == nil {
		e.Killed = b.days()
	}
	e.Killed.Add(i)
	c := Cause{Why: PreyKilled}
	if r := b.AwayOn(e.Keeper, i); r != nil {
		c.Away = r.block(i)
		c.At = c.Away.At
	}
	b.mark(e, c, i)
}

// alone reports whether live prey given on day i must not be: whoever comes is not
// to feed it, or nobody comes in time to take out what is left.
func (b *builder) alone(e *Entry, i, after int) bool {
	d := b.People.Of(e.Keeper)
	if d == nil || !d.Away.Has(i) {
		return false
	}
	a := b.May(e, i)
	return !a.Live || b.unless(d, e.Shut).present(i+1)-i > after
}

// who is who stands in on day i.
func (d *Duty) who(i int) (string, bool) {
	for _, s := range d.stands {
		if s.days.Has(i) {
			return s.keeper, true
		}
	}
	return "", false
}

// onceAway moves a task of the log to the next day when somebody is there, and has
// its prey killed where nobody is to take out what is left.
func (b *builder) onceAway(e *Entry, d *Duty, r *Run) {
	for _, i := range b.within(e, r) {
		at := i
		if !d.Visits.Has(i) {
			b.take(e, Cause{Why: Nobody, Away: r.block(i), At: r.block(i).At}, i)
			b.next(e, d, r, i)
			at = b.nextRound(e, d, i)
		}
		if e.Once.Meal && !e.Once.Killed && at < r.To && b.alone(e, at, 1) {
			b.give(e, at, 1)
		}
	}
}

// longAgo is a day of which nothing is known.
const longAgo = -1 << 20

// lastMeal returns the last day before i on which a group is fed, or was; longAgo where
// none is known.
func (b *builder) lastMeal(e *Entry, i int) int {
	last := e.Days.Last(i)
	for _, d := range e.Group.Offered {
		if k := int(d - b.Horizon.From); k < i && k > last {
			last = k
		}
	}
	if last < 0 {
		return longAgo
	}
	return last
}

// mealGaps returns the longest and the shortest time between two meals of a group, in
// days, in the stage that it is in on day i.
func (b *builder) mealGaps(e *Entry, i int) (most, least int) {
	sheet := b.sheet(e.Group)
	if sheet == nil {
		return 0, 0
	}
	for _, n := range sheet.NeedsOf(e.Group.Stage(b.Horizon.Date(i))) {
		if n.Name.V != schema.NeedFood.Name {
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
