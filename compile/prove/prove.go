// Package prove shows, day by day over the horizon, that every need of every
// animal is met in time by somebody who is there. It schedules nothing and knows
// nothing of calendars: it counts local dates between the days on which a need is
// met, once holds and absences have been taken out.
package prove

import (
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/schedule"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Proof is the proof for one need of one group, or of a whole enclosure.
type Proof struct {
	Life    *life.Enclosure
	Group   *life.Group // nil for a need of the whole enclosure
	Need    *plan.Need
	Name    *schema.NeedName
	Allowed int // the longest time between two occasions, in days
	// Unattended is the longest time while nobody is there, in days, where the sheet
	// says that the animals may be left so long with a full dish; else Allowed.
	Unattended int

	// Missed is a time that was too long and is over with the first occasion on the
	// horizon, as the log or an absence shows; From = To where there is none.
	Missed Gap

	// Longest is the longest time found, in days, from the place From on the
	// horizon to To. From is -1 where it runs from the last occasion before the
	// horizon; To is the horizon's number of days where nothing follows.
	Longest, From, To int
	// Breach is the first time that is too long, as places on the horizon, or has
	// From = To where there is none.
	Breach Gap
	// By are the series that meet the need.
	By []*schedule.Series
	// Times is on how many days the need is met.
	Times int
	away  horizon.Days // days on which somebody who meets the need is absent
	// Excused are days on which the need does not hold: meals while an animal must
	// not be fed, for the reason of the hold.
	Excused horizon.Days
}

// Gap is a stretch of days without an occasion.
type Gap struct{ From, To int }

// Met reports whether the need is met on time throughout.
func (p *Proof) Met() bool { return p.Breach.From == p.Breach.To }

// Of proves the needs of one enclosure.
func Of(s *schedule.Schedule, i int) []Proof {
	l := s.Lives[i]
	sheet := l.Plan.Sheet
	if sheet == nil || len(l.Groups) == 0 {
		return nil
	}
	w := prover{s: s, life: l, series: s.Of[i]}
	for _, n := range shared(sheet, l, s) {
		w.need(n, nil)
	}
	for _, g := range l.Groups {
		if g.Count(s.Horizon.From) == 0 {
			continue
		}
		for _, n := range sheet.NeedsOf(g.Stage(s.Horizon.From)) {
			if n.What.OfGroup {
				w.need(n, g)
			}
		}
	}
	return w.out
}

// shared returns the needs of the whole enclosure: the strictest of those of its
// groups.
func shared(sheet *plan.SpeciesSheet, l *life.Enclosure, s *schedule.Schedule) []*plan.Need {
	var out []*plan.Need
	for _, g := range l.Groups {
		if g.Count(s.Horizon.From) == 0 {
			continue
		}
	next:
		for _, n := range sheet.NeedsOf(g.Stage(s.Horizon.From)) {
			if n.What.OfGroup {
				continue
			}
			for k, o := range out {
				if o.Name.V == n.Name.V {
					if n.Longest.V.Value < o.Longest.V.Value {
						out[k] = n
					}
					continue next
				}
			}
			out = append(out, n)
		}
	}
	return out
}

type prover struct {
	s      *schedule.Schedule
	life   *life.Enclosure
	series []schedule.Series
	out    []Proof
}

func (w *prover) need(n *plan.Need, g *life.Group) {
	name := n.What
	if !n.Longest.Set() || name.Heated && !w.life.Plan.Heated() {
		return
	}
	p := Proof{Life: w.life, Group: g, Need: n, Name: name, Allowed: max(1, int(n.Longest.V.Value/(24*60)))}
	p.Unattended = p.Allowed
	if !name.OfGroup {
		p.Unattended = max(p.Allowed, w.unattended())
	}
	met := w.s.Horizon.New()
	for i := range w.series {
		x := &w.series[i]
		if x.Kind.Needs != name && !(name == schema.NeedFood && x.Once != nil && x.Once.Meal) {
			continue
		}
		if g != nil && x.Group != nil && x.Group != g {
			continue
		}
		if g != nil && x.Group == nil && name.PerMeal {
			continue
		}
		p.By = append(p.By, x)
		met.Union(x.Days)
		if x.Left != nil {
			if p.away == nil {
				p.away = w.s.Horizon.New()
			}
			left := x.Left.Clone()
			if x.Passed != nil {
				left.Subtract(x.Passed) // somebody was there, and passed it over
			}
			p.away.Union(left)
		}
	}
	p.Times = met.Count()
	if name.PerMeal {
		w.leftovers(&p, met, g)
	} else {
		p.Excused = w.excused(name, g)
		p.longest(met, w.s.Horizon)
	}
	w.out = append(w.out, p)
}

// unattended returns how many days the enclosure may be left with a full dish: the
// shortest of its groups' figures, or 0 where a sheet has none.
func (w *prover) unattended() int {
	least := -1
	for _, g := range w.life.Groups {
		n := 0
		if f := w.life.Plan.Sheet.Figure(schema.FigureUnattended, g.Stage(w.s.Horizon.From)); f != nil {
			n = int(f.Range.Low / (24 * 60))
		}
		if least < 0 || n < least {
			least = n
		}
	}
	return max(0, least)
}

// allowed returns how long a gap may be. While nobody is there the animals may be
// left longer. Half of that they bear again and again, as between two visits; more
// of it only once they have had as many days of care as usual since the last time,
// which ended at back.
func (p *Proof) allowed(from, to, back int) int {
	if p.away == nil || p.Unattended <= p.Allowed {
		return p.Allowed
	}
	if d := p.away.Next(from + 1); d < 0 || d >= to {
		return p.Allowed
	}
	if from-back >= p.Unattended {
		return p.Unattended
	}
	return max(p.Allowed, (p.Unattended+1)/2)
}

// excused returns the days on which a hold keeps a need from being met for the
// animals' own good, or nil for none. No hold excuses for ever: one that nobody
// ends in the log is looked into.
func (w *prover) excused(need *schema.NeedName, g *life.Group) horizon.Days {
	var out horizon.Days
	h := w.s.Horizon
	add := func(holds []life.Hold, most int) {
		for i := range holds {
			x := &holds[i]
			if !Holds(x, need) || most <= 0 {
				continue
			}
			if out == nil {
				out = h.New()
			}
			out.AddRun(int(x.From-h.From), int(min(x.Until, x.From+civil.Date(most))-h.From), h.Days)
		}
	}
	add(w.life.Holds, w.season(need, g))
	for _, x := range w.life.Groups {
		if g == nil || g == x {
			add(x.Holds, w.fast(x))
		}
	}
	return out
}

// longestSeason is how many days a season may excuse, and longestFast how many a
// hold may, where the sheet has no figure. Common practice, no source.
const (
	longestSeason = 180
	longestFast   = 30
)

// season returns for how many days a season excuses a need. A cool rest is for
// species that take one, and not for their young; water and damp it never excuses.
func (w *prover) season(need *schema.NeedName, g *life.Group) int {
	switch {
	case need.Heated:
		return longestSeason
	case need != schema.NeedFood || w.life.Plan.Sheet.Figure(schema.FigureWinterRest, "") == nil:
		return 0
	}
	if stage := g.Stage(w.s.Horizon.From); stage == "young" || stage == "newborn" {
		return 0
	}
	return longestSeason
}

// fast returns for how many days a hold excuses a group: the fast after which its
// sheet would have it looked into.
func (w *prover) fast(g *life.Group) int {
	if f := w.life.Plan.Sheet.Figure(schema.FigureFastAlarm, g.Stage(w.s.Horizon.From)); f != nil {
		return int(f.Range.High / (24 * 60))
	}
	return longestFast
}

// Holds reports whether a hold takes out care that meets a need.
func Holds(h *life.Hold, need *schema.NeedName) bool {
	for _, k := range schema.CareKinds {
		if k.Needs == need && h.What.Takes(k) {
			return true
		}
	}
	return false
}

// lastDone returns when the need was last met before the horizon, as a place on
// it. What was due before counts as done, unless the log or an absence shows that
// all that could meet it was left undone.
func (p *Proof) lastDone(from civil.Date) int {
	last := -1
	for k, s := range p.By {
		if !s.Owed {
			return -1
		}
		if at := int(s.Last - from); k == 0 || at > last {
			last = at
		}
	}
	return last
}

// longest finds the longest time between two days of met, and the first that is
// too long. Time runs from the day before the horizon: what was due before it
// counts as done. Excused days are not counted.
func (p *Proof) longest(met horizon.Days, h horizon.Horizon) {
	if p.Times == h.Days && p.lastDone(h.From) == -1 {
		p.Longest, p.From, p.To = 1, -1, 0 // every day, as most care is
		return
	}
	last, days := p.lastDone(h.From), h.Days
	back := -days // the end of the last time when nobody was there
	for {
		next := met.Next(last + 1)
		to := next
		if next < 0 || next >= days {
			to = days
		}
		gap := to - last
		if p.Excused != nil {
			for d := max(0, last+1); d < to; d++ {
				if p.Excused.Has(d) {
					gap--
				}
			}
		}
		if to == days {
			// Nothing is known of the days after the horizon: the need is broken
			// only if it is broken before its end.
			gap--
		}
		most := p.allowed(last, to, back)
		switch {
		case last < -1 && to <= 1:
			// It is met at the next occasion there is: no plan makes it sooner.
			if gap > most {
				p.Missed = Gap{last, to}
			}
		default:
			if gap > p.Longest {
				p.Longest, p.From, p.To = gap, last, to
			}
			if gap > most && p.Met() {
				p.Breach = Gap{last, to}
			}
		}
		if to == days {
			return
		}
		if gap > max(p.Allowed, (p.Unattended+1)/2) {
			back = to
		}
		last = to
	}
}

// leftovers looks whether each live meal is followed in time by a look for what
// is left of it. A meal so near the end that its look lies beyond is passed over.
func (w *prover) leftovers(p *Proof, met horizon.Days, g *life.Group) {
	for i := range w.series {
		x := &w.series[i]
		if x.Kind != schema.KindFeed || x.Group != g || x.Meal == nil || x.Meal.Killed.V {
			continue
		}
		for d := x.Days.Next(0); d >= 0; d = x.Days.Next(d + 1) {
			if x.Killed != nil && x.Killed.Has(d) {
				continue
			}
			to := met.Next(d + 1)
			if to < 0 {
				to = w.s.Horizon.Days
				if to-d <= p.Allowed {
					continue
				}
			}
			if to-d > p.Longest {
				p.Longest, p.From, p.To = to-d, d, to
			}
			if to-d > p.Allowed && p.Met() {
				p.Breach = Gap{d, to}
			}
		}
	}
}
