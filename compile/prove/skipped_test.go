package prove_test

import (
	"strings"
	"testing"

	"vivary/compile/check"
)

// TestSkippedTodayIsNoAbsence: what the keeper skipped is missed as late as before,
// though the animals could be left for longer by somebody who goes away.
func TestSkippedTodayIsNoAbsence(t *testing.T) {
	text, _ := check.Example("care \"water\" {\n  every = \"day\"\n}\n")
	for _, log := range []string{"2026-11-23 box skipped water\n2026-11-24 box skipped water\n", "2026-11-23 box skipped water\n2026-11-24 box skipped water\n2026-11-25 box skipped water\n"} {
		said := ""
		for _, f := range compiled(t, text, log, day("2026-11-25")).Findings {
			if f.Rule.ID == "need-missed" {
				said = f.Text + "; " + f.Limit
			}
		}
		if !strings.Contains(said, "2 days at the longest") {
			t.Errorf("%s%q", log, said)
		}
	}
}
