package assist

import (
	"regexp"
	"slices"

	"vivary/compile/explain"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
)

// quantities offers units behind a number, and where none is typed what the species' sheet has
// for it, and what stands elsewhere.
func (p *Page) quantities(v *valued) {
	if v.units() {
		return
	}
	s := p.sheet(v.w)
	for i, name := range v.a.Beside {
		if s == nil {
			break
		}
		f := s.Figure(schema.FindFigure(schema.Figures, name), "")
		if f == nil || f.What.Dimension != v.a.Dimension {
			continue
		}
		value := p.Result.Plan.Units.TellRange(f.Range)
		if v.a.Kind == schema.Quantity {
			value = p.Result.Plan.Units.Tell(f.Range.LowQ())
		}
		v.text(offer{Offer: Offer{Label: value, Detail: f.What.Name + " of " + s.Shown(), Doc: p.figure(f), Kind: KindValue}, usual: required - i})
	}
	p.asElsewhere(v)
	v.given()
}

// figure says what a sheet states of a figure, on whose word, and what others say.
func (p *Page) figure(f *plan.Figure) string {
	return f.What.Doc + "\n\n" + lineOf(explain.Stated(p.Result, f))
}

// numbered finds a number at the end of what is typed, and the unit that is begun behind it.
var numbered = regexp.MustCompile(`^(.*?\d)(\s*)([^\d\s.,]*)$`)

// units offers the units that fit behind a number, those first that a number without one would
// be in, then those in which the collection is told. It reports whether there is a number.
func (v *valued) units() bool {
	m := numbered.FindStringSubmatch(v.typed)
	if m == nil || !v.w.quoted {
		return false
	}
	o := *v.offers
	o.typed = m[3]
	o.from = v.from + len(v.typed) - len(m[3])
	o.all = nil
	own := v.page.Result.Plan.Units
	for _, u := range unitsOf(v.a) {
		usual := 0
		switch n := slices.Index(v.a.In, u.unit); {
		case n >= 0:
			usual = 1000 - n
		case own.Same(u.unit):
			usual = 100
		}
		text := u.name
		if m[2] == "" {
			text = " " + text
		}
		if v.w.open {
			text += `"`
		}
		o.add(offer{Offer: Offer{Label: u.name, Detail: inOthers(m[1]+" "+u.name, v.a, u.unit), Doc: v.a.Doc, Kind: KindUnit}, usual: usual}, text)
	}
	v.all = append(v.all, o.all...)
	v.typed = ""
	return true
}

// unit is a unit as it is written.
type unit struct {
	name string
	unit quantity.Unit
}

// unitsOf are the units that fit an attribute, the commonest first.
func unitsOf(a *schema.Attr) (all []unit) {
	d := a.Dimension
	if a.Kind == schema.Size || a.Kind == schema.Face2D {
		d = quantity.Length
	}
	for _, name := range d.Units() {
		if q, err := quantity.Parse("1 "+name, d); err == nil {
			all = append(all, unit{name, q.Unit})
		}
	}
	return all
}

// inOthers is a value in the units of the other kind of keeper, or "".
func inOthers(value string, a *schema.Attr, u quantity.Unit) string {
	r, err := quantity.ParseRange(value, u.Dimension())
	if err != nil || a.Dimension == 0 {
		return ""
	}
	for _, other := range []quantity.Units{quantity.Metric, quantity.Customary} {
		if !other.Same(r.Unit) {
			return other.TellRange(r)
		}
	}
	return ""
}
