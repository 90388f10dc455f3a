package plan

import (
	"cmp"
	"slices"

	"vivary/schema"
	"vivary/schema/quantity"
)

// layer is a sheet that a species is made from.
type layer struct {
	*SpeciesSheet
	lent bool // it is that of another species, by like
}

// lent returns what a sheet lends to one of another species, whose animals are so long
// when grown (the zero Range where that is not known). Names stay behind, and so does
// what only the species itself can state: its size, heat, company, danger and law. What
// follows from size goes to animals of that size.
func (s *SpeciesSheet) lent(long quantity.Range) *SpeciesSheet {
	out := *s
	none := Written[string]{}
	out.Title, out.Latin, out.Family, out.Note, out.Type = none, none, none, none, none
	out.Also, out.Former, out.Mistaken = nil, nil, nil
	alike := alike(long, s.grown())
	out.Figures = nil
	for _, f := range s.Figures {
		if f.What.Own || f.What.Sized && !alike {
			continue
		}
		of := *f
		of.Of = s.Name.V
		out.Figures = append(out.Figures, &of)
	}
	out.Needs = nil
	for _, n := range s.Needs {
		of := *n
		of.Of = s.Name.V
		out.Needs = append(out.Needs, &of)
	}
	return &out
}

// grown is the length of grown animals, the zero Range where the sheet does not say it.
func (s *SpeciesSheet) grown() quantity.Range {
	if f := s.Figure(schema.FigureLength, "adult"); f != nil {
		return f.Range
	}
	return quantity.Range{}
}

// alike reports whether animals of two lengths may have the same box: their ranges come
// within a quarter of each other, or one of them is not known.
func alike(a, b quantity.Range) bool {
	if a.High == 0 || b.High == 0 {
		return true
	}
	const near = 1.25
	return a.High <= near*b.High && b.High <= near*a.High
}

// Unknown returns the figures that every sheet of ours states and this one does not.
func (s *SpeciesSheet) Unknown() (figures []*schema.Figure) {
	for _, f := range schema.Figures {
		switch {
		case f == schema.FigureMass && s.Figure(schema.FigureLength, "adult") != nil:
			continue // prey is judged by length then
		case f == schema.FigureTemperatureSoft && s.Figure(schema.FigureTemperatureTarget, "") != nil:
			continue // what is aimed for is stricter
		}
		if f.Required && !slices.ContainsFunc(s.Figures, func(x *Figure) bool { return x.What == f }) {
			figures = append(figures, f)
		}
	}
	return figures
}

// Unsaid returns the names of the figures that every species needs, or that are worth
// knowing of each, and that this one does not state.
func (s *SpeciesSheet) Unsaid() (names []string) {
	for _, f := range schema.Figures {
		if (f.Required || f.Asked) && !slices.ContainsFunc(s.Figures, func(x *Figure) bool { return x.What == f }) {
			names = append(names, f.Name)
		}
	}
	return names
}

// Unjudged returns what is not judged of a species for want of figures, such as "heat".
func (s *SpeciesSheet) Unjudged() (about []string) {
	for _, f := range s.Unknown() {
		if !slices.Contains(about, f.About) {
			about = append(about, f.About)
		}
	}
	return about
}

// Lenders returns what else a sheet is made from, each once: the titles of its types, else
// the species that it is like.
func (s *SpeciesSheet) Lenders() (all []string) {
	add := func(c Cited) {
		if by := cmp.Or(c.OfType, c.Of); by != "" && !slices.Contains(all, by) {
			all = append(all, by)
		}
	}
	for _, f := range s.Figures {
		add(f.Cited)
	}
	for _, n := range s.Needs {
		add(n.Cited)
	}
	return all
}
