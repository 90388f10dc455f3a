package prove

import (
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
)

// longestSeason is how many days of a year a season may excuse. Common practice, no
// source: cool rests of three to six months are usual.
const longestSeason = 180

// excuse finds the days on which a hold keeps a need from being met for the animals'
// own good. A hold of a group excuses for as long as it lasts, also where the plan tells
// of it without a day, as of young with their mother: it is asked about until the log
// answers, and a proof that spoke of it would ask the plan for what only the log can tell.
// Seasons are the plan's, and have an end.
func (w *prover) excuse(p *Proof, a asked, met horizon.Days) {
	w.seasons(p, a)
	for _, g := range w.life.Groups {
		if a.group != nil && a.group != g {
			continue
		}
		for i := range g.Holds {
			switch x := &g.Holds[i]; {
			case !Holds(x, p.Name):
				if thins(x, p.Name) {
					w.rhythm(p, x, met)
				}
			case x.State.Name == schema.StateRefused.Name:
				// It never makes the time between two offers longer than it may be.
				w.add(&p.paused, x)
			default:
				w.add(&p.Excused, x)
				w.add(&p.Seen, x)
			}
		}
	}
	if p.first > 0 && p.Excused != nil {
		// The limit for the first meal has the days in it on which they cannot eat yet.
		in := w.s.Horizon.New()
		in.AddRun(p.since, p.since+p.first+1, w.s.Horizon.Days)
		p.Excused.Subtract(in)
	}
}

// rhythm excuses, after each meal in a state that thins them, the days on which there may
// be no other: the next comes with the plan's own rhythm after that.
func (w *prover) rhythm(p *Proof, x *life.Hold, met horizon.Days) {
	h, every := w.s.Horizon, x.State.May[schema.RowKilled].Every
	until := min(int(x.Until-h.From), h.Days)
	for d := met.Next(max(0, int(x.From-h.From))); d >= 0 && d < until; d = met.Next(d + 1) {
		rest := *x
		rest.From, rest.Until = h.Date(d)+1, h.Date(min(d+every, until-1))
		if d+every >= until {
			rest.Until = x.Until
		}
		w.add(&p.Excused, &rest)
		w.add(&p.Seen, &rest)
	}
}

// add adds the days of a hold to a set, which is nil while it is empty.
func (w *prover) add(to *horizon.Days, x *life.Hold) {
	h := w.s.Horizon
	if *to == nil {
		*to = h.New()
	}
	to.AddRun(int(x.From-h.From), int(x.Until-h.From), h.Days)
}

// seasons adds the days of seasons: no more than so many in any 365 days, however many
// seasons there are.
func (w *prover) seasons(p *Proof, a asked) {
	h := w.s.Horizon
	most := season(p.Name, a)
	if most == 0 {
		return
	}
	var taken []civil.Date // in the 365 days before
	next := civil.Date(0)
	for i := range w.life.Holds {
		x := &w.life.Holds[i]
		if !Holds(x, p.Name) || p.Name == schema.NeedFood && !x.Cool {
			continue
		}
		for d := max(x.From, h.From-365, next); d < min(x.Until, h.Last()+1); d++ {
			next = d + 1
			for len(taken) > 0 && taken[0] <= d-365 {
				taken = taken[1:]
			}
			if len(taken) == most {
				continue
			}
			if taken = append(taken, d); d < h.From {
				continue
			}
			if p.Excused == nil {
				p.Excused = h.New()
			}
			p.Excused.Add(int(d - h.From))
		}
	}
}

// season returns for how many days of a year a season excuses a need. A cool rest is
// for species that take one, and not for their young; water and damp it never excuses.
func season(need *schema.NeedName, a asked) int {
	switch {
	case need.Heated:
		return longestSeason
	case need != schema.NeedFood || !life.Rests(a.group.Sheet):
		return 0
	case a.stage == "young" || a.stage == newborn:
		return 0
	}
	return longestSeason
}

// Holds reports whether a hold takes out care that meets a need.
func Holds(h *life.Hold, need *schema.NeedName) bool {
	for _, k := range schema.CareKinds {
		if k.Needs == need && h.Takes(k) {
			return true
		}
	}
	return false
}

// thins reports whether a hold that the log brought lets a meal be offered only every so
// many days: what falls out between them excuses nothing, and is not the plan's alone.
func thins(h *life.Hold, need *schema.NeedName) bool {
	return need == schema.NeedFood && h.From > 0 && h.State.May[schema.RowKilled].Every > 0
}

// excuses reports whether a day of a gap is excused.
func (p *Proof) excuses(g Gap) bool { return touches(p.Excused, g) }

// soft reports whether a hold has a part in a gap, so that it is not the plan's alone.
func (p *Proof) soft(g Gap) bool { return touches(p.Excused, g) || touches(p.paused, g) }

// touches reports whether a day of a gap is in a set.
func touches(days horizon.Days, g Gap) bool {
	if days == nil {
		return false
	}
	d := days.Next(max(0, g.From))
	return d >= 0 && d < g.To
}
