package compile_test

import (
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/plan/finding"
)

// sixTubs are six of a block with numbers, and lines in it.
func sixTubs(inside string) string {
	return "enclosure \"tub\" {\n  numbers = \"1 to 6\"\n  species = \"tliltocatl-albopilosus\"\n  room    = \"east\"\n" + inside + "}\n"
}

// What is wrong in a block with numbers is said once, at the line that can be changed, with
// the enclosures of which it is true: in the text of all, in a line for some, while the plan
// is read and when it is judged.
func TestNumbersAreFoundOnce(t *testing.T) {
	for _, c := range []struct{ name, inside, rule, text, where, line string }{
		{"all are too shallow", strings.Replace(goodTub, "12 cm", "2 cm", 1) + tubAnimal, "substrate-shallow", "2 cm of substrate", "all 6 enclosures", "\"2 cm\""},
		{"some are", goodTub + tubAnimal + "  number \"2 to 4\" { depth = \"2 cm\" }\n", "substrate-shallow", "2 cm of substrate", "3 enclosures: Tub 2 to 4", "\"2 cm\""},
		{"one is", goodTub + tubAnimal + "  number \"5\" { depth = \"2 cm\" }\n", "substrate-shallow", "2 cm of substrate", "Tub 5", "\"2 cm\""},
		{"none has animals", goodTub, "missing", "an enclosure has no animals block", "all 6 enclosures", "enclosure \"tub\""},
		{"a round that is not there", goodTub + tubAnimal + "  number \"2, 3\" { round = \"night\" }\n", "unknown-name", "there is no round \"night\"", "2 enclosures: Tub 2 and 3", "\"night\""},
	} {
		r := on(t, rackDay, rackHouse+sixTubs(c.inside), "")
		all := rulesAt(r, c.rule)
		if len(all) != 1 || !strings.HasPrefix(all[0].Text, c.text) || all[0].Where != c.where || r.Plan.Files.Of(all[0].At) != c.line {
			t.Errorf("%s: %v", c.name, foundIn(r))
			for _, f := range all {
				t.Errorf("  in %s, at %s: %s", f.Where, r.Plan.Files.Of(f.At), f.Text)
			}
		}
	}
}

// An accept block silences its rule for those for whom it is written, and for no other.
func TestNumbersAccept(t *testing.T) {
	const why = "    accept \"substrate-shallow\" {\n      because = \"moves on in May\"\n      until   = \"2027-05-01\"\n    }\n"
	shallow := strings.Replace(goodTub, "12 cm", "2 cm", 1) + tubAnimal
	shown := func(inside string) (where string, r *compile.Result) {
		r = on(t, rackDay, rackHouse+sixTubs(shallow+inside), "")
		if i := slices.IndexFunc(r.Findings, func(f finding.Finding) bool { return f.Rule.ID == "substrate-shallow" }); i >= 0 {
			where = r.Findings[i].Where
		}
		return where, r
	}
	if where, r := shown("  number \"2 to 3\" {\n" + why + "  }\n"); where != "4 enclosures: Tub 1 and 4 to 6" || !slices.Contains(r.InForce(), "Accepted in Tub 2 and 3: substrate-shallow until Sat 1 May 2027 (moves on in May)") {
		t.Error(where, r.InForce())
	}
	if where, r := shown(why); where != "" || len(r.InForce()) != 1 || !strings.HasPrefix(r.InForce()[0], "Accepted in Tub 1 to 6: ") {
		t.Error(where, r.InForce())
	}
}
