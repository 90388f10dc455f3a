package prove

import (
	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
)

// Limit is how long a gap may be, and by what.
type Limit struct {
	Days int
	// Alone says that it is the figure for an enclosure to which nobody comes, and
	// Again that it is half of it, since it had been left before.
	Alone, Again bool
	// Often says that it is the usual time though nobody comes, since they have been left
	// alone too often.
	Often bool
	// First says that it is the time from the first moult of young to their first meal.
	First bool
}

// They may be left for longer than usual on 42 of any 120 days: a holiday of three
// weeks with a stand-in twice a week passes, also with another week and some long
// weekends, and so does one of five. A stand-in twice a week for good is no holiday: it
// is how they are kept, and is judged by what they need (common practice, no source).
const (
	mostAlone = 42
	aloneOf   = 120
)

// left returns for how many days the enclosure may be left with a full dish from a day
// on, and by which figure: the shortest of its groups' figures, or not at all where a
// sheet has none.
func (w *prover) left(day int) (least int, by *plan.Figure) {
	least = -1
	for k := range w.stays {
		s := w.stays[k].at(day)
		if s == nil {
			continue
		}
		n, f := 0, w.stays[k].Sheet.Figure(schema.FigureUnattended, s.stage)
		if f != nil {
			n = wholeDays(f.Range.Low)
		}
		if least < 0 || n < least {
			least, by = n, f
		}
	}
	return max(least, 0), by
}

// unattended says how long the enclosure may be left, and on which days that counts.
func (w *prover) unattended(p *Proof, a asked) {
	if a.left > p.Allowed {
		p.Unattended, p.Alone, p.Nobody = a.left, a.alone, w.alone(p)
	}
}

// alone returns the days on which all those who meet a need are away with nobody in
// their place, and nobody else comes to the enclosure: one keeper's absence leaves no
// enclosure alone at which another stands every day. It is nil for none.
func (w *prover) alone(p *Proof) horizon.Days {
	var gone horizon.Days
	for _, x := range p.By {
		if x.Once != nil {
			continue
		}
		away := w.absent(x)
		if away == nil {
			return nil
		}
		if gone == nil {
			gone = away
		}
		gone.Keep(away)
	}
	for i := range w.entries {
		if gone != nil {
			gone.Subtract(opened(&w.entries[i]))
		}
	}
	return gone
}

// absent returns the days on which nobody comes for an entry, or only somebody who may
// not open the enclosure; nil for none.
func (w *prover) absent(x *roster.Entry) horizon.Days {
	d := w.s.People.Of(x.Keeper)
	if d == nil {
		return x.Shut.Clone()
	}
	out := d.Away.Clone()
	out.Subtract(d.Visits)
	if x.Shut != nil {
		out.Union(x.Shut)
	}
	return out
}

// opened returns the days of an entry without those on which the enclosure stays shut: a
// look from outside fills no dish.
func opened(x *roster.Entry) horizon.Days {
	if x.Shut == nil {
		return x.Days
	}
	out := x.Days.Clone()
	out.Subtract(x.Shut)
	return out
}

// rest is what animals have behind them that were left alone: when the last time ended
// that asks for as many days of care as they may be left, and the times that were longer
// than usual.
type rest struct {
	back  int
	times []Gap
}

// limit returns how long the time between two occasions may be. On days on which
// nobody comes the animals may be left longer. Half of that they bear again and
// again, as between two visits; more of it only once they have had as many days of
// care as usual since the last time; and neither for more of the days than a holiday has.
func (p *Proof) limit(g Gap, r *rest) Limit {
	if p.first > 0 && g.From == p.since {
		return Limit{Days: p.first, First: true}
	}
	usual := Limit{Days: p.Allowed}
	if p.Nobody == nil || !p.left(g) {
		return usual
	}
	out := usual
	if g.From-r.back+1 >= p.Unattended { // both of these days are days of care
		out = Limit{Days: p.Unattended, Alone: true}
	} else if half := p.repeated(); half > p.Allowed {
		out = Limit{Days: half, Alone: true, Again: true}
	}
	if n := p.length(g); n > p.Allowed && n <= out.Days && n+p.alone(r, g.To) > mostAlone {
		return Limit{Days: p.Allowed, Often: true}
	}
	return out
}

// alone returns on how many of the days before one they had been left for longer than
// usual.
func (p *Proof) alone(r *rest, until int) int {
	n := 0
	for _, g := range r.times {
		if g.To > until-aloneOf {
			n += p.length(g)
		}
	}
	return n
}

// note adds a time to what the animals have behind them.
func (r *rest) note(p *Proof, g Gap) {
	if p.Nobody == nil {
		return
	}
	n := p.length(g)
	if n > p.repeated() { // with the part that cannot be helped any more
		r.back = g.To
	}
	if n > p.Allowed && p.left(g) {
		r.times = append(r.times, g)
	}
}

// behind returns what they have behind them until a day, since they came.
func (p *Proof) behind(met horizon.Days, until int) rest {
	r := rest{back: longAgo}
	if p.Nobody == nil {
		return r
	}
	last := p.since
	if last < 0 {
		last = met.Next(0)
	}
	for last >= 0 && last < until {
		to := met.Next(last + 1)
		if to < 0 || to > until {
			break
		}
		r.note(p, Gap{last, to})
		last = to
	}
	return r
}

// left reports whether nobody comes on any day between two occasions.
func (p *Proof) left(g Gap) bool {
	some := false
	for d := g.From + 1; d < g.To; d++ {
		switch {
		case d < 0 || d >= len(p.Nobody)*64:
		case p.Nobody.Has(d):
			some = true
		case p.Excused == nil || !p.Excused.Has(d):
			return false
		}
	}
	return some
}

// repeated is how far apart visits may be again and again.
func (p *Proof) repeated() int { return max(p.Allowed, (p.Unattended+1)/2) }
