package source

import "testing"

// Columns count what a reader takes for one character: a letter with a combining
// accent, or a family of emoji, is one (Unicode Standard Annex 29).
func TestPositions(t *testing.T) {
	for _, x := range []struct {
		text         string
		at           int
		line, column int
	}{
		{"a\nbc", 3, 2, 2},
		{"", 0, 1, 1},
		{"a", 99, 1, 2},
		{"e\u0301x", 3, 1, 2},
		{"👨‍👩‍👧x", len("👨‍👩‍👧"), 1, 2},
	} {
		var s Set
		id := s.Add("f", []byte(x.text))
		if p := s.Start(Place{File: id, Start: int32(x.at), End: int32(x.at)}); p.Line != x.line || p.Column != x.column {
			t.Errorf("%q at %d: %+v", x.text, x.at, p)
		}
	}
}
