//go:build unix

package publish

import (
	"errors"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
	"testing"

	"github.com/spf13/afero"

	"vivary/internal/faulty"
)

// house is a folder with a file, one that is a link into another folder, a folder where a
// file is to be, and room for one that is new.
func house(t *testing.T) (dir string) {
	t.Helper()
	dir = filepath.Join(t.TempDir(), "feeds")
	other := filepath.Join(filepath.Dir(dir), "other")
	for _, d := range []string{other, filepath.Join(dir, "c.ics")} {
		if err := os.MkdirAll(d, 0o755); err != nil {
			t.Fatal(err)
		}
	}
	for path, text := range map[string]string{dir + "/a.ics": "old", other + "/b.ics": "old", dir + "/c.ics/mine": "kept"} {
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Symlink("../other/b.ics", dir+"/b.ics"); err != nil {
		t.Fatal(err)
	}
	return dir
}

var names = []string{"a.ics", "b.ics", "c.ics", "d.ics"}

// build replaces all of them, as a build does.
func build(disk afero.Fs, dir, text string) error {
	f, err := Open(disk, dir, nil)
	if err != nil {
		return err
	}
	defer f.Close()
	b := f.Begin()
	for _, name := range names {
		_, err := f.Last(name)
		if errors.Is(err, ErrNoFile) {
			_, err = b.Aside(name, nil)
		}
		if err == nil {
			err = b.Stage(name, []byte(text))
		}
		if err != nil {
			b.Abandon()
			return err
		}
	}
	return b.Commit()
}

// stands returns what is in the files, as whoever reads them by this package sees it, and
// as whoever does not.
func stands(t *testing.T, dir string) (known, seen string) {
	t.Helper()
	for _, name := range names {
		text, err := Last(afero.NewOsFs(), dir, name)
		if err != nil && !errors.Is(err, ErrNoFile) {
			t.Fatal(err)
		}
		known += name[:1] + string(text) + " "
		text, err = os.ReadFile(filepath.Join(dir, name))
		if err != nil && !errors.Is(err, os.ErrNotExist) && !errors.Is(err, syscall.EISDIR) {
			t.Fatal(err)
		}
		seen += name[:1] + string(text) + " "
	}
	return known, seen
}

const (
	before = "aold bold c d "
	after  = "anew bnew cnew dnew "
)

// Whatever call fails, once or from then on, every file stays whole; files are of one
// build, as far as what is said of them goes; and the next build puts all in place and
// leaves nothing behind.
func TestEveryCallFails(t *testing.T) {
	for _, kind := range []struct{ dead, short bool }{{}, {dead: true}, {short: true}} {
		failed := map[string]bool{}
		for n := 1; ; n++ {
			dir := house(t)
			disk := &faulty.Disk{Fs: afero.NewOsFs(), At: n, Dead: kind.dead, Short: kind.short}
			err := build(disk, dir, "new")
			if disk.What == "" {
				if err != nil {
					t.Fatal(err)
				}
				break
			}
			failed[strings.Fields(disk.What)[0]] = true
			say := fmt.Sprintf("call %d (%s), dead %t: %v: ", n, disk.What, kind.dead, err)
			known, seen := stands(t, dir)
			var part *Partial
			switch {
			case known != before && known != after:
				t.Errorf("%sof two builds: %s", say, known)
			case err == nil && seen != after:
				t.Errorf("%snot all is replaced: %s", say, seen)
			case errors.As(err, &part):
				if known != after {
					t.Errorf("%sthe rest is not there to be put in place: %s", say, known)
				}
				for _, name := range names {
					if slices.Contains(part.Replaced, name) != strings.Contains(seen, name[:1]+"new") {
						t.Errorf("%ssays it replaced %v: %s", say, part.Replaced, seen)
					}
				}
			case err != nil && (seen != before || known != before) && !kind.dead:
				t.Errorf("%sit does not say what was replaced: %s", say, seen)
			}
			for _, x := range strings.Fields(seen) {
				if !slices.Contains([]string{"old", "new", ""}, x[1:]) {
					t.Errorf("%sa torn file: %s", say, seen)
				}
			}
			if err := build(afero.NewOsFs(), dir, "newer"); err != nil {
				t.Errorf("%sthe next build: %v", say, err)
			}
			if known, seen = stands(t, dir); known != seen || seen != strings.ReplaceAll(after, "new", "newer") {
				t.Errorf("%safter the next build: %s, %s", say, known, seen)
			}
			if text, err := os.ReadFile(filepath.Join(dir, "c.ics.aside-1", "mine")); string(text) != "kept" {
				t.Errorf("%swhat was no file is lost: %v", say, err)
			}
			if left := files(t, dir) + " " + files(t, filepath.Dir(dir)+"/other"); left != "a.ics b.ics c.ics c.ics.aside-1 d.ics b.ics" {
				t.Errorf("%sleft behind: %s", say, left)
			}
			if t.Failed() {
				return
			}
		}
		for _, what := range []string{"open", "write", "sync", "close", "rename", "remove", "stat", "lstat", "readlink", "read", "readdir"} {
			if !failed[what] && !kind.dead {
				t.Errorf("no %s was made to fail: %v", what, slices.Sorted(maps.Keys(failed)))
			}
		}
	}
}

func files(t *testing.T, dir string) string {
	t.Helper()
	list, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, x := range list {
		names = append(names, x.Name())
	}
	return strings.Join(names, " ")
}

// What is no file is never opened, and is said for what it is.
func TestNoFile(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "x.ics")
	for want, make := range map[string]func() error{
		"a folder":        func() error { return os.Mkdir(path, 0o755) },
		"a pipe":          func() error { return syscall.Mkfifo(path, 0o644) },
		"a device":        func() error { return os.Symlink("/dev/zero", path) },
		"not there":       func() error { return os.Symlink("nowhere", path) },
		"leads to itself": func() error { return os.Symlink("x.ics", path) },
		"3072 MB": func() error {
			file, err := os.Create(path)
			if err != nil {
				return err
			}
			defer file.Close()
			return file.Truncate(3 << 30)
		},
	} {
		if err := make(); err != nil {
			t.Fatal(err)
		}
		_, err := Last(afero.NewOsFs(), dir, "x.ics")
		if !errors.Is(err, ErrNoFile) || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v", want, err)
		}
		f, err := Open(afero.NewOsFs(), dir, nil)
		if err != nil {
			t.Fatal(err)
		}
		b := f.Begin()
		aside, err := b.Aside("x.ics", nil)
		if err == nil {
			err = b.Stage("x.ics", []byte("new"))
		}
		if err == nil {
			err = b.Commit()
		}
		if text, e := Last(afero.NewOsFs(), dir, "x.ics"); err != nil || e != nil || string(text) != "new" {
			t.Errorf("%s: %v, %v, %s", want, err, e, text)
		}
		if _, err := os.Lstat(filepath.Join(dir, aside)); err != nil {
			t.Error(want, err)
		}
		if err := errors.Join(os.RemoveAll(path), os.RemoveAll(filepath.Join(dir, aside))); err != nil {
			t.Fatal(err)
		}
		if left := files(t, dir); left != "" {
			t.Errorf("%s: %s", want, left)
		}
	}
}

// Mode stays, and so do owner and group where the system lets us.
func TestLike(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "x.ics")
	if err := os.WriteFile(path, []byte("old"), 0o600); err != nil {
		t.Fatal(err)
	}
	root := os.Getuid() == 0
	if root {
		if err := os.Chown(path, 4321, 1234); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Chmod(path, 0o664); err != nil {
		t.Fatal(err)
	}
	ours := func(text []byte) bool { return string(text) == "old" }
	if err := Replace(afero.NewOsFs(), path, []byte("new"), ours); err != nil {
		t.Fatal(err)
	}
	info, err := os.Stat(path)
	if err != nil || info.Mode() != 0o664 {
		t.Errorf("%v, %v", info.Mode(), err)
	}
	if of := info.Sys().(*syscall.Stat_t); root && (of.Uid != 4321 || of.Gid != 1234) {
		t.Errorf("owner %d, group %d", of.Uid, of.Gid)
	}
	if err := Replace(afero.NewOsFs(), path, []byte("newer"), ours); !errors.Is(err, ErrForeign) {
		t.Errorf("what is somebody else's is replaced: %v", err)
	}
	if err := Replace(afero.NewOsFs(), dir, nil, ours); err == nil || !strings.Contains(err.Error(), "folder") {
		t.Errorf("a folder is replaced: %v", err)
	}
	if text, err := os.ReadFile(path); string(text) != "new" || err != nil {
		t.Errorf("%q, %v", text, err)
	}
}

// The head of a file is read, not all of it.
func TestHead(t *testing.T) {
	mem := afero.NewMemMapFs()
	_ = afero.WriteFile(mem, "d/a.ics", []byte("BEGIN:VCALENDAR\r\nX:1\r\nBEGIN:VEVENT\r\nUID:1\r\n"), 0o644)
	for name, want := range map[string]string{"a.ics": "BEGIN:VCALENDAR\r\nX:1\r\nBEGIN:VEVENT\r\n", "b.ics": ""} {
		if head, err := Head(mem, "d", name); err != nil || string(head) != want {
			t.Errorf("%s: %q, %v", name, head, err)
		}
	}
}
