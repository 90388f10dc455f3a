package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
)

// On a real disk that is full a note leaves the log as it was, byte for byte, and once there
// is room again it is written.
func TestNoteOnRealFullDisk(t *testing.T) {
	dir := t.TempDir()
	if out, err := exec.Command("mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", dir).CombinedOutput(); err != nil {
		t.Fatalf("a small disk is made by root only: %v, %s", err, out)
	}
	t.Cleanup(func() { _ = exec.Command("umount", dir).Run() })
	disk := afero.NewBasePathFs(afero.NewOsFs(), dir)
	if s, _, e := at(disk, noon, "start", "c"); s != fine {
		t.Fatal(e)
	}
	log := filepath.Join(dir, "c", "records", "2026.care.log")
	// A page is the least that this disk gives: the log has some bytes left in its last one.
	before := bytes.Repeat([]byte("# "+strings.Repeat("x", 60)+"\n"), 65)
	before = before[:4096-20]
	before[len(before)-1] = '\n'
	if err := os.WriteFile(log, before, 0o644); err != nil {
		t.Fatal(err)
	}
	filler := filepath.Join(dir, "filler")
	f, err := os.Create(filler)
	if err != nil {
		t.Fatal(err)
	}
	for err == nil {
		_, err = f.Write(make([]byte, 4096))
	}
	f.Close()
	s, out, e := at(disk, noon, "note", "--in", "c", "burrow-a", "refused", "left all of it where it was")
	after, _ := os.ReadFile(log)
	if s != refused || !strings.Contains(e, "Nothing was written") || out != "" || !bytes.Equal(before, after) {
		t.Errorf("status %d, %s%s; the log has %d bytes, had %d: %q", s, out, e, len(after), len(before), after[max(0, len(after)-60):])
	}
	if err := os.Remove(filler); err != nil {
		t.Fatal(err)
	}
	if s, _, e := at(disk, noon, "note", "--in", "c", "burrow-a", "refused"); s != fine {
		t.Error(e)
	}
}

// A last line that was torn elsewhere stays as it is and keeps nothing from being written.
func TestNoteBehindTornLine(t *testing.T) {
	for _, torn := range []string{"2026-11-24 burr", "2026-11-24 burrow-a moult \"a", "2026-11-24 burrow-a refused", "\xff\xfe\x00", "x\x00y\n2026-11-24 \x1b[2J", strings.Repeat("y", 10000)} {
		disk := afero.NewMemMapFs()
		at(disk, noon, "start", "c")
		const path = "c/records/2026.care.log"
		if strings.HasPrefix(torn, "\xff\xfe") {
			torn = "2026-11-24 " + torn // at the beginning it would be another encoding
		}
		_ = afero.WriteFile(disk, path, []byte(torn), 0o644)
		if s, _, e := at(disk, noon, "note", "--in", "c", "burrow-a", "refused"); s != fine {
			t.Errorf("%.20q: status %d, %s", torn, s, e)
		}
		text, _ := afero.ReadFile(disk, path)
		if want := torn + "\n2026-11-25 burrow-a refused\n"; string(text) != want {
			t.Errorf("%.20q: the log is %.200q", torn, text)
		}
		if s, _, e := at(disk, noon, "build", "c"); s != fine {
			t.Errorf("%.20q: it cannot be built: %s", torn, e)
		}
	}
}

// Two who note the same at the same moment write it once; what is not the same stays twice.
func TestTheSameNotedAtOnce(t *testing.T) {
	dir := t.TempDir()
	disk := afero.NewOsFs()
	if s, _, e := at(disk, noon, "start", dir); s != fine {
		t.Fatal(e)
	}
	lock := publish.Waiting(time.Minute, time.Now, func(string) {})
	var wg sync.WaitGroup
	var written atomic.Int32
	for i := range 12 {
		wg.Go(func() {
			var o, e strings.Builder
			w := &world{disk: disk, out: &o, err: &e, clock: func() time.Time { return noon }, lock: lock}
			line := []string{"note", "--in", dir, "burrow-a", "refused"}
			if i%4 == 3 {
				line = append(line[:4], "measured", fmt.Sprint(20+i), "C")
			}
			if run(line, w) == fine {
				written.Add(1)
			}
		})
	}
	wg.Wait()
	text, err := afero.ReadFile(disk, filepath.Join(dir, "records", "2026.care.log"))
	if err != nil {
		t.Fatal(err)
	}
	if n := strings.Count(string(text), "burrow-a refused\n"); n != 1 {
		t.Errorf("it stands %d times:\n%s", n, text)
	}
	if n := strings.Count(string(text), "burrow-a measured 2"); n != 2 || written.Load() != 4 {
		t.Errorf("%d of 3 others stand, %d said that they wrote:\n%s", n, written.Load(), text)
	}
	if left, _ := afero.Exists(disk, filepath.Join(dir, ".vivary-lock")); left {
		t.Error("the lock stays")
	}
}
