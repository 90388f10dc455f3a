package life

import (
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// usualWait is how many days meals wait after a moult where the sheet does not say
// (common practice, no source).
const usualWait = 7

func (r *reader) premoult(t *track, e *plan.Event) {
	r.terminal(t, e)
	if !t.premoult.ok {
		t.premoult = see(e)
	}
}

func (r *reader) hanging(t *track, e *plan.Event) {
	r.terminal(t, e)
	if !t.hanging.ok {
		t.hanging = see(e)
	}
}

// terminal reports whether the group is of adults that do not moult any more, and
// says so of a line that has them moult.
func (r *reader) terminal(t *track, e *plan.Event) bool {
	if !r.grown(t) {
		return false
	}
	f := r.sheet.Figure(schema.FigureMoultsAsAdult, "")
	r.found.Add(finding.Finding{Rule: ruleAdult, At: e.At,
		Text:   e.Word.Name + " is said of an adult, but " + r.sheet.Shown() + " does not moult once it is adult",
		Limit:  "moults-as-adult = false, species sheet " + r.sheet.Name.V,
		Source: r.c.Library.Cite(f.Cited),
		Write:  "the stage or the instar it was in, in the animals block; or the right animals in the log"})
	return true
}

func (r *reader) grown(t *track) bool {
	return r.sheet != nil && t.stage().Stage == "adult" && r.sheet.Is(schema.FigureMoultsAsAdult, "false")
}

// moult notes a moult. In a group a line is about one animal unless it says how
// many, and the group is in the next instar once all have moulted: its youngest
// set its limits.
func (r *reader) moult(t *track, e *plan.Event) {
	if t.now() == 1 && t.moult.ok && t.moult.on == e.Date {
		return
	}
	grown := r.terminal(t, e)
	r.closeMoult(t, e.Date)
	t.eat(e.Date)
	if t.now() == 1 {
		t.before = t.moult
	}
	t.moult = see(e)
	if !grown {
		t.moulted += r.howMany(e, 1, t.now())
	}
	if t.moulted >= t.now() {
		t.moulted, t.entered = 0, see(e)
		t.grow(e.Date, r.sheet)
	}
	r.soft(t)
}

// grow puts the group into the next instar, and into the stage that goes with it.
// A stage never goes back: males of some species are adult an instar early.
func (t *track) grow(on civil.Date, sheet *plan.SpeciesSheet) {
	s := t.stage()
	stage := ""
	if s.Instar > 0 {
		s.Instar++
		if sheet != nil {
			stage = sheet.StageOf(s.Instar)
		}
	} else {
		// By the meaning of the words: newborn is before the first moult, and
		// subadult is one moult before maturity.
		switch s.Stage {
		case "newborn":
			stage = "young"
		case "subadult":
			stage = "adult"
		}
	}
	if age(stage) > age(s.Stage) {
		s.Stage = stage
	}
	if first := &t.Stages[0]; len(t.Stages) == 1 && first.From >= on {
		first.From = on - 1
	}
	s.From = on
	t.Stages = append(t.Stages, s)
}

func age(stage string) int {
	for i, c := range schema.Stages {
		if c.Name == stage {
			return i + 1
		}
	}
	return 0
}

// closeMoult ends what waited for a moult. What held stays known: what it took out
// stays out, and what it put off comes after it.
func (r *reader) closeMoult(t *track, on civil.Date) {
	for _, hold := range r.moultHolds(t) {
		hold.Until, hold.Open = on, false
		t.Holds = append(t.Holds, hold)
	}
	t.premoult, t.hanging = seen{}, seen{}
}

func (r *reader) moultHolds(t *track) (out []Hold) {
	open := func(s seen, state *schema.State, why string) {
		if s.ok {
			out = append(out, Hold{From: s.on, Until: r.h.Last() + 1, Open: true, State: state,
				Why: why + " since " + s.on.Brief(), End: "until the moult is logged", At: s.at})
		}
	}
	open(t.premoult, schema.StatePremoult, "before a moult")
	open(t.hanging, schema.StateMoulting, "hanging to moult")
	return out
}

// beforeMoult holds what must wait for a moult that is near.
func (r *reader) beforeMoult(t *track) {
	t.Holds = append(t.Holds, r.moultHolds(t)...)
	s := t.premoult
	if !s.ok {
		return
	}
	text := "pre-moult watch: do not dig"
	var cited plan.Cited
	if r.sheet != nil {
		if f := r.sheet.Figure(schema.FigureHumidityPremoult, t.stage().Stage); f != nil {
			text += "; humidity " + f.Range.String()
			cited = f.Cited
		}
	}
	t.Tasks = append(t.Tasks, Task{Name: "premoult/" + s.on.String(), Kind: schema.KindWatch, On: s.on,
		Interval: 7, Times: r.weeks(s.on, r.h.Last()+1), Text: text, At: s.at, Cited: cited})
}

// soft holds meals and keeps hands off until the new skin is hard.
func (r *reader) soft(t *track) {
	hold := Hold{From: t.moult.on, Why: "moulted " + t.moult.on.Brief(), At: t.moult.at}
	put := func(state *schema.State, wait span) {
		hold.State, hold.Until, hold.Cited = state, after(hold.From, wait.high), wait.cited
		hold.End = wording.Until(hold.Until)
		t.Holds = append(t.Holds, hold)
	}
	put(schema.StateSoft, r.meal(t))
	if still := r.days(schema.FigureHandlingWait, t.stage().Stage); still.ok {
		put(schema.StateHardening, still)
	}
}

// meal is the wait from a moult to the first meal.
func (r *reader) meal(t *track) span {
	return r.days(schema.FigureWaitAfterMoult, t.stage().Stage).or(usualWait)
}

// afterMoult puts the first meal after the last moult.
func (r *reader) afterMoult(t *track) {
	s := t.moult
	if !s.ok {
		return
	}
	t.Tasks = append(t.Tasks, Task{Name: "moult/" + s.on.String(), Kind: schema.KindLeftovers, On: s.on,
		Text: "moulted: take out live feeders, keep water, leave alone", At: s.at})
	if wait := r.meal(t); !t.HasFed || t.Fed <= s.on {
		t.Tasks = append(t.Tasks, Task{Name: "first-meal/" + s.on.String(), Kind: schema.KindFeed, On: after(s.on, wait.high),
			Text: "first meal after the moult: one small item", Meal: true, Instead: true, At: s.at, Cited: wait.cited})
	}
}

// The share of its last instar that an animal's next one lasted was between 0.64
// and 2.55 in the two scorpions followed longest: Opisthacanthus madagascariensis
// (Lourenço, Leguin and Cloudsley-Thompson 2010) and Chiromachus ochropus (the
// same, 2011).
const shortestShare, longestShare = 0.6, 2.6

// forecast gives the days on which the next moult is possible, wide: from the
// animal's own last two moults, else from the length of its instar in the sheet.
func (r *reader) forecast(t *track) {
	if t.stage().Stage == "adult" && (r.sheet == nil || !r.sheet.Is(schema.FigureMoultsAsAdult, "true")) {
		return
	}
	w := Window{Kind: MoultWindow, Title: "Moult possible (estimate)"}
	if t.now() == 1 && t.before.ok && t.moult.ok {
		last := float64(t.moult.on - t.before.on)
		w.From = after(t.moult.on, int(last*shortestShare))
		w.Until = after(t.moult.on, int(last*longestShare)+1)
		w.At = t.moult.at
		w.Name = "moult/" + t.moult.on.String()
		w.Text = "Estimated from its last two moults. Dull, fat, hiding: log premoult, and meals stop."
	} else {
		at := t.stage().Instar
		since := t.entered
		if b := t.Animals.Born; !since.ok && at == 1 && b.Set() {
			since = seen{b.V, b.At, true}
		}
		length := r.instar(at)
		if at == 0 || !since.ok || !length.ok {
			return
		}
		w.From, w.Until = after(since.on, length.low), after(since.on, length.high)+1
		w.At, w.Cited = since.at, length.cited
		w.Name = "moult/" + since.on.String()
		w.Text = "Estimated from the species sheet. Dull, fat, hiding: log premoult, and meals stop."
	}
	t.Windows = append(t.Windows, w)
}
