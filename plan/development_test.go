package plan

import (
	"strings"
	"testing"
)

// TestDevelopment checks that what is known of a feeder of one's own is read, and that half a
// line and a time without its temperature are found where they stand.
func TestDevelopment(t *testing.T) {
	const head = "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\n"
	sound := head + "feeder \"moth\" {\n  title = \"moth\"\n  size \"adult\" {\n    mass = \"1 g\"\n  }\n  development \"egg\" {\n    base = \"10 C\"\n    degree_days = 60\n    between = \"59 to 86 F\"\n    observed = [\"5 days at 22 C\", \"4 to 6 days at 24 to 26 C\"]\n  }\n}\n"
	c, found := load(t, map[string]string{"a.care.hcl": sound})
	if len(found) > 0 {
		t.Fatal(texts(found))
	}
	d := c.Library.Feeder("moth").Develops("egg", "adult")
	if d == nil || len(d.Points) != 2 || d.Points[1].At.High != 26 || d.Between.V.High != 30 {
		t.Errorf("%+v", d)
	}
	for edit, want := range map[string]string{
		"\"5 days at 22 C\"->\"5 days\"":        "is not how long a stage takes",
		"\"5 days at 22 C\"->\"at\"":            "is not how long a stage takes",
		"\"5 days at 22 C\"->\"5 C at 5 days\"": "is not how long a stage takes",
		"    base = \"10 C\"\n->":               "has no base",
		"    degree_days = 60\n->":              "has no degree_days",
		"    between = \"59 to 86 F\"\n->":      "has no between",
		"degree_days = 60->degree_days = 0":     "above 0",
	} {
		from, to, _ := strings.Cut(edit, "->")
		_, found := load(t, map[string]string{"a.care.hcl": strings.Replace(sound, from, to, 1)})
		if len(found) == 0 || !strings.Contains(found[0].Text+found[0].Write, want) {
			t.Errorf("%s: %v, want %q", edit, texts(found), want)
		}
	}
}
