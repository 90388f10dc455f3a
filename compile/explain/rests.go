package explain

import (
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/plan"
)

// rest says what rests on a source: in every sheet of species and feeders, whether
// the collection uses it or not, and in the care of its enclosures.
func rest(r *compile.Result, source string) []Line {
	var out []Line
	for _, s := range allSheets(r) {
		u := uses{source: source}
		u.species(s)
		out = u.to(out, s.Name.V)
	}
	for _, n := range r.Plan.Library.FeederNames() {
		u := uses{source: source}
		u.feeder(r.Plan.Library.Feeder(n))
		out = u.to(out, n)
	}
	for _, e := range r.Plan.Enclosures {
		u := uses{source: source}
		u.care("care", e.Care, e.Feeding)
		for _, a := range e.Accepts {
			u.note("accept", a.Name.V, a.Source)
		}
		out = u.to(out, e.Name.V)
	}
	return out
}

// uses collects what rests on a source in one sheet or enclosure, by sort.
type uses struct {
	source string
	sorts  []string
	names  map[string][]string
}

func (u *uses) note(sort, name string, sources []plan.Written[string]) {
	if !plan.Lists(sources, u.source) {
		return
	}
	if u.names == nil {
		u.names = map[string][]string{}
	}
	if u.names[sort] == nil {
		u.sorts = append(u.sorts, sort)
	}
	u.names[sort] = append(u.names[sort], name)
}

func (u *uses) species(s *plan.SpeciesSheet) {
	u.figures(s.Figures)
	for _, n := range s.Needs {
		u.note("needs", holding(n.Name.V, n.Stages), n.Source)
	}
	u.care("care", s.Care, s.Feeding)
	for _, x := range s.Stages {
		u.note("stages", x.Name.V, x.Source)
	}
}

func (u *uses) feeder(f *plan.FeederSheet) {
	for _, s := range f.Sizes {
		u.note("sizes", s.Name.V, s.Source)
	}
	u.figures(f.Figures)
}

func (u *uses) figures(all []*plan.Figure) {
	for _, f := range all {
		name := holding(f.Name.V, f.Stages)
		if f.Instar.Set() {
			name += " (instar " + strconv.Itoa(f.Instar.V) + ")"
		}
		u.note("figures", name, f.Source)
	}
}

func (u *uses) care(sort string, care []*plan.Care, feeding []*plan.Feeding) {
	for _, c := range care {
		u.note(sort, c.Name.V, c.Source)
	}
	for _, f := range feeding {
		u.note(sort, "feed "+f.Name.V, f.Source)
	}
}

// to adds what was collected under a name, if anything was.
func (u *uses) to(out []Line, name string) []Line {
	var parts []string
	for _, s := range u.sorts {
		parts = append(parts, s+": "+strings.Join(u.names[s], ", "))
	}
	if len(parts) == 0 {
		return out
	}
	return append(out, Line{Name: name, Text: strings.Join(parts, "; ")})
}
