package publish

import (
	"os"
	"path/filepath"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"github.com/spf13/afero"
)

func clock() time.Time { return time.Date(2026, 11, 28, 19, 30, 0, 0, time.UTC) }

// One has the folder; another waits, says for whom, and has it next or gives up.
func TestLockWaits(t *testing.T) {
	dir := t.TempDir()
	var said atomic.Value
	lock := Waiting(5*time.Second, clock, func(who string) { said.Store(who) })
	release, err := lock(dir)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := Waiting(50*time.Millisecond, clock, nil)(dir); err == nil || !strings.Contains(err.Error(), "another vivary has the folder") || !strings.Contains(err.Error(), "since 19:30:00") {
		t.Errorf("it is held: %v", err)
	}
	done := make(chan error)
	go func() {
		second, err := lock(dir)
		if err == nil {
			second()
		}
		done <- err
	}()
	time.Sleep(1300 * time.Millisecond)
	select {
	case err := <-done:
		t.Fatalf("two have it: %v", err)
	default:
	}
	release()
	if err := <-done; err != nil {
		t.Error(err)
	}
	if who, _ := said.Load().(string); !strings.Contains(who, "since 19:30:00") {
		t.Errorf("said %q", who)
	}
	if left, err := os.ReadDir(dir); err != nil || len(left) > 0 {
		t.Errorf("left: %v, %v", left, err)
	}
}

// However many there are, one has it at a time, while its file comes and goes, and the
// folder too.
func TestLockOneAtATime(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "feeds")
	lock := Waiting(time.Minute, clock, func(string) {})
	var (
		in atomic.Int32
		wg sync.WaitGroup
	)
	for range 8 {
		wg.Go(func() {
			for range 20 {
				_ = mkdir(afero.NewOsFs(), dir)
				release, err := lock(dir)
				if err != nil {
					t.Error(err)
					return
				}
				if n := in.Add(1); n != 1 {
					t.Errorf("%d have it", n)
				}
				in.Add(-1)
				release()
				_ = os.Remove(dir)
			}
		})
	}
	wg.Wait()
}

// What has the name of the lock and is none is said, and nothing is waited for.
func TestLockIsNoFile(t *testing.T) {
	dir := t.TempDir()
	if err := os.Mkdir(filepath.Join(dir, lockName), 0o755); err != nil {
		t.Fatal(err)
	}
	if _, err := Waiting(time.Minute, clock, nil)(dir); err == nil || !strings.Contains(err.Error(), "delete it") {
		t.Errorf("a folder: %v", err)
	}
}
