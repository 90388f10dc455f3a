package screen

import (
	"errors"
	"strings"
	"testing"
)

// Whatever is written, in whichever pieces, nothing of it steers the terminal, and what
// is seen of it stays.
func TestWrite(t *testing.T) {
	for text, want := range map[string]string{
		"plain\ttext\n":                     "plain\ttext\n",
		"a\x1b[2Jb":                         "a[2Jb",
		"a\x1b]0;title\ab":                  "a]0;titleb",
		"a\rb\bc\x7fd\u009b31me":            "abcd31me",
		"a\u202eb\u2066c\u200fd\u061ce":     "abcde",
		"\ufeffé ü 東 🦂 \u200d":              "é ü 東 🦂 \u200d",
		"a\xffb":                            "a\ufffdb",
		"two\u2028lines":                    "twolines",
		"\x1b[1;31mdanger\x1b[0m: a plan's": "[1;31mdanger[0m: a plan's",
	} {
		for size := 1; size <= len(text); size++ {
			var b strings.Builder
			s := New(&b, true)
			for left := text; left != ""; {
				n := min(size, len(left))
				if m, err := s.Write([]byte(left[:n])); m != n || err != nil {
					t.Fatal(m, err)
				}
				left = left[n:]
			}
			if b.String() != want {
				t.Errorf("%q in pieces of %d: %q", text, size, b.String())
			}
		}
	}
}

// Colours come from the program alone, and only where they are shown.
func TestPaint(t *testing.T) {
	for colors, want := range map[bool]string{true: "\x1b[31merror[0m\x1b[0m: x", false: "error[0m: x"} {
		var b strings.Builder
		s := New(&b, colors)
		s.Paint("31", "error\x1b[0m")
		_, _ = s.Write([]byte(": x"))
		if b.String() != want {
			t.Errorf("%t: %q", colors, b.String())
		}
	}
}

type closed struct{}

func (closed) Write([]byte) (int, error) { return 0, errors.New("closed") }

// A reader that went away is told of, each time.
func TestFailed(t *testing.T) {
	s := New(closed{}, true)
	s.Paint("31", "x")
	for range 2 {
		if _, err := s.Write([]byte("x")); err == nil {
			t.Error("no error")
		}
	}
}
