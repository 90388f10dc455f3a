package plan

import (
	"strings"
	"testing"
)

// A word that is known elsewhere is said to belong there; one that keepers have for another is
// answered with that; where neither is so, with what there is.
func TestUnknownWords(t *testing.T) {
	const around = "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\n"
	box := func(inside string) string { return around + "enclosure \"box\" {\n" + inside + "\n}\n" }
	for _, c := range []struct{ typed, text, write string }{
		{box("heater \"mat\" {\n}"), "it belongs in climate or in rack", "the same there"},
		{box("  keeper \"ann\" {\n  }"), "it belongs outside of all blocks", "the same there"},
		{box("water \"dish\" {\n}"), "there is no block \"water\"", "care, with the name \"water\""},
		{box("housing {\n  warm_end = \"30 C\"\n}"), "it belongs in climate", "the same there"},
		{box("feeding \"a\" {\n  amount = 3\n}"), "there is no attribute \"amount\"", "per_animal, if that is what is meant"},
		{box("feeding \"a\" {\n  frequency = \"week\"\n}"), "there is no attribute \"frequency\"", "every, if that is what is meant"},
		{around + "holiday \"ann\" {\n}\n", "there is no block \"holiday\"", "away, if that is what is meant"},
		{around + "tank \"a\" {\n}\n", "there is no block \"tank\"", "enclosure, if that is what is meant"},
		{around + "xylophone \"a\" {\n}\n", "there is no block \"xylophone\"", "one of: collection, room"},
	} {
		_, found := load(t, map[string]string{"a.care.hcl": c.typed})
		said := false
		for _, f := range found {
			said = said || f.Rule == ruleUnknownWord && strings.Contains(f.Text, c.text) && strings.HasPrefix(f.Write, c.write) && len(f.Edits) == 0
		}
		if !said {
			t.Errorf("no %q, %q of\n%s: %v", c.text, c.write, c.typed, texts(found))
		}
	}
}
