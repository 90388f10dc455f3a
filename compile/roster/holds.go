package roster

import (
	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
)

// takes reports whether a hold takes out the entry. The log's own tasks were made
// with the holds in mind, and what goes with a meal follows it.
func (e *Entry) takes(h *life.Hold) bool {
	switch {
	case e.Once != nil:
		return false
	case e.Meal != nil:
		return h.Takes(schema.KindFeed)
	}
	return h.Takes(e.Kind)
}

// EachHold calls use for every hold that takes days out of the entry: those of
// its group, or of any group where it is care of the whole enclosure. They are
// moved by as many days as the entry comes after its meal.
func (e *Entry) EachHold(use func(*life.Hold)) {
	e.each(e.Life.Holds, use)
	for _, g := range e.Life.Groups {
		if e.Group == nil || e.Group == g {
			e.each(g.Holds, use)
		}
	}
}

func (e *Entry) each(holds []life.Hold, use func(*life.Hold)) {
	for i := range holds {
		if h := &holds[i]; e.takes(h) {
			if e.After != 0 {
				moved := *h
				moved.From += civil.Date(e.After)
				moved.Until += civil.Date(e.After)
				h = &moved
			}
			use(h)
		}
	}
}

// EachHeld calls use for the days from a day until another that are planned and
// held. A day that several holds take out comes several times. It knows days before
// the window too, which a series that began years ago leaves out.
func (e *Entry) EachHeld(from, until civil.Date, use func(civil.Date)) {
	e.EachHold(func(h *life.Hold) {
		for d := max(h.From, from); d < min(h.Until, until); d++ {
			if e.Planned(d) {
				use(d)
			}
		}
	})
	e.each(e.Life.Halves, func(h *life.Hold) {
		n := 0
		for d := h.From; d < min(h.Until, until); d++ {
			if e.Planned(d) {
				if n++; n%2 == 0 && d >= from {
					use(d)
				}
			}
		}
	})
}

// HeldFrom returns the day from which the entry is held until something is
// logged, and whether there is one.
func (e *Entry) HeldFrom() (from civil.Date, open bool) {
	e.EachHold(func(h *life.Hold) {
		if h.Open && (!open || h.From < from) {
			from, open = h.From, true
		}
	})
	return from, open
}

// hold takes out what the animals' state forbids.
func (b *builder) hold(e *Entry) {
	h := b.Horizon
	e.EachHold(func(x *life.Hold) {
		from, until := max(0, int(x.From-h.From)), min(int(x.Until-h.From), h.Days)
		for i := e.Days.Next(from); i >= 0 && i < until; i = e.Days.Next(i + 1) {
			b.take(e, Cause{Why: Held, Hold: x, At: x.At}, i)
		}
	})
	e.each(e.Life.Halves, func(x *life.Hold) { b.halve(e, x) })
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
