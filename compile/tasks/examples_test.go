package tasks_test

import (
	"path/filepath"
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/compile/ical"
	"vivary/compile/tasks"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// In each example, racks and groups among them, everything that is put up can be ticked: it
// becomes lines of which nothing is found, and is put up no more.
func TestExamplesTicked(t *testing.T) {
	examples, err := filepath.Glob("../../examples/ordinary/*")
	if err != nil || len(examples) < 5 {
		t.Fatal(examples, err)
	}
	lines, racks := 0, 0
	for _, dir := range append(examples, "../../examples/quillmoor", "../../testdata/jobs") {
		disk := afero.NewCopyOnWriteFs(afero.NewOsFs(), afero.NewMemMapFs())
		now := civil.Date(0)
		load := func() *compile.Result {
			t.Helper()
			c, found, err := plan.Load(disk, dir)
			if err != nil {
				t.Fatal(err)
			}
			if now == 0 {
				now, _ = civil.Of(2026, 11, 25)
			}
			return compile.Compile(c, found, now.At(22*60, c.Location))
		}
		for range 3 { // several days, since little comes up on each
			r := load()
			list := tasks.Of(r, "")
			var seen []ical.Seen
			for _, x := range list.Wanted(1) {
				seen = append(seen, ical.Seen{UID: x.UID, Summary: x.Summary, Description: x.Description, Done: true, At: x.Start})
			}
			facts, untold := list.Said(seen, "")
			if len(untold) > 0 {
				t.Errorf("%s: untold: %+v", dir, untold)
			}
			lines += len(facts)
			for _, f := range facts {
				if r.Plan.Rack(f.Enclosure) != nil {
					racks++
				}
			}
			path := filepath.Join(dir, "ticked-"+now.String()+".care.log")
			if err := afero.WriteFile(disk, path, []byte(strings.Join(said(facts), "\n")+"\n"), 0o644); err != nil {
				t.Fatal(err)
			}
			after := load()
			for _, f := range after.Findings {
				if f.Severity > finding.Advice && strings.Contains(after.Plan.Files.Name(f.At.File), "ticked-") {
					t.Errorf("%s: %s", dir, f.Text)
				}
			}
			for _, x := range tasks.Of(after, "").Wanted(1) {
				if !strings.Contains(x.Summary, "To be answered") {
					t.Errorf("%s: %s is ticked and not done", dir, x.Summary)
				}
			}
			now++
		}
	}
	if lines < 300 || racks == 0 {
		t.Errorf("only %d lines, %d of racks", lines, racks)
	}
}
