package main

import (
	"encoding/json"
	"path/filepath"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/spf13/afero"
)

// forms reads the published descriptions of what is printed as JSON. They let further
// fields pass, since a version may get some; ours must all be described, so that here they
// do not.
func forms(t *testing.T) func(name string) *jsonschema.Schema {
	t.Helper()
	c := jsonschema.NewCompiler()
	c.AssertFormat()
	paths, err := filepath.Glob("../../schema/json/*.schema.json")
	if err != nil || len(paths) < 4 {
		t.Fatal(paths, err)
	}
	for _, p := range paths {
		text, err := afero.ReadFile(afero.NewOsFs(), p)
		if err != nil {
			t.Fatal(err)
		}
		schema, err := jsonschema.UnmarshalJSON(strings.NewReader(string(text)))
		if err != nil {
			t.Fatal(p, err)
		}
		strictly(schema)
		if err := c.AddResource("http://forms.example/"+filepath.Base(p), withoutID(schema)); err != nil {
			t.Fatal(p, err)
		}
	}
	return func(name string) *jsonschema.Schema {
		s, err := c.Compile("http://forms.example/" + name + ".schema.json")
		if err != nil {
			t.Fatal(err)
		}
		return s
	}
}

func strictly(schema any) {
	switch x := schema.(type) {
	case map[string]any:
		if x["properties"] != nil {
			x["additionalProperties"] = false
		}
		for _, y := range x {
			strictly(y)
		}
	case []any:
		for _, y := range x {
			strictly(y)
		}
	}
}

// withoutID is a schema without the name by which others find it: here they are found
// where they are put.
func withoutID(schema any) any {
	delete(schema.(map[string]any), "$id")
	return schema
}

// Whatever is printed as JSON is one object of the form that is published, which says what
// it is; and the exit status is the same as for people.
func TestForms(t *testing.T) {
	described := forms(t)
	mistakes, err := filepath.Glob("../../examples/mistakes/*")
	if err != nil || len(mistakes) < 10 {
		t.Fatal(err)
	}
	lines := [][]string{{"version"}, {"why"}, {"why", "venom-unlocked"}, {"why", "pandinus-imperator"}, {"why", "rules"},
		{"why", "burrow-b", "--in", "../../examples/quillmoor"}, {"why", "burrow-b/mist", "--on", "2026-12-01", "--in", "../../examples/quillmoor"},
		{"check", "../../examples/quillmoor", "--now", "2026-12-20"}, {"check", "../../testdata"},
		{"due", "../../examples/quillmoor", "--now", "2026-12-09"}, {"due", "../../examples/quillmoor", "--now", "2026-12-09", "--days", "9", "--keeper", "lead"},
		{"due", "../../examples/ordinary/a-rack-of-tubs", "--round", "evening"},
		{"stock", "../../examples/quillmoor", "--now", "2026-12-20"}, {"stock", "../../testdata/stock", "--now", "2027-01-04", "--days", "28"},
		{"register", "../../examples/quillmoor", "--now", "2026-12-20"}, {"register", "../../examples/quillmoor", "--now", "2026-12-20", "--on", "2026-08-02", "--from", "2026-07-01"}}
	lines = append(lines, []string{"readings", "air=../../examples/quillmoor/loggers/burrow-a.csv", "room=../../examples/quillmoor/loggers/east.csv", "--in", "../../examples/quillmoor", "--enclosure", "burrow-a", "--now", "2026-12-20"})
	lines = append(lines, []string{"level", "../../testdata/stock", "--now", "2027-01-04"}, []string{"level", "../../examples/quillmoor", "--now", "2026-12-20"})
	for _, dir := range mistakes {
		lines = append(lines, []string{"check", dir}, []string{"build", dir}, []string{"due", dir})
	}
	lines = append(lines, []string{"build", "../../examples/quillmoor", "--now", "2026-12-20"}, []string{"build", "../../examples/quillmoor", "--now", "2026-12-20"})
	lines = append(lines, []string{"publish", "../../examples/quillmoor", "www"}, []string{"publish", "../../examples/quillmoor", "www", "--try"})
	ordinary, err := filepath.Glob("../../examples/ordinary/*")
	if err != nil || len(ordinary) < 5 {
		t.Fatal(err)
	}
	for i, dir := range append(ordinary, mistakes...) {
		lines = append(lines, []string{"compare", dir, ordinary[i%len(ordinary)]}, []string{"compare", ordinary[i%len(ordinary)], dir})
	}
	lines = append(lines, []string{"compare", "../../examples/quillmoor", "../../examples/review"})
	disk := afero.NewCopyOnWriteFs(afero.NewOsFs(), afero.NewMemMapFs())
	for _, line := range lines {
		want, _, _ := at(afero.NewCopyOnWriteFs(disk, afero.NewMemMapFs()), noon, line...)
		s, out, errs := at(disk, noon, append(line, "--format", "json")...)
		if s != want || errs != "" && line[0] != "due" { // it says what is wrong with the plan beside the list
			t.Errorf("%v: status %d, %d for people, %s", line, s, want, errs)
		}
		form, err := jsonschema.UnmarshalJSON(strings.NewReader(out))
		if err != nil {
			t.Errorf("%v: %v\n%s", line, err, out)
			continue
		}
		if err := described(line[0]).Validate(form); err != nil {
			t.Errorf("%v: %v", line, err)
		}
		if form.(map[string]any)["format"] != "vivary/"+line[0] {
			t.Errorf("%v: it says that it is %v", line, form.(map[string]any)["format"])
		}
	}
}

// The edits of a finding, made by the bytes of the JSON form, are the ones that are meant;
// lines and columns are those of the same stretch.
func TestFormOfEdits(t *testing.T) {
	disk := afero.NewMemMapFs()
	const plan = "collection \"c\" {\n  time_zone = \"Europe/London\"\n  titel     = \"É 🦂\" # ü\n}\nroom \"é\u202e\" {\n}\n"
	if err := afero.WriteFile(disk, "c/a.care.hcl", []byte(plan), 0o644); err != nil {
		t.Fatal(err)
	}
	_, out, _ := at(disk, noon, "check", "c", "--format", "json")
	if strings.ContainsRune(out, '\u202e') || !strings.Contains(out, `\u202e`) {
		t.Errorf("a mark that turns the direction of writing is not escaped: %s", out)
	}
	var form checkForm
	if err := json.Unmarshal([]byte(out), &form); err != nil {
		t.Fatal(err)
	}
	for _, f := range form.Findings {
		if f.Rule == "unknown-word" {
			e := f.Edits[0]
			if got := plan[:e.Start] + e.Text + plan[e.End:]; got != strings.Replace(plan, "titel", "title", 1) || e.Line != 3 || e.Column != 3 || e.EndLine != 3 || e.EndColumn != 8 {
				t.Errorf("%+v makes %q", e, got)
			}
			return
		}
	}
	t.Errorf("no such finding: %s", out)
}
