package roster

import (
	"slices"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
)

// Cautions are what to see to before care of a kind is done at an enclosure, in the order
// in which it is said: by whoever lives there and the devices that are at the box. It is
// nil for most care.
func Cautions(l *life.Enclosure, k *schema.CareKind) []*schema.Caution {
	var out []*schema.Caution
	has := func(f *schema.Figure, words []string) bool {
		return slices.ContainsFunc(sheets(l), func(s *plan.SpeciesSheet) bool { return saysOneOf(s, f, words) })
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
