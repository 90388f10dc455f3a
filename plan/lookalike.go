package plan

import "strings"

// LookAlike is another animal that a species is taken for, or sold as, or the other way
// round.
type LookAlike struct {
	Name   string
	Sheets []*SpeciesSheet // what is known of it; none where there is no sheet
}

// Shown is its name, with the name of its sheet where that is another.
func (a LookAlike) Shown() string {
	if len(a.Sheets) == 1 && a.Sheets[0].Name.V != slug(a.Name) {
		return a.Name + " (" + a.Sheets[0].Name.V + ")"
	}
	return a.Name
}

// LookAlikes returns the animals with which a species is mixed up, in the order in which
// its sheet names them. Only what has a sheet by that very name, or in a genus of which
// there are sheets, has one here: to look through all other names would read every sheet.
func (l *Library) LookAlikes(s *SpeciesSheet) (all []LookAlike) {
	for _, m := range s.Mistaken {
		a := LookAlike{Name: m.V}
		if other := l.Species(slug(m.V)); other != nil {
			a.Sheets = []*SpeciesSheet{other}
		} else if !strings.Contains(slug(m.V), "-") {
			a.Sheets = l.each(l.InGenus(m.V))
		}
		all = append(all, a)
	}
	return all
}
