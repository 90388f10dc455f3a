package syntax

import (
	"bytes"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
)

// Read reads a file and calls each with every outermost block that can be read, in the
// order of their lines, until it returns false. The text begins at byte base of the file.
// A block belongs to whom it was given to.
func Read(id source.ID, src []byte, base int, words *Words, each func(*Block) bool) File {
	p := &parser{file: id, base: base, words: words, strange: -1}
	p.s = scanner{src: src, fresh: true, outer: words.Outer, told: p.told}
	if base == 0 && bytes.HasPrefix(src, []byte("\ufeff")) {
		p.s.pos, p.s.line = 3, 3
	}
	p.advance()
	for p.tok.kind != end {
		if b := p.outermost(); b != nil && !each(b) {
			break
		}
	}
	p.out.Mistakes = p.m.all()
	return p.out
}

type parser struct {
	s     scanner
	tok   token
	prev  token // the one before, which ends no line
	file  source.ID
	base  int
	words *Words
	out   File
	m     mistakes
	// heard is how far what the scanner passes over has been told.
	heard int

	// Of the outermost block that is being read:
	broken bool   // something is wrong with it
	junked bool   // a line of it was passed over, so that its braces tell nothing
	lost   bool   // the next outermost block has begun
	nodes  int    // how many there are
	heads  []head // of the blocks that are open
	unshut *head  // the block that seems to have no }
	shutAt token  // the last }

	junk     bool // the last line was passed over
	balanced int  // up to here the braces between blocks are even
	paired   int  // up to here the quotes of the line come in pairs
	begun    int  // where the outermost block begins
	strange  int  // the first place from there on at which the scanner passed over something wrong
}

// head is the beginning of a block that is open.
type head struct {
	word    token
	to      int    // to its brace
	indent  string // of its line
	oneLine bool   // something stands behind its brace
}

func (p *parser) advance() {
	if p.tok.kind != newline {
		p.prev = p.tok
	}
	p.tok = p.s.next()
}

// goOn goes on behind a token of the current line.
func (p *parser) goOn(behind token) {
	p.s.pos, p.s.fresh = behind.to, false
	p.prev, p.tok = behind, p.s.next()
}

// mark is a place to come back to.
type mark struct {
	s         scanner
	tok, prev token
}

func (p *parser) mark() mark     { return mark{p.s, p.tok, p.prev} }
func (p *parser) back(m mark)    { p.s, p.tok, p.prev = m.s, m.tok, m.prev }
func (p *parser) peek() token    { s := p.s; return s.next() }
func (p *parser) is(c byte) bool { return p.tok.kind == other && p.s.src[p.tok.from] == c }
func (p *parser) ended() bool    { return p.tok.kind == newline || p.tok.kind == end }
func (p *parser) isWord(t token, set map[string]bool) bool {
	return t.kind == word && set[string(p.s.src[t.from:t.to])]
}

func (p *parser) place(from, to int) source.Place {
	return source.Place{File: p.file, Start: int32(p.base + from), End: int32(p.base + to)}
}

func (p *parser) edit(from, to int, text string) finding.Edit {
	return finding.Edit{At: p.place(from, to), Text: text}
}

// flaw notes a mistake. What is wrong with a block silences all of it.
func (p *parser) flaw(f Flaw, from, to int, edits ...finding.Edit) {
	p.broken = true
	p.m.add(Mistake{Flaw: f, At: p.place(from, to), Edits: edits, Word: short(p.s.src[from:to])})
}

// short is the beginning of a text, on one line.
func short(b []byte) string {
	line, _, _ := strings.Cut(strings.TrimSpace(string(b[:min(len(b), 200)])), "\n")
	if r := []rune(line); len(r) > 40 {
		line = string(r[:40]) + "…"
	}
	return strings.ToValidUTF8(line, "")
}

// told notes what the scanner passed over, once.
func (p *parser) told(f Flaw, from, to int) {
	if from < p.heard {
		return
	}
	p.heard = from + 1
	if p.strange < p.begun {
		p.strange = from
	}
	x := Mistake{Flaw: f, At: p.place(from, to)}
	if f == Blank {
		x.Edits = []finding.Edit{p.edit(from, to, " ")}
	}
	p.junked = p.junked || f == OpenComment
	p.m.add(x)
}

// maxIndent bounds how far a line is looked at.
const maxIndent = 100

// indent is the blanks with which the line of a token begins.
func (p *parser) indent(t token) string {
	i := t.line
	for i < t.from && i-t.line < maxIndent && (p.s.src[i] == ' ' || p.s.src[i] == '\t') {
		i++
	}
	return string(p.s.src[t.line:i])
}

// deeper reports whether the line of a token is further in than that of another.
func (p *parser) deeper(t, than token) bool { return len(p.indent(t)) > len(p.indent(than)) }

// outermost reads what stands in no block, and returns it where it is a block that could be
// read.
func (p *parser) outermost() *Block {
	p.broken, p.junked, p.lost, p.nodes, p.heads, p.unshut = false, false, false, 0, p.heads[:0], nil
	if p.tok.kind == newline {
		p.advance()
		return nil
	}
	begin := p.tok
	p.begun = begin.from
	junkBefore := p.junk
	root := &Block{}
	if p.tok.kind == shut {
		p.strayEnd()
	} else {
		p.item(root)
	}
	if !p.lost {
		if len(root.Blocks) > 0 {
			p.closedTooSoon(begin)
		}
		if !p.lost {
			p.lineDone(root, nil)
		}
	}
	if p.broken || p.junk && junkBefore || p.strange >= begin.from && p.strange < p.tok.from {
		p.region(begin, root)
		return nil
	}
	for _, a := range root.Attrs {
		p.loose(a)
	}
	if len(root.Blocks) > 0 {
		return root.Blocks[0]
	}
	return nil
}

// maxLoose bounds attributes that stand in no block.
const maxLoose = 50

func (p *parser) loose(a Attr) {
	if len(p.out.Loose) < maxLoose {
		p.out.Loose = append(p.out.Loose, a)
	}
}

// region notes what could not be read, from a token up to the current one.
func (p *parser) region(begin token, root *Block) {
	r := Region{At: p.place(begin.from, p.tok.from)}
	if len(root.Blocks) > 0 {
		r.Type = root.Blocks[0].Type
		if l := root.Blocks[0].Labels; len(l) > 0 {
			r.Name = l[0].Text
		}
	}
	if n := len(p.out.Broken); n > 0 && r.Type == "" && p.out.Broken[n-1].Type == "" {
		p.out.Broken[n-1].At.End = r.At.End
		return
	}
	p.out.Broken = append(p.out.Broken, r)
}

// item reads an attribute or a block into another.
func (p *parser) item(in *Block) {
	name := p.tok
	switch {
	case name.kind == word:
	case name.kind == text && !name.unclosed && p.assignNext() && isName(p.inside(name)):
		p.flaw(QuotedName, name.from, name.to, p.edit(name.from, name.to, p.inside(name)))
	case name.kind == other && p.peek().kind == word:
		p.flaw(Stray, name.from, name.to, p.edit(name.from, p.peek().from, ""))
		p.advance()
		p.item(in)
		return
	case IsConflict(p.lineFrom(name.line)):
		p.pass(Conflict)
		return
	default:
		p.pass(NotAnItem)
		return
	}
	if p.nodes++; p.nodes > MaxNodes {
		p.tooMany()
		return
	}
	p.advance()
	switch {
	case p.tok.kind == open:
		p.block(in, name, nil)
	case p.assigns():
		p.attr(in, name)
	default:
		p.labelled(in, name)
	}
}

// inside is what stands between the quotes of a text.
func (p *parser) inside(t token) string {
	return strings.Trim(string(p.s.src[t.from:t.to]), "\"'`“”„«»‘’‚‹›")
}

// isName reports whether a text could be the name of an attribute.
func isName(s string) bool {
	if s == "" || len(s) > 60 {
		return false
	}
	for i, r := range s {
		if !wordStart(r) && (i == 0 || r != '-' && !(r >= '0' && r <= '9')) {
			return false
		}
	}
	return true
}

// assigns reports whether the current token is =, or what people write in its place.
func (p *parser) assigns() bool { return p.tok.kind == equals || p.is(':') }

func (p *parser) assignNext() bool {
	t := p.peek()
	return t.kind == equals || t.kind == other && p.s.src[t.from] == ':'
}

// assign passes over the =.
func (p *parser) assign() {
	from, before := p.tok.from, p.prev.to
	to := p.tok.to
	for p.tok.kind == equals || p.is(':') || p.is('>') && p.tok.from == to {
		to = p.tok.to
		p.advance()
	}
	if p.tok.kind == open {
		return // a block
	}
	if to-from > 1 || p.s.src[from] != '=' {
		better := "="
		if before == from {
			better = " ="
		}
		if p.tok.from == to && !p.ended() {
			better += " "
		}
		p.flaw(Colon, from, to, p.edit(from, to, better))
	}
}

// attr reads the rest of an attribute, from its = on.
func (p *parser) attr(in *Block, name token) {
	p.attrNamed(in, name, p.nameOf(name))
}

func (p *parser) nameOf(t token) string {
	if t.kind == text {
		return p.inside(t)
	}
	return string(p.s.src[t.from:t.to])
}

func (p *parser) attrNamed(in *Block, at token, name string) {
	before := p.prev.to
	p.assign()
	if p.tok.kind == open {
		if p.words.Attrs[name] && !p.words.Inner[name] {
			p.pass(Object)
			return
		}
		p.flaw(BlockEqual, before, p.tok.from, p.edit(before, p.tok.from, " "))
		p.block(in, at, nil)
		return
	}
	v, ok := p.value()
	if !ok {
		return
	}
	p.junk = false
	in.Attrs = append(in.Attrs, Attr{Name: name, NameAt: p.place(at.from, at.to), At: p.place(at.from, int(v.At.End)-p.base), Value: v})
}

// begin is the first token of the outermost block.
func (p *parser) begin() token {
	if len(p.heads) == 0 {
		return p.tok
	}
	return p.heads[0].word
}

// block reads a block from its brace on.
func (p *parser) block(in *Block, name token, labels []Label) {
	p.junk = false
	b := &Block{Type: p.nameOf(name), TypeAt: p.place(name.from, name.to), Labels: labels}
	in.Blocks = append(in.Blocks, b)
	h := head{word: name, to: p.prev.to, indent: p.indent(name)}
	if p.tok.kind == open {
		h.to = p.tok.to
		p.advance()
	}
	p.body(b, h)
	b.Whole = p.place(name.from, p.prev.to)
}

// body reads what stands in a block, and its }.
func (p *parser) body(b *Block, h head) {
	h.oneLine = p.tok.kind != newline
	p.heads = append(p.heads, h)
	defer func() { p.heads = p.heads[:len(p.heads)-1] }()
	if len(p.heads) > MaxNesting {
		p.flaw(TooDeep, h.word.from, h.to)
		p.skipToHead(p.begin())
		return
	}
	for items := 0; !p.lost; {
		switch {
		case p.tok.kind == newline:
			p.advance()
		case p.tok.kind == shut:
			p.end(b, h)
			return
		case p.tok.kind == end || p.headHere(p.begin()):
			p.unended()
			p.lost = true
		default:
			begins := p.tok
			p.item(b)
			if items++; items == 1 && !p.lost {
				p.besideBrace(b, &h, begins)
			}
			if !p.lost {
				p.lineDone(b, &h)
			}
		}
	}
}

// end passes over the } of a block.
func (p *parser) end(b *Block, h head) {
	t := p.tok
	switch {
	case t.first && h.word.first && p.unshut == nil && len(p.indent(t)) < len(h.indent):
		p.unshut = &h
	case !t.first && !(h.oneLine && len(b.Blocks) == 0 && len(b.Attrs) < 2) && !p.junk:
		p.ownLine(t, h.indent)
	}
	p.shutAt = t
	p.advance()
}
