package change

import (
	"bytes"
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/syntax"
)

// match finds which block is which, and what differs. Blocks of one type and name belong
// together, those first that say the same; then those of which one says that it formerly had
// the other's name.
func (c *Changes) match(before, after []stand) {
	taken := make([]bool, len(before))
	by := map[string][]int{}
	for i := range before {
		by[before[i].key()] = append(by[before[i].key()], i)
	}
	other := make([]int, len(after))
	for i := range other {
		other[i] = -1
	}
	take := func(i int, key string, fits func(*stand) bool) {
		if other[i] >= 0 {
			return
		}
		for _, k := range by[key] {
			if !taken[k] && fits(&before[k]) {
				taken[k], other[i] = true, k
				return
			}
		}
	}
	same := func(x *stand) func(*stand) bool {
		says := meaning(x.Block)
		return func(o *stand) bool { return meaning(o.Block) == says }
	}
	anyOf := func(*stand) bool { return true }
	for i := range after {
		take(i, after[i].key(), same(&after[i]))
	}
	for i := range after {
		take(i, after[i].key(), anyOf)
	}
	for i := range after {
		if f := after[i].Attr("formerly"); f != nil {
			take(i, after[i].Type+" "+f.Value.Text, anyOf)
		}
	}
	for i := range after { // a name that was changed again
		if f := after[i].Attr("formerly"); f != nil && other[i] < 0 {
			for k := range before {
				if g := before[k].Attr("formerly"); g != nil && !taken[k] && other[i] < 0 && before[k].Type == after[i].Type && g.Value.Text == f.Value.Text {
					taken[k], other[i] = true, k
				}
			}
		}
	}
	for i := range before { // a name that was given back
		if f := before[i].Attr("formerly"); f != nil && !taken[i] {
			for k := range after {
				if other[k] < 0 && after[k].key() == before[i].Type+" "+f.Value.Text {
					taken[i], other[k] = true, i
				}
			}
		}
	}
	c.took(before, taken)
	for i := range after {
		if x := &after[i]; other[i] < 0 {
			c.Pieces = append(c.Pieces, Piece{Type: x.Type, Name: label(x.Block), Is: x.side(x.Whole), adds: []added{{x.file, "\n" + string(x.text[x.Whole.Start:x.Whole.End]) + "\n"}}})
		} else {
			c.differ(&before[other[i]], x)
		}
	}
}

// took finds the blocks that went.
func (c *Changes) took(before []stand, taken []bool) {
	for i := range before {
		if x := &before[i]; !taken[i] {
			c.Pieces = append(c.Pieces, Piece{Type: x.Type, Name: label(x.Block), Was: x.side(x.Whole), edits: finding.Without(x.text, x.Whole)})
		}
	}
}

// differ finds what differs of one block.
func (c *Changes) differ(a, b *stand) {
	if a.file != b.file {
		c.Moves = append(c.Moves, Move{b.Type, label(b.Block), a.file, b.file})
	}
	if meaning(a.Block) == meaning(b.Block) {
		if a.file == b.file && !bytes.Equal(a.text[a.Whole.Start:a.Whole.End], b.text[b.Whole.Start:b.Whole.End]) && !slices.Contains(c.Laid, b.file) {
			c.Laid = append(c.Laid, b.file)
		}
		return
	}
	p := Piece{Type: b.Type, Name: label(b.Block)}
	if was := label(a.Block); was != p.Name {
		p.Before = was
		renamed := p
		renamed.Attr, renamed.Was, renamed.Is = "name", a.side(a.head()), b.side(b.head())
		renamed.edits = []finding.Edit{{At: a.head(), Text: renamed.Is.Text}}
		if at := b.Attr("formerly"); at != nil {
			renamed.edits = append(renamed.edits, a.attrEdits(a.Block, at, b)...)
		}
		c.Pieces = append(c.Pieces, renamed)
	}
	c.inside(p, a, b, a.Block, b.Block)
}

// head is the type and the name of a block.
func (s *stand) head() source.Place {
	at := s.TypeAt
	if n := len(s.Labels); n > 0 {
		at.End = s.Labels[n-1].At.End
	}
	return at
}

// inside finds what differs between two blocks of one name, x of a and y of b.
func (c *Changes) inside(p Piece, a, b *stand, x, y *syntax.Block) {
	if !bytes.ContainsRune(a.text[x.Whole.Start:x.Whole.End], '\n') { // it stands on one line
		p.Was, p.Is = a.side(x.Whole), b.side(y.Whole)
		p.edits = []finding.Edit{{At: x.Whole, Text: b.raw(y.Whole)}}
		c.Pieces = append(c.Pieces, p)
		return
	}
	c.attrs(p, a, b, x, y)
	taken := make([]bool, len(x.Blocks))
	other := make([]*syntax.Block, len(y.Blocks))
	find := func(i int, fits func(o *syntax.Block) bool) {
		for k, o := range x.Blocks {
			if other[i] == nil && !taken[k] && o.Type == y.Blocks[i].Type && fits(o) {
				taken[k], other[i] = true, o
			}
		}
	}
	for i, in := range y.Blocks {
		find(i, func(o *syntax.Block) bool { return meaning(o) == meaning(in) })
	}
	for i, in := range y.Blocks {
		find(i, func(o *syntax.Block) bool { return label(o) == label(in) })
	}
	for i, in := range y.Blocks {
		if f := in.Attr("formerly"); f != nil {
			find(i, func(o *syntax.Block) bool { return label(o) == f.Value.Text })
			find(i, func(o *syntax.Block) bool {
				g := o.Attr("formerly")
				return g != nil && g.Value.Text == f.Value.Text
			})
		}
	}
	for k, o := range x.Blocks {
		if !taken[k] {
			q := p.within(o)
			q.Was, q.edits = a.side(o.Whole), finding.Without(a.text, o.Whole)
			c.Pieces = append(c.Pieces, q)
		}
	}
	for i, in := range y.Blocks {
		q := p.within(in)
		switch o := other[i]; {
		case o == nil:
			q.Is = b.side(in.Whole)
			q.edits = a.insert(x, b.raw(in.Whole))
			c.Pieces = append(c.Pieces, q)
		case meaning(o) == meaning(in):
		case label(o) != label(in):
			q.Was, q.Is = a.side(o.Whole), b.side(in.Whole)
			q.edits = []finding.Edit{{At: o.Whole, Text: b.raw(in.Whole)}}
			c.Pieces = append(c.Pieces, q)
		default:
			c.inside(q, a, b, o, in)
		}
	}
}

func (p Piece) within(b *syntax.Block) Piece {
	name := b.Type
	if l := label(b); l != "" {
		name += " " + l
	}
	p.In = append(slices.Clip(p.In), name)
	return p
}

// attrs finds the attributes that differ. What is written twice is one mistake, and the whole
// of it the piece.
func (c *Changes) attrs(p Piece, a, b *stand, x, y *syntax.Block) {
	seen := map[string]bool{}
	for i := range y.Attrs {
		at := &y.Attrs[i]
		if seen[at.Name] || p.Before != "" && len(p.In) == 0 && at.Name == "formerly" {
			continue
		}
		seen[at.Name] = true
		q := p
		q.Attr = at.Name
		q.Is = b.side(at.At)
		switch old := x.Attr(at.Name); {
		case old == nil:
		case value(&old.Value) == value(&at.Value):
			continue
		default:
			q.Was = a.side(old.At)
		}
		q.edits = a.attrEdits(x, at, b)
		c.Pieces = append(c.Pieces, q)
	}
	for i := range x.Attrs {
		if at := &x.Attrs[i]; !seen[at.Name] && !(p.Before != "" && len(p.In) == 0 && at.Name == "formerly") {
			seen[at.Name] = true
			q := p
			q.Attr, q.Was, q.edits = at.Name, a.side(at.At), finding.Without(a.text, at.At)
			c.Pieces = append(c.Pieces, q)
		}
	}
}

// attrEdits are the edits that write an attribute of b into a block of a.
func (s *stand) attrEdits(x *syntax.Block, at *syntax.Attr, b *stand) []finding.Edit {
	text := string(b.text[at.At.Start:at.At.End])
	if old := x.Attr(at.Name); old != nil {
		return []finding.Edit{{At: old.At, Text: text}}
	}
	return s.insert(x, text)
}

// insert puts lines before the end of a block that stands on several.
func (s *stand) insert(x *syntax.Block, text string) []finding.Edit {
	at := x.Whole
	at.Start = at.End - 1
	line := bytes.LastIndexByte(s.text[:at.Start], '\n') + 1
	if strings.TrimSpace(string(s.text[line:at.Start])) == "" {
		at.Start = int32(line)
	} else {
		text = "\n" + text
	}
	at.End = at.Start
	return []finding.Edit{{At: at, Text: text + "\n"}}
}
