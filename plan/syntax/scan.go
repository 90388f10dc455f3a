package syntax

import (
	"bytes"
	"unicode"
	"unicode/utf8"
)

type tokenKind uint8

const (
	end      tokenKind = iota // of the file
	newline                   // of a line
	word                      // a name, true or false
	number                    // digits
	text                      // something in quotes
	open                      // {
	shut                      // }
	listOpen                  // [
	listShut                  // ]
	equals                    // =
	comma                     // ,
	other                     // any other character
)

// token is a stretch of the text that belongs together.
type token struct {
	kind     tokenKind
	from, to int
	line     int // where its line begins
	// first says that it is the first on its line.
	first bool
	// Of a text: it has no second quote; it is not in straight double quotes; it holds
	// something that does not stand for itself.
	unclosed bool
	quotes   Flaw // Curly or Single, where odd
	odd      bool
	escaped  bool
}

// scanner cuts a text into tokens. It looks at each byte a fixed number of times. A copy
// of it is a place to come back to.
type scanner struct {
	src   []byte
	pos   int
	line  int  // where the current line begins
	fresh bool // nothing but blanks stands before pos on the line
	// outer are the words of blocks that stand in no other.
	outer map[string]bool
	// noEnd says that no comment ends any more.
	noEnd bool
	// What the scanner passes over is told.
	told func(flaw Flaw, from, to int)
}

func (s *scanner) at(i int) byte {
	if i < len(s.src) {
		return s.src[i]
	}
	return 0
}

// next returns the next token. Comments and blanks are passed over.
func (s *scanner) next() token {
	for s.pos < len(s.src) {
		switch c := s.src[s.pos]; {
		case c == ' ' || c == '\t' || c == '\r' && s.at(s.pos+1) == '\n':
			s.pos++
		case c == '\n' || c == '\r':
			if c == '\r' {
				s.told(Return, s.pos, s.pos+1)
			}
			t := token{kind: newline, from: s.pos, to: s.pos + 1, line: s.line}
			s.pos++
			s.line, s.fresh = s.pos, true
			return t
		case c == '#' || c == '/' && s.at(s.pos+1) == '/':
			s.pos = s.lineEnd(s.pos)
		case c == '/' && s.at(s.pos+1) == '*':
			s.comment()
		case c >= utf8.RuneSelf && s.blank():
		default:
			return s.token(c)
		}
	}
	return token{kind: end, from: s.pos, to: s.pos, line: s.line, first: s.fresh}
}

// blank passes over a blank that HCL does not know as one.
func (s *scanner) blank() bool {
	r, n := utf8.DecodeRune(s.src[s.pos:])
	if !unicode.IsSpace(r) && r != '\u200b' && r != '\ufeff' {
		return false
	}
	s.told(Blank, s.pos, s.pos+n)
	s.pos += n
	return true
}

// lineEnd returns where the line of a byte ends, without its end.
func (s *scanner) lineEnd(from int) int {
	for i := from; i < len(s.src); i++ {
		if c := s.src[i]; c == '\n' || c == '\r' {
			return i
		}
	}
	return len(s.src)
}

// comment passes over one between /* and */. One that never ends is taken to end where
// the next outermost block begins.
func (s *scanner) comment() {
	from := s.pos
	if !s.noEnd {
		if i := bytes.Index(s.src[from+2:], []byte("*/")); i >= 0 {
			s.pos = from + 2 + i + 2
			if j := bytes.LastIndexByte(s.src[from:s.pos], '\n'); j >= 0 {
				s.line = from + j + 1
			}
			return
		}
	}
	s.noEnd = true
	s.told(OpenComment, from, from+2)
	for s.pos = s.lineEnd(from); s.pos < len(s.src); s.pos = s.lineEnd(s.pos + 1) {
		if s.headAt(s.pos + 1) {
			return
		}
	}
}

// headAt reports whether the line that begins at a byte is that of an outermost block: one
// of their words, a name, and a brace.
func (s *scanner) headAt(from int) bool {
	i := from
	for s.at(i) == ' ' || s.at(i) == '\t' {
		i++
	}
	j := i
	for c := s.at(j); c == '_' || c|0x20 >= 'a' && c|0x20 <= 'z'; c = s.at(j) {
		j++
	}
	if !s.outer[string(s.src[i:j])] {
		return false
	}
	for i = j; s.at(i) == ' ' || s.at(i) == '\t'; i++ {
	}
	r, _ := utf8.DecodeRune(s.src[i:])
	if opener, _ := quoteMark(r); !opener && !wordStart(r) && r != '"' && !unicode.IsDigit(r) {
		return false
	}
	return bytes.IndexByte(s.src[i:s.lineEnd(i)], '{') >= 0
}

var singles = [...]tokenKind{'{': open, '}': shut, '[': listOpen, ']': listShut, '=': equals, ',': comma}

func (s *scanner) token(c byte) token {
	t := token{kind: other, from: s.pos, line: s.line, first: s.fresh}
	s.fresh = false
	r, n := rune(c), 1
	if c >= utf8.RuneSelf {
		r, n = utf8.DecodeRune(s.src[s.pos:])
	}
	switch {
	case int(c) < len(singles) && singles[c] != 0:
		t.kind = singles[c]
		s.pos++
	case c == '"':
		s.quoted(&t)
	case wordStart(r):
		t.kind = word
		s.pos = s.word(s.pos + n)
	case c >= '0' && c <= '9':
		t.kind = number
		s.number()
	case s.quotedOddly(&t, r, n):
	default:
		s.pos += n
	}
	t.to = s.pos
	return t
}

func wordStart(r rune) bool { return r == '_' || unicode.IsLetter(r) }

// word returns where a word ends of which a part ends at i.
func (s *scanner) word(i int) int {
	for i < len(s.src) {
		c := s.src[i]
		if c == '-' || c == '_' || c >= '0' && c <= '9' || c|0x20 >= 'a' && c|0x20 <= 'z' {
			i++
			continue
		}
		r, n := utf8.DecodeRune(s.src[i:])
		if c < utf8.RuneSelf || !unicode.IsLetter(r) && !unicode.IsDigit(r) && !unicode.IsMark(r) {
			break
		}
		i += n
	}
	return i
}

func (s *scanner) digits() {
	for c := s.at(s.pos); c >= '0' && c <= '9'; c = s.at(s.pos) {
		s.pos++
	}
}

func digit(c byte) bool { return c >= '0' && c <= '9' }

func (s *scanner) number() {
	s.digits()
	if s.at(s.pos) == '.' && digit(s.at(s.pos+1)) {
		s.pos++
		s.digits()
	}
	if s.at(s.pos)|0x20 != 'e' {
		return
	}
	i := s.pos + 1
	if s.at(i) == '+' || s.at(i) == '-' {
		i++
	}
	if digit(s.at(i)) {
		s.pos = i
		s.digits()
	}
}

// quoted reads a text in straight quotes, which ends on its line.
func (s *scanner) quoted(t *token) {
	t.kind = text
	for i := s.pos + 1; i < len(s.src); i++ {
		switch c := s.src[i]; {
		case c == '"':
			s.pos = i + 1
			return
		case c == '\n' || c == '\r':
			t.unclosed = true
			s.pos = i
			return
		case c == '\\':
			t.escaped = true
			if n := s.at(i + 1); n != '\n' && n != '\r' {
				i++
			}
		case c == '$' || c == '%' || c >= utf8.RuneSelf:
			t.escaped = true
		}
	}
	t.unclosed = true
	s.pos = len(s.src)
}

// quoteMark reports whether a character is a quote, other than ", and which closes it.
func quoteMark(r rune) (opener bool, closers string) {
	switch r {
	case '“', '”', '„', '«', '»', '″':
		return true, "”“»«″„\""
	case '‘', '’', '‚', '‹', '›', '\'', '`', '′':
		return true, "’‘›‹'`′‚"
	}
	return false, ""
}

// quotedOddly reads a text in other quotes, where it ends on its line.
func (s *scanner) quotedOddly(t *token, r rune, n int) bool {
	opener, closers := quoteMark(r)
	if !opener || s.pos > 0 && (s.src[s.pos-1]|0x20 >= 'a' && s.src[s.pos-1]|0x20 <= 'z' || digit(s.src[s.pos-1])) {
		return false // an apostrophe, or feet and inches
	}
	i := bytes.IndexAny(s.src[s.pos+n:], closers+"\n\r")
	if i < 0 || s.at(s.pos+n+i) == '\n' || s.at(s.pos+n+i) == '\r' {
		return false // and no other on the line has one: whatever opens can close
	}
	i += n
	_, m := utf8.DecodeRune(s.src[s.pos+i:])
	t.kind, t.odd, t.quotes = text, true, Curly
	if r == '\'' || r == '`' {
		t.quotes = Single
	}
	s.pos += i + m
	return true
}
