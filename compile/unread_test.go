package compile_test

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/internal/planned"
	"vivary/plan/finding"
)

// outermostHead is the first line of a block that stands in no other.
var outermostHead = regexp.MustCompile(`(?m)^(\w+) "?([\w-]+)"? *\{`)

// A mistake in the text of a block is said once. Nothing that follows from it is: all else
// that is found was found before.
func TestASlipSilencesItsBlock(t *testing.T) {
	now := time.Date(2027, 3, 1, 12, 0, 0, 0, time.UTC)
	dirs, _ := filepath.Glob("../examples/*/*/plan.care.hcl")
	dirs = append(dirs, "../examples/quillmoor/x", "../testdata/frozen/wide/x")
	for _, dir := range dirs {
		dir = filepath.ToSlash(filepath.Dir(dir))
		files := filesOf(t, dir)
		before := map[string]bool{}
		c, loaded := planned.Files(t, files)
		for _, f := range compile.Compile(c, loaded, now).Findings {
			before[f.Rule.ID+f.Text] = true
		}
		for name, text := range files {
			if !strings.HasSuffix(name, ".hcl") {
				continue
			}
			for _, head := range outermostHead.FindAllStringSubmatchIndex(text, -1) {
				for slip, broken := range slipsIn(text, head[1]) {
					files[name] = broken
					c, loaded := planned.Files(t, files)
					r := compile.Compile(c, loaded, now)
					said := 0
					for _, f := range r.Findings {
						switch {
						case f.Rule.ID == "syntax":
							said++
						case !before[f.Rule.ID+f.Text]:
							t.Errorf("%s: %s in %s: %s: %s", name, slip, text[head[0]:head[1]], f.Rule.ID, f.Text)
						}
					}
					if said != 1 {
						t.Errorf("%s: %s in %s: said %d times", name, slip, text[head[0]:head[1]], said)
					}
					if !finding.Refuses(r.Findings) {
						t.Errorf("%s: %s in %s refuses nothing", name, slip, text[head[0]:head[1]])
					}
				}
				files[name] = text
			}
		}
	}
}

// slipsIn returns a text with a mistake in the block whose head ends at a byte.
func slipsIn(text string, at int) map[string]string {
	out := map[string]string{}
	if i := strings.Index(text[at:], "\"\n"); i >= 0 && !strings.Contains(text[at:at+i], "\n}") {
		out["a quote too few"] = text[:at+i] + text[at+i+1:]
	}
	if i := strings.Index(text[at:], " = "); i >= 0 && !strings.Contains(text[at:at+i], "\n}") {
		out["no ="] = text[:at+i] + text[at+i+2:]
	}
	if i := strings.Index(text[at:], "\n}\n"); i >= 0 {
		out["no }"] = text[:at+i+1] + text[at+i+2:]
	}
	return out
}

// filesOf returns the plans and logs of a folder by name.
func filesOf(t *testing.T, dir string) map[string]string {
	files := map[string]string{}
	err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.Contains(path, ".care.") {
			return err
		}
		text, err := os.ReadFile(path)
		files[strings.TrimPrefix(filepath.ToSlash(path), dir+"/")] = string(text)
		return err
	})
	if err != nil || len(files) == 0 {
		t.Fatal(dir, err)
	}
	return files
}
