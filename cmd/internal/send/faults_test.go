//go:build unix

package send

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"maps"
	"net"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

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
		failed := map[string]bool{}
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
			published(t, folderOf(t, quick{afero.NewOsFs()}, dir), after, order(t, after))
			stands(t, afero.NewBasePathFs(afero.NewOsFs(), dir), after)
			if left, _ := filepath.Glob(filepath.Join(dir, ".*")); len(left) != 1 {
				t.Errorf("%s: left behind: %v", say, left)
			}
			if t.Failed() {
				t.Fatal(say)
			}
		}
		for _, what := range []string{"open", "write", "sync", "close", "rename", "lstat", "read", "readdir", "chmod"} {
			if !failed[what] && !kind.dead {
				t.Errorf("no %s was made to fail: %v", what, slices.Sorted(maps.Keys(failed)))
			}
		}
	}
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

// cut is a way to a server that ends for good when so many bytes have gone to it.
type cut struct {
	address string
	sent    atomic.Int64
	after   atomic.Int64 // 0 for never
	dead    atomic.Bool
}

func cutTo(t testing.TB, server string) *cut {
	t.Helper()
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { l.Close() })
	c := &cut{address: l.Addr().String()}
	go func() {
		for {
			in, err := l.Accept()
			if err != nil {
				return
			}
			out, err := net.Dial("tcp", server)
			if err != nil || c.dead.Load() {
				in.Close()
				continue
			}
			shut := func() { in.Close(); out.Close() }
			go func() { _, _ = io.Copy(in, out); shut() }()
			go func() { c.carry(out, in); shut() }()
		}
	}()
	return c
}

func (c *cut) carry(to io.Writer, from io.Reader) {
	buf := make([]byte, 1024)
	for {
		n, err := from.Read(buf)
		if n > 0 {
			total, end := c.sent.Add(int64(n)), c.after.Load()
			if end > 0 && total > end {
				_, _ = to.Write(buf[:max(0, int64(n)-(total-end))])
				c.dead.Store(true)
				time.Sleep(2 * time.Millisecond) // what was asked may be done, and the answer is lost
				return
			}
			if _, e := to.Write(buf[:n]); e != nil {
				return
			}
		}
		if err != nil {
			return
		}
	}
}

// again lets the way be whole once more, until so many bytes have gone.
func (c *cut) again(after int64) {
	c.sent.Store(0)
	c.after.Store(after)
	c.dead.Store(false)
}

// Wherever a connection ends, readers who look all the while see each file whole, what is
// said of it is plain, and the next publish puts all right and leaves nothing behind.
func connectionsEnd(t *testing.T, cuts int, gone bool, open func(address string) (Target, error), server string, raw func() Target, left func() []string) {
	before, after := set("one", "a", "b"), append(set("two", "a", "b"), set("two", "new")...)
	way := cutTo(t, server)
	once := func(all []Calendar) error {
		to, err := open(way.address)
		if err != nil {
			return err
		}
		defer to.Close()
		_, err = Publish(to, all, order(t, all))
		return err
	}
	if err := once(before); err != nil {
		t.Fatal(err)
	}
	way.again(0)
	if err := once(after); err != nil {
		t.Fatal(err)
	}
	whole := way.sent.Load()
	look := raw()
	defer look.Close()
	lost := 0
	for i := range cuts {
		all, was := after, before
		if i%2 == 0 {
			all, was = before, after
		}
		end := sees(t, look.Forms(), look.Read, gone, all[:2], was[:2]).always()
		way.again(1 + whole*int64(i)/int64(cuts))
		if err := once(all); err != nil {
			lost++
			if text := fmt.Sprint(Words(err)); strings.Contains(text, "EOF") || strings.Contains(text, "broken pipe") || strings.Contains(text, "reset by peer") {
				t.Errorf("cut %d: %s", i, text)
			}
		}
		way.again(0)
		if err := once(all); err != nil {
			t.Fatalf("cut %d: the next publish: %v", i, err)
		}
		end()
		for _, c := range all {
			for _, f := range files(look.Forms(), c.Name+".ics", c.Text) {
				if text, err := look.Read(f.Path); err != nil || !bytes.Equal(text, f.Text) {
					t.Errorf("cut %d: %s is another one after the next publish: %v", i, f.Path, err)
				}
			}
		}
		if t.Failed() {
			return
		}
	}
	if lost < cuts/2 {
		t.Errorf("of %d connections that were cut %d failed", cuts, lost)
	}
	if l := left(); len(l) > 0 {
		t.Errorf("left behind: %v", l)
	}
}

func TestSSHConnectionsEnd(t *testing.T) {
	t.Run("that replaces", func(t *testing.T) { sshConnectionsEnd(t, "") })
	t.Run("that cannot replace", func(t *testing.T) { sshConnectionsEnd(t, "-P posix-rename,fsync") })
}

func sshConnectionsEnd(t *testing.T, args string) {
	t.Parallel() // most of the time others are waited for
	s := startSSH(t, args)
	dir := filepath.Join(t.TempDir(), "www")
	open := func(address string) (Target, error) {
		a := s.access()
		known, err := os.ReadFile(s.Known)
		if err != nil {
			return nil, err
		}
		_, key, _ := strings.Cut(string(known), " ")
		host, port, _ := net.SplitHostPort(address)
		a.KnownHosts = filepath.Join(t.TempDir(), "known")
		if err := os.WriteFile(a.KnownHosts, []byte("["+host+"]:"+port+" "+key), 0o600); err != nil {
			return nil, err
		}
		return Open("sftp://"+address+dir, a)
	}
	left := func() []string {
		// What was cut off stands for an hour, since another publish may be at it.
		old, _ := filepath.Glob(filepath.Join(dir, ".*.new"))
		for _, p := range old {
			past := time.Now().Add(-2 * forgotten)
			if err := os.Chtimes(p, past, past); err != nil {
				t.Error(err)
			}
		}
		if len(old) == 0 {
			t.Error("nothing was cut off half way")
		}
		to, err := open(s.Address)
		if err != nil {
			t.Fatal(err)
		}
		defer to.Close()
		published(t, to, set("three", "a", "b", "new"), order(t, set("", "a", "b", "new")))
		now, _ := filepath.Glob(filepath.Join(dir, ".*.new"))
		return now
	}
	connectionsEnd(t, 16, args != "", open, s.Address, func() Target { return folderOf(t, afero.NewOsFs(), dir) }, left)
}

func TestStorageConnectionsEnd(t *testing.T) {
	s := startStore(t)
	open := func(address string) (Target, error) {
		return Open("s3://care/house", Access{Disk: afero.NewOsFs(), Endpoint: "http://" + address, Region: "us-east-1"})
	}
	left := func() (names []string) {
		found, _ := filepath.Glob(filepath.Join(s.Dir, "care", "house", "*"))
		for _, p := range found {
			if filepath.Ext(p) != ".ics" && filepath.Base(p) != manifestName {
				names = append(names, p)
			}
		}
		return names
	}
	connectionsEnd(t, 12, false, open, s.Address, func() Target { return s.open(t, "s3://care/house") }, left)
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
