package assist

import (
	"strings"

	"vivary/schema"
)

// names offers the blocks and attributes that may stand in a body and do not stand there yet.
func (p *Page) names(o *offers, w *where) {
	if w.in == nil || w.in.is == nil {
		return
	}
	b := w.in
	rest := strings.TrimLeft(string(p.Text[w.to:lineEnd(p.Text, w.to)]), " \t")
	bare := strings.HasPrefix(rest, "=") || strings.HasPrefix(rest, "\"") || strings.HasPrefix(rest, "{")
	n := counted(w.tree.root, b.typ)
	shown := counted(newTree(b.is.Example, nil).root, b.typ)
	often := func(name string) int { return n[name] + inExample*shown[name] }
	for _, a := range mayStand(b.is) {
		if x := b.attr(a.Name); x != nil && x.at.from != w.from || inBlock(b, a) {
			continue
		}
		usual := often(a.Name)
		if a.Required {
			usual = required
		}
		x := offer{Offer: Offer{Label: a.Name, Detail: written(&a.Attr), Doc: docOf(&a.Attr), Kind: KindAttribute}, usual: usual}
		text := a.Name
		if !bare {
			s := p.line(w, &a.Attr)
			x.Snippet, x.Plain, text = true, s.plain(), s.snippet()
		}
		o.add(x, text)
	}
	for _, c := range b.is.Blocks {
		if c.Once && c.Label == "" && stands(b, c, w.from) {
			continue
		}
		x := offer{Offer: Offer{Label: c.Name, Detail: headOf(c), Doc: c.Doc, Kind: KindBlock}, usual: often(c.Name)}
		text := c.Name
		if !bare {
			s := &snippet{}
			p.block(s, w, c, "")
			x.Snippet, x.Plain, text = true, s.plain(), s.snippet()
		}
		o.add(x, text)
	}
}

// How usual something is that a block must have, and what stands in its example: that is what
// a block of its type mostly has.
const (
	required  = 1 << 20
	inExample = 1 << 10
)

// named is an attribute that may stand in a body, and the inner block whose it is where it
// stands there without it.
type named struct {
	schema.Attr
	of *schema.Block
}

// mayStand are the attributes that may stand in a body: its own, those of inner blocks that
// may be written without them, and figures that may be written as attributes.
func mayStand(b *schema.Block) (all []named) {
	for _, a := range b.Attrs {
		all = append(all, named{a, nil})
	}
	for _, c := range b.Flat {
		for _, a := range c.Attrs {
			if b.Flattened(a.Name) == c {
				a.Required = false
				all = append(all, named{a, c})
			}
		}
	}
	if b.Short == nil {
		return all
	}
	for _, f := range b.Short() {
		if name := strings.ReplaceAll(f.Name, "-", "_"); b.Attr(name) == nil {
			a := valueOf(f)
			a.Name = name
			all = append(all, named{a, nil})
		}
	}
	return all
}

// valueOf is the value of a figure, as an attribute.
func valueOf(f *schema.Figure) schema.Attr {
	return schema.Attr{Name: "value", Kind: f.Kind, Dimension: f.Dimension, Choices: f.Choices, Doc: f.Doc}
}

// inBlock reports whether an attribute that may be written without its block stands in one, as
// all of that block then does, or the figure that it stands for does.
func inBlock(b *block, a named) bool {
	f := b.is.Shortened(a.Name)
	for _, c := range b.blocks {
		if a.of != nil && c.is == a.of && a.of.Label == "" {
			return true
		}
		if f != nil && b.is.Attr(a.Name) == nil && c.typ == schema.FigureBlock.Name && c.label == f.Name {
			return true
		}
	}
	return false
}

// stands reports whether a block of that type stands in a body, or an attribute of it that is
// written without it, elsewhere than at a place.
func stands(b *block, c *schema.Block, from int) bool {
	for _, x := range b.blocks {
		if x.is == c && x.at.from != from {
			return true
		}
	}
	for i := range b.attrs {
		if b.is.Flattened(b.attrs[i].name) == c {
			return true
		}
	}
	return false
}

// counted says how often attributes and blocks stand in the blocks of a type on the page:
// whoever writes a block mostly writes it as the others.
func counted(b *block, typ string) map[string]int {
	n := map[string]int{}
	var count func(*block)
	count = func(b *block) {
		if b.typ == typ {
			for i := range b.attrs {
				n[b.attrs[i].name]++
			}
			for _, c := range b.blocks {
				n[c.typ]++
			}
		}
		for _, c := range b.blocks {
			count(c)
		}
	}
	count(b)
	return n
}

// headOf is the first line of a block.
func headOf(c *schema.Block) string {
	if c.Label == "" {
		return c.Name + " { … }"
	}
	return c.Name + " \"" + c.Label + "\" { … }"
}

// written says in a few words how an attribute is written.
func written(a *schema.Attr) string {
	if a.Required {
		return a.Sort() + ", must be written"
	}
	return a.Sort()
}

// docOf is what an attribute means, how it is written, what holds where it is not, and an
// example.
func docOf(a *schema.Attr) string {
	text := a.Doc + "\n\nWritten as " + a.Form() + "."
	if a.Default != "" {
		text += " Without it: " + a.Default + "."
	}
	if a.Example != "" {
		text += "\n\n`" + a.Name + " = " + a.Example + "`"
	}
	return text
}
