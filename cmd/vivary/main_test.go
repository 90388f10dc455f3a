package main

import (
	"context"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/rogpeppe/go-internal/testscript"
	"github.com/spf13/afero"

	"vivary/plan"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"vivary": main, "measured": measured})
}

// The scripts run the program as a keeper does. Each says what it prints, what it
// writes and how it ends.
func TestCommands(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:           "../../testdata/commands",
		UpdateScripts: os.Getenv("UPDATE_SCRIPTS") != "",
		Setup: func(e *testscript.Env) error {
			e.Setenv("NO_COLOR", "1")
			e.Setenv("ESC", "\x1b")
			examples, err := filepath.Abs("../../examples")
			e.Setenv("EXAMPLES", examples)
			return err
		},
	})
}

// at runs a command on a disk as of a moment and returns what it printed.
func at(disk afero.Fs, now time.Time, args ...string) (status int, out, err string) {
	var o, e strings.Builder
	over, end := context.WithCancel(context.Background())
	end() // what goes on until it is told to end has been told
	status = run(args, &world{disk: disk, out: &o, err: &e, clock: func() time.Time { return now }, until: over})
	return status, o.String(), e.String()
}

var noon = time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)

// full is a disk on which only so many bytes are left.
type full struct {
	afero.Fs
	mu   sync.Mutex
	left int
}

func (d *full) OpenFile(name string, flag int, perm os.FileMode) (afero.File, error) {
	f, err := d.Fs.OpenFile(name, flag, perm)
	return &fullFile{f, d}, err
}

type fullFile struct {
	afero.File
	disk *full
}

func (f *fullFile) Write(p []byte) (int, error) {
	f.disk.mu.Lock()
	defer f.disk.mu.Unlock()
	if len(p) > f.disk.left {
		n, _ := f.File.Write(p[:f.disk.left])
		f.disk.left = 0
		return n, errors.New("no space left on device")
	}
	f.disk.left -= len(p)
	return f.File.Write(p)
}

// A disk that fills up half way leaves the calendars as they were, whole, and
// nothing beside them.
func TestFullDisk(t *testing.T) {
	disk := afero.NewMemMapFs()
	if s, _, e := at(disk, noon, "start", "c"); s != fine {
		t.Fatal(e)
	}
	write := func(extra string) {
		if err := afero.WriteFile(disk, "c/calendars.care.hcl", []byte("calendar \"a\" {\n}\n\ncalendar \"b\" {\n"+extra+"}\n"), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	write("")
	if s, _, e := at(disk, noon, "build", "c"); s != fine {
		t.Fatal(e)
	}
	feeds := func() (out []string) {
		list, err := afero.ReadDir(disk, "c/feeds")
		if err != nil {
			t.Fatal(err)
		}
		for _, x := range list {
			text, _ := afero.ReadFile(disk, filepath.Join("c/feeds", x.Name()))
			out = append(out, x.Name(), string(text))
		}
		return out
	}
	before := feeds()
	write("  remind = \"10 min\"\n")
	for _, left := range []int{0, 1000, 100_000} {
		s, _, e := at(&full{Fs: disk, left: left}, noon.AddDate(0, 0, 1), "build", "c")
		if s != refused || !strings.Contains(e, "no space left") || !strings.Contains(e, "stay as they are") {
			t.Errorf("with %d bytes left: status %d, %s", left, s, e)
		}
		if after := feeds(); strings.Join(after, "\x00") != strings.Join(before, "\x00") {
			t.Errorf("with %d bytes left the calendars are not what they were: %d and %d files", left, len(before)/2, len(after)/2)
		}
	}
	if s, _, e := at(&full{Fs: disk, left: 10 << 20}, noon.AddDate(0, 0, 1), "build", "c"); s != fine || strings.Join(feeds(), "\x00") == strings.Join(before, "\x00") {
		t.Errorf("with room enough: status %d, %s", s, e)
	}
}

// The same input gives the same bytes, and a second build changes nothing.
func TestSameBytes(t *testing.T) {
	var feeds [2]string
	for i := range feeds {
		disk := afero.NewMemMapFs()
		at(disk, noon, "start", "c")
		at(disk, noon, "build", "c")
		_, out, _ := at(disk, noon.Add(time.Hour), "build", "c")
		if !strings.Contains(out, "unchanged") {
			t.Errorf("a second build: %s", out)
		}
		text, _ := afero.ReadFile(disk, "c/feeds/my-collection.ics")
		feeds[i] = string(text)
	}
	if feeds[0] != feeds[1] || feeds[0] == "" {
		t.Error("two builds differ")
	}
}

// A moment without a time of day is noon, and one without a zone is read where the
// animals are: from midnight to noon the day would be another elsewhere.
func TestNow(t *testing.T) {
	w := &world{clock: func() time.Time { return noon }}
	east := time.FixedZone("", 13*3600)
	for written, want := range map[string]string{"": "2026-11-25T12:00:00Z", "2027-03-01": "2027-03-01T12:00:00+13:00",
		"2027-03-01T08:00": "2027-03-01T08:00:00+13:00", "2027-03-01 08:00": "2027-03-01T08:00:00+13:00", "2027-03-01T08:00:00-05:00": "2027-03-01T08:00:00-05:00"} {
		if got, err := w.moment(&flags{now: written}, east); err != nil || got.Format(time.RFC3339) != want {
			t.Errorf("%q: %s, %v", written, got.Format(time.RFC3339), err)
		}
	}
}

// What cannot be printed is said, and is a status of its own.
func TestPrintsNowhere(t *testing.T) {
	disk := afero.NewMemMapFs()
	at(disk, noon, "start", "c")
	for _, args := range [][]string{{"check", "c"}, {"check", "c", "--format", "json"}, {"due", "c"}, {"why", "burrow-a", "--in", "c"}} {
		var e strings.Builder
		s := run(args, &world{disk: disk, out: closed{}, err: &e, clock: func() time.Time { return noon }})
		if s != refused || !strings.Contains(e.String(), "closed") {
			t.Errorf("%v: status %d, %q", args, s, e.String())
		}
	}
}

type closed struct{}

func (closed) Write([]byte) (int, error) { return 0, errors.New("closed") }

// A note that would make the log unreadable is not written.
func TestNoteKeepsLog(t *testing.T) {
	disk := afero.NewMemMapFs()
	at(disk, noon, "start", "c")
	if s, _, e := at(disk, noon, "note", "--in", "c", "burrow-a", "refused"); s != fine {
		t.Fatal(e)
	}
	const path = "c/records/2026.care.log"
	_ = afero.WriteFile(disk, path, []byte("2026-11-24 burrow-a refused"), 0o644) // by an editor that ends no line
	if s, _, e := at(disk, noon, "note", "--in", "c", "burrow-a", "refused"); s != fine {
		t.Fatal(e)
	}
	if text, _ := afero.ReadFile(disk, path); string(text) != "2026-11-24 burrow-a refused\n2026-11-25 burrow-a refused\n" {
		t.Errorf("the log is %q", text)
	}
	before, _ := afero.ReadFile(disk, path)
	for _, text := range []string{"\xff", "a\x00b", "\x1b[2J"} {
		s, _, e := at(disk, noon, "note", "--in", "c", "burrow-a", "refused", text)
		if s != refused || !strings.Contains(e, "Nothing was written") {
			t.Errorf("%q: status %d, %s", text, s, e)
		}
	}
	if after, _ := afero.ReadFile(disk, path); string(after) != string(before) || len(before) == 0 {
		t.Errorf("the log became %q", after)
	}
}

// A note comes back from the log as it was said.
func TestNoteQuoting(t *testing.T) {
	disk := afero.NewMemMapFs()
	at(disk, noon, "start", "c")
	for _, note := range []string{"left alone", `on its "side", alone`, `"`, `ends in \`, "- with a hyphen", "# no comment", "two\nlines"} {
		s, _, e := at(disk, noon, "note", "--in", "c", "--", "burrow-a", "refused", note)
		c, _, err := plan.Load(disk, "c")
		if s != fine || err != nil {
			t.Fatalf("%q: status %d, %s", note, s, e)
		}
		if got, want := c.Log[len(c.Log)-1].Note, strings.ReplaceAll(note, "\n", " "); got != want {
			t.Errorf("%q came back as %q", note, got)
		}
	}
}

// check of ten enclosures answers fast enough for an editor: the whole process is
// measured in testdata/bench; this keeps the inside of it from growing unseen.
func BenchmarkCheckTen(b *testing.B) {
	disk := write(b, 10)
	b.ReportAllocs()
	for range b.N {
		w := &world{disk: disk, out: io.Discard, err: io.Discard, clock: func() time.Time { return noon }}
		if s := run([]string{"check", "c"}, w); s != fine {
			b.Fatal(s)
		}
	}
}

// Of two that start in one folder at once one writes everything, and the other nothing.
func TestStartAtOnce(t *testing.T) {
	for range 20 {
		root := filepath.Join(t.TempDir(), "c")
		var wg sync.WaitGroup
		status, said := make([]int, 4), make([]string, 4)
		for i := range status {
			wg.Go(func() {
				var e string
				status[i], said[i], e = at(afero.NewOsFs(), noon, "start", root)
				said[i] += e
			})
		}
		wg.Wait()
		done := 0
		for _, s := range status {
			if s == fine {
				done++
			}
		}
		if done != 1 {
			t.Fatalf("%d of 4 wrote it:\n%s", done, strings.Join(said, "\n"))
		}
		for _, x := range first {
			if text, err := os.ReadFile(filepath.Join(root, x.name)); string(text) != x.text {
				t.Fatalf("%s: %v: %q\n%s", x.name, err, text, strings.Join(said, "\n"))
			}
		}
	}
}
