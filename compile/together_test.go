package compile_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/plan/finding"
)

// boxesOf are so many boxes of one template, every third a juvenile, with titles that their
// keeper knows.
func boxesOf(n int, template string) string {
	var b strings.Builder
	b.WriteString("template \"tub\" {\n  species = \"tliltocatl-albopilosus\"\n  room    = \"east\"\n" + template + "}\n")
	for i := 1; i <= n; i++ {
		stage := "adult"
		if i%3 == 0 {
			stage = "juvenile"
		}
		fmt.Fprintf(&b, "enclosure \"t-%d\" {\n  title    = \"Tub %d\"\n  template = \"tub\"\n  animals \"a\" {\n    count  = 1\n    stage  = %q\n    origin = \"captive bred\"\n    paper  = \"invoice 1\"\n  }\n}\n", i, i, stage)
	}
	return b.String()
}

const goodTub = "  housing {\n    kind     = \"tub\"\n    inside   = \"40 x 30 x 30 cm\"\n    lid      = \"solid, latched\"\n    vents    = \"cross\"\n    depth    = \"12 cm\"\n    moisture = \"damp below\"\n    hides    = 1\n  }\n"

func rulesAt(r *compile.Result, rule string) (all []finding.Finding) {
	for _, f := range r.Findings {
		if f.Rule.ID == rule {
			all = append(all, f)
		}
	}
	return all
}

// A mistake in a template, a round or a room is one finding, at its line, with how many
// boxes it touches and which, by the names that their keeper knows.
func TestOneCauseOneFinding(t *testing.T) {
	weekly := strings.Replace(rackHouse, "  keeper = \"lead\"\n", "  keeper = \"lead\"\n  on     = [\"sat\"]\n", 1)
	for _, c := range []struct {
		name, house, template, rule string
		where                       string
		also                        []string
	}{
		{"a template", rackHouse, strings.Replace(goodTub, "12 cm", "2 cm", 1), "substrate-shallow", "8 enclosures: Tub 1, 2, 4, 5, 7, 8, 10 and 11",
			[]string{"in 4 enclosures: Tub 3, 6, 9 and 12: caution: 2 cm of substrate"}},
		{"a template, of all", rackHouse, strings.Replace(goodTub, "solid, latched", "loose", 1), "lid-loose", "all 12 enclosures", nil},
		{"a round", weekly, goodTub, "lid-unchecked", "all 12 enclosures", []string{"in all 12 enclosures: caution: 7 days without fresh water, again and again, from Saturday to Saturday"}},
	} {
		r := on(t, rackDay, c.house+boxesOf(12, c.template), "")
		all := rulesAt(r, c.rule)
		if len(all) != 1 {
			t.Errorf("%s: %d findings: %v", c.name, len(all), foundIn(r))
			continue
		}
		f := all[0]
		if f.Where != c.where || len(f.Of) != 12 || f.Of[0] != "t-1" || f.Of[11] != "t-12" || strings.Contains(f.Text, "t-1") {
			t.Errorf("%s: %q, %q of %v", c.name, f.Text, f.Where, f.Of)
		}
		for _, a := range c.also {
			if !slices.ContainsFunc(f.Also, func(x finding.Related) bool { return strings.HasPrefix(x.Text, a) }) {
				t.Errorf("%s: nothing says %q: %v", c.name, a, f.Also)
			}
		}
	}
}

// What stands in the lines of one enclosure names no other, and what stands elsewhere
// names it also if it is one.
func TestWhereOfOne(t *testing.T) {
	own := "enclosure \"only\" {\n  template = \"tub\"\n  animals \"a\" {\n    count  = 1\n    stage  = \"adult\"\n    origin = \"captive bred\"\n    paper  = \"invoice 1\"\n  }\n"
	r := on(t, rackDay, rackHouse+boxesOf(0, strings.Replace(goodTub, "12 cm", "2 cm", 1))+own+"}\n", "")
	if all := rulesAt(r, "substrate-shallow"); len(all) != 1 || all[0].Where != "Only" {
		t.Errorf("of a template: %v", all)
	}
	r = on(t, rackDay, rackHouse+boxesOf(0, goodTub)+own+"  housing {\n    depth = \"2 cm\"\n  }\n}\n", "")
	if all := rulesAt(r, "substrate-shallow"); len(all) != 1 || all[0].Where != "" || !slices.Equal(all[0].Of, []string{"only"}) {
		t.Errorf("of its own: %v", all)
	}
}

// However many it touches, its names stay a line.
func TestManyAreALine(t *testing.T) {
	r := on(t, rackDay, rackHouse+boxesOf(900, strings.Replace(goodTub, "12 cm", "2 cm", 1)), "")
	all := rulesAt(r, "substrate-shallow")
	if len(all) != 1 || len(all[0].Of) != 900 || len(all[0].Where) > 300 || !strings.HasPrefix(all[0].Where, "600 enclosures: Tub 1, 2, 4") || !strings.HasSuffix(all[0].Where, " more") {
		t.Errorf("%d findings: %q", len(all), all[0].Where)
	}
}
