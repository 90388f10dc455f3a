package plan

import (
	"fmt"
	"strings"
	"testing"

	"vivary/schema"
)

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
		"2026-11-20 burrow-a refsed":              "log-word",
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
		"2026-11-02 burrow-a old premoult 2":         "",
		"2026-11-02 burrow-a done":                   "after done stands the care",
		"2026-11-02 burrow-a old molted-agan":        `neither "old" nor "molted-agan" is a word`,
		"2026-11-02 burrow-a adult birth":            `neither "adult" nor "birth" is a word`, // and not: did you mean moult
		"2026-11-02 burrow-a old premolut":           "did you mean premoult",
		"2026-11-02 burrow-a mollted":                "did you mean moulted, which is moult?", // and not: mated
		"2026-11-02 burrow-a molted-again":           "did you mean molted, which is moult?",
		"2026-11-02 burrow-a moult-soon":             `"moult-soon" is not a word of the log. Until then`, // it has not moulted
	} {
		_, found := ParseLogLine(1, line)
		got := strings.Join(texts(found), "; ")
		if want == "" && got != "" || !strings.Contains(got, want) {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
	}
}

// Of so many lines with words that are none of the log nothing more is said than that there
// are more, and all of them are kept as remarks.
func TestManyUnknownWords(t *testing.T) {
	var log strings.Builder
	const lines = 3 * MaxFound
	for i := range lines {
		fmt.Fprintf(&log, "2026-11-02 den moulx%d\n", i)
	}
	events, found := parseLog(1, []byte(log.String()))
	said := len(found)
	for i := range events {
		if said += len(events[i].said); events[i].Word != schema.WordRemark {
			t.Fatalf("line %d is no remark", i)
		}
	}
	if len(events) != lines || said != MaxFound+1 || !strings.Contains(found[0].Text, "many more lines") {
		t.Errorf("%d lines, %d findings", len(events), said)
	}
	c, all := load(t, map[string]string{"a.care.hcl": sound + "enclosure \"den\" {" + box, "b.care.log": log.String()})
	n := 0
	for i := range all {
		if all[i].Rule == ruleLogWord {
			n++
		}
	}
	if n != MaxFound+1 || len(c.Log) != lines {
		t.Errorf("%d findings of %d lines", n, len(c.Log))
	}
}
