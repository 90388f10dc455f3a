package internal

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

var (
	fuzzCommand = regexp.MustCompile("`go test (\\./[^`\\s]+) [^`\n]*-fuzz ([^`\\s]+)[^`\n]*`")
	fuzzTarget  = regexp.MustCompile(`(?m)^func (Fuzz\w+)\(f \*testing\.F\)`)
)

// TestFuzzCommands: each command of DEVELOPERS.md that fuzzes names a package and one target
// in it, and no target is left out.
func TestFuzzCommands(t *testing.T) {
	text, err := os.ReadFile("../DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	targets := map[string][]string{} // by package
	err = filepath.WalkDir("..", func(path string, d fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, "_test.go") {
			return err
		}
		source, err := os.ReadFile(path)
		for _, m := range fuzzTarget.FindAllStringSubmatch(string(source), -1) {
			in := "./" + strings.TrimPrefix(filepath.ToSlash(filepath.Dir(path)), "../")
			targets[in] = append(targets[in], m[1])
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	told := map[string]bool{}
	for _, m := range fuzzCommand.FindAllStringSubmatch(string(text), -1) {
		pattern, err := regexp.Compile(m[2])
		if err != nil {
			t.Errorf("%s: %v", m[0], err)
			continue
		}
		all := slices.DeleteFunc(slices.Clone(targets[m[1]]), func(s string) bool { return !pattern.MatchString(s) })
		if len(all) != 1 { // Go fuzzes one target at a time
			t.Errorf("%s is about the targets %v of %v", m[0], all, targets[m[1]])
			continue
		}
		told[m[1]+" "+all[0]] = true
	}
	for in, all := range targets {
		for _, name := range all {
			if !told[in+" "+name] {
				t.Errorf("DEVELOPERS.md has no command for %s of %s", name, in)
			}
		}
	}
}
