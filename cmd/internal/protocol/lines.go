package protocol

import (
	"bytes"
	"slices"
	"sort"
	"unicode/utf8"
)

// Encoding is what counts as a character of a line.
type Encoding string

// The two that are spoken. Every editor knows UTF-16.
const (
	UTF8  Encoding = "utf-8"
	UTF16 Encoding = "utf-16"
)

// Lines are the lines of a text, for going from bytes to positions and back. They end with a
// line feed, a carriage return, or both.
type Lines struct {
	Text     []byte
	encoding Encoding
	begin    []int // the byte at which each line begins
}

// NewLines finds the lines of a text.
func NewLines(text []byte, e Encoding) *Lines {
	l := &Lines{text, e, make([]int, 1, bytes.Count(text, []byte{'\n'})+1)}
	for i, b := range text {
		if b == '\n' || b == '\r' && (i+1 == len(text) || text[i+1] != '\n') {
			l.begin = append(l.begin, i+1)
		}
	}
	return l
}

// line returns the line of a byte.
func (l *Lines) line(at int) int { return sort.SearchInts(l.begin, at+1) - 1 }

// Position returns the position of a byte of the text.
func (l *Lines) Position(at int) Position {
	at = max(0, min(at, len(l.Text)))
	n := l.line(at)
	before := l.Text[l.begin[n]:at]
	if l.encoding == UTF8 {
		return Position{n, len(before)}
	}
	units := 0
	for len(before) > 0 {
		r, size := utf8.DecodeRune(before)
		units++
		if r > 0xffff {
			units++
		}
		before = before[size:]
	}
	return Position{n, units}
}

// Offset returns the byte of a position. One beyond the end of its line is the end of the
// line, one beyond the last line the end of the text, as the protocol has it.
func (l *Lines) Offset(p Position) int {
	switch {
	case p.Line < 0:
		return 0
	case p.Line >= len(l.begin):
		return len(l.Text)
	}
	at, end := l.begin[p.Line], len(l.Text)
	if p.Line+1 < len(l.begin) {
		end = l.begin[p.Line+1]
	}
	line := bytes.TrimRight(l.Text[at:end], "\r\n")
	if l.encoding == UTF8 {
		return at + max(0, min(p.Character, len(line)))
	}
	for units := 0; len(line) > 0 && units < p.Character; {
		r, size := utf8.DecodeRune(line)
		units++
		if r > 0xffff {
			if units++; units > p.Character { // in the middle of a character
				return at
			}
		}
		at, line = at+size, line[size:]
	}
	return at
}

// Range returns the range of a stretch of bytes.
func (l *Lines) Range(start, end int) Range {
	return Range{l.Position(start), l.Position(max(start, end))}
}

// Changed returns the text after a change, as a text of its own.
func Changed(text []byte, c TextDocumentContentChangeEvent, e Encoding) []byte {
	if c.Range == nil {
		return []byte(c.Text)
	}
	l := NewLines(text, e)
	start, end := l.Offset(c.Range.Start), l.Offset(c.Range.End)
	if end < start {
		start, end = end, start
	}
	return slices.Concat(text[:start], []byte(c.Text), text[end:])
}
