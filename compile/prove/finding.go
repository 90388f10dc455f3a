package prove

import (
	"strconv"
	"strings"

	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Findings returns a finding for each need that is not met in time: its first
// breach, with dates, the cause, the limit that decided and what would mend it.
func Findings(s *roster.Roster, proofs []Proof) []finding.Finding {
	var l finding.List
	for i := range proofs {
		p := &proofs[i]
		if !p.Met() {
			b := p.breach(s)
			l.Soft(b.finding(), b.severity())
		}
		if p.Missed.From != p.Missed.To {
			l.Add(p.missed(s))
		}
	}
	return l.All
}

// breach is a breach with what decided it.
type breach struct {
	*Proof
	s *roster.Roster
	cause
}

// cause is what decided a breach: one of these, looked for in this order.
type cause struct {
	nothing     bool            // no care meets the need
	unshown     *roster.Entry   // care that nobody is shown
	away        *roster.Cause   // an absence
	held        []*roster.Cause // holds
	skipped     bool            // the log says that it was not done
	shownBefore bool            // the last feeds showed it on other days
}

func (p *Proof) breach(s *roster.Roster) *breach {
	b := &breach{Proof: p, s: s}
	b.nothing = len(p.By) == 0
	for _, x := range p.By {
		if i := x.Unshown(max(p.today, p.Breach.From+1)); b.unshown == nil && i >= 0 && i < p.Breach.To {
			b.unshown = x
		}
		for k := range x.Causes {
			b.causedBy(&x.Causes[k])
		}
	}
	b.shownBefore = s.Told != nil && p.Breach.From < p.today && p.Breach.To > p.today && !b.skipped
	return b
}

func (b *breach) causedBy(c *roster.Cause) {
	i := c.Days.Next(max(0, b.Breach.From+1))
	if i < 0 || i >= b.Breach.To {
		return
	}
	switch c.Why {
	case roster.Nobody, roster.Waits:
		if b.away == nil {
			b.away = c
		}
	case roster.Held:
		b.held = append(b.held, c)
	case roster.Skipped:
		b.skipped = true
	}
}

// severity is the need's own: an error unless its sheet says caution. What is never
// met is an error whatever the sheet says. What a hold of the log, or what the log
// says was skipped, keeps from being met is a caution: the log has to say how it went
// on, not the plan.
func (b *breach) severity() finding.Severity {
	switch {
	case b.skipped || b.excuses():
		return finding.Caution
	case b.Times == 0:
		return finding.Error
	case b.Need.Severity.V == "caution":
		return finding.Caution
	}
	return finding.Error
}

// excuses reports whether a day of the breach is excused by a hold.
func (b *breach) excuses() bool {
	for d := max(0, b.Breach.From); b.Excused != nil && d < b.Breach.To; d++ {
		if b.Excused.Has(d) {
			return true
		}
	}
	return false
}

func (b *breach) finding() finding.Finding {
	f := finding.Finding{Rule: byNeed[b.Name], In: b.Life.Plan.Whole, Text: b.text(), Limit: b.limits(), Source: b.source(), Also: b.also()}
	f.At, f.Write, f.Once = b.mend()
	return f
}

func (b *breach) text() string {
	h, who := b.s.Horizon, b.subject()
	switch {
	case b.nothing:
		return who + ": nothing in the plan or the species sheet brings " + b.Name.Noun
	case b.Name.PerMeal:
		return who + ": the meal of " + h.Date(b.Breach.From).Words() + " is followed by a look for leftovers only " + after(h, b.Breach)
	}
	text := who + ": " + days(b.length(b.Breach)) + " without " + b.Name.Noun
	if b.unshown != nil {
		text += " that anybody is shown"
	}
	text += ", " + stretch(h, b.Breach)
	if b.excuses() && len(b.held) > 0 {
		text += ", held for longer than anybody should leave it"
	}
	return text
}

// limits names the very limit that decided.
func (b *breach) limits() string {
	sheet := b.Life.Plan.Sheet.Name.V
	switch {
	case b.Limit.Again:
		return days(b.Limit.Days) + " at the longest while nobody comes, again and again: half of unattended of " + sheet + ", " + days(b.Unattended)
	case b.Limit.Alone:
		return days(b.Limit.Days) + " at the longest while nobody comes, unattended of " + sheet
	}
	text := days(b.Allowed) + " at the longest"
	if b.Group != nil && b.Group.Stage(b.s.Horizon.Now()) != "" {
		text += " for stage " + b.Group.Stage(b.s.Horizon.Now())
	}
	return text + ", need " + strconv.Quote(b.Need.Name.V) + " of " + sheet
}

func (b *breach) source() string {
	if b.Limit.Alone && b.Alone != nil {
		return b.s.Plan.Library.Cite(b.Alone.Cited)
	}
	return b.s.Plan.Library.Cite(b.Need.Cited)
}

// also are the places that belong to the cause.
func (b *breach) also() []finding.Related {
	var out []finding.Related
	if b.away != nil && b.unshown == nil {
		a := b.away.Away
		text := a.Name.V + " is away from " + a.From.V.Words() + " to " + a.To.V.Words()
		if a.Cover.Set() {
			text += ", covered by " + a.Cover.V + " on visits only"
		} else {
			text += ", covered by nobody"
		}
		out = append(out, finding.Related{At: a.At, Text: text})
	}
	for _, c := range b.held {
		out = append(out, finding.Related{At: c.At, Text: "held: " + c.Hold.Why + ", " + c.Hold.End})
	}
	return out
}

// mend returns the line that can be changed, what to write there, and a key by which
// breaches of one cause are said once.
func (b *breach) mend() (at source.Place, write, once string) {
	switch {
	case b.nothing:
		return b.owner(), b.bring(), ""
	case b.unshown != nil:
		return b.mendShown()
	case b.away != nil && !b.Name.PerMeal:
		return b.mendAway()
	case b.Name.PerMeal:
		return b.care(), "leftovers = \"" + days(b.Allowed) + "\", or killed = true", ""
	case b.shownBefore:
		by := b.s.Horizon.Date(max(b.today, b.Breach.From+b.Limit.Days))
		return b.care(), "from = \"" + by.String() + "\", or sooner: what calendars showed until today counts", ""
	}
	at = b.care()
	return at, "every = \"" + step(b.Allowed) + "\", or more often", "every " + place(at) + b.Name.Name
}

// place makes a key of a place.
func place(at source.Place) string {
	return strconv.Itoa(int(at.File)) + ":" + strconv.Itoa(int(at.Start)) + " "
}

// bring says what block would bring what nothing does.
func (b *breach) bring() string {
	if b.Name == schema.NeedFood {
		name := b.Life.Plan.Name.V
		if b.Group != nil {
			name = b.Group.Animals.Name.V
		}
		return "feeding \"" + name + "\", with every = \"" + step(b.Allowed) + "\", per_animal and prey in it"
	}
	return "a care block of a kind that brings " + b.Name.Noun + ", with every = \"" + step(b.Allowed) + "\""
}

// mendShown is for care that no calendar shows to who does it.
func (b *breach) mendShown() (at source.Place, write, once string) {
	x := b.unshown
	at = b.owner()
	if x.Round.At.Written() {
		at = x.Round.At
		write = "rounds = [\"" + x.Round.Name.V + "\"] in a calendar, or a calendar that selects nothing; or list = \"paper\" in this round, where it is worked from paper"
	} else {
		if x.Origin.File == b.Life.Plan.At.File && x.Origin.Written() {
			at = b.care()
		}
		write = "a round at " + x.At().String() + " that a calendar shows, or a calendar that selects no rounds"
	}
	if x.Keeper != "" && len(b.s.Plan.Keepers) > 1 {
		write += "; a calendar with keepers has to name " + b.doer(x)
	}
	return at, write, x.UnshownFor()
}

// doer names who does an entry on the first day of the breach on which it is not shown.
func (b *breach) doer(x *roster.Entry) string {
	if i := x.Unshown(max(b.today, b.Breach.From+1)); i >= 0 {
		if who, there := b.s.Doer(x, i); there {
			return who
		}
	}
	return x.Keeper
}

// mendAway is for an absence: with what visits, or until which day, it would be
// sound, and what is filled on the eve.
func (b *breach) mendAway() (at source.Place, write, once string) {
	a := b.away.Away
	eve := b.s.Horizon.Date(max(b.Breach.From, 0))
	visits := "cover = \"…\", every day"
	if w := weekdays(b.repeated(), eve); w != "" {
		visits = "cover = \"…\" with visits = " + w
	}
	switch w := weekdays(b.repeated(), eve); {
	case len(a.Visits) > 0 && w != "":
		at, write = a.Visits[0].At, "visits = "+w
	case len(a.Visits) > 0:
		at, write = a.Visits[0].At, "no visits, so that "+a.Cover.V+" comes every day"
	case a.Cover.Set():
		at, write = a.Cover.At, "a cover who is there on those days"
	default:
		at, write = a.At, visits
		if back := eve + civil.Date(b.Limit.Days); back > a.From.V {
			write = "to = \"" + back.String() + "\" at the latest, or " + write
		}
	}
	if b.Name == schema.NeedWater {
		write += "; on the eve every dish is filled"
	}
	return at, write, "away " + place(a.At)
}

// repeated is how far apart visits may be again and again.
func (p *Proof) repeated() int { return max(p.Allowed, (p.Unattended+1)/2) }

// weekdays writes the fewest weekdays on which visits are never further apart than so
// many days, counted from a day with somebody there; "" where only every day will do.
func weekdays(apart int, from civil.Date) string {
	n := 1
	for n < 7 && (7+n-1)/n > apart {
		n++
	}
	if n == 7 {
		return ""
	}
	var out []string
	for k := 1; k <= n; k++ {
		d := from + civil.Date(k*7/n)
		if n == 1 {
			d = from + civil.Date(min(apart, 7))
		}
		out = append(out, strconv.Quote(strings.ToLower(d.Weekday().String()[:3])))
	}
	return "[" + strings.Join(out, ", ") + "]"
}

// care is the plan line of the care: how often it is done, where the plan wrote it,
// else the animals or the enclosure.
func (p *Proof) care() source.Place {
	for _, x := range p.By {
		if x.Timing == nil {
			continue
		}
		for _, at := range []source.Place{timingPlace(x.Timing), x.Origin} {
			if at.Written() && !x.FromSheet {
				return at
			}
		}
	}
	return p.owner()
}

func (p *Proof) owner() source.Place {
	if p.Group != nil {
		return p.Group.Animals.At
	}
	return p.Life.Plan.At
}

func timingPlace(t *plan.Timing) source.Place {
	switch {
	case t.Every.Set():
		return t.Every.At
	case len(t.On) > 0:
		return t.On[0].At
	case t.Cron.Set():
		return t.Cron.At
	}
	return t.AfterLast.At
}

// missed says by how much a need was missed, once that cannot be helped any more.
func (p *Proof) missed(s *roster.Roster) finding.Finding {
	h := s.Horizon
	until := h.Date(min(p.Missed.To, h.Days-1))
	f := finding.Finding{Rule: ruleMissed, At: p.care(), In: p.Life.Plan.Whole,
		Text:   p.subject() + ": " + days(p.length(p.Missed)) + " without " + p.Name.Noun + ", from " + h.Date(p.Missed.From).Words() + " to " + until.Words(),
		Limit:  days(p.Allowed) + " at the longest, need " + strconv.Quote(p.Need.Name.V) + " of " + p.Life.Plan.Sheet.Name.V,
		Source: s.Plan.Library.Cite(p.Need.Cited),
		Write:  "nothing: it comes first in the round of " + until.Short() + "; look closely at the animals"}
	if p.Missed.From < 0 {
		f.Text = p.subject() + ": more than " + days(horizon.Past) + " without " + p.Name.Noun
	}
	return f
}

func (p *Proof) subject() string {
	name := p.Life.Plan.Name.V
	if p.Group != nil && len(p.Life.Groups) > 1 {
		name += " " + p.Group.Animals.Name.V
	}
	return name
}

// step is an interval of so many days as a plan writes it.
func step(n int) string {
	if n == 1 {
		return "day"
	}
	return days(n)
}

func days(n int) string { return quantity.Format(float64(n)*24*60, quantity.Days) }

func stretch(h horizon.Horizon, g Gap) string {
	from, to := "from before "+h.Date(0).Words(), "to the end of what was looked at"
	if g.From >= 0 {
		from = "from " + h.Date(g.From).Words()
	}
	if g.To < h.Days {
		to = "to " + h.Date(g.To).Words()
	}
	return from + " " + to
}

func after(h horizon.Horizon, g Gap) string {
	if g.To >= h.Days {
		return "never"
	}
	return "on " + h.Date(g.To).Words() + ", " + days(g.To-g.From) + " later"
}
