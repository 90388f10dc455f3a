package roster

import (
	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
)

// takes reports whether a hold takes out the series: what goes with a meal is held
// with it. The log's own tasks were made with the holds in mind.
func (s *Entry) takes(h *life.Hold) bool {
	switch {
	case s.Once != nil:
		return false
	case s.Meal != nil:
		return h.What.Takes(schema.KindFeed)
	}
	return h.What.Takes(s.Kind)
}

// EachHold calls use for every hold that takes days out of the series: those of
// its group, or of any group where it is care of the whole enclosure. They are
// moved by as many days as the series comes after its meal.
func (s *Entry) EachHold(use func(*life.Hold)) {
	s.each(s.Life.Holds, use)
	for _, g := range s.Life.Groups {
		if s.Group == nil || s.Group == g {
			s.each(g.Holds, use)
		}
	}
}

func (s *Entry) each(holds []life.Hold, use func(*life.Hold)) {
	for i := range holds {
		if h := &holds[i]; s.takes(h) {
			if s.After != 0 {
				moved := *h
				moved.From += civil.Date(s.After)
				moved.Until += civil.Date(s.After)
				h = &moved
			}
			use(h)
		}
	}
}

// EachHeld calls use for the days from a day until another that are planned and
// held. A day that several holds take out comes several times.
func (s *Entry) EachHeld(from, until civil.Date, use func(civil.Date)) {
	s.EachHold(func(h *life.Hold) {
		for d := max(h.From, from); d < min(h.Until, until); d++ {
			if s.planned(d) {
				use(d)
			}
		}
	})
	s.each(s.Life.Halves, func(h *life.Hold) {
		n := 0
		for d := h.From; d < min(h.Until, until); d++ {
			if s.planned(d) {
				if n++; n%2 == 0 && d >= from {
					use(d)
				}
			}
		}
	})
}

// HeldFrom returns the day from which the series is held until something is
// logged, and whether there is one.
func (s *Entry) HeldFrom() (from civil.Date, open bool) {
	s.EachHold(func(h *life.Hold) {
		if h.Open && (!open || h.From < from) {
			from, open = h.From, true
		}
	})
	return from, open
}

// planned reports whether one of the series' rules has the day.
func (s *Entry) planned(d civil.Date) bool {
	for _, r := range s.Rules {
		if r.Contains(d) {
			return true
		}
	}
	return false
}

// hold takes out what the animals' state forbids.
func (b *builder) hold(s *Entry) {
	h := b.s.Horizon
	s.EachHold(func(x *life.Hold) {
		if s.Held == nil {
			s.Held = b.days()
		}
		s.Held.AddRun(int(x.From-h.From), int(x.Until-h.From), h.Days)
	})
	s.each(s.Life.Halves, func(x *life.Hold) { b.halve(s, x) })
	if s.Held != nil {
		for i := range s.Held {
			s.Held[i] &= s.Days[i]
			s.Days[i] &^= s.Held[i]
		}
	}
}

// halve holds every second occasion. They are counted from the first day of the
// stretch, so that the day of the build does not matter.
func (b *builder) halve(s *Entry, x *life.Hold) {
	h := b.s.Horizon
	n := 0
	for d := x.From; d < min(h.From, x.Until); d++ {
		if s.planned(d) {
			n++
		}
	}
	if s.Held == nil {
		s.Held = b.days()
	}
	until := min(int(x.Until-h.From), h.Days)
	for i := s.Days.Next(int(x.From - h.From)); i >= 0 && i < until; i = s.Days.Next(i + 1) {
		if n++; n%2 == 0 {
			s.Held.Add(i)
		}
	}
}
