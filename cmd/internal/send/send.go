// Package send puts the calendars of a collection where they are served from: into a
// folder, over SFTP into one of another machine, or into object storage that speaks S3.
// It builds nothing and serves nothing.
//
// A manifest in the target says what was put there, so that only what changed is sent. Of
// each file it has what the target itself said of it (its mark), so that what was changed,
// lost or half done there is seen and sent again. It decides what to send and never what
// is true: without one, all is sent.
package send

import (
	"bytes"
	"compress/gzip"
	"errors"
	"fmt"
	"io"
	"iter"
	"maps"
	"path"
	"slices"
	"strings"

	"vivary/compile/ical"
)

// Order is what is to be done with the calendars of a target.
type Order struct {
	Paths  map[string][]string // of the calendars, by name: each is put under all of its paths
	Remove bool                // take away what was put there once and is no calendar any more
	Try    bool                // only look what would be done

	Sending func(done, all int, path string) // is told of each file before it goes; may be nil
}

// paths are all of them.
func (o *Order) paths() iter.Seq[string] {
	return func(yield func(string) bool) {
		for _, all := range o.Paths {
			for _, p := range all {
				if !yield(p) {
					return
				}
			}
		}
	}
}

// Report is what was done, or with Try would be. It is also right as far as it goes where
// there is an error.
type Report struct {
	Calendars []Outcome
	Removed   []string // paths
	Standing  []string // paths of what was put there once, is no calendar any more, and was not removed
	Others    []string // paths of such that somebody else has changed since: they are never removed
	Damaged   bool     // the manifest could not be read
	Files     int      // that were stored
	Bytes     int      // in them
}

// Outcome is what became of a calendar.
type Outcome struct {
	Name, Path string
	State      string // new, changed or unchanged; "" where it did not come to that
	Bytes      int    // of the calendar
	Stored     int    // of all of its files
}

// ErrOther says that a target has the calendars of another collection.
var ErrOther = errors.New("the calendars of another collection are there")

// work is a publish that is under way.
type work struct {
	to     Target
	order  Order
	all    []Calendar
	was    manifest
	stands map[string]string // marks by path
	report Report
}

// Publish puts calendars into a target, and then the manifest.
func Publish(to Target, all []Calendar, order Order) (*Report, error) {
	w := &work{to: to, order: order, all: all}
	if !order.Try {
		release, err := to.Hold()
		if err != nil {
			return &w.report, err
		}
		defer release()
	}
	err := w.publish()
	return &w.report, err
}

func (w *work) publish() (err error) {
	if w.stands, err = w.to.List(); err != nil {
		return err
	}
	text, err := w.to.Read(manifestName)
	if err != nil {
		return err
	}
	w.was, w.report.Damaged = readManifest(text)
	ours := collectionsOf(w.all)
	if c := w.was.Collection; c != "" && len(ours) > 0 && !slices.Contains(ours, c) {
		return fmt.Errorf("%w: name another folder for these. Where it is the same collection under a new name, delete %s there and publish again", ErrOther, manifestName)
	}
	changed, err := w.compare()
	if err != nil {
		return err
	}
	gone, err := w.gone()
	if err != nil {
		return err
	}
	if w.order.Try {
		w.tried(changed, gone)
		return nil
	}
	next := w.was
	if len(ours) > 0 {
		next.Collection = ours[0]
	}
	if err := w.store(&next, changed); err != nil {
		return err
	}
	if w.order.Remove {
		for _, p := range gone {
			if err := w.to.Remove(p); err != nil {
				return fmt.Errorf("%s cannot be removed: %w", Shown(p), err)
			}
			next.drop(sum([]byte(p)))
			w.report.Removed = append(w.report.Removed, p)
		}
	} else {
		w.report.Standing = gone
	}
	w.forget(&next)
	if now := next.text(); !bytes.Equal(now, text) {
		return w.put(now)
	}
	return nil
}

// compare finds the files that have to be sent, and refuses where one would replace what
// is not ours.
func (w *work) compare() (changed []File, err error) {
	for _, c := range w.all {
		for _, p := range w.order.Paths[c.Name] {
			out := Outcome{Name: c.Name, Path: p, State: "unchanged", Bytes: len(c.Text)}
			of := files(w.to.Forms(), p, c.Text)
			if err := w.compareOne(&out, of); err != nil {
				return nil, err
			}
			if out.State != "unchanged" {
				// All forms go together, so that they are of one build.
				changed = append(changed, of...)
			}
			w.report.Calendars = append(w.report.Calendars, out)
		}
	}
	return changed, nil
}

// compareOne finds what has to become of a calendar at one of its paths, in all its forms.
func (w *work) compareOne(out *Outcome, of []File) error {
	for i := range of {
		e, known := w.was.of(of[i].Path)
		mark, there := w.stands[of[i].Path]
		out.Stored += len(of[i].Text)
		switch {
		case i == 0 && !there:
			out.State = "new"
		case !there, !known, e.Mark != mark, !e.sameAs(of[i].entry()):
			out.State = state(out.State)
		}
		if there && (!known || e.Mark != mark) {
			if err := w.ours(of[i].Path); err != nil {
				return err
			}
		}
	}
	return nil
}

// state is changed, unless it is new already.
func state(is string) string {
	if is == "new" {
		return is
	}
	return "changed"
}

// ErrForeign says that a file in a target is not one of vivary's.
var ErrForeign = errors.New("it is there already, and vivary did not make it")

// ours returns an error where what stands under a path is no calendar of vivary's.
func (w *work) ours(p string) error {
	text, err := w.to.Read(p)
	if err != nil {
		return err
	}
	if text != nil && !isOurs(text) {
		return fmt.Errorf("%s cannot be replaced: %w. Move it away, or name another folder", Shown(p), ErrForeign)
	}
	return nil
}

// isOurs reports whether a file is a calendar of vivary's, compressed or not. An empty one
// is nobody's.
func isOurs(text []byte) bool {
	if bytes.HasPrefix(text, []byte{0x1f, 0x8b}) {
		r, err := gzip.NewReader(bytes.NewReader(text))
		if err != nil {
			return false
		}
		text, _ = io.ReadAll(io.LimitReader(r, 1<<20)) // its head is enough
	}
	return len(text) == 0 || ical.Ours(text)
}

// gone are the paths of what was put there, stands there still and is no calendar any
// more. What somebody else has changed since is not among them.
func (w *work) gone() (gone []string, err error) {
	wanted := map[string]bool{}
	for p := range w.order.paths() {
		for _, form := range w.to.Forms() {
			wanted[p+form.Suffix] = true
		}
	}
	for _, p := range slices.Sorted(maps.Keys(w.stands)) {
		e, known := w.was.of(p)
		switch {
		case !known || wanted[p]:
			continue
		case e.Mark != w.stands[p]:
			text, err := w.to.Read(p)
			if err != nil {
				return nil, err
			}
			if !isOurs(text) {
				w.report.Others = append(w.report.Others, p)
				continue
			}
		}
		gone = append(gone, p)
	}
	return gone, nil
}

// tried says what would be done.
func (w *work) tried(changed []File, gone []string) {
	for i := range changed {
		w.report.Files++
		w.report.Bytes += len(changed[i].Text)
	}
	if w.order.Remove {
		w.report.Removed = gone
	} else {
		w.report.Standing = gone
	}
}

// store sends the files that changed. What is not known in the manifest yet is put into it
// first, without a sum: should it come to stand there and no more, it is known whose it is.
func (w *work) store(next *manifest, changed []File) error {
	promised := false
	for i := range changed {
		if _, known := next.of(changed[i].Path); !known {
			promised = true
			next.set(entry{Path: sum([]byte(changed[i].Path)), Name: nameOf(changed[i].Path), Type: changed[i].Type, Cache: changed[i].Cache})
		}
	}
	if promised {
		if err := w.put(next.text()); err != nil {
			return err
		}
	}
	if len(changed) == 0 {
		return nil
	}
	sending := func(i int) {
		if w.order.Sending != nil {
			w.order.Sending(i, len(changed), changed[i].Path)
		}
	}
	return w.to.Put(changed, sending, func(i int, mark string) {
		e := changed[i].entry()
		e.Mark = mark
		next.set(e)
		w.report.Files++
		w.report.Bytes += len(changed[i].Text)
	})
}

// put stores the manifest.
func (w *work) put(text []byte) error {
	f := File{Path: manifestName, Type: "application/json", Cache: "no-store", Text: text}
	return w.to.Put([]File{f}, func(int) {}, func(int, string) {})
}

// forget drops what is not there any more and is not wanted either.
func (w *work) forget(next *manifest) {
	keep := map[string]bool{}
	for p := range w.stands {
		keep[sum([]byte(p))] = true
	}
	for p := range w.order.paths() {
		for _, form := range w.to.Forms() {
			keep[sum([]byte(p+form.Suffix))] = true
		}
	}
	next.Files = slices.DeleteFunc(slices.Clone(next.Files), func(e entry) bool { return !keep[e.Path] })
}

// collectionsOf returns by which names calendars know their collection, the last made
// first. One that a collection had before stands in calendars that nobody writes any more.
func collectionsOf(all []Calendar) (ids []string) {
	byAge := slices.Clone(all)
	slices.SortStableFunc(byAge, func(a, b Calendar) int {
		_, _, x := ical.ReadHere(a.Text)
		_, _, y := ical.ReadHere(b.Text)
		return y.Compare(x)
	})
	for _, c := range byAge {
		if id, _, _ := ical.ReadHere(c.Text); id != "" && !slices.Contains(ids, id) {
			ids = append(ids, id)
		}
	}
	return ids
}

func nameOf(p string) string { return path.Base(p) }

// inPlace reports whether a path is of the form of those under which calendars are put.
func inPlace(p string) bool { return stored.MatchString(p) && !strings.Contains(p, "\\") }
