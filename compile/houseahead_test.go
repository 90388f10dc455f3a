package compile_test

import (
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/internal/planned"
)

// A line about feeder animals or a date of the house is looked at as any other: one of a day to
// come is found, and a slip of a name is told by what stands near it.
func TestLinesOfTheHouse(t *testing.T) {
	const house = "tub \"mealies\" {\n  prey = \"mealworm large\"\n}\n\ndeadline \"rcd\" {\n  kind = \"rcd-test\"\n  last = \"2026-10-01\"\n}\n\n" +
		"enclosure \"box\" {\n  species = \"grammostola-pulchra\"\n\n  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n}\n"
	for line, want := range map[string]string{
		"2026-11-24 box one harvested 2":  "\"harvested\" is said of feeder animals",
		"2026-11-24 box crashed":          "\"crashed\" is said of feeder animals",
		"2026-11-24 mealies fed":          "\"fed\" is a remark",
		"2026-11-24 mealies delivered 50": "",
		"2026-11-24 deadline rcd done":    "",
		"2026-12-24 mealies counted 5":    "Thu 24 Dec 2026 is after today",
		"2026-12-25 deadline rcd done":    "Fri 25 Dec 2026 is after today",
		"2026-11-24 mealis delivered 50":  `did you mean "mealies"?`,
		"2026-11-24 deadline rdc done":    "there is no deadline \"rdc\"",
	} {
		c, found := planned.Files(t, planned.With("collection \"c\" {\n  time_zone = \"Europe/London\"\n}\n\n"+house, line+"\n"))
		r := compile.Compile(c, found, time.Date(2026, 11, 25, 9, 0, 0, 0, time.UTC))
		said := ""
		for _, f := range r.Findings {
			if strings.HasSuffix(c.Files.Name(f.At.File), ".care.log") {
				said += f.Text + "\n"
			}
		}
		if want == "" && said != "" || !strings.Contains(said, want) {
			t.Errorf("%s: %q, not %q", line, said, want)
		}
	}
}
