package plan

import (
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/schema/wording"
)

// PreyNames is what is meant by prey that does not stand as the sheets have it.
type PreyNames struct {
	Feeders []*FeederSheet // that are called so; of several none is meant
	Prey    Prey           // by the names of the sheets, where feeder and size are known
	Rest    string         // what is written beside the feeder: nothing, or no size of it
}

// ByOtherPrey looks for the feeder and its size that are written by other names: the
// common one, several of them, a trade name, the scientific name. The size may stand
// before the feeder. What several feeders are called is never told apart by the size.
func (l *Library) ByOtherPrey(p Prey) (n PreyNames) {
	words := strings.Fields(p.String())
	for split := len(words); split > 0; split-- {
		front, back := strings.Join(words[:split], " "), strings.Join(words[split:], " ")
		for _, w := range [][2]string{{front, back}, {back, front}} {
			feeders := l.feedersCalled(w[0])
			if len(feeders) == 1 {
				if size := feeders[0].sizeCalled(w[1]); size != nil {
					return PreyNames{Feeders: feeders, Prey: Prey{feeders[0].Name.V, size.Name.V}}
				}
			}
			if n.Feeders == nil { // of more words than any that follows
				n = PreyNames{Feeders: feeders, Rest: w[1]}
			}
			if len(n.Feeders) > 1 {
				return n
			}
		}
	}
	return n
}

// feedersCalled returns the feeders of a name: the one whose sheet is named so, else all
// that are called so.
func (l *Library) feedersCalled(name string) (all []*FeederSheet) {
	want := slug(name)
	if f := l.Feeder(want); f != nil {
		return []*FeederSheet{f}
	}
	for _, of := range l.FeederNames() {
		f := l.Feeder(of)
		if want != "" && slices.ContainsFunc(f.Names(), func(n string) bool { return slug(n) == want }) {
			all = append(all, f)
		}
	}
	return all
}

// Names returns all that a feeder is called: the name of its sheet, the common one,
// several of them, the scientific one and the others.
func (f *FeederSheet) Names() []string {
	all := []string{f.Name.V, f.Title.V, f.Plural.V}
	if latin := strings.Fields(f.Latin.V); len(latin) > 1 {
		all = append(all, strings.Trim(latin[0]+" "+latin[1], ","))
	}
	for _, w := range f.Also {
		all = append(all, w.V)
	}
	return slices.DeleteFunc(all, func(n string) bool { return n == "" })
}

// sizeCalled returns the size class of a name, its own or another, or nil.
func (f *FeederSheet) sizeCalled(name string) *FeederSize {
	want := slug(name)
	if want == "" && len(f.Sizes) == 1 {
		return f.Sizes[0] // there is no other
	}
	for _, s := range f.Sizes {
		if slug(s.Name.V) == want || slices.ContainsFunc(s.Also, func(w Written[string]) bool { return slug(w.V) == want }) {
			return s
		}
	}
	return nil
}

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
		if named != f && !cloned {
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
	case n.Prey.Size != "":
		better := n.Prey.String()
		r.found.Add(finding.Finding{Rule: ruleOldName, At: w.At, Text: quote(typed) + " is another name; the feeder " + better + " is used",
			Write: quote(better), Edits: finding.Instead(w.At, typed, better)})
	case len(n.Feeders) > 1:
		var names []string
		for _, f := range n.Feeders {
			names = append(names, f.Name.V)
		}
		r.found.Add(finding.Finding{Rule: ruleUnknownName, At: w.At, Text: quote(typed) + " is a name of several feeders: " + wording.And(names),
			Write: strings.Join(quotedEach(names), " or ") + ", with the size after it, whichever yours are"})
	case len(n.Feeders) == 0:
		if near := lib.nearPrey(typed); len(near) > 0 && !r.unsaid(typed) {
			behind := ", with the size after it"
			if strings.Contains(near[0], " ") {
				behind = ""
			}
			r.found.Add(finding.Finding{Rule: ruleUnknownName, At: w.At, Text: "there is no feeder " + quote(typed) + "; near it by name " + wording.Noun(len(near), "is ", "are ") + wording.And(near),
				Write: strings.Join(quotedEach(near), " or ") + behind + ", if that is what yours are"})
			return
		}
		r.unknownName(r.within(w.At, w.V.Feeder), "feeder", lib.feederWords())
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

// nearPrey returns the prey that may be meant by a word that is the name of a size alone
// ("hydei"), and the feeders in whose names a word stands ("fly"), by the names of the
// sheets. None of it is ever taken.
func (l *Library) nearPrey(written string) (near []string) {
	want := slug(written)
	for _, of := range l.FeederNames() {
		f := l.Feeder(of)
		for _, s := range f.Sizes {
			if len(want) > 4 && slug(s.Name.V) == want {
				near = append(near, Prey{f.Name.V, s.Name.V}.String())
			}
		}
	}
	if len(near) == 1 {
		return near
	}
	near = nil
	for _, of := range l.FeederNames() {
		f := l.Feeder(of)
		if slices.ContainsFunc(f.Names(), func(n string) bool { return slices.Contains(strings.Split(slug(n), "-"), want) }) {
			near = append(near, f.Name.V)
		}
	}
	if len(near) > mostNear {
		return nil
	}
	return near
}

// feederWords returns all names of all feeders, those of the sheets first.
func (l *Library) feederWords() []string {
	all := l.FeederNames()
	for _, n := range slices.Clone(all) {
		all = append(all, l.Feeder(n).Names()...)
	}
	return all
}
