package syntax

import (
	"bytes"
	"strings"

	"vivary/plan/finding"
)

// list reads values in square brackets, which may run over lines.
func (p *parser) list(depth int) (Value, bool) {
	begin := p.tok
	v := Value{Kind: List, At: p.place(begin.from, begin.to)}
	if depth > MaxNesting {
		p.flaw(TooDeep, begin.from, begin.to)
		p.skipToHead(p.begin())
		return v, false
	}
	if depth == 1 && p.oddQuote() {
		p.listQuote(begin)
		return v, true
	}
	p.advance()
	for !p.lost {
		m := p.mark()
		if p.skipLines() && !p.listEnds() && p.oddQuote() {
			p.listQuote(p.tok)
			return v, true
		}
		switch {
		case p.tok.kind == listShut:
			v.At.End = int32(p.base + p.tok.to)
			p.advance()
			return v, true
		case p.listEnds():
			p.back(m)
			at := p.prev.to
			p.flaw(NoBracket, begin.from, at, p.edit(at, at, "]"))
			v.At.End = int32(p.base + at)
			return v, true
		case p.tok.kind == comma || p.is(';'):
			p.flaw(Stray, p.tok.from, p.tok.to, p.edit(p.tok.from, p.tok.to, ""))
			p.advance()
		default:
			if !p.thing(&v, depth) {
				return v, false
			}
		}
	}
	return v, false
}

// skipLines passes over the ends of lines, and reports whether there were any.
func (p *parser) skipLines() bool {
	from := p.tok.from
	for p.tok.kind == newline {
		p.advance()
	}
	return p.tok.from > from
}

// listEnds reports whether what stands here cannot be in a list.
func (p *parser) listEnds() bool {
	return p.tok.kind == end || p.tok.kind == shut || p.tok.first && p.tok.kind == word && p.startsItem()
}

// thing reads one value of a list, and the comma behind it.
func (p *parser) thing(v *Value, depth int) bool {
	if p.nodes++; p.nodes > MaxNodes {
		p.tooMany()
		return false
	}
	var x Value
	ok := true
	switch p.tok.kind {
	case text:
		x = p.textValue()
	case listOpen:
		x, ok = p.list(depth + 1)
	default:
		if x, ok = p.bare(true); !ok && !p.lost {
			p.pass(Object)
		}
	}
	if !ok {
		return false
	}
	v.Items = append(v.Items, x)
	end := p.prev.to
	if p.tok.kind == comma {
		p.advance()
		return true
	}
	if p.is(';') {
		p.flaw(ListComma, p.tok.from, p.tok.to, p.edit(p.tok.from, p.tok.to, ","))
		p.advance()
		return true
	}
	m := p.mark()
	p.skipLines()
	if p.tok.kind != listShut && !p.listEnds() {
		p.flaw(ListComma, p.tok.from, p.tok.to, p.edit(end, end, ","))
	}
	p.back(m)
	return true
}

// oddQuote reports whether the quotes on the rest of the line do not come in pairs: one is
// open at its end, or a text stands right behind another or a word.
func (p *parser) oddQuote() bool {
	if p.tok.from < p.paired {
		return false
	}
	s, t := p.s, p.tok
	for before := t; ; before, t = t, s.next() {
		switch {
		case t.kind == newline || t.kind == end:
			p.paired = t.from
			return false
		case t.kind == text && (t.unclosed || before.kind == text && before.to == t.from):
			return true
		case (t.kind == word && before.kind == text || t.kind == text && before.kind == word) && before.to == t.from:
			return true
		}
	}
}

// listQuote finds a line of a list with a quote too few or too many, and passes over it.
func (p *parser) listQuote(begin token) {
	line := p.lineFrom(begin.from)
	for _, c := range []string{" #", " //"} {
		if i := bytes.Index(line, []byte(c)); i > 0 {
			line = bytes.TrimRight(line[:i], " \t")
		}
	}
	var edits []finding.Edit
	inner := strings.TrimSuffix(string(line), ",")
	if strings.HasPrefix(inner, "[") && strings.HasSuffix(inner, "]") && strings.Count(inner, "[") == 1 && !strings.Contains(inner, `\`) {
		if all := requoted(inner[1 : len(inner)-1]); all != "" {
			edits = append(edits, p.edit(begin.from, begin.from+len(inner), "["+all+"]"))
		}
	}
	p.flaw(ListQuote, begin.from, begin.from+len(line), edits...)
	p.goOn(token{kind: text, from: begin.from, to: begin.from + len(line), line: begin.line, first: begin.first})
	if !strings.HasSuffix(inner, "]") {
		p.junked = true
	}
}

// requoted puts quotes round each thing of a list, or returns "" where that makes no sense.
func requoted(list string) string {
	if len(list) > 2*longLine {
		return ""
	}
	var all []string
	for _, x := range strings.Split(list, ",") {
		x = strings.Trim(x, " \t\"")
		if x == "" || !Plain(x) {
			return ""
		}
		all = append(all, `"`+x+`"`)
	}
	return strings.Join(all, ", ")
}
