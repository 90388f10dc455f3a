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

// TestLongAwaitedMoult: an animal that came years ago and has been sealed in before a
// moult for longer than the proof looks back has missed nothing that it must not have.
// Two months and more are not rare (common practice, no source).
func TestLongAwaitedMoult(t *testing.T) {
	text, _ := check.Example("animals \"ash\" {\n  count = 1\n  stage = \"juvenile\"\n  arrived = \"2024-04-12\"\n}\n")
	log := "2026-06-01 box fed\n2026-06-12 box sealed\n"
	for today := day("2026-06-12"); today < day("2026-10-10"); today += 3 {
		for _, f := range compiled(t, text, log, today).Findings {
			if f.Rule.ID == "need-missed" {
				t.Fatalf("%v: %s", today.Short(), f.Text)
			}
		}
	}
}
