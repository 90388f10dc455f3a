package syntax

import (
	"bytes"
	"strings"

	"vivary/plan/finding"
)

// labelled reads a block from its name on, or finds what else the line was meant for.
func (p *parser) labelled(in *Block, name token) {
	start := p.mark()
	labels, n := p.labels()
	switch {
	case p.tok.kind == open:
		p.block(in, name, labels)
	case p.assigns() && n > 0:
		p.equalsBehind(in, name, labels, n)
	case p.ended() && p.braceBelow():
		p.block(in, name, labels)
	default:
		p.unmarked(in, name, labels, n, start)
	}
}

// labels reads the names behind the word of a block: the first few, and how many.
func (p *parser) labels() (labels []Label, n int) {
	var bare token
	for ; p.tok.kind == word || p.tok.kind == text || p.tok.kind == number; n++ {
		t := p.tok
		switch {
		case t.unclosed:
			t = p.labelQuote(labels)
		case t.odd:
			p.oddQuotes(t)
			p.advance()
		default:
			p.advance()
		}
		if t.kind == number && p.tok.kind == word && p.tok.from == t.to {
			t.to = p.tok.to
			p.advance()
		}
		if t.kind == number {
			bare = t
		}
		if len(labels) < 3 {
			labels = append(labels, Label{p.unquoted(t), p.place(t.from, t.to)})
		}
	}
	if bare.kind == number && p.tok.kind == open {
		p.flaw(BareLabel, bare.from, bare.to, p.edit(bare.from, bare.from, `"`), p.edit(bare.to, bare.to, `"`))
	}
	return labels, n
}

// labelQuote finds the quote that the name of a block lacks, and returns the name.
func (p *parser) labelQuote(labels []Label) token {
	t := p.tok
	t.to = p.cut(t, "{")
	if len(bytes.TrimSpace(p.s.src[t.from+1:t.to])) == 0 && len(labels) > 0 {
		from := int(labels[len(labels)-1].At.Start) - p.base
		p.flaw(Unopened, from, t.to, p.edit(from, from, `"`))
		t.to = t.from + 1
	} else {
		p.flaw(Unclosed, t.from, t.to, p.edit(t.to, t.to, `"`))
	}
	p.goOn(t)
	return t
}

// cut returns where a text without its second quote most likely ends: before a comment, and
// before what closes what is open.
func (p *parser) cut(t token, closing string) int {
	line := p.s.src[t.from:t.to]
	for _, c := range []string{" #", "\t#", " //"} {
		if i := bytes.Index(line, []byte(c)); i > 0 {
			line = line[:i]
		}
	}
	line = bytes.TrimRight(line, " \t\r"+closing)
	return t.from + max(1, len(line))
}

// equalsBehind is a name of two words before a =, or a block with one before its brace.
func (p *parser) equalsBehind(in *Block, name token, labels []Label, n int) {
	before := p.prev.to
	m := p.mark()
	p.assign()
	if p.tok.kind == open {
		p.flaw(BlockEqual, before, p.tok.from, p.edit(before, p.tok.from, " "))
		p.block(in, name, labels)
		return
	}
	p.back(m)
	if n > 2 || p.prev.kind != word {
		p.pass(NotAnItem)
		return
	}
	whole := token{kind: word, from: name.from, to: before}
	joined := strings.Join(strings.Fields(string(p.s.src[whole.from:whole.to])), "_")
	if p.words.Attrs[joined] {
		p.flaw(TwoWords, whole.from, whole.to, p.edit(whole.from, whole.to, joined))
	} else {
		p.flaw(TwoWords, whole.from, whole.to)
	}
	p.attrNamed(in, whole, joined)
}

// braceBelow finds a { on the line below its block, and passes over what stands between.
func (p *parser) braceBelow() bool {
	from, m := p.prev.to, p.mark()
	p.skipLines()
	if p.tok.kind != open {
		p.back(m)
		return false
	}
	var edits []finding.Edit
	if len(bytes.TrimSpace(p.s.src[from:p.tok.from])) == 0 {
		edits = append(edits, p.edit(from, p.tok.from, " "))
	}
	p.flaw(BraceBelow, p.tok.from, p.tok.to, edits...)
	return true
}

// unmarked is a line with neither = nor {. start is behind its first word.
func (p *parser) unmarked(in *Block, name token, labels []Label, n int, start mark) {
	typed := p.s.src[name.from:name.to]
	inBlock := len(p.heads) > 0
	blocks := p.words.Outer
	if inBlock {
		blocks = p.words.Inner
	}
	switch {
	case n > 0 && inBlock && p.words.Attrs[string(typed)]:
		p.noEquals(in, name, start)
	case n <= 1 && blocks[string(typed)] && p.ended():
		p.junked = true
		p.flaw(NoBrace, name.from, p.prev.to, p.edit(p.prev.to, p.prev.to, " {"))
		p.block(in, name, labels)
	case n >= 2 && !blocks[string(typed)] && !p.words.Attrs[string(typed)]:
		p.back(start)
		p.passFrom(name, Prose, p.edit(name.from, name.from, "# "))
	default:
		p.passFrom(name, NotAnItem)
	}
}

// noEquals reads an attribute that lacks its =.
func (p *parser) noEquals(in *Block, name token, start mark) {
	p.back(start)
	first := p.tok.from
	known := p.broken
	v, ok := p.value()
	if !ok {
		return
	}
	p.junk = false
	from, to := int(v.At.Start)-p.base, int(v.At.End)-p.base
	edits := []finding.Edit{p.edit(first, first, "= ")}
	if v.Kind == Bare {
		edits = []finding.Edit{p.edit(from, to, `= "`+v.Text+`"`)}
		if !Plain(v.Text) {
			edits = nil
		}
	}
	if p.broken && !known {
		edits = nil // the value has a mistake of its own
	}
	p.flaw(NoEquals, name.from, to, edits...)
	in.Attrs = append(in.Attrs, Attr{Name: p.nameOf(name), NameAt: p.place(name.from, name.to), At: p.place(name.from, to), Value: v})
}

// Plain reports whether words that stand without quotes can be put into quotes as they are.
func Plain(s string) bool {
	return s != "" && !strings.ContainsAny(s, "\"\\{}[]()=$*+?<>!&|;") && !strings.Contains(s, "//")
}
