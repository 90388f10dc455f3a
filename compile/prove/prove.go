// Package prove shows, day by day over the horizon, that every need of every
// animal is met in time by somebody who is there. It schedules nothing and knows
// nothing of calendars: it counts local dates between the days on which a need is
// met, once holds and absences have been taken out.
//
// Each day is judged by what the animals are on that day. stretch.go says of which
// days a proof is, excuse.go on which of them the need does not hold, alone.go how
// long is too long, scan.go counts, and finding.go says what came out.
package prove

import (
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
)

// Proof is the proof for one need of one group, or of a whole enclosure, over days on
// which the animals are in one stage.
type Proof struct {
	Life  *life.Enclosure
	Group *life.Group // nil for a need of the whole enclosure
	Need  *plan.Need
	Name  *schema.NeedName
	// Stage is that of the group on the days of the proof, "" for one that is not known
	// or a need of the whole enclosure. Begin is the first of these days in the window,
	// today at the earliest, and End the first after them.
	Stage      string
	Begin, End int

	Allowed int // the longest time between two occasions, in days
	// Unattended is the longest time while nobody at all comes to the enclosure, in
	// days, where the sheet says that the animals may be left so long with a full dish;
	// else Allowed. Alone is the figure that says so.
	Unattended int
	Alone      *plan.Figure
	// Ceiling is the time, in days, from which on the need is met far too rarely, which is
	// an error whatever the sheet says of less.
	Ceiling int

	// Missed is a time that is too long whatever is done from today on; From = To
	// where there is none. Late is the limit that it passes.
	Missed Gap
	Late   Limit

	// Longest is the longest time found that ends on a day of the proof, in days, from
	// the place From in the window to To, which is End where nothing follows.
	Longest, From, To int
	// Breach is the first time that is too long and that the plan can mend, or has
	// From = To where there is none; Limit is the limit that it passes. One with excused
	// days in it, which is the log's, hides none that is the plan's alone.
	Breach Gap
	Limit  Limit
	// By are the entries that meet the need.
	By []*roster.Entry
	// Times is on how many days of the proof the need is met.
	Times int
	// Nobody are the days on which nobody at all comes to the enclosure, since those who
	// meet the need are away.
	Nobody horizon.Days
	// Excused are days on which the need does not hold: meals while an animal must
	// not be fed, for the reason of the hold. Seen are those of them that no season brings.
	Excused, Seen horizon.Days
	// paused are days of pauses after refusals, and of states in which meals come only
	// every so many days; they excuse nothing.
	paused horizon.Days
	// again are all times that are too long and that the plan can mend, with no excused day.
	again []tooLong

	today int
	told  bool // it is known what people were shown before today
	// since is the day from which is counted where the need was not met since: the one
	// before it began to hold, or longAgo. Where first is not 0 it is the day of the first
	// moult, and first is within how many days of it young must have eaten by firstMeal.
	since     int
	first     int
	firstMeal *plan.Figure
}

// longAgo is the place of a day before all that is known.
const longAgo = -1 << 20

// Gap is a stretch of days without an occasion.
type Gap struct{ From, To int }

// Met reports whether the need is met on time throughout.
func (p *Proof) Met() bool { return p.Breach.From == p.Breach.To }

// Of proves the needs of one enclosure: those of all who live there together, and those
// of each group, by the sheet of its own species.
func Of(s *roster.Roster, i int) []Proof {
	w := prover{s: s, life: s.Lives[i], entries: s.Of[i]}
	w.lives()
	shared := w.shared()
	w.out = make([]Proof, 0, len(shared)+2*len(w.stays)) // food and leftovers are each group's own
	for _, x := range shared {
		w.need(x)
	}
	for k := range w.stays {
		w.own(&w.stays[k])
	}
	return w.out
}

type prover struct {
	s       *roster.Roster
	life    *life.Enclosure
	entries []roster.Entry
	stays   []stay
	out     []Proof
}

// own proves what each stage of a group needs for itself.
func (w *prover) own(g *stay) {
	for k := range g.stages {
		x := &g.stages[k]
		if x.to <= w.s.Horizon.Today {
			continue // it is over
		}
		for _, n := range g.Sheet.NeedsOf(x.stage) {
			if n.What != nil && n.What.OfGroup && holds(n.What, x.stage) {
				w.need(g.asks(k, n))
			}
		}
	}
}

// far is how many times as long as it may be a time is that is far too long. It is our
// own reading: common practice, no source.
const far = 4

func (w *prover) need(a asked) {
	name := a.need.What
	if name == nil || !a.need.Longest.Set() || name.Heated && !w.life.Plan.Heated() {
		return
	}
	p := Proof{Life: w.life, Group: a.group, Need: a.need, Name: name, Stage: a.stage, Begin: max(a.from, w.s.Horizon.Today), End: a.to,
		Allowed: max(1, wholeDays(a.need.Longest.V.Value)), today: w.s.Horizon.Today, since: a.since, first: a.first, firstMeal: a.firstMeal}
	p.Unattended, p.Ceiling = p.Allowed, far*p.Allowed
	if f := a.fast; name == schema.NeedFood && f != nil {
		p.Ceiling = max(p.Allowed, wholeDays(f.Range.High))
	}
	met := w.occasions(&p)
	p.Times = met.CountFrom(p.Begin) - met.CountFrom(p.End)
	if !name.OfGroup {
		w.unattended(&p, a)
	}
	if name.PerMeal {
		w.leftovers(&p, met)
	} else {
		w.excuse(&p, a, met)
		p.scan(met, w.s.Horizon)
	}
	w.out = append(w.out, p)
}

// occasions returns the days on which a need is met, and notes by what.
func (w *prover) occasions(p *Proof) horizon.Days {
	met := w.s.Horizon.New()
	add := func(x *roster.Entry) {
		if !w.meets(x, p) {
			return
		}
		p.By = append(p.By, x)
		p.told = p.told || w.told(x)
		met.Union(x.Shown)
		w.before(met, x)
		if x.Logged >= 0 {
			met.Add(x.Logged)
		}
	}
	for i := range w.entries {
		add(&w.entries[i])
	}
	if k := w.s.RackOf(w.life.Plan); k != nil { // what is done for the rack is done for all in it
		for i := range k.Entries {
			if k.Plan.DoesFor(w.life.Plan, k.Entries[i].Kind) {
				add(&k.Entries[i])
			}
		}
	}
	if p.Name == schema.NeedFood {
		w.offered(met, p.Group)
	}
	return met
}

// meets reports whether an entry meets a need of a group, or of the whole enclosure. A
// meal is for those it is given to, and prey only for those who live on it; the litter
// that an enclosure is filled up with feeds whoever is of its species.
func (w *prover) meets(x *roster.Entry, p *Proof) bool {
	if x.Kind.Needs != p.Name && !(p.Name == schema.NeedFood && x.Feeds()) {
		return false
	}
	if p.Name == schema.NeedFood && len(x.Menu) > 0 && p.Group != nil && p.Group.Sheet != nil && !p.Group.Sheet.Preys() {
		return false
	}
	return p.Group == nil || x.Group == p.Group || x.Group == nil && !p.Name.PerMeal && p.Group.Sheet == w.life.Plan.Sheet
}

// offered adds the days on which a group refused what it was offered, as far as a pause
// after them tells: what is not eaten has been offered.
func (w *prover) offered(met horizon.Days, g *life.Group) {
	for i := range g.Holds {
		if h := &g.Holds[i]; h.State == schema.StateRefused {
			if at, ok := w.s.Horizon.Index(h.From - 1); ok {
				met.Add(at)
			}
		}
	}
}

// told reports whether the last feeds tell of an entry.
func (w *prover) told(x *roster.Entry) bool {
	if w.s.Told == nil {
		return false
	}
	_, _, _, ok := w.s.Told.Days(x.ID)
	return ok
}

// before adds the days of an entry that are over: whoever was shown what then, what
// stood is taken as done, since only the log says otherwise.
func (w *prover) before(met horizon.Days, x *roster.Entry) {
	for k := range w.s.Horizon.Today >> 6 {
		met[k] |= x.Days[k]
	}
}

// wholeDays are the whole days of a length of time, which is in minutes.
func wholeDays(minutes float64) int { return int(minutes / (24 * 60)) }
