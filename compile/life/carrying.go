package life

import (
	"strings"

	"vivary/compile/recur"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

const (
	// isolateLead is how many days before the earliest birth a female is moved where
	// the sheet does not say (common practice, no source).
	isolateLead = 14
	// reconsiderAfter is when to think again about a female that was thought gravid
	// and of whose mating nothing is known (common practice, no source).
	reconsiderAfter = 180
	// signsLast is for how many days signs of a birth near count; then it is asked again
	// (common practice, no source).
	signsLast = 60
	// sacLasts is how many days after the laying of a sac of a kind of which no sheet says
	// when its young are free it is asked what became of it: longer than of any that is
	// known (common practice, no source).
	sacLasts = 120
	// sacAsked is from how many days on it is asked of such a sac whether it has hatched
	// (common practice, no source).
	sacAsked = 60
	// sacMeal is every how many days a female whose sac is overdue is offered killed prey
	// (common practice, no source).
	sacMeal = 7
	// lastDig is how many days before the earliest birth the substrate may last be
	// changed (common practice, no source).
	lastDig = 60
)

// carries reports whether a group may carry young, by what is noted so far.
func (t *track) carries() bool { return len(t.matings) > 0 || t.gravid.ok || t.undated }

func (r *reader) mated(t *track, e *plan.Event) {
	r.lapse(t, e.Date)
	if len(t.matings) == 0 {
		// What held from a guess ends; from now on there is a term.
		gravid := t.gravid
		r.closeLate(t, e.Date)
		t.gravid = gravid
	}
	t.matings = append(t.matings, see(e))
}

func (r *reader) gravidLine(t *track, e *plan.Event) {
	t.sign = see(e)
	r.lapse(t, e.Date)
	if len(t.matings) == 0 && t.undated {
		r.closeLate(t, e.Date+1)
	}
	if !t.gravid.ok {
		t.gravid = see(e)
	}
}

func (r *reader) notGravid(t *track, e *plan.Event) { r.closeLate(t, e.Date) }

func (r *reader) lateLine(t *track, e *plan.Event) {
	if !t.carries() {
		t.gravid = see(e)
	}
	r.near(t, e)
}

// near notes signs of a birth; earlier ones held until now.
func (r *reader) near(t *track, e *plan.Event) {
	t.sign = see(e)
	if t.late.ok {
		holds := r.carryHolds(t)
		last := holds[len(holds)-1:]
		ended(last, e.Date)
		t.Holds = append(t.Holds, last...)
	}
	t.late = see(e)
}

// lapse ends a term that had run out before a day.
func (r *reader) lapse(t *track, on civil.Date) {
	if holds := r.carryHolds(t); len(holds) > 0 {
		if last := holds[len(holds)-1]; !last.Open && last.Until <= on {
			r.closeLate(t, on)
		}
	}
}

// closeLate ends what waited for a birth.
func (r *reader) closeLate(t *track, on civil.Date) {
	holds := r.carryHolds(t)
	ended(holds, on)
	t.Holds = append(t.Holds, holds...)
	t.matings, t.gravid, t.late, t.undated, t.parted = nil, seen{}, seen{}, false, false
}

// term is the days between which a birth is possible after the matings noted.
func (r *reader) term(t *track) (from, to civil.Date, gestation span) {
	gestation = t.days(schema.FigureGestation, "adult")
	if len(t.matings) == 0 || !gestation.ok {
		return 0, 0, span{}
	}
	from = after(t.matings[0].on, gestation.low)
	to = after(t.matings[len(t.matings)-1].on, gestation.high)
	return from, to, gestation
}

// coming is the words for what a female that may be gravid brings.
type coming struct{ noun, verb, word, logged, look string }

// coming says whether she bears or lays.
func (t *track) coming() coming {
	if t.Sheet != nil && t.Sheet.Figure(schema.FigureSacTime, "adult") != nil {
		return coming{"laying", "lay", "laid", "laid is logged", "a sac or eggs? look, do not lift; log laid"}
	}
	return coming{"birth", "give birth", "born", "born is logged", "young on her back? look, do not lift"}
}

// since is from when on a female may be gravid, and from which line.
func (t *track) since() seen {
	switch {
	case len(t.matings) > 0:
		return t.matings[0]
	case t.gravid.ok:
		return t.gravid
	}
	return seen{0, t.Animals.State.At, false}
}

// longest is the day after which a female that has not given birth is not held for
// gravid any more, and whether there is one.
func (r *reader) longest(t *track) (civil.Date, span) {
	most := t.days(schema.FigureGestationLongest, "adult")
	if !most.ok {
		most = t.days(schema.FigureGestation, "adult")
	}
	s := t.since()
	if !s.ok || !most.ok {
		return 0, span{}
	}
	on := s.on
	if n := len(t.matings); n > 0 {
		on = t.matings[n-1].on
	}
	return after(on, most.high), most
}

func (t *track) lead() span { return t.days(schema.FigureIsolateBefore, "adult").or(isolateLead) }

// carryHolds are what is held for a female that may be gravid: handling from the
// mating on, digging from some weeks before the earliest birth, and near the birth all
// that opens her box. Nothing ends by itself before the longest term that is known.
func (r *reader) carryHolds(t *track) []Hold {
	if !t.carries() {
		return nil
	}
	s := t.since()
	hold := Hold{State: r.state(t, schema.StateGravid), At: s.at, Part: t.now() > 1, Until: r.h.Last() + 1, Open: true, End: "until " + t.coming().logged}
	if end, most := r.longest(t); most.ok {
		hold.Until, hold.Open, hold.Cited = end+1, false, most.cited
	}
	if s.ok {
		hold.From = s.on + 1
	}
	var out []Hold
	from, _, gestation := r.term(t)
	switch {
	case gestation.ok:
		hold.Cited = gestation.cited
		early := hold
		soft := *hold.State
		soft.May[schema.RowDeep], soft.May[schema.RowCount], soft.May[schema.RowRehouse] = schema.May{}, schema.May{}, schema.May{}
		early.State, early.Until, early.Open = &soft, max(hold.From, after(from, -lastDig)), false
		early.Why, early.End = "mated "+dated(s.on), "birth possible from "+dated(from)
		hold.From, hold.Why = early.Until, "birth possible from "+dated(from)
		if early.From < early.Until {
			out = append(out, early)
		}
	case t.gravid.ok:
		hold.Why = "gravid since " + dated(t.gravid.on) + ", " + t.coming().noun + " at any time"
	case len(t.matings) > 0:
		hold.Why = "mated " + dated(t.matings[0].on) + ", gestation not known"
	default:
		hold.Why = "gravid, " + t.coming().noun + " at any time"
	}
	out = append(out, hold)
	if t.late.ok {
		near := hold
		near.State, near.From, near.Until, near.Open, near.At = r.state(t, schema.StateGravidLate), t.late.on, t.late.on+signsLast, false, t.late.at
		near.Why = "signs of a " + t.coming().noun + " since " + dated(t.late.on)
		out = append(out, near)
	}
	return out
}

// carrying says what a mating or a gravid female asks for. A band is shown only
// where a mating is known, and never a date.
func (r *reader) carrying(t *track) {
	r.sitting(t)
	holds := r.carryHolds(t)
	t.Holds = append(t.Holds, holds...)
	if n := len(holds); n == 0 || holds[n-1].Until <= r.today && holds[max(0, n-2)].Until <= r.today {
		t.Gravid = false
		if n > 0 && holds[n-1].Until > r.today-30 {
			r.overdue(t, holds[n-1].Until)
		}
		return
	}
	t.Gravid = true
	if t.late.ok {
		t.Asks = append(t.Asks, Ask{Name: "late/" + t.late.on.String(), From: t.late.on + signsLast, Every: 7, At: t.late.at,
			Text: "signs of a " + t.coming().noun + " since " + t.late.on.Words() + ": log " + t.coming().word + ", not-gravid, or late where the signs are there still", Said: "signs of a " + t.coming().noun + " were seen on " + t.late.on.Words() + ", and none is logged",
			Write: "born, not-gravid, or late once more"})
	}
	if from, to, gestation := r.term(t); gestation.ok {
		lead := t.lead()
		first := t.matings[0]
		t.Windows = append(t.Windows, Window{Kind: BirthWindow, From: from, Until: to + 1, Name: "birth/" + first.on.String(), Title: "Birth possible",
			Text: "Young on her back? Look, do not lift; log born. No digging, no moving, no handling.", At: first.at, Cited: gestation.cited})
		r.isolate(t, after(from, -lead.high), "birth possible from "+from.Words(), first, lead.cited)
		r.overdue(t, to+1)
		return
	}
	r.unknownTerm(t, holds[len(holds)-1].Until)
}

// overdue asks what became of a birth that did not come: what is held stays held.
func (r *reader) overdue(t *track, from civil.Date) {
	s := t.since()
	_, _, gestation := r.term(t)
	if t.sign.ok {
		from = max(from, t.sign.on+30)
	}
	a := Ask{Name: "birth-overdue/" + from.String(), From: from, Every: 30, At: s.at, Cited: gestation.cited,
		Text:  "no " + t.coming().noun + " is logged, and its time is over: was it missed, is she gravid still? log " + t.coming().word + ", not-gravid or gravid",
		Said:  "no " + t.coming().noun + " of " + t.Animals.Name.V + " is logged, though its time is over",
		Write: "born and how many; or not-gravid"}
	if gestation.ok {
		a.Limit = "gestation of " + gestation.String() + ", species sheet " + t.Sheet.Name.V
	}
	t.Asks = append(t.Asks, a)
}

// unknownTerm is for a female of whose mating nothing is known, and for a species
// of whose gestation nothing is.
func (r *reader) unknownTerm(t *track, until civil.Date) {
	s := t.since()
	f := finding.Finding{Rule: ruleNoTerm, At: s.at, Text: "when " + t.Animals.Name.V + " may " + t.coming().verb + " is not known, so no band is shown: there is no mating in the log",
		Write: "where the day of the mating is known, a line with that day and mated"}
	if len(t.matings) > 0 {
		f.Text = "when " + t.Animals.Name.V + " may " + t.coming().verb + " is not known, so no band is shown: no sheet states the gestation of this species"
		f.Write = "the figure gestation in a species block of your own, with its source"
	}
	r.found.Add(f)
	name, first := "gravid", s.on
	if s.ok {
		name += "/" + s.on.String()
	} else {
		first = r.weekday(t)
	}
	t.Tasks = append(t.Tasks, Task{Name: name, Kind: schema.KindWatch, On: first, Interval: 7, Times: r.weeks(first, until),
		Text: t.coming().look, At: s.at})
	alone := s
	if !s.ok && r.crowd(t) {
		alone = r.joined()
	}
	if alone.ok && !r.refused(t) {
		r.isolate(t, alone.on, t.coming().noun+" possible at any time", alone, plan.Cited{})
	}
	if s.ok {
		t.Tasks = append(t.Tasks, Task{Name: "reconsider/" + s.on.String(), Kind: schema.KindPrepare, On: after(s.on, reconsiderAfter),
			Text: "thought gravid since " + s.on.Words() + ", no " + t.coming().noun + ": reconsider; log not-gravid where she is not", At: s.at})
	}
}

// isolate asks for a box of her own while she is in company, each day from that day on
// until a move is logged, or else for quiet from that day on.
func (r *reader) isolate(t *track, on civil.Date, why string, s seen, cited plan.Cited) {
	name := "isolate"
	if s.ok {
		name += "/" + s.on.String()
	}
	if !t.Bears() {
		return // they lay, and have no part in their young
	}
	if !r.crowd(t) {
		t.Tasks = append(t.Tasks, Task{Name: name, Kind: schema.KindPrepare, On: on, At: s.at, Cited: cited, Text: "last day for work inside, then leave her alone: " + why})
		return
	}
	t.Asks = append(t.Asks, Ask{Name: name, About: AboutBrood, Kind: schema.KindRehouse, From: on, Every: 7, Urgent: true, Harm: HarmBirth, At: s.at, Cited: cited,
		Text:  "give her a box of her own, with her hide: " + why + "; log moved",
		Said:  t.Animals.Name.V + " may give birth among others: " + why,
		Limit: "others may eat young at birth: common practice, no source", Write: "moved, how many and the enclosure that she went to"})
}

// refused reports whether the plan itself says of a female that she carries or has young,
// and has her among others: then it is refused, and nothing more is asked.
func (r *reader) refused(t *track) bool { return t.Animals.State.Set() && r.out.Together() > 1 }

// crowd reports whether others than her own young live with a female.
func (r *reader) crowd(t *track) bool {
	n := 0
	for _, o := range r.living() {
		if o.Mother != t.Group {
			n += o.now()
		}
	}
	return n > 1
}

// weekday is the first day on or after today for a weekly look that began on a day
// nobody knows; the same weekday on every build.
func (r *reader) weekday(t *track) civil.Date {
	phase := recur.Phase(r.out.Plan.Name.V+"/"+t.Animals.Name.V+"/look", 7)
	return r.today + ((phase-r.today)%7+7)%7
}

func (r *reader) laidLine(t *track, e *plan.Event) {
	r.closeLate(t, e.Date)
	r.closeMoult(t, e.Date) // it was for this that she fasted and shut herself in
	holds := r.sacHolds(t)
	ended(holds, e.Date)
	t.Holds = append(t.Holds, holds...)
	t.laid = see(e)
}

// sacEnds ends what is held for a sac.
func (r *reader) sacEnds(t *track, on civil.Date) {
	holds := r.sacHolds(t)
	ended(holds, on)
	if t.laid.ok {
		rest := t.days(schema.FigureAfterSac, "adult")
		if rest.ok && rest.high > 0 {
			holds = append(holds, Hold{State: r.state(t, schema.StateSettling), From: on, Until: after(on, rest.high), At: t.laid.at, Cited: rest.cited,
				Why: "her sac is gone since " + dated(on), End: wording.Until(after(on, rest.high)), Part: t.now() > 1})
		}
	}
	t.Holds = append(t.Holds, holds...)
	t.laid = seen{}
}

func (r *reader) sacTaken(t *track, e *plan.Event) {
	r.sacEnds(t, e.Date)
	t.clutch = see(e)
}

// hatched is young out of what was laid. Those of a sac or a clutch that was taken hatch
// elsewhere: they are not with her, and it is asked where they are.
func (r *reader) hatched(t *track, e *plan.Event) {
	elsewhere, broods := t.clutch.ok && !t.laid.ok, len(t.broods)
	r.sacEnds(t, e.Date)
	r.born(t, e)
	if elsewhere && len(t.broods) > broods {
		t.broods[len(t.broods)-1].young.stray = see(e)
	}
}

// sacTime is from the laying of a sac until its young are free, and the first day after
// the longest time that it takes. Of a kind of which that is not known the span is not ok.
func (t *track) sacTime() (span, civil.Date) {
	w := t.days(schema.FigureSacTime, "adult")
	return w, after(t.laid.on, w.or(sacLasts).high) + 1
}

// fasts reports whether a female with a sac is not fed, so that a sac of which nobody
// writes any more would starve her.
func (r *reader) fasts(t *track) bool {
	return r.state(t, schema.StateSac).May[schema.RowKilled].Manner == schema.Held
}

// sacHolds are what is held for a sac. Once its longest time is past she is offered killed
// prey where she was not fed till then.
func (r *reader) sacHolds(t *track) []Hold {
	if !t.laid.ok {
		return nil
	}
	on := Hold{State: r.state(t, schema.StateSac), From: t.laid.on, Until: r.h.Last() + 1, Open: true, At: t.laid.at, Part: t.now() > 1,
		Why: "laid " + dated(t.laid.on), End: "until hatched or sac-taken is logged"}
	if !r.fasts(t) {
		return []Hold{on}
	}
	late, offered := on, *on.State
	offered.May[schema.RowKilled] = schema.May{Manner: schema.Hatch, Every: sacMeal, Words: "one small item near her, out again next day"}
	offered.Rule = strings.Replace(offered.Rule, "no food", "killed prey each week", 1)
	late.State = &offered
	_, late.From = t.sacTime()
	on.Until, on.Open = late.From, false
	return []Hold{on, late}
}

// sitting is a female with a sac or a clutch: what is decided when, and whether it has
// hatched.
func (r *reader) sitting(t *track) {
	if !t.laid.ok {
		return
	}
	t.Holds = append(t.Holds, r.sacHolds(t)...)
	s := t.laid
	if d := t.days(schema.FigureSacDecide, "adult"); d.ok {
		t.Tasks = append(t.Tasks, Task{Name: "sac-decide/" + s.on.String(), Kind: schema.KindPrepare, On: after(s.on, d.low), Interval: 1, Times: max(1, d.high-d.low),
			Text: "decide: leave the sac with her, or take it; log sac-taken where it is taken", At: s.at, Cited: d.cited})
	}
	w, late := t.sacTime()
	a := Ask{Name: "hatch-overdue/" + s.on.String(), From: after(s.on, sacAsked), Until: late, Every: 7, At: s.at, Cited: w.cited,
		Text: "hatched? look from outside; log hatched, or sac-taken where it is gone", Said: "laid on " + s.on.Words() + ", and no hatching is logged",
		Limit: "asked after " + wording.Days(sacAsked) + ": when the young of " + t.kind() + " are free is not known", Write: "hatched and how many; or sac-taken"}
	if w.ok {
		t.Windows = append(t.Windows, Window{Kind: BirthWindow, From: after(s.on, w.low), Until: after(s.on, w.high) + 1, Name: "hatch/" + s.on.String(), Title: "Hatching possible",
			Text: "Look from outside. Log hatched and how many.", At: s.at, Cited: w.cited})
		a.From = after(s.on, w.low)
		a.Limit = "free after " + w.String() + ", species sheet " + t.Sheet.Name.V
	}
	if !r.fasts(t) {
		a.Until = 0
	}
	if t.Asks = append(t.Asks, a); a.Until == 0 {
		return
	}
	a.Name, a.From, a.Until, a.Every, a.Urgent = "hatch-late/"+s.on.String(), late, 0, 1, true
	a.Text = "hatching is overdue, and she fasts: hatched, or gone? look from outside; log hatched, or sac-taken where all is gone or bad"
	a.Said = "laid on " + s.on.Words() + ": the longest time is past, no hatching is logged, and she fasts until one is"
	a.Write = "hatched and how many; or sac-taken, where all is gone, bad or taken"
	t.Asks = append(t.Asks, a)
}
