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

// hanging is an animal that moults now. One that is none the worse for a moult, as a gecko
// is, sheds its skin on its feet: on its back it is in need of a veterinarian.
func (r *reader) hanging(t *track, e *plan.Event) {
	if wait := t.days(schema.FigureWaitAfterMoult, t.stage().Stage); wait.ok && wait.high == 0 && t.Sheet.Figure(schema.FigureWeightLoss, "") != nil {
		r.ill(t, e)
		return
	}
	r.terminal(t, e)
	if !t.hanging.ok {
		t.hanging = see(e)
	}
}

// sealedIn is an animal that has shut itself in: of what it is a sign depends on what
// else is known of it.
func (r *reader) sealedIn(t *track, e *plan.Event) {
	switch {
	case t.carries() && r.grown(t) && !t.days(schema.FigureSacTime, "adult").ok: // a scorpion that is gravid and seals itself in is near the birth
		r.near(t, e)
	case !t.sealed.ok:
		t.sealed = see(e)
	}
}

// terminal reports whether the group is of adults that do not moult any more, and
// says so of a line that has them moult.
func (r *reader) terminal(t *track, e *plan.Event) bool {
	if !r.grown(t) {
		return false
	}
	if e.Word == schema.WordMatured && !t.moult.ok {
		return true // the plan calls it adult since the moult that the line is about
	}
	f := t.Sheet.Figure(schema.FigureMoultsAsAdult, "")
	r.found.Add(finding.Finding{Rule: ruleAdult, At: e.At,
		Text:   e.Word.Name + " is said of an adult, but " + t.Sheet.Shown() + " does not moult once it is adult",
		Limit:  "moults-as-adult = false, species sheet " + t.Sheet.Name.V,
		Source: r.c.Library.Cite(f.Cited),
		Write:  "the stage or the instar it was in, in the animals block; or the right animals in the log"})
	return true
}

func (r *reader) grown(t *track) bool {
	return t.Sheet != nil && t.stage().Stage == "adult" && t.Sheet.Is(schema.FigureMoultsAsAdult, "false")
}

// moult notes a moult. In a group a line is about one animal unless it says how
// many, and the group is in the next instar once all have moulted: its youngest
// set its limits.
func (r *reader) moult(t *track, e *plan.Event) {
	if t.now() == 1 && t.moult.ok && t.moult.on == e.Date {
		return
	}
	if t.stage().Stage == newborn && t.of != nil {
		r.moulted(t, t.of, e)
		return
	}
	n, ok := r.howMany(e, 1, t.now())
	if !ok {
		return
	}
	grown := r.terminal(t, e)
	for _, o := range r.twins(t, func(x *track) []seen { return []seen{x.premoult, x.hanging, x.sealed} }) {
		o.home.closeMoult(o, e.Date)
	}
	r.closeMoult(t, e.Date)
	t.eat(e.Date)
	if t.now() == 1 {
		t.before = t.moult
	}
	t.moult = see(e)
	if t.now() == 1 && !grown && t.stage().Stage == "adult" {
		r.closeLate(t, e.Date) // sperm is shed with the skin
		r.sacEnds(t, e.Date)
	}
	if !grown {
		t.moulted += n
	}
	if t.moulted >= t.now() {
		t.moulted, t.entered = 0, see(e)
		t.grow(e.Date)
	}
	r.soft(t, n)
}

// matured is the last moult: it is adult from there.
func (r *reader) matured(t *track, e *plan.Event) {
	r.moult(t, e)
	if t.now() == 1 && t.stage().Stage != "adult" {
		s := t.stage()
		s.Stage = "adult"
		t.enter(s, e.Date)
	}
}

// grow puts the group into the next instar, and into the stage that goes with it.
// A stage never goes back: males of some species are adult an instar early.
func (t *track) grow(on civil.Date) {
	s, sheet := t.stage(), t.Sheet
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
	t.enter(s, on)
}

// enter puts the group into a stage from a day on.
func (t *track) enter(s Stretch, on civil.Date) {
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
	holds := r.moultHolds(t)
	ended(holds, on)
	t.Holds = append(t.Holds, holds...)
	t.premoult, t.hanging, t.sealed = seen{}, seen{}, seen{}
}

func (r *reader) moultHolds(t *track) (out []Hold) {
	open := func(s seen, state *schema.State, why string) {
		if s.ok {
			out = append(out, Hold{From: s.on, Until: r.h.Last() + 1, Open: true, State: r.state(t, state), Part: t.now() > 1,
				Why: why + " since " + s.on.Brief(), End: "until the moult is logged", At: s.at})
		}
	}
	if open(t.premoult, schema.StatePremoult, "before a moult"); len(out) > 0 {
		out = r.tried(t, out)
	}
	open(t.hanging, schema.StateMoulting, "moulting")
	if s := t.sealed; s.ok && !(t.premoult.ok && t.premoult.on <= s.on) {
		open(s, schema.StateSealed, "sealed in")
		h := &out[len(out)-1]
		h.End = "until a moult or a meal is logged"
		if t.premoult.ok {
			h.Until, h.Open = t.premoult.on, false
		}
	}
	return out
}

// tried parts a hold before a moult at the day from which a killed item is offered once
// a week: before it nothing is.
func (r *reader) tried(t *track, holds []Hold) []Hold {
	first := holds[0]
	none, weekly := *first.State, *first.State
	none.May[schema.RowKilled] = schema.May{Manner: schema.Held}
	weekly.May[schema.RowKilled] = schema.May{Manner: schema.Hatch, Every: 7, Words: "one small item at its mouth, out again next day"}
	first.State = &none
	try := t.days(schema.FigurePremoultTry, t.stage().Stage)
	if !try.ok || t.sealed.ok || t.now() > 1 {
		return []Hold{first}
	}
	then := first
	then.State, then.From = &weekly, after(first.From, try.low)
	first.Until, first.Open = then.From, false
	return []Hold{first, then}
}

// beforeMoult holds what must wait for a moult that is near, and asks when it takes
// long: never with a date, and never as a refusal.
func (r *reader) beforeMoult(t *track) {
	t.Holds = append(t.Holds, r.moultHolds(t)...)
	if s := t.hanging; s.ok {
		takes := t.days(schema.FigureMoultTakes, t.stage().Stage).or(1)
		t.Asks = append(t.Asks, Ask{Name: "hanging/" + s.on.String(), From: after(s.on, takes.high), Every: 1, Urgent: true, Harm: HarmBirth, At: s.at, Cited: takes.cited,
			Text:  "out of its old skin? look from outside, log moult; stuck for hours: pull nothing, ring for help",
			Said:  t.Animals.Name.V + " has been moulting since " + s.on.Words(),
			Write: "the day of the moult, with moult; or died"})
	}
	s := t.premoult
	if !s.ok {
		s = t.sealed
	}
	if !s.ok {
		return
	}
	if t.sealed.ok && t.carries() && !r.grown(t) {
		t.Asks = append(t.Asks, Ask{Name: "sealed/" + s.on.String(), From: t.sealed.on, Every: 7, At: t.sealed.at,
			Text:  "sealed in: before a moult, or a sac? look from outside, open nothing; log premoult or laid",
			Write: "what it turned out to be: premoult, moult or laid"})
	}
	text := "pre-moult watch: do not dig"
	var cited plan.Cited
	if t.Sheet != nil {
		if f := t.Sheet.Figure(schema.FigureHumidityPremoult, t.stage().Stage); f != nil {
			text += "; humidity " + f.Range.String()
			cited = f.Cited
		}
	}
	t.Tasks = append(t.Tasks, Task{Name: "premoult/" + s.on.String(), Kind: schema.KindWatch, On: s.on,
		Interval: 7, Times: r.weeks(s.on, r.h.Last()+1), Text: text, At: s.at, Cited: cited})
	r.longPremoult(t, s)
}

// longPremoult asks about a moult that does not come.
func (r *reader) longPremoult(t *track, s seen) {
	if r.grown(t) {
		return
	}
	stage := t.stage().Stage
	look, help := t.days(schema.FigurePremoultLook, stage), t.days(schema.FigurePremoultHelp, stage)
	ask := func(name string, on span, until civil.Date, urgent bool, every int, text, said string) {
		if on.ok {
			t.Asks = append(t.Asks, Ask{Name: name + "/" + s.on.String(), From: after(s.on, on.low), Until: until, Every: every, Urgent: urgent, At: s.at, Cited: on.cited,
				Text: text, Said: said, Limit: "asked after " + wording.Days(on.low) + ", species sheet " + t.Sheet.Name.V, Write: "what is seen: moult, fed where it ate, refused or died"})
		}
	}
	said := t.Animals.Name.V + " has been before a moult since " + s.on.Words()
	until := civil.Date(0)
	if help.ok && help.low > look.low {
		until = after(s.on, help.low)
	}
	ask("premoult-look", look, until, true, 7, "moulted? look, do not dig; log moult, or fed if it ate", said)
	ask("premoult-help", help, 0, true, 7, "before a moult since "+s.on.Short()+": width of the belly? get help from a mentor; log moult, fed or died", said)
}

// soft holds meals and keeps hands off until the new skin is hard.
func (r *reader) soft(t *track, n int) {
	hold := Hold{From: t.moult.on, Why: "moulted " + t.moult.on.Brief(), At: t.moult.at, Part: n < t.now(), Some: n}
	put := func(state *schema.State, wait span) {
		hold.State, hold.Until, hold.Cited = r.state(t, state), after(hold.From, wait.high), wait.cited
		hold.End = wording.Until(hold.Until)
		t.Holds = append(t.Holds, hold)
	}
	put(schema.StateSoft, r.meal(t))
	if still := t.days(schema.FigureHandlingWait, t.stage().Stage); still.ok {
		put(schema.StateHardening, still)
	}
}

// meal is the wait from a moult to the first meal.
func (r *reader) meal(t *track) span {
	return t.days(schema.FigureWaitAfterMoult, t.stage().Stage).or(usualWait)
}

// afterMoult puts the first meal after the last moult.
func (r *reader) afterMoult(t *track) {
	s := t.moult
	if !s.ok {
		return
	}
	t.Tasks = append(t.Tasks, Task{Name: "moult/" + s.on.String(), Kind: schema.KindLeftovers, On: s.on, High: true,
		Text: "moulted: take out live feeders within reach, touch nothing else", At: s.at})
	if t.Part(s.on) {
		return // of a group, one that cannot be told apart is not fed alone
	}
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
	if t.stage().Stage == "adult" && (t.Sheet == nil || !t.Sheet.Is(schema.FigureMoultsAsAdult, "true")) {
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
		length := t.instar(at)
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
