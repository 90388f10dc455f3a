package wanted

import (
	"testing"

	"vivary/plan/finding"
	"vivary/plan/finding/example"
	"vivary/plan/source"
)

// A finding that is missing, one that is not wanted, one on another line and one
// that says something else are told; one that is wanted is not.
func TestCompare(t *testing.T) {
	rule, other := &finding.Rule{ID: "rule", Severity: finding.Caution}, &finding.Rule{ID: "other"}
	whole := AsItStands("one\ntwo\n2026-11-02 three\n")
	files := &source.Set{}
	plan := files.Add("c/a.care.hcl", []byte(whole.Files()["a.care.hcl"]))
	log := files.Add("c/a.care.log", []byte(whole.Files()["a.care.log"]))
	at := func(file source.ID, start int32, text string, r *finding.Rule) finding.Finding {
		return finding.Finding{Rule: r, Severity: finding.Caution, At: source.Place{File: file, Start: start, End: start + 1}, Text: text}
	}
	second, third := at(plan, 4, "it is said", rule), at(log, 0, "it is said", rule)
	nowhere := finding.Finding{Rule: rule, Severity: finding.Caution, Text: "it is said"}
	advice := second
	advice.Severity = finding.Advice
	for _, c := range []struct {
		name  string
		wants []example.Want
		found []finding.Finding
		wrong int
	}{
		{"as wanted", []example.Want{{Line: 2, Says: "said"}, {Line: 3, Says: "said"}, {Says: "said"}}, []finding.Finding{third, nowhere, second, at(plan, 0, "x", other)}, 0},
		{"missing", []example.Want{{Line: 2, Says: "said"}, {Line: 3, Says: "said"}}, []finding.Finding{second}, 1},
		{"twice where once is wanted", []example.Want{{Line: 2, Says: "said"}}, []finding.Finding{second, second}, 1},
		{"on another line", []example.Want{{Line: 1, Says: "said"}}, []finding.Finding{second}, 2},
		{"in other words", []example.Want{{Line: 2, Says: "told"}}, []finding.Finding{second}, 2},
		{"by another rule", []example.Want{{Line: 1, Says: "x"}}, []finding.Finding{at(plan, 0, "x", other)}, 1},
		{"too mild", []example.Want{{Line: 2, Says: "said"}}, []finding.Finding{advice}, 1},
		{"nothing wanted", nil, nil, 1},
	} {
		if wrong := compare(rule, c.wants, whole, files, c.found); len(wrong) != c.wrong {
			t.Errorf("%s: %q", c.name, wrong)
		}
	}
}

// An edit that leaves its finding, or that brings an error, is told; one that brings
// mere advice is not.
func TestUnmended(t *testing.T) {
	rule := &finding.Rule{ID: "rule"}
	f := finding.Finding{Rule: rule, Text: "a", Severity: finding.Caution}
	old := finding.Finding{Rule: rule, Text: "b", Severity: finding.Error}
	for _, c := range []struct {
		after []finding.Finding
		wrong int
	}{
		{nil, 0},
		{[]finding.Finding{old}, 0},
		{[]finding.Finding{f}, 1},
		{[]finding.Finding{{Rule: rule, Text: "c", Severity: finding.Error}}, 1},
		{[]finding.Finding{{Rule: rule, Text: "c", Severity: finding.Caution}}, 0},
	} {
		if wrong := unmended(f, []finding.Finding{f, old}, c.after); len(wrong) != c.wrong {
			t.Errorf("%v: %q", c.after, wrong)
		}
	}
}
