package compile_test

import (
	"slices"
	"strings"
	"testing"

	"vivary/plan/finding"
)

// resting has a cool rest in the winter.
func resting(text string) string {
	return strings.Replace(text, "  animals \"one\"", "  season \"winter\" {\n    from    = \"1 nov\"\n    to      = \"31 jan\"\n    heating = \"off\"\n    feeding = \"none\"\n  }\n  animals \"one\"", 1)
}

// What the types of whip spiders, vinegaroons, centipedes, camel spiders and millipedes
// judge. Cases 18 and 22 are those of the page of facts on care types; the others show
// that what it leaves open is said to be open.
func TestKinTypesJudge(t *testing.T) {
	const latched = "solid, latched"
	vinegaroon := strings.NewReplacer("mild", "none").Replace(tarantula) + "length 3 cm\ntemperature-soft 18 to 30 C"
	leaf := strings.NewReplacer("mild", "none", "alone", "groups").Replace(tarantula) + "length 15 cm\n"
	thelyphonus := func(moisture string) string {
		return typed("Thelyphonus caudatus (Linnaeus, 1758)", "vinegaroon", vinegaroon, mild, inside("30 x 20 x 25 cm", "10 cm", latched, moisture, ""), one)
	}
	telodeinopus := func(depth string) string {
		return typed("Telodeinopus canaliculatus (Porat, 1894)", "millipede", leaf, mild, inside("45 x 30 x 30 cm", depth, latched, "damp", "    vents = \"some\"\n"), one)
	}
	for _, c := range []struct{ name, text, want string }{
		{"18 a vinegaroon of the tropics", thelyphonus("damp"), ""},
		{"18 dry through", thelyphonus("dry"), "substrate-moisture error"},
		{"18 a winter for it", resting(strings.Replace(thelyphonus("damp"), "22 to 25 C", "12 to 25 C", 1)), "rest-unfit error"},
		{"22 a millipede as deep as it is long", telodeinopus("15 cm"), ""},
		{"22 less deep", telodeinopus("10 cm"), ""},
		{"22 too shallow", telodeinopus("5 cm"), "substrate-shallow caution"},
		{"a camel spider is a list of questions", typed("Galeodes arabs C. L. Koch, 1842", "camel-spider", strings.Replace(tarantula, "mild", "none", 1)+"length 5 cm", mild,
			inside("40 x 30 x 30 cm", "16 cm", latched, "dry", "    vents = \"cross\"\n"), one), "not-judged caution"},
		{"its soil wet", typed("Galeodes arabs C. L. Koch, 1842", "camel-spider", strings.Replace(tarantula, "mild", "none", 1)+"length 5 cm", mild,
			inside("40 x 30 x 30 cm", "16 cm", latched, "wet", "    vents = \"cross\"\n"), one), "not-judged caution, substrate-moisture error"},
		{"one that hunts by day", typed("Metasolpuga picta (Kraepelin, 1899)", "camel-spider", strings.Replace(tarantula, "mild", "none", 1)+"length 3 cm", mild,
			inside("40 x 30 x 30 cm", "16 cm", latched, "dry", "    vents = \"cross\"\n"), one), "not-judged caution, type-exception error"},
	} {
		r := on(t, "2027-03-02", c.text, "")
		worst := map[string]string{}
		for _, f := range r.Findings {
			if f.Severity >= finding.Caution && worst[f.Rule.ID] == "" {
				worst[f.Rule.ID] = f.Severity.String()
			}
		}
		var got []string
		for rule, severity := range worst {
			got = append(got, rule+" "+severity)
		}
		slices.Sort(got)
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s: %s, want %s", c.name, strings.Join(got, ", "), c.want)
			for _, f := range r.Findings {
				t.Logf("  %s %s: %s (%s)", f.Severity, f.Rule.ID, f.Text, f.Limit)
			}
		}
	}
}
