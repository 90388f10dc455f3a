package life

import (
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// usualWait is how many days meals wait after a moult where the sheet does not say
// (common practice, no source).
const usualWait = 7

func (r *reader) premoult(t *track, e *plan.Event) {
	if r.waits(t, e, &t.premoult, &t.premoults) {
		r.terminal(t, e)
	}
}

// waits notes that some of a group, one unless the line says how many, are in a state
// that ends with a moult. A line after the first says that they are still, or more are.
func (r *reader) waits(t *track, e *plan.Event, s *seen, known *int) bool {
	n, ok := r.howMany(e, 1, t.now())
	if !ok {
		return false
	}
	if !s.ok {
		*s, *known = see(e), 0
	}
	*known = max(*known, n)
	return true
}

// hanging is an animal that moults now. One that is none the worse for a moult, as a gecko
// is, sheds its skin on its feet: on its back it is in need of a veterinarian.
func (r *reader) hanging(t *track, e *plan.Event) {
	if wait := t.days(schema.FigureWaitAfterMoult, t.stage().Stage); wait.ok && wait.high == 0 && t.Sheet.Figure(schema.FigureWeightLoss, "") != nil {
		r.ill(t, e)
		return
	}
	if r.waits(t, e, &t.hanging, &t.hangings) {
		r.terminal(t, e)
	}
}

// sealedIn is an animal that has shut itself in: of what it is a sign depends on what
// else is known of it.
func (r *reader) sealedIn(t *track, e *plan.Event) {
	if t.carries() && r.grown(t) && !t.days(schema.FigureSacTime, "adult").ok { // a scorpion that is gravid and seals itself in is near the birth
		r.near(t, e)
		return
	}
	r.waits(t, e, &t.sealed, &t.sealeds)
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
	r.oneMoulted(t, e.Date, n)
	t.eat(e.Date)
	if t.now() == 1 {
		t.before = t.moult
		t.Moults = append(t.Moults, e.Date)
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
func (r *reader) closeMoult(t *track, on civil.Date) { r.oneMoulted(t, on, quantity.MaxCount) }

// oneMoulted ends what waited for a moult of so many of a group. Where more are known to
// be in a state the others still are.
func (r *reader) oneMoulted(t *track, on civil.Date, n int) {
	var left [3]seen
	for i, x := range t.waiting() {
		if *x.known > n {
			*x.known -= n
			left[i], *x.s = *x.s, seen{}
		}
	}
	holds := r.moultHolds(t)
	ended(holds, on)
	t.Holds = append(t.Holds, holds...)
	for i, x := range t.waiting() {
		if *x.s = left[i]; !left[i].ok {
			*x.known = 0
		}
	}
}

// waiting is a state that ends with a moult, and how many of a group are known to be in it.
type waiting struct {
	s     *seen
	known *int
	state *schema.State
	why   string
}

// waiting are the states of a group that end with a moult.
func (t *track) waiting() [3]waiting {
	return [3]waiting{
		{&t.premoult, &t.premoults, schema.StatePremoult, "before a moult"},
		{&t.hanging, &t.hangings, schema.StateMoulting, "moulting"},
		{&t.sealed, &t.sealeds, schema.StateSealed, "sealed in"},
	}
}

func (r *reader) moultHolds(t *track) (out []Hold) {
	open := func(x waiting) {
		if s := *x.s; s.ok {
			out = append(out, Hold{From: s.on, Until: r.h.Last() + 1, Open: true, State: r.state(t, x.state), Part: max(*x.known, 1) < t.now(), Some: *x.known,
				Why: x.why + " since " + dated(s.on), End: "until the moult is logged", At: s.at})
		}
	}
	all := t.waiting()
	if open(all[0]); len(out) > 0 {
		out = r.tried(t, out)
	}
	open(all[1])
	if s := t.sealed; s.ok && !(t.premoult.ok && t.premoult.on <= s.on) {
		open(all[2])
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
	if !try.ok || t.sealed.ok || first.Part {
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

// Where the sheet says of no stage when a moult that does not come is looked into, it is
// asked after so many days: of larvae, pupae and millipedes in their chambers nobody
// expects that they eat (common practice, no source).
const helped = 180

// longPremoult asks about a moult that does not come, and about a grown animal that has
// shut itself in and does not come out: it does not eat, so that silence would starve it.
func (r *reader) longPremoult(t *track, s seen) {
	stage := t.stage().Stage
	known := func(what *schema.Figure) (on span, limit string) {
		if on = t.days(what, stage); !on.ok {
			on, limit = t.days(what, ""), ", the longest of all stages"
		}
		if on.ok {
			limit += ", species sheet " + t.Sheet.Name.V
		}
		return on, limit
	}
	ask := func(name string, on span, limit string, until civil.Date, every int, urgent bool, text, said string) {
		if on.ok {
			t.Asks = append(t.Asks, Ask{Name: name + "/" + s.on.String(), From: after(s.on, on.low), Until: until, Every: every, Urgent: urgent, At: s.at, Cited: on.cited,
				Text: text, Said: said, Limit: "asked after " + wording.Days(on.low) + limit, Write: "what is seen: moult, fed where it ate, refused or died"})
		}
	}
	said := t.Animals.Name.V + " has been before a moult since " + s.on.Words()
	first := "moulted? look, do not dig; log moult, or fed if it ate"
	then := "before a moult since " + s.on.Words() + ": width of the belly? get help from a mentor; log moult, fed or died"
	if r.grown(t) { // what it is it does not moult any more
		since := "sealed in since "
		if !t.sealed.ok {
			since = "thought before a moult since "
		}
		said = t.Animals.Name.V + " has been " + since + s.on.Words() + ", and is not fed"
		first = since + s.on.Words() + ": why? look from outside, do not dig; log fed if it eats, or died"
		then = since + s.on.Words() + ", no meal: get help from a mentor, do not dig; log fed or died"
	}
	look, lookLimit := known(schema.FigurePremoultLook)
	help, helpLimit := known(schema.FigurePremoultHelp)
	if !help.ok {
		ask("premoult-help", help.or(helped), ": of its kind nobody states how long it takes", 0, 30, false, first, said)
		return
	}
	until := civil.Date(0)
	if help.low > look.low {
		until = after(s.on, help.low)
	}
	ask("premoult-look", look, lookLimit, until, 7, t.days(schema.FigurePremoultLook, stage).ok, first, said)
	ask("premoult-help", help, helpLimit, 0, 7, true, then, said)
}

// soft holds meals and keeps hands off until the new skin is hard.
func (r *reader) soft(t *track, n int) {
	hold := Hold{From: t.moult.on, Why: "moulted " + dated(t.moult.on), At: t.moult.at, Part: n < t.now(), Some: n}
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
