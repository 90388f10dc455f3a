package compile_test

import (
	"slices"
	"strings"
	"testing"

	"vivary/plan/finding"
)

const (
	insect = `temperature-target 22 to 26 C
temperature-soft 20 to 30 C
night 18 to 24 C
humidity-soft 40 to 80 %
humidity-target 50 to 70 %
keeping alone
venom none
cites none
`
	grownGecko = insect + "moisture either\n"
)

// What the types of insects, woodlice and geckos judge of a species that nothing else is
// known of: cases 19 to 21, 23 and 24 of the page of facts on care types.
func TestInsectTypesJudge(t *testing.T) {
	latched, cross := "solid, latched", "    vents = \"cross\"\n    perches = true\n    water = \"none\"\n"
	nymph := "count = 1\n    stage = \"subadult\"\n    length = \"6 cm\""
	mantis := func(size, animals string) string {
		return typed("Sphodromantis viridis (Forskal, 1775)", "mantis", insect+"length 7.5 cm", mild, inside(size, "0 cm", latched, "dry", cross), animals)
	}
	leaves := func(every string) string {
		return strings.Replace(typed("Extatosoma popa Stal, 1875", "stick-insect", insect+"length 12 cm", mild, inside("30 x 30 x 60 cm", "1 cm", latched, "dry", cross), one),
			"  animals \"one\"", "  care \"leaves\" {\n    every = \""+every+"\"\n  }\n  animals \"one\"", 1)
	}
	hot := "  temperature = \"20 to 31 C\"\n  humidity = \"45 to 65 %\""
	noHeat := strings.Replace(strings.Replace(strings.Replace(grownGecko, "temperature-target 22 to 26 C\n", "", 1), "temperature-soft 20 to 30 C\n", "", 1), "night 18 to 24 C\n", "", 1)
	crested := func(figures, room string) string {
		return typed("Correlophus sarasinorum (Roux, 1913)", "tree-gecko", figures+"length 11 cm", room, inside("45 x 45 x 60 cm", "3 cm", latched, "damp", cross), one)
	}
	for _, c := range []struct{ name, text, want string }{
		{"19 a mantis before its last moult, too low to hang", mantis("20 x 20 x 9 cm", nymph), "drop-short caution, height-low error"},
		{"19 between", mantis("20 x 20 x 16 cm", nymph), "height-low caution"},
		{"19 high enough", mantis("20 x 20 x 20 cm", nymph), ""},
		{"19 a grown one moults no more", mantis("20 x 20 x 11 cm", one), ""},
		{"20 a mantis of the ground", typed("Eremiaphila brunneri Werner, 1905", "mantis", insect+"length 3 cm", mild,
			inside("30 x 20 x 20 cm", "2 cm", latched, "dry", cross), one), "type-exception error"},
		{"21 a stick insect", leaves("4 days"), ""},
		{"21 leaves too seldom", leaves("6 days"), "food-gap caution"},
		{"21 leaves far too seldom", leaves("10 days"), "food-gap error"},
		{"23 a tree gecko, its heat unsaid", crested(noHeat, hot), "not-judged caution"},
		{"23 a tree gecko in a hot summer", crested(noHeat+"temperature-target 22 to 26 C\ntemperature-hard 10 to 28 C\n", hot), "room-too-hot danger"},
		{"24 a ground gecko of wet forest", typed("Goniurosaurus luii Grismer, Viets and Boyle, 1999", "ground-gecko", grownGecko+"warm-spot 32 C\nlength 10 cm", mild,
			inside("60 x 45 x 40 cm", "3 cm", latched, "damp", ""), one), "type-exception error"},
		{"a gecko of dry country", typed("Coleonyx brevis Stejneger, 1893", "ground-gecko", strings.Replace(grownGecko, "either", "arid", 1)+"length 6 cm", mild,
			inside("45 x 30 x 30 cm", "3 cm", latched, "dry", ""), one), ""},
		{"woodlice", typed("Trachelipus rathkii (Brandt, 1833)", "woodlouse-colony", strings.Replace(insect, "alone", "groups", 1)+"length 14 mm", mild,
			inside("30 x 20 x 15 cm", "5 cm", latched, "damp", "    vents = \"some\"\n"), "count = 20\n    stage = \"adult\""), ""},
		{"woodlice kept dry", typed("Trachelipus rathkii (Brandt, 1833)", "woodlouse-colony", strings.Replace(insect, "alone", "groups", 1)+"length 14 mm", mild,
			inside("30 x 20 x 15 cm", "1 cm", latched, "dry", "    vents = \"some\"\n"), "count = 20\n    stage = \"adult\""), "substrate-moisture error, substrate-shallow caution"},
		{"cockroaches", typed("Blaptica dubia (Serville, 1838)", "roach-colony", strings.Replace(insect, "alone", "groups", 1)+"length 45 mm", mild,
			inside("40 x 30 x 30 cm", "2 cm", "solid, loose", "dry", "    vents = \"cross\"\n"), "count = 50\n    stage = \"adult\""), ""},
		{"those that climb glass", typed("Nauphoeta cinerea (Olivier, 1789)", "roach-colony", strings.Replace(insect, "alone", "groups", 1)+"length 28 mm", mild,
			inside("40 x 30 x 30 cm", "2 cm", "solid, loose", "dry", "    vents = \"cross\"\n"), "count = 50\n    stage = \"adult\""), "lid-loose error"},
		{"beetles", typed("Eudicella smithii (MacLeay, 1838)", "beetle", strings.Replace(insect, "alone", "groups", 1)+"length 4 cm\nfloor-first 600 cm2\nfloor-further 50 cm2", mild,
			inside("40 x 30 x 30 cm", "16 cm", latched, "damp", "    vents = \"cross\"\n"), "count = 6\n    stage = \"adult\""), ""},
		{"larvae in a thin layer", typed("Eudicella smithii (MacLeay, 1838)", "beetle", strings.Replace(insect, "alone", "groups", 1)+"length 4 cm\nfloor-first 600 cm2\nfloor-further 50 cm2", mild,
			inside("40 x 30 x 30 cm", "4 cm", latched, "damp", "    vents = \"cross\"\n"), "count = 6\n    stage = \"subadult\""), "substrate-shallow caution"},
	} {
		r := on(t, "2027-03-02", c.text, "")
		worst := map[string]finding.Severity{}
		for _, f := range r.Findings {
			if f.Severity >= finding.Caution {
				worst[f.Rule.ID] = max(worst[f.Rule.ID], f.Severity)
			}
		}
		var got []string
		for rule, severity := range worst {
			got = append(got, rule+" "+severity.String())
		}
		slices.Sort(got)
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s: %s, want %s", c.name, strings.Join(got, ", "), c.want)
			for _, f := range r.Findings {
				t.Logf("  %s %s: %s (%s)", f.Severity, f.Rule.ID, f.Text, f.Limit)
			}
		}
		if !r.Refused() && !strings.HasPrefix(r.Verdict(), "No harm found by common practice for ") {
			t.Errorf("%s: %s", c.name, r.Verdict())
		}
	}
}
