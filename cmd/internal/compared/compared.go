// Package compared reads and compiles the two sides of a comparison, and tries pieces of what
// is between them.
package compared

import (
	"slices"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/compile/compare"
	"vivary/plan"
	"vivary/plan/change"
	"vivary/plan/finding"
)

// Moment returns the present where the animals are; loc is nil where the plan does not say
// where that is.
type Moment func(loc *time.Location) (time.Time, error)

// Root is the folder of the collection on the disk of a side.
const Root = "."

// Side is one of two collections: all that is on its disk, below Root.
type Side struct {
	Disk afero.Fs
	// Sheets are those by which it is judged; nil for those of the program.
	Sheets *plan.Sheets
	// At is the moment as of which it is judged by itself; zero for that of the comparison.
	At time.Time
}

// Of compares two collections as of one moment: that of the second, else the present. Where the
// first has a moment of its own, what was is told as it was then. The error is for a disk that has no such folder,
// and for a moment that is none.
func Of(was, is Side, now Moment) (*compare.Report, error) {
	s := &sides{before: was, after: is}
	s.reader.Sheets = was.Sheets
	other := &s.reader
	if was.Sheets != is.Sheets {
		other = &plan.Reader{Sheets: is.Sheets}
	}
	b, foundB, err := other.Load(is.Disk, Root)
	if err != nil {
		return nil, err
	}
	a, foundA, err := s.reader.Load(was.Disk, Root)
	if err != nil {
		return nil, err
	}
	if s.now = is.At; s.now.IsZero() {
		if s.now, err = now(b.Location); err != nil {
			return nil, err
		}
	}
	s.was = compile.From(compile.Input{Plan: a, Loaded: foundA, Now: s.now})
	s.known = s.was.Known()
	after := s.compile(b, foundB, other == &s.reader)
	s.changes = change.Between(a, b)
	s.changes.Judged(sheets(was), sheets(is))
	return compare.Of(s.was, after, s.then(a, foundA), s.changes, s.try), nil
}

// then is the first as of its own moment, or nil where it has none.
func (s *sides) then(c *plan.Collection, found []finding.Finding) *compile.Result {
	if s.before.At.IsZero() {
		return nil
	}
	return compile.From(compile.Input{Plan: c, Loaded: found, Now: s.before.At})
}

func sheets(s Side) *plan.Sheets {
	if s.Sheets == nil {
		return plan.BuiltIn()
	}
	return s.Sheets
}

// sides are two collections, of which the first is read last.
type sides struct {
	before, after Side
	reader        plan.Reader // of the first; of both where they are judged by the same sheets
	now           time.Time
	was           *compile.Result
	known         []compile.Known
	changes       *change.Changes
}

// compile compiles what was read besides the first. What lived in that must be somewhere in it.
// kept says that the same reader has read it.
func (s *sides) compile(c *plan.Collection, found []finding.Finding, kept bool) *compile.Result {
	in := compile.Input{Plan: c, Loaded: found, Now: s.now, Known: s.known}
	if kept {
		in.Last = s.was
	}
	return compile.From(in)
}

// try compiles the first collection with some pieces made in it. Where one of them is of the
// sheets, it is judged by those of the second.
func (s *sides) try(pieces []int) *compile.Result {
	texts, ok := s.changes.With(pieces...)
	if !ok {
		return nil
	}
	reader, kept := &s.reader, true
	if slices.ContainsFunc(pieces, func(i int) bool { return s.changes.Pieces[i].Library }) {
		reader, kept = &plan.Reader{Sheets: s.after.Sheets}, false
	}
	reader.Open = texts
	c, found, err := reader.Load(s.before.Disk, Root)
	if err != nil {
		return nil
	}
	return s.compile(c, found, kept)
}

// Laid returns a disk that is another with the text of a file beside it: a plan laid over what
// is there, or lines of a log that come to it.
func Laid(disk afero.Fs, name string, text []byte) (afero.Fs, []finding.Finding, error) {
	var r plan.Reader
	c, _, err := r.Load(disk, Root)
	if err != nil {
		return nil, nil, err
	}
	texts, found, err := change.Over(c, name, text)
	if err != nil || len(found) > 0 {
		return nil, found, err
	}
	over := afero.NewMemMapFs()
	for path, text := range texts {
		if err := afero.WriteFile(over, path, text, 0o644); err != nil {
			return nil, nil, err
		}
	}
	return afero.NewCopyOnWriteFs(afero.NewReadOnlyFs(disk), over), nil, nil
}
