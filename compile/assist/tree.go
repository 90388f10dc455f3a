package assist

import (
	"strings"

	"vivary/schema"
)

// block is a block of the page, as far as it can be told.
type block struct {
	typ, label string
	is         *schema.Block // nil where the schema has none of that name there
	in         *block        // nil for the outermost body
	at         token         // its type
	labelled   token         // its label
	attrs      []attr
	blocks     []*block
	opened     int // how many { the line had on which it opened, up to its own
	depth      int
}

// attr is an attribute of the page.
type attr struct {
	name   string
	at     token
	values []token // its texts and words
	list   bool
}

// value is the text of an attribute with one value.
func (a *attr) value(src string) string {
	if len(a.values) == 0 {
		return ""
	}
	return a.values[0].of(src)
}

// attr returns the attribute of that name, or nil.
func (b *block) attr(name string) *attr {
	for i := range b.attrs {
		if b.attrs[i].name == name {
			return &b.attrs[i]
		}
	}
	return nil
}

// statement is what is typed of an attribute or of the first line of a block.
type statement struct {
	tokens []token
	equals int // how many of the tokens stand before the =, -1 for none
	lists  int // [ that are open
	listed bool
}

// none is a statement in which nothing stands yet.
func (t *tree) none() statement {
	n := len(t.tokens)
	return statement{tokens: t.tokens[n:n], equals: -1}
}

// tree reads a page. It looks at each token once, and tells the watcher of each before it is
// taken in.
type tree struct {
	scanner
	root *block
	in   *block // the innermost that is open
	st   statement
	// beyond is how many blocks are open in one that stands too deep.
	beyond int
	// tokens are those of all statements, one behind another.
	tokens []token
	// attributes is room for those of blocks to come.
	attributes []attr
	lines      int // how many { stand on this line
	last       token
}

// newTree reads a whole page. watch may be nil.
func newTree(src string, watch func(*tree, token)) *tree {
	t := &tree{scanner: scanner{src: src}, root: &block{is: schema.Plan}, tokens: make([]token, 0, len(src)/12)}
	t.in = t.root
	t.st = t.none()
	for {
		x := t.next()
		t.recover(x)
		if watch != nil {
			watch(t, x)
		}
		if x.kind == endOfText {
			t.finish()
			return t
		}
		t.take(x)
		t.last = x
	}
}

// take takes a token into the statement that is open, or ends it.
func (t *tree) take(x token) {
	switch {
	case x.kind == aside:
	case x.kind == endOfLine:
		if t.st.lists == 0 {
			t.finish()
		}
		t.closeTorn()
		t.lines = 0
	case x.kind != sign:
		t.tokens = append(t.tokens, x)
		t.st.tokens = t.tokens[len(t.tokens)-len(t.st.tokens)-1:]
	case x.sign == '=':
		if t.st.equals < 0 {
			t.st.equals = len(t.st.tokens)
		}
	case x.sign == '[':
		t.st.lists++
		t.st.listed = true
	case x.sign == ']':
		t.st.lists = max(0, t.st.lists-1)
	case x.sign == '{':
		t.lines++
		t.open()
	case x.sign == '}':
		t.finish()
		if t.beyond > 0 {
			t.beyond--
		} else if t.in.in != nil {
			t.in = t.in.in
		}
	}
}

// finish ends a statement: an attribute, where it has an =.
func (t *tree) finish() {
	if s := &t.st; s.equals > 0 {
		name := s.tokens[s.equals-1]
		if t.in.attrs == nil {
			t.in.attrs = t.some()
		}
		t.in.attrs = append(t.in.attrs, attr{name: name.of(t.src), at: name, values: s.tokens[s.equals:], list: s.listed})
	}
	t.st = t.none()
}

// some is room for the attributes of a block, out of a larger one.
func (t *tree) some() []attr {
	const usual = 6
	if len(t.attributes) < usual {
		t.attributes = make([]attr, 64*usual)
	}
	out := t.attributes[:0:usual]
	t.attributes = t.attributes[usual:]
	return out
}

// open opens a block. Where a block of that type has no place in those that are open and has
// one further out, those between were meant to be shut.
func (t *tree) open() {
	if t.in.depth == maxDeep {
		t.beyond++
		t.st = t.none()
		return
	}
	b := &block{opened: t.lines}
	if len(t.st.tokens) > 0 {
		b.at = t.st.tokens[0]
		b.typ = b.at.of(t.src)
		if len(t.st.tokens) > 1 {
			b.labelled = t.st.tokens[1]
			b.label = b.labelled.of(t.src)
		}
	}
	t.st = t.none()
	for up := t.in; up != nil; up = up.in {
		if up.is != nil && up.is.Block(b.typ) != nil && (up.in != nil || t.flush(b.at)) {
			t.in, b.is = up, up.is.Block(b.typ)
			break
		}
	}
	if b.is == nil && t.in.is != nil {
		b.is = t.in.is.Block(b.typ)
	}
	b.in, b.depth = t.in, t.in.depth+1
	t.in.blocks = append(t.in.blocks, b)
	t.in = b
}

// maxDeep is more than blocks stand in each other: what is deeper is passed over.
const maxDeep = 8

// flush reports whether a token stands at the left edge, as outermost blocks do.
func (t *tree) flush(x token) bool {
	start := lineStart(t.src, x.from)
	return x.from == start || start == 0 && t.src[:x.from] == byteOrderMark
}

// recover ends a list that is not shut, before what cannot belong to it, and all blocks before
// an outermost one at the left edge.
func (t *tree) recover(x token) {
	if t.last.kind != endOfLine && t.last.to != 0 {
		return
	}
	begins := x.kind == word && t.begins(x)
	if t.st.lists > 0 && (begins || x.kind == sign && x.sign == '}') {
		t.finish()
	}
	if begins && t.in.in != nil && t.flush(x) && schema.Plan.Block(x.of(t.src)) != nil && t.heads(x) {
		t.finish()
		t.in, t.beyond = t.root, 0
	}
}

// begins reports whether a word at the beginning of a line begins a statement: an = or a {
// follows, or a label.
func (t *tree) begins(x token) bool {
	rest := strings.TrimLeft(t.src[x.to:lineEnd(t.src, x.to)], " \t")
	return len(rest) > 0 && (rest[0] == '=' || rest[0] == '{' || rest[0] == '"')
}

// heads reports whether a line is the first of a block, and not an attribute.
func (t *tree) heads(x token) bool {
	rest := strings.TrimLeft(t.src[x.to:lineEnd(t.src, x.to)], " \t")
	return len(rest) > 0 && (rest[0] == '{' || rest[0] == '"')
}

// closeTorn shuts a block on one line whose } was swallowed by a text without a second quote.
func (t *tree) closeTorn() {
	if t.lines == 0 || t.last.kind != text || !t.last.open {
		return
	}
	for n := strings.Count(t.src[t.last.from:t.last.to], "}"); n > 0 && t.in.opened > 0 && t.in.in != nil && t.lines > 0; n-- {
		t.in, t.lines = t.in.in, t.lines-1
	}
}
