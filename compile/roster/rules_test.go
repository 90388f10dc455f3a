package roster_test

import (
	"testing"

	"vivary/compile"
	"vivary/compile/check"
	"vivary/compile/roster"
	"vivary/internal/planned"
	"vivary/internal/wanted"
	"vivary/plan/finding"
	"vivary/plan/source"
)

func TestExamples(t *testing.T) {
	wanted.Suite{Rules: roster.Rules, Examples: roster.Examples,
		Whole: func(text string) wanted.Whole { return check.Splice(text) },
		Find: func(t testing.TB, files map[string]string) (*source.Set, []finding.Finding) {
			c, found := planned.Files(t, files)
			return c.Files, compile.Compile(c, found, day("2026-11-25").At(12*60, c.Location)).Findings
		},
	}.Run(t)
}
