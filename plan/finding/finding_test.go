package finding

import (
	"strings"
	"testing"

	"vivary/plan/source"
)

var (
	mild = &Rule{ID: "mild", Severity: Caution}
	bad  = &Rule{ID: "bad", Severity: Danger}
)

func TestSort(t *testing.T) {
	set := &source.Set{}
	b, a := set.Add("b", []byte("one two")), set.Add("a", []byte("three"))
	var l List
	l.Add(Finding{Rule: mild, At: source.Place{File: b, Start: 4, End: 7}, Text: "later"})
	l.Add(Finding{Rule: mild, At: source.Place{File: b, End: 3}, Text: "y"})
	l.Add(Finding{Rule: mild, At: source.Place{File: b, End: 3}, Text: "x"})
	l.Add(Finding{Rule: bad, At: source.Place{File: b, End: 3}, Text: "z"})
	l.Soft(Finding{Rule: bad, At: source.Place{File: a}, Text: "milder"}, Advice)
	l.Add(Finding{Rule: mild, At: source.Place{File: b, End: 3}, Text: "x"}) // a repeat
	l.Add(Finding{Rule: mild, Severity: Error, At: source.Place{File: b, Start: 5, End: 6}, Text: "worse than usual"})
	var got []string
	for _, f := range Sort(set, l.All) {
		got = append(got, f.Severity.String()+" "+f.Text)
	}
	if s := strings.Join(got, ", "); s != "advice milder, danger z, caution x, caution y, caution later, error worse than usual" {
		t.Error(s)
	}
}

// The excerpt marks what is meant, in a line of any length, and lets nothing of a
// plan through that steers the terminal or turns the direction of writing.
func TestPrint(t *testing.T) {
	long := strings.Repeat("x", 500) + "HERE" + strings.Repeat("y", 500)
	hostile := "a \x1b[2J\u202eb HERE"
	for _, text := range []string{"HERE", "\tHERE", long, hostile, "é HERE"} {
		set := &source.Set{}
		at := strings.Index(text, "HERE")
		id := set.Add("f", []byte(text+"\n"))
		var b strings.Builder
		err := Printer{Files: set}.Print(&b, []Finding{{Rule: mild, Severity: Caution, Text: "no\x1b[2J\u202e", At: source.Place{File: id, Start: int32(at), End: int32(at) + 4}}})
		lines := strings.Split(b.String(), "\n")
		if err != nil || len(lines) < 3 || strings.ContainsAny(b.String(), "\x1b\u202e") {
			t.Fatalf("%q: %q %v", text, b.String(), err)
		}
		if len(lines[1]) > 130 || !strings.Contains(lines[2], "^^^^") || strings.Contains(lines[2], "^^^^^") {
			t.Errorf("%q is shown as\n%s\n%s", text, lines[1], lines[2])
		}
		if text != hostile && []rune(lines[1])[strings.Index(lines[2], "^")] != 'H' {
			t.Errorf("the mark is not below what is meant:\n%s\n%s", lines[1], lines[2])
		}
	}
}

// What nothing is said about is never silenced, and what may be only where it is
// milder is not where it refuses.
func TestSilenced(t *testing.T) {
	for _, c := range []struct {
		silence  Silence
		severity Severity
		want     bool
	}{{0, Advice, false}, {Never, Danger, false}, {ByReason, Error, true}, {OnlyCaution, Caution, true}, {OnlyCaution, Urgent, false}, {OnlyCaution, Error, false}} {
		f := Finding{Rule: &Rule{Silence: c.silence}, Severity: c.severity}
		if f.Silenced() != c.want {
			t.Errorf("%s, %q: %v", c.severity, c.silence, !c.want)
		}
	}
}
