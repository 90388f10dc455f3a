package main

import (
	"fmt"
	"strings"
	"sync"
	"testing"

	"github.com/spf13/afero"
)

// Of notes that are written at once none is lost, and no line is cut.
func TestNotesAtOnce(t *testing.T) {
	disk := afero.NewBasePathFs(afero.NewOsFs(), t.TempDir())
	at(disk, noon, "start", "c")
	var wg sync.WaitGroup
	const n = 8
	for i := range n {
		wg.Go(func() {
			if s, _, e := at(disk, noon, "note", "--in", "c", "burrow-a", "remark", fmt.Sprint("note ", i)); s != fine {
				t.Error(e)
			}
		})
	}
	wg.Wait()
	text, _ := afero.ReadFile(disk, "c/records/2026.care.log")
	for i := range n {
		if line := fmt.Sprintf("2026-11-25 burrow-a remark \"note %d\"\n", i); strings.Count(string(text), line) != 1 {
			t.Errorf("%q is not in\n%s", line, text)
		}
	}
	if strings.Count(string(text), "\n") != n {
		t.Errorf("more than %d lines:\n%s", n, text)
	}
}

// A disk that fills up takes no half of a line.
func TestNoteOnFullDisk(t *testing.T) {
	disk := afero.NewMemMapFs()
	at(disk, noon, "start", "c")
	at(disk, noon, "note", "--in", "c", "burrow-a", "refused")
	for left := range 20 {
		s, _, e := at(&full{Fs: disk, left: left}, noon, "note", "--in", "c", "burrow-a", "remark", "a")
		text, _ := afero.ReadFile(disk, "c/records/2026.care.log")
		if s != refused || !strings.Contains(e, "no space") || string(text) != "2026-11-25 burrow-a refused\n" {
			t.Fatalf("%d bytes left: status %d, %s, the log is %q", left, s, e, text)
		}
	}
}
