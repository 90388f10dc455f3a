package plan

import (
	"fmt"
	"strings"
	"testing"
)

// A file that cannot be read does not hide what is wrong in the others, and what it may
// define is not called undefined.
func TestBrokenFiles(t *testing.T) {
	for _, x := range []struct {
		name string
		text string
		rule string
	}{
		{"binary", "\x7fELF\x00\x01", "not-text"},
		{"not UTF-8", "collection \"\xc3\x28\" {}", "not-text"},
		{"50 MB", strings.Repeat("# a comment that goes on\n", 2_100_000), "too-large"},
		{"nesting", "a = " + strings.Repeat("[", 10_000) + "kim", "too-deep"},
		{"nesting in a text", "a = \"" + strings.Repeat("${[", 10_000) + "\n kim", "syntax"},
		{"nesting after a comment with a quote", "/* \" */ a = " + strings.Repeat("[", 10_000) + "kim", "too-deep"},
		{"nesting in a heredoc", "a = <<E\n # ${" + strings.Repeat("[", 10_000) + " kim \nE\n", "syntax"},
		{"signs", "a = " + strings.Repeat("-!", 200_000) + "\nkim", "syntax"},
		{"conditions", "a = " + strings.Repeat("x?1:", 200_000) + "kim", "unknown-word"},
		{"open text", "room \"b\" {\n  temperature = \"18 to kim", "syntax"},
		{"no end", "room \"b\" {\n kim = 1", "syntax"},
	} {
		t.Run(x.name, func(t *testing.T) {
			c, found := load(t, map[string]string{"a.care.hcl": sound, "b.care.hcl": x.text,
				"c.care.hcl": "keeper \"k\" {\n  titel = \"K\"\n}\nround \"r\" {\n  at     = \"19:30\"\n  keeper = \"kim\"\n}\n"})
			if !has(found, x.rule) || !has(found, "unknown-word") || has(found, "unknown-name") != (x.rule == "unknown-word") {
				t.Errorf("found %v", texts(found))
			}
			for _, f := range found {
				if f.Rule.ID == x.rule && x.rule != "unknown-word" && c.Files.Name(f.At.File) != "c/b.care.hcl" {
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
