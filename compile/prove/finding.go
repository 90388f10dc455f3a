package prove

import (
	"slices"

	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
)

// Findings returns a finding for each need that is not met in time: what comes again and
// again, else its first breach, with dates, the cause, the limit that decided and what
// would mend it.
func Findings(s *roster.Roster, proofs []Proof) []finding.Finding {
	var l finding.List
	for i := range proofs {
		p := &proofs[i]
		if slices.ContainsFunc(p.By, func(x *roster.Entry) bool { return x.Timing != nil && x.Timing.Unsure }) {
			continue // what it lacks may stand where the text could not be read
		}
		if !p.Met() {
			first := p.breach(s)
			b := p.steady(s)
			if b == nil {
				b = first
			}
			f := b.finding()
			f.First = first.first()
			if b != first {
				f.Text = b.textAgain()
			}
			l.Soft(f, b.severity())
		}
		if p.Missed.From != p.Missed.To && !p.goesOn() {
			l.Soft(p.missed(s))
		}
	}
	return l.All
}

// goesOn reports whether what is too long already is what the plan goes on with: then it
// is said as one.
func (p *Proof) goesOn() bool { return !p.Met() && p.Missed.To == p.Breach.To }

// whole is the time of a breach with what of it was before.
func (p *Proof) whole() Gap {
	if p.goesOn() {
		return Gap{p.Missed.From, p.Breach.To}
	}
	return p.Breach
}

// breach is a breach with what decided it.
type breach struct {
	*Proof
	s *roster.Roster
	cause
}

// cause is what decided a breach: one of these, looked for in this order.
type cause struct {
	nothing     bool          // no care meets the need
	unshown     *roster.Entry // care that nobody is shown
	away        *plan.Away    // an absence
	keepers     bool          // and nobody who stands in does this care
	unfit       *roster.Cause // and whoever is there may not do it
	dates       *roster.Cause // dates that the plan leaves out
	noRound     *roster.Entry // care of a day on which its round is not held
	held        []*life.Hold  // holds that took an occasion out, or on whose days it does not hold
	skipped     bool          // the log says that it was not done
	shownBefore bool          // the last feeds showed it on other days
}

func (p *Proof) breach(s *roster.Roster) *breach {
	b := &breach{Proof: p, s: s}
	b.nothing = len(p.By) == 0
	for _, x := range p.By {
		if i := x.Unshown(max(p.today, p.Breach.From+1)); b.unshown == nil && i >= 0 && i < p.Breach.To {
			b.unshown = x
		}
		for k := range x.Causes {
			b.causedBy(x, &x.Causes[k])
		}
	}
	if b.away != nil {
		b.away = b.stillAway(b.away)
	}
	b.excusedBy()
	b.shownBefore = s.Told != nil && p.Breach.From < p.today && p.Breach.To > p.today && !b.skipped
	return b
}

// stillAway returns the block by which a keeper is away on the first day that is too
// late: of several that follow one another it is the one that can be changed.
func (b *breach) stillAway(first *plan.Away) *plan.Away {
	out, late := first, b.s.Horizon.Date(b.Breach.From+b.Limit.Days)
	for _, r := range b.s.People.Of(first.Name.V).Runs {
		for _, a := range r.Blocks {
			if a.From.V <= late && late < a.To.V {
				out = a
			}
		}
	}
	return out
}

func (b *breach) causedBy(x *roster.Entry, c *roster.Cause) {
	from := b.whole().From // what began it is its cause
	i := c.Days.Next(max(0, from+1))
	if i < 0 || i >= b.Breach.To {
		return
	}
	switch c.Why {
	case roster.NoRound, roster.NotOn:
		switch {
		case x.Days.Has(i):
		case c.Dates != nil && b.dates == nil:
			b.dates = c
		case c.Dates == nil && b.noRound == nil:
			b.noRound = x
		}
	case roster.Nobody, roster.Waits, roster.LeftIn:
		if b.away == nil {
			b.away, b.keepers = c.Away, !x.Kind.StandIn && !x.Feeds()
		}
	case roster.Untrained, roster.TooFew:
		if b.unfit == nil {
			b.away, b.unfit = c.Away, c
		}
	case roster.Held:
		b.holds(c.Hold)
	case roster.Skipped:
		b.skipped = true
	}
}

// excusedBy adds the holds on whose days the need does not hold.
func (b *breach) excusedBy() {
	if !b.excuses(b.Breach) {
		return
	}
	from, to := b.s.Horizon.Date(max(0, b.Breach.From)), b.s.Horizon.Date(b.Breach.To)
	add := func(all []life.Hold) {
		for i := range all {
			if h := &all[i]; h.From < to && from < h.Until && Holds(h, b.Name) {
				b.holds(h)
			}
		}
	}
	add(b.Life.Holds)
	for _, g := range b.Life.Groups {
		if b.Group == nil || b.Group == g {
			add(g.Holds)
		}
	}
}

// holds adds a hold to what decided.
func (b *breach) holds(h *life.Hold) {
	if !slices.ContainsFunc(b.held, func(o *life.Hold) bool { return o.At == h.At && o.Why == h.Why }) {
		b.held = append(b.held, h)
	}
}

// severity is the need's own: an error unless its sheet says caution. What is never
// met, or far too rarely, is an error whatever the sheet says. What a hold, or what the
// log says was skipped, keeps from being met is a caution: how it went on is for the log
// to say, and not for the plan; but what the plan alone excuses ends.
func (b *breach) severity() finding.Severity {
	last, ends := b.ends()
	switch {
	case b.unserved():
		return finding.Urgent
	case b.skipped || b.seen() || b.leftIn() != nil:
		return finding.Caution
	case ends:
		return b.ending(last)
	case b.untrained():
		return finding.Caution // of who must not be disturbed, package check speaks
	case b.untouched():
		return finding.Caution
	case b.Limit.Alone && b.unknown():
		return finding.Caution
	case b.Times == 0 || b.tooRare():
		return finding.Error
	case b.keepers && b.away.Open && b.Need.Severity.V == "caution":
		return finding.Advice // what waits for somebody of whom it is not known when they are back
	case b.excuses(b.Breach) || b.Need.Severity.V == "caution" || b.unknown():
		return finding.Caution
	}
	return finding.Error
}

// unknown reports whether it is not known that it is too long for the species: its type
// says what suits every member and what is too long for any, and it lies between.
func (b *breach) unknown() bool {
	if b.Limit.Alone {
		return b.Alone != nil && b.Alone.Beyond.High > 0 && b.Longest <= wholeDays(b.Alone.Beyond.High)
	}
	return b.Need.Wrong.Set() && b.Longest <= wholeDays(b.Need.Wrong.V.Value)
}

// untouched reports whether the plan tells of animals that must not be disturbed, and
// does not say since when: an error would have them dug up for a clean box. What becomes
// of them is asked in the round. Food and water are another matter.
func (b *breach) untouched() bool {
	return b.Name == schema.NeedCleaning && b.excuses(b.Breach) && slices.ContainsFunc(b.held, func(h *life.Hold) bool { return h.From == 0 })
}

// untrained reports whether whoever is there may not do it since the log brought animals
// that only somebody who is trained may disturb.
func (b *breach) untrained() bool {
	return b.unfit != nil && b.unfit.Hold != nil && !b.unfit.Hold.Planned(b.Life)
}

// unserved reports whether for that reason a mother has no water, or her young no meal.
func (b *breach) unserved() bool {
	return b.untrained() && (b.Name == schema.NeedWater || b.Name == schema.NeedFood && b.Group.Logged && b.Stage == "young")
}

// seen reports whether a hold of the log has a part in the breach.
func (b *breach) seen() bool { return within(b.Seen, b.Breach) > 0 || touches(b.paused, b.Breach) }

// tooRare reports whether the need is met far too rarely, by what the plan has alone:
// also where a season excuses days of it, which it does for half a year at the most.
func (b *breach) tooRare() bool {
	if b.Name.PerMeal {
		return false
	}
	most := b.Ceiling
	if b.excuses(b.Breach) {
		most = max(most, longestSeason+b.Allowed)
	}
	return b.Breach.To-b.Breach.From-within(b.Seen, b.Breach) > most
}
