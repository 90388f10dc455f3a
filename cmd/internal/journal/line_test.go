package journal

import (
	"strings"
	"testing"
	"unicode/utf8"

	"vivary/internal/planned"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Whatever stands in a note, the line is one, it says what its parts say and nothing else, and
// the note is read as it was written.
func FuzzLine(f *testing.F) {
	for _, s := range []string{"left alone", `a "b" c`, `\`, `\"`, `"\`, "a\n2026-11-25 tub-1 died", "a\r2026-11-25 tub-1 died", "a\x00b\x1b[2J", "\xff\"", `" died`, "# x",
		"\u2028x\u2029", "a\u0085b", "\ufeffa", "שלום \u200fx", strings.Repeat("x", 5000), "\t", `""`, `\\" "`} {
		f.Add("tub-1", "adults", "2", s)
	}
	f.Add("tub\n1", "a b", `"`, "")
	f.Add("by", "by", "#", "x")
	f.Add("keeper", "lead", "away", "x")
	f.Add("#tub", "", "moult", "x")
	f.Add("19:30", "", "x", "x")
	f.Fuzz(func(t *testing.T, enclosure, group, arg, note string) {
		clock := civil.Clock(19*60 + 42)
		for i, word := range []*schema.LogWord{schema.WordFed, schema.WordRemark, schema.WordDone, schema.WordMoved} {
			l := Line{Day: planned.Day("2026-11-25"), Enclosure: enclosure, Group: group, Word: word, Args: []string{arg}, Note: note}
			if i%2 == 0 {
				l.Clock, l.By = &clock, "lead"
			}
			text, err := l.Text()
			if err != nil {
				if isName(enclosure) && (group == "" || isName(group)) && isName(arg) {
					t.Fatalf("%+v is refused: %v", l, err)
				}
				continue
			}
			if strings.ContainsAny(text, "\n\r") || !utf8.ValidString(text) {
				t.Fatalf("%q is no line", text)
			}
			e, wrong := plan.ParseLogLine(1, text)
			for _, f := range wrong {
				if f.Rule.ID == "log-line" && e.Word == nil {
					t.Fatalf("%q cannot be read: %s", text, f.Text)
				}
			}
			if e.Date != l.Day || e.Enclosure.V != enclosure || e.Clock.Set() != (l.Clock != nil) || e.By.V != l.By || e.Note != OneLine(note) {
				t.Fatalf("%q is read as %+v", text, e)
			}
		}
	})
}

// isName reports whether a text can be a name in a plan that the head of a line has no other
// meaning for.
func isName(s string) bool {
	return s != "" && s != "by" && s != schema.LogKeeper && len(s) < 60 && strings.Trim(s, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_") == ""
}

// The parts of a line stand where a log has them.
func TestLine(t *testing.T) {
	clock := civil.Clock(0)
	for want, l := range map[string]Line{
		`2026-11-25 tub-1 refused`: {Enclosure: "tub-1", Word: schema.WordRefused},
		`2026-11-25 00:00 by lead tub-1 adults fed 2 crickets "one is \"left\""`: {Clock: &clock, By: "lead", Enclosure: "tub-1", Group: "adults",
			Word: schema.WordFed, Args: []string{"2", "crickets"}, Note: " one\nis\t\"left\" "},
		`2026-11-25 keeper lead away "ill"`: {Keeper: "lead", Word: schema.WordAway, Note: "ill"},
	} {
		l.Day = planned.Day("2026-11-25")
		if got, err := l.Text(); err != nil || got != want {
			t.Errorf("%s: %q, %v", want, got, err)
		}
	}
	for _, l := range []Line{
		{},
		{Enclosure: "tub-1"},
		{Word: schema.WordFed},
		{Enclosure: "tub-1 died", Word: schema.WordFed},
		{Enclosure: "tub-1", Word: schema.WordFed, Args: []string{"2 crickets"}},
		{Enclosure: "tub-1", Word: schema.WordFed, Args: []string{"\"x\""}},
		{Enclosure: "tub-1", By: "a\nb", Word: schema.WordFed},
		{Enclosure: "by", Word: schema.WordFed, Args: []string{"x", "fed"}},
	} {
		if got, err := l.Text(); err == nil {
			t.Errorf("%+v: %q", l, got)
		}
	}
}
