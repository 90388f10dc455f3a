package compile_test

import (
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/check"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/internal/planned"
	"vivary/plan/finding"
	ruled "vivary/plan/finding/example"
)

// byDate are mistakes that go by a date of the plan that comes meanwhile.
var byDate = map[string]string{
	"date-idle":       "the date is over",
	"rest-warm":       "what was fed before the season",
	"disturbing-held": "the day is over",
	"left-untrained":  "the absence is over",
	"mistyped: on = [\"1st tuesday of the month\"]": "a rate over months of four weeks and of five",
}

// The same facts give the same findings tomorrow, whatever is wrong: the examples of the rules,
// without their logs, and all mistakes that tests keep are answered in the same words on each of
// these days, unless they go by a date.
func TestMistakesTomorrow(t *testing.T) {
	all := mistaken(t)
	add := func(rules []*finding.Rule, examples fs.FS) {
		for _, r := range rules {
			e, err := ruled.Read(examples, r.ID)
			if err != nil {
				t.Fatal(err)
			}
			all[r.ID] = check.Splice(e.Found.Text).Files()
		}
	}
	var checks []*finding.Rule
	for _, r := range check.Rules {
		checks = append(checks, &r.Rule)
	}
	add(checks, check.Examples)
	add(prove.Rules, prove.Examples)
	add(roster.Rules, roster.Examples)
	noon := time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)
	for _, where := range slices.Sorted(maps.Keys(all)) {
		if byDate[where] != "" {
			continue
		}
		c, found := planned.Files(t, all[where])
		c = c.WithoutLog()
		first := ""
		for _, days := range []int{0, 1, 2, 5, 9, 17, 40} {
			var b strings.Builder
			for _, f := range compile.Compile(c, found, noon.AddDate(0, 0, days)).Findings {
				fmt.Fprintln(&b, f.Rule.ID, f.Severity, f.Text, f.Where, f.Limit, f.Write, f.Edits, f.Also)
			}
			if days == 0 {
				first = b.String()
			} else if b.String() != first {
				t.Errorf("%s: %d days later it is\n%s\nand was\n%s", where, days, b.String(), first)
				break
			}
		}
	}
}
