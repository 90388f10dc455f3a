package main

import (
	"bytes"
	"fmt"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/plan/finding"
	"vivary/schema/wording"
)

func build(w *world, f *flags, args []string) int {
	root, err := folder(f, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary build: %v\n", err)
		return usage
	}
	dir := f.out
	if dir == "" {
		dir = feedsIn(root)
	}
	done := w.progress("building")
	defer done()
	r, status := w.compiled(f, root, dir)
	if status != fine {
		return status
	}
	if r.Refused() {
		done()
		return w.refuse(r, "Nothing was written; calendars built before stay as they are")
	}
	made, err := publishAll(w, r, dir)
	done()
	if err != nil {
		fmt.Fprintf(w.err, "vivary build: %v\nNothing was replaced; calendars built before stay as they are.\n", err)
		return refused
	}
	p := finding.Printer{Files: r.Plan.Files, Color: w.color && w.live}
	found := slices.Clone(r.Findings)
	for _, m := range made {
		found = append(found, m.noisy...)
	}
	if len(found) > 0 {
		_ = p.Print(w.err, finding.Sort(r.Plan.Files, found))
		fmt.Fprintln(w.err)
	}
	fmt.Fprintln(w.out, r.Verdict())
	inForce(w, r)
	for _, m := range made {
		fmt.Fprintf(w.out, "  %s  %s, %s\n", filepath.ToSlash(filepath.Join(dir, m.name)), m.state, wording.Bytes(m.bytes))
	}
	for _, name := range forgotten(w, dir, made) {
		fmt.Fprintf(w.out, "  %s  stands still: no calendar of the plan writes it any more. Phones go on showing it until it is deleted here and taken off them\n", filepath.ToSlash(filepath.Join(dir, name)))
	}
	if web := r.Plan.About.Web; web.Set() {
		fmt.Fprintf(w.out, "Once this folder is on the web, subscribe on a phone by the link\n  webcal://%s/%s\n",
			strings.TrimPrefix(strings.TrimPrefix(web.V, "https://"), "http://"), made[0].name)
	}
	return fine
}

// forgotten returns the files of calendars that were published once and are no
// longer in the plan. They are not deleted: somebody may still live by them.
func forgotten(w *world, dir string, made []feed) (names []string) {
	files, err := afero.ReadDir(w.disk, dir)
	if err != nil {
		return nil // it was just written to
	}
	for _, f := range files {
		name := f.Name()
		if !f.Mode().IsRegular() || filepath.Ext(name) != ".ics" || slices.ContainsFunc(made, func(m feed) bool { return m.name == name }) {
			continue
		}
		if text, err := publish.Last(w.disk, dir, name); err == nil && ical.Ours(text) {
			names = append(names, name)
		}
	}
	return names
}

// feed is what became of one calendar.
type feed struct {
	name  string // of its file
	bytes int
	state string // new, changed or unchanged
	noisy []finding.Finding
}

// writers is how many feeds are worked on for each processor: while the disk takes
// one, another is made.
const writers = 4

// publishAll makes every calendar, several at a time, and replaces all together.
func publishAll(w *world, r *compile.Result, dir string) ([]feed, error) {
	batch, err := publish.Begin(w.disk, dir)
	if err != nil {
		return nil, err
	}
	all := feeds.Of(r)
	made := make([]feed, len(all))
	var (
		mu    sync.Mutex
		wg    sync.WaitGroup
		first error
		next  int
	)
	one := func(i int, buf *[]byte) error {
		name := all[i].Name + ".ics"
		last, err := publish.Last(w.disk, dir, name)
		if before := all[i].Plan.Formerly; err == nil && last == nil && before.Set() {
			// A calendar that was renamed goes on from what its old name told.
			last, err = publish.Last(w.disk, dir, before.V+".ics")
		}
		if err != nil {
			return fmt.Errorf("%q cannot be read: %w", filepath.Join(dir, name), err)
		}
		var m *ical.Memory
		if last != nil {
			if m, err = ical.Remember(last); err != nil {
				return fmt.Errorf("%q: %w. It is the memory of what phones were told; put back a whole copy, or move it away to begin anew", filepath.ToSlash(filepath.Join(dir, name)), err)
			}
		}
		text, size, err := all[i].Sized((*buf)[:0], m)
		*buf = text
		if err != nil {
			return err
		}
		made[i] = feed{name, len(text), "new", all[i].Noisy(size)}
		if last != nil && bytes.Equal(text, last) {
			made[i].state = "unchanged"
			return nil
		}
		if last != nil {
			made[i].state = "changed"
		}
		return batch.Stage(name, text)
	}
	for range min(writers*runtime.GOMAXPROCS(0), len(all)) {
		wg.Go(func() {
			var buf []byte
			for {
				mu.Lock()
				i := next
				next++
				stop := first != nil || i >= len(all)
				mu.Unlock()
				if stop {
					return
				}
				if err := one(i, &buf); err != nil {
					mu.Lock()
					if first == nil {
						first = err
					}
					mu.Unlock()
				}
			}
		})
	}
	wg.Wait()
	if first != nil {
		batch.Abandon()
		return nil, first
	}
	return made, batch.Commit()
}

// progress shows on a terminal that something long is going on, from the first
// second on. The function that it returns ends it; it may be called again.
func (w *world) progress(what string) func() {
	if !w.live {
		return func() {}
	}
	stop := make(chan struct{})
	var wg sync.WaitGroup
	wg.Go(func() {
		tick := time.NewTicker(time.Second)
		defer tick.Stop()
		begun, shown := time.Now(), false
		for {
			select {
			case <-tick.C:
				fmt.Fprintf(w.err, "\r%s, %d s ", what, int(time.Since(begun).Seconds()))
				shown = true
			case <-stop:
				if shown {
					fmt.Fprint(w.err, "\r\x1b[K")
				}
				return
			}
		}
	})
	var once sync.Once
	return func() { once.Do(func() { close(stop); wg.Wait() }) }
}
