package ical

import (
	"unicode/utf8"

	"vivary/schema/civil"
)

// maxOctets is the longest line, its CRLF not counted (RFC 5545, 3.1).
const maxOctets = 75

// lines appends content lines to out. A property is put together in line, a
// buffer used again for each, and folded on its way to out.
type lines struct {
	out, line []byte
	zone      []byte // the TZID parameter of the feed, with its semicolon

	steadyFrom, steadyTo civil.Date // no clock change on the days between these
}

// text writes a property whose value is TEXT.
func (w *lines) text(name, value string) {
	w.begin(name)
	w.line = append(w.line, ':')
	w.line = appendText(w.line, value)
	w.end()
}

// some writes a property whose value is TEXT, if there is something to be read in it:
// libical takes a property without a value out and reports an error.
func (w *lines) some(name, value string) {
	if !blank(value) {
		w.text(name, value)
	}
}

// raw writes a property whose value is of another type than TEXT.
func (w *lines) raw(name, value string) {
	w.begin(name)
	w.line = append(w.line, ':')
	w.line = appendRaw(w.line, value)
	w.end()
}

// typed writes a property whose value is of another type than is usual for it.
func (w *lines) typed(name, kind, value string) {
	w.begin(name)
	w.param("VALUE", kind)
	w.line = append(w.line, ':')
	w.line = appendRaw(w.line, value)
	w.end()
}

func (w *lines) begin(name string) { w.line = append(w.line[:0], name...) }

func (w *lines) param(name, value string) {
	w.line = append(w.line, ';')
	w.line = append(w.line, name...)
	w.line = append(w.line, '=')
	w.line = appendParam(w.line, value)
}

// end folds the property into out.
func (w *lines) end() {
	rest, room := w.line, maxOctets
	for len(rest) > room {
		cut := foldAt(rest, room)
		w.out = append(w.out, rest[:cut]...)
		w.out = append(w.out, "\r\n "...)
		rest, room = rest[cut:], maxOctets-1
	}
	w.out = append(w.out, rest...)
	w.out = append(w.out, "\r\n"...)
}

// foldAt returns where to fold a line of more than room octets. RFC 5545 allows
// it between any two characters; readers are happier if the fold does not split
// a backslash from its letter, and if no line begins with a blank of the text,
// so that none consists of blanks only (a run of more than 70 blanks still does).
func foldAt(line []byte, room int) int {
	for cut := room; cut > 0; cut-- {
		if c := line[cut]; c != ' ' && c != '\t' && utf8.RuneStart(c) && !escaped(line, cut) {
			return cut
		}
	}
	return room
}

// escaped reports whether an odd number of backslashes stands before line[i].
func escaped(line []byte, i int) bool {
	n := 0
	for n < i && line[i-1-n] == '\\' {
		n++
	}
	return n%2 == 1
}

// appendRaw appends the printable ASCII of s: all that dates, numbers, rules and
// URIs are made of.
func appendRaw(b []byte, s string) []byte {
	for i := 0; i < len(s); i++ {
		if c := s[i]; ' ' <= c && c < 0x7f {
			b = append(b, c)
		}
	}
	return b
}

// appendParam appends a parameter value, quoted if it must be (RFC 5545, 3.2),
// with ^, double quote and line break in the form of RFC 6868. Other control
// characters go, and so does the backslash: it means nothing there, but readers
// take it for an escape.
func appendParam(b []byte, s string) []byte {
	start, quote := len(b), false
	b = append(b, '"')
	for _, r := range s {
		switch {
		case r == '^':
			b = append(b, "^^"...)
		case r == '"':
			b = append(b, "^'"...)
		case r == '\n':
			b = append(b, "^n"...)
		case r < ' ' && r != '\t' || r >= 0x7f && r <= 0x9f || r == '\\':
		default:
			quote = quote || r == ':' || r == ';' || r == ','
			b = utf8.AppendRune(b, r)
		}
	}
	if quote {
		return append(b, '"')
	}
	return append(b[:start], b[start+1:]...)
}
