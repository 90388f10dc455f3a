package roster

import (
	"slices"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Cautions are what to see to before care of a kind is done at an enclosure on a day, in the
// order in which it is said: by whoever lives there, how far they are grown, and the
// devices that are at the box. It is nil for most care.
func Cautions(l *life.Enclosure, k *schema.CareKind, today civil.Date) []*schema.Caution {
	var out []*schema.Caution
	has := func(t *schema.Trait) bool {
		return slices.ContainsFunc(sheets(l), func(s *plan.SpeciesSheet) bool {
			return saysOneOf(s, t.Figure, t.Words) && (!t.Grown || grown(l, s, today))
		})
	}
	heater := func(places []string) bool {
		return l.Plan.Climate != nil && slices.ContainsFunc(l.Plan.Climate.Heaters, func(h *plan.Heater) bool { return slices.Contains(places, h.Place.V) })
	}
	for _, c := range schema.Cautions {
		if c.Of(k, has, heater) {
			out = append(out, c)
		}
	}
	return out
}

// grown reports whether any of a species in an enclosure may be more than young on a day.
// Nobody of it there may be anybody.
func grown(l *life.Enclosure, s *plan.SpeciesSheet, today civil.Date) bool {
	some := false
	for _, g := range l.Groups {
		of := g.Sheet
		if of == nil {
			of = l.Plan.Sheet
		}
		if of != s || g.Count(today) == 0 {
			continue
		}
		some = true
		if stage := g.Stage(today); stage != newborn && stage != "young" {
			return true
		}
	}
	return !some
}

// sheets are those of the species in an enclosure: its own, and of what was moved there.
func sheets(l *life.Enclosure) []*plan.SpeciesSheet {
	var out []*plan.SpeciesSheet
	if l.Plan.Sheet != nil {
		out = append(out, l.Plan.Sheet)
	}
	for _, g := range l.Groups {
		if g.Sheet != nil && !slices.Contains(out, g.Sheet) {
			out = append(out, g.Sheet)
		}
	}
	return out
}

// saysOneOf reports whether a figure of a sheet has one of some words.
func saysOneOf(s *plan.SpeciesSheet, figure *schema.Figure, words []string) bool {
	f := s.Figure(figure, "")
	return f != nil && slices.ContainsFunc(words, func(w string) bool { return slices.Contains(f.Words, w) })
}
