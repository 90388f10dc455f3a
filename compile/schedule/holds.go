package schedule

import "vivary/compile/life"

// heldBy returns which holds take this series out. Drinking water is never held,
// and the log's own tasks were made with the holds in mind.
func (s *Series) heldBy() life.Mask {
	switch {
	case s.Kind.Water || s.Once != nil:
		return 0
	case s.Kind.Meal:
		return life.Meals
	case s.Kind.Disturbs:
		return life.Disturbing
	case s.Kind.Needs == "moisture":
		return life.Misting
	}
	return 0
}

// EachHold calls use for every hold that takes days out of the series: those of
// its group, or of any group where it is care of the whole enclosure.
func (s *Series) EachHold(use func(*life.Hold)) {
	what := s.heldBy()
	if what == 0 {
		return
	}
	each := func(holds []life.Hold) {
		for i := range holds {
			if holds[i].What&what != 0 {
				use(&holds[i])
			}
		}
	}
	each(s.Life.Holds)
	for _, g := range s.Life.Groups {
		if s.Group == nil || s.Group == g {
			each(g.Holds)
		}
	}
}
