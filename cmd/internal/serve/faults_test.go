package serve

import (
	"context"
	"fmt"
	"html"
	"maps"
	"net/http/httptest"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/builder"
	"vivary/cmd/internal/page"
	"vivary/cmd/internal/publish"
	"vivary/internal/faulty"
)

// meanwhile does something once, when a calendar is put in place.
type meanwhile struct {
	afero.Fs
	do func()
}

func (m *meanwhile) Rename(from, to string) error {
	if do := m.do; do != nil {
		m.do = nil
		do()
	}
	return m.Fs.Rename(from, to)
}

// TestTickWhileBuilding: what is ticked off while the calendars of before are written stays on
// the page once they are, and the next build has it.
func TestTickWhileBuilding(t *testing.T) {
	h := serving(t)
	real := h.disk
	h.put("tub.care.hcl", tub+"# changed\n")
	h.put("collection.care.hcl", begin+"calendar \"night\" {\n}\n")
	v := page.Visitor{Keeper: "lead", Writes: true}
	h.Disk = &meanwhile{real, func() {
		if out, err := h.note(t.Context(), v, []string{"2026-11-25 18:00 by lead tub-1 done water"}); err != nil || len(out.Written) != 1 {
			t.Error(out, err)
		}
	}}
	h.Rebuild(t.Context())
	h.Disk = real
	if n := len(h.state.Load().house.Result.Plan.Log); n != 1 {
		t.Errorf("%d lines are on the page", n)
	}
	select {
	case <-h.kick:
	default:
		t.Error("nothing is built behind a tick")
	}
	h.Rebuild(t.Context())
	if now := h.state.Load(); len(now.house.Result.Plan.Log) != 1 || now.feeds["night.ics"] == nil {
		t.Error("the next build lacks something")
	}
}

// TestTellsWhoWatches: what a server says of itself: ready, and since when it cannot write.
func TestTellsWhoWatches(t *testing.T) {
	h := serving(t)
	if got := h.ask("GET", "/healthz"); got.StatusCode != 200 {
		t.Error(got.Status)
	}
	good := body(t, h.ask("GET", h.calendar("evening")))
	h.Disk = afero.NewReadOnlyFs(h.disk)
	h.put("collection.care.hcl", strings.Replace(begin, "19:30", "20:15", 1))
	h.Rebuild(t.Context())
	if got := h.ask("GET", "/healthz"); got.StatusCode != 503 || !strings.Contains(body(t, got), "no calendar could be written since 2026-11-25") {
		t.Error(got.Status)
	}
	if body(t, h.ask("GET", h.calendar("evening"))) != good {
		t.Error("what could not be written is served")
	}
	h.Disk = h.disk
	h.Rebuild(t.Context())
	if got := h.ask("GET", "/healthz"); got.StatusCode != 200 {
		t.Error(got.Status)
	}
	if !strings.Contains(body(t, h.ask("GET", h.calendar("evening"))), "T201500") {
		t.Error("it is not served once it can be written")
	}
	if got := slices.Sorted(maps.Keys(h.state.Load().feeds)); !slices.Equal(got, []string{"evening.ics", "morning.ics"}) {
		t.Error(got)
	}
}

// TestTwoServers: two that serve one folder and one file of keys agree, whatever is edited and
// whoever of them builds it.
func TestTwoServers(t *testing.T) {
	a := serving(t)
	other := a.Options
	builds := a.Builder
	other.Builder = &builder.Builder{Root: builds.Root, Out: builds.Out, Now: builds.Now}
	lock := publish.Waiting(time.Minute, time.Now, func(string) {})
	a.Lock, other.Lock = lock, lock
	b := New(other)
	ctx, cancel := context.WithCancel(t.Context())
	var running sync.WaitGroup
	for _, s := range []*Server{a.Server, b} {
		s.Rebuild(ctx)
		changes := s.Watch(ctx)
		running.Go(func() { s.Run(ctx, changes) })
	}
	defer func() { cancel(); running.Wait() }()
	path := a.calendar("evening")
	time.Sleep(100 * time.Millisecond)
	for i := range 4 {
		at := fmt.Sprintf("20:%02d", 10+i)
		a.put("collection.care.hcl", strings.Replace(begin, "19:30", at, 1))
		want := "T" + strings.Replace(at, ":", "", 1) + "00"
		a.await("both have the edit", func() bool {
			w := httptest.NewRecorder()
			b.ServeHTTP(w, httptest.NewRequest("GET", path, nil))
			text := body(t, a.ask("GET", path))
			return strings.Contains(text, want) && w.Body.String() == text
		})
	}
}

// TestEveryCallFails: whatever call of the disk fails while it is built anew, once, a calendar
// is served whole, as it was or as it is to be, and the next build puts all right.
func TestEveryCallFails(t *testing.T) {
	for n := 1; ; n++ {
		h := serving(t)
		path := h.calendar("evening")
		old := body(t, h.ask("GET", path))
		h.put("collection.care.hcl", strings.Replace(begin, "19:30", "20:15", 1))
		real := h.disk
		bad := &faulty.Disk{Fs: real, At: n}
		h.Disk, h.journal.Disk = bad, bad
		h.Rebuild(t.Context())
		h.Disk, h.journal.Disk = real, real
		now := body(t, h.ask("GET", path))
		if now != old && (!strings.Contains(now, "T201500") || strings.Contains(now, "T193000")) {
			t.Fatalf("call %d, %s: a calendar is neither the old nor the new one", n, bad.What)
		}
		for _, page := range []string{"", "week", "findings", "tank/tub-1"} {
			if got := h.ask("GET", "/k/"+string(h.state.Load().ring.Keepers["lead"].Key)+"/"+page); got.StatusCode != 200 {
				t.Fatalf("call %d: the page %q is not there", n, page)
			}
		}
		h.later(time.Minute)
		h.Rebuild(t.Context())
		if now := body(t, h.ask("GET", path)); !strings.Contains(now, "T201500") {
			t.Fatalf("call %d: the next build does not put it right: %s", n, h.logged())
		}
		if got := h.ask("GET", "/healthz"); got.StatusCode != 200 {
			t.Fatalf("call %d: %s", n, body(t, got))
		}
		if bad.What == "" {
			t.Logf("%d calls", n-1)
			return
		}
	}
}

// TestPagesSayWhatCannotBeWritten: while calendars cannot be written every page of a keeper
// says so at once, since when and why, and goes on with the plan as it is; a visitor at a tank
// is told nothing of it, and once there is room it is over.
func TestPagesSayWhatCannotBeWritten(t *testing.T) {
	h := serving(t)
	real, ring := h.disk, h.state.Load().ring
	home := "/k/" + string(ring.Keepers["lead"].Key) + "/"
	label := h.state.Load().house.Label("tub-1")
	says := func(path string) string {
		t.Helper()
		got := h.ask("GET", path)
		text := body(t, got)
		if got.StatusCode != 200 {
			t.Errorf("%s: %s", path, got.Status)
		}
		_, said, ok := strings.Cut(text, "<b>Calendars cannot be written</b> ")
		if said, _, _ = strings.Cut(said, "</aside>"); !ok {
			return ""
		}
		return html.UnescapeString(said)
	}
	edit := func(at string) {
		h.put("collection.care.hcl", strings.Replace(begin, "19:30", at, 1))
		h.later(time.Hour)
		h.Rebuild(t.Context())
	}
	for _, path := range []string{"", "week", "tanks", "tank/tub-1", "calendars", "findings"} {
		if said := says(home + path); said != "" {
			t.Errorf("%s: said of a good build: %s", path, said)
		}
	}
	h.Disk = &faulty.Disk{Fs: real, Full: h.Builder.Out}
	edit("20:15")
	for _, path := range []string{"", "week", "tanks", "tank/tub-1", "calendars", "findings"} {
		said := says(home + path)
		for _, want := range []string{"since Wed 25 Nov, 19:00.", "Phones show them as they were on Wed 25 Nov, 18:00", "go by them", "the disk is full"} {
			if !strings.Contains(said, want) {
				t.Errorf("%s lacks %q: %s", path, want, said)
			}
		}
	}
	if text := body(t, h.ask("GET", home)); !strings.Contains(text, "20:15") {
		t.Error("the page is not of the plan as it is")
	}
	if out, err := h.note(t.Context(), page.Visitor{Keeper: "lead", Writes: true}, []string{"2026-11-25 18:00 by lead tub-1 done water"}); err != nil || len(out.Written) != 1 || says(home) == "" {
		t.Error("a tick is not taken, or the page is silent after it", err)
	}
	if text := body(t, h.ask("GET", label)); strings.Contains(text, "cannot be written") {
		t.Error("a visitor is told of it")
	}
	if wait := h.untilNext(); wait > time.Minute {
		t.Errorf("it is tried again after %v", wait)
	}
	h.Disk = &faulty.Disk{Fs: real, At: 1, Dead: true}
	edit("20:45")
	if said := says(home); !strings.Contains(said, "since Wed 25 Nov, 19:00.") || !strings.Contains(said, "these pages are of before too") || strings.Contains(said, "go by them") {
		t.Errorf("nothing can be read: %s", said)
	}
	h.Disk = real
	h.Rebuild(t.Context())
	if said := says(home); said != "" || h.untilNext() <= time.Minute {
		t.Errorf("it is over: %s", said)
	}

	// A server that begins then has pages too.
	h.Disk = &faulty.Disk{Fs: real, Full: h.Builder.Out}
	h.put("collection.care.hcl", begin)
	h.Server = New(h.Options)
	h.Rebuild(t.Context())
	if said := says(home); !strings.Contains(said, "as they were last") {
		t.Errorf("begun anew: %s", said)
	}
}
