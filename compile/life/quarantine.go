package life

import (
	"math"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

const (
	// askedFor is how many days after an arrival a missing length of quarantine is
	// asked for: keepers use up to 90 days (common practice, no source).
	askedFor = 90
	// settles is after how many days one that came gets its first meal where the sheet
	// does not say (common practice, no source).
	settles = 3
	// decides is for how many weeks the end of a quarantine is asked for.
	decides = 4
)

// length is how long one that came is kept apart: as the collection has it, else as the
// sheet does; 0 where neither says.
func (r *reader) length(t *track) int {
	if r.c.About != nil && r.c.About.Quarantine.V.Value > 0 {
		return int(math.Ceil(r.c.About.Quarantine.V.Value / day))
	}
	if t.Animals.Origin.V == "wild caught" {
		if s := t.days(schema.FigureQuarantineWild, ""); s.ok {
			return s.high
		}
	}
	return t.days(schema.FigureQuarantine, "").high
}

// clock is what keeps a group apart on a day, its quarantine or mites: the line that it
// runs from.
func (r *reader) clock(t *track, on civil.Date) seen {
	if m := t.home.mites; m.ok && m.on <= on && after(m.on, t.home.clear()) > on {
		return m
	}
	return r.kept(t, on)
}

// kept is the quarantine of an arrival that a group is in on a day.
func (r *reader) kept(t *track, on civil.Date) seen {
	s := t.came()
	if n := r.length(t); !s.ok || n <= 0 || s.on+civil.Date(n) <= on {
		return seen{}
	}
	return s
}

// came is when a group came into the collection, as far as that is known.
func (t *track) came() seen {
	if a := t.Animals.Arrived; !t.arrived.ok && a.Set() {
		return seen{a.V, a.At, true}
	}
	return t.arrived
}

func (r *reader) quarantined(t *track, e *plan.Event) { t.arrived = see(e) }

// infest starts the quarantine of all who live with mites anew, where they are in one.
func (r *reader) infest(e *plan.Event) {
	for _, t := range r.living() {
		if r.kept(t, e.Date).ok {
			t.arrived = see(e)
		}
	}
}

// infected starts the quarantine of companions anew after a death in it.
func (r *reader) infected(t *track, e *plan.Event) {
	for _, o := range r.living() {
		if r.kept(o, e.Date).ok {
			o.arrived = see(e)
		}
	}
}

// quarantine keeps those apart that have come, from the last arrival on.
func (r *reader) quarantine(t *track) {
	s := t.came()
	if !s.ok {
		return
	}
	if !t.arrived.ok {
		r.settling(t, s) // the plan says when it came
	}
	r.firstHere(t, s)
	length := r.length(t)
	if length <= 0 {
		if after(s.on, askedFor) > r.today && s.on <= r.today {
			r.found.Add(finding.Finding{Rule: ruleQuarantine, At: s.at,
				Text:  t.Animals.Name.V + " arrived on " + s.on.Words() + ", and neither the collection nor its sheet says how long arrivals are kept apart",
				Write: "how long, by your own rules, as quarantine in the collection block; 60 days are usual"})
		}
		return
	}
	end := after(s.on, length)
	if end > r.today {
		t.Quarantined = end
		t.Windows = append(t.Windows, Window{Kind: QuarantineWindow, From: s.on, Until: end, Name: "quarantine/" + s.on.String(), Title: "Quarantine",
			Text: "Last in every round, tools of its own. No one joins it, it joins no one.", At: s.at})
	}
	t.Tasks = append(t.Tasks, Task{Name: "quarantine-end/" + s.on.String(), Kind: schema.KindPrepare, On: end, Interval: 7, Times: decides,
		Text: "end of quarantine: eats, droppings sound, no mites? decide, join or stay apart", At: s.at})
}

// settling gives those that came water and peace at first: some of the group only where
// others of it were here before. All that came on one day have it in common.
func (r *reader) settling(t *track, s seen) {
	wait := r.wait(t)
	if n := len(t.Holds); n > 0 && t.Holds[n-1].From == s.on && t.Holds[n-1].State == r.state(t, schema.StateSettling) {
		return
	}
	t.Holds = append(t.Holds, Hold{State: r.state(t, schema.StateSettling), From: s.on, Until: after(s.on, wait.high), At: s.at, Cited: wait.cited, Part: t.Count(s.on-1) > 0,
		Why: "came " + dated(s.on), End: wording.Until(after(s.on, wait.high))})
}

// wait is from an arrival to the first meal.
func (r *reader) wait(t *track) span {
	return t.days(schema.FigureSettling, t.stage().Stage).or(settles)
}

// firstHere offers one that came its first meal.
func (r *reader) firstHere(t *track, s seen) {
	wait := r.wait(t)
	if t.HasFed && t.Fed >= s.on || t.Part(s.on) || after(s.on, wait.high) < r.h.From {
		return
	}
	t.Tasks = append(t.Tasks, Task{Name: "first-meal-here/" + s.on.String(), Kind: schema.KindFeed, On: after(s.on, wait.high), Text: "first meal here: one small item", Meal: true, Instead: true, At: s.at, Cited: wait.cited})
}

// settled ends the peace of an arrival on the day of a meal.
func (t *track) settled(on civil.Date) {
	for i := range t.Holds {
		if h := &t.Holds[i]; h.State.Name == schema.StateSettling.Name && h.Until > on {
			h.Until = max(h.From, on)
		}
	}
}
