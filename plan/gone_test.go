package plan

import (
	"strings"
	"testing"
)

// A log speaks of an enclosure that is no longer kept without a word, once the plan says
// that it is gone; but for a line that brought animals to where nobody knows of them now.
func TestGone(t *testing.T) {
	const log = "2026-11-01 old moult\n2026-11-02 old died 1\n2026-11-03 old adult refused\n2026-11-04 old sold\n"
	for say, c := range map[string]struct{ plan, log, want string }{
		"gone":              {"gone \"old\" {\n  because = \"sold\"\n}\n", log, ""},
		"on one line":       {"gone \"old\" { because = \"sold\" }\n", log, ""},
		"not said":          {"", log, `unknown-name: there is no enclosure "old", of which 4 lines speak`},
		"one line":          {"", "2026-11-04 old sold\n", `unknown-name: there is no enclosure "old"`},
		"a slip":            {"", "2026-11-04 nwe died\n", `unknown-name: there is no enclosure "nwe": did you mean "new"?`},
		"no reason":         {"gone \"old\" {\n}\n", "", `missing: gone "old" has no because: what became of them`},
		"of a block":        {"gone \"new\" { because = \"sold\" }\n", "", `value: "new" stands in the plan: how many of its animals went is not said`},
		"some of a block":   {"gone \"new\" {\n  animals = 2\n  because = \"never there\"\n}\n", "", ""},
		"twice":             {"gone \"new\" {\n  animals = 1\n  because = \"sold\"\n}\ngone \"new\" {\n  animals = 1\n  because = \"died\"\n}\n", "", ""},
		"moved to new":      {"gone \"old\" { because = \"moved\" }\n", "2026-11-02 old moved 1 new\n", `unknown-name: "old" is gone by the plan, and by this line animals of it came to new, where nobody knows of them now`},
		"moved, taken back": {"gone \"old\" { because = \"moved\" }\n", "2026-11-02 old moved 1 new\n2026-11-03 old withdrawn moved 2026-11-02\n", ""},
		"moved to old":      {"gone \"old\" { because = \"sold\" }\ngone \"older\" { because = \"sold\" }\n", "2026-11-02 older moved 1 old\n", ""},
	} {
		c2, found := load(t, map[string]string{"a.care.hcl": sound + "enclosure \"new\" {" + box + c.plan, "b.care.log": c.log})
		if got := strings.Join(texts(found), "; "); got != c.want {
			t.Errorf("%s: %s", say, got)
		}
		if strings.HasPrefix(say, "gone") && len(c2.Log) > 0 {
			t.Errorf("%s: %d lines count", say, len(c2.Log))
		}
	}
}

// What a log says of the numbers somewhere is counted whether that is in the plan or not.
func TestDepartures(t *testing.T) {
	c, _ := load(t, map[string]string{"a.care.hcl": sound + "enclosure \"new\" {\n  formerly = \"first\"" + box,
		"b.care.log": "2026-11-01 new moult\n2026-11-01 old moult\n2026-11-02 old died\n2026-11-02 old died 2\n2026-11-03 old moved 2 new\n2026-11-04 first born 12\n2026-11-05 keeper k away\n2026-11-06 other sold 9999999\n2026-11-06 new fed\n",
		"c.care.log": "2026-11-02 old died 2\n2026-11-07 odd sold\n"})
	for name, want := range map[string]Departures{"old": {3, 3}, "new": {2, 0}, "other": {}, "odd": {1, everybody}, "nobody": {}} {
		if got := c.Departed(name); got != want {
			t.Errorf("%s: %+v, want %+v", name, got, want)
		}
	}
	if got := strings.Join(c.Logged(), " "); got != "new odd old other" {
		t.Error(got)
	}
}
