package plan

import (
	"slices"
	"strings"
	"testing"

	"vivary/plan/finding"
)

// An address is kept without its last slash, since names of files follow it.
func TestWeb(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": "collection \"c\" {\n  time_zone = \"Europe/London\"\n  web = \"https://care.example/feeds/\"\n}\n"})
	if len(found) > 0 || c.About.Web.V != "https://care.example/feeds" {
		t.Error(c.About.Web.V, texts(found))
	}
}

// A meal that names no animals is said once, at its place.
func TestNamelessMeal(t *testing.T) {
	_, found := load(t, map[string]string{"a.care.hcl": sound + "enclosure \"a\" {" + strings.Replace(box, "}", "}\n  feeding {\n    every = \"week\"\n  }\n", 1)})
	if len(found) != 1 || !has(found, "missing") {
		t.Errorf("%v", texts(found))
	}
}

// Stages are refused where they would be passed over.
func TestStagesOutsideASheet(t *testing.T) {
	_, found := load(t, map[string]string{"a.care.hcl": sound + "enclosure \"a\" {" + strings.Replace(box, "}", "}\n  care \"water\" {\n    stages = [\"adult\"]\n  }\n", 1)})
	if len(found) != 1 || !strings.Contains(found[0].Text, "stages is for species sheets") {
		t.Errorf("%v", texts(found))
	}
}

// Where it is plain what was meant, that is what to write.
func TestNearlyRight(t *testing.T) {
	_, found := load(t, map[string]string{"a.care.hcl": strings.Replace(sound, "22 C", "22 Celcius", 1)})
	if len(found) != 1 || found[0].Edits[0].Text != "18 to 22 C" || found[0].Rule.ID != "unit" {
		t.Errorf("%+v", found)
	}
	_, found = load(t, map[string]string{"a.care.hcl": sound + "round \"r\" {\n  at     = \"19:30\"\n  within = \"1,5 h\"\n}\n"})
	if len(found) != 0 {
		t.Errorf("%+v", found)
	}
}

// A number of things is a whole number in reach, and what is none is said at its place.
func TestWholeNumbers(t *testing.T) {
	for written, sound := range map[string]bool{"0": true, "1000000": true, "1.5": false, "1000001": false} {
		_, found := load(t, map[string]string{"a.care.hcl": "enclosure \"tub\" {\n  housing {\n    hides = " + written + "\n  }\n}\n"})
		said := slices.ContainsFunc(found, func(f finding.Finding) bool {
			return strings.Contains(f.Text, "hides is a whole number from 0 to 1,000,000")
		})
		if said == sound {
			t.Errorf("hides = %s: refused %v", written, said)
		}
	}
}
