package roster

import (
	"cmp"
	"slices"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
)

// Manner is how an entry is done on some of its days, because of a state that animals
// are in: the strictest of those that hold there.
type Manner struct {
	May  schema.May
	Hold *life.Hold // whose state it is
	Days horizon.Days
}

// Manner returns how an entry is done on day i, or nil for as usual.
func (e *Entry) Manner(i int) *Manner {
	for k := range e.Manners {
		if e.Manners[k].Days.Has(i) {
			return &e.Manners[k]
		}
	}
	return nil
}

// KilledFor returns why the prey of an entry is killed on day i, or nil for no reason that
// is known: the last that was given.
func (e *Entry) KilledFor(i int) *Cause {
	for k := len(e.Causes) - 1; k >= 0; k-- {
		if c := &e.Causes[k]; c.Why == PreyKilled && c.Days.Has(i) {
			return c
		}
	}
	return nil
}

// beside is how killed prey is given to the companions of animals that must have no
// live prey round them (common practice, no source).
const beside = "beside the hides, out the same evening"

// atDoor is where young that are with their mother get their prey: her box is not opened
// further for them than for her (common practice, no source).
const atDoor = "in pieces at her door"

// onceBrown stands before it as long as their first moult is not logged: white young do not
// eat, and prey that lies about harms them (as in the first look after the brood).
const onceBrown = "light brown ones only, "

// inHand says, once it is known which days stand, how they are done: it takes out what
// was put on days on which it must not be done, has prey killed where live prey would
// harm, and says the manner of what may be done only so and so.
func (b *builder) inHand(e *Entry) {
	if !b.inAnyState() {
		return
	}
	if e.Once != nil {
		if e.Once.Meal && !e.Once.Killed {
			b.kill(e)
		}
		return
	}
	b.held(e)
	if e.Killed != nil {
		e.Killed.Keep(e.Days)
	}
	b.kill(e)
	b.manners(e)
}

// inAnyState reports whether any animals of the enclosure are in a state at all.
func (b *builder) inAnyState() bool {
	return len(b.life.Holds) > 0 || slices.ContainsFunc(b.life.Groups, func(g *life.Group) bool { return len(g.Holds) > 0 || b.tiny(g) })
}

// EachLiveHeld calls use for every hold by which the meals of a group may not be live,
// with its first day and the first after it: those of its own, and those of its
// companions, since loose prey finds whoever is soft or has young.
func (e *Entry) EachLiveHeld(use func(h *life.Hold, from, until civil.Date)) {
	of := func(holds []life.Hold) {
		for i := range holds {
			switch h, m := &holds[i], holds[i].State.May[schema.RowLive]; {
			case m.Manner == schema.Held:
				use(h, h.From, h.Until)
			case m.From > 0:
				use(h, h.From, min(h.Until, h.From+civil.Date(m.From)))
			}
		}
	}
	of(e.Life.Holds)
	for _, g := range e.Life.Groups {
		of(g.Holds)
	}
}

// noLive returns the days on which a meal may not be of live prey; nil for none.
func (b *builder) noLive(e *Entry) horizon.Days {
	if e.Group == nil || !e.Feeds() {
		return nil
	}
	var dead horizon.Days
	add := func(from, until civil.Date) {
		lo, hi := max(0, int(from-b.Horizon.From)), min(int(until-b.Horizon.From), b.Horizon.Days)
		if lo >= hi {
			return
		}
		if dead == nil {
			dead = b.days()
		}
		dead.AddRun(lo, hi, b.Horizon.Days)
	}
	e.EachLiveHeld(func(_ *life.Hold, from, until civil.Date) { add(from, until) })
	if b.tiny(e.Group) {
		b.smallest(e.Group, add)
	}
	return dead
}

// either returns the days that are in one of two sets, of which the first may be nil.
func either(a, b horizon.Days) horizon.Days {
	if a == nil {
		return b
	}
	a.Union(b)
	return a
}

// handfed is the instar from which young of a brood take live prey of their size
// (common practice, no source).
const handfed = 3

// tiny reports whether a group is, or was, a brood that its mother carried: young that
// cannot kill prey of any size, whatever a sheet says of others of their stage. What
// hatches free hunts what moves, and is fed as its sheet has it.
func (b *builder) tiny(g *life.Group) bool {
	return g.Logged && (g.Mother != nil || g.Bears()) && slices.ContainsFunc(g.Stages, isYoung)
}

func isYoung(s life.Stretch) bool { return s.Stage == "young" }

// smallest calls use for the days on which a brood gets killed prey: with its mother,
// and before its third instar.
func (b *builder) smallest(g *life.Group, use func(from, until civil.Date)) {
	for k, s := range g.Stages {
		until := b.Horizon.Last() + 1
		if k+1 < len(g.Stages) {
			until = g.Stages[k+1].From
		}
		if isYoung(s) && (g.Mother != nil || s.Instar > 0 && s.Instar < handfed) {
			use(s.From, until)
		}
	}
}

// kill has prey killed first on the days on which live prey would harm.
func (b *builder) kill(e *Entry) {
	if e.Group == nil || e.Kind.Row != schema.RowLive || e.isMeal() && e.Meal.Killed.V {
		return
	}
	dead := b.noLive(e)
	if dead == nil || !dead.Intersects(e.Days) {
		return
	}
	if e.Killed == nil {
		e.Killed = b.days()
	}
	say := func(c Cause, from, until civil.Date) {
		for i := e.Days.Next(max(0, int(from-b.Horizon.From))); i >= 0 && i < int(until-b.Horizon.From); i = e.Days.Next(i + 1) {
			e.Killed.Add(i)
			b.mark(e, c, i)
		}
	}
	e.EachLiveHeld(func(h *life.Hold, from, until civil.Date) {
		say(Cause{Why: PreyKilled, Hold: h, At: h.At}, from, until)
	})
	if b.tiny(e.Group) {
		b.smallest(e.Group, func(from, until civil.Date) { say(Cause{Why: PreyKilled, At: e.Group.Since.At}, from, until) })
	}
}

// manners says how the days that stand are done, each by the strictest state.
func (b *builder) manners(e *Entry) {
	h := b.Horizon
	var all []Manner
	add := func(x *life.Hold, m schema.May, i int) {
		for k := range all {
			if all[k].Hold == x && all[k].May == m {
				all[k].Days.Add(i)
				return
			}
		}
		all = append(all, Manner{May: m, Hold: x, Days: b.days()})
		all[len(all)-1].Days.Add(i)
	}
	each := func(from, until civil.Date, use func(i int)) {
		for i := e.Days.Next(max(0, int(from-h.From))); i >= 0 && i < int(until-h.From); i = e.Days.Next(i + 1) {
			use(i)
		}
	}
	e.EachState(func(x *life.Hold) {
		if x.Part && e.Kind.Meal {
			return
		}
		each(x.From, x.Until, func(i int) {
			m := x.State.May[e.row(e.Killed != nil && e.Killed.Has(i))]
			if m.Manner != schema.Held && (m.Manner != schema.AsUsual || m.Words != "") && i != e.Logged {
				add(x, m, i)
			}
		})
	})
	if e.isMeal() && !e.Meal.Killed.V && len(e.Life.Groups) > 1 {
		e.EachLiveHeld(func(x *life.Hold, from, until civil.Date) {
			if b.others(e.Group, x) {
				each(from, until, func(i int) { add(x, schema.May{Words: beside}, i) })
			}
		})
	}
	if e.isMeal() && e.Group.Mother != nil {
		for k := range e.Group.Mother.Holds {
			x := &e.Group.Mother.Holds[k]
			if m := x.State.May[schema.RowKilled].Manner; m == schema.Hatch || m == schema.Outside {
				words := atDoor
				if x.State == schema.StateBrood && e.Group.Bears() {
					words = onceBrown + atDoor
				}
				each(x.From, x.Until, func(i int) { add(x, schema.May{Manner: m, Words: words}, i) })
			}
		}
	}
	e.Manners = strictest(all)
}

// others reports whether a hold is one of another group's.
func (b *builder) others(g *life.Group, h *life.Hold) bool {
	for _, o := range b.life.Groups {
		if o != g && len(o.Holds) > 0 && within(o.Holds, h) {
			return !h.State.Box
		}
	}
	return false
}

func within(holds []life.Hold, h *life.Hold) bool {
	for i := range holds {
		if &holds[i] == h {
			return true
		}
	}
	return false
}

// strictest leaves of several manners of a day the strictest, and of two as strict the
// one that has something to say.
func strictest(all []Manner) []Manner {
	slices.SortStableFunc(all, func(x, y Manner) int {
		if c := cmp.Compare(y.May.Manner, x.May.Manner); c != 0 {
			return c
		}
		return cmp.Compare(min(len(y.May.Words), 1), min(len(x.May.Words), 1))
	})
	out := all[:0]
	for k := range all {
		for j := range out {
			all[k].Days.Subtract(out[j].Days)
		}
		if all[k].Days.Next(0) >= 0 {
			out = append(out, all[k])
		}
	}
	return out
}
