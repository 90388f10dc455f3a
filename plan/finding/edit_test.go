package finding

import (
	"strings"
	"testing"

	"vivary/plan/source"
)

func edit(file source.ID, start, end int32, text string) Edit {
	return Edit{source.Place{File: file, Start: start, End: end}, text}
}

func TestApply(t *testing.T) {
	for _, c := range []struct {
		name  string
		edits []Edit
		want  string
	}{
		{"none", nil, "abcdef"},
		{"one", []Edit{edit(1, 2, 4, "X")}, "abXef"},
		{"in no order", []Edit{edit(1, 4, 6, "Y"), edit(1, 0, 1, "")}, "bcdY"},
		{"side by side", []Edit{edit(1, 0, 3, "X"), edit(1, 3, 6, "Y")}, "XY"},
		{"put in at a place, in the order given", []Edit{edit(1, 3, 3, "1"), edit(1, 3, 3, "2")}, "abc12def"},
		{"put in before what gives way", []Edit{edit(1, 3, 4, "X"), edit(1, 3, 3, "1")}, "abc1Xef"},
		{"the same twice", []Edit{edit(1, 2, 3, "X"), edit(1, 2, 3, "X")}, "abXdef"},
		{"at the end", []Edit{edit(1, 6, 6, "!")}, "abcdef!"},
	} {
		if got, err := Apply([]byte("abcdef"), c.edits); err != nil || string(got) != c.want {
			t.Errorf("%s: %q, %v", c.name, got, err)
		}
	}
	for name, edits := range map[string][]Edit{
		"overlap":      {edit(1, 0, 3, "X"), edit(1, 2, 4, "Y")},
		"inside":       {edit(1, 0, 6, "X"), edit(1, 3, 3, "Y")},
		"two files":    {edit(1, 0, 1, "X"), edit(2, 2, 3, "Y")},
		"past the end": {edit(1, 5, 7, "X")},
		"before":       {edit(1, -1, 2, "X")},
		"backwards":    {edit(1, 3, 2, "X")},
	} {
		if got, err := Apply([]byte("abcdef"), edits); err == nil {
			t.Errorf("%s: %q", name, got)
		}
	}
}

// A word is replaced within its quotes; where more or less stands there than the word,
// it is not known which part of it is meant.
func TestInstead(t *testing.T) {
	for typed, want := range map[string]string{`"laed"`: `"lead"`, "laed": "lead", `"l\u0061ed"`: "", `["laed"]`: ""} {
		at := source.Place{File: 1, End: int32(len(typed))}
		edits := Instead(at, "laed", "lead")
		got, err := Apply([]byte(typed), edits)
		if err != nil || (edits == nil) != (want == "") || want != "" && string(got) != want {
			t.Errorf("%s: %q, %v", typed, got, err)
		}
	}
	if Instead(source.Place{}, "", "lead") != nil {
		t.Error("what nobody wrote is replaced")
	}
}

// What is to be written is the line that was typed, with the edit made; where that
// cannot be shown whole, it is the words.
func TestPrintEdits(t *testing.T) {
	const text = "a {\n  one = \"x\"\n  two = \"y\"\n\n  six = \"z\"\n}\n"
	change := func(old, better string) Edit {
		i := int32(strings.Index(text, old))
		return edit(1, i, i+int32(len(old)), better)
	}
	for _, c := range []struct {
		name  string
		edits []Edit
		want  string
	}{
		{"none", nil, "    fix: words\n"},
		{"one", []Edit{change("y", "Y")}, "    write: two = \"Y\"\n"},
		{"two on one line", []Edit{change("two", "TWO"), change("y", "Y")}, "    write: TWO = \"Y\"\n"},
		{"two on two lines", []Edit{change("z", "Z"), change("x", "X")}, "    write: one = \"X\"\n           six = \"Z\"\n"},
		{"a line put in", []Edit{change("  two", "  more = 1\n  two")}, "    write: more = 1\n           two = \"y\"\n"},
		{"lines made one", []Edit{change("one = \"x\"\n  two", "both")}, "    write: both = \"y\"\n"},
		{"a line taken out", []Edit{change("  two = \"y\"", "")}, "    fix: words\n"},
		{"a line taken out with its end", []Edit{change("  two = \"y\"\n", "")}, "    fix: words\n"},
		{"too long to show", []Edit{change("y", strings.Repeat("y", 200))}, "    fix: words\n"},
		{"that overlap", []Edit{change("two", "a"), change("wo", "b")}, "    fix: words\n"},
		{"that steer the terminal", []Edit{change("y", "\x1b[2J")}, "    write: two = \"[2J\"\n"},
	} {
		set := &source.Set{}
		set.Add("f", []byte(text))
		var b strings.Builder
		if err := (Printer{Files: set}).Print(&b, []Finding{{Rule: mild, Text: "t", Write: "words", Edits: c.edits}}); err != nil {
			t.Fatal(err)
		}
		if _, got, _ := strings.Cut(b.String(), "\n"); got != c.want {
			t.Errorf("%s:\n%s", c.name, got)
		}
	}
}

// A line put into a block is its first, one indent further in; what stood on one line is
// parted. A block taken out takes its line along. Things of a list stand in their brackets.
func TestMadeEdits(t *testing.T) {
	block := func(text string) []Edit {
		head := int32(strings.Index(text, "{") - 1)
		start := int32(strings.Index(text, "box"))
		return Inside([]byte(text), source.Place{File: 1, Start: start, End: head}, source.Place{File: 1, Start: start, End: int32(strings.LastIndex(text, "}") + 1)}, "new = 1")
	}
	out := func(text string) []Edit {
		return Without([]byte(text), source.Place{File: 1, Start: int32(strings.Index(text, "box")), End: int32(strings.LastIndex(text, "}") + 1)})
	}
	list := func(text string) []Edit {
		first, last := int32(strings.Index(text, `"`)), int32(strings.LastIndex(text, `"`)+1)
		return Items([]byte(text), source.Place{File: 1, Start: first, End: first + 3}, source.Place{File: 1, Start: last - 3, End: last}, []string{"x", "y"})
	}
	for _, c := range []struct {
		make             func(string) []Edit
		text, want, name string
	}{
		{block, "box {\n  old = 2\n}\n", "box {\n  new = 1\n  old = 2\n}\n", "lines"},
		{block, "  box { # why\r\n    old = 2\r\n  }\r\n", "  box { # why\r\n    new = 1\r\n    old = 2\r\n  }\r\n", "of Windows, with a remark"},
		{block, "box { old = 2 }\n", "box {\n  new = 1\n  old = 2\n}\n", "one line"},
		{block, "box {}\n", "box {\n  new = 1\n}\n", "nothing"},
		{out, "a\n  box {\n  }\nb\n", "a\nb\n", "out"},
		{out, "a\nbox {\n}", "a\n", "out at the end"},
		{out, "a box {\n} # b\n", "a  # b\n", "out of a line"},
		{list, `on = ["a", "b"]`, `on = ["x", "y"]`, "list"},
		{list, "on = [\n  \"a\",\n  \"b\",\n]", "on = [\n  \"x\", \"y\",\n]", "list on lines"},
	} {
		got, err := Apply([]byte(c.text), c.make(c.text))
		if err != nil || string(got) != c.want {
			t.Errorf("%s: %v\n%s", c.name, err, got)
		}
	}
	if list(`on = "a" + "b"`) != nil || block("a = 1; box {\n}\n") != nil || Inside(nil, source.Place{File: -1}, source.Place{File: -1}, "x") != nil || Without(nil, source.Place{File: -1}) != nil {
		t.Error("an edit is made where it is not plain how")
	}
	twice := append(out("box {\n}\n"), out("box {\n}\n")...)
	if got, err := Apply([]byte("box {\n}\n"), twice); err != nil || len(got) != 0 {
		t.Errorf("%v: %s", err, got)
	}
}
