package plan

import (
	"strings"
	"testing"

	"vivary/plan/finding"
)

// What was typed is put right by the edits of its findings, where it is plain what was
// meant; elsewhere there is none. Each text stands in a plan that is otherwise sound;
// what follows a bar is the log.
func TestEdits(t *testing.T) {
	const around = "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nkeeper \"lead\" {\n}\nround \"evening\" {\n  at = \"19:30\"\n}\nroom \"a\" {\n  temperature = \"18 to 22 C\"\n}\n"
	box := func(inside string) string {
		return "enclosure \"box\" {\n  species = \"pandinus-imperator\"\n  room = \"a\"\n  housing {\n    inside = \"60 x 45 x 40 cm\"\n    lid = \"solid, latched\"\n  }\n  animals \"adult\" {\n    count = 1\n    stage = \"adult\"\n  }\n" + inside + "}\n"
	}
	none := ""
	for _, c := range []struct{ name, typed, old, better string }{
		{"an attribute", "room \"b\" {\n  temprature = \"18 to 22 C\"\n}\n", "temprature", "temperature"},
		{"one that is there already", "room \"b\" {\n  temperature = \"18 to 22 C\"\n  temprature = \"18 to 22 C\"\n}\n", none, none},
		{"one that is near to a block", box("  climat = 1\n"), none, none},
		{"a block", box("  climat {\n  }\n"), "climat", "climate"},
		{"one that is there already", box("  climate {\n  }\n  climat {\n  }\n"), none, none},
		{"one of several", box("  animls \"more\" {\n    count = 1\n    stage = \"adult\"\n  }\n"), "animls", "animals"},
		{"a block outside", "keper \"relief\" {\n}\n", "keper", "keeper"},
		{"what is near to nothing", "xylophone \"relief\" {\n}\n", none, none},
		{"a word", strings.Replace(box(""), "\"adult\"\n", "\"adlt\"\n", 1), "adlt", "adult"},
		{"a word of several", strings.Replace(box(""), "latched", "lached", 1), "lached", "latched"},
		{"a word with an escape", strings.Replace(box(""), "\"adult\"\n", "\"\\u0061dlt\"\n", 1), none, none},
		{"a name", "away \"laed\" {\n  from = \"2027-03-01\"\n  to = \"2027-03-04\"\n}\n", "laed", "lead"},
		{"a name in a list", "calendar \"c\" {\n  rounds = [\"evning\"]\n}\n", "evning", "evening"},
		{"a species", strings.Replace(box(""), "imperator", "imperater", 1), none, none},
		{"a former name of one", strings.Replace(box(""), "pandinus-imperator", "Buthus imperator", 1), "Buthus imperator", "pandinus-imperator"},
		{"a feeder", box("  feeding \"adult\" {\n    every = \"4 days\"\n    prey = \"criket adult\"\n  }\n"), none, none},
		{"the size of one", box("  feeding \"adult\" {\n    every = \"4 days\"\n    prey = \"cricket adlt\"\n  }\n"), "adlt", "adult"},
		{"a care", box("  care \"mst\" {\n    every = \"day\"\n  }\n"), "mst", "mist"},
		{"one whose name is taken", box("  care \"mist\" {\n    every = \"day\"\n  }\n  care \"mst\" {\n    every = \"day\"\n  }\n"), none, none},
		{"the kind of one", box("  care \"x\" {\n    kind = \"mst\"\n    every = \"day\"\n  }\n"), "mst", "mist"},
		{"a word of the log", box("") + "|2026-11-02 box mault\n", none, none},
		{"one behind the animals", box("") + "|2026-11-02 box adult mault \"left alone\"\n", none, none},
		{"an enclosure in the log", box("") + "|2026-11-02 bxo moult\n", "bxo", "box"},
		{"animals in the log", box("") + "|2026-11-02 box adlt moult\n", "adlt", "adult"},
	} {
		got := mend(t, around+c.typed)
		want := around + strings.Replace(c.typed, c.old, c.better, 1)
		if got != want {
			t.Errorf("%s becomes\n%s", c.name, got)
		}
	}
	zone := func(name string) string { return "collection \"c\" {\n  time_zone = \"" + name + "\"\n}\n" }
	if got := mend(t, zone("Europe/Londn")); got != zone("Europe/Londn") {
		t.Errorf("a zone is guessed\n%s", got)
	}
	if got := mend(t, zone("new york")); got != zone("America/New_York") {
		t.Errorf("a city becomes\n%s", got)
	}
	if got := mend(t, zone("utc")); got != zone("utc") {
		t.Errorf("one of two zones is taken\n%s", got)
	}
}

// mend makes all edits of what is found in a plan and a log, with a bar between them.
func mend(t *testing.T, both string) string {
	t.Helper()
	text, log, two := strings.Cut(both, "|")
	c, found := load(t, map[string]string{"a.care.hcl": text, "a.care.log": log})
	if len(found) == 0 {
		t.Errorf("nothing is found in\n%s", both)
	}
	var ofPlan, ofLog []finding.Edit
	for _, f := range found {
		for _, e := range f.Edits {
			if strings.HasSuffix(c.Files.Name(e.At.File), LogSuffix) {
				ofLog = append(ofLog, e)
			} else {
				ofPlan = append(ofPlan, e)
			}
		}
	}
	mended, err := finding.Apply([]byte(text), ofPlan)
	lines, err2 := finding.Apply([]byte(log), ofLog)
	if err != nil || err2 != nil {
		t.Error(err, err2)
	}
	if two {
		return string(mended) + "|" + string(lines)
	}
	return string(mended)
}
