package compare

import (
	"slices"

	"vivary/compile/daylist"
	"vivary/compile/horizon"
	"vivary/compile/identity"
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
	if len(names) > 0 {
		text, means := w.people(names)
		w.add(fact{key: "who", topic: People, name: "looked after by", text: text, means: means, rank: unranked})
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
			dates := wording.Dates(run.Begun, run.Ends-1) + ": "
			text, means := w.comes(came)
			f := fact{key: "away " + first(w.r.Plan, name) + "/" + run.Begun.String(), topic: People, name: "while " + daylist.Shown(w.r.Plan, name) + " is away",
				text: dates + text, means: dates + means, days: between(h, run.From, run.To)}
			f.rank = float64(all - came.Count())
			w.add(f)
		}
	}
}

// people names keepers, and says who they are whatever they are called.
func (w *facts) people(names []string) (text, means string) {
	var shown, ids []string
	for _, name := range names {
		shown, ids = append(shown, daylist.Shown(w.r.Plan, name)), append(ids, first(w.r.Plan, name))
	}
	slices.Sort(shown)
	slices.Sort(ids)
	return wording.And(shown), wording.And(ids)
}

// comes says who comes on some days, and the same whatever they are called.
func (w *facts) comes(came horizon.Days) (text, means string) {
	if came.Empty() {
		return "nobody comes", "nobody comes"
	}
	var who []string
	for k := range w.r.Roster.Of[w.i] {
		e := &w.r.Roster.Of[w.i][k]
		for i := came.Next(0); i >= 0; i = came.Next(i + 1) {
			if !e.Shown.Has(i) {
				continue
			}
			if doer, ok := w.r.Roster.Doer(e, i); ok && doer != "" && !slices.Contains(who, doer) {
				who = append(who, doer)
			}
		}
	}
	on := ", on " + wording.Days(came.Count())
	if len(who) == 0 {
		return "somebody" + on, "somebody" + on
	}
	text, means = w.people(who)
	return text + on, means + on
}

// first is the first name of a keeper, which stays.
func first(c *plan.Collection, name string) string {
	if k := c.Keeper(name); k != nil {
		return identity.Keeper(k)
	}
	return name
}
