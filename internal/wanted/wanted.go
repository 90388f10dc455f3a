// Package wanted holds the examples of rules against what they want: what is found
// and not wanted fails as well as what is wanted and not found. It is for tests, and
// knows neither how a plan is read nor what the rules are about.
package wanted

import (
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"
	"testing"

	"vivary/plan/finding"
	"vivary/plan/finding/example"
	"vivary/plan/source"
)

// Whole is files that an example was made into, ready to be read.
type Whole interface {
	Files() map[string]string
	// Line returns the line of the example that is this line of a file, or 0.
	Line(file string, line int) int
}

// Suite is rules with their examples, and how these are tried.
type Suite struct {
	Rules    []*finding.Rule
	Examples fs.FS
	Whole    func(text string) Whole
	// Find returns what is found in files.
	Find func(t testing.TB, files map[string]string) (*source.Set, []finding.Finding)
	// Told looks at each finding that an example is there for. It may be nil.
	Told func(t testing.TB, f finding.Finding)
}

// Run tries every example: the rule finds in it what is wanted, on the lines on
// which it is wanted, and nothing else; once put right, nothing of it, and nothing
// that refuses. A finding whose edits are made is gone.
func (s Suite) Run(t *testing.T) {
	s.files(t)
	for _, r := range s.Rules {
		t.Run(r.ID, func(t *testing.T) {
			e, err := example.Read(s.Examples, r.ID)
			if err != nil {
				t.Fatal(err)
			}
			if e.Found.Text == "" {
				if e.Words == "" || e.NotFound.Text != "" {
					t.Error("there is nothing to be found, and it is not said why")
				}
				return
			}
			s.found(t, r, e.Found)
			s.notFound(t, r, e.NotFound)
		})
	}
}

// files holds that there is no file without a rule.
func (s Suite) files(t *testing.T) {
	entries, err := fs.ReadDir(s.Examples, example.Folder)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range entries {
		id, ok := strings.CutSuffix(f.Name(), example.Suffix)
		if !ok || !slices.ContainsFunc(s.Rules, func(r *finding.Rule) bool { return r.ID == id }) {
			t.Errorf("%s is the example of no rule", f.Name())
		}
	}
}

func (s Suite) found(t *testing.T, r *finding.Rule, p example.Plan) {
	whole := s.Whole(p.Text)
	files, all := s.Find(t, whole.Files())
	for _, wrong := range compare(r, p.Wants, whole, files, all) {
		t.Error(wrong)
	}
	for _, f := range all {
		if wrong := Unwritten(f); wrong != "" {
			t.Errorf("%s: %s: %s", f.Rule.ID, f.Text, wrong)
		}
		if f.Rule == r && s.Told != nil {
			s.Told(t, f)
		}
		if len(f.Edits) > 0 {
			s.mended(t, f, whole.Files(), files, all)
		}
	}
	if t.Failed() {
		t.Logf("in all:\n%s", told(files, all))
	}
}

// compare says in what the findings of a rule differ from what is wanted. A sheet can
// make a finding worse than its rule, and a milder case of it stands beside a full one.
func compare(r *finding.Rule, wants []example.Want, whole Whole, files *source.Set, all []finding.Finding) (wrong []string) {
	missing := slices.Clone(wants)
	worst := finding.Advice
	for _, f := range all {
		if f.Rule != r {
			continue
		}
		worst = max(worst, f.Severity)
		line := lineOf(whole, files, f)
		i := slices.IndexFunc(missing, func(w example.Want) bool { return w.Line == line && strings.Contains(f.Text, w.Says) })
		if i < 0 {
			wrong = append(wrong, fmt.Sprintf("line %d: not wanted: %s", line, f.Text))
			continue
		}
		missing = slices.Delete(missing, i, i+1)
	}
	for _, w := range missing {
		wrong = append(wrong, fmt.Sprintf("line %d: not found: %q", w.Line, w.Says))
	}
	if len(wants) == 0 {
		wrong = append(wrong, "nothing is wanted of what is to be found")
	} else if len(wrong) == 0 && worst < r.Severity {
		wrong = append(wrong, fmt.Sprintf("at its worst it is %s, and the rule is %s", worst, r.Severity))
	}
	return wrong
}

func (s Suite) notFound(t *testing.T, r *finding.Rule, p example.Plan) {
	if len(p.Wants) > 0 {
		t.Error("something is wanted of what is not found")
	}
	files, all := s.Find(t, s.Whole(p.Text).Files())
	if slices.ContainsFunc(all, func(f finding.Finding) bool { return f.Rule == r || f.Severity.Refuses() }) {
		t.Errorf("put right, it is found again, or refused:\n%s", told(files, all))
	}
}

func lineOf(whole Whole, files *source.Set, f finding.Finding) int {
	if !f.At.Written() {
		return 0
	}
	at := files.Start(f.At)
	return whole.Line(path.Base(at.File), at.Line)
}

func told(files *source.Set, all []finding.Finding) string {
	var b strings.Builder
	if err := (finding.Printer{Files: files}).Print(&b, all); err != nil {
		return fmt.Sprint(err)
	}
	return b.String()
}
