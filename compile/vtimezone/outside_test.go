package vtimezone

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"vivary/internal/oracles"
	"vivary/schema/civil"
	"vivary/schema/zone"
)

// Zones put before other people's readers: all that need explicit onsets, the
// odd ones (half an hour, negative saving, changes at midnight, none), and the
// ordinary.
var outside = []string{
	"Africa/Cairo", "Africa/Casablanca", "Africa/El_Aaiun", "America/Nuuk", "America/Santiago", "America/Scoresbysund",
	"Asia/Gaza", "Asia/Hebron", "Asia/Jerusalem",
	"America/Asuncion", "America/Havana", "America/St_Johns", "Antarctica/Troll", "Asia/Beirut", "Asia/Kathmandu", "Asia/Tehran",
	"Atlantic/Azores", "Australia/Lord_Howe", "Europe/Chisinau", "Europe/Dublin", "Pacific/Apia", "Pacific/Chatham",
	"Pacific/Easter", "Pacific/Kiritimati", "Pacific/Norfolk",
	"America/Chicago", "America/Los_Angeles", "America/New_York", "America/Sao_Paulo", "Asia/Kolkata", "Asia/Tokyo",
	"Australia/Sydney", "Europe/Berlin", "Europe/Lisbon", "Europe/London", "Pacific/Auckland", "US/Eastern", "UTC",
}

const compact = "20060102T150405"

// question is one line for a reader and the answer of the time package.
type question struct{ ask, want string }

// questions asks which instants local times are, around each change of eleven
// years and on days between, as an app does with each DTSTART. Times that come
// twice or never are left out, since readers disagree about them.
func questions(loc *time.Location) []question {
	begin, end := civil.Must(2026, 1, 1).At(0, loc), civil.Must(2037, 1, 1).At(0, loc)
	var qs []question
	ask := func(when time.Time) {
		if when.Before(begin) || !when.Before(end) {
			return
		}
		local := when.In(loc).Format(compact)
		for shift := -3 * time.Hour; shift <= 3*time.Hour; shift += 15 * time.Minute {
			if shift != 0 && when.Add(shift).In(loc).Format(compact) == local {
				return
			}
		}
		qs = append(qs, question{loc.String() + " " + local, when.UTC().Format(compact) + "Z"})
	}
	for when := begin; when.Before(end); when = when.Add(97 * time.Hour) {
		ask(when)
		_, change := when.In(loc).ZoneBounds()
		if change.IsZero() || change.Sub(when) > 97*time.Hour {
			continue
		}
		for _, d := range []time.Duration{-26 * time.Hour, -3 * time.Hour, -time.Hour - time.Second, -time.Second, 0, time.Second, time.Hour, 3 * time.Hour, 26 * time.Hour} {
			ask(change.Add(d))
		}
	}
	return qs
}

// reader answers questions with nothing but the components of a file.
type reader func(t *testing.T, file string, qs []question) []string

func TestOutsideReaders(t *testing.T) {
	var text []byte
	var qs []question
	for _, name := range outside {
		loc, err := zone.Load(name)
		if err != nil {
			t.Fatal(err)
		}
		if text, err = Append(text, name, civil.Must(2026, 1, 1), civil.Must(2028, 12, 31), civil.Must(2036, 12, 31)); err != nil {
			t.Fatal(err)
		}
		qs = append(qs, questions(loc)...)
	}
	right := calendar(t, string(text))
	wrong := calendar(t, strings.ReplaceAll(string(text), "TZOFFSETTO:+0100", "TZOFFSETTO:+0200"))

	for name, read := range map[string]reader{"ical.js 2.2.1": icaljs, "libical": libical(t)} {
		t.Run(name, func(t *testing.T) {
			for i, answer := range read(t, right, qs) {
				if answer != qs[i].want {
					t.Errorf("%s is %s, want %s", qs[i].ask, answer, qs[i].want)
				}
			}
			noticed := 0
			for i, answer := range read(t, wrong, qs) {
				if answer != qs[i].want {
					noticed++
				}
			}
			t.Logf("%d times in %d zones; a wrong TZOFFSETTO changes %d", len(qs), len(outside), noticed)
			if noticed == 0 {
				t.Error("a wrong TZOFFSETTO was not noticed")
			}
		})
	}
}

func calendar(t *testing.T, zones string) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), "zones.ics")
	text := "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//test//EN\r\n" + zones + "END:VCALENDAR\r\n"
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return file
}

// icaljs needs node, and ical.js as the tests of feeds do.
func icaljs(t *testing.T, file string, qs []question) []string {
	t.Helper()
	return answers(t, exec.Command("node", filepath.Join("testdata", "icaljs.mjs"), file, oracles.Folder(t)), qs)
}

// libical needs gcc, pkg-config and libical's headers.
func libical(t *testing.T) reader {
	t.Helper()
	program := filepath.Join(t.TempDir(), "libical")
	flags, err := exec.Command("pkg-config", "--cflags", "--libs", "libical").Output()
	if err != nil {
		t.Fatalf("libical is needed for this test: %v", err)
	}
	args := append([]string{"-o", program, filepath.Join("testdata", "libical.c")}, strings.Fields(string(flags))...)
	if out, err := exec.Command("gcc", args...).CombinedOutput(); err != nil {
		t.Fatalf("gcc: %v\n%s", err, out)
	}
	return func(t *testing.T, file string, qs []question) []string {
		t.Helper()
		return answers(t, exec.Command(program, file), qs)
	}
}

func answers(t *testing.T, cmd *exec.Cmd, qs []question) []string {
	t.Helper()
	var in, complaint bytes.Buffer
	for _, q := range qs {
		fmt.Fprintln(&in, q.ask)
	}
	cmd.Stdin, cmd.Stderr = &in, &complaint
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("%s: %v\n%s", cmd.Path, err, complaint.Bytes())
	}
	lines := strings.Split(strings.TrimSuffix(string(out), "\n"), "\n")
	if len(lines) != len(qs) {
		t.Fatalf("%s: %d answers to %d questions", cmd.Path, len(lines), len(qs))
	}
	return lines
}
