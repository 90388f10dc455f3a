package compile_test

import (
	"strings"
	"testing"

	"vivary/plan/finding"
)

// On the day of a birth what is left of the last evening's meal stays, since nothing may be
// lifted: nobody is told to take it out, and no plan is other for it.
func TestLeftInAtABirth(t *testing.T) {
	plan := strings.Replace(rightly, "count  = 1", "count  = \"0.1\"", 1)
	plan = strings.Replace(plan, `on   = ["tue", "fri"]`, "every = \"2 days\"\n    from = \"2026-11-28\"", 1)
	n := 0
	r := on(t, "2026-11-29", plan, "2026-06-01 box adult gravid\n2026-11-29 box adult born 12\n")
	for _, f := range r.Findings {
		if f.Rule.ID != "leftovers-late" {
			continue
		}
		n++
		if f.Severity != finding.Caution || f.Write != "nothing in the plan: leave it until Tue 1 Dec; then take out what is left, and log done leftovers" || len(f.Edits) > 0 {
			t.Errorf("%s: %s: %s", f.Severity, f.Text, f.Write)
		}
	}
	if n != 1 {
		t.Errorf("it is found %d times", n)
	}
	if said := r.Verdict(); !strings.Contains(said, "1 need is not met in time: box adult has a look for leftovers only 7 days after a meal; every other") {
		t.Error(said)
	}
}
