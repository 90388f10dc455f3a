package life

import (
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

const (
	// hardens is how many days after the first moult young are taken out at the
	// earliest where the sheet does not say (common practice, no source).
	hardens = 7
	// starves is how many days after the first moult young must have eaten where the
	// sheet does not say: unfed young of Rhopalurus rochai died from day 11 on
	// (Sarmento et al. 2008, J. Arachnol. 36:476-479).
	starves = 10
	// birthTakes is over how many days one birth may be logged bit by bit: emperor
	// scorpions give birth over several (Tierpark Bochum); the figure is common
	// practice.
	birthTakes = 7
	// mostBorn bounds the number of a brood, as the log bounds every number.
	mostBorn = 1e6
)

// brood is young on or around their mother. One that the plan alone speaks of has
// no birth.
type brood struct {
	born      seen
	last      civil.Date // the last day of the birth, which may take several
	number    int        // 0 where it was not said
	first     seen
	separated seen
}

func (r *reader) born(t *track, e *plan.Event) {
	if from, to, gestation := r.term(t); gestation.ok && (e.Date < from || e.Date > to) {
		r.found.Add(finding.Finding{Rule: ruleTerm, At: e.At,
			Text:   "born " + wording.Days(int(e.Date-t.matings[0].on)) + " after the mating of " + t.matings[0].on.Words(),
			Limit:  "gestation of " + gestation.String() + ", species sheet " + r.sheet.Name.V,
			Source: r.c.Library.Cite(gestation.cited),
			Write:  "the right days; where both are right, leave them: this is worth telling others",
			Also:   []finding.Related{{At: t.matings[0].at, Text: "the mating"}}})
	}
	// In a group another female may still carry young from a later mating.
	var later []seen
	if t.now() > 1 && len(t.matings) > 1 {
		later = t.matings[1:]
	}
	t.closeLate(r, e.Date)
	t.matings = later
	b := brood{born: see(e), last: e.Date, number: r.howMany(e, 0, mostBorn)}
	if n := len(t.broods); n > 0 && t.moulting < n && t.leaving < n {
		// Two mothers of one day are one brood.
		if old := &t.broods[n-1]; old.born.ok && (old.last == e.Date || t.now() == 1 && e.Date-old.last <= birthTakes) {
			old.last, old.number = e.Date, min(old.number+b.number, mostBorn)
			return
		}
	}
	if len(t.broods) == 1 && !t.broods[0].born.ok && t.moulting+t.leaving == 0 {
		// The one that the plan speaks of is this one; what it held stays held.
		told := r.broodHolds(t, &t.broods[0])[0]
		told.Until, told.Open = min(told.Until, e.Date), false
		t.Holds = append(t.Holds, told)
		t.broods[0] = b
		return
	}
	t.broods = append(t.broods, b)
}

// name is that of the brood in the identity of what it asks for.
func (b *brood) name() string {
	if !b.born.ok {
		return "told"
	}
	return b.born.on.String()
}

// firstMoult is about the oldest brood that is still in its first instar.
func (r *reader) firstMoult(t *track, e *plan.Event) {
	t.moulting = max(t.moulting, t.leaving)
	if t.moulting == len(t.broods) {
		r.found.Add(finding.Finding{Rule: ruleOrder, At: e.At, Text: "a first moult of young, but no birth before it",
			Write: "the day of the birth, with born; for an older animal, moult"})
		return
	}
	t.broods[t.moulting].first = see(e)
	t.moulting++
}

// separated is about the oldest brood that is still with its mother.
func (r *reader) separated(t *track, e *plan.Event) {
	if t.leaving == len(t.broods) {
		r.found.Add(finding.Finding{Rule: ruleOrder, At: e.At, Text: "young separated, but no birth before it",
			Write: "the day of the birth, with born; for older animals, moved"})
		return
	}
	b := &t.broods[t.leaving]
	if !b.first.ok {
		r.found.Add(finding.Finding{Rule: ruleEarly, At: e.At, Text: "separated before their first moult is logged",
			Write: "before this line, the day of their first moult with first_moult"})
	}
	if b.number > 0 {
		r.howMany(e, 0, b.number)
	}
	b.separated = see(e)
	t.leaving++
}

// onMother is the days from birth to the first moult.
func (r *reader) onMother() span {
	if s := r.days(schema.FigureOnMother, "newborn"); s.ok {
		return s
	}
	return r.instar(1)
}

// apart reports whether the young are taken out.
func (r *reader) apart() bool {
	return r.sheet != nil && r.sheet.Is(schema.FigureSeparation, "separate")
}

// leaving is the days from the first moult until they are.
func (r *reader) leaving() span { return r.days(schema.FigureDispersal, "young").or(hardens) }

// rearing says what a brood asks for, from the birth to the first meal.
func (r *reader) rearing(t *track, b *brood) {
	riding, apart := r.onMother(), r.apart()
	t.Brood = t.Brood || !b.separated.ok
	t.Holds = append(t.Holds, r.broodHolds(t, b)...)
	switch {
	case b.first.ok:
		r.prepare(t, b, riding, apart)
		r.firstMeal(t, b, apart)
	case b.separated.ok:
	case b.born.ok && riding.ok:
		r.quiet(t, b)
		r.prepare(t, b, riding, apart)
		r.await(t, b, riding)
	default:
		r.quiet(t, b)
		on := r.weekday(t)
		if b.born.ok {
			on = b.born.on + 7
		}
		t.Tasks = append(t.Tasks, Task{Name: "brood/" + b.name(), Kind: schema.KindWatch, On: on, Interval: 7, Times: r.weeks(on, r.h.Last()+1),
			Text: "young moulted? look, do not lift; log first_moult", At: r.broodAt(t, b)})
	}
}

func (r *reader) quiet(t *track, b *brood) {
	if b.born.ok {
		t.Tasks = append(t.Tasks, Task{Name: "born/" + b.name(), Kind: schema.KindWatch, On: b.born.on,
			Text: "young on her back: leave alone; note a rough count at the next look", At: b.born.at})
	}
}

// broodHolds leave mother and young alone: for the time the sheet asks for, at
// least until the first moult is possible no more, or else until it is logged; then
// until the young are taken out, where they are.
func (r *reader) broodHolds(t *track, b *brood) []Hold {
	still := r.days(schema.FigureUndisturbed, "adult")
	first := Hold{State: schema.StateBrood, Why: "young with their mother", At: r.broodAt(t, b), Cited: still.cited}
	if b.born.ok {
		first.From, first.Why = b.born.on, "young since "+b.born.on.Brief()
	}
	quiet := after(first.From, still.high)
	if still.ok && b.born.ok {
		first.Until = max(quiet, after(b.last, r.onMother().high)+1)
		first.End = wording.Until(first.Until)
	} else {
		first.Until, first.Open, first.End = r.h.Last()+1, true, "until the first moult of the young is logged"
	}
	holds := []Hold{first}
	if b.first.ok {
		holds[0].Until, holds[0].Open = min(first.Until, b.first.on), false
		then := first
		then.State = schema.StateYoungRound
		then.Why = "young moulted " + b.first.on.Brief()
		then.From, then.Until, then.Open = b.first.on, b.first.on, false
		switch {
		case r.apart():
			then.Until = after(b.first.on, r.leaving().low)
		case still.ok && b.born.ok:
			then.Until = max(b.first.on, quiet)
		}
		then.End = wording.Until(then.Until)
		holds = append(holds, then)
	}
	if b.separated.ok {
		for i := range holds {
			holds[i].Until, holds[i].Open = min(holds[i].Until, b.separated.on), false
		}
	}
	return holds
}

func (r *reader) broodAt(t *track, b *brood) source.Place {
	if b.born.ok {
		return b.born.at
	}
	return t.Animals.State.At
}

// await watches for the first moult and nothing else: a separation exists only once
// it is logged.
func (r *reader) await(t *track, b *brood, riding span) {
	from, to := after(b.born.on, riding.low), after(b.last, riding.high)
	name := b.name()
	t.Windows = append(t.Windows, Window{Kind: FirstMoultWindow, From: from, Until: to + 1, Name: "first-moult/" + name, Title: "First moult of the brood possible",
		Text: "Look without opening. Log first_moult on the day it is seen.", At: b.born.at, Cited: riding.cited})
	t.Tasks = append(t.Tasks,
		Task{Name: "first-moult/" + name, Kind: schema.KindWatch, On: from, Interval: 1, Times: int(to-from) + 1,
			Text: "first moult of the young? look, do not open; log first_moult", At: b.born.at, Cited: riding.cited},
		Task{Name: "first-moult-late/" + name, Kind: schema.KindWatch, On: to + 1, High: true,
			Text: "no first moult of the young in the log: look, and log it or what happened", At: b.born.at, Cited: riding.cited})
	if to < r.today {
		r.found.Add(finding.Finding{Rule: ruleLate, At: b.born.at, Text: "no first moult is logged of the young born on " + b.born.on.Words(),
			Limit:  "by " + to.Words() + ", " + wording.Days(riding.high) + ", species sheet " + r.sheet.Name.V,
			Source: r.c.Library.Cite(riding.cited),
			Write:  "the day of the moult with first_moult; or what became of them, with separated 0"})
	}
}

// prepare asks for boxes by the first day on which the young may moult.
func (r *reader) prepare(t *track, b *brood, riding span, apart bool) {
	if !apart || !b.born.ok || b.separated.ok {
		return
	}
	on := after(b.born.on, riding.low)
	if b.first.ok && (!riding.ok || b.first.on < on) {
		on = b.first.on
	}
	n, cited := b.number, plan.Cited{}
	if n == 0 {
		if f := r.sheet.Figure(schema.FigureBroodSize, "adult"); f != nil {
			n, cited = int(f.Range.High), f.Cited
		}
	}
	pots := "nursery pots"
	if n > 0 {
		pots = wording.Count(n, "nursery pot", "nursery pots")
	}
	t.Tasks = append(t.Tasks, Task{Name: "pots/" + b.name(), Kind: schema.KindPrepare, On: on,
		Text: "prepare " + pots + ": wanted from today", At: b.born.at, Cited: cited})
}

// firstMeal is what the first moult sets off: separation, where the species' young
// are taken out, and the day by which they must have eaten.
func (r *reader) firstMeal(t *track, b *brood, apart bool) {
	s, name := b.first, b.name()
	meal := r.days(schema.FigureFirstMeal, "young").or(starves)
	task := Task{Name: "brood-meal/" + name, Kind: schema.KindFeed, On: after(s.on, meal.high), High: true, Killed: true,
		Text: "first meal deadline for the young: small, killed", At: s.at, Cited: meal.cited}
	if !apart && !b.separated.ok {
		if t.HasFed && t.Fed > s.on {
			return
		}
		task.Meal, task.Text = true, "first meal for the young with their mother, by today: small, killed, in pieces"
		t.Tasks = append(t.Tasks, task)
		return
	}
	t.Tasks = append(t.Tasks, task)
	if b.separated.ok {
		return
	}
	leave := r.leaving()
	from := after(s.on, leave.low)
	text := "separate the young, from today"
	if from < r.today {
		text = "separate the young, due since " + from.Short()
	}
	t.Tasks = append(t.Tasks,
		Task{Name: "separate/" + name, Kind: schema.KindSeparate, On: max(from, r.today), Text: text, At: s.at, Cited: leave.cited},
		Task{Name: "mother-meal/" + name, Kind: schema.KindFeed, On: from, Meal: true, Instead: true, Text: "the mother: one small item, once the young are out", At: s.at})
}
