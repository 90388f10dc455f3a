package compile_test

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"vivary/compile/growth"
	"vivary/plan/finding"
)

// What is explained of the room of an enclosure and what is found of it are one: "too
// little" is said of a floor or of hides where and only where the rule finds them, for the
// set-up of every species, with its floor cut to smaller and smaller, and one hide or none.
func TestRoomIsExplainedAsItIsFound(t *testing.T) {
	said := map[string]int{}
	for _, s := range setups(t) {
		if strings.Contains(s.text, "places =") {
			continue
		}
		for _, share := range []float64{1, 0.5, 0.3, 0.2, 0.1} {
			text := shrunk(s.text, share)
			if share == 0.3 {
				text = hidesForm.ReplaceAllString(text, "hides = 1")
			}
			r := on(t, "2027-03-02", setupHead+text, "")
			for _, l := range r.Lives {
				report, ok := growth.Of(l, r.Plan, r.Today)
				if !ok {
					continue
				}
				for begins, rule := range map[string]string{"Floor: ": "floor-small", "Hides: ": "hides-few"} {
					found := slices.ContainsFunc(r.Findings, func(f finding.Finding) bool {
						return f.Rule.ID == rule && f.In == l.Plan.Box() && !strings.Contains(f.Text, "not known")
					})
					little := slices.ContainsFunc(report.Lines(), func(line string) bool {
						return strings.HasPrefix(line, begins) && strings.Contains(line, ": too little")
					})
					if found {
						said[rule]++
					}
					if found != little {
						t.Errorf("%s at %g of its floor: %s found %t, explained as too little %t:\n%s", s.at, share, rule, found, little, strings.Join(report.Lines(), "\n"))
					}
				}
			}
		}
	}
	if said["floor-small"] < 50 || said["hides-few"] == 0 {
		t.Error("hardly anything was found", said)
	}
}

var (
	insideForm = regexp.MustCompile(`inside = "(\d+) x (\d+) x (\d+) cm"`)
	hidesForm  = regexp.MustCompile(`hides = \d+`)
)

// shrunk is a set-up with a share of its floor.
func shrunk(text string, share float64) string {
	return insideForm.ReplaceAllStringFunc(text, func(s string) string {
		m := insideForm.FindStringSubmatch(s)
		long, _ := strconv.ParseFloat(m[1], 64)
		wide, _ := strconv.ParseFloat(m[2], 64)
		side := math.Sqrt(share)
		return fmt.Sprintf("inside = \"%.1f x %.1f x %s cm\"", long*side, wide*side, m[3])
	})
}
