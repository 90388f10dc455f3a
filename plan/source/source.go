// Package source keeps the texts that were read and the places in them. A place
// is a pair of byte offsets; lines and columns are made from it here and nowhere
// else.
package source

import (
	"bytes"
	"sync"
	"unicode/utf8"
)

// ID names a file of a Set. The zero ID is no file; ids below zero are files of the
// Shelf beneath it.
type ID int32

// Place is a stretch of a file, from byte Start up to but not including End.
// The zero Place is nowhere: a value that nobody wrote.
type Place struct {
	File       ID
	Start, End int32
}

// Written reports whether the place is in a file.
func (p Place) Written() bool { return p.File != 0 }

// Set is the files of one run. The zero Set is ready to use. Add and Put are not
// safe for use at once from several goroutines; reading is.
type Set struct {
	files []file // of ID i+1
	n     int
	shelf *Shelf
}

type file struct {
	name  string
	text  []byte
	lines func() *lines
}

// Shelf is files that are there in every run, under ids that are the same in each:
// what was read from them once can be shared by all.
type Shelf struct{ files []shelved }

type shelved struct {
	name string
	text func() []byte
}

// Over returns an empty set with the files of a shelf beneath its own.
func Over(shelf *Shelf) *Set { return &Set{shelf: shelf} }

// Add puts a file on the shelf. Its text is asked for when it is needed, by
// whichever goroutine needs it, and is the same each time.
func (s *Shelf) Add(name string, text func() []byte) ID {
	s.files = append(s.files, shelved{name, text})
	return ID(-len(s.files))
}

func (s *Shelf) at(id ID) (shelved, bool) {
	if s == nil || id >= 0 || -int(id) > len(s.files) {
		return shelved{}, false
	}
	return s.files[-int(id)-1], true
}

// Add puts a file into the set. Its text is not copied and must not change.
func (s *Set) Add(name string, text []byte) ID {
	id := ID(len(s.files) + 1)
	s.Put(id, name, text)
	return id
}

// Put puts a file into the set under an id above zero that it is to have, so that a
// file can keep the one it had in another set. A set can have gaps.
func (s *Set) Put(id ID, name string, text []byte) {
	if n := int(id) - len(s.files); n > 0 {
		s.files = append(s.files, make([]file, n)...)
	}
	s.files[id-1] = file{name, text, sync.OnceValue(func() *lines { return newLines(text) })}
	if text != nil {
		s.n++
	}
}

// Name returns the name of a file, or "" for none.
func (s *Set) Name(id ID) string {
	if id > 0 && int(id) <= len(s.files) {
		return s.files[id-1].name
	}
	f, _ := s.shelf.at(id)
	return f.name
}

// Files are the set's own files.
func (s *Set) Files() (ids []ID) {
	for i := range s.files {
		if s.files[i].name != "" {
			ids = append(ids, ID(i+1))
		}
	}
	return ids
}

// Text returns the text of a file.
func (s *Set) Text(id ID) []byte {
	if id > 0 && int(id) <= len(s.files) {
		return s.files[id-1].text
	}
	if f, ok := s.shelf.at(id); ok {
		return f.text()
	}
	return nil
}

// Of returns the text of a place.
func (s *Set) Of(p Place) string { return string(s.Text(p.File)[p.Start:p.End]) }

// Len returns the number of the set's own files.
func (s *Set) Len() int { return s.n }

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
	l := s.lines(p.File)
	line, begin := l.of(text, at)
	return Position{File: s.Name(p.File), Line: line, Column: l.characters(text, begin, at) + 1}
}

// End returns the position before which p ends.
func (s *Set) End(p Place) Position { return s.Start(Place{File: p.File, Start: max(p.Start, p.End)}) }

// Line returns the text of the line on which p starts, without its end, and the part of
// it that p covers, in characters from 0. Of a very long line it is what stands around
// where p starts.
func (s *Set) Line(p Place) (text string, from, to int) {
	all := s.Text(p.File)
	at := min(int(p.Start), len(all))
	_, begin := s.lines(p.File).of(all, at)
	begin = max(begin, at-far)
	for begin < at && !utf8.RuneStart(all[begin]) {
		begin++
	}
	end := min(at+far, len(all))
	if i := bytes.IndexByte(all[at:end], '\n'); i >= 0 {
		end = at + i
	}
	line := bytes.TrimRight(all[begin:end], "\r")
	from = characters(all[begin:at])
	stop := max(min(int(p.End), begin+len(line)), at)
	return string(line), from, from + characters(all[at:stop])
}

// lines returns the lines of a file, which are found when they are first asked for.
func (s *Set) lines(id ID) *lines {
	if id > 0 && int(id) <= len(s.files) && s.files[id-1].lines != nil {
		return s.files[id-1].lines()
	}
	return newLines(s.Text(id))
}

// Before orders places by file name, then by offset.
func (s *Set) Before(a, b Place) bool {
	if a.File != b.File {
		if m, n := s.Name(a.File), s.Name(b.File); m != n {
			return m < n
		}
		return a.File < b.File
	}
	if a.Start != b.Start {
		return a.Start < b.Start
	}
	return a.End < b.End
}
