package stock

import (
	"slices"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema/civil"
)

// Report is what follows for the feeder animals of a collection.
type Report struct {
	Plan    *plan.Collection
	Horizon horizon.Horizon
	Lots    []*Lot // by feeder and size
}

// Of works out demand, stock, orders and starts of a roster whose enclosures are all there. It
// is nil for a plan without cultures, tubs and supplies: of that nothing is said.
func Of(r *roster.Roster) *Report {
	if len(r.Plan.Stores) == 0 || len(r.Of) != len(r.Lives) {
		return nil
	}
	return Look(r)
}

// Look is Of for a plan without cultures, tubs and supplies too: what its meals take.
func Look(r *roster.Roster) *Report {
	out := &Report{Plan: r.Plan, Horizon: r.Horizon, Lots: lots(r)}
	log := map[string][]*plan.Event{}
	for i := range r.Plan.Log {
		if e := &r.Plan.Log[i]; e.Enclosure.Set() && r.Plan.Store(e.Enclosure.V) != nil && e.Date <= r.Horizon.Now() {
			log[e.Enclosure.V] = append(log[e.Enclosure.V], e)
		}
	}
	for _, l := range out.Lots {
		l.log = log
		l.work(r)
	}
	return out
}

// work works out one lot.
func (l *Lot) work(r *roster.Roster) {
	for _, s := range r.Plan.Stores {
		if s.Of != l.Prey {
			continue
		}
		l.daily = max(l.daily, lossOf(s, l))
		l.bred = l.bred || s.Culture != nil
		switch {
		case s.Tub != nil:
			l.Tubs = append(l.Tubs, s)
		case s.Supply != nil:
			if x := supply(r, s, l); x != nil {
				l.Supplies = append(l.Supplies, x)
			}
		}
	}
	if len(l.Supplies) > 0 && l.Supplies[0].Plan.Supply.Margin.Set() && !l.Supplies[0].Plan.Loss.Set() {
		l.daily = 0 // the margin is for it
	}
	l.reckon(r)
	var rest map[civil.Date]int
	for i, x := range l.Supplies {
		if x.Spare = i > 0 && len(rest) == 0; x.Spare {
			continue
		}
		rest = l.order(r, x, rest)
	}
	if l.Known && len(l.Supplies) == 0 {
		l.From, l.Begin = r.Horizon.Today, l.Hand
	}
	for _, s := range r.Plan.Stores {
		if s.Of == l.Prey && s.Culture != nil {
			l.Cultures = append(l.Cultures, culture(r, s, l))
		}
	}
	if len(l.Supplies) > 0 || l.Known && len(l.Cultures) == 0 {
		l.missing(r, l.Begin, l.From, l.end(r))
	}
	if l.Known {
		l.heldBack(r)
	}
}

// end is the place in the window up to which it is looked whether there is enough: as far as
// whole orders go, and of a tub alone a month.
func (l *Lot) end(r *roster.Roster) int {
	h := r.Horizon
	if len(l.Supplies) == 0 {
		return min(h.Days, h.Today+month)
	}
	end := h.Days
	for _, x := range l.Supplies {
		first, last := x.period(h.Last())
		if last > h.Last() {
			end = min(end, int(first-h.From))
		}
	}
	return end
}

// month is how far ahead a tub is looked at that nothing fills again.
const month = 28

// Lot returns the lot of a prey, or nil.
func (r *Report) Lot(p plan.Prey) *Lot {
	i := slices.IndexFunc(r.Lots, func(l *Lot) bool { return l.Prey == p })
	if i < 0 {
		return nil
	}
	return r.Lots[i]
}

// Weekly is how many the meals take in each of so many weeks from the Monday before today on.
func (l *Lot) Weekly(h horizon.Horizon, weeks int) []int {
	out := make([]int, weeks)
	from := int(Monday(h.Now()) - h.From)
	for w := range out {
		for i := max(0, from+7*w); i < min(from+7*w+7, len(l.Use)); i++ {
			out[w] += l.Use[i]
		}
	}
	return out
}

// Monday is the Monday of the week of a day.
func Monday(d civil.Date) civil.Date { return d - (d-monday)%7 }

// Stores makes what is done for each store. lives are the lives of the plan's stores.
func (r *Report) Stores(of *roster.Roster, lives []*life.Enclosure) (out []*roster.Store) {
	for i, s := range r.Plan.Stores {
		t := tasks{r: r, of: of, store: s, there: of.Attended(s)}
		if l := r.Lot(s.Of); l != nil {
			t.make(l)
		}
		made, _ := of.Store(s, lives[i], t.chores, t.errands)
		out = append(out, made)
	}
	return out
}

// Fed reports whether any are fed from today on.
func (l *Lot) Fed(h horizon.Horizon) bool { return l.next(h.Today, h.Days) >= 0 }

// InPlan reports whether the plan says where a lot comes from.
func (l *Lot) InPlan() bool { return len(l.Supplies)+len(l.Tubs)+len(l.Cultures) > 0 }
