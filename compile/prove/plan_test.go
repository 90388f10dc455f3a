package prove_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/prove"
	"vivary/plan/finding"
)

// limits are the figures of the fixture, in days: what the plans of these tests are
// measured by.
type limits struct{ look, water, food, leftovers, unattended int }

// usual are limits under which the plans of these tests are sound.
var usual = limits{look: 4, water: 3, food: 14, leftovers: 1, unattended: 8}

// sheet writes the species with these figures. What is 0 is not stated.
func (l limits) sheet() string {
	own := "    source  = [\"fixture\"]\n    because = \"fixture of this test\"\n    review  = \"2040-01-01\"\n  }\n"
	var b strings.Builder
	b.WriteString("collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\nroom \"east\" {\n  temperature = \"21 to 24 C\"\n}\nspecies \"fixture\" {\n  title = \"fixture\"\n  stage \"adult\" {\n    instars = \"5\"\n  }\n")
	need := func(name string, days int) {
		if days > 0 {
			fmt.Fprintf(&b, "  need %q {\n    longest = \"%d days\"\n%s", name, days, own)
		}
	}
	need("look", l.look)
	need("water", l.water)
	need("food", l.food)
	need("leftovers", l.leftovers)
	if l.unattended > 0 {
		fmt.Fprintf(&b, "  figure \"unattended\" {\n    value   = \"%d days\"\n%s", l.unattended, strings.Replace(own, "fixture", "trial", 1))
	}
	return b.String() + "}\n"
}

// The people and the rounds of these tests, with the enclosure that they look after.
const (
	people = "keeper \"lead\" {\n}\nkeeper \"ben\" {\n}\nkeeper \"cat\" {\n}\n"
	rounds = "round \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n}\nround \"morning\" {\n  at     = \"08:00\"\n  keeper = \"ben\"\n}\n"
)

// box is an enclosure of two animals, in the evening round, with the given rest.
func box(name, rest string) string {
	return "enclosure \"" + name + "\" {\n  species = \"fixture\"\n  round = \"evening\"\n  housing {\n    inside = \"60 x 40 x 40 cm\"\n    lid    = \"solid, latched\"\n  }\n  animals \"pair\" {\n    count = 2\n    stage = \"adult\"\n  }\n" + rest + "}\n"
}

// looked is the care of an enclosure that the lead keeper looks after every day.
const looked = "  care \"look\" {\n    every = \"day\"\n  }\n  care \"water\" {\n    every = \"day\"\n  }\n  feeding \"pair\" {\n    on         = [\"mon\"]\n    per_animal = 1\n    prey       = \"cricket small\"\n  }\n"

// away is an absence.
func away(keeper, from, to, rest string) string {
	return "away \"" + keeper + "\" {\n  from = \"" + from + "\"\n  to = \"" + to + "\"\n" + rest + "}\n"
}

// found are the findings of the proof.
func found(r *compile.Result) []finding.Finding {
	return slices.DeleteFunc(slices.Clone(r.Findings), func(f finding.Finding) bool { return !slices.Contains(prove.Rules, f.Rule) })
}

// said writes findings with the line on which they stand, one after the other.
func said(r *compile.Result, all []finding.Finding) string {
	var b strings.Builder
	for _, f := range all {
		line, _, _ := r.Plan.Files.Line(f.At)
		fmt.Fprintf(&b, "%s | %s [%s] %s\n  limit: %s\n  write: %s\n", strings.TrimSpace(line), f.Severity, f.Rule.ID, f.Text, f.Limit, f.Write)
		for _, a := range f.Also {
			fmt.Fprintf(&b, "  also: %s\n", a.Text)
		}
	}
	return b.String()
}

// proven compiles a plan on Sat 1 May 2027 and says what the proof finds.
func proven(t testing.TB, text, log string) string {
	t.Helper()
	r := compiled(t, text, log, day("2027-05-01"))
	return said(r, found(r))
}
