package serve

import (
	"context"
	"encoding/json"
	"net/http/httptest"
	"slices"
	"strings"
	"testing"

	"vivary/internal/oracles"
)

// running serves a house on loopback, and builds behind it when something changes.
func running(t *testing.T) (*house, string) {
	h := serving(t)
	ctx, cancel := context.WithCancel(t.Context())
	ended := make(chan struct{})
	go func() { h.Server.Run(ctx, h.Watch(ctx)); close(ended) }()
	t.Cleanup(func() { cancel(); <-ended })
	web := httptest.NewServer(h)
	t.Cleanup(web.Close)
	return h, web.URL
}

// statuses are those of the answers for calendars, in order.
func (h *house) statuses() (out []int) {
	for line := range strings.Lines(h.logged()) {
		var l struct {
			What   string
			Status int
		}
		if json.Unmarshal([]byte(line), &l) == nil && l.What == "feed" {
			out = append(out, l.Status)
		}
	}
	return out
}

// TestSubscribed: who subscribed with vdirsyncer to a server that runs sees with khal what is
// edited: entries move, and none is there twice. Judges: vdirsyncer and khal.
func TestSubscribed(t *testing.T) {
	h, web := running(t)
	s := oracles.Subscribe(t, "Europe/London")
	addresses := map[string]string{"evening": web + h.calendar("evening")}
	s.Sync(t, addresses)
	was := s.Shown(t, "2026-11-26", "2026-12-31")["evening"]
	n := s.Entries(t, "evening")
	before := h.ask("GET", h.calendar("evening")).Header.Get("Etag")
	h.put("collection.care.hcl", strings.Replace(begin, "19:30", "20:15", 1))
	h.await("an edit", func() bool { return h.ask("GET", h.calendar("evening")).Header.Get("Etag") != before })
	s.Sync(t, addresses)
	is := s.Shown(t, "2026-11-26", "2026-12-31")["evening"]
	if len(was) < 20 || len(is) != len(was) || s.Entries(t, "evening") != n {
		t.Fatalf("%d entries were %d, %d files were %d", len(is), len(was), s.Entries(t, "evening"), n)
	}
	for i := range is {
		if moved := was[i]; is[i].Day != moved.Day || is[i].Title != moved.Title || moved.At == "19:30" && is[i].At != "20:15" {
			t.Errorf("%v became %v", moved, is[i])
		}
	}
}

// TestDesktop: Thunderbird takes the calendar, is told a minute later that it has not changed
// (304), and after an edit shows the entries moved and none twice.
func TestDesktop(t *testing.T) {
	t.Parallel() // it waits most of the time
	h, web := running(t)
	path := h.calendar("evening")
	entries := strings.Count(body(t, h.ask("GET", path)), "BEGIN:VEVENT")
	d := oracles.NewDesktop(t, web+path)
	h.forget()
	var was []string
	d.While(t, "the calendar is there, and it is told that it is the same", func() bool {
		was = d.Entries(t)
		return len(was) == entries && slices.Contains(h.statuses(), 304)
	})
	before := h.ask("GET", path).Header.Get("Etag")
	h.put("collection.care.hcl", strings.Replace(begin, "19:30", "20:15", 1))
	h.await("an edit", func() bool { return h.ask("GET", path).Header.Get("Etag") != before })
	var is []string
	d.While(t, "the edit is there", func() bool {
		is = d.Entries(t)
		return len(is) == entries && !slices.Equal(is, was)
	})
	moved := 0
	for i := range is {
		a, b := strings.Fields(was[i]), strings.Fields(is[i])
		if a[0] != b[0] {
			t.Fatalf("%q became %q", was[i], is[i])
		}
		if a[1] != b[1] {
			moved++
		}
	}
	if moved < entries/2 {
		t.Errorf("%d of %d entries moved", moved, entries)
	}
}
