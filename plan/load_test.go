package plan

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
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
	parts := []string{sound, "enclosure \"tub-10\" {" + box, "enclosure \"tub-2\" {" + box, "keeper \"k\" {\n  titel = \"K\"\n}\n",
		"round \"b\" {\n  at = \"08:00\"\n}\nround \"a\" {\n  at = \"08:00\"\n}\nround \"c\" {\n  at = \"07:00\"\n}\n",
		"away \"k\" {\n  from = \"2027-06-10\"\n  to = \"2027-06-12\"\n}\naway \"k\" {\n  from = \"2027-05-10\"\n  to = \"2027-05-12\"\n}\n",
		"species \"x\" {\n  like = \"y\"\n}\nspecies \"y\" {\n  like = \"nothing\"\n}\n"}
	all := func(files map[string]string) string {
		c, found := load(t, files)
		var s []string
		for _, e := range c.Enclosures {
			s = append(s, e.Name.V)
		}
		for _, r := range c.Rounds {
			s = append(s, r.Name.V)
		}
		for _, a := range c.Aways {
			s = append(s, a.From.V.String())
		}
		said := texts(found)
		slices.Sort(said)
		return strings.Join(append(s, said...), "\n")
	}
	want := all(map[string]string{"all.care.hcl": strings.Join(parts, "")})
	if !strings.HasPrefix(want, "tub-2\ntub-10\nc\na\nb\n2027-05-10\n2027-06-10\n") {
		t.Error(want)
	}
	for shift := range parts {
		files := map[string]string{}
		for i, p := range parts {
			// 3 and the number of parts have no factor in common: each order is another.
			files[strings.Repeat("d/", i%3)+string(rune('a'+(3*i+shift)%len(parts)))+".care.hcl"] = p
		}
		if got := all(files); got != want {
			t.Errorf("order %d:\n%s\nand in one file:\n%s", shift, got, want)
		}
	}
}

// A root that is a link to a folder is followed.
func TestLinkedRoot(t *testing.T) {
	dir := t.TempDir()
	if err := os.MkdirAll(filepath.Join(dir, "there"), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, "there", "a.care.hcl"), []byte(sound), 0o644); err != nil {
		t.Fatal(err)
	}
	link := filepath.Join(dir, "link")
	if err := os.Symlink("there", link); err != nil {
		t.Fatal(err)
	}
	c, found, err := Load(afero.NewOsFs(), link)
	if err != nil || len(found) > 0 || c.Room("a") == nil {
		t.Fatalf("%v, %v", texts(found), err)
	}
	if name := c.Files.Name(c.Room("a").At.File); name != filepath.ToSlash(link)+"/a.care.hcl" {
		t.Errorf("it is shown as %s", name)
	}
}

// A figure of the collection's own whose value cannot be read does not stand for
// one of 0: the built-in one holds.
func TestUnreadableFigure(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": sound + `
species "pandinus-imperator" {
  figure "temperature-hard" {
    value   = "hot"
    because = "tried"
    source  = ["us"]
    review  = "2027-09-01"
  }

  figure "humidity-target" {
    value   = "70 to 85 %"
    because = "tried"
    source  = ["us"]
    review  = "2027-09-01"
  }
}

species "its-kin" {
  like = "pandinus-imperator"
}
`})
	s := c.Library.Species("pandinus-imperator")
	if f := s.Figure("temperature-hard", ""); f == nil || f.Own || f.Range.High < 30 {
		t.Errorf("temperature-hard: %+v", f)
	}
	if f := s.Figure("humidity-target", ""); f == nil || !f.Own || f.Range.Low != 70 {
		t.Errorf("humidity-target: %+v", f)
	}
	if s := c.Library.Species("its-kin"); !s.Figure("humidity-target", "").Own || s.Figure("temperature-hard", "") == nil {
		t.Errorf("its-kin is not like it")
	}
	if len(found) != 1 || found[0].Rule.ID != "value" || found[0].Write != "value = \"…\"" {
		t.Error(texts(found))
	}
}

// What begins with a dot is passed over: editors and git keep copies there.
func TestHiddenFiles(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": sound, ".git/b.care.hcl": sound, ".b.care.hcl": sound, "notes.txt": "}"})
	if len(found) > 0 || c.Files.Len() != 1 {
		t.Error(texts(found))
	}
}

// An address is kept without its last slash, since names of files follow it.
func TestWeb(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": "collection \"c\" {\n  time_zone = \"Europe/London\"\n  web = \"https://care.example/feeds/\"\n}\n"})
	if len(found) > 0 || c.About.Web.V != "https://care.example/feeds" {
		t.Error(c.About.Web.V, texts(found))
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

  care "look" {
    every = "2 days"
    round = "r"
  }
}

round "r" {
  at = "19:30"
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

  care "look" {
    on = ["tue"]
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
	if look := two.Care[2]; len(look.On) != 1 || look.Every.Set() || !Lists(look.Round, "r") {
		t.Errorf("what says itself how often takes that from nowhere else: %+v", look)
	}
	if len(one.Care) != 2 || len(two.Care) != 3 || two.Care[0].Every.V.String() != "2 days" || !two.Care[0].Amount.Set() {
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
	c, found := load(t, map[string]string{"a.care.hcl": plan, "records/2026.care.log": "\ufeff" + `# a comment
2026-11-20 burrow-a refused
2026-11-02 burrow-b young moulted "found on its \"side\", left alone"

2026-11-21 burrow-b counted 3
2026-11-21 burrow-b counted 3
2026-11-22 burrow-b young weighed 24.5 g
2026-11-23 burrow-a done mist
2026-11-24 burrow-a fed cricket 3
`})
	if len(found) > 0 {
		t.Fatal(texts(found))
	}
	if len(c.Log) != 6 {
		t.Fatalf("%d lines", len(c.Log))
	}
	if e := c.Log[0]; e.Word.Name != "moult" || e.Group.V != "young" || e.Note != `found on its "side", left alone` {
		t.Errorf("first: %+v", e)
	}
	if e := c.Log[3]; e.Number.V != 24.5 || e.Args[0].V != "g" {
		t.Errorf("weighed: %+v", e)
	}
	if e := c.Log[5]; e.Number.Set() || len(e.Args) != 2 {
		t.Errorf("a number is the word's own only where it comes first: %+v", e)
	}
	for line, want := range map[string]string{
		"2026-11-20 burrow-z refused":             "unknown-name",
		"2026-11-20 burrow-a refsed":              "log-line",
		"2026-11-31 burrow-a refused":             "log-line",
		"2026-11-20 burrow-b refused":             "log-line", // of which animals?
		"2026-11-20 burrow-b jung refused":        "unknown-name",
		"2026-11-20 burrow-a refused \"a note":    "log-line",
		"2026-11-20 burrow-a refused \"\x1b[2J\"": "log-line",
		"2026-11-20":       "log-line",
		"burrow-a refused": "log-line",
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

// What stands wrongly after a word of the log is said, and the line is not used:
// a death that is half read would leave an animal in the plan that is dead.
func TestMisread(t *testing.T) {
	for line, want := range map[string]string{
		"2026-11-02 burrow-a old moult":              "",
		"2026-11-02 burrow-a young moult 2":          "",
		"2026-11-02 burrow-a old moved":              "",
		"2026-11-02 burrow-a young moved 1 burrow-b": "",
		"2026-11-02 burrow-a skipped water":          "",
		"2026-11-02 burrow-a young died two":         "after died stands how many",
		"2026-11-02 burrow-a young died 1 2":         "after died stands how many",
		"2026-11-02 burrow-a young died 0.5":         "animals come whole",
		"2026-11-02 burrow-a old refused --off":      "something stands after refused",
		"2026-11-02 burrow-a old premoult 2":         "something stands after premoult",
		"2026-11-02 burrow-a done":                   "after done stands the care",
		"2026-11-02 burrow-a old molted-again":       `neither "old" nor "molted-again" is a word`,
		"2026-11-02 burrow-a old premolut":           "did you mean premoult",
	} {
		_, found := ParseLogLine(1, line)
		got := strings.Join(texts(found), "; ")
		if want == "" && got != "" || !strings.Contains(got, want) {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
	}
}

// Bounds are findings, and what is beyond them is not worked on.
func TestTooMany(t *testing.T) {
	long := "calendar \"r\" {\n  kinds = [" + strings.Repeat("\"feed\", ", MaxList) + "\"water\"]\n}\n"
	_, found := load(t, map[string]string{"a.care.hcl": sound + long})
	if !has(found, "too-many") {
		t.Errorf("a list of %d: %v", MaxList+1, texts(found))
	}
	aways := ""
	for i := range MaxAways + 1 {
		aways += fmt.Sprintf("away \"a%d\" {\n  keeper = \"k\"\n  from = \"2027-01-01\"\n  to = \"2027-01-02\"\n}\n", i)
	}
	c, found := load(t, map[string]string{"a.care.hcl": sound + aways})
	if !has(found, "too-many") || len(c.Aways) != MaxAways {
		t.Errorf("%d absences are kept: %v", len(c.Aways), texts(found)[:3])
	}
}

// A meal that names no animals is said once, at its place.
func TestNamelessMeal(t *testing.T) {
	_, found := load(t, map[string]string{"a.care.hcl": sound + "enclosure \"a\" {" + strings.Replace(box, "}", "}\n  feeding {\n    every = \"week\"\n  }\n", 1)})
	if len(found) != 1 || !has(found, "missing") {
		t.Errorf("%v", texts(found))
	}
}

// Stages are refused where they would be passed over.
func TestStagesOutsideASheet(t *testing.T) {
	_, found := load(t, map[string]string{"a.care.hcl": sound + "enclosure \"a\" {" + strings.Replace(box, "}", "}\n  care \"water\" {\n    stages = [\"adult\"]\n  }\n", 1)})
	if len(found) != 1 || !strings.Contains(found[0].Text, "stages is for species sheets") {
		t.Errorf("%v", texts(found))
	}
}
