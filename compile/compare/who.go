package compare

import (
	"slices"

	"vivary/compile/horizon"
	"vivary/plan"
	"vivary/schema/wording"
)

// who is who looks after an enclosure, who comes in their place, and on how many days nobody
// comes.
func (w *facts) who() {
	h, r := w.r.Horizon, w.r.Roster
	by := map[string]horizon.Days{}
	someone := h.New()
	for k := range r.Of[w.i] {
		e := &r.Of[w.i][k]
		if e.Once != nil || e.Ask != nil {
			continue
		}
		if by[e.Keeper] == nil {
			by[e.Keeper] = h.New()
		}
		by[e.Keeper].Union(e.Shown)
		someone.Union(e.Shown)
	}
	var names []string
	for name := range by {
		if name != "" {
			names = append(names, name)
		}
	}
	slices.Sort(names)
	for i, name := range names {
		names[i] = keeper(w.r.Plan, name)
	}
	if len(names) > 0 {
		w.add(fact{key: "who", topic: People, name: "looked after by", text: wording.And(names), rank: unranked})
	}
	for name := range by {
		d := r.People.Of(name)
		if d == nil {
			continue
		}
		for _, run := range d.Runs {
			if run.To <= h.Today {
				continue
			}
			came := between(h, max(run.From, h.Today), run.To)
			all := came.Count()
			came.Keep(someone)
			f := fact{key: "away " + name + "/" + run.Begun.String(), topic: People, name: "while " + keeper(w.r.Plan, name) + " is away",
				text: wording.Dates(run.Begun, run.Ends-1) + ": " + w.comes(came), days: between(h, run.From, run.To)}
			f.rank = float64(all - came.Count())
			w.add(f)
		}
	}
}

// comes says who comes on some days.
func (w *facts) comes(came horizon.Days) string {
	if came.Empty() {
		return "nobody comes"
	}
	var who []string
	for k := range w.r.Roster.Of[w.i] {
		e := &w.r.Roster.Of[w.i][k]
		for i := came.Next(0); i >= 0; i = came.Next(i + 1) {
			if !e.Shown.Has(i) {
				continue
			}
			if doer, ok := w.r.Roster.Doer(e, i); ok && doer != "" && !contains(who, doer) {
				who = append(who, doer)
			}
		}
	}
	slices.Sort(who)
	for i := range who {
		who[i] = keeper(w.r.Plan, who[i])
	}
	if len(who) == 0 {
		who = []string{"somebody"}
	}
	return wording.And(who) + ", on " + wording.Days(came.Count())
}

// keeper is what people call a keeper.
func keeper(c *plan.Collection, name string) string {
	if k := c.Keeper(name); k != nil {
		return k.Shown()
	}
	return name
}
