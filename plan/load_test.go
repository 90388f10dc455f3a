package plan

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/internal/wanted"
	"vivary/plan/finding"
	"vivary/plan/source"
)

// disk holds files; a log in which nothing stands is not written, since it would be found.
func disk(t testing.TB, files map[string]string) afero.Fs {
	t.Helper()
	fs := afero.NewMemMapFs()
	for name, text := range files {
		if text == "" && strings.HasSuffix(name, LogSuffix) {
			continue
		}
		if err := afero.WriteFile(fs, filepath.Join("c", name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return fs
}

func load(t testing.TB, files map[string]string) (*Collection, []finding.Finding) {
	t.Helper()
	c, found, err := Load(disk(t, files), "c")
	if err != nil {
		t.Fatal(err)
	}
	return c, found
}

var wantComment = regexp.MustCompile(`# want ([\w-]+) "(.*)"`)

// The expectations stand on the lines that they are about. What is found and not
// expected fails as well as what is expected and not found.
func TestMistakes(t *testing.T) {
	text, err := os.ReadFile("testdata/mistakes.care.hcl")
	if err != nil {
		t.Fatal(err)
	}
	c, found := load(t, map[string]string{"m.care.hcl": string(text)})
	type want struct {
		rule string
		text *regexp.Regexp
	}
	wants := map[int]want{}
	for i, line := range strings.Split(string(text), "\n") {
		if m := wantComment.FindStringSubmatch(line); m != nil {
			wants[i+1] = want{m[1], regexp.MustCompile(m[2])}
		}
	}
	for _, f := range found {
		line := c.Files.Start(f.At).Line
		w, ok := wants[line]
		if !ok || w.rule != f.Rule.ID || !w.text.MatchString(f.Text) {
			t.Errorf("line %d: not expected: %s [%s]", line, f.Text, f.Rule.ID)
			continue
		}
		delete(wants, line)
	}
	for line, w := range wants {
		t.Errorf("line %d: not found: %s %s", line, w.rule, w.text)
	}
}

func TestExamples(t *testing.T) {
	wanted.Suite{Rules: Rules, Examples: Examples, Whole: wanted.AsItStands,
		Find: func(t testing.TB, files map[string]string) (*source.Set, []finding.Finding) {
			c, found := load(t, files)
			return c.Files, found
		}}.Run(t)
}

func has(found []finding.Finding, rule string) bool {
	for _, f := range found {
		if f.Rule.ID == rule {
			return true
		}
	}
	return false
}

func texts(found []finding.Finding) (out []string) {
	for _, f := range found {
		out = append(out, f.Rule.ID+": "+f.Text)
	}
	return out
}

const sound = `collection "c" {
  time_zone = "Europe/London"
}

room "a" {
  temperature = "18 to 22 C"
}
`

const box = `
  species = "pandinus-imperator"

  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
  }

  animals "adult" {
    count = 1
    stage = "adult"
  }
}
`

// Whatever stands in a file, reading ends without a panic, and every finding has a
// place in a file that was read.
func FuzzLoad(f *testing.F) {
	mistakes, err := os.ReadFile("testdata/mistakes.care.hcl")
	if err != nil {
		f.Fatal(err)
	}
	f.Add(string(mistakes), "2026-11-02 burrow-a adults moult \"x\"\n")
	f.Add(sound, "")
	f.Fuzz(func(t *testing.T, plan, log string) {
		c, found, err := Load(disk(t, map[string]string{"a.care.hcl": plan, "b.care.log": log}), "c")
		if err != nil {
			t.Fatal(err)
		}
		for _, x := range found {
			if x.Rule == nil || x.Text == "" {
				t.Errorf("a finding says nothing: %+v", x)
			}
			if x.At.Written() {
				if n := len(c.Files.Text(x.At.File)); int(x.At.End) > n && n > 0 || x.At.Start > x.At.End {
					t.Errorf("place %v of a file of %d bytes", x.At, n)
				}
			}
		}
		for _, u := range c.Uses() {
			if p := c.Files.Start(u.At); p.Line == 0 || u.Name == "" {
				t.Errorf("a name stands nowhere: %+v", u)
			}
		}
		var b strings.Builder
		if err := (finding.Printer{Files: c.Files}).Print(&b, found); err != nil {
			t.Fatal(err)
		}
	})
}
