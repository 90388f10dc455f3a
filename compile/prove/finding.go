package prove

import (
	"cmp"
	"slices"
	"strconv"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/wording"
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

func (b *breach) finding() finding.Finding {
	f := finding.Finding{Rule: byNeed[b.Name], In: b.Life.Plan.Box(), Text: b.text(), Limit: b.limits(), Source: b.source(), Also: b.also()}
	b.mend(&f)
	f.Strict = min(b.Limit.Days, b.apart())
	f.Told = b.untrained() // left-untrained says who must come
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
	shown := ""
	if b.unshown != nil {
		shown = " that anybody is shown"
	}
	if b.Times == 0 && b.Breach.To >= h.Days {
		return who + ": never " + b.Name.Noun + shown + " on the days ahead"
	}
	text := who + ": " + wording.Days(b.length(b.whole())) + " without " + b.Name.Noun + shown + ", " + during(h, b.whole())
	if b.byDates() {
		text += ", since not_on has " + b.dates.Dates.V.String()
	}
	if len(b.held) > 0 && b.excuses(b.Breach) {
		text += ", and on some of these days it is held"
	}
	return text
}

// first is what rounds say of a breach while it is to come: what is due, and by when.
func (b *breach) first() []finding.First {
	h := b.s.Horizon
	if a := b.away; a != nil && a.Logged {
		return []finding.First{{Text: "somebody who may do it must come: " + shown(b.s.Plan, a.Name.V) + " is away", Until: a.To.V}}
	}
	most, whole := b.Limit, b.whole()
	if b.goesOn() {
		most = b.Late
	}
	due := min(max(whole.From, 0)+most.Days, h.Days-1)
	by := h.Date(due).Short()
	text := b.Name.Noun + " must come by " + by
	switch {
	case b.Name.PerMeal:
		text = "take out what is left of the meal of " + h.Date(max(whole.From, 0)).Short() + " by " + by
	case due < b.today:
		text = b.Name.Noun + " now, overdue since " + by
	}
	if b.away != nil {
		text += ", while " + shown(b.s.Plan, b.away.Name.V) + " is away"
	}
	out := finding.First{Text: text}
	if b.Breach.To < h.Days {
		out.Until = h.Date(b.Breach.To)
	}
	return []finding.First{out}
}

func shown(c *plan.Collection, keeper string) string {
	if k := c.Keeper(keeper); k != nil {
		return k.Shown()
	}
	return keeper
}

// limits names the very limit that decided.
func (b *breach) limits() string {
	sheet := b.sheet()
	switch {
	case b.Limit.First:
		from := " from the first moult"
		if b.Group.Stages[0].Stage != newborn {
			from = " from hatching"
		}
		return wording.AtLongest(b.Limit.Days) + from + " to the first meal, first-meal of " + sheet
	case b.Limit.Again:
		return wording.AtLongest(b.Limit.Days) + " while nobody comes, again and again: half of unattended of " + b.whose(b.Alone) + ", " + wording.Days(b.Unattended)
	case b.Limit.Alone:
		text := wording.AtLongest(b.Limit.Days) + " while nobody comes"
		if f := b.Alone; f != nil && f.Wrong.Set() {
			text += " suits every one, " + f.Wrong.V + " is too long for any"
		}
		return text + ", unattended of " + b.whose(b.Alone)
	}
	text := wording.AtLongest(b.Allowed)
	if b.Stage != "" {
		text += " for stage " + b.Stage
	}
	if b.Need.Wrong.Set() {
		text += " suits every one, " + b.Need.Wrong.V.String() + " is too long for any"
	}
	text += ", need " + strconv.Quote(b.Need.Name.V) + " of " + cmp.Or(b.Need.OfType, b.Need.Of, sheet)
	if b.Limit.Often {
		text += ": unattended is for " + strconv.Itoa(mostAlone) + " of any " + strconv.Itoa(aloneOf) + " days"
	}
	return text
}

// whose names the sheet or the type that states a figure.
func (b *breach) whose(f *plan.Figure) string {
	if f != nil {
		if by := cmp.Or(f.OfType, f.Of); by != "" {
			return by
		}
	}
	return b.sheet()
}

// sheet names the sheet that states the need: the group's own, or that of one of those
// who live there together.
func (b *breach) sheet() string {
	if b.Group != nil {
		return b.Group.Sheet.Name.V
	}
	for _, g := range b.Life.Groups {
		if g.Sheet != nil && slices.Contains(g.Sheet.Needs, b.Need) {
			return g.Sheet.Name.V
		}
	}
	return b.Life.Plan.Name.V
}

func (b *breach) source() string {
	switch {
	case b.Limit.First:
		return b.s.Plan.Library.Cite(b.firstMeal.Cited)
	case b.Limit.Alone && b.Alone != nil:
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
		case a.Open:
			text = a.Name.V + " is away since " + a.From.V.Words() + ", and when they are back is not known"
		case a.Logged:
			text = a.Name.V + " was away from " + a.From.V.Words() + " to " + a.To.V.Words()
		case !a.Cover.Set():
			text += "nobody"
		case b.unfit != nil:
			text += a.Cover.V + ", who may not do this"
		case b.keepers:
			text += a.Cover.V + ", who does not do this"
		case len(a.Visits) > 0:
			text += a.Cover.V + " on visits only"
		default:
			text += a.Cover.V + ", who is away too"
		}
		out = append(out, finding.Related{At: a.At, Text: text})
	}
	if d := b.named(); d != nil {
		out = append(out, finding.Related{At: d.At, Text: "the days of " + d.Shown()})
	}
	for _, h := range b.held {
		out = append(out, finding.Related{At: h.At, Text: "held: " + h.Why + ", " + h.End})
	}
	return out
}

// missed says by how much a need was missed, once that cannot be helped any more, and
// what to do now. It is urgent unless the sheet says that the need can wait and it is not
// far too long.
func (p *Proof) missed(s *roster.Roster) (finding.Finding, finding.Severity) {
	h := s.Horizon
	was := *p
	was.Breach, was.Limit = p.Missed, p.Late
	b := was.breach(s)
	until := h.Date(min(p.Missed.To, h.Days-1))
	f := finding.Finding{Rule: RuleMissed, At: p.care(), In: p.Life.Plan.Box(), Limit: b.limits(), Source: b.source(), Also: b.also(),
		Text:  p.subject() + ": " + wording.Days(p.length(p.Missed)) + " without " + p.Name.Noun + ", from " + h.Date(p.Missed.From).Words() + " to " + until.Words() + p.notCounted(p.Missed),
		Write: "do it now, look closely at the animals, and log " + p.done() + "; else it comes first in the round of " + until.Short(), Once: "missed", Own: true}
	f.First = []finding.First{{Text: p.Name.Noun + " now, it is overdue: look closely at the animals; log " + p.done()}}
	if p.Missed.To >= h.Days {
		f.Write = "do it now, look closely at the animals, and log " + p.done() + ": it does not come up any more"
	}
	if p.Name.PerMeal {
		f.First[0].Text = "take out what is left of the last meal, it is overdue; look closely at the animals"
	}
	if b.away != nil {
		f.At, f.Once, f.Own = b.away.At, "missed "+place(b.away.At), false
	}
	if p.Missed.From < 0 {
		f.Text = p.subject() + ": more than " + wording.Days(horizon.Past) + " without " + p.Name.Noun
	}
	switch {
	case p.Need.Severity.V == "caution" && !b.tooRare():
		return f, finding.Caution
	case b.away != nil && b.away.Logged && p.length(p.Missed) <= p.Unattended:
		return f, finding.Caution // so long they bear it alone with a dish that was full
	}
	return f, finding.Urgent
}

// done is what is logged once a need has been met.
func (p *Proof) done() string {
	if p.Name == schema.NeedFood && p.Group != nil {
		return p.Group.Animals.Name.V + " fed, or refused"
	}
	for _, x := range p.By {
		if x.Rack != nil {
			return x.Rack.Plan.Name.V + " done " + x.Name
		}
		if x.Once == nil {
			return "done " + x.Name
		}
	}
	return "what you did"
}

func (p *Proof) subject() string {
	name := p.Life.Plan.Name.V
	if p.Group != nil && (len(p.Life.Groups) > 1 || p.Group.Logged) {
		name += " " + p.Group.Animals.Name.V
	}
	return name
}

// Worst is the longest time of a need that is not met, in days and in words.
func (p *Proof) Worst() (days int, words string) {
	days = p.length(p.Breach)
	for _, g := range p.again {
		days = max(days, p.length(g.Gap))
	}
	if p.Name.PerMeal {
		return days, p.subject() + " has a look for leftovers only " + wording.Days(days) + " after a meal"
	}
	if p.Times == 0 {
		return days, p.subject() + " never has " + p.Name.Noun
	}
	return days, p.subject() + " is " + wording.Days(days) + " without " + p.Name.Noun
}

func during(h horizon.Horizon, g Gap) string {
	from, to := "from before "+h.Date(0).Words(), "to the end of what was looked at"
	if g.From >= 0 {
		from = "from " + h.Date(g.From).Words()
	}
	if g.To < h.Days {
		to = "to " + h.Date(g.To).Words()
	}
	return from + " " + to
}

// notCounted says of a time that days on which it was held are no part of it.
func (p *Proof) notCounted(g Gap) string {
	if held := g.To - g.From - p.length(g); held > 0 {
		return ", without " + wording.Days(held) + " on which it was held"
	}
	return ""
}
