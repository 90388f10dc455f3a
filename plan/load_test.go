package plan

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/plan/finding"
)

func disk(t testing.TB, files map[string]string) afero.Fs {
	t.Helper()
	fs := afero.NewMemMapFs()
	for name, text := range files {
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

// Each rule's bad example is found by that rule, its good example by no rule that
// refuses.
func TestRuleExamples(t *testing.T) {
	for _, r := range Rules {
		if r.ID == "" || r.Title == "" || r.Why == "" || r.Source == "" || r.Instead == "" {
			t.Errorf("rule %q does not say everything", r.ID)
		}
		if r.Bad == "" {
			continue // a bound, a broken disk: tested below
		}
		_, found := load(t, map[string]string{"x.care.hcl": r.Bad})
		if !has(found, r.ID) {
			t.Errorf("%s: the bad example is not found: %v", r.ID, texts(found))
		}
		_, found = load(t, map[string]string{"x.care.hcl": r.Good})
		if has(found, r.ID) || finding.Refuses(found) {
			t.Errorf("%s: the good example is found: %v", r.ID, texts(found))
		}
	}
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

// A file that cannot be read does not hide what is wrong in the others, and what
// it may define is not called undefined.
func TestBrokenFiles(t *testing.T) {
	for _, x := range []struct {
		name string
		text string
		rule string
	}{
		{"binary", "\x7fELF\x00\x01", "not-text"},
		{"not UTF-8", "collection \"\xc3\x28\" {}", "not-text"},
		{"50 MB", strings.Repeat("# a comment that goes on\n", 2_100_000), "too-large"},
		{"nesting", "a = " + strings.Repeat("[", 10_000), "too-deep"},
		{"nesting in a text", "a = \"" + strings.Repeat("${[", 10_000), "too-deep"},
		{"nesting after a comment with a quote", "/* \" */ a = " + strings.Repeat("[", 10_000), "too-deep"},
		{"nesting in a heredoc", "a = <<E\n # ${" + strings.Repeat("[", 10_000) + "\nE\n", "too-deep"},
		{"signs", "a = " + strings.Repeat("-!", 200_000) + "1", "too-deep"},
		{"conditions", "a = " + strings.Repeat("x?1:", 200_000) + "1", "too-deep"},
		{"open text", "room \"b\" {\n  temperature = \"18 to", "syntax"},
		{"no end", "room \"b\" {\n", "syntax"},
	} {
		t.Run(x.name, func(t *testing.T) {
			c, found := load(t, map[string]string{"a.care.hcl": sound, "b.care.hcl": x.text,
				"c.care.hcl": "keeper \"k\" {\n  titel = \"K\"\n}\nround \"r\" {\n  at     = \"19:30\"\n  keeper = \"in the broken file\"\n}\n"})
			if !has(found, x.rule) || !has(found, "unknown-word") || has(found, "unknown-name") {
				t.Errorf("found %v", texts(found))
			}
			for _, f := range found {
				if f.Rule.ID == x.rule && c.Files.Name(f.At.File) != "c/b.care.hcl" {
					t.Errorf("%s is said of %s", x.rule, c.Files.Name(f.At.File))
				}
			}
		})
	}
}

func TestSmileysAreNotNesting(t *testing.T) {
	_, found := load(t, map[string]string{"a.care.hcl": sound + strings.Repeat("# :-( {[(\n", 500)})
	if len(found) > 0 {
		t.Error(texts(found))
	}
}

// A duplicate shows both places, in whichever order the files are read.
func TestDuplicateAcrossFiles(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": sound, "x/b.care.hcl": "enclosure \"e\" {" + box, "y/c.care.hcl": "enclosure \"e\" {" + box})
	if len(found) != 1 || found[0].Rule.ID != "twice" || len(found[0].Also) != 1 {
		t.Fatal(texts(found))
	}
	if a, b := c.Files.Name(found[0].At.File), c.Files.Name(found[0].Also[0].At.File); a != "c/y/c.care.hcl" || b != "c/x/b.care.hcl" {
		t.Errorf("places: %s and %s", a, b)
	}
}

// The folder and the order of files make no difference to what is read.
func TestLayoutMakesNoDifference(t *testing.T) {
	parts := []string{sound, "enclosure \"tub-10\" {" + box, "enclosure \"tub-2\" {" + box, "keeper \"k\" {\n}\n"}
	names := func(c *Collection) (s string) {
		for _, e := range c.Enclosures {
			s += e.Name.V + " "
		}
		return s
	}
	one, _ := load(t, map[string]string{"all.care.hcl": parts[3] + parts[2] + parts[1] + parts[0]})
	many, _ := load(t, map[string]string{"z/z/1.care.hcl": parts[0], "b.care.hcl": parts[1], "c.care.hcl": parts[2], "a/d.care.hcl": parts[3]})
	if a, b := names(one), names(many); a != b || a != "tub-2 tub-10 " {
		t.Errorf("%q and %q", a, b)
	}
}

func TestNothingToRead(t *testing.T) {
	fs := afero.NewMemMapFs()
	_ = fs.MkdirAll("c", 0o755)
	if _, found, err := Load(fs, "c"); err != nil || !has(found, "no-plan") {
		t.Errorf("an empty folder: %v, %v", texts(found), err)
	}
	if _, _, err := Load(fs, "nowhere"); err == nil {
		t.Error("a missing folder is no error")
	}
	_ = afero.WriteFile(fs, "f", nil, 0o644)
	if _, _, err := Load(fs, "f"); err == nil {
		t.Error("a file in place of a folder is no error")
	}
}

// A template fills in what an enclosure does not say: whole blocks, and single
// attributes of blocks of the same name. It stays as it was for the next.
func TestTemplate(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": sound + `
template "tub" {
  species = "hadrurus-arizonensis"

  housing {
    kind   = "tub"
    inside = "40 x 30 x 30 cm"
    lid    = "solid, latched"
    depth  = "16 cm"
  }

  care "water" {
    every = "2 days"
  }
}

enclosure "tub-1" {
  template = "tub"

  animals "one" {
    count = 1
  }
}

enclosure "tub-2" {
  template = "tub"

  housing {
    depth = "20 cm"
  }

  animals "one" {
    count = 1
  }

  care "water" {
    amount = "20 ml"
  }

  care "mist" {
    every = "30 days"
  }
}
`})
	if len(found) > 0 {
		t.Fatal(texts(found))
	}
	one, two := c.Enclosure("tub-1"), c.Enclosure("tub-2")
	if d := one.Housing.Depth.V.String(); d != "16 cm" {
		t.Errorf("tub-1 is %s deep", d)
	}
	if two.Housing.Depth.V.String() != "20 cm" || two.Housing.Inside.V.String() != "40 x 30 x 30 cm" {
		t.Errorf("tub-2: %v", two.Housing)
	}
	if len(one.Care) != 1 || len(two.Care) != 2 || two.Care[0].Every.V.String() != "2 days" || !two.Care[0].Amount.Set() {
		t.Errorf("care: %d and %d", len(one.Care), len(two.Care))
	}
}

func TestLog(t *testing.T) {
	const plan = sound + "enclosure \"burrow-a\" {" + box + `
enclosure "burrow-b" {
  species = "pandinus-imperator"

  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
  }

  animals "old" {
    count = 1
  }

  animals "young" {
    count = 2
  }
}
`
	c, found := load(t, map[string]string{"a.care.hcl": plan, "records/2026.care.log": `# a comment
2026-11-20 burrow-a refused
2026-11-02 burrow-b young moulted "found on its \"side\", left alone"

2026-11-21 burrow-b counted 3
2026-11-21 burrow-b counted 3
2026-11-22 burrow-b young weighed 24.5 g
2026-11-23 burrow-a done mist
`})
	if len(found) > 0 {
		t.Fatal(texts(found))
	}
	if len(c.Log) != 5 {
		t.Fatalf("%d lines", len(c.Log))
	}
	if e := c.Log[0]; e.Word.Name != "moult" || e.Group.V != "young" || e.Note != `found on its "side", left alone` {
		t.Errorf("first: %+v", e)
	}
	if e := c.Log[3]; e.Number.V != 24.5 || e.Args[0].V != "g" {
		t.Errorf("weighed: %+v", e)
	}
	for line, want := range map[string]string{
		"2026-11-20 burrow-z refused":          "unknown-name",
		"2026-11-20 burrow-a refsed":           "log-line",
		"2026-11-31 burrow-a refused":          "log-line",
		"2026-11-20 burrow-b refused":          "log-line", // of which animals?
		"2026-11-20 burrow-b jung refused":     "unknown-name",
		"2026-11-20 burrow-a refused \"a note": "log-line",
		"2026-11-20":                           "log-line",
		"burrow-a refused":                     "log-line",
	} {
		if _, found := load(t, map[string]string{"a.care.hcl": plan, "x.care.log": line}); !has(found, want) {
			t.Errorf("%s: %v", line, texts(found))
		}
	}
}

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
		var b strings.Builder
		if err := (finding.Printer{Files: c.Files}).Print(&b, found); err != nil {
			t.Fatal(err)
		}
	})
}
