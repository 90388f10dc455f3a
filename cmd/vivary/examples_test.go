package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/spf13/afero"
)

// Each mistake is found as its finds.txt says, and as nothing else. These are the
// findings as a keeper reads them: review them as texts. UPDATE_EXAMPLES=1 writes
// them anew.
func TestMistakes(t *testing.T) {
	dirs, err := filepath.Glob("../../examples/mistakes/*")
	if err != nil || len(dirs) < 10 {
		t.Fatalf("%d examples, %v", len(dirs), err)
	}
	fine := 0
	for _, dir := range dirs {
		t.Run(filepath.Base(dir), func(t *testing.T) {
			disk := afero.NewBasePathFs(afero.NewOsFs(), dir)
			_, out, errs := at(disk, noon, "check", ".")
			if errs != "" {
				t.Fatal(errs)
			}
			path := filepath.Join(dir, "finds.txt")
			if os.Getenv("UPDATE_EXAMPLES") != "" {
				if err := os.WriteFile(path, []byte(out), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(path)
			if err != nil || string(want) != out {
				t.Errorf("found:\n%s\nexpected (%v):\n%s", out, err, want)
			}
			if strings.HasPrefix(out, "Sound: ") {
				fine++
			}
		})
	}
	if fine != 1 {
		t.Errorf("%d of the mistakes are none; only odd-and-fine should be", fine)
	}
}

// What a good keeper writes builds without a word: no caution, and one piece of advice at
// the most. Common practice, no source; the equipment exists.
func TestOrdinary(t *testing.T) {
	dirs, err := filepath.Glob("../../examples/ordinary/*")
	if err != nil || len(dirs) < 10 {
		t.Fatalf("%d examples, %v", len(dirs), err)
	}
	for _, dir := range dirs {
		t.Run(filepath.Base(dir), func(t *testing.T) {
			disk := afero.NewBasePathFs(afero.NewOsFs(), dir)
			status, out, errs := at(disk, noon, "check", ".")
			if status != fine || errs != "" || strings.Contains(out, ": caution: ") || strings.Count(out, ": advice: ") > 1 {
				t.Errorf("%d %s\n%s", status, errs, out)
			}
		})
	}
}
