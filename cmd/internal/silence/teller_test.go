package silence

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"log/slog"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/schema/civil"
)

// sends is a sender that fails where it is told to.
type sends struct {
	sent []string
	fail map[string]error
	by   string
	asks int

	letters []Letter
}

func (s *sends) By() string { return s.by }

func (s *sends) Send(_ context.Context, l Letter) error {
	s.asks++
	if err := s.fail[l.To]; err != nil {
		return err
	}
	s.sent, s.letters = append(s.sent, l.To+" "+l.Subject), append(s.letters, l)
	return nil
}

// TestTeller: each is told once of each day; what failed for one is tried again for that one
// alone; where nothing can be remembered nothing is sent; what is damaged counts as nothing.
func TestTeller(t *testing.T) {
	var log bytes.Buffer
	disk, path := afero.NewMemMapFs(), "keys/home.keys.told"
	teller := func(disk afero.Fs) *Teller {
		return NewTeller(disk, path, slog.New(slog.NewJSONHandler(&log, nil)))
	}
	people := []Person{{"lead", "lead@x.example", "https://care.example/k/secret-of-lead/"}, {"", "club@x.example", ""}}
	day := civil.Must(2026, 11, 25)
	cause := func(d civil.Date) []Cause { return []Cause{{Name: "round evening", Day: d, Subject: "s" + d.String()}} }
	told := func(on *Teller, by *sends, causes []Cause, want int) {
		t.Helper()
		by.sent = nil
		on.Tell(t.Context(), by, people, causes)
		if len(by.sent) != want {
			t.Errorf("sent %v, not %d", by.sent, want)
		}
	}
	first, by := teller(disk), &sends{fail: map[string]error{}}
	told(first, by, cause(day), 2)
	told(first, by, cause(day), 0)
	told(teller(disk), by, cause(day), 0)
	told(teller(disk), by, cause(day-1), 0)
	by.fail["club@x.example"] = errors.New("450 come back later")
	told(first, by, cause(day+1), 1)
	told(teller(disk), by, cause(day+1), 0)
	delete(by.fail, "club@x.example")
	told(teller(disk), by, cause(day+1), 1)
	told(teller(afero.NewReadOnlyFs(disk)), by, cause(day+2), 0)
	by.fail["lead@x.example"] = ErrUnreachable
	told(teller(disk), by, cause(day+2), 0)
	delete(by.fail, "lead@x.example")
	told(teller(disk), by, cause(day+2), 2)
	told(teller(disk), by, cause(day+365), 2) // a clock that is wrong
	told(teller(disk), by, cause(day+3), 2)
	if info, err := disk.Stat(path); err != nil || info.Mode().Perm() != 0o600 {
		t.Error("others can read whom it told", err)
	}
	if err := afero.WriteFile(disk, path, []byte("{\"round"), 0o600); err != nil {
		t.Fatal(err)
	}
	told(teller(disk), by, cause(day+3), 2)
	if strings.Contains(log.String(), "secret-of-lead") || strings.Contains(log.String(), "x.example") {
		t.Error("an address stands in the log: " + log.String())
	}
	if !strings.Contains(log.String(), "nobody told: it cannot be written") || !strings.Contains(log.String(), "not told, tried again later") {
		t.Error("the log does not say what went wrong: " + log.String())
	}
}

// TestRefusedForGood: whom a server refuses for good is tried once that day, also by the next
// process, and keeps nobody else from being told; another server, or another day, is tried. A
// day on which somebody was refused is none on which they were told.
func TestRefusedForGood(t *testing.T) {
	var log bytes.Buffer
	disk := afero.NewMemMapFs()
	people := []Person{{"lead", "lead@x.example", ""}, {"", "club@x.example", ""}}
	day := civil.Must(2026, 11, 25)
	by := &sends{fail: map[string]error{"lead@x.example": fmt.Errorf("%w: 550", ErrRefused)}, by: "one"}
	tell := func(d civil.Date, sent, asks int) {
		t.Helper()
		by.sent, by.asks = nil, 0
		NewTeller(disk, "told", slog.New(slog.NewJSONHandler(&log, nil))).Tell(t.Context(), by, people, []Cause{{Name: "build", Day: d, Subject: "s"}})
		if len(by.sent) != sent || by.asks != asks {
			t.Errorf("%s: asked %d times and sent %v", d, by.asks, by.sent)
		}
	}
	tell(day, 1, 2)
	tell(day, 0, 0)
	by.by = "another"
	tell(day, 0, 1)
	tell(day, 0, 0)
	tell(day+1, 1, 2)
	if n := strings.Count(log.String(), "not tried again for this day"); n != 3 || !strings.Contains(log.String(), `"keeper":"lead"`) {
		t.Errorf("it is said %d times: %s", n, log.String())
	}
	delete(by.fail, "lead@x.example")
	tell(day+2, 2, 2)
	for i, want := range []string{"club", "club since", "lead", "club since"} {
		name, _, _ := strings.Cut(by.letters[i].To, "@")
		if strings.Contains(by.letters[i].Text, "each day since Wed 25 Nov") {
			name += " since"
		}
		if name != want {
			t.Errorf("letter %d: %+v", i, by.letters[i])
		}
	}
}

// TestToldOnAFullDisk: where it cannot be written for an hour who was told, it is told all the
// same, once; what could not be sent is tried again; and once it can be written it is known to
// the next process.
func TestToldOnAFullDisk(t *testing.T) {
	var log bytes.Buffer
	disk := afero.NewMemMapFs()
	teller := func(disk afero.Fs) *Teller {
		return NewTeller(disk, "told", slog.New(slog.NewJSONHandler(&log, nil)))
	}
	on, by := teller(afero.NewReadOnlyFs(disk)), &sends{fail: map[string]error{"lead@x.example": errors.New("450 later")}}
	people := []Person{{"lead", "lead@x.example", ""}, {"", "club@x.example", ""}}
	day := civil.Must(2026, 11, 25)
	look := func(on *Teller, day civil.Date, looks, want int) {
		t.Helper()
		by.sent = nil
		for range looks {
			on.Tell(t.Context(), by, people, []Cause{{Name: "build", Day: day, Subject: "s"}})
		}
		if len(by.sent) != want {
			t.Errorf("%s: after %d looks %v is sent", day, looks, by.sent)
		}
	}
	look(on, day, stubborn, 0)
	look(on, day, 20, 1)
	delete(by.fail, "lead@x.example")
	look(on, day, 20, 1)
	on.memory.disk = disk
	look(on, day+1, 1, 2)
	look(teller(disk), day+1, 1, 0)
	look(teller(disk), day, 1, 0)
	if !strings.Contains(log.String(), "may be told again after a restart") {
		t.Error(log.String())
	}
}

// TestUnbuiltSince: since when nothing is built is known to the next process, until something is;
// a time that is still to come is that of a clock that was wrong.
func TestUnbuiltSince(t *testing.T) {
	var log bytes.Buffer
	disk, now := afero.NewMemMapFs(), time.Date(2026, 11, 25, 18, 0, 0, 5, time.UTC)
	unbuilt := func(disk afero.Fs, since, now, want time.Time) {
		t.Helper()
		for range 2 {
			if got := NewTeller(disk, "told", slog.New(slog.NewJSONHandler(&log, nil))).Unbuilt(t.Context(), since, now); !got.Truncate(time.Second).Equal(want.Truncate(time.Second)) {
				t.Errorf("since %s, and not %s", got, want)
			}
		}
	}
	first, second := now.Add(-30*time.Hour), now.Add(-time.Hour)
	unbuilt(disk, time.Time{}, now, time.Time{})
	if there, err := afero.Exists(disk, "told"); there || err != nil {
		t.Error("a file of nothing", err)
	}
	unbuilt(disk, first, now, first)
	unbuilt(disk, second, now, first)
	one := NewTeller(disk, "told", slog.New(slog.NewJSONHandler(&log, nil)))
	one.Tell(t.Context(), &sends{}, []Person{{"", "club@x.example", ""}}, []Cause{{Name: "build", Day: civil.Must(2026, 11, 25)}})
	unbuilt(disk, second, now, first)
	unbuilt(disk, time.Time{}, now, time.Time{})
	unbuilt(disk, second, now, second)
	unbuilt(disk, first, first, first) // the clock was set back
	unbuilt(afero.NewReadOnlyFs(disk), first.Add(-time.Hour), now, first.Add(-time.Hour))
	if !strings.Contains(log.String(), "it cannot be written since when") {
		t.Error(log.String())
	}
}

// TestLetters: a letter says what is wrong, since when and what to do first; a number to ring
// stands in none, and a page only in that of the keeper whose it is.
func TestLetters(t *testing.T) {
	now := london(t, "2026-11-25 21:30")
	r := compiled(t, now, house, "2026-11-20 tub-1 fed\n2026-11-21 tub-1 escaped\n")
	causes := Causes(Sight{Now: now, Result: r, UrgentAt: usualUrgentAt, Since: now.Add(-25 * time.Hour), Why: "Why: the disk is full.", After: 24 * time.Hour})
	if len(causes) < 2 {
		t.Fatal(causes)
	}
	for _, c := range causes {
		for _, p := range []Person{{"lead", "lead@x.example", "https://care.example/k/secret/"}, {"", "club@x.example", ""}} {
			l := letterOf(c, p, true, "Mon 23 Nov")
			if strings.Contains(l.Text, "01632") || strings.Contains(l.Text, "secret") != (p.Keeper != "") || !strings.Contains(l.Text, "irst: ") || !strings.Contains(l.Text, "since Mon 23 Nov") || !strings.HasPrefix(l.Subject, "Quillmoor: ") {
				t.Errorf("%s\n%s", l.Subject, l.Text)
			}
			if p.Keeper != "" {
				t.Logf("%s\n\n%s", l.Subject, l.Text)
			}
		}
	}
}
