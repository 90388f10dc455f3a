package life_test

import (
	"testing"

	"vivary/compile/life"
	"vivary/internal/planned"
	"vivary/internal/wanted"
	"vivary/plan/finding"
	"vivary/plan/source"
)

// logOf is an example that is the log of a plan about "mother", an adult female of a
// species that is carried for 7 to 18 months and does not moult once it is adult, and
// about "spider", of another species, in the enclosure "other".
type logOf string

func (l logOf) Files() map[string]string {
	text := sheet(mother, "gestation=7 to 18 months", "moults-as-adult=false", "on-mother=14 to 21 days", "separation=separate") +
		"enclosure \"other\" {\n  species = \"brachypelma-hamorii\"\n  housing {\n    inside = \"30 x 20 x 20 cm\"\n    lid = \"solid, latched\"\n  }\n  animals \"spider\" {\n    count = 1\n    stage = \"adult\"\n  }\n}\n"
	return planned.With(text, string(l))
}

func (l logOf) Line(file string, line int) int {
	if file == "a.care.log" {
		return line
	}
	return 0
}

func TestExamples(t *testing.T) {
	wanted.Suite{Rules: life.Rules, Examples: life.Examples,
		Whole: func(text string) wanted.Whole { return logOf(text) },
		Find: func(t testing.TB, files map[string]string) (*source.Set, []finding.Finding) {
			c, found := planned.Files(t, files)
			_, lived := lifeOf(c, c.Enclosure("box"), c.Log, year(day("2027-03-01")))
			return c.Files, finding.Sort(c.Files, append(found, lived...))
		},
	}.Run(t)
}
