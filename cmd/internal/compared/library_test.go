package compared_test

import (
	"io/fs"
	"maps"
	"strings"
	"testing"
	"testing/fstest"

	"vivary/cmd/internal/compared"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// edited is the built-in library with another text in one sheet.
func edited(t *testing.T, file, old, now string) *plan.Sheets {
	t.Helper()
	all := fstest.MapFS{}
	err := fs.WalkDir(schema.Library, ".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		text, err := fs.ReadFile(schema.Library, path)
		all[path] = &fstest.MapFile{Data: text}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	text := string(all[file].Data)
	if !strings.Contains(text, old) {
		t.Fatalf("%s has no %q", file, old)
	}
	all[file].Data = []byte(strings.Replace(text, old, now, 1))
	s, err := plan.SheetsFrom(all)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// TestLibrary: what the sheets of two versions of the program say otherwise is told apart from
// what the plan says otherwise, each with its own line.
func TestLibrary(t *testing.T) {
	day := civil.Must(2026, 11, 30)
	was := house()
	before := edited(t, "species/pandinus-imperator.care.hcl", `value  = "60 to 90 %"`, `value  = "50 to 90 %"`)
	is := maps.Clone(was)
	put(`"70 to 80 %"`, `"55 to 65 %"`)(is, tank(2))
	put(`every  = "day"`, `every  = "9 days"`)(is, tank(4))

	of := func(a, b map[string]string) string {
		r, err := compared.Of(compared.Side{Disk: disk(t, a), Sheets: before}, compared.Side{Disk: disk(t, b)}, on(day))
		if err != nil {
			t.Fatal(err)
		}
		return printed(r)
	}
	// A change of the library that no animal feels is none.
	if text := of(was, was); strings.Contains(text, "Harm") || strings.Contains(text, "Worse") {
		t.Errorf("the plan is the same, and keeps to both limits:\n%s", text)
	}
	text := of(is, is)
	for _, want := range []string{"vivary's own schema/species/pandinus-imperator.care.hcl:", `value: "50 to 90 %" → "60 to 90 %"`, "Tank 02: humidity is planned at 55 to 65 %"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q does not stand in\n%s", want, text)
		}
	}
	if strings.Contains(text, "Tank 04: moisture") {
		t.Errorf("what did not change is told:\n%s", text)
	}
	// Both at once: what the plan does is the plan's.
	text = of(was, is)
	harm, _, _ := strings.Cut(text, "\nWorse")
	if !strings.Contains(harm, "tank-04, care mist, every") || strings.Contains(harm, "vivary's own") {
		t.Errorf("the misting is the plan's:\n%s", text)
	}
}

// TestNoLibrary: a folder that holds no sheets, or a broken one, is said.
func TestNoLibrary(t *testing.T) {
	if _, err := plan.SheetsFrom(fstest.MapFS{}); err == nil {
		t.Error("nothing is a library")
	}
	_, err := plan.SheetsFrom(fstest.MapFS{"species/x.care.hcl": {Data: []byte("species \"x\" {")}})
	if err == nil || !strings.Contains(err.Error(), "x cannot be read") {
		t.Error(err)
	}
}
