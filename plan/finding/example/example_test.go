package example

import (
	"reflect"
	"testing"
)

func TestParse(t *testing.T) {
	const text = `What there is to say.
-- found --
# want: "of the whole"
room "a" { # want: "one" "an \"other\""
}
2026-11-02 box moult "x" # want: "a log"
-- not found --
# a comment
room "a" {
}
`
	e, err := parse([]byte(text))
	if err != nil {
		t.Fatal(err)
	}
	want := Example{
		Words:    "What there is to say.",
		Found:    Plan{Text: "room \"a\" {\n}\n2026-11-02 box moult \"x\"\n", Wants: []Want{{0, "of the whole"}, {1, "one"}, {1, `an "other"`}, {3, "a log"}}},
		NotFound: Plan{Text: "# a comment\nroom \"a\" {\n}\n"},
	}
	if !reflect.DeepEqual(e, want) {
		t.Errorf("%+v", e)
	}
}

// What is not understood is an error: a want that is passed over would want nothing.
func TestParseRefuses(t *testing.T) {
	for _, text := range []string{
		"-- fuond --\na\n",
		"-- found --\na\n-- found --\nb\n",
		"-- found --\na # want: no quotes\n",
		"-- found --\na # want: \"\"\n",
		"-- found --\na # want: \"open\n",
	} {
		if e, err := parse([]byte(text)); err == nil {
			t.Errorf("%q is read as %+v", text, e)
		}
	}
}

func TestSplit(t *testing.T) {
	plan, log := Split("a\n2026-11-02 b\nc\n")
	if plan.Text != "a\nc\n" || log.Text != "2026-11-02 b\n" || plan.Line(2) != 3 || log.Line(1) != 2 || plan.Line(3) != 0 || plan.Line(0) != 0 {
		t.Errorf("%+v %+v", plan, log)
	}
}
