package life_test

import (
	"strings"
	"testing"

	"vivary/compile/horizon"
	"vivary/schema/civil"
)

// TestMaleGoesHome: a male that was brought to a female, and is taken back by his name after
// the mating, leaves the birth to come with her (a fact of biology); one that nobody named
// is held to be her, since a box of her own is asked for.
func TestMaleGoesHome(t *testing.T) {
	first := civil.Must(2027, 3, 1)
	head, box, _ := strings.Cut(resting(), `enclosure "box"`)
	of := func(name, animals, count string) string {
		b := strings.Replace(box, `animals "one"`, `animals "`+animals+`"`, 1)
		lines := strings.Split(b, "\n")
		for i, l := range lines {
			if strings.HasPrefix(strings.TrimSpace(l), "count") {
				lines[i] = "    count = \"" + count + "\""
			}
		}
		return `enclosure "` + name + `"` + strings.Join(lines, "\n") + "\n"
	}
	text := head + of("box", "fe", "0.1.0") + of("his", "mo", "1.0.0")
	for log, hers := range map[string]bool{
		"2027-03-01 his mo moved box\n2027-03-03 box fe mated\n2027-03-04 box mo moved his\n":        true,
		"2027-03-01 his mo moved 1 to box\n2027-03-03 box mated\n2027-03-04 box mo moved 1 to his\n": true,
		"2027-03-01 his mo moved box\n2027-03-03 box fe mated\n2027-03-04 box fe moved 1 to his\n":   false,
	} {
		e := lived(t, text, log, horizon.Horizon{From: first, Days: 400, Today: 60})
		got := len(e.Groups[0].Windows) > 0 || e.Groups[0].Gravid
		if g := e.Groups[0]; got != hers || g.Count(first+60) != 1 {
			t.Errorf("after\n%sthe birth is hers: %v, of %d animals", log, got, g.Count(first+60))
		}
	}
}
