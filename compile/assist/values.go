package assist

import (
	"slices"
	"strings"

	"vivary/schema"
)

// values offers what may stand in a value.
func (p *Page) values(o *offers, w *where) {
	a := p.attrOf(w)
	if a == nil {
		return
	}
	v := &valued{o, w, a}
	switch a.Kind {
	case schema.Word:
		v.choices()
	case schema.Words:
		v.part(",")
		v.choices()
	case schema.Truth:
		v.bare("true", "yes")
		v.bare("false", "no")
	case schema.Quantity, schema.Range:
		p.quantities(v)
	case schema.Numbers, schema.Size, schema.Face2D, schema.Count, schema.Spans, schema.Number, schema.Whole, schema.Wholes:
		p.asElsewhere(v)
		v.units()
		v.given()
	case schema.Date:
		p.dates(v)
	case schema.On:
		v.part(",")
		p.days(v)
	case schema.DayOfYear, schema.Every, schema.Clock, schema.Clocks, schema.Cron:
		p.asElsewhere(v)
		p.times(v)
	case schema.Zone:
		v.zones()
	case schema.Prey, schema.Menu:
		p.prey(v)
	case schema.Text, schema.Texts, schema.Ref, schema.Refs:
		v.names(p)
	case schema.Link:
		v.given()
	}
}

// attrOf describes the attribute in whose value the cursor stands. The value of a figure is as
// the figure is.
func (p *Page) attrOf(w *where) *schema.Attr {
	if w.in == nil || w.in.is == nil {
		return nil
	}
	b := w.in.is
	if (b == schema.FigureBlock || b == schema.FeederFact) && (w.name == "value" || w.name == "wrong") {
		list := schema.Figures
		if b == schema.FeederFact {
			list = schema.FeederFigures
		}
		if f := schema.FindFigure(list, w.in.label); f != nil {
			a := valueOf(f)
			return &a
		}
	}
	return attribute(b, w.name)
}

// attribute describes an attribute of a body, nil for one that may not stand there.
func attribute(b *schema.Block, name string) *schema.Attr {
	if a := b.Attr(name); a != nil {
		return a
	}
	if c := b.Flattened(name); c != nil {
		return c.Attr(name)
	}
	if f := b.Shortened(name); f != nil {
		a := valueOf(f)
		a.Name = name
		return &a
	}
	return nil
}

// valued offers values of one attribute.
type valued struct {
	*offers
	w *where
	a *schema.Attr
}

// part leaves of what is typed only the part in which the cursor is, where a text holds several.
func (v *valued) part(signs string) {
	o, w := v.offers, v.w
	before := o.typed
	if n := strings.LastIndexAny(before, signs); n >= 0 {
		before = strings.TrimLeft(before[n+1:], " ")
	}
	at := o.from + len(o.typed)
	end := at
	if w.quoted && !w.open {
		for end < o.to && strings.IndexByte(signs, o.page.Text[end]) < 0 {
			end++
		}
	}
	for _, other := range strings.FieldsFunc(w.whole, func(r rune) bool { return strings.ContainsRune(signs, r) }) {
		if other = strings.TrimSpace(other); other != strings.TrimSpace(before) {
			w.others = append(w.others, other)
		}
	}
	o.from, o.to, o.typed = at-len(before), end, before
}

// text offers a value that stands in quotes.
func (v *valued) text(x offer) {
	if v.a.Kind != schema.Menu && slices.Contains(v.w.others, x.Label) {
		return
	}
	text := x.Label
	switch {
	case v.w.quoted && v.w.open:
		text += `"`
	case !v.w.quoted:
		text = `"` + text + `"`
		if listed(v.a) && !v.w.inList {
			text = "[" + text + "]"
		}
	}
	v.add(x, text)
}

// bare offers a value that stands without quotes.
func (v *valued) bare(value string, also ...string) {
	if v.w.quoted {
		return
	}
	v.add(offer{Offer: Offer{Label: value, Doc: v.a.Doc, Kind: KindChoice}, also: also}, value)
}

func (v *valued) choices() {
	for _, c := range v.a.Choices {
		v.text(offer{Offer: Offer{Label: c.Name, Detail: c.Doc, Doc: alsoCalled(c.Also), Kind: KindChoice}, also: c.Also})
	}
}

func alsoCalled(also []string) string {
	if len(also) == 0 {
		return ""
	}
	return "Also understood: " + strings.Join(also, ", ")
}

// given offers the example of the schema.
func (v *valued) given() {
	text := v.a.Example
	if text == "" {
		text = exampleOf(v.a)
	}
	text = strings.Trim(text, `[]`)
	if bare := strings.Trim(text, `"`); bare != text && bare != "" {
		v.text(offer{Offer: Offer{Label: bare, Detail: "an example", Doc: v.a.Doc, Kind: KindValue}, usual: -1})
	} else if bare != "" {
		v.bare(bare)
	}
}

// names offers what a text may name.
func (v *valued) names(p *Page) {
	for _, c := range v.a.Choices {
		v.text(offer{Offer: Offer{Label: c.Name, Detail: c.Doc, Kind: KindChoice}, also: c.Also})
	}
	for _, n := range p.known(v.w, v.a.Ref) {
		if v.a.Ref != "" && v.w.in.is.Names == v.a.Ref && v.w.in.label == n.name {
			continue // nobody stands in for themselves
		}
		v.text(offer{Offer: Offer{Label: n.name, Detail: n.detail, Doc: n.doc, Kind: n.kind}, also: n.also, usual: n.usual})
	}
	if v.a.Ref == "" {
		p.asElsewhere(v)
	}
}

// asElsewhere offers what stands in the same attribute of other blocks of the page, the most
// usual first: of enclosures that are alike much is the same.
func (p *Page) asElsewhere(v *valued) {
	n := map[string]int{}
	var order []string
	var look func(*block)
	look = func(b *block) {
		if b.is == v.w.in.is {
			for i := range b.attrs {
				a := &b.attrs[i]
				if a.name != v.w.name || a.at.from == v.w.key.from {
					continue
				}
				for _, x := range a.values {
					if x.kind != text {
						continue
					}
					if s := x.of(v.w.tree.src); s != "" && !strings.Contains(s, `\`) {
						if n[s] == 0 {
							order = append(order, s)
						}
						n[s]++
					}
				}
			}
		}
		for _, c := range b.blocks {
			look(c)
		}
	}
	look(v.w.tree.root)
	slices.SortStableFunc(order, func(a, b string) int { return n[b] - n[a] })
	for _, s := range order[:min(len(order), mostElsewhere)] {
		v.text(offer{Offer: Offer{Label: s, Detail: "as elsewhere on this page", Kind: KindValue}, usual: n[s]})
	}
}

// mostElsewhere bounds what is offered because it stands elsewhere.
const mostElsewhere = 12
