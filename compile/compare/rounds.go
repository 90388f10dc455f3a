package compare

import (
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/identity"
	"vivary/plan"
	"vivary/schema/wording"
)

// Walk is what changes of a round itself.
type Walk struct {
	Round   string // by name
	Shown   string
	Was, Is string // its time, whose it is, within how long it is done and what it takes to begin; "" where it is not there
	Cause   []int
}

// rounds compares the rounds of the plans.
func (r *Report) rounds() {
	was := map[string]*plan.Round{}
	for _, x := range plan.Wholes(r.Was.Plan.Rounds) {
		was[identity.Round(x)] = x
	}
	add := func(o, x *plan.Round) {
		w := Walk{}
		var was, is string // whatever its keeper is called
		if o != nil {
			w.Round, w.Shown, w.Was = o.Name.V, o.Shown(), told(r.Was, o, daylist.Shown)
			was = told(r.Was, o, first)
		}
		if x != nil {
			w.Round, w.Shown, w.Is = x.Name.V, x.Shown(), told(r.Is, x, daylist.Shown)
			is = told(r.Is, x, first)
		}
		if was == is {
			return
		}
		for i := range r.Pieces {
			p := &r.Pieces[i]
			if p.Type == "round" && (p.Name == w.Round || o != nil && p.Name == o.Name.V) || p.Type == "rota" && byRota(p.Name, o, x) {
				w.Cause = append(w.Cause, i)
			}
		}
		r.Rounds = append(r.Rounds, w)
	}
	for _, x := range plan.Wholes(r.Is.Plan.Rounds) {
		id := identity.Round(x)
		add(was[id], x)
		delete(was, id)
	}
	for _, x := range plan.Wholes(r.Was.Plan.Rounds) {
		if was[identity.Round(x)] == x {
			add(x, nil)
		}
	}
}

// byRota reports whether a round goes by a rota, or went by it.
func byRota(rota string, was, is *plan.Round) bool {
	return was != nil && was.Rota.V == rota || is != nil && is.Rota.V == rota
}

// told says when a round is, whose it is and how long it may take.
func told(r *compile.Result, x *plan.Round, keeper func(*plan.Collection, string) string) string {
	parts := []string{"at " + wording.Clock(x.Clock.V, r.Plan.Units)}
	if len(x.On) > 0 {
		var days []string
		for _, d := range x.On {
			days = append(days, d.V.String())
		}
		slices.Sort(days)
		parts = append(parts, "on "+wording.And(days))
	}
	if x.Keeper.Set() {
		parts = append(parts, keeper(r.Plan, x.Keeper.V))
	}
	if x.Turns != nil {
		var names []string
		for _, part := range r.Roster.Parts(x) {
			if part.Of != nil {
				ahead := r.Roster.HeldOn(part).CountFrom(r.Horizon.Today)
				names = append(names, keeper(r.Plan, part.Keeper.V)+" on "+wording.Days(ahead))
			}
		}
		slices.Sort(names)
		if len(names) > 0 {
			parts = append(parts, "by its rota "+wording.And(names))
		}
	}
	if x.Within.Set() {
		parts = append(parts, "within "+x.Within.V.String())
	}
	if x.Start.Set() {
		parts = append(parts, x.Start.V.String()+" to begin")
	}
	return strings.Join(parts, ", ")
}
