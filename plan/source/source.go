// Package source keeps the texts that were read and the places in them. A place
// is a pair of byte offsets; lines and columns are made from it here and nowhere
// else.
package source

import (
	"bytes"
	"unicode/utf8"

	"github.com/apparentlymart/go-textseg/v15/textseg"
)

// ID names a file of a Set. The zero ID is no file.
type ID int32

// Place is a stretch of a file, from byte Start up to but not including End.
// The zero Place is nowhere: a value that nobody wrote.
type Place struct {
	File       ID
	Start, End int32
}

// Written reports whether the place is in a file.
func (p Place) Written() bool { return p.File != 0 }

// Set is the files of one run. Add is not safe for use at once from several
// goroutines; reading is.
type Set struct{ files []file }

type file struct {
	name string
	text []byte
}

// Add puts a file into the set. Its text is not copied and must not change.
func (s *Set) Add(name string, text []byte) ID {
	s.files = append(s.files, file{name, text})
	return ID(len(s.files))
}

// Fill gives a file that was added without one its text.
func (s *Set) Fill(id ID, text []byte) { s.files[id-1].text = text }

// Name returns the name of a file, or "" for none.
func (s *Set) Name(id ID) string {
	if id <= 0 || int(id) > len(s.files) {
		return ""
	}
	return s.files[id-1].name
}

// Text returns the text of a file.
func (s *Set) Text(id ID) []byte {
	if id <= 0 || int(id) > len(s.files) {
		return nil
	}
	return s.files[id-1].text
}

// Of returns the text of a place.
func (s *Set) Of(p Place) string { return string(s.Text(p.File)[p.Start:p.End]) }

// Len returns the number of files.
func (s *Set) Len() int { return len(s.files) }

// Position is a place as people read it.
type Position struct {
	File   string
	Line   int // from 1
	Column int // from 1, in characters as people count them
}

// Start returns the position at which p starts.
func (s *Set) Start(p Place) Position {
	text := s.Text(p.File)
	at := min(int(p.Start), len(text))
	line, begin := lineOf(text, at)
	return Position{File: s.Name(p.File), Line: line, Column: characters(text[begin:at]) + 1}
}

// Line returns the text of the line on which p starts, without its end, and the
// part of it that p covers, in characters from 0.
func (s *Set) Line(p Place) (text string, from, to int) {
	all := s.Text(p.File)
	at := min(int(p.Start), len(all))
	_, begin := lineOf(all, at)
	end := len(all)
	if i := bytes.IndexByte(all[begin:], '\n'); i >= 0 {
		end = begin + i
	}
	line := bytes.TrimRight(all[begin:end], "\r")
	from = characters(all[begin:at])
	stop := max(min(int(p.End), begin+len(line)), at)
	return string(line), from, from + characters(all[at:stop])
}

func lineOf(text []byte, at int) (line, begin int) {
	line = bytes.Count(text[:at], []byte{'\n'}) + 1
	begin = bytes.LastIndexByte(text[:at], '\n') + 1
	return line, begin
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

// Before orders places by file name, then by offset.
func (s *Set) Before(a, b Place) bool {
	if a.File != b.File {
		return s.Name(a.File) < s.Name(b.File)
	}
	if a.Start != b.Start {
		return a.Start < b.Start
	}
	return a.End < b.End
}
