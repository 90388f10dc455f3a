package assist

import (
	"bytes"
	"slices"
	"strconv"
	"strings"

	"vivary/schema"
)

// snippet is a text with places at which a keeper stops, one after another.
type snippet struct {
	marked, bare strings.Builder
	stops        int
}

func (s *snippet) text(t string) {
	s.marked.WriteString(unstopped.Replace(t))
	s.bare.WriteString(t)
}

// unstopped keeps what is plain from being read as a stop, escaped what stands in one from
// ending it.
var unstopped = strings.NewReplacer(`\`, `\\`, `$`, `\$`)

var escaped = strings.NewReplacer(`\`, `\\`, `$`, `\$`, `}`, `\}`)

// stop is a place at which something stands until it is typed over.
func (s *snippet) stop(what string) {
	s.stops++
	s.marked.WriteString("${" + strconv.Itoa(s.stops) + ":" + escaped.Replace(what) + "}")
	s.bare.WriteString(what)
}

// here is where the cursor is left.
func (s *snippet) here() {
	s.marked.WriteString("$0")
}

func (s *snippet) snippet() string { return s.marked.String() }
func (s *snippet) plain() string   { return s.bare.String() }

// line is the line of an attribute, its = below that of the line above.
func (p *Page) line(w *where, a *schema.Attr) *snippet {
	s := &snippet{}
	s.text(a.Name)
	s.text(strings.Repeat(" ", max(0, p.column(w)-len(a.Name))) + " = ")
	p.example(s, w, a)
	return s
}

// column is how wide the names of attributes are on the line above, 0 where no attribute
// stands there.
func (p *Page) column(w *where) int {
	from := lineStart(p.Text, w.from)
	if from == 0 || len(bytes.TrimLeft(p.Text[from:w.from], " \t")) > 0 { // in a block on one line
		return 0
	}
	end := from - 1
	if end > 0 && p.Text[end] == '\n' && p.Text[end-1] == '\r' {
		end--
	}
	line := p.Text[lineStart(p.Text, end):end]
	name, _, is := bytes.Cut(line, []byte(" ="))
	if name = bytes.TrimLeft(name, " \t"); !is || bytes.ContainsAny(bytes.TrimRight(name, " "), " {\"#") {
		return 0
	}
	return len(name)
}

// example is a value of an attribute that is there to be typed over: a name of the collection
// where names are wanted, today where a day is, else the example of the schema.
func (p *Page) example(s *snippet, w *where, a *schema.Attr) {
	text := a.Example
	if text == "" {
		text = exampleOf(a)
	}
	bare, list := strings.CutPrefix(text, "[")
	if list {
		bare, _, _ = strings.Cut(strings.TrimSuffix(bare, "]"), ", ")
		list = listed(a)
	}
	bare, quoted := strings.CutPrefix(bare, `"`)
	bare = strings.TrimSuffix(bare, `"`)
	if a.Kind == schema.Date {
		bare = p.Result.Today.String()
	}
	if names := p.ours(w, a); len(names) > 0 {
		bare = names[0].name
	}
	open, shut := "", ""
	if quoted {
		open, shut = `"`, `"`
	}
	if list {
		open, shut = "["+open, shut+"]"
	}
	s.text(open)
	s.stop(bare)
	s.text(shut)
}

// ours are the names of the collection that a reference may have: of what the library has
// none is more likely than another.
func (p *Page) ours(w *where, a *schema.Attr) []name {
	if a.Kind != schema.Ref && a.Kind != schema.Refs || a.Ref == schema.Species.Name || a.Ref == schema.Type.Name {
		return nil
	}
	return p.known(w, a.Ref)
}

// exampleOf is an example of the form of an attribute that has none of its own, as figures
// have none.
func exampleOf(a *schema.Attr) string {
	switch {
	case len(a.Choices) > 0:
		return `"` + a.Choices[0].Name + `"`
	case a.Kind == schema.Truth:
		return "true"
	}
	_, like, _ := strings.Cut(a.Form(), "such as ")
	like, _, _ = strings.Cut(like, " or ")
	if !strings.HasPrefix(like, `"`) {
		return `""`
	}
	return like
}

// listed reports whether a value of an attribute is written as a list, also where it is one
// alone: names are not, but where the attribute is several by its name.
func listed(a *schema.Attr) bool {
	if !strings.HasPrefix(a.Example, "[") {
		return false
	}
	return a.Kind != schema.Refs || !strings.Contains(a.Example, ",")
}

// block lays out a block with the lines that it must have, as the house does. Of the blocks
// within it those are laid out that stand in its example and must have something written.
func (p *Page) block(s *snippet, w *where, b *schema.Block, indent string) {
	example := newTree(b.Example, nil).root
	s.text(b.Name)
	if b.Label != "" {
		s.text(` "`)
		s.stop(p.labelFor(w, b, example))
		s.text(`"`)
	}
	s.text(" {\n")
	empty := !p.lines(s, w, b, indent+"  ")
	for _, c := range b.Blocks {
		if !mustSay(c) || !has(example, b, c) {
			continue
		}
		if !empty {
			s.text("\n")
		}
		empty = false
		s.text(indent + "  ")
		p.block(s, w, c, indent+"  ")
		s.text("\n")
	}
	if empty {
		s.text(indent + "  ")
		s.here()
		s.text("\n")
	}
	s.text(indent + "}")
}

// lines lays out the attributes that a block must have, and reports whether there are any.
func (p *Page) lines(s *snippet, w *where, b *schema.Block, indent string) bool {
	wide := 0
	for _, a := range b.Attrs {
		if a.Required {
			wide = max(wide, len(a.Name))
		}
	}
	for i := range b.Attrs {
		if a := &b.Attrs[i]; a.Required {
			s.text(indent + a.Name + strings.Repeat(" ", wide-len(a.Name)) + " = ")
			p.example(s, w, a)
			s.text("\n")
		}
	}
	return wide > 0
}

// mustSay reports whether a block has an attribute that must be written.
func mustSay(b *schema.Block) bool {
	return slices.ContainsFunc(b.Attrs, func(a schema.Attr) bool { return a.Required })
}

// has reports whether the example of a block has one of another type in it.
func has(example *block, b, c *schema.Block) bool {
	for _, x := range example.blocks {
		if x.typ == b.Name && slices.ContainsFunc(x.blocks, func(y *block) bool { return y.typ == c.Name }) {
			return true
		}
	}
	return false
}
