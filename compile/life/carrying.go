package life

import (
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

const (
	// isolateLead is how many days before the earliest birth a female is moved where
	// the sheet does not say (common practice, no source).
	isolateLead = 14
	// reconsiderAfter is when to think again about a female that was thought gravid
	// and of whose mating nothing is known (common practice, no source).
	reconsiderAfter = 180
)

func (r *reader) mated(t *track, e *plan.Event) {
	r.lapse(t, e.Date)
	if len(t.matings) == 0 {
		// What held from a guess ends; from now on there is a term.
		gravid := t.gravid
		t.closeLate(r, e.Date)
		t.gravid = gravid
	}
	t.matings = append(t.matings, see(e))
}

func (r *reader) gravidLine(t *track, e *plan.Event) {
	r.lapse(t, e.Date)
	if len(t.matings) == 0 && t.undated {
		t.closeLate(r, e.Date+1)
	}
	if !t.gravid.ok {
		t.gravid = see(e)
	}
}

// lapse ends a term that had run out before a day.
func (r *reader) lapse(t *track, on civil.Date) {
	if hold, ok := r.lateHold(t); ok && !hold.Open && hold.Until <= on {
		t.closeLate(r, on)
	}
}

// closeLate ends what waited for a birth.
func (t *track) closeLate(r *reader, on civil.Date) {
	if hold, ok := r.lateHold(t); ok {
		hold.Until, hold.Open = min(hold.Until, on), false
		t.Holds = append(t.Holds, hold)
	}
	t.matings, t.gravid, t.undated, t.parted = nil, seen{}, false, false
}

// term is the days between which a birth is possible after the matings noted.
func (r *reader) term(t *track) (from, to civil.Date, gestation span) {
	gestation = r.days(schema.FigureGestation, "adult")
	if len(t.matings) == 0 || !gestation.ok {
		return 0, 0, span{}
	}
	from = after(t.matings[0].on, gestation.low)
	to = after(t.matings[len(t.matings)-1].on, gestation.high)
	return from, to, gestation
}

func (r *reader) lead() span { return r.days(schema.FigureIsolateBefore, "adult").or(isolateLead) }

// lateHold leaves her alone from the day after she was moved until the birth.
func (r *reader) lateHold(t *track) (Hold, bool) {
	if len(t.matings) == 0 && !t.gravid.ok && !t.undated {
		return Hold{}, false
	}
	hold := Hold{State: schema.StateGravid, End: "until the birth is logged"}
	from, to, gestation := r.term(t)
	switch {
	case gestation.ok:
		lead := r.lead()
		hold.From, hold.Until = after(from, 1-lead.high), to+1
		hold.Why = "birth possible from " + from.Brief()
		hold.At, hold.Cited = t.matings[0].at, gestation.cited
		return hold, true
	case t.gravid.ok:
		hold.From, hold.At, hold.Why = t.gravid.on+1, t.gravid.at, "gravid since "+t.gravid.on.Brief()+", birth possible at any time"
	case len(t.matings) > 0:
		hold.From, hold.At, hold.Why = t.matings[0].on+1, t.matings[0].at, "mated "+t.matings[0].on.Brief()+", gestation not known"
	default:
		hold.At, hold.Why = t.Animals.State.At, "gravid, birth possible at any time"
	}
	gestation = r.days(schema.FigureGestation, "adult")
	if t.gravid.ok && gestation.ok {
		hold.Until, hold.Cited = after(t.gravid.on, gestation.high)+1, gestation.cited
	} else {
		hold.Until, hold.Open = r.h.Last()+1, true
	}
	return hold, true
}

// carrying says what a mating or a gravid female asks for. A band is shown only
// where a mating is known, and never a date.
func (r *reader) carrying(t *track) {
	hold, ok := r.lateHold(t)
	// Past the longest gestation she was not gravid, or the birth was missed.
	if ok {
		t.Holds = append(t.Holds, hold)
	}
	if t.Gravid = ok && hold.Until > r.today; !t.Gravid {
		return
	}
	if from, to, gestation := r.term(t); gestation.ok {
		lead := r.lead()
		first := t.matings[0]
		t.Windows = append(t.Windows, Window{Kind: BirthWindow, From: from, Until: to + 1, Name: "birth/" + first.on.String(), Title: "Birth possible",
			Text: "Young on her back? Look, do not lift; log born. No digging, no moving, no handling.", At: first.at, Cited: gestation.cited})
		r.isolate(t, after(from, -lead.high), "birth possible from "+from.Short(), first, lead.cited)
		return
	}
	r.unknownTerm(t, hold)
}

// unknownTerm is for a female of whose mating nothing is known, and for a species
// of whose gestation nothing is.
func (r *reader) unknownTerm(t *track, hold Hold) {
	s := seen{hold.From - 1, hold.At, t.gravid.ok || len(t.matings) > 0}
	f := finding.Finding{Rule: ruleNoTerm, At: hold.At, Text: "when " + t.Animals.Name.V + " may give birth is not known, so no band is shown: there is no mating in the log",
		Write: "where the day of the mating is known, a line with that day and mated"}
	if len(t.matings) > 0 {
		f.Text = "when " + t.Animals.Name.V + " may give birth is not known, so no band is shown: no sheet states the gestation of this species"
		f.Write = "figure \"gestation\" { value = \"7 to 18 months\" … } in a species block of your own, with its source"
	}
	r.found.Add(f)
	name, first := "gravid", s.on
	if s.ok {
		name += "/" + s.on.String()
	} else {
		first = r.weekday(t)
	}
	t.Tasks = append(t.Tasks, Task{Name: name, Kind: schema.KindWatch, On: first, Interval: 7, Times: r.weeks(first, hold.Until),
		Text: "young on her back? look, do not lift", At: hold.At})
	if s.ok || r.company() {
		r.isolate(t, first, "birth possible at any time", seen{first, hold.At, s.ok}, plan.Cited{})
	}
	if s.ok {
		t.Tasks = append(t.Tasks, Task{Name: "reconsider/" + s.on.String(), Kind: schema.KindOther, On: after(s.on, reconsiderAfter),
			Text: "thought gravid since " + s.on.Words() + ", no birth: reconsider", At: hold.At})
	}
}

// isolate asks for a box of her own while she is in company, from that day until a
// move is logged, or else for quiet from that day on.
func (r *reader) isolate(t *track, on civil.Date, why string, s seen, cited plan.Cited) {
	task := Task{Name: "isolate", On: on, At: s.at, Cited: cited}
	if s.ok {
		task.Name += "/" + s.on.String()
	}
	if r.company() {
		task.Kind = schema.KindRehouse
		if !t.parted {
			task.On = max(on, r.today)
		}
		task.Text = "give her a box of her own: " + why
	} else {
		task.Kind, task.Text = schema.KindPrepare, "last day for work inside, then leave her alone: "+why
	}
	t.Tasks = append(t.Tasks, task)
}

// company reports whether more than one animal lives here now.
func (r *reader) company() bool {
	n := 0
	for i := range r.tracks {
		n += r.tracks[i].now()
	}
	return n > 1
}

// weekday is the first day on or after today for a weekly look that began on a day
// nobody knows; the same weekday on every build.
func (r *reader) weekday(t *track) civil.Date {
	phase := recur.Phase(r.out.Plan.Name.V+"/"+t.Animals.Name.V+"/look", 7)
	return r.today + ((phase-r.today)%7+7)%7
}
