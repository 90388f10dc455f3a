//go:build unix

package caldav

import (
	"context"
	"slices"
	"strings"
	"testing"
)

// A list shows what is due, a second run changes nothing, what is somebody else's stays as it
// is to the byte, and each app's way of ticking becomes the lines of the log, once.
func TestTicked(t *testing.T) {
	onServers(t, func(t *testing.T, s *server) {
		for name, tick := range apps {
			t.Run(name, func(t *testing.T) {
				h, p := newHome(t), s.list(t)
				p.put("mine.ics", "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//x//y\r\nBEGIN:VTODO\r\nUID:mine\r\nDTSTAMP:20261101T000000Z\r\nSUMMARY:Buy leaves\r\nSTATUS:COMPLETED\r\nEND:VTODO\r\nEND:VCALENDAR\r\n")
				mine := p.objects()
				run := func() Report {
					t.Helper()
					out, err := h.sync(p.url).Run(context.Background())
					if err != nil {
						t.Fatal(err)
					}
					return out
				}
				first := run()
				if first.New == 0 || first.New != first.Wanted || first.Changed+first.Gone != 0 {
					t.Errorf("%+v", first)
				}
				if again := run(); again.New+again.Changed+again.Gone != 0 || again.Wanted != first.Wanted {
					t.Errorf("a second run changes something: %+v", again)
				}
				p.edit("25 19:30 Fresh water: Tub 1 to 3", tick)
				h.now = evening
				for range 2 {
					run()
				}
				want := "2026-11-25 19:42 by lead tub-1 done water\n2026-11-25 19:42 by lead tub-2 done water\n2026-11-25 19:42 by lead tub-3 done water\n"
				if got := h.log(); got != want {
					t.Errorf("the log is\n%s", got)
				}
				shown := p.shown()
				if !slices.Contains(shown, "[x] 25 19:30 Fresh water: Tub 1 to 3") || !slices.Contains(shown, "[ ] 25 08:00 Fresh water: Tub 1 to 3") {
					t.Errorf("%q", shown)
				}
				for path, text := range mine {
					if now := p.objects()[path]; now != text {
						t.Errorf("what is somebody else's is %s, was %s", now, text)
					}
				}
			})
		}
	})
}

// What was called off is skipped for the day; of care in two rounds the log cannot leave out
// one.
func TestCalledOff(t *testing.T) {
	onServers(t, func(t *testing.T, s *server) {
		h, p := newHome(t), s.list(t)
		run := func() Report {
			out, err := h.sync(p.url).Run(context.Background())
			if err != nil {
				t.Fatal(err)
			}
			return out
		}
		run()
		p.edit("Lid shut", with("STATUS:CANCELLED"))
		p.edit("25 19:30 Fresh water", with("STATUS:CANCELLED"))
		out := run()
		if got := h.log(); strings.Count(got, " skipped look\n") != 3 || strings.Contains(got, "water") || len(out.Untold) != 1 || len(out.Untold[0].Places) != 3 {
			t.Errorf("%+v, the log is\n%s", out.Untold, got)
		}
		again := run()
		if again.New+again.Changed+again.Gone+len(again.Lines) > 0 {
			t.Errorf("%+v", again)
		}
	})
}
