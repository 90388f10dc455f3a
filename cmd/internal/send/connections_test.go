//go:build unix

package send

import (
	"bytes"
	"fmt"
	"io"
	"net"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"github.com/spf13/afero"
)

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
	lost, mixed := 0, 0
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
		if honest(t, fmt.Sprint("cut ", i), look, gone, all[:2], was[:2]) > 1 {
			mixed++
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
	t.Logf("of %d cuts %d left calendars of two sets, each of them whole, until the next publish", cuts, mixed)
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
