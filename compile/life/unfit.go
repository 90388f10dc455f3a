package life

import (
	"cmp"
	"slices"

	"vivary/plan"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
)

// The least age for a rest where the sheet does not say, and how long one that was taken
// from the wild is here before it rests, in days: a year for leopard geckos
// (reptifiles.com on brumation), half a year by common practice.
const (
	restAge     = 365
	restSettled = 182
)

// Unfit is why animals must not rest.
type Unfit struct {
	Group *Group     // nil for the whole enclosure
	From  civil.Date // since when; 0 for as long as is known
	Why   string     // "gravid since 3 Nov"
	// Written says that the plan itself says so, rather than the log or the time that
	// went by.
	Written bool
	At      source.Place
	Cited   plan.Cited
}

// unfit finds why the animals must not rest this time, and ends the rest where there is a
// reason: before it begins, or on the day that brought it.
func (r *reader) unfit(x *Rest) {
	x.planned = x.From
	if !x.Rest {
		return
	}
	add := func(u Unfit) { x.Unfit = append(x.Unfit, u) }
	if r.sheet != nil && !Rests(r.sheet) {
		add(Unfit{Written: true, Why: r.sheet.Name.V + " takes no cool rest", At: x.Season.At})
	}
	for _, g := range r.out.Groups {
		switch {
		case g.Count(x.From) > 0:
			r.tooYoung(x, g, add)
			r.carries(x, g, add)
			holdsOf(x, g, g.Holds, add)
			apart(x, g, add)
			r.lean(x, g, add)
		case g.Count(x.On) > 0 && g.Mother == nil: // they came into it
			apart(x, g, add)
		}
	}
	if r.mites.ok && r.mites.on < x.On && after(r.mites.on, outbreak*7) > x.From {
		add(Unfit{From: r.mites.on, Why: "mites were seen on " + r.mites.on.Brief(), At: r.mites.at})
	}
	if len(x.Unfit) == 0 {
		return
	}
	slices.SortStableFunc(x.Unfit, func(a, b Unfit) int { return cmp.Compare(a.From, b.From) })
	x.end(x.Unfit[0].From+1, r.sheet) // what is seen in a round is acted on in the next
}

// tooYoung is about stage and age.
func (r *reader) tooYoung(x *Rest, g *Group, add func(Unfit)) {
	a := g.Animals
	if stage := g.Stage(x.From); grows(stage) {
		u := Unfit{Group: g, Why: a.Name.V + " are " + stage, At: a.Stage.At}
		written := a.Stage.V
		if written == "" && r.sheet != nil {
			written = r.sheet.StageOf(a.Instar.V)
		}
		u.Written = !g.Logged && grows(written)
		if g.Logged {
			u.From, u.At = g.Since.V, g.Since.At
		} else if !a.Stage.Set() {
			u.At = a.Instar.At
		}
		add(u)
		return
	}
	age := restAge
	if g.Sheet != nil {
		if s := spanOf(g.Sheet.Figure(schema.FigureRestAge, "adult")); s.ok {
			age = s.low
		}
	}
	if a.Born.Set() && after(a.Born.V, age) > x.From {
		add(Unfit{Group: g, Why: a.Name.V + " are less than a year old", At: a.Born.At})
	}
	if a.Origin.V == "wild caught" && a.Arrived.Set() && after(a.Arrived.V, restSettled) > x.From {
		add(Unfit{Group: g, From: a.Arrived.V, Why: a.Name.V + ", wild caught, came on " + a.Arrived.V.Brief(), At: a.Arrived.At})
	}
}

// grows reports whether a stage is too young for a rest.
func grows(stage string) bool { return stage == "newborn" || stage == "young" || stage == "juvenile" }

// carries is about young to come, and those that are there. What is known of them now is
// asked of this rest and the next, not of those that are over.
func (r *reader) carries(x *Rest, g *Group, add func(Unfit)) {
	if !g.Gravid && !g.Brood || x.Until <= r.today {
		return
	}
	u := Unfit{Group: g, Why: g.Animals.Name.V + " may be gravid", At: g.Animals.State.At, Written: true}
	if !g.Gravid {
		u.Why = g.Animals.Name.V + " have young"
	}
	if s, ok := r.expecting(g); ok {
		u.From, u.At, u.Written = s.on, s.at, false
		u.Why += " since " + s.on.Brief()
	}
	add(u)
}

// expecting returns the line of the log by which a group carries young or has them: the
// plan's word is then not the last.
func (r *reader) expecting(g *Group) (first seen, ok bool) {
	note := func(s seen) {
		if s.ok && (!ok || s.on < first.on) {
			first, ok = s, true
		}
	}
	for _, t := range r.tracks {
		if t.Group != g {
			continue
		}
		note(t.gravid)
		for _, s := range t.matings {
			note(s)
		}
		for _, b := range t.broods {
			if !b.separated.ok {
				note(b.born)
			}
		}
	}
	return first, ok
}

// unrested are the states in which no animal is cooled.
var unrested = []*schema.State{
	schema.StateIll, schema.StateInjured, schema.StateTreated, schema.StatePremoult, schema.StateMoulting, schema.StateSoft,
	schema.StateGravidLate, schema.StateBirth, schema.StateBrood, schema.StateSac, schema.StateYoungRound, schema.StateNewborn, schema.StateQuarantine, schema.StateMites, schema.StateSettling,
}

// holdsOf takes the states that animals are in on a day on which it would be cooler.
func holdsOf(x *Rest, g *Group, holds []Hold, add func(Unfit)) {
	for i := range holds {
		h := &holds[i]
		same := func(s *schema.State) bool { return s == h.State || s.Name == h.State.Name }
		if h.From < x.On && h.Until > x.From && h.From < h.Until && slices.ContainsFunc(unrested, same) {
			add(Unfit{Group: g, From: h.From, Why: h.Why, At: h.At, Cited: h.Cited})
		}
	}
}

// lean is about those that have lost much weight.
func (r *reader) lean(x *Rest, g *Group, add func(Unfit)) {
	for _, t := range r.tracks {
		if l := t.lean; t.Group == g && l.ok && l.on < x.On {
			add(Unfit{Group: g, From: l.on, Why: l.lost + " of its weight lost by " + l.on.Brief(), At: l.at, Cited: l.f.Cited})
		}
	}
}

// apart is about those in quarantine.
func apart(x *Rest, g *Group, add func(Unfit)) {
	for i := range g.Windows {
		if w := &g.Windows[i]; w.Kind == QuarantineWindow && w.From < x.On && w.Until > x.From {
			add(Unfit{Group: g, From: w.From, Why: "in quarantine until " + w.Until.Brief(), At: w.At})
		}
	}
}
