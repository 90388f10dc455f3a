package protocol

import (
	"bytes"
	"math/rand/v2"
	"strings"
	"testing"
	"unicode/utf16"
)

// TestPositions: lines end as the protocol has it, and a character is a byte or a unit of
// UTF-16, of which a letter beyond the basic plane takes two.
func TestPositions(t *testing.T) {
	text := "a\nbé𝄞c\r\nd\re"
	for _, x := range []struct {
		at        int
		in8, in16 Position
	}{
		{0, Position{0, 0}, Position{0, 0}},
		{2, Position{1, 0}, Position{1, 0}},
		{5, Position{1, 3}, Position{1, 2}},
		{9, Position{1, 7}, Position{1, 4}},
		{10, Position{1, 8}, Position{1, 5}},
		{12, Position{2, 0}, Position{2, 0}},
		{14, Position{3, 0}, Position{3, 0}},
		{15, Position{3, 1}, Position{3, 1}},
	} {
		for e, want := range map[Encoding]Position{UTF8: x.in8, UTF16: x.in16} {
			l := NewLines([]byte(text), e)
			if got := l.Position(x.at); got != want {
				t.Errorf("%s: byte %d is at %v, want %v", e, x.at, got, want)
			}
			if got := l.Offset(want); got != x.at {
				t.Errorf("%s: %v is byte %d, want %d", e, want, got, x.at)
			}
		}
	}
	l := NewLines([]byte(text), UTF16)
	for p, want := range map[Position]int{{1, 3}: 5, {1, 99}: 10, {99, 0}: 15, {-1, 0}: 0, {2, 5}: 13} {
		if got := l.Offset(p); got != want {
			t.Errorf("%v is byte %d, want %d", p, got, want)
		}
	}
}

// TestChanged holds changes of a text against the same done to it as units of UTF-16, which
// is how the protocol counts.
func TestChanged(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	letters := []string{"a", "é", "𝄞", "\n", "b", "ß"}
	some := func(n int) string {
		var out strings.Builder
		for range rng.IntN(n) {
			out.WriteString(letters[rng.IntN(len(letters))])
		}
		return out.String()
	}
	for range 5000 {
		text, put := some(40), some(5)
		units := utf16.Encode([]rune(text))
		at := func() (int, Position) {
			for {
				i := rng.IntN(len(units) + 1)
				if i < len(units) && units[i] >= 0xdc00 && units[i] < 0xe000 {
					continue // in the middle of a letter
				}
				p := Position{}
				for _, u := range units[:i] {
					if p.Character++; u == '\n' {
						p.Line, p.Character = p.Line+1, 0
					}
				}
				return i, p
			}
		}
		i, start := at()
		j, end := at()
		if j < i {
			i, j, start, end = j, i, end, start
		}
		want := string(utf16.Decode(units[:i])) + put + string(utf16.Decode(units[j:]))
		if got := Changed([]byte(text), TextDocumentContentChangeEvent{Range: &Range{start, end}, Text: put}, UTF16); !bytes.Equal(got, []byte(want)) {
			t.Fatalf("%q from %v to %v with %q is %q, want %q", text, start, end, put, got, want)
		}
	}
}
