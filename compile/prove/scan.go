package prove

import (
	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/schema"
)

// scan finds the longest time between two days of met that ends on a day of the proof,
// and the first that is too long.
func (p *Proof) scan(met horizon.Days, h horizon.Horizon) {
	last := p.lastDone(met, h)
	if p.Times == p.End-p.Begin && last == p.Begin-1 {
		p.Longest, p.From, p.To = 1, last, p.Begin // every day, as most care is
		return
	}
	behind := p.behind(met, last)
	for last < p.End {
		to := met.Next(max(p.Begin, last+1))
		if to < 0 || to > p.End {
			to = p.End
		}
		g := Gap{last, to}
		p.judge(g, p.limit(g, &behind))
		behind.note(p, g)
		last = to
	}
}

// judge compares a time with its limit.
func (p *Proof) judge(g Gap, most Limit) {
	gap := p.judged(g)
	if g.From < p.today && p.length(Gap{g.From, p.today}) > most.Days && p.happened(g.From) {
		// No plan makes it sooner than today; from then on the plan is asked, for no
		// more than what holds on any day.
		if p.Begin == p.today {
			p.Missed, p.Late = g, most
		}
		g.From, most = p.today-1, Limit{Days: p.Allowed}
		gap = p.judged(g)
	} else if gap > p.Longest {
		p.Longest, p.From, p.To = gap, g.From, g.To
	}
	// One that ends today is over: of two alike that is told which can still be mended.
	over := p.Breach.To <= p.today && g.To > p.today && p.soft(p.Breach) == p.soft(g)
	if gap > most.Days && !p.soft(g) && g.From >= p.today {
		p.again = append(p.again, tooLong{g, most})
	}
	if gap > most.Days && (p.Met() || over || p.soft(p.Breach) && !p.soft(g)) {
		p.Breach, p.Limit = g, most
	}
}

// judged is the length of a gap as far as it is known: of what comes after the days of
// the proof nothing is, and the need is broken only if it is before.
func (p *Proof) judged(g Gap) int {
	n := p.length(g)
	if g.To == p.End {
		n--
	}
	return n
}

// length is a gap without the days that are excused.
func (p *Proof) length(g Gap) int { return g.To - g.From - within(p.Excused, g) }

// within returns how many days of a set lie between two occasions.
func within(days horizon.Days, g Gap) int {
	if days == nil {
		return 0
	}
	return days.CountFrom(g.From+1) - days.CountFrom(g.To)
}

// lastDone returns the last occasion before the days of the proof. Where none is known
// it is yesterday: what was due before counts as done, up to the first day on which the
// log or an absence shows that it was left undone. It is never before the need began; where
// that was before the window it says nothing, for what was done then is not known.
func (p *Proof) lastDone(met horizon.Days, h horizon.Horizon) int {
	if last := met.Last(p.Begin); last >= 0 {
		return max(last, p.since)
	}
	if p.since >= -1 {
		return p.since
	}
	first := p.today
	for _, x := range p.By {
		for k := range x.Causes {
			switch c := &x.Causes[k]; {
			case !undone(c) || c.Days.Next(0) < 0:
			case c.Away != nil && c.Away.From.V < h.From:
				return -1 // since before all that is known
			default:
				first = min(first, c.Days.Next(0))
			}
		}
	}
	return first - 1
}

// undone reports whether a reason is a fact of what was not done, and not of how the
// plan has it on such days.
func undone(c *roster.Cause) bool {
	switch c.Why {
	case roster.Skipped, roster.Nobody, roster.Waits, roster.LeftIn, roster.Held, roster.Untrained, roster.TooFew, roster.NotOn:
		return true
	}
	return c.Why == roster.NoRound && c.Dates != nil
}

// happened reports whether what passed since day from is known to have been so: the
// last feeds showed it, or the log or an absence took care out, or the log says since
// when they live here. What only follows from how often the plan has it is for the plan
// to mend.
func (p *Proof) happened(from int) bool {
	if p.told || from < 0 || p.Group != nil && p.Group.Logged && from == p.since {
		return true
	}
	for _, x := range p.By {
		for k := range x.Causes {
			c := &x.Causes[k]
			if i := c.Days.Next(from); undone(c) && i >= 0 && i < p.today {
				return true
			}
		}
	}
	return false
}

// leftovers looks whether each live meal is followed in time by a look for what
// is left of it. A meal so near the end that its look lies beyond is passed over, and
// one of the days before today whose look was due before.
func (w *prover) leftovers(p *Proof, met horizon.Days) {
	p.Limit = Limit{Days: p.Allowed}
	begin := p.Begin
	if begin == p.today {
		begin = max(0, p.since+1, p.today-p.Allowed)
	}
	for i := range w.entries {
		x := &w.entries[i]
		if x.Kind != schema.KindFeed || x.Group != p.Group || x.Meal == nil || x.Meal.Killed.V {
			continue
		}
		for d := x.Days.Next(begin); d >= 0 && d < p.End; d = x.Days.Next(d + 1) {
			if x.Killed != nil && x.Killed.Has(d) || d >= p.today && !x.Shown.Has(d) {
				continue // nothing is left of it, or nobody is told to give it
			}
			to := met.Next(d + 1)
			if to < 0 {
				to = w.s.Horizon.Days
				if to-d <= p.Allowed {
					continue
				}
			}
			if to < p.today {
				continue
			}
			if to-d > p.Longest {
				p.Longest, p.From, p.To = to-d, d, to
			}
			if to-d > p.Allowed && d >= p.today && to < w.s.Horizon.Days {
				p.again = append(p.again, tooLong{Gap{d, to}, p.Limit})
			}
			if to-d > p.Allowed && p.Met() {
				p.Breach = Gap{d, to}
			}
		}
	}
}
