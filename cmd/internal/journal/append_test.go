package journal

import (
	"errors"
	"fmt"
	"os"
	"strings"
	"sync"
	"testing"

	"github.com/spf13/afero"
)

// full is a disk on which only so many bytes are left.
type full struct {
	afero.Fs
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
	if len(p) <= f.disk.left {
		f.disk.left -= len(p)
		return f.File.Write(p)
	}
	n, _ := f.File.Write(p[:f.disk.left])
	f.disk.left = 0
	return n, errors.New("no space left on device")
}

// unsynced is a disk that finds out at a sync only that it is full.
type unsynced struct{ afero.Fs }

func (d unsynced) OpenFile(name string, flag int, perm os.FileMode) (afero.File, error) {
	f, err := d.Fs.OpenFile(name, flag, perm)
	return unsyncedFile{f}, err
}

type unsyncedFile struct{ afero.File }

func (unsyncedFile) Sync() error { return errors.New("no space left on device") }

// Of several lines all are written, or none; a log that was made for them is taken away
// again.
func TestLinesWholeOrNone(t *testing.T) {
	for _, first := range []bool{true, false} {
		disk := afero.NewMemMapFs()
		const path = "c/records/2026.care.log"
		before := ""
		if !first {
			before = "2026-11-24 tub-1 refused\n"
			_ = afero.WriteFile(disk, path, []byte(before), 0o644)
		}
		text := []byte("2026-11-25 tub-1 fed\n2026-11-25 tub-2 fed\n")
		check := func(what string, d afero.Fs) {
			t.Helper()
			if err := appendTo(d, path, text); err == nil {
				t.Errorf("%s: no error", what)
			}
			got, err := afero.ReadFile(disk, path)
			if string(got) != before || first != errors.Is(err, os.ErrNotExist) {
				t.Errorf("%s: the log is %q, %v", what, got, err)
			}
		}
		for left := range len(text) {
			check(fmt.Sprint(left, " bytes left"), &full{Fs: disk, left: left})
		}
		check("at the sync", unsynced{disk})
	}
}

// Of notes of several lines that are written at once none is lost, and no line is cut, also
// behind a torn one.
func TestAppendingAtOnce(t *testing.T) {
	disk := afero.NewBasePathFs(afero.NewOsFs(), t.TempDir())
	const path = "c/records/2026.care.log"
	_ = afero.WriteFile(disk, path, []byte("2026-11-24 burr"), 0o644)
	var wg sync.WaitGroup
	const n = 6
	for i := range n {
		wg.Go(func() {
			if err := appendTo(disk, path, []byte(strings.Repeat(fmt.Sprintf("\n2026-11-25 burrow-a remark \"note %d\"", i), 3)+"\n")); err != nil {
				t.Error(err)
			}
		})
	}
	wg.Wait()
	text, _ := afero.ReadFile(disk, path)
	for i := range n {
		if line := fmt.Sprintf("\n2026-11-25 burrow-a remark \"note %d\"\n", i); strings.Count(string(text), strings.Repeat(line[:len(line)-1], 3)+"\n") != 1 {
			t.Errorf("%q is not in\n%s", line, text)
		}
	}
}
