package prove

import (
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
)

const (
	// longestSeason is how many days of a year a season may excuse. Common practice, no
	// source: cool rests of three to six months are usual.
	longestSeason = 180
	// longestTold is how many days what the plan alone tells without a day, such as young
	// with their mother, may excuse from today on, where the sheet has no figure for a
	// fast. Common practice, no source.
	longestTold = 30
)

// excuse finds the days on which a hold keeps a need from being met for the animals'
// own good. What the log brings excuses for as long as it lasts: it is asked about until
// it is answered, and a proof that spoke of it would ask the plan for what only the log
// can tell. Where the plan alone keeps food away there is an end to it; the rest, such as
// a spot clean round young on their mother, waits for the word that the round asks for.
func (w *prover) excuse(p *Proof, a asked, met horizon.Days) {
	w.seasons(p, a)
	told := longestTold
	if a.fast != nil {
		told = wholeDays(a.fast.Range.High)
	}
	for _, g := range w.life.Groups {
		if a.group != nil && a.group != g {
			continue
		}
		for i := range g.Holds {
			switch x := &g.Holds[i]; {
			case w.thins(x, p.Name):
				w.rhythm(p, x, met)
			case !Holds(x, p.Name):
			case x.State.Name == schema.StateRefused.Name:
				// It never makes the time between two offers longer than it may be.
				w.add(&p.paused, x)
			default:
				w.excused(p, x, told)
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

// excused adds the days of a hold of a group.
func (w *prover) excused(p *Proof, x *life.Hold, told int) {
	if x.From == 0 && p.Name == schema.NeedFood { // the plan tells it
		cut := *x
		cut.Until = min(x.Until, w.s.Horizon.Now()+civil.Date(told))
		w.add(&p.Excused, &cut)
		return
	}
	w.add(&p.Excused, x)
	if x.From != 0 {
		w.add(&p.Seen, x)
	}
}

// thins reports whether a state lets a meal be given only every so many days, however
// often the plan has it.
func (w *prover) thins(x *life.Hold, need *schema.NeedName) bool {
	m := x.State.May[schema.RowKilled]
	return need == schema.NeedFood && !x.Part && m.Every > 1 && m.Manner != schema.Held
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
		if x.From != 0 {
			w.add(&p.Seen, &rest)
		}
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
