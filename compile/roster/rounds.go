package roster

import (
	"cmp"
	"slices"

	"vivary/compile/horizon"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// rounds finds the round in which a care is done. Care at a time of its own, in
// no round of the plan, gets a round made for that time.
type rounds struct {
	first   *plan.Round
	byName  map[string]*plan.Round
	byClock map[civil.Clock]*plan.Round
	held    map[*plan.Round]horizon.Days // of rounds that are not held every day
	s       *Shared
}

func newRounds(s *Shared) *rounds {
	r := &rounds{s: s, first: usualRound(s.Rounds), byName: map[string]*plan.Round{}, byClock: map[civil.Clock]*plan.Round{}, held: map[*plan.Round]horizon.Days{}}
	for _, x := range s.Rounds {
		r.byName[x.Name.V] = x
		if r.byClock[x.Clock.V] == nil && len(x.On) == 0 {
			r.byClock[x.Clock.V] = x
		}
		if len(x.On) > 0 {
			r.held[x] = listed(x.On, s.Horizon)
		}
	}
	return r
}

// usualRound is the first round that is held every day, or the first of all.
func usualRound(all []*plan.Round) *plan.Round {
	for _, x := range all {
		if len(x.On) == 0 {
			return x
		}
	}
	return all[0]
}

// note makes rounds for the times of its own that care has, of an enclosure or of a
// species sheet. It is called for all of them before series are made.
func (r *rounds) note(care []*plan.Care, feeding []*plan.Feeding) {
	clocks := func(t *plan.Timing) {
		for _, c := range t.Clocks {
			r.clock(c.V)
		}
		if t.Cron.Set() {
			if _, cs, err := recur.ParseCron(t.Cron.V); err == nil {
				for _, c := range cs {
					r.clock(c)
				}
			}
		}
	}
	for _, c := range care {
		clocks(&c.Timing)
	}
	for _, f := range feeding {
		clocks(&f.Timing)
	}
}

func (r *rounds) clock(c civil.Clock) {
	if r.byClock[c] != nil {
		return
	}
	x := madeRound("at-"+c.String(), c)
	x.Title.V = c.String() + " round"
	r.byClock[c] = x
	i, _ := slices.BinarySearchFunc(r.s.Rounds, c, func(x *plan.Round, c civil.Clock) int { return cmp.Compare(x.Clock.V, c) })
	r.s.Rounds = slices.Insert(r.s.Rounds, i, x)
}

// of returns the rounds in which a care is done.
func (r *rounds) of(e *plan.Enclosure, t *plan.Timing, clocks []civil.Clock) []*plan.Round {
	var out []*plan.Round
	for _, n := range t.Round {
		if x := r.byName[n.V]; x != nil && len(clocks) == 0 {
			out = append(out, x)
		}
	}
	for _, c := range t.Clocks {
		if x := r.byClock[c.V]; x != nil {
			out = append(out, x)
		}
	}
	for _, c := range clocks {
		if x := r.byClock[c]; x != nil {
			out = append(out, x)
		}
	}
	if len(out) == 0 {
		out = append(out, r.usual(e))
	}
	return out
}

// usual returns the round of an enclosure's care that names none: the enclosure's,
// the room's, or the first of the collection.
func (r *rounds) usual(e *plan.Enclosure) *plan.Round {
	if x := r.byName[e.Round.V]; x != nil {
		return x
	}
	if e.Place != nil {
		if x := r.byName[e.Place.Round.V]; x != nil {
			return x
		}
	}
	return r.first
}

// on reports whether a round is held on day i, which may lie outside the window.
func (r *rounds) on(x *plan.Round, i int) bool {
	days := r.held[x]
	return days == nil || i >= 0 && i < r.s.Horizon.Days && days.Has(i)
}

// onRounds moves days on which the round is not held to the nearest on which it is,
// as far as the care's window allows. Of a care that is done in several rounds, those
// that are held do it.
func (b *builder) onRounds(e *Entry) {
	held := b.rounds.held[e.Round]
	if held == nil {
		return
	}
	said := e.free() // the proof says whether what is left is enough
	for i := e.Days.Next(0); i >= 0; i = e.Days.Next(i + 1) {
		if held.Has(i) {
			continue
		}
		e.Moved = true
		b.take(e, Cause{Why: NoRound, At: e.Round.At}, i)
		if b.elsewhere(e, i) {
			continue
		}
		if to, ok := b.nearest(e, i); ok {
			b.put(e, Cause{Why: Moved, At: e.Round.At}, to)
		} else if !said && i >= b.Horizon.Today && i < b.Horizon.Days-maxWindow {
			said = true
			b.found.Add(finding.Finding{Rule: ruleOffRound, At: e.Origin,
				Text:  e.Name + " falls on " + b.Horizon.Date(i).Words() + ", when there is no " + e.Round.Shown(),
				Write: "window = \"2 days\", other days, or a round on more days",
				Also:  []finding.Related{{At: e.Round.At, Text: "the round"}}})
		}
	}
}

// elsewhere reports whether another round of a care is held on day i.
func (b *builder) elsewhere(e *Entry, i int) bool {
	if e.Timing == nil {
		return false
	}
	for _, n := range e.Timing.Round {
		if x := b.rounds.byName[n.V]; x != nil && x != e.Round && b.rounds.on(x, i) {
			return true
		}
	}
	return false
}

// free reports whether the keeper has chosen no day: the phase of an interval without a
// first day is ours.
func (e *Entry) free() bool {
	if e.FromSheet || e.Once != nil {
		return true
	}
	t := e.Timing
	return len(t.On) == 0 && !t.Cron.Set() && !t.From.Set()
}

// usualWindow is by how many days what has no window of its own may be moved to a
// round (common practice, no source).
const usualWindow = 3

// window is by how many days an entry may be moved to a round: what is done every so
// often on no chosen day, by as long as that is.
func (e *Entry) window() int {
	switch {
	case e.Timing != nil && e.Timing.Window.Set():
		return windowDays(e.Timing.Window.V)
	case e.Timing != nil && e.Timing.Every.Set() && e.free():
		return min(max(usualWindow, interval(e.Timing.Every.V)), maxWindow)
	case e.free():
		return usualWindow
	}
	return 0
}

// interval is about how many days an interval has.
func interval(v quantity.Interval) int {
	switch v.Unit {
	case quantity.Day:
		return v.N
	case quantity.Week:
		return 7 * v.N
	}
	return maxWindow
}

// nearest returns the nearest day to i on which the round of an entry is held, the
// earlier of two, within its window. What is looked for after a meal is not looked for
// on its day. What the log brought waits for the next round, however far: before its day
// it may harm, as a meal before fangs are hard does, and it must not be lost.
func (b *builder) nearest(e *Entry, i int) (int, bool) {
	if e.Once != nil {
		to := b.rounds.held[e.Round].Next(i)
		return to, to >= 0
	}
	for k := 1; k <= e.window(); k++ {
		for _, to := range [2]int{i - k, i + k} {
			if b.rounds.on(e.Round, to) && (e.After <= 0 || to > i-e.After) {
				return to, true
			}
		}
	}
	return 0, false
}

// madeRound returns a round that nobody wrote.
func madeRound(name string, c civil.Clock) *plan.Round {
	r := &plan.Round{}
	r.Name.V = name
	r.Clock.V = c
	return r
}
