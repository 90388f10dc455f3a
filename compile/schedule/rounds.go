package schedule

import (
	"cmp"
	"slices"

	"vivary/compile/horizon"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/schema/civil"
)

// rounds finds the round in which a care is done. Care at a time of its own, in
// no round of the plan, gets a round made for that time.
type rounds struct {
	first   *plan.Round
	byName  map[string]*plan.Round
	byClock map[civil.Clock]*plan.Round
	held    map[*plan.Round]horizon.Days // of rounds that are not held every day, from margin days before the horizon
	s       *Schedule
}

func newRounds(s *Schedule) *rounds {
	r := &rounds{s: s, first: s.Rounds[0], byName: map[string]*plan.Round{}, byClock: map[civil.Clock]*plan.Round{}, held: map[*plan.Round]horizon.Days{}}
	for _, x := range s.Rounds {
		r.byName[x.Name.V] = x
		if r.byClock[x.Clock.V] == nil && len(x.On) == 0 {
			r.byClock[x.Clock.V] = x
		}
		if len(x.On) > 0 {
			r.held[x] = listed(x.On, horizon.Horizon{From: s.Horizon.From - margin, Days: s.Horizon.Days + 2*margin})
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

// margin is for how many days beyond either end of the horizon it is known whether
// a round is held.
const margin = 64

// on reports whether a round is held on day i of the horizon, or as far as margin
// beyond it.
func (r *rounds) on(x *plan.Round, i int) bool {
	days := r.held[x]
	return days == nil || days.Has(i+margin)
}

// madeRound returns a round that nobody wrote.
func madeRound(name string, c civil.Clock) *plan.Round {
	r := &plan.Round{}
	r.Name.V = name
	r.Clock.V = c
	return r
}
