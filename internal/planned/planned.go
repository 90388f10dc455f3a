// Package planned reads plans that stand in tests.
package planned

import (
	"testing"

	"github.com/spf13/afero"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// Files reads a collection of files, by name, and returns what is found in them.
func Files(t testing.TB, files map[string]string) (*plan.Collection, []finding.Finding) {
	t.Helper()
	disk := afero.NewMemMapFs()
	for name, text := range files {
		if err := afero.WriteFile(disk, "c/"+name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	c, found, err := plan.Load(disk, "c")
	if err != nil {
		t.Fatal(err)
	}
	return c, found
}

// Sound reads a collection of files as Files does. One that is refused fails the
// test.
func Sound(t testing.TB, files map[string]string) (*plan.Collection, []finding.Finding) {
	t.Helper()
	c, found := Files(t, files)
	for _, f := range found {
		if f.Severity.Refuses() {
			t.Fatalf("the plan is refused: %s: %s (%s)", f.Rule.ID, f.Text, f.Write)
		}
	}
	return c, found
}

// With is a collection of one plan and one log.
func With(text, log string) map[string]string {
	files := map[string]string{"a.care.hcl": text}
	if log != "" { // an empty file would be found
		files["a.care.log"] = log
	}
	return files
}

// Day reads a date that stands in a test.
func Day(s string) civil.Date {
	d, err := civil.Parse(s)
	if err != nil {
		panic(err)
	}
	return d
}
