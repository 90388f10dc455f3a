package prove_test

import (
	"testing"

	"vivary/compile/check"
	"vivary/compile/prove"
)

// TestExamples runs the two examples of every rule.
func TestExamples(t *testing.T) {
	for _, rule := range prove.Rules {
		for _, c := range []struct {
			what, example string
			want          bool
		}{{"bad", rule.Bad, true}, {"good", rule.Good, false}} {
			text, log := check.Example(c.example)
			r := compiled(t, text, log, day("2026-11-25"))
			got := false
			for _, f := range r.Findings {
				if f.Rule == rule {
					got = true
					if f.Text == "" || f.Limit == "" || f.Source == "" || f.Write == "" || !f.At.Written() {
						t.Errorf("%s: a keeper is not told enough: %+v", rule.ID, f)
					}
				}
				if !c.want && f.Severity.Refuses() {
					t.Errorf("%s: the good example is refused: %s %s", rule.ID, f.Rule.ID, f.Text)
				}
			}
			if got != c.want {
				t.Errorf("%s: the %s example yields it: %v", rule.ID, c.what, got)
			}
		}
	}
}
