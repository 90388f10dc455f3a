package syntax

import (
	"bytes"

	"vivary/plan/finding"
)

// pass finds the line of the current token, and passes over it. Lines that follow each other
// are one mistake.
func (p *parser) pass(f Flaw, edits ...finding.Edit) { p.passFrom(p.tok, f, edits...) }

// strayEnd finds a } that closes nothing.
func (p *parser) strayEnd() {
	if !p.junk {
		p.flaw(ExtraEnd, p.tok.from, p.tok.to, p.withoutLine(p.tok)...)
	}
	p.broken, p.junk = true, true // those that follow it are no mistakes of their own
	p.advance()
}

// withoutLine takes a token out, with its line where nothing else stands there.
func (p *parser) withoutLine(t token) []finding.Edit {
	src := p.s.src
	from, to := t.line, p.s.lineEnd(t.to)
	if len(bytes.TrimSpace(src[from:t.from])) > 0 || len(bytes.TrimSpace(src[t.to:to])) > 0 {
		return []finding.Edit{p.edit(t.from, t.to, "")}
	}
	if i := bytes.IndexByte(src[to:], '\n'); i >= 0 {
		to += i + 1
	}
	return []finding.Edit{p.edit(from, to, "")}
}

// closedTooSoon looks whether what follows an outermost block was meant to stand in it, and
// a } too many closed it before.
func (p *parser) closedTooSoon(begin token) {
	last, m := p.shutAt, p.mark()
	p.skipLines()
	next := p.tok
	deeper := next.first && p.deeper(next, begin) || next.kind == shut ||
		p.isWord(next, p.words.Inner) && !p.isWord(next, p.words.Outer)
	if next.kind == end || !deeper || next.from < p.balanced || p.headHere(begin) {
		p.back(m)
		return
	}
	culprit, n := p.surplus(begin)
	if n != 1 {
		p.back(m)
		return
	}
	if last.first && last.from > begin.from && (p.deeper(last, begin) || next.kind != shut) {
		culprit = last
	}
	if !p.junked {
		p.flaw(ExtraEnd, culprit.from, culprit.to, p.withoutLine(culprit)...)
	}
	p.broken = true
	p.skipToHead(begin)
}

// surplus counts how many more } than { stand before the next outermost block, and returns
// the first of them.
func (p *parser) surplus(begin token) (first token, n int) {
	m := p.mark()
	for ; p.tok.kind != end && !p.headHere(begin); p.advance() {
		switch p.tok.kind {
		case open:
			n--
		case shut:
			if n++; n == 1 && first.to == 0 {
				first = p.tok
			}
		}
	}
	p.balanced = p.tok.from
	p.back(m)
	return first, n
}

// headHere reports whether the current token begins an outermost block: it begins its line,
// no further in than begin does.
func (p *parser) headHere(begin token) bool {
	return p.tok.first && p.isWord(p.tok, p.words.Outer) && !p.deeper(p.tok, begin) && p.s.headAt(p.s.line)
}

// skipToHead passes over everything up to the next outermost block.
func (p *parser) skipToHead(begin token) {
	for p.tok.kind != end && !p.headHere(begin) {
		p.advance()
	}
	p.lost = true
}

func (p *parser) passFrom(from token, f Flaw, edits ...finding.Edit) {
	said := p.junk
	p.junk, p.junked, p.broken = true, true, true
	p.skipLine()
	if !said {
		to := max(from.to, p.prev.to)
		if p.ended() {
			to = max(from.from+len(bytes.TrimRight(p.s.src[from.from:p.tok.from], " \t\r")), from.to)
		}
		p.flaw(f, from.from, min(to, from.from+len(p.lineFrom(from.from))), edits...)
	}
}

// IsConflict reports whether a line is one of those with which git marks the sides of what it
// could not merge.
func IsConflict(line []byte) bool {
	for _, mark := range []string{"<<<<<<<", "|||||||", "=======", ">>>>>>>"} {
		if rest, ok := bytes.CutPrefix(line, []byte(mark)); ok {
			return len(rest) == 0 || rest[0] == ' '
		}
	}
	return false
}

// lineFrom is the rest of a line, without blanks at its end.
func (p *parser) lineFrom(from int) []byte {
	return bytes.TrimRight(p.s.src[from:p.s.lineEnd(from)], " \t\r")
}

// skipLine passes over the rest of a line, and over the blocks that begin on it.
func (p *parser) skipLine() {
	depth := 0
	for ; !p.ended(); p.advance() {
		switch p.tok.kind {
		case open:
			depth++
		case shut:
			if depth == 0 {
				return
			}
			depth--
		}
	}
	for ; depth > 0 && !p.lost && p.tok.kind != end; depth-- {
		p.body(&Block{}, head{word: p.prev, to: p.prev.to, indent: p.indent(p.prev)})
	}
}

func (p *parser) tooMany() {
	p.flaw(TooMany, p.begin().from, p.begin().to)
	p.skipToHead(p.begin())
}

// unended finds a block without its }: the one before whose } a line stands that is less
// indented, else the innermost that is open.
func (p *parser) unended() {
	if p.junked || len(p.heads) == 0 {
		p.broken = true
		return
	}
	h := p.heads[len(p.heads)-1]
	at := p.s.lineEnd(p.prev.to)
	if p.unshut != nil {
		h = *p.unshut
		at = p.lastWithin(h)
	}
	var edits []finding.Edit
	if len(p.heads) == 1 && h.word.first {
		edits = append(edits, p.edit(at, at, "\n"+h.indent+"}"))
	}
	p.flaw(Unended, h.word.from, h.to, edits...)
}

// lastWithin returns the end of the last line that is further in than a block's first.
func (p *parser) lastWithin(h head) int {
	last := p.s.lineEnd(h.to)
	for at := last; at < p.tok.from; {
		from := at + 1
		at = p.s.lineEnd(from)
		line := p.s.src[from:at]
		if len(bytes.TrimSpace(line)) == 0 {
			continue
		}
		if len(line)-len(bytes.TrimLeft(line, " \t")) <= len(h.indent) {
			break
		}
		last = at
	}
	return last
}

// ownLine finds what stands behind something that ends its line.
func (p *parser) ownLine(t token, indent string) {
	from := p.prev.to
	var edits []finding.Edit
	if len(bytes.Trim(p.s.src[from:t.from], " \t,;")) == 0 {
		edits = append(edits, p.edit(from, t.from, "\n"+indent))
	}
	p.flaw(OwnLine, t.from, t.to, edits...)
}

// lineDone looks whether the line ends behind an attribute or a block. h is the block in
// which it stands, nil outside of all.
func (p *parser) lineDone(b *Block, h *head) {
	if p.junk {
		return // the line was passed over
	}
	indent := ""
	if h != nil {
		indent = h.indent + "  "
	}
	if p.tok.kind == comma || p.is(';') {
		t, prev := p.tok, p.prev
		p.advance()
		if p.ended() || p.tok.kind == shut {
			p.flaw(LineEnd, t.from, t.to, p.edit(t.from, t.to, ""))
			p.prev = t
			return
		}
		p.prev = prev
	}
	if !p.ended() && p.tok.kind != shut {
		p.ownLine(p.tok, indent)
	}
}

// besideBrace looks at what stands on the line of the { of a block: one attribute alone, and
// the }.
func (p *parser) besideBrace(b *Block, h *head, begins token) {
	if h.oneLine && !p.junk && (p.tok.kind != shut || len(b.Blocks) > 0) {
		p.flaw(OwnLine, begins.from, begins.to, p.edit(h.to, begins.from, "\n"+h.indent+"  "))
	}
}
