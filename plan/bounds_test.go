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

// What there is too much of is left out, and said once; what is wrong too often is told up
// to a bound.
func TestBoundsAreSaidOnce(t *testing.T) {
	many := func(n int, unit string) string {
		var b strings.Builder
		for i := range n {
			fmt.Fprintf(&b, unit, i)
		}
		return b.String()
	}
	for _, x := range []struct{ name, text string }{
		{"rooms", many(5_001, "room \"r%d\" {\n  temperature = \"18 to 22 C\"\n}\n")},
		{"keepers", many(1_001, "keeper \"k%d\" {}\n")},
		{"calendars", many(1_001, "calendar \"c%d\" {}\n")},
		{"cares in a block", "enclosure \"e\" {\n  room = \"a\"" + box[:len(box)-2] + many(MaxInside+1, "  care \"c%d\" {\n    kind = \"water\"\n    every = \"day\"\n  }\n") + "}\n"},
		{"unknown attributes", "room \"b\" {\n  temperature = \"18 to 22 C\"\n" + many(MaxFound+9, "  x%d = 1\n") + "}\n"},
		{"unknown names", many(MaxFound+9, "round \"r%[1]d\" {\n  at = \"19:30\"\n  keeper = \"nobody-%[1]d\"\n}\n")},
		{"blocks of no type", many(maxOutermost+9, "room \"r%d\" {}\n")},
	} {
		_, found := load(t, map[string]string{"a.care.hcl": sound + x.text})
		said := 0
		for _, f := range found {
			if f.Rule == ruleTooMany {
				said++
			}
		}
		if said == 0 || said > 2 || len(found) > MaxFound+1_100 {
			t.Errorf("%s: said %d times, %d findings", x.name, said, len(found))
		}
	}
}

// In a log no line that cannot be read hides another, however many there are.
func TestManyBrokenLines(t *testing.T) {
	log := strings.Repeat("x\n", 3*MaxFound) + "2026-11-02 e fed\n"
	c, found := load(t, map[string]string{"a.care.hcl": sound + "enclosure \"e\" {" + box, "a.care.log": log})
	if len(c.Log) != 1 || len(found) != MaxFound+1 {
		t.Errorf("%d lines, %d findings", len(c.Log), len(found))
	}
	if last := found[len(found)-1]; !strings.Contains(last.Text, "1000 more lines") {
		t.Errorf("%s", last.Text)
	}
}

// Names in a log that nobody knows are told up to a bound, and keep nothing from being
// understood.
func TestManyUnknownNamesInALog(t *testing.T) {
	var log strings.Builder
	for i := range 2 * MaxFound {
		fmt.Fprintf(&log, "2026-11-02 nobody-%d fed\n", i)
	}
	c, found := load(t, map[string]string{"a.care.hcl": sound + "enclosure \"e\" {" + box, "a.care.log": log.String() + "2026-11-02 e fed\n"})
	if len(c.Log) != 1 || len(found) != MaxFound+1 || !c.Understood() {
		t.Errorf("%d lines, %d findings, understood: %t", len(c.Log), len(found), c.Understood())
	}
}
