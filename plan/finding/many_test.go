package finding

import (
	"fmt"
	"strings"
	"testing"

	"vivary/plan/source"
)

func printed(t *testing.T, set *source.Set, all []Finding) string {
	t.Helper()
	var b strings.Builder
	if err := (Printer{Files: set, Named: func(names []string) string { return strings.Join(names, "+") }}).Print(&b, all); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// No more is printed than anybody reads: the worst, in the order of the text, and then how
// many of what are left.
func TestPrintMost(t *testing.T) {
	set := &source.Set{}
	id := set.Add("f", []byte(strings.Repeat("x\n", 500)))
	var all []Finding
	for i := range 250 {
		rule := mild
		if i >= 245 {
			rule = bad
		}
		all = append(all, Finding{Rule: rule, Severity: rule.Severity, Text: fmt.Sprintf("number %d", i), At: source.Place{File: id, Start: int32(2 * i), End: int32(2*i + 1)}})
	}
	out := printed(t, set, all)
	if n := strings.Count(out, "number "); n != shown || strings.Count(out, "danger: ") != 5 || strings.Contains(out, "number 195 ") || !strings.HasPrefix(out, "f:1:1: caution: number 0 ") {
		t.Errorf("%d are printed", n)
	}
	if !strings.HasSuffix(out, "\n\nAnd 50 more, not printed: 50 cautions [mild]. What is printed comes first.\n") {
		t.Errorf("it ends %q", out[len(out)-120:])
	}
	if out := printed(t, set, all[:shown]); strings.Contains(out, "more") {
		t.Error("of as many as are printed some are said to be left")
	}
}

// What says the same at several places is read once, with the places; two alike stay two,
// and so does what differs in its limit.
func TestPrintAlike(t *testing.T) {
	set := &source.Set{}
	id := set.Add("f", []byte(strings.Repeat("x\n", 40)))
	of := func(i int, limit string) Finding {
		name := fmt.Sprintf("tub-%d", i)
		return Finding{Rule: mild, Text: name + ": nothing is said", Limit: limit, In: Box{Name: name}, Of: []string{name}, At: source.Place{File: id, Start: int32(2 * i), End: int32(2*i + 1)}}
	}
	var all []Finding
	for i := range 20 {
		all = append(all, of(i, ""))
	}
	out := printed(t, set, append(all, of(30, "5"), of(31, "5")))
	if strings.Count(out, "nothing is said") != 3 || !strings.Contains(out, "    in: tub-0+tub-1+") || !strings.Contains(out, "+tub-19\n    and at: 19 more places: f:2:1, 3:1, ") || !strings.Contains(out, " and 7 more\n") {
		t.Error(out)
	}
}
