package assist

import "strings"

type tokenKind uint8

const (
	endOfText tokenKind = iota
	endOfLine
	word  // a name, a number, true or false: all that stands without quotes
	text  // something in quotes; it ends with its line where the second quote is missing
	sign  // one of { } [ ] = ,
	aside // a remark
)

// token is a stretch of the text that belongs together.
type token struct {
	kind     tokenKind
	sign     byte
	open     bool // of a text: it has no second quote; of a remark: more of it may be typed at its end
	from, to int
}

// scanner cuts a text into tokens. It is not the reader of plans, which tells what is wrong: it
// takes every text for one that somebody is about to finish, and goes over it once.
type scanner struct {
	src   string
	pos   int
	noEnd bool // no /* ends any more
}

// isSign are the signs, and endsWord what stands in no word.
var isSign, endsWord = among("{}[]=,"), among("{}[]=,\"# \t\r\n")

func among(signs string) (is [256]bool) {
	for _, c := range []byte(signs) {
		is[c] = true
	}
	return is
}

// byteOrderMark is what some editors begin a text with.
const byteOrderMark = "\ufeff"

// next returns the next token. Blanks are passed over.
func (s *scanner) next() token {
	if s.pos == 0 && strings.HasPrefix(s.src, byteOrderMark) {
		s.pos = len(byteOrderMark)
	}
	for s.pos < len(s.src) && (s.src[s.pos] == ' ' || s.src[s.pos] == '\t') {
		s.pos++
	}
	t := token{from: s.pos, to: s.pos + 1}
	if s.pos == len(s.src) {
		t.to = s.pos
		return t
	}
	switch c := s.src[s.pos]; {
	case c == '\n' || c == '\r':
		t.kind = endOfLine
	case c == '#' || c == '/' && s.follows('/'):
		t.kind, t.to, t.open = aside, lineEnd(s.src, s.pos), true
	case c == '/' && s.follows('*') && !s.noEnd:
		t = s.remark(t)
	case c == '"':
		t = s.quoted(t)
	case isSign[c]:
		t.kind, t.sign = sign, c
	default:
		t.kind = word
		for t.to < len(s.src) && !endsWord[s.src[t.to]] {
			t.to++
		}
	}
	s.pos = t.to
	return t
}

func (s *scanner) follows(c byte) bool { return s.pos+1 < len(s.src) && s.src[s.pos+1] == c }

// remark passes over one between /* and */. One that never ends is taken for one line.
func (s *scanner) remark(t token) token {
	t.kind = aside
	if n := strings.Index(s.src[s.pos+2:], "*/"); n >= 0 {
		t.to = s.pos + 2 + n + 2
		return t
	}
	s.noEnd = true
	t.to, t.open = lineEnd(s.src, s.pos), true
	return t
}

func (s *scanner) quoted(t token) token {
	t.kind = text
	for t.to < len(s.src) {
		switch s.src[t.to] {
		case '"':
			t.to++
			return t
		case '\\':
			t.to++
		case '\n', '\r':
			t.open = true
			return t
		}
		if t.to < len(s.src) && s.src[t.to] != '\n' && s.src[t.to] != '\r' {
			t.to++
		}
	}
	t.open = true
	return t
}

// inside is a text without its quotes.
func (t token) inside() (from, to int) {
	if t.kind != text {
		return t.from, t.to
	}
	if t.open {
		return t.from + 1, t.to
	}
	return t.from + 1, t.to - 1
}

// of is what stands there, without quotes.
func (t token) of(src string) string {
	from, to := t.inside()
	return src[from:to]
}
