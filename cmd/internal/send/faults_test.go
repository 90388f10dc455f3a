//go:build unix

package send

import (
	"bytes"
	"errors"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"github.com/spf13/afero"

	"vivary/internal/faulty"
)

// reader reads what is served, and holds that each file is whole: as it was before, or as
// it is to be.
type reader struct {
	t       testing.TB
	read    func(path string) ([]byte, error)
	allowed map[string][][]byte // by path, in all forms
	gone    bool                // a file may be away
	reads   atomic.Int64
}

// sees is a reader to whom a place may show either of two sets.
func sees(t testing.TB, forms []Form, read func(string) ([]byte, error), gone bool, sets ...[]Calendar) *reader {
	r := &reader{t: t, read: read, gone: gone, allowed: map[string][][]byte{}}
	for _, set := range sets {
		for _, c := range set {
			for _, f := range files(forms, c.Name+".ics", c.Text) {
				r.allowed[f.Path] = append(r.allowed[f.Path], f.Text)
			}
		}
	}
	return r
}

func (r *reader) look() {
	for path, texts := range r.allowed {
		got, err := r.read(path)
		r.reads.Add(1)
		switch {
		case err == nil && got != nil && slices.ContainsFunc(texts, func(x []byte) bool { return bytes.Equal(x, got) }):
		case r.gone && (got == nil || errors.Is(err, os.ErrNotExist)):
		default:
			r.t.Errorf("a reader sees %s torn, empty or not at all: %d bytes, %v", path, len(got), err)
		}
	}
}

// always looks all the while, until it is ended.
func (r *reader) always() (end func()) {
	stop := make(chan struct{})
	var wg sync.WaitGroup
	wg.Go(func() {
		for {
			select {
			case <-stop:
				return
			default:
				r.look()
			}
		}
	})
	return func() {
		close(stop)
		wg.Wait()
		if r.reads.Load() == 0 {
			r.t.Error("nobody looked")
		}
	}
}

// Whatever call fails in a publish to a folder, once or from then on, a reader who looks
// after every call sees each file whole; and the next publish puts all right and leaves
// nothing behind.
func TestEveryCallFails(t *testing.T) {
	before, after := set("one", "a"), set("two", "a", "new")
	for _, kind := range []struct{ dead, short bool }{{}, {dead: true}, {short: true}} {
		failed, mixed, sweeps := map[string]bool{}, 0, 1
		for n := 1; ; n++ {
			dir := t.TempDir()
			to := folderOf(t, quick{afero.NewOsFs()}, dir)
			published(t, to, before, order(t, before))
			raw := func(p string) ([]byte, error) { return os.ReadFile(filepath.Join(dir, p)) }
			disk := &faulty.Disk{Fs: quick{afero.NewOsFs()}, At: n, Dead: kind.dead, Short: kind.short}
			disk.Each = sees(t, to.Forms(), raw, false, before, after[:1]).look
			r, err := Publish(folderOf(t, disk, dir), after, order(t, after))
			if disk.What == "" {
				if err != nil {
					t.Fatal(err)
				}
				if kind.dead && mixed == 0 && sweeps < 4 {
					// How many calls there are depends on the second in which a file is replaced, so
					// that the one between two files may be passed over.
					n, sweeps = 0, sweeps+1
					continue
				}
				break
			}
			failed[strings.Fields(disk.What)[0]] = true
			say := fmt.Sprintf("call %d (%s), dead %t: %v", n, disk.What, kind.dead, err)
			if err != nil && !strings.Contains(say, "cannot be") && !strings.Contains(say, "input/output") {
				t.Errorf("%s: it does not say what cannot be done", say)
			}
			if standing := newFiles(dir, after); err != nil && r.Files != standing && kind.dead {
				t.Errorf("%s: it says that %d files had come to stand there, and %d do", say, r.Files, standing)
			}
			if honest(t, say, folderOf(t, afero.NewOsFs(), dir), false, before, after[:1]) > 1 {
				mixed++ // whole files of both sets, since each is replaced at once and not all are
			}
			published(t, folderOf(t, quick{afero.NewOsFs()}, dir), after, order(t, after))
			if honest(t, say, folderOf(t, afero.NewOsFs(), dir), false, before, after) != 1 {
				t.Errorf("%s: the next publish leaves calendars of two sets", say)
			}
			stands(t, afero.NewBasePathFs(afero.NewOsFs(), dir), after)
			if left, _ := filepath.Glob(filepath.Join(dir, ".*")); len(left) != 1 {
				t.Errorf("%s: left behind: %v", say, left)
			}
			if t.Failed() {
				t.Fatal(say)
			}
		}
		if kind.dead && mixed == 0 {
			t.Error("no publish was cut off between two files")
		}
		for _, what := range []string{"open", "write", "sync", "close", "rename", "lstat", "read", "readdir", "chmod"} {
			if !failed[what] && !kind.dead {
				t.Errorf("no %s was made to fail: %v", what, slices.Sorted(maps.Keys(failed)))
			}
		}
	}
}

// honest holds that a manifest says nothing of a file that is not so: what it has the sum of
// stands there, and where the place marks it as it was marked then it has that sum. It returns
// of how many of two sets the calendars are that stand there, 0 to 2. gone says that a place
// cannot replace a file: it takes the old one away first, and may lack it until the next publish.
func honest(t testing.TB, say string, to Target, gone bool, sets ...[]Calendar) (mixed int) {
	t.Helper()
	text, err := to.Read(manifestName)
	if err != nil {
		t.Fatal(err)
	}
	m, damaged := readManifest(text)
	stands, err := to.List()
	if err != nil {
		t.Fatal(err)
	}
	if damaged { // a place that cannot replace may have none for a moment
		t.Errorf("%s: the manifest is torn: %q", say, text)
	}
	of := map[int]bool{}
	for i, set := range sets {
		for _, c := range set {
			for _, f := range files(to.Forms(), c.Name+".ics", c.Text) {
				got, err := to.Read(f.Path)
				if err != nil {
					t.Fatal(err)
				}
				if bytes.Equal(got, f.Text) {
					of[i] = true
				}
				switch e, known := m.of(f.Path); {
				case !known || e.Sum == "":
				case got == nil && gone:
				case got == nil:
					t.Errorf("%s: the manifest has the sum of %s, which is not there", say, f.Path)
				case e.Mark == stands[f.Path] && e.Sum != sum(got):
					t.Errorf("%s: the manifest takes another %s for the one that was sent", say, f.Path)
				}
			}
		}
	}
	return len(of)
}

// quick is a disk that does not wait until it has what it was given.
type quick struct{ afero.Fs }

func (d quick) OpenFile(name string, flag int, mode os.FileMode) (afero.File, error) {
	file, err := d.Fs.OpenFile(name, flag, mode)
	return quickFile{file}, err
}

func (d quick) LstatIfPossible(name string) (os.FileInfo, bool, error) {
	return d.Fs.(afero.Lstater).LstatIfPossible(name)
}

type quickFile struct{ afero.File }

func (quickFile) Sync() error { return nil }

// newFiles counts the files that stand as they are to be.
func newFiles(dir string, all []Calendar) (n int) {
	for _, c := range all {
		for _, f := range files((&tree{}).Forms(), c.Name+".ics", c.Text) {
			if text, err := os.ReadFile(filepath.Join(dir, f.Path)); err == nil && bytes.Equal(text, f.Text) {
				n++
			}
		}
	}
	return n
}

// held is a lock that only one has.
func held() func(string) (func(), error) {
	var mu sync.Mutex
	return func(string) (func(), error) {
		mu.Lock()
		return mu.Unlock, nil
	}
}

// folderOf is a folder as a target, which can be locked.
func folderOf(t testing.TB, disk afero.Fs, dir string) Target {
	t.Helper()
	to, err := Open(dir, Access{Disk: afero.NewOsFs(), Lock: held()})
	if err != nil {
		t.Fatal(err)
	}
	to.(*tree).disk = local{disk}
	return to
}

// Two publishes at once: readers see whole files, in a folder that can be locked all of
// one set, and in the end what is there is of either.
func TestTwoAtOnce(t *testing.T) {
	everyTarget(t, func(t *testing.T, open func() Target, raw afero.Fs) {
		sets := [][]Calendar{set("one", "a", "b"), set("two", "a", "b")}
		first := open()
		published(t, first, sets[0], order(t, sets[0]))
		forms := first.Forms()
		away := len(first.Remarks()) > 0
		first.Close()
		end := sees(t, forms, func(p string) ([]byte, error) { return afero.ReadFile(raw, p) }, away, sets...).always()
		var wg sync.WaitGroup
		for i := range 4 {
			wg.Go(func() {
				for range 3 {
					to := open()
					// Where nothing can be locked one may find that the other was quicker.
					_, err := Publish(to, sets[i%2], order(t, sets[i%2]))
					if err != nil && !away {
						t.Error(err)
					}
					to.Close()
				}
			})
		}
		wg.Wait()
		end()
		to := open()
		defer to.Close()
		published(t, to, sets[1], order(t, sets[1]))
		stands(t, raw, sets[1])
		if r := published(t, to, sets[1], order(t, sets[1])); r.Files > 0 {
			t.Errorf("%d files are sent again", r.Files)
		}
	})
}
