package check_test

import (
	"fmt"
	"strings"
	"testing"
)

// What is asked of young, by how a species has them: scorpions bear living young, spiders,
// geckos and mantids lay eggs (common knowledge; the species sheets). Keepers say "born" of
// whip spiders too, whose young climb on their mother.
func TestYoungUnlikely(t *testing.T) {
	for _, c := range []struct{ species, count, stage, line, asked string }{
		{"pandinus-imperator", "0.1.0", "adult", "born 14", ""},
		{"pandinus-imperator", "3", "adult", "born 14", ""},
		{"pandinus-imperator", "1.2.0", "adult", "gravid", ""},
		{"pandinus-imperator", "1.0.0", "adult", "gravid", "males by the plan"},
		{"pandinus-imperator", "1.0.0", "adult", "mated", ""},
		{"pandinus-imperator", "1", "juvenile", "mated", "none of them is grown"},
		{"pandinus-imperator", "1", "juvenile", "born 5", "none of them is grown"},
		{"pandinus-imperator", "0.1.0", "adult", "laid", "lays no eggs"},
		{"pandinus-imperator", "0.1.0", "adult", "hatched 20", "lays no eggs"},
		{"brachypelma-hamorii", "0.1.0", "adult", "laid", ""},
		{"brachypelma-hamorii", "0.1.0", "adult", "hatched 200", ""},
		{"brachypelma-hamorii", "0.1.0", "adult", "born 200", "its young hatch"},
		{"damon-diadema", "0.1.0", "adult", "born 20", ""},
		{"porcellio-scaber", "60", "adult", "born 20", ""},
		{"porcellio-scaber", "60", "adult", "hatched 20", ""},
	} {
		r := compiled(t, fmt.Sprintf("species = %q\nanimals \"one\" {\n  count = %q\n  stage = %q\n  origin = \"captive bred\"\n  paper = \"invoice 118\"\n}\n2026-11-24 box %s\n", c.species, c.count, c.stage, c.line))
		if got := printed(r, of(r, "young-unlikely")); c.asked == "" && got != "" || !strings.Contains(got, c.asked) {
			t.Errorf("%s %s of %s %s: want %q, got:\n%s", c.line, c.species, c.count, c.stage, c.asked, got)
		}
	}
	r := compiled(t, "animals \"one\" {\n  count = \"1.0.0\"\n  stage = \"adult\"\n  state = \"gravid\"\n}\n")
	if got := printed(r, of(r, "young-unlikely")); !strings.Contains(got, "males by the plan") {
		t.Errorf("a male that the plan calls gravid: %q", got)
	}
}
