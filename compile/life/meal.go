package life

import (
	"strconv"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// fed notes a meal that was taken. A single animal that eats is not about to moult.
func (r *reader) fed(t *track, e *plan.Event) {
	t.Fed, t.HasFed = e.Date, true
	t.eat(e.Date)
	if t.stage().Stage == newborn {
		r.ate(t, e) // who eats has moulted
	}
	t.settled(e.Date)
	if t.now() == 1 {
		r.closeMoult(t, e.Date)
	}
	if s := t.moult; s.ok && t.now() == 1 {
		if wait := r.meal(t); e.Date < after(s.on, wait.low) {
			text := "fed " + wording.Days(int(e.Date-s.on)) + " after its moult, early: check fangs, mouth and what is left"
			t.Tasks = append(t.Tasks, Task{Name: "early-meal/" + e.Date.String(), Kind: schema.KindWatch, On: e.Date + 1, Text: text, At: e.At, Cited: wait.cited})
			r.found.Add(finding.Finding{Rule: ruleEarlyMeal, At: e.At, Text: t.Animals.Name.V + ": " + text, Source: r.c.Library.Cite(wait.cited),
				Limit: wording.Days(wait.low) + " from a moult to the first meal", Write: "nothing; the next meal waits"})
		}
	}
}

// ate is a meal of young of whose first moult nothing is logged.
func (r *reader) ate(t *track, e *plan.Event) {
	if riding := r.onMother(t); t.of != nil && t.of.born.ok && riding.ok && e.Date < after(t.of.born.on, riding.low) {
		r.found.Add(finding.Finding{Rule: ruleOrder, At: e.At, Text: t.Animals.Shown() + " were born on " + t.of.born.on.Words() + " and cannot eat before their first moult: nothing follows",
			Write: "the day of their first moult with first_moult; or fed for their mother"})
		t.HasFed, t.Fed = false, 0
		return
	}
	if t.of != nil {
		r.moulted(t, t.of, e)
		return
	}
	t.entered = see(e)
	t.grow(e.Date)
}

// eat ends a run of refusals, and the pause after it.
func (t *track) eat(on civil.Date) {
	if t.pause > 0 {
		hold := &t.Holds[t.pause-1]
		hold.Until = max(hold.From, min(hold.Until, on))
	}
	t.refused, t.firstRefused, t.Refused, t.pause = seen{}, seen{}, 0, 0
}

// refusal counts days on which meals were refused. After so many in a row meals
// pause: in an animal that still grows it is often the first sign of a moult.
func (r *reader) refusal(t *track, e *plan.Event) {
	if t.refused.ok && t.refused.on == e.Date {
		return
	}
	if t.Refused == 0 {
		t.firstRefused = see(e)
	}
	t.refused = see(e)
	t.Refused++
	pause, ok := r.pause(t)
	if !ok || t.now() > 1 {
		return // of a group others eat
	}
	if t.pause > 0 {
		hold := &t.Holds[t.pause-1]
		hold.Until = max(hold.From, min(hold.Until, e.Date+1))
	}
	end := after(e.Date, pause.high)
	t.Holds = append(t.Holds, Hold{From: e.Date + 1, Until: end, State: r.state(t, schema.StateRefused), At: e.At, Cited: pause.cited,
		Why: wording.Count(t.Refused, "meal", "meals") + " refused, the last " + dated(e.Date), End: wording.Until(end)})
	t.pause = len(t.Holds)
}

// pause is how long meals pause after the refusals there are, where they do.
func (r *reader) pause(t *track) (span, bool) {
	if t.Sheet == nil {
		return span{}, false
	}
	stage := t.stage().Stage
	enough, pause := t.Sheet.Figure(schema.FigureRefusalsToPause, stage), t.days(schema.FigureRefusalPause, stage)
	return pause, enough != nil && float64(t.Refused) >= enough.Range.Low && pause.high > 1
}

// fasting says what is done while meals pause, and looks into a fast that goes on. It
// is counted from the last meal that was taken, up to today and never beyond.
func (r *reader) fasting(t *track) {
	if t.Refused == 0 {
		return
	}
	s, stage := t.refused, t.stage().Stage
	if pause, ok := r.pause(t); ok && t.now() == 1 {
		name, end := s.on.String(), after(s.on, pause.high)
		offer := Task{Name: "offer/" + name, Kind: schema.KindFeed, On: end, Text: "offer one small item", Meal: true, Instead: true, At: s.at, Cited: pause.cited}
		if age(stage) <= age("young") {
			offer.Text, offer.Killed = "offer a smaller item", true
		}
		t.Tasks = append(t.Tasks, offer)
		if pause.high > 3 {
			t.Tasks = append(t.Tasks, Task{Name: "refusals/" + name, Kind: schema.KindWatch, On: s.on + 1, Interval: 7, Times: r.weeks(s.on+1, end),
				Text: "pre-moult watch: do not dig", At: s.at, Cited: pause.cited})
		}
	}
	if t.premoult.ok || t.sealed.ok || t.hanging.ok || t.laid.ok {
		return // it is known why it fasts: the questions of that state are asked
	}
	since, text := t.firstRefused, "first refusal on "
	if t.HasFed && t.Fed < since.on {
		since.on, text = t.Fed, "last meal on "
	}
	text += since.on.Words()
	if t.now() > 1 {
		text = "1 of " + strconv.Itoa(t.now()) + ": " + text
	}
	r.fast(t, since, text, stage)
}

// fast asks about a fast: a day to look, a day to try, a day on which it stands first,
// and a day to get help, as the sheet has them for the stage.
func (r *reader) fast(t *track, since seen, text, stage string) {
	on := since.on.String()
	if look := t.days(schema.FigureFastLook, stage); look.ok {
		t.Tasks = append(t.Tasks, Task{Name: "fast-look/" + on, Kind: schema.KindWatch, On: after(since.on, look.low), At: since.at, Cited: look.cited,
			Text: text + ": " + t.why(stage)})
	}
	if try := t.days(schema.FigureFastTry, stage); try.ok {
		t.Tasks = append(t.Tasks, Task{Name: "fast-try/" + on, Kind: schema.KindWatch, On: after(since.on, try.low), At: since.at, Cited: try.cited,
			Text: text + ": next meal smaller, and killed"})
	}
	ask := func(name string, at span, until civil.Date, words string) {
		if at.ok {
			t.Asks = append(t.Asks, Ask{Name: name + "/" + on, From: after(since.on, at.low), Until: until, Every: 3, Urgent: true, At: since.at, Cited: at.cited,
				Text: text + ": " + words, Short: words, Aside: text, Said: t.Animals.Name.V + " has not eaten since " + since.on.Words(),
				Limit: wording.Days(at.low) + ", species sheet " + t.Sheet.Name.V, Write: "fed, on the day when it eats; premoult, or died"})
		}
	}
	if t.ageing(since.on, stage, text) {
		return
	}
	alarm, help, until := t.days(schema.FigureFastAlarm, stage), t.days(schema.FigureFastHelp, stage), civil.Date(0)
	if help.ok && help.low > alarm.low {
		until = after(since.on, help.low)
	}
	if !help.ok || until != 0 { // of two that are due on one day the later one is enough
		words := "look at belly, water and temperature; log fed when it eats"
		if t.mayBeOld(stage) {
			words = "old age? " + words
		}
		ask("fast", alarm, until, words)
	}
	ask("fast-help", help, 0, "get help from a mentor or veterinarian; log fed when it eats")
}

// why is what a first look into a fast asks: no male is gravid, nor is one that grows.
func (t *track) why(stage string) string {
	out := "fat or thin? warm, damp"
	if t.males < t.now() && (stage == "adult" || stage == "") {
		out += ", gravid"
	}
	if out += "?"; t.mayBeOld(stage) {
		out += " old age?"
	}
	return out
}

// oldAge is how long after its last moult a grown animal is old.
func (t *track) oldAge() span {
	if male := t.days(schema.FigureOldAgeMale, ""); male.ok && t.males == t.now() {
		return male
	}
	return t.days(schema.FigureOldAge, "")
}

// mayBeOld reports whether nobody can tell if an animal is old, since its last moult was
// not seen.
func (t *track) mayBeOld(stage string) bool {
	return stage == "adult" && !t.moult.ok && (t.oldAge().ok || t.males > 0 && t.days(schema.FigureOldAgeMale, "").ok)
}

// ageing says, of a grown animal that is old when its fast would alarm, how it is made
// easy for it. An old animal that eats less is not ill, and nothing about it is urgent.
// Whether it is old is known only where its last moult was seen.
func (t *track) ageing(since civil.Date, stage, text string) bool {
	alarm, old := t.days(schema.FigureFastAlarm, stage), t.oldAge()
	if !old.ok || stage != "adult" || !t.moult.ok || after(since, alarm.low) < after(t.moult.on, old.low) {
		return false
	}
	on := after(since, alarm.low)
	t.Tasks = append(t.Tasks, Task{Name: "old/" + since.String(), Kind: schema.KindWatch, On: on, Interval: 7, Times: t.home.weeks(on, t.home.h.Last()+1), At: t.moult.at, Cited: old.cited,
		Text: text + ": old age? make it easy: soft or killed food held to its mouth, a drop of water, a low perch"})
	return true
}
