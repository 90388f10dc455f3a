package picture

// rows is all that stands below the charts: stretches of days, and marks by day.
type rows struct {
	sections []section
	meals    []marked
	water    []density
}

// section is one kind of stripes.
type section struct {
	name  string
	lanes []lane
	left  int
}

const sectionGap = 5

// rows gathers the rows, each kind limited so that the page holds them all. What
// is not drawn is counted, and said in the description.
func (p *page) rows() *rows {
	r := &rows{}
	for _, s := range []struct {
		name    string
		stripes []stripe
		most    int
	}{
		{"Season", p.seasons(), 2},
		{"Held", p.holds(), 3},
		{"May happen", p.windows(), 2},
		{"Away", p.absences(), 2},
	} {
		if lanes, left := p.lay(s.stripes, s.most); len(lanes) > 0 {
			r.sections = append(r.sections, section{s.name, lanes, left})
		}
	}
	r.meals = p.meals(4)
	r.water = p.waterings()
	return r
}

// height returns the height of all rows.
func (r *rows) height() float64 {
	h := 0.0
	for _, s := range r.sections {
		h += lanePitch*float64(len(s.lanes)) + sectionGap
	}
	return h + markPitch*float64(len(r.meals)) + sectionGap + barPitch*float64(len(r.water)) + sectionGap
}

func (r *rows) draw(p *page, y float64) {
	for _, s := range r.sections {
		p.lanes(y, s.name, s.lanes, s.left)
		y += lanePitch*float64(len(s.lanes)) + sectionGap
	}
	for i := range r.meals {
		y += markPitch
		r.meals[i].draw(p, y)
	}
	y += sectionGap
	for i := range r.water {
		y += barPitch
		r.water[i].draw(p, y)
	}
}
