package main

import (
	"bytes"
	"fmt"
	"io"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/internal/generated"
)

// large is a house of so many enclosures in which all are fed on Mondays and Thursdays, each
// round has the time for half of that, and each meal may be moved.
func large(n int) map[string]string {
	files := generated.Collection(n, "Europe/London")
	for name, text := range files {
		var out strings.Builder
		for line := range strings.Lines(text) {
			switch {
			case strings.Contains(line, "within = "):
				line = "  within = \"380 min\"\n"
			case strings.HasPrefix(line, "    on         = [\""):
				line = "    on         = [\"mon\", \"thu\"]\n    window     = \"2 days\"\n    minutes    = \"5 min\"\n"
			}
			out.WriteString(line)
		}
		files[name] = out.String()
	}
	return files
}

// BenchmarkLevel is vivary level in a house of a thousand enclosures, with all that the compiler
// says of what is proposed.
func BenchmarkLevel(b *testing.B) {
	disk := afero.NewMemMapFs()
	for name, text := range large(1000) {
		if err := afero.WriteFile(disk, "c/"+name, []byte(text), 0o644); err != nil {
			b.Fatal(err)
		}
	}
	var told bytes.Buffer
	for b.Loop() {
		told.Reset()
		w := &world{disk: disk, out: &told, err: io.Discard, clock: func() time.Time { return benchNow }}
		if s := run([]string{"level", "c"}, w); s != fine {
			b.Fatal(s)
		}
	}
	n := 0
	for line := range strings.Lines(told.String()) {
		if strings.HasPrefix(line, "+ ") {
			n++
		}
		if strings.Contains(line, "would stand") || strings.HasPrefix(line, "The Room-0") || strings.HasPrefix(line, "The Round 0") {
			b.Log(strings.TrimSpace(line))
		}
	}
	b.ReportMetric(float64(n), "lines")
}

// onDisk is a collection on a disk in memory, below c.
func onDisk(t *testing.T, files map[string]string) afero.Fs {
	t.Helper()
	disk := afero.NewMemMapFs()
	for name, text := range files {
		if err := afero.WriteFile(disk, "c/"+name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return disk
}

// standing is what stands below c.
func standing(t *testing.T, disk afero.Fs, files map[string]string) map[string]string {
	t.Helper()
	out := map[string]string{}
	for name := range files {
		text, err := afero.ReadFile(disk, "c/"+name)
		if err != nil {
			t.Fatal(err)
		}
		out[name] = string(text)
	}
	return out
}

// What vivary level prints is what it writes: git takes the patch, and makes the same files of
// it. What it writes is tidy as far as it was before, and a second run has nothing to do.
func TestLevelPrintsWhatItWrites(t *testing.T) {
	files := large(60)
	disk := onDisk(t, files)
	s, out, e := at(disk, noon, "level", "c")
	if s != fine || e != "" || !strings.Contains(out, "now at most") {
		t.Fatalf("%d: %s%s", s, out, e)
	}
	if !maps.Equal(standing(t, disk, files), files) {
		t.Fatal("without --write something is written")
	}
	at1 := strings.Index(out, "--- a/")
	patch, _, _ := strings.Cut(out[at1:], "\nNothing was written")
	dir := t.TempDir()
	for name, text := range files {
		path := filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	git := exec.Command("git", "apply", "-")
	git.Dir, git.Stdin = dir, strings.NewReader(patch)
	if told, err := git.CombinedOutput(); err != nil {
		t.Fatalf("git does not take the patch: %v\n%s", err, told)
	}
	if s, out, e := at(disk, noon, "level", "c", "--write"); s != fine || e != "" {
		t.Fatalf("%d: %s%s", s, out, e)
	}
	for name, text := range standing(t, disk, files) {
		if patched, err := os.ReadFile(filepath.Join(dir, name)); err != nil || string(patched) != text {
			t.Errorf("%s: what is written is not what the patch makes: %v", name, err)
		}
	}
	if s, out, e := at(disk, noon, "level", "c"); s != fine || e != "" || strings.Contains(out, "would stand") {
		t.Errorf("a second run: %d: %s%s", s, out, e)
	}
	if s, out, e := at(disk, noon, "build", "c"); s != fine {
		t.Errorf("%d: %s%s", s, out, e)
	}
}

// changing is a disk on which somebody writes into a file while the plan is compiled.
type changing struct {
	afero.Fs
	path  string
	reads int
}

func (d *changing) Open(name string) (afero.File, error) {
	if filepath.ToSlash(name) == d.path {
		if d.reads++; d.reads == 2 { // it has been read
			f, err := d.Fs.OpenFile(name, os.O_APPEND|os.O_WRONLY, 0o644)
			if err != nil {
				return nil, err
			}
			fmt.Fprintln(f, "# meanwhile")
			f.Close()
		}
	}
	return d.Fs.Open(name)
}

// A plan that somebody writes into meanwhile is left as it is, all of it.
func TestLevelOverwritesNothing(t *testing.T) {
	files := large(60)
	disk := onDisk(t, files)
	s, out, e := at(&changing{Fs: disk, path: "c/rooms/room-0.care.hcl"}, noon, "level", "c", "--write")
	now := standing(t, disk, files)
	changed := 0
	for name, text := range files {
		if now[name] != text && now[name] != text+"# meanwhile\n" {
			changed++
		}
	}
	if s != refused || changed > 0 || !strings.Contains(e, "changed meanwhile") {
		t.Errorf("%d, %d files changed: %s%s", s, changed, out, e)
	}
}

// What cannot be laid out is said, and what there is to do about it.
func TestLevelSaysWhy(t *testing.T) {
	files := generated.Collection(3, "Europe/London")
	for _, x := range []struct {
		name, was, is, want string
		status              int
	}{
		{"no budget at all", "  within = \"120 min\"\n", "", "Nothing is laid out: neither has a keeper a budget", fine},
		{"enough time", "", "", "The Round 0 round: at most", fine},
		{"far too little", "within = \"120 min\"", "within = \"5 min\"", "no layout can do it", fine},
		{"no window", "\"Lead keeper\"\n", "\"Lead keeper\"\n  budget = \"24 min\"\n", "on days of the week that the plan names, without a window", fine},
		{"a plan that is refused", "room-0\"\n\n", "room-9\"\n\n", "A plan that is refused is not laid out anew", refused},
	} {
		changed := maps.Clone(files)
		for name, text := range changed {
			changed[name] = strings.ReplaceAll(text, x.was, x.is)
		}
		if x.was == "" {
			changed = files
		}
		s, out, e := at(onDisk(t, changed), noon, "level", "c")
		if s != x.status || !strings.Contains(out+e, x.want) {
			t.Errorf("%s: %d: %s%s", x.name, s, out, e)
		}
	}
}

// What was laid out since the calendars were built is left alone until they are built again: the
// plan does not say any more when it was last done.
func TestLevelWaitsForABuild(t *testing.T) {
	files := large(60)
	disk := onDisk(t, files)
	less := func() {
		for name, text := range standing(t, disk, files) {
			text = strings.ReplaceAll(text, "within = \"380 min\"", "within = \"340 min\"")
			if err := afero.WriteFile(disk, "c/"+name, []byte(text), 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
	for _, command := range [][]string{{"build", "c"}, {"level", "c", "--write"}} {
		if s, out, e := at(disk, noon, command...); s != fine {
			t.Fatalf("%v: %d: %s%s", command, s, out, e)
		}
	}
	was := standing(t, disk, files)
	less()
	if s, out, e := at(disk, noon, "level", "c", "--write"); s != fine {
		t.Fatalf("%d: %s%s", s, out, e)
	}
	for name, text := range standing(t, disk, files) {
		for line := range strings.Lines(was[name]) {
			if line = strings.TrimSpace(line); strings.HasPrefix(line, "from ") && strings.Count(text, line) < strings.Count(was[name], line) {
				t.Errorf("%s: %s was written, and is written anew", name, line)
			}
		}
	}
}
