package compile

import (
	"testing"
	"time"

	"vivary/compile/check"
	"vivary/internal/planned"
	"vivary/internal/wanted"
	"vivary/plan/finding"
	"vivary/plan/source"
)

func TestExamples(t *testing.T) {
	wanted.Suite{Rules: own, Examples: examples,
		Whole: func(text string) wanted.Whole { return check.Splice(text) },
		Find: func(t testing.TB, files map[string]string) (*source.Set, []finding.Finding) {
			c, found := planned.Files(t, files)
			return c.Files, Compile(c, found, time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)).Findings
		},
	}.Run(t)
}

// The page and the command get what they show by the id of a rule alone.
func TestExampleOfEveryRule(t *testing.T) {
	for _, r := range Rules() {
		if e := Example(r.ID); e.Found.Text == "" && e.Words == "" {
			t.Errorf("%s has no example", r.ID)
		}
	}
	if e := Example("no-such-rule"); e.Found.Text != "" {
		t.Error("what is no rule has an example")
	}
}
