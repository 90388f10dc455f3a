package tidy_test

import (
	"strings"
	"testing"

	"github.com/hashicorp/hcl/v2/hclwrite"

	"vivary/internal/hostile"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/tidy"
)

func TestText(t *testing.T) {
	for _, c := range cases {
		got, _ := tidy.Text(1, []byte(c.text))
		if string(got) != c.want {
			t.Errorf("%s: it is\n%s\nand is to be\n%s", c.name, got, c.want)
		}
		sound(t, []byte(c.text))
	}
}

// What is not understood as a whole stays as it is.
func TestLeftAlone(t *testing.T) {
	for _, text := range []string{
		"", " \n", "room \"a\" {order=1}\rroom \"b\" {order=1}", "room \"a\" {order=1}\n/* room \"b\" {order=1}",
		"room \"a\" {order=1}\xff", "room \"a\" {order=1}\x00", "room \"a\" {order=1}\n" + strings.Repeat("#", plan.MaxFile), "\u200broom \"b\" {order=1}",
	} {
		got, found := tidy.Text(1, []byte(text))
		if string(got) != text || len(found) == 0 {
			t.Errorf("%.40q becomes %.40q, with %d findings", text, got, len(found))
		}
		if e := tidy.Edits(1, []byte(text), source.Place{}); e != nil {
			t.Errorf("%.40q has edits", text)
		}
	}
	// Tidy it would be too large to be read.
	deep := strings.Repeat("x {\n", 30) + strings.Repeat("y=1\n", 40_000) + strings.Repeat("}\n", 30)
	text := strings.Repeat("room a {\n"+deep+"}\n", 24)
	if got, found := tidy.Text(1, []byte(text)); string(got) != text || len(found) == 0 || found[len(found)-1].Rule.ID != "too-large" {
		t.Errorf("%d bytes become %d, %d findings", len(text), len(got), len(found))
	}
}

// A place of the text takes the outermost blocks that it touches.
func TestPart(t *testing.T) {
	const text = "room \"a\" {order=1}\n\n# b\nroom \"b\" {order=2}\n\n\nroom \"c\" {order=3}\n"
	for _, c := range []struct{ at, until, want string }{
		{"order=2", "order=2", "room \"a\" {order=1}\n\n# b\nroom \"b\" { order = 2 }\n\n\nroom \"c\" {order=3}\n"},
		{"# b", "# b", "room \"a\" {order=1}\n\n# b\nroom \"b\" { order = 2 }\n\n\nroom \"c\" {order=3}\n"},
		{"# b", "order=3", "room \"a\" {order=1}\n\n# b\nroom \"b\" { order = 2 }\n\nroom \"c\" { order = 3 }\n"},
	} {
		at := source.Place{File: 1, Start: int32(strings.Index(text, c.at)), End: int32(strings.Index(text, c.until) + 1)}
		got, err := finding.Apply([]byte(text), tidy.Edits(1, []byte(text), at))
		if err != nil || string(got) != c.want {
			t.Errorf("%s to %s: %v\n%s", c.at, c.until, err, got)
		}
	}
}

// An edit of a line is of that line.
func TestEditsAreSmall(t *testing.T) {
	text := hostile.Plain(2000).Plan
	neat, _ := tidy.Text(1, []byte(text))
	at := strings.Index(string(neat), "  room")
	spoilt := string(neat[:at]) + "    " + string(neat[at:])
	e := tidy.Edits(1, []byte(spoilt), source.Place{})
	if len(e) != 1 || strings.Count(e[0].Text, "\n") != 1 || int(e[0].At.Start) != at {
		t.Errorf("%+v", e)
	}
}

// The formatter of the HCL library leaves as it is what is tidy, where no blocks on one line
// are aligned, which it does not know, and no comment stands behind a brace.
func TestAsTheLibraryWritesIt(t *testing.T) {
	n := 0
	for path, text := range plans(t) {
		neat, found := tidy.Text(1, text)
		if len(found) > 0 || strings.Contains(path, "forty-tubs") || strings.Contains(path, "testdata/mistakes") {
			continue
		}
		n++
		if want := hclwrite.Format(neat); string(want) != string(neat) {
			t.Errorf("%s: %s", path, firstDifference(neat, want))
		}
	}
	if n < 100 {
		t.Errorf("only %d plans", n)
	}
}

// BenchmarkText tidies the largest file that is read.
func BenchmarkText(b *testing.B) {
	for name, text := range map[string][]byte{
		"plain":      []byte(hostile.Plain(plan.MaxFile - 1000).Plan),
		"comments":   []byte("room \"a\" {order=1} " + strings.Repeat("/**/", plan.MaxFile/4-10)),
		"blocks":     []byte(strings.Repeat("room a {}\n", plan.MaxFile/10-10)),
		"attributes": []byte(strings.Repeat("room a {\n"+strings.Repeat("y=1\n", 40_000)+"}\n", 26)),
	} {
		b.Run(name, func(b *testing.B) {
			b.SetBytes(int64(len(text)))
			b.ReportAllocs()
			for b.Loop() {
				tidy.Text(1, text)
			}
		})
	}
}
