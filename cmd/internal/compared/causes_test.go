package compared_test

import (
	"io/fs"
	"maps"
	"os"
	"slices"
	"strings"
	"testing"

	"vivary/compile/compare"
	"vivary/schema/civil"
)

// changed is a collection with several edits of one tank, made by what stands there and what is to stand there.
func changed(files map[string]string, edits ...string) map[string]string {
	is := maps.Clone(files)
	for i := 0; i < len(edits); i += 2 {
		put(edits[i], edits[i+1])(is, tank(3))
	}
	return is
}

// by are the paths of the pieces that cause the effects in which some words stand.
func by(r *compare.Report, words string) (out []string) {
	for i := range r.Effects {
		e := &r.Effects[i]
		if !strings.Contains(strings.Join(append([]string{e.Name, e.Was, e.Is}, e.Under...), "\n"), words) {
			continue
		}
		for _, k := range e.Cause {
			out = append(out, r.Pieces[k].Path())
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// TestCauses: of several edits that stand side by side, what each brings is said of that one, and
// what only some bring together of all of these.
func TestCauses(t *testing.T) {
	dry := `"45 to 55 %"`
	accept := "  accept \"humidity-unusual\" {\n    because = \"a dry winter\"\n    until   = \"2027-02-01\"\n  }\n\n  care \"mist\""
	for name, c := range map[string]struct {
		edits []string
		want  map[string][]string // what causes that in which these words stand
	}{
		"another aim beside a missing thermostat": {
			edits: []string{"      thermostat = \"30 C\"\n", "", `"28 to 30 C"`, `"28 to 29 C"`},
			want: map[string][]string{
				"no thermostat":     {"tank-03, climate, heater mat, thermostat"},
				"28 to 29 C":        {"tank-03, climate, warm_end"},
				"warm spot to be e": {"tank-03, climate, heater mat, thermostat"},
			}},
		"an accepted finding": {
			edits: []string{`"70 to 80 %"`, `"55 to 65 %"`, `  care "mist"`, accept},
			want:  map[string][]string{"accepted until": {"tank-03, accept humidity-unusual", "tank-03, climate, humidity"}}},
		"hides and animals": {
			edits: []string{"hides     = 5", "hides     = 3", "count  = 2", "count  = 4", `"70 to 80 %"`, dry},
			want: map[string][]string{
				"places to hide":  {"tank-03, animals adults, count", "tank-03, housing, hides"},
				"drier than":      {"tank-03, climate, humidity"},
				"emperor scorpio": {"tank-03, animals adults, count"},
			}},
	} {
		base := house()
		r := between(t, base, changed(base, c.edits...), civil.Must(2026, 11, 30))
		for words, want := range c.want {
			if got := by(r, words); !slices.Equal(got, want) {
				t.Errorf("%s: %q comes from %q, not %q\n%s", name, words, got, want, printed(r))
			}
		}
	}
}

// TestNames: an enclosure whose name is changed again is the same one, and what else is done to it
// has its own line for a cause; without formerly the one that is no more is named.
func TestNames(t *testing.T) {
	base := house()
	once := changed(base, `enclosure "tank-03" {`, "enclosure \"den\" {\n  formerly = \"tank-03\"")
	twice := changed(once, `enclosure "den"`, `enclosure "pit"`, `every  = "day"`, `every  = "9 days"`)
	r := between(t, once, twice, civil.Must(2026, 11, 30))
	if got := by(r, "moisture"); !slices.Equal(got, []string{"pit, care mist, every"}) {
		t.Errorf("%q\n%s", got, printed(r))
	}
	r = between(t, base, changed(base, `enclosure "tank-03" {`, `enclosure "den" {`), civil.Must(2026, 11, 30))
	if got := by(r, "had 2 animals"); !slices.Contains(got, "tank-03") {
		t.Errorf("%q\n%s", got, printed(r))
	}
}

// TestTitles: what somebody or something is called is no change for the animals.
func TestTitles(t *testing.T) {
	base := house()
	base["shared.care.hcl"] += "\naway \"ann\" {\n  from  = \"2027-02-01\"\n  to    = \"2027-02-04\"\n  cover = \"bo\"\n}\n"
	is := maps.Clone(base)
	for _, name := range []string{"ann", "bo"} {
		is["shared.care.hcl"] = strings.Replace(is["shared.care.hcl"], "keeper \""+name+"\" {\n", "keeper \""+name+"\" {\n  title   = \"Head of "+name+"\"\n", 1)
	}
	if r := between(t, base, is, civil.Must(2026, 11, 30)); r.Changed() || len(r.Rounds) > 0 {
		t.Error(printed(r))
	}
}

// TestAims: what is aimed for by night and for a part of the year is told, and what is found of
// one thing and what was and is of it are told once.
func TestAims(t *testing.T) {
	base := house()
	season := "  season \"cool\" {\n    from = \"15 nov\"\n    to = \"20 feb\"\n    climate {\n      warm_end = \"26 to 27 C\"\n    }\n  }\n\n  care \"mist\""
	base = changed(base, `  care "mist"`, season)
	for _, c := range []struct{ old, now, says string }{
		{`night       = "22 to 25 C"`, `night       = "21 to 24 C"`, "night aimed for: 22 to 25 C → 21 to 24 C"},
		{`"26 to 27 C"`, `"25 to 26 C"`, "warm end aimed for, cool: 26 to 27 C → 25 to 26 C"},
	} {
		r := between(t, base, changed(base, c.old, c.now), civil.Must(2026, 11, 30))
		if text := printed(r); !r.Changed() || !strings.Contains(text, c.says) {
			t.Errorf("%q is not in\n%s", c.says, text)
		}
	}
	r := between(t, base, changed(base, `"90 x 45 x 45 cm"`, `"35 x 30 x 45 cm"`), civil.Must(2026, 11, 30))
	n := 0
	for i := range r.Effects {
		if strings.Contains(r.Effects[i].Name, "floor") {
			n++
		}
	}
	if n != 1 {
		t.Errorf("the floor is told %d times\n%s", n, printed(r))
	}
}

// TestTwoGroups: of two groups in one box, the finding about one is told of that one.
func TestTwoGroups(t *testing.T) {
	base := changed(house(), `  feeding "adults"`, "  animals \"young\" {\n    count  = 2\n    stage  = \"subadult\"\n    origin = \"captive bred\"\n    paper  = \"own\"\n  }\n\n  feeding \"young\" {\n    on = [\"mon\"]\n    per_animal = 1\n    rotate = [\"cricket adult\"]\n  }\n\n  feeding \"adults\"")
	is := changed(base, `on = ["mon"]`, `every = "40 days"`, `["tue", "fri"]`, `["tue"]`)
	r := between(t, base, is, civil.Must(2026, 11, 30))
	harmed, worse := 0, 0
	for i := range r.Effects {
		switch e := &r.Effects[i]; {
		case e.Name == "food, young" && e.Way <= compare.Worse && e.Found != nil:
			harmed++
		case e.Name == "food, adults" && e.Way == compare.Worse && e.Found == nil:
			worse++
		}
	}
	if harmed != 1 || worse != 1 {
		t.Errorf("%d, %d\n%s", harmed, worse, printed(r))
	}
}

// TestAlike: the same edit of several boxes, each in its own block, is told once.
func TestAlike(t *testing.T) {
	base := house()
	is := maps.Clone(base)
	for i := range 9 {
		put(`every  = "day"`, `every  = "2 days"`)(is, tank(i))
	}
	put(`every  = "day"`, `every  = "3 days"`)(is, tank(9))
	text := printed(between(t, base, is, civil.Must(2026, 11, 30)))
	for _, says := range []string{
		"  tank-00.care.hcl:40  tank-00, care mist, every: \"day\" → \"2 days\", and the same in 8 more\n    9 enclosures: Tank 00 to 08: moisture",
		"  tank-09.care.hcl:40  tank-09, care mist, every: \"day\" → \"3 days\"\n    Tank 09: moisture",
	} {
		if strings.Count(text, says) != 1 {
			t.Errorf("%q is not once in\n%s", says, text)
		}
	}
}

// TestFewer: care that hardly anybody is shown any more is no better for lying nearer together on
// the days that are left.
func TestFewer(t *testing.T) {
	base := map[string]string{}
	from := os.DirFS("../../../examples/quillmoor")
	err := fs.WalkDir(from, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		text, err := fs.ReadFile(from, name)
		base[name] = string(text)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	is := maps.Clone(base)
	is["collection.care.hcl"] = strings.Replace(is["collection.care.hcl"], "rounds = [\"evening\"]", "rounds = [\"morning\"]", 1)
	r := between(t, base, is, civil.Must(2026, 12, 1))
	if !r.Harmed() || r.Count(compare.Better) > 0 {
		t.Error(printed(r))
	}
}
