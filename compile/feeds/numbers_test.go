package feeds_test

import (
	"maps"
	"os"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/internal/planned"
	"vivary/schema/civil"
)

// forty is the ordinary example of forty tubs, with a calendar by care and one by round, and
// what is written in place of some of it.
func forty(t *testing.T, change ...string) string {
	t.Helper()
	text, err := os.ReadFile("../../examples/ordinary/forty-tubs-in-one-block/plan.care.hcl")
	if err != nil {
		t.Fatal(err)
	}
	return strings.NewReplacer(change...).Replace(string(text) + "calendar \"care\" {\n  entry = \"per care\"\n}\ncalendar \"few\" {\n  entry = \"per care\"\n  enclosures = [\"tub-7\"]\n}\ncalendar \"all\" {\n  enclosures = [\"tub\"]\n}\n")
}

func numbered(t *testing.T, on civil.Date, log string, change ...string) *compile.Result {
	t.Helper()
	c, found := planned.Sound(t, planned.With(forty(t, change...), log))
	r := compile.Compile(c, found, on.At(12*60, c.Location))
	if r.Refused() {
		t.Fatal(r.Findings)
	}
	return r
}

var tubsToday = civil.Must(2026, 11, 28)

// One that dies and one that comes move nothing of the others on a phone.
func TestNumbersMoveNothing(t *testing.T) {
	first := built(t, numbered(t, tubsToday, ""), "care", nil)
	r := numbered(t, tubsToday, "", "1 to 32, 34 to 41", "1 to 19, 21 to 32, 34 to 42")
	c := changes(t, first, built(t, r, "care", remembered(t, first)))
	for what, list := range map[string][]string{"added": c.added, "gone": c.gone, "changed": c.changed} {
		for _, e := range list {
			title := property(e, "SUMMARY")
			if what == "added" && strings.HasSuffix(title, "Tub 42") || what == "gone" && strings.HasSuffix(title, "Tub 20") {
				continue
			}
			t.Errorf("%s: %s", what, title)
		}
	}
	if len(c.added) == 0 || len(c.gone) == 0 {
		t.Error(len(c.added), len(c.gone))
	}
}

// Who gives a tub another number, and says which it had, keeps its entries; so does who
// gives the block another name.
func TestNumbersKeepIdentity(t *testing.T) {
	uids := func(r *compile.Result) []string {
		return slices.Sorted(maps.Keys(entries(t, built(t, r, "care", nil))))
	}
	want := uids(numbered(t, tubsToday, ""))
	const seven = `number "7"        { length = "28 mm" }`
	for name, change := range map[string][]string{
		"a tub":     {"1 to 32, 34 to 41", "1 to 6, 8 to 32, 34 to 41, 50", seven, strings.Replace(seven, "7", "50", 1) + "\n  number \"50\" { formerly = \"tub-7\" }", "[\"tub-7\"]", "[\"tub-50\"]"},
		"the block": {"enclosure \"tub\" {", "enclosure \"cup\" {\n  formerly = \"tub\"", "[\"tub-7\"]", "[\"cup-7\"]", "[\"tub\"]", "[\"cup\"]"},
		"zeros":     {"\"1 to 32", "\"01 to 32", seven, seven + "\n  number \"1 to 9\" { formerly = \"tub\" }", "[\"tub-7\"]", "[\"tub-07\"]"},
	} {
		got := uids(numbered(t, tubsToday, "", change...))
		if !slices.Equal(got, want) {
			t.Errorf("%s: %d entries, %d", name, len(got), len(want))
		}
	}
}

// A calendar may select one of them, or all by the name of their block.
func TestNumbersInCalendars(t *testing.T) {
	r := numbered(t, tubsToday, "2026-11-27 tub-7 premoult\n")
	few := string(built(t, r, "few", nil))
	if !strings.Contains(few, "Tub 7") || strings.Contains(few, "Tub 8") {
		t.Error("the calendar of one has others")
	}
	all := strings.ReplaceAll(string(built(t, r, "all", nil)), "\r\n ", "")
	if !strings.Contains(all, `- All 40: lid shut?`) || !strings.Contains(all, "Tub 7: before a moult") {
		t.Error("the calendar of all lacks some:\n" + all[:min(len(all), 3000)])
	}
}
