package publish

import (
	"errors"
	"os"
	"path/filepath"
	"testing"

	"github.com/spf13/afero"

	"vivary/internal/faulty"
)

// Whatever call fails, the file is whole: as it was, or as it is to be; and where nothing went
// wrong for good, nothing is left beside it.
func TestSwapEveryCallFails(t *testing.T) {
	for _, kind := range []struct{ dead, short bool }{{}, {dead: true}, {short: true}} {
		for n := 1; ; n++ {
			dir := t.TempDir()
			path := filepath.Join(dir, "a.care.hcl")
			if err := os.WriteFile(path, []byte("old"), 0o640); err != nil {
				t.Fatal(err)
			}
			disk := &faulty.Disk{Fs: afero.NewOsFs(), At: n, Dead: kind.dead, Short: kind.short}
			err := Swap(disk, path, []byte("old"), []byte("new"))
			text, _ := os.ReadFile(path)
			info, _ := os.Stat(path)
			if s := string(text); s != "old" && s != "new" || s != "new" && err == nil || info.Mode().Perm() != 0o640 {
				t.Errorf("call %d (%s): %v: %q, %v", n, disk.What, err, s, info.Mode())
			}
			if left := files(t, dir); left != "a.care.hcl" && !kind.dead && disk.What != "remove" {
				t.Errorf("call %d (%s): left behind: %s", n, disk.What, left)
			}
			if disk.What == "" {
				break
			}
		}
	}
}

// What was changed meanwhile is not written over, up to the moment at which it is looked at for
// the last time, right before it is replaced.
func TestSwapChanged(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.care.hcl")
	for n := 1; ; n++ {
		if err := os.WriteFile(path, []byte("old"), 0o644); err != nil {
			t.Fatal(err)
		}
		calls := 0
		disk := &faulty.Disk{Fs: afero.NewOsFs()}
		disk.Each = func() {
			if calls++; calls == n {
				_ = os.WriteFile(path, []byte("mine"), 0o644)
			}
		}
		err := Swap(disk, path, []byte("old"), []byte("new"))
		text, _ := os.ReadFile(path)
		switch {
		case calls < n: // nobody changed it
			if err != nil || string(text) != "new" || n < 5 {
				t.Errorf("%v, %q after %d calls", err, text, calls)
			}
			return
		case errors.Is(err, ErrChanged) && string(text) != "mine":
			t.Errorf("changed before call %d: %q", n, text)
		case err == nil && string(text) == "old", err != nil && !errors.Is(err, ErrChanged):
			t.Errorf("changed before call %d: %v, %q", n, err, text)
		}
	}
}

// A link stays one, and what it leads to is written.
func TestSwapLinked(t *testing.T) {
	dir := t.TempDir()
	path, link := filepath.Join(dir, "a.care.hcl"), filepath.Join(dir, "b.care.hcl")
	if err := errors.Join(os.WriteFile(path, []byte("old"), 0o600), os.Symlink("a.care.hcl", link)); err != nil {
		t.Fatal(err)
	}
	if err := Swap(afero.NewOsFs(), link, []byte("old"), []byte("new")); err != nil {
		t.Fatal(err)
	}
	to, err := os.Readlink(link)
	text, _ := os.ReadFile(path)
	if err != nil || to != "a.care.hcl" || string(text) != "new" {
		t.Errorf("%v: %q, %q", err, to, text)
	}
}
