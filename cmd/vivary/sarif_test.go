package main

import (
	"encoding/json"
	"path/filepath"
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/compile/sarif"
)

// The findings of check and build are printed as SARIF with the same exit status, the same
// bytes each time, and nothing beside them; what is no finding has no such form.
func TestSarif(t *testing.T) {
	mistakes, err := filepath.Glob("../../examples/mistakes/*")
	if err != nil || len(mistakes) < 10 {
		t.Fatal(err)
	}
	disk := afero.NewReadOnlyFs(afero.NewOsFs())
	for _, dir := range append(mistakes, "../../examples/quillmoor") {
		for _, name := range []string{"check", "build"} {
			over := func(form string) (int, string, string) {
				return at(afero.NewCopyOnWriteFs(disk, afero.NewMemMapFs()), noon, name, dir, "--format", form)
			}
			want, _, _ := over("text")
			status, out, errs := over("sarif")
			_, again, _ := over("sarif")
			var log sarif.Log
			if err := json.Unmarshal([]byte(out), &log); err != nil || status != want || errs != "" || out != again || log.Version != "2.1.0" || len(log.Runs) != 1 {
				t.Errorf("%s %s: status %d, %d for people, %v %s", name, dir, status, want, err, errs)
			}
		}
	}
	for _, line := range []string{"due --format sarif", "why --format sarif", "compare --format sarif a b", "version --format=SARIF", "--format sarif publish x"} {
		status, out, errs := at(disk, noon, strings.Fields(line)...)
		if status != usage || out != "" || !strings.Contains(errs, "sarif goes with check and build") {
			t.Errorf("%s: status %d, %s%s", line, status, out, errs)
		}
	}
}
