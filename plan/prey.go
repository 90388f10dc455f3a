package plan

import (
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/schema/wording"
)

// asNamed returns prey by the names of the sheets, as far as one is meant.
func (l *Library) asNamed(w Written[Prey]) Written[Prey] {
	if w.Set() && !l.has(w.V) {
		if n := l.ByOtherPrey(w.V); n.Prey.Size != "" {
			w.V = n.Prey
		}
	}
	return w
}

// has reports whether prey stands as the sheets have it.
func (l *Library) has(p Prey) bool {
	f := l.Feeder(p.Feeder)
	return f != nil && f.Size(p.Size) != nil
}

// menus returns feedings with their prey by the names of the sheets. One in which nothing
// changes is the same value.
func (l *Library) menus(all []*Feeding) []*Feeding {
	out, cloned := all, false
	for i, f := range all {
		named := l.menu(f)
		if named == f {
			continue // others may read these blocks meanwhile
		}
		if !cloned {
			out, cloned = slices.Clone(all), true
		}
		out[i] = named
	}
	return out
}

func (l *Library) menu(f *Feeding) *Feeding {
	typed := f.asTyped()
	known := func(w Written[Prey]) bool { return !w.Set() || l.has(w.V) }
	if known(typed.Prey) && !slices.ContainsFunc(typed.Rotate, func(w Written[Prey]) bool { return !known(w) }) {
		return typed
	}
	named := *typed
	named.typed = typed
	named.Prey = l.asNamed(typed.Prey)
	named.Rotate = slices.Clone(typed.Rotate)
	for i, w := range named.Rotate {
		named.Rotate[i] = l.asNamed(w)
	}
	for _, g := range []*Feeding{typed, f} {
		if g.Prey == named.Prey && slices.Equal(g.Rotate, named.Rotate) {
			return g
		}
	}
	return &named
}

// asTyped returns a feeding as it stands in its file.
func (f *Feeding) asTyped() *Feeding {
	if f.typed != nil {
		return f.typed
	}
	return f
}

// called returns a sheet of the collection's own with the prey of its meals by the names
// of the sheets: that of the load before, where it would be the same.
func (l *Library) called(s *SpeciesSheet) *SpeciesSheet {
	from := s
	if was := l.wasCalled[s]; was != nil {
		from = was
	}
	feeding := l.menus(from.Feeding)
	switch {
	case slices.Equal(feeding, s.Feeding):
		return s
	case !slices.Equal(feeding, from.Feeding):
		again := *s
		again.Feeding = feeding
		from = &again
	}
	l.isCalled[s] = from
	return from
}

// prey finds what is fed and is not there, or not by that name.
func (r *resolver) prey(w Written[Prey]) {
	lib := r.c.Library
	if lib.has(w.V) {
		return
	}
	n := lib.ByOtherPrey(w.V)
	typed := w.V.String()
	switch {
	case n.Measure != "":
		better := n.Prey.String()
		r.found.Add(finding.Finding{Rule: ruleOldName, At: w.At, Text: quote(typed) + " is taken for " + better + ", of " + n.Measure + ", the nearest of its sizes",
			Write: quote(better), Edits: finding.Instead(w.At, typed, better)})
	case n.Prey.Size != "": // said in the words of the trade: it is clear what is meant
	case len(n.Feeders) > 1:
		var names []string
		for _, f := range n.Feeders {
			names = append(names, f.Name.V)
		}
		r.found.Add(finding.Finding{Rule: ruleUnknownName, At: w.At, Text: quote(typed) + " is a name of several feeders: " + wording.And(names),
			Write: strings.Join(quotedEach(names), " or ") + ", with the size after it, whichever yours are"})
	case len(n.Feeders) == 0:
		r.unknownPrey(w, typed)
	default:
		f := n.Feeders[0]
		var sizes []string
		for _, s := range f.Sizes {
			sizes = append(sizes, s.Name.V)
		}
		if n.Rest != "" {
			r.unknownName(r.within(w.At, n.Rest), "size of "+f.Name.V, sizes)
			return
		}
		r.found.Add(finding.Finding{Rule: ruleUnknownName, At: w.At, Text: "the size of the " + f.Name.V + " is not said",
			Write: "a size after it: " + strings.Join(sizes, ", ")})
	}
}

// unknownPrey finds a feeder of which there is no sheet. None is taken for another, however
// near its name is: it says which are near, or which there are.
func (r *resolver) unknownPrey(w Written[Prey], typed string) {
	if r.unsaid(w.V.Feeder) {
		return
	}
	f := finding.Finding{Rule: ruleUnknownName, At: w.At, Text: "there is no feeder " + quote(typed)}
	if near := r.c.Library.nearPrey(typed); len(near) > 0 {
		behind := ", with the size after it"
		if strings.Contains(near[0], " ") {
			behind = ""
		}
		f.Text += "; near it by name " + wording.Noun(len(near), "is ", "are ") + wording.And(near)
		f.Write = strings.Join(quotedEach(near), " or ") + behind + ", if that is what yours are; else a feeder block of its own"
	} else {
		f.Write = "one that there is, with its size: " + strings.Join(usualFeeders, ", ") + " and those of vivary why feeders; or a feeder block of its own"
	}
	r.found.Add(f)
}

// usualFeeders are named where no feeder is near to what was written.
var usualFeeders = []string{"cricket", "roach", "locust", "mealworm", "superworm", "waxworm", "fruit-fly"}
