package stock

import (
	"cmp"
	"slices"

	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// fact is what the plan or the log says of how many there are in a store.
type fact struct {
	on   civil.Date
	of   *plan.Store
	word *schema.LogWord
	n    float64
}

// facts are those of a lot, by day.
func (l *Lot) facts(r *roster.Roster) (out []fact) {
	for _, s := range r.Plan.Stores {
		if s.Of != l.Prey {
			continue
		}
		if t := s.Tub; t != nil && t.Count.Set() && t.Counted.Set() {
			out = append(out, fact{t.Counted.V, s, schema.WordCounted, float64(t.Count.V)})
		}
		for _, e := range l.log[s.Name.V] {
			switch e.Word {
			case schema.WordCounted, schema.WordDelivered, schema.WordHarvested:
				if e.Number.Set() && e.Number.V <= most {
					out = append(out, fact{e.Date, s, e.Word, e.Number.V})
				}
			case schema.WordCrashed:
				out = append(out, fact{e.Date, s, e.Word, 0})
			}
		}
	}
	slices.SortStableFunc(out, func(a, b fact) int { return cmp.Compare(a.on, b.on) })
	return out
}

// reckon says how many there are today: what was counted last, with what came and was taken
// since, less what the meals of the plan took and what died. What was counted before the
// window begins is too old to be reckoned with.
func (l *Lot) reckon(r *roster.Roster) {
	h := r.Horizon
	in := map[*plan.Store]float64{}
	var order []*plan.Store
	facts := l.facts(r)
	for len(facts) > 0 && facts[0].on < h.From {
		facts = facts[1:]
	}
	for i := 0; i <= h.Today; i++ {
		for _, s := range order {
			in[s] *= 1 - l.daily
		}
		for ; len(facts) > 0 && facts[0].on == h.Date(i); facts = facts[1:] {
			f := facts[0]
			if _, known := in[f.of]; !known {
				order = append(order, f.of)
			}
			switch f.word {
			case schema.WordCounted:
				in[f.of], l.Known = f.n, true
			case schema.WordCrashed:
				in[f.of] = 0
			default:
				in[f.of] += f.n
				l.Known = true
			}
		}
		if i == h.Today {
			break
		}
		left := float64(l.Use[i])
		for _, s := range order {
			n := min(in[s], left)
			in[s] -= n
			left -= n
		}
	}
	for _, s := range order { // not by the map: a sum of fractions depends on its order
		l.Hand += in[s]
	}
}

// run goes through the days from one on with so many at hand, and notes on which there is not
// enough. It returns how many are left in the morning of the last day, before it is fed.
func (l *Lot) run(have float64, from, to int, lack func(i int, n float64)) float64 {
	for i := from; i < to; i++ {
		have += l.arrive[i] - float64(l.Use[i])
		if have < -1e-6 {
			if lack != nil {
				lack(i, -have)
			}
			have = 0
		}
		have = Left(have, l.daily, 1)
	}
	return have
}

// missing notes on which days from today on there is not enough.
func (l *Lot) missing(r *roster.Roster, have float64, from, to int) {
	l.run(have, from, to, func(i int, n float64) {
		if i < r.Horizon.Today {
			return
		}
		if l.Short.First < 0 {
			l.Short.First, l.Short.Lacks = i, Whole(n)
		}
		l.Short.Days = append(l.Short.Days, i)
	})
	if l.Short.First >= 0 {
		l.Short.Who = l.eaters(r, l.Short.First)
	}
}

// Held is what lacks for young, were the next parcel held back.
type Held struct {
	In    int // days from today to the first without
	Lacks int
}

// heldBack looks what the young would lack, were the next parcel held back by the weather: until
// the day of its delivery all are fed, and then they alone.
func (l *Lot) heldBack(r *roster.Roster) {
	h := r.Horizon
	var next *Order
	for _, x := range l.Supplies {
		for i := range x.Orders {
			if o := &x.Orders[i]; o.Deliver >= h.Now() && o.Number > 0 && (next == nil || o.Deliver < next.Deliver) {
				next = o
			}
		}
	}
	if next == nil || !next.Frost && !next.Heat || l.bred {
		return
	}
	on, have := int(next.Deliver-h.From), l.Hand
	for i := h.Today; i < min(on+held, h.Days); i++ {
		n := l.Use[i]
		if i >= on {
			n = l.Young[i]
		}
		if have -= float64(n); have < -1e-6 {
			if l.Held == nil {
				l.Held = &Held{In: i - h.Today}
			}
			l.Held.Lacks += Whole(-have)
			have = 0
		}
		have = Left(have, l.daily, 1)
	}
}

// eaters are the groups that are fed from a lot on day i: those first that can fast least, the
// young before all others.
func (l *Lot) eaters(r *roster.Roster, i int) (out []Eater) {
	for _, e := range l.meals {
		if !e.Days.Has(i) || e.Portion(i) == nil || e.Portion(i).Prey != l.Prey {
			continue
		}
		out = append(out, eater(r, e, i, taken(r, e, i)))
	}
	for _, f := range l.firsts {
		if f.day == i {
			out = append(out, eater(r, f.entry, i, f.n))
		}
	}
	slices.SortStableFunc(out, func(a, b Eater) int {
		return cmp.Or(cmp.Compare(stageAt(a.Stage), stageAt(b.Stage)), cmp.Compare(a.Fasts, b.Fasts))
	})
	return out
}

// eater is the group of a meal, with how long it may go without by its sheet.
func eater(r *roster.Roster, e *roster.Entry, i, takes int) Eater {
	x := Eater{Entry: e, Stage: e.Group.Stage(r.Horizon.Date(i)), Takes: takes}
	s := e.Plan().Sheet
	if s == nil {
		return x
	}
	for _, n := range s.NeedsOf(x.Stage) {
		if n.Name.V == schema.NeedFood.Name && n.Longest.Set() {
			x.Fasts = int(n.Longest.V.Value / day)
			x.Waits = n.Severity.V == finding.Caution.String()
		}
	}
	return x
}

func stageAt(stage string) int {
	return slices.IndexFunc(schema.Stages, func(c schema.Choice) bool { return c.Name == stage })
}
