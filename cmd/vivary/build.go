package main

import (
	"bytes"
	"errors"
	"fmt"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
	"vivary/cmd/internal/screen"
	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/plan/finding"
	"vivary/schema/wording"
)

func build(w *world, f *flags, args []string) int {
	root, err := w.root(f, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary build: %v\n", wording.Plain(err))
		return usage
	}
	dir := f.calendars(root)
	if there, err := afero.DirExists(w.disk, root); err != nil || !there {
		_, status := w.compiled(f, root, dir) // it says what is wrong
		return status
	}
	// The folder is held before anything is read: who waited for another build reads
	// the plan as it is then.
	folder, err := publish.Open(w.disk, dir, w.lock)
	if err != nil {
		fmt.Fprintf(w.err, "vivary build: %v\nNothing was written; calendars built before stay as they are.\n", wording.Plain(err))
		return refused
	}
	defer folder.Close()
	if folder.Unlocked != "" {
		fmt.Fprintf(w.err, "vivary build: %s cannot be locked (%s): let no other build run at the same time\n", filepath.ToSlash(dir), folder.Unlocked)
	}
	done := w.progress("building")
	defer done()
	r, status := w.compiled(f, root, dir)
	if status != fine {
		return status
	}
	if r.Refused() {
		done()
		if f.format == "json" {
			printJSON(w, builtForm(r, r.Findings, dir, nil, nil))
			return refused
		}
		return w.refuse(r, "Nothing was written; calendars built before stay as they are")
	}
	made, err := publishAll(w, r, folder, f.now == "")
	done()
	if err != nil {
		fmt.Fprintf(w.err, "vivary build: %v\n%s\n", wording.Plain(err), replaced(err))
		return refused
	}
	sweep(w, dir, made)
	found := slices.Clone(r.Findings)
	for _, m := range made {
		found = append(found, m.noisy...)
	}
	found = finding.Sort(r.Plan.Files, found)
	if f.format == "json" {
		printJSON(w, builtForm(r, found, dir, made, forgotten(w, dir, made)))
		return fine
	}
	if len(found) > 0 {
		_ = r.Printer().Print(w.err, found)
		fmt.Fprintln(w.err)
	}
	fmt.Fprintln(w.out, r.Verdict())
	inForce(w, r)
	for _, m := range made {
		fmt.Fprintf(w.out, "  %s  %s, %s\n", filepath.ToSlash(filepath.Join(dir, m.name)), m.state, wording.Bytes(m.bytes))
		if m.wrong != "" {
			fmt.Fprintf(w.out, "    %s\n", m.wrong)
		}
	}
	if !r.Remembers && len(r.Plan.Enclosures) > 0 {
		fmt.Fprintf(w.out, "  No calendar of before tells here which animals there were: whether one is missing from the plan is seen from the next build on\n")
	}
	for _, name := range forgotten(w, dir, made) {
		fmt.Fprintf(w.out, "  %s  stands still: no calendar of the plan writes it any more. Phones go on showing it until it is deleted here and taken off them\n", filepath.ToSlash(filepath.Join(dir, name)))
	}
	if link := subscribe(r, made); link != "" {
		fmt.Fprintf(w.out, "Once this folder is on the web, subscribe on a phone by the link\n  %s\n", link)
	}
	return fine
}

// subscribe is the link by which a phone subscribes to the first calendar, "" where it is
// not known where the folder will be on the web.
func subscribe(r *compile.Result, made []feed) string {
	web := r.Plan.About.Web
	if !web.Set() {
		return ""
	}
	return "webcal://" + strings.TrimPrefix(strings.TrimPrefix(web.V, "https://"), "http://") + "/" + made[0].name
}

// buildForm is what build prints as JSON.
type buildForm struct {
	envelope
	standingForm
	Findings  []findingForm  `json:"findings"`
	Calendars []calendarForm `json:"calendars"` // none where the plan is refused
	Forgotten []string       `json:"forgotten,omitempty"`
	Subscribe string         `json:"subscribe,omitempty"`
}

type calendarForm struct {
	File  string `json:"file"`
	State string `json:"state"` // new, changed or unchanged
	Bytes int    `json:"bytes"`
	Wrong string `json:"wrong,omitempty"` // with what stood there before
}

// builtForm is the form of a build, of one that was refused where nothing was made.
func builtForm(r *compile.Result, found []finding.Finding, dir string, made []feed, forgotten []string) buildForm {
	out := buildForm{begin("build"), howItStands(r), findingForms(r.Plan.Files, found), []calendarForm{}, nil, ""}
	for _, m := range made {
		out.Calendars = append(out.Calendars, calendarForm{filepath.ToSlash(filepath.Join(dir, m.name)), m.state, m.bytes, m.wrong})
	}
	for _, name := range forgotten {
		out.Forgotten = append(out.Forgotten, filepath.ToSlash(filepath.Join(dir, name)))
	}
	if len(made) > 0 {
		out.Subscribe = subscribe(r, made)
	}
	return out
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
		if filepath.Ext(name) != ".ics" || slices.ContainsFunc(made, func(m feed) bool { return m.name == name }) {
			continue
		}
		if text, err := publish.Head(w.disk, dir, name); err == nil && ical.Ours(text) {
			names = append(names, name)
		}
	}
	return names
}

// sweep takes away what builds of before left beside the calendars when they were cut
// off: they had one name for it.
func sweep(w *world, dir string, made []feed) {
	for _, m := range made {
		name := m.name + ".new"
		if text, err := publish.Head(w.disk, dir, name); err == nil && text != nil && (len(text) == 0 || ical.Ours(text)) {
			_ = w.disk.Remove(filepath.Join(dir, name))
		}
	}
}

// replaced says what became of the calendars when they could not all be put in place.
func replaced(err error) string {
	var some *publish.Partial
	if !errors.As(err, &some) {
		return "Nothing was replaced; calendars built before stay as they are."
	}
	text := "None was replaced yet"
	if len(some.Replaced) > 0 {
		text = "Replaced: " + strings.Join(some.Replaced, ", ")
	}
	return text + ". The others are ready beside the old ones: put right what is wrong and build again, and they are put in place."
}

// feed is what became of one calendar.
type feed struct {
	name  string // of its file
	bytes int
	state string            // new, changed or unchanged
	wrong string            // with what stood there, and where it is kept
	noisy []finding.Finding // that it is too large
}

// writers is how many feeds are worked on for each processor: while the disk takes
// one, another is made.
const writers = 4

// publishAll makes every calendar, several at a time, and replaces all together. ask says
// whether the clock is asked about.
func publishAll(w *world, r *compile.Result, folder *publish.Folder, ask bool) ([]feed, error) {
	batch := folder.Begin()
	all := feeds.Of(r)
	made := make([]feed, len(all))
	was := make([]lastFeed, len(all))
	var (
		mu    sync.Mutex
		wg    sync.WaitGroup
		first error
		next  int
	)
	one := func(i int, buf *[]byte) error {
		name := all[i].Name + ".ics"
		last, err := readLast(folder, name, r.Now)
		if before := all[i].Plan.Formerly; err == nil && last.memory == nil && before.Set() {
			// A calendar that was renamed goes on from what its old name told.
			last, err = readLast(folder, before.V+".ics", r.Now)
		}
		if err != nil {
			return err
		}
		was[i] = last
		memory := last.memory
		if memory == nil {
			// There may have been a feed of that name before, which somebody deleted.
			memory = ical.Salvage(nil, r.Now)
		}
		text, size, err := all[i].Sized((*buf)[:0], memory)
		*buf = text
		if err != nil {
			return err
		}
		made[i] = feed{name: name, bytes: len(text), state: "new", noisy: all[i].Noisy(size)}
		switch {
		case last.wrong != nil:
			made[i].state = "changed"
			if made[i].wrong, err = last.keep(batch, name); err != nil {
				return err
			}
		case last.memory != nil && last.name == name && bytes.Equal(text, last.text):
			made[i].state = "unchanged"
			return nil
		case last.memory != nil:
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
	if first == nil && ask {
		first = clockAsked(r, was)
	}
	if first != nil {
		batch.Abandon()
		return nil, first
	}
	return made, batch.Commit()
}

// steer writes to standard error what steers a terminal.
func (w *world) steer(sequence string) {
	if s, ok := w.err.(*screen.Screen); ok {
		s.Steer(sequence, w.live)
	}
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
				w.steer("\r")
				fmt.Fprintf(w.err, "%s, %d s ", what, int(time.Since(begun).Seconds()))
				shown = true
			case <-stop:
				if shown {
					w.steer("\r\x1b[K")
				}
				return
			}
		}
	})
	var once sync.Once
	return func() { once.Do(func() { close(stop); wg.Wait() }) }
}
