package assist

import (
	"slices"
	"strings"

	"vivary/schema"
)

// labels offers what a block may be called, where that is a word of the language or names
// something. What the keeper names himself is his to say.
func (p *Page) labels(o *offers, w *where) {
	if w.in == nil || w.in.is == nil {
		return
	}
	b := w.in.is.Block(w.name)
	if b == nil || b.Label == "" {
		return
	}
	for _, n := range p.labelsOf(w, b) {
		if b.Once && p.labelStands(w, b, n.name) {
			continue
		}
		x := offer{Offer: Offer{Label: n.name, Detail: n.detail, Doc: n.doc, Kind: n.kind}, also: n.also, usual: n.usual}
		switch {
		case !w.quoted:
			rest := strings.TrimLeft(string(p.Text[w.to:lineEnd(p.Text, w.to)]), " \t")
			text := `"` + n.name + `"`
			if !strings.HasPrefix(rest, "{") {
				text += " "
			}
			o.add(x, text)
		case w.open:
			o.add(x, n.name+`"`)
		default:
			o.add(x, n.name)
		}
	}
}

// labelStands reports whether a block of that type and name stands in the body already.
func (p *Page) labelStands(w *where, b *schema.Block, label string) bool {
	for _, x := range w.in.blocks {
		if x.is == b && x.label == label && x.at.from != w.key.from {
			return true
		}
	}
	return false
}

// labelsOf are the labels that a block may have, none where any name will do.
func (p *Page) labelsOf(w *where, b *schema.Block) []name {
	if b.Names != "" {
		return p.known(w, b.Names)
	}
	if kind := b.Attr("kind"); kind != nil && kind.Default == "the name" {
		if kind.Ref != "" {
			return p.known(w, kind.Ref)
		}
		return ofChoices(kind.Choices)
	}
	switch b.Label {
	case "face":
		return ofChoices(schema.Faces)
	case "stage":
		return ofChoices(schema.Stages)
	case "figure":
		return p.figures(w)
	case "need":
		return needs()
	case "state":
		return states()
	case "enclosure":
		return p.known(w, b.Label)
	}
	if b == schema.Species || b == schema.Type || b == schema.Feeder {
		return p.known(w, b.Name) // a sheet is laid over the one of its name
	}
	return nil
}

func ofChoices(all []schema.Choice) (out []name) {
	for _, c := range all {
		out = append(out, name{name: c.Name, detail: c.Doc, also: c.Also, kind: KindChoice})
	}
	return out
}

// figures are those that a sheet may state, with what the library states of this one.
func (p *Page) figures(w *where) (out []name) {
	list := schema.Figures
	if w.in.is == schema.Feeder {
		list = schema.FeederFigures
	}
	for _, f := range list {
		out = append(out, name{name: f.Name, detail: p.stated(w, f), doc: f.Doc, kind: KindKnown})
	}
	return out
}

// stated is what the library states of a figure for the species or the feeder around, or "".
func (p *Page) stated(w *where, f *schema.Figure) string {
	if w.in.is == schema.Feeder {
		if s := p.Result.Plan.Library.Feeder(w.in.label); s != nil && s.Figure(f) != nil {
			return s.Figure(f).Told(p.Result.Plan.Units)
		}
		return ""
	}
	if s := p.sheet(w); s != nil && s.Figure(f, "") != nil {
		return s.Figure(f, "").Told(p.Result.Plan.Units)
	}
	return ""
}

func needs() (out []name) {
	for _, n := range schema.Needs {
		out = append(out, name{name: n.Name, detail: n.Noun, doc: n.Doc, kind: KindKnown})
	}
	return out
}

func states() (out []name) {
	for _, s := range schema.States {
		out = append(out, name{name: s.Name, detail: s.Is, doc: s.Doc, kind: KindKnown})
	}
	return out
}

// labelFor is what stands in a new block for its name, until it is typed over.
func (p *Page) labelFor(w *where, b *schema.Block, example *block) string {
	if b.Names != "" || b == schema.Gone {
		for _, n := range p.labelsOf(w, b) {
			if !p.labelStands(w, b, n.name) {
				return n.name
			}
		}
	}
	for _, x := range example.blocks {
		if x.typ == b.Name && x.label != "" && !p.taken(w, b, x.label) {
			return x.label
		}
	}
	return b.Label
}

// taken reports whether the collection has a block of that type and name.
func (p *Page) taken(w *where, b *schema.Block, label string) bool {
	return w.in.is == schema.Plan && slices.ContainsFunc(p.known(w, b.Name), func(n name) bool { return n.name == label })
}
