package roster_test

import (
	"testing"

	"vivary/compile/check"
	"vivary/compile/roster"
)

// TestExamples runs the two examples of every rule.
func TestExamples(t *testing.T) {
	for _, rule := range roster.Rules {
		if rule.Bad == "" {
			continue // too many series would take an hour to write
		}
		for _, c := range []struct {
			what, example string
			want          bool
		}{{"bad", rule.Bad, true}, {"good", rule.Good, false}} {
			text, log := check.Example(c.example)
			r := compiled(t, text, log, day("2026-11-25"))
			got := false
			for _, f := range r.Findings {
				got = got || f.Rule == rule
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
