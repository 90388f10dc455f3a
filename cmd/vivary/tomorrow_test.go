package main

import (
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/plan"
	"vivary/plan/finding"
)

// The same facts give the same findings tomorrow, word for word and in the same order: a
// plan without a log, and without a date near by, is answered alike on each of forty days.
// Else nobody could tell what a change of the plan changed.
func TestSameFindingsTomorrow(t *testing.T) {
	dirs, err := filepath.Glob("../../examples/mistakes/*")
	if err != nil || len(dirs) < 10 {
		t.Fatalf("%d examples, %v", len(dirs), err)
	}
	for _, dir := range append(dirs, "../../examples/quillmoor") {
		c, found, err := plan.Load(afero.NewBasePathFs(afero.NewOsFs(), dir), ".")
		if err != nil {
			t.Fatal(err)
		}
		c = c.WithoutLog()
		first := ""
		for day := range 41 {
			var b strings.Builder
			r := compile.Compile(c, found, noon.AddDate(0, 0, day))
			if err := (finding.Printer{Files: c.Files}).Print(&b, r.Findings); err != nil {
				t.Fatal(err)
			}
			if day == 0 {
				first = b.String()
			} else if b.String() != first {
				t.Errorf("%s on %s:\n%s\nand before:\n%s", filepath.Base(dir), noon.AddDate(0, 0, day).Format(time.DateOnly), b.String(), first)
				break
			}
		}
	}
}
