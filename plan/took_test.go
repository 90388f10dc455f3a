package plan_test

import (
	"strings"
	"testing"

	"vivary/internal/planned"
	"vivary/schema"
)

// TestTook reads how long care took from lines of the log, and leaves lines of before what
// they were.
func TestTook(t *testing.T) {
	const tubs = "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\n\nenclosure \"tub\" {\n  species = \"grammostola-pulchra\"\n  numbers = \"1 to 3\"\n\n  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n\n  care \"big-clean\" {\n    kind  = \"deep-clean\"\n    every = \"6 months\"\n  }\n}\n"
	for _, x := range []struct {
		line    string
		minutes float64 // 0 for none
		care    string
		remark  bool
	}{
		{"tub-1 done deep-clean", 0, "deep-clean", false},
		{"tub-1 done deep-clean \"took 35 min\"", 0, "deep-clean", false},
		{"tub-1 done deep-clean 35 min", 35, "deep-clean", false},
		{"tub-1 done deep-clean 35min \"a note\"", 35, "deep-clean", false},
		{"tub-1 done deep-clean 1 h", 60, "deep-clean", false},
		{"tub-1 done big-clean 41.5 min", 41.5, "big-clean", false},
		{"tub-1 misted 3 min", 3, "mist", false},
		{"tub-1 misted", 0, "mist", false},
		{"tub-1 done deep-clean 35", 0, "", true},
		{"tub-1 done deep-clean 0 min", 0, "", true},
		{"tub-1 done deep-clean 40 days", 0, "", true},
		{"tub-1 done deep-clean -5 min", 0, "", true},
		{"tub-1 skipped deep-clean 35 min", 0, "", true},
	} {
		c, _ := planned.Files(t, map[string]string{"c.care.hcl": tubs, "c.care.log": "2026-11-02 " + x.line + "\n"})
		if len(c.Log) != 1 {
			t.Fatalf("%s: %d lines", x.line, len(c.Log))
		}
		e := c.Log[0]
		if remark := e.Word == schema.WordRemark; remark != x.remark {
			t.Errorf("%s: a remark: %v", x.line, remark)
			continue
		}
		if !x.remark && (e.Took.V.Value != x.minutes || len(e.Args) != 1 || e.Args[0].V != x.care) {
			t.Errorf("%s: took %v of %v", x.line, e.Took.V, e.Args)
		}
	}
	log := func(lines ...string) string { return "2026-11-0" + strings.Join(lines, "\n2026-11-0") + "\n" }
	c, _ := planned.Files(t, map[string]string{"c.care.hcl": tubs, "c.care.log": log("1 tub-1 done deep-clean 30 min", "2 tub-1 done big-clean 50 min", "3 tub-1 done deep-clean 35 min", "4 tub-2 done deep-clean 20 min", "5 tub-1 done water")})
	if l, own, ok := c.Learnt("tub-1", schema.KindDeepClean); !ok || !own || l.Minutes != 35 || l.Lines != 3 {
		t.Errorf("of tub-1 is learnt %+v, %v, %v", l, own, ok)
	}
	if _, _, ok := c.Learnt("tub-2", schema.KindDeepClean); ok {
		t.Error("one line is no measure")
	}
	c, _ = planned.Files(t, map[string]string{"c.care.hcl": tubs, "c.care.log": log("1 tub-1 done deep-clean 30 min", "2 tub-1 done big-clean 50 min", "3 tub-1 done deep-clean 35 min", "4 tub-2 done deep-clean 20 min", "5 tub-3 done deep-clean 10 min")})
	if l, own, ok := c.Learnt("tub-2", schema.KindDeepClean); !ok || own || l.Minutes != 30 || l.Lines != 5 {
		t.Errorf("of all is learnt %+v, %v, %v", l, own, ok)
	}
	if _, _, ok := c.WithoutLog().Learnt("tub-1", schema.KindDeepClean); ok {
		t.Error("without its log a house has learnt nothing")
	}
}
