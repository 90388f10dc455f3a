package compile_test

import (
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"vivary/internal/planned"
	"vivary/internal/wanted"
	"vivary/plan"
	"vivary/plan/finding"
)

// mistaken are all collections in which tests keep mistakes, by where they stand.
func mistaken(t *testing.T) map[string]map[string]string {
	all := map[string]map[string]string{}
	for _, row := range mistyped(t) {
		all["mistyped: "+row[1]] = planned.With(with(row[0], row[1]), "")
	}
	for _, s := range setups(t) {
		for _, w := range s.wrong {
			all[s.at+": "+w.new] = planned.With(setupHead+s.with(w), "")
		}
	}
	text, err := os.ReadFile("../plan/testdata/mistakes.care.hcl")
	if err != nil {
		t.Fatal(err)
	}
	all["mistakes.care.hcl"] = planned.With(string(text), "")
	dirs, err := filepath.Glob("../examples/mistakes/*")
	if err != nil || len(dirs) == 0 {
		t.Fatal("no mistakes", err)
	}
	for _, dir := range dirs {
		files := map[string]string{}
		for _, pattern := range []string{"*" + plan.PlanSuffix, "*" + plan.LogSuffix} {
			names, err := filepath.Glob(filepath.Join(dir, pattern))
			if err != nil {
				t.Fatal(err)
			}
			for _, name := range names {
				text, err := os.ReadFile(name)
				if err != nil {
					t.Fatal(err)
				}
				files[filepath.Base(name)] = string(text)
			}
		}
		all[dir] = files
	}
	return all
}

// Whatever is found in any of the mistakes that tests keep: what to write is an edit, or
// words that nobody takes for a line. An edit is of a plan that still reads, its finding is
// gone, and nothing is wrong with the text of the lines that it wrote, whatever a block of
// which nothing was read may lack.
func TestEditsOfAllMistakes(t *testing.T) {
	all := mistaken(t)
	edits := 0
	for _, where := range slices.Sorted(maps.Keys(all)) {
		files := all[where]
		set, before := findAll(t, files)
		said := times(before)
		for _, f := range before {
			if wrong := wanted.Unwritten(f); wrong != "" {
				t.Errorf("%s: %s: %s: %s", where, f.Rule.ID, f.Text, wrong)
			}
			if len(f.Edits) == 0 {
				continue
			}
			edits++
			edited, err := wanted.Apply(set, files, f.Edits)
			if err != nil {
				t.Errorf("%s: %s: %v", where, f.Text, err)
				continue
			}
			again, after := findAll(t, edited)
			if times(after)[same{f.Rule.ID, f.Text}] >= said[same{f.Rule.ID, f.Text}] {
				t.Errorf("%s: %s: %s: it is found again, once its edit is made", where, f.Rule.ID, f.Text)
			}
			for _, a := range after {
				if line, _, _ := again.Line(a.At); slices.Contains(plan.Rules, a.Rule) && a.Rule.ID != "missing" && said[same{a.Rule.ID, a.Text}] == 0 && !standsIn(files, line) {
					t.Errorf("%s: %s: %s: its edit writes %q, of which is found: %s", where, f.Rule.ID, f.Text, line, a.Text)
				}
			}
		}
	}
	if len(all) < 300 || edits < 120 {
		t.Errorf("%d edits in %d collections", edits, len(all))
	}
}

// same are findings that say the same.
type same struct{ rule, text string }

func times(all []finding.Finding) map[same]int {
	out := map[same]int{}
	for _, f := range all {
		out[same{f.Rule.ID, f.Text}]++
	}
	return out
}

// standsIn reports whether a line stands in one of the files.
func standsIn(files map[string]string, line string) bool {
	for _, text := range files {
		if strings.Contains(text, line) {
			return true
		}
	}
	return false
}
