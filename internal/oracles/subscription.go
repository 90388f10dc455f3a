package oracles

import (
	"bytes"
	"cmp"
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// Subscription is what a person has who subscribed to calendars with vdirsyncer, which
// keeps a file for each entry, and reads them with khal. Neither keeps anything outside a
// folder of the test.
type Subscription struct{ dir, zone string }

// Line is an entry as khal shows it on the day on which it begins.
type Line struct{ Day, At, Title string } // At is "" for a whole day

// Subscribe makes a subscription to nothing yet, for somebody who lives in a time zone.
// The test fails at once where a program is missing.
func Subscribe(t testing.TB, zone string) *Subscription {
	t.Helper()
	for _, program := range []string{"vdirsyncer", "khal"} {
		if _, err := exec.LookPath(program); err != nil {
			t.Fatalf("%v: run testdata/oracles/setup", err)
		}
	}
	return &Subscription{t.TempDir(), zone}
}

// Sync fetches calendars as they now are: their addresses by the names that they have
// here, which stay when an address changes.
func (s *Subscription) Sync(t testing.TB, addresses map[string]string) {
	t.Helper()
	var sync, read strings.Builder
	fmt.Fprintf(&sync, "[general]\nstatus_path = %q\n", s.path("status"))
	read.WriteString("[calendars]\n")
	for _, name := range slices.Sorted(maps.Keys(addresses)) {
		fmt.Fprintf(&sync, "[pair %[1]s]\na = \"%[1]s_web\"\nb = \"%[1]s_here\"\ncollections = null\nconflict_resolution = \"a wins\"\n"+
			"[storage %[1]s_web]\ntype = \"http\"\nurl = %[2]q\nread_only = true\n"+
			"[storage %[1]s_here]\ntype = \"filesystem\"\npath = %[3]q\nfileext = \".ics\"\n", name, addresses[name], s.path(name))
		fmt.Fprintf(&read, "[[%s]]\npath = %s\n", name, s.path(name))
		if err := os.MkdirAll(s.path(name), 0o700); err != nil {
			t.Fatal(err)
		}
	}
	fmt.Fprintf(&read, "[locale]\nlocal_timezone = %[1]s\ndefault_timezone = %[1]s\ntimeformat = %%H:%%M\ndateformat = %%Y-%%m-%%d\nlongdateformat = %%Y-%%m-%%d\n"+
		"datetimeformat = %%Y-%%m-%%d %%H:%%M\nlongdatetimeformat = %%Y-%%m-%%d %%H:%%M\n[sqlite]\npath = %[2]s\n", s.zone, s.path("khal.db"))
	for name, text := range map[string]string{"vdirsyncer.conf": sync.String(), "khal.conf": read.String()} {
		if err := os.WriteFile(s.path(name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	s.run(t, "vdirsyncer", "--config", s.path("vdirsyncer.conf"), "discover")
	s.run(t, "vdirsyncer", "--config", s.path("vdirsyncer.conf"), "sync")
}

// Entries is how many entries a calendar has here.
func (s *Subscription) Entries(t testing.TB, name string) int {
	t.Helper()
	files, err := os.ReadDir(s.path(name))
	if err != nil {
		t.Fatal(err)
	}
	return len(files)
}

// Shown returns what khal shows from one day to another, such as "2026-11-25", by
// calendar and in order. What began before is left out.
func (s *Subscription) Shown(t testing.TB, from, to string) map[string][]Line {
	t.Helper()
	out := s.run(t, "khal", "--config", s.path("khal.conf"), "list",
		"--day-format", "{date}", "--format", "{calendar}\t{start-date}\t{start-time}\t{title}", from, to)
	all := map[string][]Line{}
	day := ""
	for text := range strings.Lines(out) {
		switch field := strings.Split(strings.TrimSuffix(text, "\n"), "\t"); {
		case len(field) == 1:
			day = field[0]
		case len(field) != 4:
			t.Fatalf("khal: not a line of an answer: %q", text)
		case field[1] == day: // it is shown again on each of its days
			all[field[0]] = append(all[field[0]], Line{field[1], field[2], field[3]})
		}
	}
	for _, lines := range all {
		SortLines(lines)
	}
	return all
}

// SortLines brings lines into the order of Shown.
func SortLines(all []Line) {
	slices.SortFunc(all, func(a, b Line) int {
		return cmp.Or(cmp.Compare(a.Day, b.Day), cmp.Compare(a.At, b.At), cmp.Compare(a.Title, b.Title))
	})
}

func (s *Subscription) path(name string) string { return filepath.Join(s.dir, name) }

// run runs a program that knows no home but the folder of the test.
func (s *Subscription) run(t testing.TB, program string, args ...string) string {
	t.Helper()
	cmd := exec.Command(program, args...)
	cmd.Dir = s.dir
	cmd.Env = []string{"PATH=" + os.Getenv("PATH"), "LC_ALL=C.UTF-8", "NO_PROXY=*", "TZ=" + s.zone}
	for _, name := range []string{"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME"} {
		cmd.Env = append(cmd.Env, name+"="+s.dir)
	}
	var out, errs bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &errs
	if err := cmd.Run(); err != nil {
		t.Fatalf("%s: %v\n%s%s", program, err, out.String(), errs.String())
	}
	return out.String()
}
