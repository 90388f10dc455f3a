package main

import (
	"strings"
	"testing"

	"github.com/spf13/afero"
)

// A line from which nothing follows says so, and one of which something does says what.
func TestWhatFollowsIsSaid(t *testing.T) {
	for line, want := range map[string]string{
		"burrow-a recovered":     "this changes nothing",
		"burrow-a not-gravid":    "this changes nothing",
		"burrow-a asleep":        "A remark: nothing follows",
		"burrow-a mites":         "last in the round, tools of its own",
		"burrow-a measured 45 C": "FIRST from Wed 25 Nov: 45 C was measured",
		"burrow-a eaten":         "eaten",
		"burrow-a born":          "how many is not said",
	} {
		disk := afero.NewMemMapFs()
		plan := "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"east\" {\n  temperature = \"22 to 25 C\"\n}\n" +
			"enclosure \"burrow-a\" {\n  species = \"pandinus-imperator\"\n  room = \"east\"\n  housing {\n    inside = \"76 x 46 x 41 cm\"\n    lid = \"solid, latched\"\n  }\n  animals \"fern\" {\n    count = \"0.1.0\"\n    stage = \"adult\"\n  }\n}\n"
		if err := afero.WriteFile(disk, "c/plan.care.hcl", []byte(plan), 0o644); err != nil {
			t.Fatal(err)
		}
		_, out, wrong := at(disk, noon, append([]string{"note", "--in", "c"}, strings.Fields(line)...)...)
		if !strings.Contains(out+wrong, want) {
			t.Errorf("%s: it says\n%s%s", line, wrong, out)
		}
	}
}
