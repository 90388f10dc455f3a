package prove

import (
	"strconv"
	"strings"
	"time"

	"vivary/compile/horizon"
	"vivary/compile/recur"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
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
		if p.Missed.From != p.Missed.To && !p.goesOn() {
			l.Add(p.missed(s))
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
	nothing     bool            // no care meets the need
	unshown     *roster.Entry   // care that nobody is shown
	away        *plan.Away      // an absence
	keepers     bool            // and nobody who stands in does this care
	noRound     *roster.Entry   // care of a day on which its round is not held
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
			b.causedBy(x, &x.Causes[k])
		}
	}
	if b.away != nil {
		b.away = b.stillAway(b.away)
	}
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
	case roster.NoRound:
		if b.noRound == nil && !x.Days.Has(i) {
			b.noRound = x
		}
	case roster.Nobody, roster.Waits, roster.LeftIn:
		if b.away == nil {
			b.away, b.keepers = c.Away, !x.Kind.StandIn && !x.Feeds()
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
	last, ends := b.ends()
	switch {
	case b.skipped || b.excuses(b.Breach):
		return finding.Caution
	case ends:
		return b.ending(last)
	case b.Times == 0:
		return finding.Error
	case b.Need.Severity.V == "caution":
		return finding.Caution
	}
	return finding.Error
}

func (b *breach) finding() finding.Finding {
	f := finding.Finding{Rule: byNeed[b.Name], In: b.Life.Plan.Whole, Text: b.text(), Limit: b.limits(), Source: b.source(), Also: b.also()}
	f.At, f.Write, f.Once = b.mend()
	f.Strict = min(b.Limit.Days, b.repeated())
	return f
}

func (b *breach) text() string {
	h, who := b.s.Horizon, b.subject()
	switch {
	case b.nothing:
		return who + ": nothing in the plan or the species sheet brings " + b.Name.Noun
	case b.Name.PerMeal && b.Breach.To >= h.Days:
		return who + ": the meal of " + h.Date(b.Breach.From).Words() + " is never followed by a look for leftovers"
	case b.Name.PerMeal:
		return who + ": the meal of " + h.Date(b.Breach.From).Words() + " is followed by a look for leftovers only on " + h.Date(b.Breach.To).Words() + ", " + wording.Days(b.Breach.To-b.Breach.From) + " later"
	}
	text := who + ": " + wording.Days(b.length(b.whole())) + " without " + b.Name.Noun
	if b.unshown != nil {
		text += " that anybody is shown"
	}
	text += ", " + stretch(h, b.whole())
	if b.excuses(b.Breach) && len(b.held) > 0 {
		text += ", held for longer than anybody should leave it"
	}
	return text
}

// limits names the very limit that decided.
func (b *breach) limits() string {
	sheet := b.Life.Plan.Sheet.Name.V
	switch {
	case b.Limit.Again:
		return wording.AtLongest(b.Limit.Days) + " while nobody comes, again and again: half of unattended of " + sheet + ", " + wording.Days(b.Unattended)
	case b.Limit.Alone:
		return wording.AtLongest(b.Limit.Days) + " while nobody comes, unattended of " + sheet
	}
	text := wording.AtLongest(b.Allowed)
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
		a := b.away
		text := a.Name.V + " is away from " + a.From.V.Words() + " to " + a.To.V.Words() + ", covered by "
		switch {
		case !a.Cover.Set():
			text += "nobody"
		case b.keepers:
			text += a.Cover.V + ", who does not do this"
		case len(a.Visits) > 0:
			text += a.Cover.V + " on visits only"
		default:
			text += a.Cover.V + ", who is away too"
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
	case b.Name.PerMeal && b.away != nil:
		return b.care(), "killed = true, or somebody who comes on the day after", ""
	case b.Name.PerMeal:
		return b.care(), "leftovers = \"" + wording.Days(b.Allowed) + "\", or killed = true", ""
	case b.excuses(b.Breach) && len(b.held) > 0:
		return b.held[0].At, b.mendHeld(), ""
	case b.shownBefore:
		by := b.s.Horizon.Date(max(b.today, b.Breach.From+b.Limit.Days))
		return b.care(), "from = \"" + by.String() + "\", or sooner: what calendars showed until today counts", ""
	}
	if x := b.noRound; x != nil && len(x.Round.On) > 0 {
		return x.Round.On[0].At, "more days in on: the " + x.Round.Shown() + " is not held often enough, or another round for this care", "round " + place(x.Round.At)
	}
	at = b.care()
	return at, b.oftener(), "every " + place(at) + b.Name.Name
}

// oftener says how often would do, in the words that were typed where they can.
func (b *breach) oftener() string {
	x := b.written()
	switch {
	case x != nil && x.Timing.AfterLast.Set():
		return "after_last = \"" + wording.Days(b.Allowed) + "\", or less"
	case x != nil && len(x.Timing.On) > 0 && x.Timing.On[0].V.Kind == plan.EachWeekday:
		if on := weekdays(b.Allowed, b.s.Horizon.Date(max(b.Breach.From, 0)), recur.MaxDate); on != "" {
			return "on = " + on + ", or more days"
		}
	}
	return "every = \"" + wording.Step(b.Allowed) + "\", or more often"
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
		return "feeding \"" + name + "\", with every = \"" + wording.Step(b.Allowed) + "\", per_animal and prey in it"
	}
	return "a care block of a kind that brings " + b.Name.Noun + ", with every = \"" + wording.Step(b.Allowed) + "\""
}

// mendShown is for care that no calendar shows to who does it.
func (b *breach) mendShown() (at source.Place, write, once string) {
	x := b.unshown
	l := b.s.Lacking(x, x.Unshown(max(b.today, b.Breach.From+1)))
	switch {
	case l.At.Written():
	case x.FromSheet:
		l.At = b.owner()
	default:
		l.At = b.care()
	}
	return l.At, l.Write, x.UnshownFor()
}

// mendHeld is for a hold that is longer than any should be: the log says how it went
// on, where nothing else ends it.
func (b *breach) mendHeld() string {
	if h := b.held[0].Hold; h.Open {
		return "in the log, how it went on: it is held " + h.End
	}
	return "an earlier end"
}

// mendAway is for an absence: with what visits, or until which day, it would be
// sound, and what is filled on the eve.
func (b *breach) mendAway() (at source.Place, write, once string) {
	const full = "; on the eve every dish is filled"
	a := b.away
	eve := b.s.Horizon.Date(max(b.Breach.From, 0))
	from := min(eve, a.From.V-1) // all visits are written anew
	if _, there := b.s.People.Doer(a.Name.V, max(0, int(a.From.V-1-b.s.Horizon.From))); !there || a.From.V > eve+1 {
		from = a.From.V - 7 // somebody comes on its first day
	}
	visits, back := weekdays(b.repeated(), from, a.To.V), eve+civil.Date(b.Limit.Days)
	switch {
	case b.keepers && back > a.From.V:
		at, write = a.To.At, "to = \""+back.String()+"\" at the latest: whoever stands in does not do this"
	case b.keepers:
		at, write = a.To.At, "an earlier day: whoever stands in does not do this"
	case len(a.Visits) > 0 && visits != "" && strings.Count(visits, ",") >= len(a.Visits): // more of them
		at, write = a.Visits[0].At, "visits = "+visits+full
	case len(a.Visits) > 0:
		at, write = a.Visits[0].At, "no visits, so that "+a.Cover.V+" comes every day"
	case a.Cover.Set():
		at, write = a.Cover.At, "a cover who is there on those days"
	default:
		at, write = a.At, "cover = \"…\", every day"
		if visits != "" {
			write = "cover = \"…\" with visits = " + visits
		}
		if back > a.From.V {
			write = "to = \"" + back.String() + "\" at the latest, or " + write
		}
		write += full
	}
	return at, write, "away " + place(a.At)
}

// repeated is how far apart visits may be again and again.
func (p *Proof) repeated() int { return max(p.Allowed, (p.Unattended+1)/2) }

// weekdays writes the fewest weekdays on which visits are never further apart than so
// many days, from a day with somebody there until the return; "" where only every day
// will do. Days on which nobody is away are not named.
func weekdays(apart int, from, until civil.Date) string {
	n := 1
	for n < 7 && (7+n-1)/n > apart {
		n++
	}
	if n == 7 {
		return ""
	}
	step := func(k int) int { // of the kth visit, in days
		if n == 1 {
			return 7*(k-1) + min(apart, 7)
		}
		return k * 7 / n
	}
	var on [7]bool
	last := from
	for k := 1; k <= n && (k == 1 || int(until-last) > apart); k++ {
		last = from + civil.Date(step(k))
		on[(last.Weekday()+6)%7] = true
	}
	var out []string
	for k, visit := range on { // a week begins on Monday
		if visit {
			out = append(out, strconv.Quote(strings.ToLower(time.Weekday((k + 1) % 7).String()[:3])))
		}
	}
	return "[" + strings.Join(out, ", ") + "]"
}

// written is care of the plan's own, or nil.
func (p *Proof) written() *roster.Entry {
	for _, x := range p.By {
		if x.Timing != nil && !x.FromSheet {
			return x
		}
	}
	return nil
}

// care is the plan line of the care: how often it is done, where the plan wrote it,
// else the animals or the enclosure.
func (p *Proof) care() source.Place {
	x := p.written()
	if x == nil {
		return p.owner()
	}
	if at := timingPlace(x.Timing); at.Written() {
		return at
	}
	return x.Origin
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
	was := *p
	was.Breach, was.Limit = p.Missed, p.Late
	b := was.breach(s)
	until := h.Date(min(p.Missed.To, h.Days-1))
	f := finding.Finding{Rule: RuleMissed, At: p.care(), In: p.Life.Plan.Whole, Limit: b.limits(), Source: b.source(), Also: b.also(),
		Text:  p.subject() + ": " + wording.Days(p.length(p.Missed)) + " without " + p.Name.Noun + ", from " + h.Date(p.Missed.From).Words() + " to " + until.Words(),
		Write: "nothing: it comes first in the round of " + until.Short() + "; look closely at the animals", Once: "missed " + place(p.Life.Plan.Whole)}
	if p.Missed.To >= h.Days {
		f.Write = "look closely at the animals today: it does not come up any more"
	}
	if b.away != nil {
		f.At, f.Once = b.away.At, "missed "+place(b.away.At)
	}
	if p.Missed.From < 0 {
		f.Text = p.subject() + ": more than " + wording.Days(horizon.Past) + " without " + p.Name.Noun
	}
	if p.Missed.To >= p.today && p.Need.Severity.V != "caution" {
		f.Severity = finding.Urgent // it is not met to this day
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
