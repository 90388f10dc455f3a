package margin

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/plan"
	"vivary/plan/source"
)

var update = flag.Bool("update", false, "write what stands beside the examples anew")

// compiled is a folder as of the Monday on which the goldens were looked at.
func compiled(t testing.TB, dir string) *compile.Result {
	t.Helper()
	c, found, err := plan.Load(afero.NewOsFs(), dir)
	if err != nil {
		t.Fatal(err)
	}
	return compile.Compile(c, found, monday)
}

var monday = time.Date(2026, 11, 30, 12, 0, 0, 0, time.UTC)

// beside is each line of a file that has something beside it.
func beside(r *compile.Result, id source.ID) string {
	above, behind := map[int][]Note{}, map[int][]Note{}
	for _, n := range Lenses(r, id) {
		line := r.Plan.Files.Start(n.At).Line
		above[line] = append(above[line], n)
	}
	for _, n := range Hints(r, id, whole(r, id)) {
		line := r.Plan.Files.End(n.At).Line
		behind[line] = append(behind[line], n)
	}
	var b strings.Builder
	for i, text := range strings.Split(string(r.Plan.Files.Text(id)), "\n") {
		if len(above[i+1])+len(behind[i+1]) == 0 {
			continue
		}
		for _, n := range above[i+1] {
			fmt.Fprintf(&b, "~ %s\n", n.Text)
		}
		b.WriteString(strings.TrimSpace(text))
		for _, n := range behind[i+1] {
			fmt.Fprintf(&b, " « %s »", n.Text)
		}
		b.WriteByte('\n')
		for _, n := range behind[i+1] {
			if n.More != "" {
				b.WriteString("    more: " + strings.ReplaceAll(n.More, "\n", "\n          ") + "\n")
			}
		}
	}
	return b.String()
}

// What stands beside the examples was looked at line by line, against vivary why.
func TestExamples(t *testing.T) {
	dirs, err := filepath.Glob("../../examples/ordinary/*")
	if err != nil {
		t.Fatal(err)
	}
	for _, dir := range append(dirs, "../../examples/quillmoor") {
		r := compiled(t, dir)
		got := ""
		ids := r.Plan.Files.Files()
		slices.SortFunc(ids, func(a, b source.ID) int { return strings.Compare(r.Plan.Files.Name(a), r.Plan.Files.Name(b)) })
		for _, id := range ids {
			name, _ := filepath.Rel(dir, r.Plan.Files.Name(id))
			if text := beside(r, id); text != "" {
				got += "-- " + filepath.ToSlash(name) + " --\n" + text
			}
		}
		path := filepath.Join("testdata", filepath.Base(dir)+".txtar")
		if *update {
			if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(path)
		if err != nil || string(want) != got {
			t.Errorf("%s: not as in %s (%v):\n%s", dir, path, err, got)
		}
	}
}

// whole is all of a file.
func whole(r *compile.Result, id source.ID) source.Place {
	return source.Place{File: id, End: int32(len(r.Plan.Files.Text(id)))}
}
