package compile

import (
	"flag"
	"os"
	"path/filepath"
	"testing"

	"vivary/plan/finding"
)

var update = flag.Bool("update", false, "write the generated pages")

// The pages are what the registries and the sheets make: a change without them
// fails here.
func TestPages(t *testing.T) {
	pages := map[string]string{"RULES.md": RulesPage(), "../schema/STATES.md": StatesPage()}
	for path, text := range LibraryPages() {
		pages["../schema/"+path] = text
	}
	for path, text := range pages {
		if *update {
			if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		if got, err := os.ReadFile(path); err != nil || string(got) != text {
			t.Errorf("%s is stale: run go test ./compile -run Page -update (%v)", path, err)
		}
	}
	for _, dir := range []string{"species", "types"} {
		there, err := filepath.Glob("../schema/pages/" + dir + "/*.md")
		if err != nil {
			t.Fatal(err)
		}
		for _, path := range there {
			if pages[filepath.ToSlash(path)] == "" {
				t.Errorf("%s is a page of nothing: remove it", path)
			}
		}
	}
}

// Ids of rules are unique and in plain words, and every rule says everything.
func TestRules(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range Rules() {
		if seen[r.ID] {
			t.Errorf("there are two rules %q", r.ID)
		}
		seen[r.ID] = true
		for _, c := range r.ID {
			if !(c >= 'a' && c <= 'z' || c == '-') {
				t.Errorf("the id %q is not in plain words", r.ID)
			}
		}
		if r.Title == "" || r.Why == "" || r.Source == "" || r.Instead == "" {
			t.Errorf("rule %q does not say everything", r.ID)
		}
		if r.Severity == finding.Danger && r.Silence != finding.Never {
			t.Errorf("rule %q is a danger, and can be silenced", r.ID)
		}
	}
}
