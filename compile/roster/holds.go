package roster

import (
	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
)

// takes reports whether a hold takes out the entry altogether. The log's own tasks were
// made with the holds in mind, and what goes with a meal follows it.
func (e *Entry) takes(h *life.Hold) bool {
	switch {
	case e.Once != nil:
		return false
	case e.Meal != nil:
		return h.Takes(schema.KindFeed)
	}
	return h.Takes(e.Kind)
}

// EachState calls use for every hold that has a say in the entry: those of the
// enclosure and of its group, those of any group where it is care of the whole
// enclosure, and the states of others that are the whole box's.
func (e *Entry) EachState(use func(*life.Hold)) {
	for i := range e.Life.Holds {
		use(&e.Life.Holds[i])
	}
	for _, g := range e.Life.Groups {
		for i := range g.Holds {
			if h := &g.Holds[i]; e.Group == nil || e.Group == g || h.State.Box {
				use(h)
			}
		}
	}
}

// moved returns a hold by as many days later as the entry comes after its meal.
func (e *Entry) moved(h *life.Hold) *life.Hold {
	if e.After == 0 {
		return h
	}
	x := *h
	x.From += civil.Date(e.After)
	x.Until += civil.Date(e.After)
	return &x
}

// cell is a cell of a state's table on a day: nothing before the state's so many
// days have gone by.
func cell(h *life.Hold, row schema.Row, d civil.Date) schema.May {
	m := h.State.May[row]
	if int(d-h.From) < m.From {
		m.Manner = schema.Held
	}
	return m
}

// row is the row of the table that an entry is in on a day: of a meal that of killed
// prey where no live prey is given.
func (e *Entry) row(dead bool) schema.Row {
	if e.isMeal() && (dead || e.Meal.Killed.V) {
		return schema.RowKilled
	}
	return e.Kind.Row
}

// thinning says of the days of an entry, in their order, which of them a hold leaves
// out: those on which it is not to be done at all, and those that come too soon after
// one that stands.
type thinning struct {
	e    *Entry
	h    *life.Hold
	last civil.Date
	any  bool
}

// out reports whether the entry is left out on a day; dead says whether no live prey
// is given then.
func (t *thinning) out(d civil.Date, dead bool) bool {
	row := t.e.row(dead)
	m := cell(t.h, row, d)
	if t.e.Kind.Water || t.h.Part && t.e.Kind.Meal {
		return false
	}
	if m.Manner == schema.Held || m.Every > 1 && t.any && int(d-t.last) < m.Every {
		return true
	}
	t.last, t.any = d, true
	return false
}

// alone is out where nothing is known but this hold.
func (t *thinning) alone(d civil.Date) bool {
	return t.out(d, cell(t.h, schema.RowLive, d).Manner == schema.Held)
}

// EachHeld calls use for the days from a day until another that are planned and
// held. A day that several holds take out comes several times. It knows days before
// the window too, which a series that began years ago leaves out.
func (e *Entry) EachHeld(from, until civil.Date, use func(civil.Date)) {
	if e.Once != nil {
		return
	}
	meal := e
	if e.Meal != nil && e.After != 0 { // it is out where its meal is
		meal = &Entry{Life: e.Life, Group: e.Group, Kind: schema.KindFeed, Meal: e.Meal}
	}
	after := civil.Date(e.After)
	e.EachState(func(h *life.Hold) {
		t := thinning{e: meal, h: h}
		first := max(h.From, from-after)
		if h.State.May[meal.row(true)].Every > 1 || h.State.May[meal.row(false)].Every > 1 {
			first = h.From // which of them stand is counted from the first
		}
		for d := first; d < min(h.Until, until-after); d++ {
			if e.Planned(d+after) && t.alone(d) && d+after >= from {
				use(d + after)
			}
		}
	})
	for i := range e.Life.Halves {
		if h := &e.Life.Halves[i]; e.takes(h) {
			e.half(e.moved(h), from, until, use)
		}
	}
}

// half calls use for every second planned day of a stretch.
func (e *Entry) half(h *life.Hold, from, until civil.Date, use func(civil.Date)) {
	n := 0
	for d := h.From; d < min(h.Until, until); d++ {
		if e.Planned(d) {
			if n++; n%2 == 0 && d >= from {
				use(d)
			}
		}
	}
}

// UsualUntil returns the day from which the entry is held, or done otherwise than
// planned, until something is logged, and whether there is one.
func (e *Entry) UsualUntil() (from civil.Date, open bool) {
	add := func(day civil.Date) {
		if !open || day < from {
			from, open = day, true
		}
	}
	e.EachState(func(h *life.Hold) {
		m := h.State.May[e.row(false)]
		m.Source, m.From = "", 0 // before its first day it is held, and a day left out
		switch {
		case !h.Open || e.Once != nil:
		case e.takes(h):
			add(h.From + civil.Date(e.After))
		case !(h.Part && e.Kind.Meal) && m != schema.May{}:
			add(h.From)
		}
	})
	if e.isMeal() && !e.Meal.Killed.V {
		e.EachLiveHeld(func(h *life.Hold, from, until civil.Date) {
			if h.Open && until == h.Until {
				add(from)
			}
		})
	}
	return from, open
}

// heldOn reports whether a state forbids the entry on a day, whatever stands on others.
func (e *Entry) heldOn(d civil.Date) bool {
	if e.Once != nil || e.Kind.Water {
		return false
	}
	row := e.row(true)
	if e.Meal != nil { // what goes with a meal follows it
		row, d = schema.RowKilled, d-civil.Date(e.After)
	}
	out := false
	e.EachState(func(h *life.Hold) {
		out = out || h.From <= d && d < h.Until && !(h.Part && e.Meal != nil) && cell(h, row, d).Manner == schema.Held
	})
	return out
}

// hold takes out what the animals' state forbids, and every second occasion of a
// season that halves them. Days that come back later, at a visit or to be caught up,
// are held by state once more.
func (b *builder) hold(e *Entry) {
	if e.Once != nil {
		return
	}
	b.held(e)
	for i := range b.life.Halves {
		if x := &b.life.Halves[i]; e.takes(x) {
			b.halve(e, e.moved(x))
		}
	}
}

// held takes out what the animals' state forbids.
func (b *builder) held(e *Entry) {
	h := b.Horizon
	dead := b.noLive(e)
	if e.Killed != nil { // by an absence
		dead = either(dead, e.Killed)
	}
	e.EachState(func(x *life.Hold) {
		from, until := max(0, int(x.From-h.From)), min(int(x.Until-h.From), h.Days)
		i := e.Days.Next(from)
		if i < 0 || i >= until {
			return
		}
		t := thinning{e: e, h: x}
		if x.From < h.From && x.State.May[e.row(true)].Every > 1 {
			for d := x.From; d < h.From; d++ {
				if e.Planned(d) {
					t.alone(d)
				}
			}
		}
		for ; i >= 0 && i < until; i = e.Days.Next(i + 1) {
			if t.out(h.Date(i), dead != nil && dead.Has(i)) {
				b.take(e, Cause{Why: Held, Hold: x, At: x.At}, i)
			}
		}
	})
}

// halve holds every second occasion. They are counted from the first day of the
// stretch, so that the day of the build does not matter.
func (b *builder) halve(e *Entry, x *life.Hold) {
	h := b.Horizon
	n := 0
	for d := x.From; d < min(x.Until, h.Last()+1); d++ {
		i, in := h.Index(d)
		if !e.Planned(d) && !(in && e.Days.Has(i)) {
			continue
		}
		if n++; n%2 == 0 && in && e.Days.Has(i) {
			b.take(e, Cause{Why: Halved, Hold: x, At: x.At}, i)
		}
	}
}
