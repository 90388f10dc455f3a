package sarif_test

import (
	"encoding/json"
	"maps"
	"net/url"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"vivary/compile"
	"vivary/compile/check"
	"vivary/compile/sarif"
	"vivary/internal/hostile"
	"vivary/internal/planned"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/finding/example"
)

var noon = time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)

// collections are files with mistakes: of the examples of rules, of the repository's examples,
// and texts that nobody writes.
func collections(t *testing.T) map[string]map[string]string {
	t.Helper()
	all := map[string]map[string]string{}
	for _, r := range compile.Rules() {
		shown := compile.Example(r.ID).Found.Text
		text, log := check.Example(shown)
		if slices.Contains(plan.Rules, r) {
			p, l := example.Split(shown)
			text, log = p.Text, l.Text
		}
		if shown != "" {
			all["rule "+r.ID] = planned.With(text, log)
		}
	}
	n := 0
	some := func(string) bool { n++; return n%3 == 0 }
	for in := range hostile.Inputs(2<<10, some) {
		all["hostile "+in.Name] = in.Files()
	}
	dirs, err := filepath.Glob("../../examples/[mo]*/*") // mistakes, and what is ordinary
	if err != nil || len(dirs) < 20 {
		t.Fatal(dirs, err)
	}
	for _, dir := range append(dirs, "../../examples/quillmoor") {
		if files := read(t, dir); len(files) > 0 {
			all[dir] = files
		}
	}
	return all
}

func read(t *testing.T, dir string) map[string]string {
	t.Helper()
	files := map[string]string{}
	err := filepath.WalkDir(dir, func(path string, d os.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, plan.PlanSuffix) && !strings.HasSuffix(path, plan.LogSuffix) {
			return err
		}
		text, err := os.ReadFile(path)
		name, _ := filepath.Rel(dir, path)
		files[filepath.ToSlash(name)] = string(text)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

func compiled(t *testing.T, files map[string]string) *compile.Result {
	t.Helper()
	c, found := planned.Files(t, files)
	return compile.Compile(c, found, noon)
}

func written(t *testing.T, r *compile.Result) []byte {
	t.Helper()
	text, err := json.Marshal(sarif.Of(r, r.Findings, sarif.Tool{Version: "v1.2.3", Folder: "plans/scorpions"}))
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// The log of whatever mistake is one that the schema of OASIS takes, its regions are the
// places of the findings, and its fixes make of the files what the edits make.
func TestLogs(t *testing.T) {
	schema := published(t)
	results, fixes := 0, 0
	for name, files := range collections(t) {
		r := compiled(t, files)
		text := written(t, r)
		form, err := jsonschema.UnmarshalJSON(strings.NewReader(string(text)))
		if err == nil {
			if results > 0 { // the rules are the same in each
				delete(form.(map[string]any)["runs"].([]any)[0].(map[string]any)["tool"].(map[string]any)["driver"].(map[string]any), "rules")
			}
			err = schema.Validate(form)
		}
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		var log logged
		if err := json.Unmarshal(text, &log); err != nil {
			t.Fatal(err)
		}
		run := log.Runs[0]
		if len(run.Results) != len(r.Findings)+len(r.Accepted) {
			t.Fatalf("%s: %d results of %d findings", name, len(run.Results), len(r.Findings))
		}
		for i := range r.Findings {
			f, x := &r.Findings[i], &run.Results[i]
			results++
			if rule := run.Tool.Driver.Rules[x.RuleIndex]; x.RuleID != f.Rule.ID || rule.ID != f.Rule.ID || rule.Short.Text == "" || rule.Full.Text == "" {
				t.Errorf("%s: %s is told of as %s", name, f.Rule.ID, rule.ID)
			}
			if x.Suppressions == nil || len(*x.Suppressions) > 0 {
				t.Errorf("%s: %s: suppressions are %v", name, f.Text, x.Suppressions)
			}
			stands(t, name, r, f, x)
			fixes += mends(t, name, r, f, x)
		}
	}
	if results < 600 || fixes < 120 {
		t.Errorf("%d results and %d fixes", results, fixes)
	}
}

// stands holds that a result is where its finding is.
func stands(t *testing.T, name string, r *compile.Result, f *finding.Finding, x *result) {
	t.Helper()
	if !f.At.Written() {
		if len(x.Locations) > 0 && x.Locations[0].Physical != nil {
			t.Errorf("%s: %s: it is at %+v, and in no file", name, f.Text, x.Locations[0])
		}
		return
	}
	at := x.Locations[0].Physical
	file, err := url.PathUnescape(at.Artifact.URI)
	if err != nil || strings.TrimPrefix(file, "./") != r.Plan.Files.Name(f.At.File) || (at.Artifact.Base == "BUILTIN") != (f.At.File < 0) {
		t.Errorf("%s: %s: it is in %+v", name, f.Text, at.Artifact)
	}
	text := string(r.Plan.Files.Text(f.At.File))
	want := r.Plan.Files.Of(f.At)
	if f.At.Start == 0 {
		want = strings.TrimPrefix(want, "\ufeff")
	}
	bytes := want
	if at.Region.ByteOffset != nil {
		bytes = text[*at.Region.ByteOffset:][:*at.Region.ByteLength]
	}
	if from, to := at.Region.lines(text); text[from:to] != want || bytes != want {
		t.Errorf("%s: %s: %+v is %.200q by lines and %.200q by bytes, not %.200q", name, f.Text, at.Region, text[from:to], bytes, want)
	}
	if from, to := at.Region.characters(text); text[from:to] != want {
		t.Errorf("%s: %s: %+v is %.200q by characters, not %.200q", name, f.Text, at.Region, text[from:to], want)
	}
	if p := r.Plan.Files.Start(f.At); p.Line != at.Region.StartLine && int(f.At.Start) < len(text) {
		t.Errorf("%s: %s: line %d, and %d for people", name, f.Text, at.Region.StartLine, p.Line)
	}
}

// mends makes the fixes of a result, as SARIF says, and returns how many there are.
func mends(t *testing.T, name string, r *compile.Result, f *finding.Finding, x *result) int {
	t.Helper()
	if len(f.Edits) == 0 || len(x.Fixes) == 0 {
		if len(f.Edits) > 0 != (len(x.Fixes) > 0) {
			t.Errorf("%s: %s: %d edits and %d fixes", name, f.Text, len(f.Edits), len(x.Fixes))
		}
		return 0
	}
	edits := map[string][]finding.Edit{}
	texts := map[string]string{}
	for _, e := range f.Edits {
		file := r.Plan.Files.Name(e.At.File)
		edits[file], texts[file] = append(edits[file], e), string(r.Plan.Files.Text(e.At.File))
	}
	if len(x.Fixes[0].Changes) != len(edits) {
		t.Errorf("%s: %s: changes of %d files, not of %d", name, f.Text, len(x.Fixes[0].Changes), len(edits))
	}
	for _, c := range x.Fixes[0].Changes {
		file, _ := url.PathUnescape(c.Artifact.URI)
		want, err := finding.Apply([]byte(texts[file]), edits[file])
		if err != nil {
			t.Fatal(err)
		}
		for way, got := range map[string]string{"lines": c.made(texts[file], region.lines), "characters": c.made(texts[file], region.characters)} {
			if got != string(want) {
				t.Errorf("%s: %s: by %s the fix makes\n%.2000s\nand not\n%.2000s", name, f.Text, way, got, want)
			}
		}
	}
	return 1
}

// The same collection gives the same bytes, however often it is read.
func TestSame(t *testing.T) {
	for _, dir := range []string{"../../examples/quillmoor", "../../examples/mistakes/words-and-units", "../../examples/ordinary/forty-tubs-in-one-block"} {
		files := read(t, dir)
		first := written(t, compiled(t, files))
		for range 3 {
			if string(written(t, compiled(t, files))) != string(first) {
				t.Errorf("%s: another log", dir)
			}
		}
	}
}

// A finding keeps its fingerprint when lines are put in above it, and no two of one log have
// the same.
func TestFingerprints(t *testing.T) {
	seen := 0
	for name, files := range collections(t) {
		if strings.HasPrefix(name, "hostile") {
			continue // a line at the top of what is no text makes another text of it
		}
		moved := maps.Clone(files)
		for file, text := range moved {
			moved[file] = "# one more\n# and another\n\n" + text
		}
		before, after := fingerprints(t, files), fingerprints(t, moved)
		if !slices.Equal(before, after) {
			t.Errorf("%s: once lines are put in there are the fingerprints\n%s\nand not\n%s", name, strings.Join(after, "\n"), strings.Join(before, "\n"))
		}
		slices.Sort(before)
		if n := len(before); len(slices.Compact(before)) != n {
			t.Errorf("%s: two findings have one fingerprint", name)
		}
		seen += len(before)
	}
	if seen < 400 {
		t.Errorf("%d fingerprints", seen)
	}
}

func fingerprints(t *testing.T, files map[string]string) (out []string) {
	t.Helper()
	var log logged
	if err := json.Unmarshal(written(t, compiled(t, files)), &log); err != nil {
		t.Fatal(err)
	}
	for _, x := range log.Runs[0].Results {
		out = append(out, x.Fingerprints["enclosureAndText/v1"])
	}
	return out
}

// What an accept block silences is told, as silenced, with the reason and the place of the
// block; with the severity of the rule in its own word.
func TestSuppressed(t *testing.T) {
	const shallow = "housing {\n  kind      = \"glass\"\n  inside    = \"76 x 46 x 41 cm\"\n  lid       = \"solid, latched\"\n  vents     = \"some\"\n  substrate = \"coir\"\n  moisture  = \"damp\"\n  depth     = \"6 cm\"\n  hides     = 4\n}\n"
	text, log := check.Example(shallow + "accept \"substrate-shallow\" {\n  because = \"a deeper tank comes\"\n  until   = \"2027-01-15\"\n}\n")
	r := compiled(t, planned.With(text, log))
	var all logged
	if err := json.Unmarshal(written(t, r), &all); err != nil || len(r.Accepted) != 1 {
		t.Fatal(len(r.Accepted), err)
	}
	results := all.Runs[0].Results
	x := results[len(results)-1]
	s := *x.Suppressions
	if x.RuleID != "substrate-shallow" || len(s) != 1 || s[0].Kind != "inSource" || s[0].Status != "accepted" || s[0].Justification != "a deeper tank comes (until Fri 15 Jan 2027)" {
		t.Fatalf("%+v", s)
	}
	if from, to := s[0].Location.Physical.Region.lines(text); !strings.HasPrefix(text[from:to], `accept "substrate-shallow"`) {
		t.Errorf("the block stands at %q", text[from:to])
	}
	want := map[string]string{"danger": "error", "error": "error", "urgent": "warning", "caution": "warning", "advice": "note"}
	if x.Level != want[x.Properties.Severity] || len(x.Locations) != 1 || len(x.Locations[0].Logical) != 1 || x.Locations[0].Logical[0].Name != r.Accepted[0].In.Name {
		t.Errorf("%+v", x)
	}
}

// A plan cannot write into a message what SARIF takes for a link or for the place of an
// argument, and the name of a file cannot leave its folder.
func TestHostile(t *testing.T) {
	files := map[string]string{
		"a:b #1?.care.hcl":    "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"[x](http://a.example/){0}\" {\n  titel = \"y\"\n}\n",
		"%2e%2e/x.care.hcl":   "nothing {\n}\n",
		"é\u202e🦂\n.care.hcl": "\ufeff\"titel\" = 1\n",
	}
	r := compiled(t, files)
	text := written(t, r)
	form, err := jsonschema.UnmarshalJSON(strings.NewReader(string(text)))
	if err != nil {
		t.Fatal(err)
	}
	if err := published(t).Validate(form); err != nil {
		t.Error(err)
	}
	var log logged
	if err := json.Unmarshal(text, &log); err != nil {
		t.Fatal(err)
	}
	for i, x := range log.Runs[0].Results {
		if m := x.Message.Text; strings.Contains(m, "](") || strings.Count(m, "{") != 2*strings.Count(m, "{{") {
			t.Errorf("%q", m)
		}
		stands(t, "hostile", r, &r.Findings[i], &x)
	}
	if len(log.Runs[0].Results) < 3 {
		t.Errorf("%d results", len(log.Runs[0].Results))
	}
}

func published(t *testing.T) *jsonschema.Schema {
	t.Helper()
	text, err := os.ReadFile("../../testdata/sarif/sarif-schema-2.1.0.json")
	if err != nil {
		t.Fatal(err)
	}
	form, err := jsonschema.UnmarshalJSON(strings.NewReader(string(text)))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	c.AssertFormat()
	if err := c.AddResource("http://sarif.example/schema.json", form); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("http://sarif.example/schema.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}
