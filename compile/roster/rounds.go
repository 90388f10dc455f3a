package roster

import (
	"cmp"
	"slices"

	"vivary/compile/horizon"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
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
	r := &rounds{s: s, first: s.Rounds[0], byName: map[string]*plan.Round{}, byClock: map[civil.Clock]*plan.Round{}, held: map[*plan.Round]horizon.Days{}}
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
// as far as the care's window allows.
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

// free reports whether the keeper has chosen no day.
func (e *Entry) free() bool { return e.FromSheet || e.Once != nil }

// usualWindow is by how many days what has no window of its own may be moved to a
// round (common practice, no source).
const usualWindow = 3

// nearest returns the nearest day to i on which the round of an entry is held, the
// earlier of two, within its window. What is looked for after a meal is not looked for
// on its day.
func (b *builder) nearest(e *Entry, i int) (int, bool) {
	window := 0
	switch {
	case e.Timing != nil && e.Timing.Window.Set():
		window = windowDays(e.Timing.Window.V)
	case e.free():
		window = usualWindow
	}
	for k := 1; k <= window; k++ {
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
