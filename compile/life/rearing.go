package life

import (
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

const (
	// hardens is how many days after the first moult young are taken out at the
	// earliest where the sheet does not say (common practice, no source).
	hardens = 7
	// tooLong is how many days after the first moult young that are to be taken out
	// should be (common practice, no source).
	tooLong = 14
	// starves is by how many days after the first moult young must have eaten where the
	// sheet does not say: unfed young of Rhopalurus rochai died from day 11 on
	// (Sarmento et al. 2008, J. Arachnol. 36:476-479).
	starves = 10
	// firstOffer is how many days after it killed pieces are offered (common practice,
	// no source).
	firstOffer = 3
	// birth is how many days a birth is left quite alone (common practice, no source).
	birth = 2
	// recovers is for how many days a mother is left in peace once her young are out
	// (common practice, no source).
	recovers = 14
	// grown is after how many days from their first moult young that stay with their
	// mother hunt alone: four weeks, a keeper's report of Pandinus imperator.
	grown = 28
)

// onMother is the days from birth to the first moult.
func (r *reader) onMother(t *track) span {
	if s := t.days(schema.FigureOnMother, newborn); s.ok {
		return s
	}
	return t.instar(1)
}

// apart reports whether the young are taken out.
func (t *track) apart() bool {
	return t.Sheet != nil && t.Sheet.Is(schema.FigureSeparation, "separate")
}

// leaving is the days from the first moult until they are.
func (t *track) dispersal() span { return t.days(schema.FigureDispersal, "young").or(hardens) }

// rearing says what a brood asks of its mother's keeper, from the birth until the
// young are out.
func (r *reader) rearing(t *track, b *brood) {
	t.Holds = append(t.Holds, r.broodHolds(t, b)...)
	if b.separated.ok {
		return
	}
	t.Brood = true
	riding := r.onMother(t)
	if b.born.ok {
		r.alone(t, b)
	}
	switch {
	case b.first.ok:
		r.prepare(t, b, riding)
		r.separate(t, b)
	case b.born.ok && riding.ok:
		r.quiet(t, b)
		r.prepare(t, b, riding)
		r.await(t, b, riding)
	default:
		r.quiet(t, b)
		on := r.weekday(t)
		if b.born.ok {
			on = b.born.on + 7
		}
		t.Asks = append(t.Asks, Ask{Name: "brood/" + b.name(), From: on, Every: 7, Undated: !b.born.ok, At: r.broodAt(t, b),
			Text:  "young moulted? white: no, light brown: yes; look, do not lift; log first_moult",
			Said:  "since when the young of " + t.Animals.Name.V + " are on her is not known, so that nobody knows when they must be fed",
			Write: "in the log, the day of the birth with born; and first_moult on the day when it is seen"})
	}
}

func (r *reader) quiet(t *track, b *brood) {
	if b.born.ok {
		t.Tasks = append(t.Tasks, Task{Name: "born/" + b.name(), Kind: schema.KindWatch, On: b.born.on,
			Text: "young on her back: leave alone; note a rough count at the next look", At: b.born.at})
	}
}

// alone asks for others of the box to be taken out, and not her, once she has young.
func (r *reader) alone(t *track, b *brood) {
	others := t.now() - 1
	for _, o := range r.living() {
		if o != t && o.Mother == nil && o.of == nil && age(o.stage().Stage) != age("young") {
			others += o.now()
		}
	}
	if others <= 0 || r.boxes() || r.refused(t) {
		return
	}
	t.Asks = append(t.Asks, Ask{Name: "others-out/" + b.name(), About: AboutBrood, Kind: schema.KindRehouse, From: b.born.on, Every: 1, Urgent: true, Harm: HarmBirth, At: b.born.at,
		Text:  "take the others out, not her: she has young; log moved",
		Said:  wording.Count(others, "other animal is", "other animals are") + " with a mother and her young",
		Write: "moved, and the enclosure that the others went to"})
}

// broodHolds are what is held for a mother: the birth itself, then while young are on
// her, then while they are round her, and a time of peace after that.
func (r *reader) broodHolds(t *track, b *brood) []Hold {
	if !t.Bears() || t.Sheet != nil && t.Sheet.StageOf(1) != "" && t.Sheet.StageOf(1) != newborn {
		return nil // their young are free at once, and need nothing of her
	}
	still := t.days(schema.FigureUndisturbed, "adult")
	on := Hold{State: r.state(t, schema.StateBrood), Why: "young on her", At: r.broodAt(t, b), Cited: still.cited, Part: t.now() > 1}
	end := r.h.Last() + 1
	on.Until, on.Open, on.End = end, true, "until first_moult is logged"
	var out []Hold
	if b.born.ok {
		at := on
		at.State, at.From, at.Until, at.Open = r.state(t, schema.StateBirth), b.born.on, b.last+birth, false
		at.Why, at.End = "born "+dated(b.born.on), wording.Until(at.Until)
		out = append(out, at)
		on.From, on.Why = at.Until, "young on her since "+dated(b.born.on)
	}
	out = append(out, on)
	if b.first.ok {
		ended(out, b.first.on)
		then := on
		then.State, then.From, then.Why = r.state(t, schema.StateYoungRound), b.first.on, "young moulted "+dated(b.first.on)
		then.End = "until separated is logged"
		if !t.apart() {
			then.Until, then.Open = max(after(b.first.on, grown), after(b.born.on, still.high)), false
			then.End = wording.Until(then.Until)
		}
		out = append(out, then)
	}
	if b.separated.ok {
		ended(out, b.separated.on)
		peace := Hold{State: r.state(t, schema.StateAfterBrood), From: b.separated.on, Until: b.separated.on + recovers, At: b.separated.at, Why: "no young with her since " + dated(b.separated.on), Part: on.Part}
		peace.End = wording.Until(peace.Until)
		out = append(out, peace)
	}
	return out
}

// ended ends holds on a day.
func ended(holds []Hold, on civil.Date) {
	for i := range holds {
		if h := &holds[i]; h.Until > on {
			h.Until, h.Open = on, false
		}
	}
}

func (r *reader) broodAt(t *track, b *brood) source.Place {
	switch {
	case b.born.ok:
		return b.born.at
	case t.Animals.State.Set():
		return t.Animals.State.At
	}
	return b.young.Animals.Stage.At
}

// await watches for the first moult and nothing else: a separation exists only once
// it is logged. Past the time it is asked for each day.
func (r *reader) await(t *track, b *brood, riding span) {
	from, to := after(b.born.on, riding.low), after(b.born.on, riding.high)
	name := b.name()
	t.Windows = append(t.Windows, Window{Kind: FirstMoultWindow, From: from, Until: to + 1, Name: "first-moult/" + name, Title: "First moult of the brood possible",
		Text: "Look without opening. Log first_moult on the day it is seen.", At: b.born.at, Cited: riding.cited})
	t.Tasks = append(t.Tasks, Task{Name: "first-moult/" + name, Kind: schema.KindWatch, On: from, Interval: 1, Times: int(to - from),
		Text: "first moult of the young? look, do not open; log first_moult", At: b.born.at, Cited: riding.cited})
	a := r.lateMoult(t, b)
	a.Until, _, _ = r.firstMealAsked(b.young, to+1) // from then on one question asks for both
	t.Asks = append(t.Asks, a)
}

// lateMoult asks for the first moult of a brood once its time is over.
func (r *reader) lateMoult(t *track, b *brood) Ask {
	riding := r.onMother(t)
	to := after(b.born.on, riding.high)
	return Ask{Name: "first-moult-late/" + b.name(), Rule: ruleLate, From: to, Every: 1, Urgent: true, At: b.born.at, Cited: riding.cited,
		Text:  "have the young moulted? white: not yet; light brown: log first_moult",
		Said:  "no first moult is logged of the young born on " + b.born.on.Words(),
		Limit: "by " + to.Words() + ", " + wording.Days(riding.high) + ", species sheet " + t.Sheet.Name.V,
		Write: "the day of the moult with first_moult; or what became of them, with separated 0"}
}

// prepare asks for boxes by the first day on which the young may moult.
func (r *reader) prepare(t *track, b *brood, riding span) {
	if !t.apart() || !b.born.ok {
		return
	}
	on := after(b.born.on, riding.low)
	if b.first.ok && (!riding.ok || b.first.on < on) {
		on = b.first.on
	}
	task := Task{Name: "pots/" + b.name(), Kind: schema.KindPrepare, On: on, At: b.born.at}
	pots := wording.Count(r.size(b), "nursery pot", "nursery pots")
	if b.number == 0 {
		pots = "nursery pots, one for each young"
		if f := t.Sheet.Figure(schema.FigureBroodSize, "adult"); f != nil {
			task.Cited = f.Cited
		}
	}
	task.Text = "prepare " + pots + ": wanted from today"
	t.Tasks = append(t.Tasks, task)
}

// separate asks for young to be taken out, where those of the species are.
func (r *reader) separate(t *track, b *brood) {
	if !t.apart() {
		return
	}
	s, name := b.first, b.name()
	leave := t.dispersal()
	from, late := after(s.on, leave.low), after(s.on, max(tooLong, leave.low+1))
	t.Tasks = append(t.Tasks,
		Task{Name: "separate/" + name, Kind: schema.KindSeparate, On: from, Interval: 1, Times: int(late - from), Text: "separate the young, from " + from.Words(), At: s.at, Cited: leave.cited},
		Task{Name: "mother-meal/" + name, Kind: schema.KindFeed, On: from, Meal: true, Instead: true, Killed: true, Text: "first meal without her young: one small killed item", At: s.at})
	t.Asks = append(t.Asks, Ask{Name: "separate-late/" + name, Kind: schema.KindSeparate, From: late, Every: 1, Urgent: true, At: s.at, Cited: leave.cited,
		Text:  "separate the young, due since " + from.Words() + "; log separated and to where, or separated 0 where none is left",
		Said:  "the young of " + t.Animals.Name.V + " moulted on " + s.on.Words() + " and are still with her",
		Limit: "taken out from " + wording.Days(leave.low) + " after their first moult, species sheet " + t.Sheet.Name.V,
		Write: "separated, how many and the enclosure that they went to"})
}
