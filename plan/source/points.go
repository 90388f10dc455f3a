package source

import (
	"bytes"
	"unicode/utf8"
)

// byteOrderMark is how a file may begin that says in which encoding it is. It is none of its
// text.
var byteOrderMark = []byte("\ufeff")

// Point is a place as programs count it: in code points of Unicode, of which a byte that
// belongs to none is one. A mark of the encoding before a text counts for nothing.
type Point struct {
	Line   int // from 1
	Column int // from 1
	Offset int // from 0, over the whole text
}

// Points returns the point at which p starts, and the one before which it ends. What ends
// behind the last end of line of a text ends on that line, since no other follows it
// (SARIF 2.1.0, 3.30.2).
func (s *Set) Points(p Place) (from, to Point) {
	text := s.Text(p.File)
	l := s.lines(p.File)
	return l.point(text, int(p.Start)), l.point(text, int(max(p.Start, p.End)))
}

func (l *lines) point(text []byte, at int) Point {
	first := 0
	if bytes.HasPrefix(text, byteOrderMark) {
		first = len(byteOrderMark)
	}
	at = min(max(at, first), len(text))
	seen := at
	if at == len(text) && at > first && text[at-1] == '\n' {
		seen-- // the end of the line is on the line
	}
	line, begin := l.of(text, seen)
	runes := l.runes(text, at)
	return Point{line, runes - l.runes(text, max(begin, first)) + 1, runes - l.runes(text, first)}
}

// runes counts the code points before a byte of a text.
func (l *lines) runes(text []byte, at int) int {
	i := min(at/step, len(l.marks)-1)
	return l.marks[i].runes + utf8.RuneCount(text[whole(text, i*step):at])
}

// whole returns where the code point begins to which a byte of a text belongs.
func whole(text []byte, at int) int {
	for from := at; from > at-utf8.UTFMax && 0 < from && from < len(text); from-- {
		if utf8.RuneStart(text[from]) {
			return from
		}
	}
	return at
}
