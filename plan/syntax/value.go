package syntax

import (
	"bytes"
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"

	"vivary/plan/finding"
)

// value reads what stands behind a =, and looks at what else stands on the line. It
// reports whether there is something that could be meant.
func (p *parser) value() (Value, bool) {
	switch t := p.tok; {
	case p.ended() || t.kind == shut || t.kind == comma:
		p.passFrom(p.prev, NoValue)
		return Value{}, false
	case t.kind == text && t.unclosed:
		return p.openText(), true
	case t.kind == text:
		v := p.textValue()
		return p.behind(v), true
	case t.kind == listOpen:
		v, ok := p.list(1)
		if !ok {
			return v, false
		}
		return p.behind(v), true
	case p.is('<') && p.peek().from == t.to && p.s.at(t.to) == '<':
		return p.heredoc(), true
	}
	v, ok := p.bare(false)
	if !ok {
		return v, false
	}
	return p.behind(v), true
}

// textValue reads a text in quotes.
func (p *parser) textValue() Value {
	t := p.tok
	v := Value{Kind: Text, At: p.place(t.from, t.to), Text: p.unquoted(t), Filled: t.escaped && filled(p.s.src[t.from:t.to])}
	if t.odd {
		p.oddQuotes(t)
	}
	p.advance()
	return v
}

// oddQuotes finds quotes that are not straight double ones.
func (p *parser) oddQuotes(t token) {
	_, n := utf8.DecodeRune(p.s.src[t.from:])
	_, m := utf8.DecodeLastRune(p.s.src[t.from:t.to])
	var edits []finding.Edit
	if in := p.s.src[t.from+n : t.to-m]; !bytes.ContainsAny(in, `"\`) {
		edits = []finding.Edit{p.edit(t.from, t.from+n, `"`), p.edit(t.to-m, t.to, `"`)}
	}
	p.flaw(t.quotes, t.from, t.to, edits...)
}

// filled reports whether HCL would fill something into a text.
func filled(typed []byte) bool {
	for i := 0; i+1 < len(typed); i++ {
		c := typed[i]
		switch {
		case c == '\\':
			i++
		case c != '$' && c != '%':
		case typed[i+1] == '{':
			return true
		case typed[i+1] == c && i+2 < len(typed) && typed[i+2] == '{':
			i += 2 // $${ stands for ${
		}
	}
	return false
}

// unquoted returns what the text of a token stands for.
func (p *parser) unquoted(t token) string {
	typed := p.s.src[t.from:t.to]
	switch {
	case t.kind != text:
		return string(typed)
	case t.odd:
		_, n := utf8.DecodeRune(typed)
		_, m := utf8.DecodeLastRune(typed)
		return norm.NFC.String(string(typed[n : len(typed)-m]))
	}
	typed = bytes.TrimSuffix(typed[1:], []byte{'"'})
	if !t.escaped {
		return string(typed)
	}
	var b strings.Builder
	for i := 0; i < len(typed); i++ {
		c := typed[i]
		switch {
		case c == '\\':
			i += p.escape(&b, typed[i:], t.from+1+i)
		case (c == '$' || c == '%') && bytes.HasPrefix(typed[i+1:], []byte{c, '{'}):
			b.WriteByte(c)
			b.WriteByte('{')
			i += 2
		default:
			b.WriteByte(c)
		}
	}
	return norm.NFC.String(b.String())
}

// escape writes what the escape at the beginning of a text stands for, and returns how many
// bytes it has behind its backslash.
func (p *parser) escape(b *strings.Builder, typed []byte, at int) int {
	c := byte(0)
	if len(typed) > 1 {
		c = typed[1]
	}
	switch c {
	case 'n':
		b.WriteByte('\n')
	case 'r':
		b.WriteByte('\r')
	case 't':
		b.WriteByte('\t')
	case '"', '\\':
		b.WriteByte(c)
	case 'u', 'U':
		digits := 4
		if c == 'U' {
			digits = 8
		}
		if len(typed) >= 2+digits {
			if n, err := strconv.ParseUint(string(typed[2:2+digits]), 16, 32); err == nil {
				b.WriteRune(rune(n))
				return 1 + digits
			}
		}
		fallthrough
	default:
		p.flaw(Escape, at, at+min(2, len(typed)), p.edit(at, at, `\`))
		b.WriteByte('\\')
		return 0
	}
	return 1
}

// openText reads a text whose second quote is missing.
func (p *parser) openText() Value {
	t := p.tok
	if v, ok := p.longText(t); ok {
		return v
	}
	closing := ""
	if n := len(p.heads); n > 0 && p.heads[n-1].oneLine {
		closing = "} \t"
	}
	at := p.cut(t, closing)
	content := p.s.src[t.from+1 : at]
	if r, n := utf8.DecodeLastRune(content); strings.ContainsRune("”“»«″", r) {
		p.flaw(Curly, at-n, at, p.edit(at-n, at, `"`))
		at -= n
	} else {
		p.flaw(Unclosed, t.from, at, p.edit(at, at, `"`))
	}
	v := Value{Kind: Text, At: p.place(t.from, at)}
	if closing != "" {
		t.to = at
	}
	p.goOn(t)
	return v
}

// The most of a text that runs over lines which is looked at.
const (
	longLines = 12
	longLine  = 500
)

// itemLine is a line that cannot be the middle of a text.
var itemLine = regexp.MustCompile(`^[\w-]+\s*=|^[\w-]+(\s+\S+)?\s*\{|^\}`)

// longText reads a text that runs over several lines, where it ends soon.
func (p *parser) longText(t token) (Value, bool) {
	type gap struct{ from, to int }
	var gaps []gap
	at := t.to
	for range longLines {
		if at >= len(p.s.src) {
			break
		}
		from := at + 1
		if p.s.src[at] == '\r' && p.s.at(from) == '\n' {
			from++
		}
		end := p.s.lineEnd(from)
		if end-from > longLine {
			break
		}
		line := p.s.src[from:end]
		trimmed := bytes.TrimLeft(line, " \t")
		if len(trimmed) == 0 || itemLine.Match(trimmed) {
			break
		}
		gaps = append(gaps, gap{at - trailing(p.s.src[t.from:at]), from + len(line) - len(trimmed)})
		i := bytes.IndexByte(line, '"')
		if i < 0 {
			at = end
			continue
		}
		if rest := bytes.TrimSpace(line[i+1:]); len(rest) > 0 && rest[0] != '#' {
			break
		}
		var edits []finding.Edit
		for _, g := range gaps {
			edits = append(edits, p.edit(g.from, g.to, " "))
		}
		p.flaw(LongText, t.from, t.to, edits...)
		p.s.line = from
		t.to = from + i + 1
		p.goOn(t)
		return Value{Kind: Text, At: p.place(t.from, t.to)}, true
	}
	return Value{}, false
}

// trailing counts the blanks at the end of a text.
func trailing(b []byte) int { return len(b) - len(bytes.TrimRight(b, " \t\r")) }

// heredoc passes over a text between markers.
func (p *parser) heredoc() Value {
	t := p.tok
	line := p.lineFrom(t.from)
	marker := bytes.TrimSpace(bytes.TrimLeft(line, "<-"))
	p.flaw(Heredoc, t.from, t.from+len(line))
	at := p.s.lineEnd(t.from)
	for range longLines * 4 {
		if at >= len(p.s.src) || len(marker) == 0 || len(marker) > 60 {
			break
		}
		from := at + 1
		at = p.s.lineEnd(from)
		if at-from > longLine {
			break
		}
		if bytes.Equal(bytes.TrimSpace(p.s.src[from:at]), marker) {
			p.s.line = from
			t.to = at
			p.goOn(t)
			return Value{Kind: Text, At: p.place(t.from, at)}
		}
	}
	p.junked = true
	t.to = t.from + len(line)
	p.goOn(t)
	return Value{Kind: Text, At: p.place(t.from, t.to)}
}

// bare reads a number, true or false, or words without quotes: to the end of the line, or
// of the thing in a list.
func (p *parser) bare(inList bool) (Value, bool) {
	first := p.tok
	count, quoted := 0, false
	for !p.ended() && !p.bareEnds(inList, count) {
		switch p.tok.kind {
		case text:
			quoted = true
		case open:
			if inList {
				return Value{}, false
			}
			p.passFrom(first, Object)
			return Value{}, false
		}
		count++
		p.advance()
	}
	from, to := first.from, p.prev.to
	if quoted {
		return p.halfQuoted(first, to)
	}
	v := Value{Kind: Bare, At: p.place(from, to), Text: string(p.s.src[from:to])}
	switch {
	case count == 1 && first.kind == number || count == 2 && p.s.src[from] == '-' && p.prev.kind == number:
		v.Kind = Number
	case count == 1 && (v.Text == "true" || v.Text == "false"):
		v.Kind = Truth
	}
	return v, count > 0
}

// bareEnds reports whether words without quotes end before the current token.
func (p *parser) bareEnds(inList bool, count int) bool {
	switch {
	case p.tok.kind == shut:
		return true
	case inList:
		return p.tok.kind == comma || p.tok.kind == listShut || p.tok.kind == listOpen || p.is(';')
	case p.tok.kind == word && count > 0:
		return p.startsItem()
	case p.tok.kind == other && count > 0 && strings.IndexByte("@.:!?|~^&*/<>", p.s.src[p.tok.from]) >= 0:
		t := p.peek()
		return t.kind == newline || t.kind == end
	case p.tok.kind == comma || p.is(';'):
		m := p.mark()
		defer p.back(m)
		p.advance()
		return p.ended() || p.tok.kind == shut || p.tok.kind == word && p.startsItem() || p.tok.kind == text || count == 1 && m.prev.kind == number
	}
	return false
}

// startsItem reports whether the current word begins an attribute or a block.
func (p *parser) startsItem() bool {
	s := p.s
	t := s.next()
	isAssign := func(t token) bool {
		return t.kind == equals || t.kind == other && s.src[t.from] == ':' && s.at(t.to) == ' '
	}
	if t.kind == text || t.kind == word && !isAssign(t) {
		return s.next().kind == open
	}
	return t.kind == open || isAssign(t)
}

// halfQuoted finds words of which some stand in quotes.
func (p *parser) halfQuoted(first token, to int) (Value, bool) {
	typed := p.s.src[first.from:to]
	v := Value{Kind: Text, At: p.place(first.from, to)}
	if bytes.Count(typed, []byte{'"'}) == 1 && bytes.HasSuffix(bytes.TrimRight(typed, " \t"), []byte{'"'}) {
		p.flaw(Unopened, first.from, to, p.edit(first.from, first.from, `"`))
		return v, true
	}
	p.quoteInside(first.from, to)
	return v, true
}

// sides are the lengths of a box, with marks for inches that end a text.
var sides = regexp.MustCompile(`^"?([\d.,]+)"?\s*[xX×*]\s*"?([\d.,]+)"?(?:\s*[xX×*]\s*"?([\d.,]+)"?)?"*$`)

// quoteInside finds a text that goes on behind its quotes, or begins before them.
func (p *parser) quoteInside(from, to int) {
	typed := string(bytes.TrimRight(p.s.src[from:to], " \t"))
	to = from + len(typed)
	var edits []finding.Edit
	switch m := sides.FindStringSubmatch(typed); {
	case m != nil && m[3] != "":
		edits = append(edits, p.edit(from, to, `"`+m[1]+" x "+m[2]+" x "+m[3]+` in"`))
	case m != nil:
		edits = append(edits, p.edit(from, to, `"`+m[1]+" x "+m[2]+` in"`))
	case len(typed) > 2 && typed[0] == '"' && typed[len(typed)-1] == '"' && !strings.Contains(typed, `\`):
		for i := 1; i < len(typed)-1 && len(edits) <= maxEdits; i++ {
			if typed[i] == '"' {
				edits = append(edits, p.edit(from+i, from+i, `\`))
			}
		}
	default:
		if all := strings.ReplaceAll(typed, `"`, ""); Plain(all) && len(all) < 60 && typed[0] != '"' {
			edits = append(edits, p.edit(from, to, `"`+strings.TrimSpace(all)+`"`))
		}
	}
	if len(edits) > maxEdits {
		edits = nil
	}
	p.flaw(QuoteInside, from, to, edits...)
}

// behind looks at what stands on the line behind a value. A comma or a semicolon that ends
// the line, and what belongs on a line of its own, is for lineDone.
func (p *parser) behind(v Value) Value {
	from := int(v.At.Start) - p.base
	switch {
	case p.ended() || p.tok.kind == shut || p.tok.kind == word && p.startsItem():
	case p.tok.kind == comma || p.is(';'):
		m := p.mark()
		p.advance()
		lasts := p.ended() || p.tok.kind == shut || p.tok.kind == word && p.startsItem()
		if lasts {
			p.back(m)
			return v
		}
		p.restOfLine()
		to := p.prev.to
		var edits []finding.Edit
		if p.prev.kind != comma && p.prev.kind != listShut {
			edits = []finding.Edit{p.edit(from, from, "["), p.edit(to, to, "]")}
		} else if p.prev.kind == listShut {
			edits = []finding.Edit{p.edit(from, from, "[")}
		}
		p.flaw(NoList, from, to, edits...)
	case p.tok.kind == listShut:
		p.flaw(NoList, p.tok.from, p.tok.to, p.edit(from, from, "["))
		p.advance()
	case p.tok.kind == other && (p.peek().kind == newline || p.peek().kind == end):
		p.flaw(Stray, p.tok.from, p.tok.to, p.edit(int(v.At.End)-p.base, p.tok.to, ""))
		p.advance()
	case v.Kind == Text:
		p.restOfLine()
		p.quoteInside(from, p.prev.to)
	default:
		p.pass(NotAnItem)
	}
	return v
}

// restOfLine passes over the rest of a line, up to a } that closes the block on it.
func (p *parser) restOfLine() {
	oneLine := len(p.heads) > 0 && p.heads[len(p.heads)-1].oneLine
	for !p.ended() && !(oneLine && p.tok.kind == shut) {
		p.advance()
	}
}
