package roster

import "vivary/plan"

// Work is how long each of the people works on each day of the window, in minutes: what they
// do, for themselves or in another's place, and what it takes to begin each round in which they
// do anything. Rules and layouts read it, and nobody reckons it otherwise.
type Work map[string][]int

// Work returns how long everybody works on each day, from today on; "" is for what is nobody's
// in particular.
func (r *Roster) Work() Work {
	out := Work{}
	begun := map[*plan.Round]Work{} // of rounds that take time to begin
	of := func(w Work, who string) []int {
		if w[who] == nil {
			w[who] = make([]int, r.Horizon.Days)
		}
		return w[who]
	}
	for e := range r.All() {
		starts := e.Round.Start.Set()
		if starts && begun[e.Round] == nil {
			begun[e.Round] = Work{}
		}
		duty := r.People.Of(e.Keeper)
		own := of(out, e.Keeper)
		for d := e.Days.Next(r.Horizon.Today); d >= 0 && d < r.Horizon.Days; d = e.Days.Next(d + 1) {
			who, days := e.Keeper, own
			if duty != nil {
				other, there := r.Doer(e, d)
				if !there {
					continue
				}
				if who != other {
					who, days = other, of(out, other)
				}
			}
			days[d] += e.Minutes
			if starts {
				of(begun[e.Round], who)[d]++
			}
		}
	}
	for x, by := range begun {
		for who, times := range by {
			for d, n := range times {
				if n > 0 {
					out[who][d] += x.Starts()
				}
			}
		}
	}
	return out
}
