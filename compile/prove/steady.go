package prove

import (
	"time"

	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/schema/wording"
)

// What the plan has week after week is too long today and tomorrow alike: it is said
// without a day, or the same plan would be answered with other words each morning.

// tooLong is a time that is too long, with the limit that it passes.
type tooLong struct {
	Gap
	Limit
}

// steady returns a breach that comes again and again as the plan has it, or nil. It is of
// the length that comes most often, the longest of several; it begins and ends as the
// others of that length do, and nothing has a part in it that has a date of its own.
func (p *Proof) steady(s *roster.Roster) *breach {
	times := map[int]int{}
	most := 0
	for _, g := range p.again {
		n := g.To - g.From
		if times[n]++; times[n] > times[most] || times[n] == times[most] && n > most {
			most = n
		}
	}
	if times[most] < 2 {
		return nil
	}
	for i := len(p.again) - 1; i >= 0; i-- { // the last is the furthest from what happened
		g := p.again[i]
		if g.To-g.From != most {
			continue
		}
		one := *p
		one.Breach, one.Limit = g.Gap, g.Limit
		if b := one.breach(s); !b.dated() {
			return b
		}
	}
	return nil
}

// dated reports whether something that has a date has a part in a breach.
func (b *breach) dated() bool {
	_, ends := b.ends()
	return ends || b.away != nil || b.unfit != nil && b.unfit.Hold != nil || b.byDates() || len(b.held) > 0 || b.skipped || b.shownBefore || b.seen() || b.excuses(b.Breach)
}

// weekdays says of what comes again and again from which weekday to which it is, where that
// is always so.
func (p *Proof) weekdays(h horizon.Horizon) string {
	n := p.Breach.To - p.Breach.From
	var first, last time.Weekday
	for k, g := range p.again {
		if g.To-g.From != n {
			continue
		}
		from, to := h.Date(g.From).Weekday(), h.Date(g.To).Weekday()
		if k > 0 && (from != first || to != last) {
			return "again and again"
		}
		first, last = from, to
	}
	return "again and again, from " + first.String() + " to " + last.String()
}

// textAgain is what is wrong with what comes again and again.
func (b *breach) textAgain() string {
	n, rhythm := b.length(b.Breach), b.weekdays(b.s.Horizon)
	if b.Name.PerMeal {
		return b.subject() + ": meals are followed by a look for leftovers only " + wording.Days(n) + " later, " + rhythm
	}
	text := b.subject() + ": " + wording.Days(n) + " without " + b.Name.Noun
	if b.unshown != nil {
		text += " that anybody is shown"
	}
	return text + ", " + rhythm
}
