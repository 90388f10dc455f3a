package main

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"maps"
	"path/filepath"
	"slices"
	"strings"

	"github.com/rogpeppe/go-internal/diff"
	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
	"vivary/compile"
	"vivary/compile/level"
	"vivary/schema/wording"
)

// levelWork proposes other days for care, so that no day is longer than there is, and with
// --write writes them into the plan.
func levelWork(w *world, f *flags, args []string) int {
	root, err := w.root(f, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary level: %v\n", wording.Plain(err))
		return usage
	}
	b := w.builder(f, root)
	r, err := b.Compile(w.disk)
	if err != nil {
		fmt.Fprintf(w.err, "vivary level: %v\n", wording.Plain(err))
		return usage
	}
	if r.Refused() || r.Roster == nil {
		return w.refuse(r, "A plan that is refused is not laid out anew: put this right")
	}
	var failed error
	l := level.Of(r, func(texts map[string][]byte) *compile.Result {
		over := afero.NewMemMapFs()
		for path, text := range texts {
			if failed = cmp.Or(failed, afero.WriteFile(over, filepath.FromSlash(path), text, 0o644)); failed != nil {
				return nil
			}
		}
		tried, err := b.Compile(afero.NewCopyOnWriteFs(afero.NewReadOnlyFs(w.disk), over))
		failed = cmp.Or(failed, err)
		return tried
	})
	if failed != nil {
		fmt.Fprintf(w.err, "vivary level: %v\n", wording.Plain(failed))
		return refused
	}
	was, written := before(r, l), f.write && len(l.Moves) > 0
	if written {
		if err := w.swapAll(was, l.Texts); err != nil {
			fmt.Fprintf(w.err, "vivary level: %v. The plan is as it was: run it again.\n", wording.Plain(err))
			return refused
		}
	}
	if f.format == "json" {
		printJSON(w, newLevelForm(l, written))
		return fine
	}
	w.tellLayout(l)
	if len(l.Moves) == 0 {
		return fine
	}
	if !written {
		w.patch(root, was, l.Texts)
		fmt.Fprintf(w.out, "\nNothing was written. vivary level --write writes it.\n")
		return fine
	}
	for _, path := range slices.Sorted(maps.Keys(l.Texts)) {
		fmt.Fprintln(w.out, path)
	}
	fmt.Fprintln(w.out, "Phones learn of it by vivary build. Do that before the next vivary level: what they were shown says when each care was last done.")
	return fine
}

// before are the files that a layout changes, as they were read.
func before(r *compile.Result, l *level.Layout) map[string][]byte {
	out := map[string][]byte{}
	for _, id := range r.Plan.Files.Files() {
		if name := r.Plan.Files.Name(id); l.Texts[name] != nil {
			out[name] = r.Plan.Files.Text(id)
		}
	}
	return out
}

// patch prints what would change, in the form that git apply and patch take in the folder of
// the collection.
func (w *world) patch(root string, was, is map[string][]byte) {
	for _, path := range slices.Sorted(maps.Keys(is)) {
		name := path
		if rel, err := filepath.Rel(root, filepath.FromSlash(path)); err == nil {
			name = filepath.ToSlash(rel)
		}
		text := diff.Diff("a/"+name, was[path], "b/"+name, is[path])
		_, rest, _ := bytes.Cut(text, []byte{'\n'}) // its first line is the command's own
		fmt.Fprintf(w.out, "\n%s", rest)
	}
}

// swapAll writes files in place of what was read of them: all, or where one has been changed
// meanwhile none.
func (w *world) swapAll(was, is map[string][]byte) error {
	paths := slices.Sorted(maps.Keys(is))
	for _, path := range paths {
		now, err := afero.ReadFile(w.disk, path)
		if err == nil && !bytes.Equal(now, was[path]) {
			err = publish.ErrChanged
		}
		if err != nil {
			return fmt.Errorf("%q cannot be written: %w", path, err)
		}
	}
	for i, path := range paths {
		err := publish.Swap(w.disk, path, was[path], is[path])
		if err == nil {
			continue
		}
		for _, done := range paths[:i] {
			err = errors.Join(err, publish.Swap(w.disk, done, is[done], was[done]))
		}
		return err
	}
	return nil
}

// tellLayout says how long the days were and would be, and what stands in the way.
func (w *world) tellLayout(l *level.Layout) {
	if len(l.Was) == 0 {
		fmt.Fprintln(w.out, "Nothing is laid out: neither has a keeper a budget, nor a round a time (within). Write how long there is on one day: budget = \"60 min\" in a keeper block.")
		return
	}
	for i := range l.Was {
		was, is := &l.Was[i], &l.Is[i]
		name := strings.ToUpper(was.Shown()[:1]) + was.Shown()[1:]
		switch {
		case was.Over == 0:
			fmt.Fprintf(w.out, "%s: at most %d min a day, of %d.\n", name, was.Most, was.Cap)
			continue
		case was.Borne:
			fmt.Fprintf(w.out, "%s: too long on %s of the year (at most %d min, of %d), which is left so.\n", name, wording.Count(was.Over, "day", "days"), was.Most, was.Cap)
			continue
		case is.Most < was.Most || is.Over < was.Over:
			fmt.Fprintf(w.out, "%s: was %d min on %s, now at most %d; of %d min there are (%s too long, now %d).\n", name, was.Most, was.On.Words(), is.Most, was.Cap, wording.Count(was.Over, "day", "days"), is.Over)
		default:
			fmt.Fprintf(w.out, "%s: %d min on %s, of %d there are (%s too long).\n", name, was.Most, was.On.Words(), was.Cap, wording.Count(was.Over, "day", "days"))
		}
		week, bound := was.Week(), was.Bound()
		switch {
		case bound > 7:
			fmt.Fprintf(w.out, "  About %d min a week are more than %d on each of seven days: no layout can do it. A longer time, or somebody else for some of it.\n", week, was.Cap)
			continue
		default:
			fmt.Fprintf(w.out, "  About %d min a week: at least %s.\n", week, wording.Count(bound, "day", "days"))
		}
		if is.Over > 0 {
			w.tellStays(l, is)
		}
	}
	if len(l.Kept) > 0 {
		fmt.Fprintf(w.out, "Left as it is, since a need would not have been met in time, or something else would have been found: %s.\n", wording.And(l.Kept))
	}
	if n := len(l.Moves); n > 0 {
		fmt.Fprintf(w.out, "%s on other days.\n", wording.Count(n, "care would stand", "cares would stand"))
	}
}

// tellStays says why a day is too long all the same.
func (w *world) tellStays(l *level.Layout, m *level.Measure) {
	fixed := 0
	for _, s := range m.Stays {
		fixed += s.Minutes
	}
	if fixed > 0 {
		fmt.Fprintf(w.out, "  On %s %d min cannot be moved:\n", m.On.Words(), fixed)
	}
	for _, s := range m.Stays {
		fmt.Fprintf(w.out, "    %d min: %s\n", s.Minutes, s.Why)
	}
	switch {
	case m.Alone == level.Never:
		fmt.Fprintf(w.out, "  %s take more than half of a day's time, so that one of them fits on a day. They would take %.2f of all days, each as seldom as its need allows: that cannot be done.\n", wording.Count(len(m.Large), "care", "cares"), level.Density(m.Large))
	case fixed > m.Cap:
		fmt.Fprintln(w.out, "  That alone is more than there is. A window (window = \"2 days\") lets care on days of the week be moved.")
	case l.Best:
		fmt.Fprintln(w.out, "  All other places within windows and needs were tried: there is no better layout.")
	default:
		fmt.Fprintln(w.out, "  The rest has no day with room for it within its window and what its needs allow, as far as was tried.")
	}
}
