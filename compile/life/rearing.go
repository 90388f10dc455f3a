package life

import (
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
)

const (
	// hardens is how many days after the first moult young are taken out at the
	// earliest where the sheet does not say (common practice, no source).
	hardens = 7
	// starves is how many days after the first moult young must have eaten where the
	// sheet does not say: unfed young of Rhopalurus rochai died from day 11 on
	// (Sarmento et al. 2008, J. Arachnol. 36:476-479).
	starves = 10
	// mostBorn bounds the number of a brood, as the log bounds every number.
	mostBorn = 1e6
)

// brood is young on or around their mother. One that the plan alone speaks of has
// no birth.
type brood struct {
	born      seen
	number    int // 0 where it was not said
	first     seen
	separated seen
}

func (r *reader) born(t *track, e *plan.Event) {
	if from, to, gestation := r.term(t); gestation.ok && (e.Date < from || e.Date > to) {
		r.found.Add(finding.Finding{Rule: ruleTerm, At: e.At,
			Text:   "born " + strconv.Itoa(int(e.Date-t.matings[0].on)) + " days after the mating of " + t.matings[0].on.Words(),
			Limit:  "gestation of " + strconv.Itoa(gestation.low) + " to " + strconv.Itoa(gestation.high) + " days, species sheet " + r.sheet.Name.V,
			Source: sources(r.sheet.Figure("gestation", "adult")),
			Write:  "the right days; where both are right, leave them: this is worth telling others",
			Also:   []finding.Related{{At: t.matings[0].at, Text: "the mating"}}})
	}
	if hold, ok := r.lateHold(t); ok {
		hold.Until, hold.Open = e.Date, false
		t.Holds = append(t.Holds, hold)
	}
	// In a group another female may still carry young from a later mating.
	if t.now() > 1 && len(t.matings) > 1 {
		t.matings = t.matings[1:]
	} else {
		t.matings = nil
	}
	t.gravid, t.undated = seen{}, false
	b := brood{born: see(e), number: r.howMany(e, 0, mostBorn)}
	if len(t.broods) == 1 && !t.broods[0].born.ok && t.moulting+t.leaving == 0 {
		t.broods[0] = b // the one that the plan speaks of
		return
	}
	t.broods = append(t.broods, b)
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
	if s := r.days("on-mother", "newborn"); s.ok {
		return s
	}
	return r.instar(1)
}

// rearing says what a brood asks for, from the birth to the first meal.
func (r *reader) rearing(t *track, b *brood) {
	riding := r.onMother()
	apart := r.sheet != nil && r.sheet.Is("separation", "separate")
	leave := r.days("dispersal", "young").or(hardens)
	t.Brood = t.Brood || !b.separated.ok
	if hold, ok := r.broodHold(t, b, riding, apart, leave); ok {
		t.Holds = append(t.Holds, hold)
	}
	switch {
	case b.first.ok:
		r.prepare(t, b, riding, apart)
		r.firstMeal(t, b, apart, leave)
	case b.separated.ok:
	case b.born.ok && riding.ok:
		r.quiet(t, b)
		r.prepare(t, b, riding, apart)
		r.await(t, b, riding)
	default:
		r.quiet(t, b)
		on, name := r.weekday(t), "brood"
		if b.born.ok {
			on, name = b.born.on+7, "brood/"+b.born.on.String()
		}
		t.Tasks = append(t.Tasks, Task{Name: name, Kind: "watch", On: on, Interval: 7, Times: r.weeks(on, r.h.Last()+1),
			Text: "young moulted? look, do not lift; log first_moult", At: r.broodAt(t, b)})
	}
}

func (r *reader) quiet(t *track, b *brood) {
	if b.born.ok {
		t.Tasks = append(t.Tasks, Task{Name: "born/" + b.born.on.String(), Kind: "watch", On: b.born.on,
			Text: "young on her back: leave alone; note a rough count at the next look", At: b.born.at})
	}
}

// broodHold leaves mother and young alone for the time the sheet asks for, or else
// until they have moulted; taking them out ends it.
func (r *reader) broodHold(t *track, b *brood, riding span, apart bool, leave span) (Hold, bool) {
	still := r.days("undisturbed", "adult")
	hold := Hold{From: b.born.on, What: Disturbing, Why: "young since " + short(b.born.on), At: r.broodAt(t, b), Cited: still.cited}
	if !b.born.ok {
		hold.From, hold.Why = r.h.From, "young with their mother"
	}
	switch {
	case b.separated.ok:
		hold.Until = b.separated.on
	case b.first.ok && apart:
		hold.Until = after(b.first.on, leave.low)
	case b.first.ok && still.ok && b.born.ok:
		hold.Until = max(b.first.on, after(b.born.on, still.high))
	case b.first.ok:
		hold.Until = b.first.on
	case still.ok && b.born.ok:
		hold.Until = after(b.born.on, max(still.high, riding.high+1))
	default:
		hold.Until, hold.Open, hold.End = r.h.Last()+1, true, "until the first moult of the young is logged"
		return hold, true
	}
	hold.End = until(hold.Until)
	return hold, hold.From < hold.Until
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
	from, to := after(b.born.on, riding.low), after(b.born.on, riding.high)
	name := b.born.on.String()
	t.Windows = append(t.Windows, Window{From: from, Until: to + 1, Name: "first-moult/" + name, Title: "First moult of the brood possible",
		Text: "Look without opening. Log first_moult on the day it is seen.", At: b.born.at, Cited: riding.cited})
	t.Tasks = append(t.Tasks,
		Task{Name: "first-moult/" + name, Kind: "watch", On: from, Interval: 1, Times: int(to-from) + 1,
			Text: "first moult of the young? look, do not open; log first_moult", At: b.born.at, Cited: riding.cited},
		Task{Name: "first-moult-late/" + name, Kind: "watch", On: to + 1, High: true,
			Text: "no first moult of the young in the log: look, and log it or what happened", At: b.born.at, Cited: riding.cited})
	if to < r.h.From {
		r.found.Add(finding.Finding{Rule: ruleLate, At: b.born.at, Text: "no first moult is logged of the young born on " + b.born.on.Words(),
			Limit: "by " + to.Words() + ", " + strconv.Itoa(riding.high) + " days, species sheet " + r.sheet.Name.V,
			Write: "the day of the moult with first_moult; or what became of them, with separated 0"})
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
		if f := r.sheet.Figure("brood-size", "adult"); f != nil {
			n, cited = int(f.Range.High), f.Cited
		}
	}
	pots := "nursery pots"
	if n > 0 {
		pots = strconv.Itoa(n) + " " + pots
	}
	t.Tasks = append(t.Tasks, Task{Name: "pots/" + b.born.on.String(), Kind: "prepare", On: on,
		Text: "prepare " + pots + ": wanted from today", At: b.born.at, Cited: cited})
}

// firstMeal is what the first moult sets off: separation, where the species' young
// are taken out, and the day by which they must have eaten.
func (r *reader) firstMeal(t *track, b *brood, apart bool, leave span) {
	s := b.first
	name := s.on.String()
	meal := r.days("first-meal", "young").or(starves)
	task := Task{Name: "brood-meal/" + name, Kind: "feed", On: after(s.on, meal.high), High: true,
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
	from := after(s.on, leave.low)
	text := "separate the young, from today"
	if from < r.h.From {
		text = "separate the young, due since " + from.Short()
	}
	t.Tasks = append(t.Tasks,
		Task{Name: "separate/" + name, Kind: "separate", On: max(from, r.h.From), Text: text, At: s.at, Cited: leave.cited},
		Task{Name: "mother-meal/" + name, Kind: "feed", On: from, Meal: true, Text: "the mother: one small item, once the young are out", At: s.at})
}
