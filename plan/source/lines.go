package source

import (
	"bytes"
	"unicode/utf8"

	"github.com/apparentlymart/go-textseg/v15/textseg"
)

// step is how far apart in a text the places are from which lines are counted, and far
// how much of a very long line is shown, and counted as a reader would.
const (
	step = 4 << 10
	far  = 1 << 10
)

// lines finds lines in a text without counting from its beginning.
type lines struct{ marks []mark }

// mark is what stands before each step of a text.
type mark struct{ lines, begin, runes int }

func newLines(text []byte) *lines {
	l := &lines{marks: make([]mark, 0, len(text)/step+1)}
	var m mark
	for at := 0; ; at += step {
		l.marks = append(l.marks, m)
		if at+step >= len(text) {
			return l
		}
		part := text[at : at+step]
		m.lines += bytes.Count(part, []byte{'\n'})
		if i := bytes.LastIndexByte(part, '\n'); i >= 0 {
			m.begin = at + i + 1
		}
		m.runes += utf8.RuneCount(text[whole(text, at):whole(text, at+step)])
	}
}

// of returns the number of the line in which a byte stands, from 1, and where it begins.
func (l *lines) of(text []byte, at int) (line, begin int) {
	m := l.marks[min(at/step, len(l.marks)-1)]
	part := text[min(at/step, len(l.marks)-1)*step : at]
	if i := bytes.LastIndexByte(part, '\n'); i >= 0 {
		m.begin = at - len(part) + i + 1
	}
	return m.lines + bytes.Count(part, []byte{'\n'}) + 1, m.begin
}

// characters counts what a reader takes for one character each between two bytes of a
// line. Of a very long line it is letters and marks: nobody counts there.
func (l *lines) characters(text []byte, from, to int) int {
	if to-from <= far {
		return characters(text[from:to])
	}
	return l.runes(text, to) - l.runes(text, from)
}

// characters counts what a reader takes for one character each: a letter with
// its accents, or an emoji with its modifiers, is one.
func characters(b []byte) int {
	ascii := true
	for _, c := range b {
		if c >= utf8.RuneSelf {
			ascii = false
			break
		}
	}
	if ascii {
		return len(b)
	}
	n, err := textseg.TokenCount(b, textseg.ScanGraphemeClusters)
	if err != nil {
		return utf8.RuneCount(b)
	}
	return n
}
