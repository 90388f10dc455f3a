package prove_test

import (
	"math/rand/v2"

	"vivary/compile"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// What is so on a day, read off the plan and the animals for the count.

// meets reports whether an entry is for a need.
func meets(s *roster.Entry, p *prove.Proof) bool {
	all := s.Group == nil && p.Name.Name != "leftovers" // what is left is of one meal
	return s.Kind.Needs == p.Name && (p.Group == nil || all || s.Group == p.Group)
}

// occasions are the days on which a need is met: those that stood before today, those
// that are shown from today on, and what the log has.
func occasions(r *compile.Result, p *prove.Proof) []bool {
	met := make([]bool, r.Horizon.Days)
	for s := range r.Roster.All() {
		if !meets(s, p) {
			continue
		}
		for d := range met {
			met[d] = met[d] || d == s.Logged || s.Shown.Has(d) || d < r.Horizon.Today && s.Days.Has(d)
		}
	}
	for d := range met {
		for i := 0; p.Name.Name == "food" && i < len(p.Group.Holds); i++ {
			x := p.Group.Holds[i] // a refusal is an offer
			met[d] = met[d] || x.State == schema.StateRefused && x.From == r.Horizon.Date(d+1)
		}
	}
	return met
}

// nobody reports whether nobody comes to the enclosure on a day, since all of those who
// meet the need are away: read off the away blocks of the plan.
func nobody(r *compile.Result, p *prove.Proof, d int) bool {
	left := false
	for s := range r.Roster.All() {
		if s.Days.Has(d) {
			return false
		}
		if s.Once != nil || !meets(s, p) {
			continue
		}
		if left = s.Keeper != "" && gone(r, s.Keeper, d) && !covered(r, s.Keeper, d); !left {
			return false
		}
	}
	return left
}

func gone(r *compile.Result, keeper string, d int) bool {
	on := r.Horizon.Date(d)
	for _, a := range r.Plan.Aways {
		if a.Name.V == keeper && a.From.V <= on && on < a.To.V {
			return true
		}
	}
	return false
}

// covered reports whether somebody who is there stands in for a keeper on a day.
func covered(r *compile.Result, keeper string, d int) bool {
	on := r.Horizon.Date(d)
	for _, a := range r.Plan.Aways {
		if a.Name.V != keeper || on < a.From.V || on >= a.To.V || !a.Cover.Set() || gone(r, a.Cover.V, d) {
			continue
		}
		comes := len(a.Visits) == 0
		for _, v := range a.Visits {
			_, _, inMonth := on.YMD()
			comes = comes || v.V.Kind == plan.EachWeekday && v.V.Weekday == on.Weekday() || v.V.Kind == plan.DayOfMonth && v.V.Day == inMonth
		}
		if comes {
			return true
		}
	}
	return false
}

// anyState holds any of the rows that a need may depend on.
func anyState(rng *rand.Rand) *schema.State {
	s := &schema.State{Name: "any"}
	for _, r := range []schema.Row{schema.RowLive, schema.RowKilled, schema.RowMist, schema.RowDevice, schema.RowDeep} {
		if rng.IntN(2) == 0 {
			s.May[r].Manner = schema.Held
		}
	}
	if rng.IntN(2) == 0 {
		s.May[schema.RowKilled].Every = 2 + rng.IntN(8)
	}
	return s
}

// thinned reports whether on a day no meal may be given yet, since one was given in a state
// that allows one every so many days.
func thinned(r *compile.Result, p *prove.Proof, met []bool, d int) bool {
	if p.Name.Name != "food" {
		return false
	}
	for _, h := range p.Group.Holds {
		m, first := h.State.May[schema.RowKilled], max(0, int(h.From-r.Horizon.From))
		if m.Manner == schema.Held || d >= int(h.Until-r.Horizon.From) {
			continue
		}
		for at := max(first, d-m.Every+1); at < d; at++ {
			if met[at] {
				return true
			}
		}
	}
	return false
}

// waits reports whether a need waits on a day, because an animal must not be
// disturbed for it.
func waits(r *compile.Result, p *prove.Proof, d civil.Date) bool {
	row := map[string]schema.Row{"food": schema.RowKilled, "moisture": schema.RowMist, "device-test": schema.RowDevice}[p.Name.Name]
	if row == schema.RowFree {
		return false
	}
	// A season excuses meals of grown animals that take a cool rest, and the test of a
	// heater that is off: on half of the days of a year.
	rests := p.Name.Name == "food" && p.Group.Sheet.Figure(schema.FigureWinterRest, "") != nil && p.Stage != "young"
	if (rests || p.Name.Name == "device-test") && resting(r, row)[d-r.Horizon.From+365] {
		return true
	}
	for _, g := range r.Lives[0].Groups {
		if p.Group != nil && p.Group != g {
			continue
		}
		told := 30
		if f := g.Sheet.Figure(schema.FigureFastAlarm, p.Stage); f != nil && p.Group != nil {
			told = int(f.Range.High / (24 * 60))
		}
		for _, h := range g.Holds {
			switch {
			case !h.Out(row) || h.State == schema.StateRefused || d < h.From || d >= h.Until:
			case h.From > 0 || p.Name.Name != "food" || d < r.Today+civil.Date(told):
				return true
			}
		}
	}
	return false
}

// rested keeps the days of rest of the last enclosure that was asked for.
var rested struct {
	of   *compile.Result
	days map[schema.Row][]bool
}

// resting returns the days, from a year before the window on, on which seasons excuse what
// is in a row of the table.
func resting(r *compile.Result, row schema.Row) []bool {
	if rested.of != r {
		rested.of, rested.days = r, map[schema.Row][]bool{}
	}
	if out := rested.days[row]; out != nil {
		return out
	}
	out, before := make([]bool, 365+r.Horizon.Days), 0
	for i := range out {
		in, d := false, r.Horizon.From+civil.Date(i-365)
		for _, h := range r.Lives[0].Holds {
			in = in || h.Out(row) && (h.Cool || row != schema.RowKilled) && h.From <= d && d < h.Until
		}
		if i >= 365 {
			before -= one(out[i-365])
		}
		out[i] = in && before < 180
		before += one(out[i])
	}
	rested.days[row] = out
	return out
}

// figures returns how long a time may be, and how long while nobody is there: the
// strictest of those of the groups on the first day of the proof.
func figures(r *compile.Result, p *prove.Proof) (allowed, unattended int) {
	allowed, unattended = 1<<30, 1<<30
	for _, g := range r.Lives[0].Groups {
		if p.Group != nil && p.Group != g || !lives(r, g, p.Begin) {
			continue
		}
		stage := g.Stage(r.Horizon.Date(p.Begin))
		for _, n := range g.Sheet.NeedsOf(stage) {
			if n.Name.V == p.Name.Name {
				allowed = min(allowed, int(n.Longest.V.Value/(24*60)))
			}
		}
		days := 0
		if f := g.Sheet.Figure(schema.FigureUnattended, stage); f != nil {
			days = int(f.Range.Low / (24 * 60))
		}
		unattended = min(unattended, days)
	}
	if p.Group != nil {
		unattended = 0
	}
	return allowed, unattended
}

// countLeftovers looks, for each live meal, at every day after it.
func countLeftovers(r *compile.Result, p *prove.Proof) result {
	n, today := r.Horizon.Days, r.Horizon.Today
	look := occasions(r, p)
	allowed, _ := figures(r, p)
	out := result{Limit: prove.Limit{Days: allowed}}
	since, _ := began(r, p)
	for d := p.Begin; d < p.End; d++ {
		out.Times += one(look[d])
	}
	for s := range r.Roster.All() {
		if s.Kind.Name != "feed" || s.Group != p.Group || s.Once != nil {
			continue
		}
		from := p.Begin
		if from == today {
			from = max(0, since+1, today-allowed)
		}
		for d := from; d < p.End; d++ {
			if !s.Days.Has(d) || s.Killed != nil && s.Killed.Has(d) || d >= today && !s.Shown.Has(d) {
				continue // nobody who is told of no meal looks after it
			}
			to := d + 1
			for to < n && !look[to] {
				to++
			}
			if to < today || to == n && n-d <= allowed {
				continue
			}
			if to-d > out.Longest {
				out.Longest, out.From, out.To = to-d, d, to
			}
			if to-d > allowed && out.Breach == (prove.Gap{}) {
				out.Breach = prove.Gap{From: d, To: to}
			}
		}
	}
	return out
}
