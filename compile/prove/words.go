package prove

import (
	"cmp"
	"slices"
	"strconv"

	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/wording"
)

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
