package main

import (
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/compile/check"
)

// TestDueAlwaysPrints: whatever is wrong with a plan, there is a list, from the calendars
// where there are any, and it says that the plan is refused.
func TestDueAlwaysPrints(t *testing.T) {
	sound := check.Splice("keeper \"lead\" {\n}\n").Files()
	refusals := 0
	for _, rule := range compile.Rules() {
		e := compile.Example(rule.ID)
		if e.Found.Text == "" {
			continue
		}
		for _, built := range []bool{false, true} {
			disk := afero.NewMemMapFs()
			put := func(files map[string]string) {
				for name, text := range files {
					if err := afero.WriteFile(disk, "c/"+name, []byte(text), 0o644); err != nil {
						t.Fatal(err)
					}
				}
			}
			if built {
				put(sound)
				if s, _, err := at(disk, noon.AddDate(0, 0, -1), "build", "c"); s != fine {
					t.Fatal(err)
				}
			}
			put(check.Splice(e.Found.Text).Files())
			status, out, _ := at(disk, noon, "due", "c")
			if status == usage || strings.TrimSpace(out) == "" {
				t.Errorf("%s: status %d and %q", rule.ID, status, out)
			}
			if status != refused {
				continue
			}
			refusals++
			first, _, _ := strings.Cut(out, "\n")
			if !strings.HasPrefix(first, "The plan is refused") || built && !strings.Contains(first, "last built on Tue 24 Nov 2026") {
				t.Errorf("%s: %s", rule.ID, first)
			}
			if built && !strings.Contains(out, "Wed 25 Nov 2026, today\n") {
				t.Errorf("%s: nothing of today:\n%s", rule.ID, out)
			}
		}
	}
	if refusals < 60 {
		t.Errorf("only %d plans were refused", refusals)
	}
}
