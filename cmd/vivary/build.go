package main

import (
	"errors"
	"fmt"
	"path/filepath"
	"strings"
	"sync"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/builder"
	"vivary/cmd/internal/publish"
	"vivary/cmd/internal/screen"
	"vivary/compile/sarif"
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
		_, status := w.compiled(f, root) // it says what is wrong
		return status
	}
	done := w.progress("building")
	defer done()
	b := w.builder(f, root)
	built, err := b.Build(w.disk, w.lock, f.now == "")
	done()
	if built != nil && built.Unlocked != "" {
		fmt.Fprintf(w.err, "vivary build: %s cannot be locked (%s): let no other build run at the same time\n", filepath.ToSlash(dir), built.Unlocked)
	}
	switch {
	case built == nil:
		fmt.Fprintf(w.err, "vivary build: %v\nNothing was written; calendars built before stay as they are.\n", wording.Plain(err))
		return refused
	case built.Result == nil:
		fmt.Fprintf(w.err, "vivary: %v\n", wording.Plain(err))
		return usage
	case err != nil:
		fmt.Fprintf(w.err, "vivary build: %v\n%s\n", wording.Plain(err), replaced(err))
		return refused
	}
	r, found := built.Result, built.Findings()
	if f.format != "text" {
		if f.format == "json" {
			printJSON(w, builtForm(built, found, dir))
		} else {
			printJSON(w, sarif.Of(r, found, ourselves(root)))
		}
		if r.Refused() {
			return refused
		}
		return fine
	}
	if r.Refused() {
		return w.refuse(r, "Nothing was written; calendars built before stay as they are")
	}
	if len(found) > 0 {
		_ = r.Printer().Print(w.err, found)
		fmt.Fprintln(w.err)
	}
	fmt.Fprintln(w.out, r.Verdict())
	inForce(w, r)
	for _, m := range built.Calendars {
		fmt.Fprintf(w.out, "  %s  %s, %s\n", filepath.ToSlash(filepath.Join(dir, m.File)), m.State, wording.Bytes(m.Bytes))
		if m.Wrong != "" {
			fmt.Fprintf(w.out, "    %s\n", m.Wrong)
		}
	}
	if !r.Remembers && len(r.Plan.Enclosures) > 0 {
		fmt.Fprintf(w.out, "  No calendar of before tells here which animals there were: whether one is missing from the plan is seen from the next build on\n")
	}
	for _, name := range built.Forgotten {
		fmt.Fprintf(w.out, "  %s  stands still: no calendar of the plan writes it any more. Phones go on showing it until it is deleted here and taken off them\n", filepath.ToSlash(filepath.Join(dir, name)))
	}
	if link := subscribe(built); link != "" {
		fmt.Fprintf(w.out, "Once this folder is on the web, subscribe on a phone by the link\n  %s\n", link)
	}
	return fine
}

// subscribe is the link by which a phone subscribes to the first calendar, "" where it is
// not known where the folder will be on the web.
func subscribe(b *builder.Built) string {
	web := b.Result.Plan.About.Web
	if !web.Set() {
		return ""
	}
	return "webcal://" + strings.TrimPrefix(strings.TrimPrefix(web.V, "https://"), "http://") + "/" + b.Calendars[0].File
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

// builtForm is the form of a build.
func builtForm(b *builder.Built, found []finding.Finding, dir string) buildForm {
	r := b.Result
	out := buildForm{begin("build"), howItStands(r), findingForms(r.Plan.Files, found), []calendarForm{}, nil, ""}
	for _, m := range b.Calendars {
		out.Calendars = append(out.Calendars, calendarForm{filepath.ToSlash(filepath.Join(dir, m.File)), string(m.State), m.Bytes, m.Wrong})
	}
	for _, name := range b.Forgotten {
		out.Forgotten = append(out.Forgotten, filepath.ToSlash(filepath.Join(dir, name)))
	}
	if len(b.Calendars) > 0 {
		out.Subscribe = subscribe(b)
	}
	return out
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
