package tidy

import (
	"bytes"
	"slices"

	"vivary/plan/syntax"
	"vivary/schema"
)

// thing is an attribute or a block with the comments on it.
type thing struct {
	attr  *syntax.Attr
	block *syntax.Block
	lead  []run // above it
	trail run   // behind it, on its last line
	tail  []run // right beneath it, with a blank line behind: of a block
	blank bool  // a blank line stands above it
	place int   // among others
	inner *body // of a block
}

func (x *thing) name() string {
	if x.attr != nil {
		return x.attr.Name
	}
	return x.block.Type
}

func (x *thing) span() (from, to int) {
	if x.attr != nil {
		return int(x.attr.At.Start), int(x.attr.At.End)
	}
	return int(x.block.Whole.Start), int(x.block.Whole.End)
}

// body is what stands in a block between its braces.
type body struct {
	of       *schema.Block // nil where the schema has no such block
	from     int           // the { of the block
	oneLine  bool
	trail    run // behind the {
	sections []section
	end      []run // right beneath the last thing
}

// section is what stands between two comments that stand by themselves.
type section struct {
	free   []run // the comment before it; none of the first
	groups []group
	blocks []*thing
}

// group is attributes with no blank line between them, and what stands right beneath them.
type group struct {
	attrs []*thing
	tail  []run
}

// children are the attributes and blocks of a block in the order of their lines.
func children(b *syntax.Block) []*thing {
	all := make([]*thing, 0, len(b.Attrs)+len(b.Blocks))
	for i, k := 0, 0; i < len(b.Attrs) || k < len(b.Blocks); {
		if k == len(b.Blocks) || i < len(b.Attrs) && b.Attrs[i].At.Start < b.Blocks[k].Whole.Start {
			all = append(all, &thing{attr: &b.Attrs[i]})
			i++
		} else {
			all = append(all, &thing{block: b.Blocks[k]})
			k++
		}
	}
	return all
}

// body reads what stands in a block; nil where something stands there that is not understood.
func (p *page) body(b *syntax.Block, of *schema.Block) *body {
	out := &body{of: of, from: p.brace(b), sections: make([]section, 1)}
	if out.from < 0 {
		return nil
	}
	all := children(b)
	at, plain := out.from+1, true // no end of a line, and no comment
	for i := range len(all) + 1 {
		from, to := int(b.Whole.End)-1, 0
		if i < len(all) {
			from, to = all[i].span()
		}
		g, ok := p.gapIn(at, from, true, "")
		if !ok {
			return nil
		}
		plain = plain && g.lines == 0 && g.trail.to == 0
		out.take(all, i, &g)
		if i == len(all) {
			break
		}
		if x := all[i]; x.block != nil {
			if x.inner = p.body(x.block, inner(of, x.block.Type)); x.inner == nil {
				return nil
			}
		}
		at = to
	}
	out.oneLine = plain && len(b.Blocks) == 0 && bytes.IndexByte(p.src[out.from:b.Whole.End], '\n') < 0
	out.order()
	return out
}

func inner(of *schema.Block, name string) *schema.Block {
	if of == nil {
		return nil
	}
	return of.Block(name)
}

// brace returns where the { of a block is, or -1.
func (p *page) brace(b *syntax.Block) int {
	at := p.headEnd(b)
	for at < int(b.Whole.End) && p.src[at] != '{' {
		switch c := p.src[at]; c {
		case '#', '/':
			if at = p.comment(at, int(b.Whole.End)); at < 0 {
				return -1
			}
		case ' ', '\t', '\r', '\n':
			at++
		default:
			return -1
		}
	}
	return at
}

// headEnd is where the name of a block ends.
func (p *page) headEnd(b *syntax.Block) int {
	if n := len(b.Labels); n > 0 {
		return int(b.Labels[n-1].At.End)
	}
	return int(b.TypeAt.End)
}

// take takes what stands before the i-th of all things, or behind the last, and that thing.
func (o *body) take(all []*thing, i int, g *gap) {
	last := i == len(all)
	c := g.part(i == 0, last)
	if i == 0 {
		o.trail = g.trail
	} else {
		o.behind(all[i-1], g.trail, c.tail, last)
	}
	for _, free := range c.free {
		o.sections = append(o.sections, section{free: free})
	}
	if last {
		return
	}
	x, s := all[i], &o.sections[len(o.sections)-1]
	x.lead, x.blank = c.lead, g.blank || len(c.lead) > 0 && c.lead[0].blank
	switch n := len(s.groups); {
	case x.block != nil:
		s.blocks = append(s.blocks, x)
	case n == 0 || len(s.blocks) == 0 && (x.blank || len(s.groups[n-1].tail) > 0):
		s.groups = append(s.groups, group{attrs: []*thing{x}})
	default: // those behind a block go to the others
		s.groups[n-1].attrs = append(s.groups[n-1].attrs, x)
	}
}

// behind takes the comments behind a thing, and those right beneath it.
func (o *body) behind(x *thing, trail run, tail []run, last bool) {
	x.trail = trail
	switch s := &o.sections[len(o.sections)-1]; {
	case last:
		o.end = tail
	case x.block != nil:
		x.tail = tail
	default:
		g := &s.groups[len(s.groups)-1]
		g.tail = append(g.tail, tail...)
	}
}

// order puts everything into the order of the schema.
func (o *body) order() {
	place := placesOf()[o.of] // of none of its own nothing has a place
	for i := range o.sections {
		s := &o.sections[i]
		for k := range s.groups {
			ordered(s.groups[k].attrs, place.attrs)
		}
		ordered(s.blocks, place.blocks)
	}
	o.sections = slices.DeleteFunc(o.sections, func(s section) bool {
		return len(s.free) == 0 && len(s.groups) == 0 && len(s.blocks) == 0
	})
}
