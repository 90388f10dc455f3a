package serve

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/synctest"
	"time"

	"vivary/cmd/internal/keys"
)

// await waits until something is so.
func (h *house) await(what string, so func() bool) {
	h.Helper()
	for end := time.Now().Add(20 * time.Second); !so(); time.Sleep(10 * time.Millisecond) {
		if time.Now().After(end) {
			h.Fatalf("%s: not within 20 s", what)
		}
	}
}

// TestWatch: what is written into a plan, a log or the file of keys is served a moment later,
// in files and folders that are new too, whichever way an editor writes it; a plan that was
// saved half changes no calendar.
func TestWatch(t *testing.T) {
	h := serving(t)
	ctx, cancel := context.WithCancel(t.Context())
	ended := make(chan struct{})
	go func() { h.Server.Run(ctx, h.Watch(ctx)); close(ended) }()
	defer func() { cancel(); <-ended }()
	path := h.calendar("evening")
	text := func() string { return body(t, h.ask("GET", path)) }
	time.Sleep(50 * time.Millisecond)

	h.put("collection.care.hcl", strings.Replace(begin, "19:30", "20:15", 1))
	h.await("an edit", func() bool { return strings.Contains(text(), "T201500") })
	good := text()
	h.put("tub.care.hcl", tub[:len(tub)/2])
	h.await("half a plan", func() bool { return !h.state.Load().house.Refused.IsZero() })
	if text() != good {
		t.Error("half a plan changed a calendar")
	}
	if err := os.WriteFile(filepath.Join(h.root, ".tub.tmp"), []byte(strings.Replace(tub, "tub-1", "tub-one", 1)+"enclosure \"tub-9\" {\n  formerly = \"tub-1\"\n}\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(h.root, ".tub.tmp"), []byte(strings.Replace(tub, "species", "title = \"Big tub\"\n  species", 1)), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.Rename(filepath.Join(h.root, ".tub.tmp"), filepath.Join(h.root, "tub.care.hcl")); err != nil {
		t.Fatal(err)
	}
	h.await("a file that takes another's place", func() bool { return strings.Contains(text(), "Big tub") })
	if err := os.MkdirAll(filepath.Join(h.root, "more/deep"), 0o755); err != nil {
		t.Fatal(err)
	}
	time.Sleep(300 * time.Millisecond) // a folder is watched once it is seen
	h.put("more/deep/one.care.hcl", strings.ReplaceAll(tub, "tub-1", "tub-2"))
	h.await("a folder that is new", func() bool { return len(h.state.Load().house.Result.Plan.Enclosures) == 2 })
	h.put("more/deep/2026.care.log", "2026-11-25 tub-2 fed\n")
	h.await("a log", func() bool { return len(h.state.Load().house.Result.Plan.Log) == 1 })
	if _, err := keys.Renew(h.disk, h.Keys, "calendar evening", bytes.NewReader(bytes.Repeat([]byte("0123456789abcdef"), 4))); err != nil {
		t.Fatal(err)
	}
	h.await("a renewed address", func() bool { return h.ask("GET", path).StatusCode == 404 })
	if h.ask("GET", h.calendar("evening")).StatusCode != 200 {
		t.Error("the new address leads nowhere")
	}
}

// TestQuiet: a build causes no build, or it would go on for ever.
func TestQuiet(t *testing.T) {
	h := serving(t)
	ctx, cancel := context.WithCancel(t.Context())
	defer cancel()
	changes := h.Watch(ctx)
	<-changes // it begins by saying that it has looked
	for range 3 {
		h.Rebuild(ctx)
	}
	select {
	case <-changes:
		t.Error("building is taken for a change")
	case <-time.After(600 * time.Millisecond):
	}
}

// TestTicksSettle: calendars are built a blink after the last of several ticks, after a while
// where somebody ticks on and on, and where the server ends nothing is waited for.
func TestTicksSettle(t *testing.T) {
	for _, x := range []struct {
		ticks int
		want  time.Duration
	}{{0, settle}, {5, 5*settle/2 + settle}, {1000, patience}} {
		synctest.Test(t, func(t *testing.T) {
			s := &Server{kick: make(chan struct{}, 1)}
			ctx, cancel := context.WithCancel(t.Context())
			go func() {
				for range x.ticks {
					select {
					case <-time.After(settle / 2):
						s.kick <- struct{}{}
					case <-ctx.Done():
						return
					}
				}
			}()
			begun := time.Now()
			s.quiet(ctx)
			if got := time.Since(begun); got != x.want {
				t.Errorf("after %d ticks it is waited for %v, not %v", x.ticks, got, x.want)
			}
			cancel()
			s.quiet(ctx)
			if got := time.Since(begun); got != x.want {
				t.Errorf("at the end it is waited for %v more", got-x.want)
			}
		})
	}
}
