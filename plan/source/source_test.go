package source

import (
	"math/rand/v2"
	"strings"
	"testing"
	"unicode/utf8"
)

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

// A file keeps its id over sets, and those on a shelf are beneath every set. Files
// are in the order of their names, whatever their ids.
func TestSetOverShelf(t *testing.T) {
	var shelf Shelf
	below := shelf.Add("m", func() []byte { return []byte("below") })
	s := Over(&shelf)
	s.Put(7, "z", []byte("seven"))
	s.Put(9, "a", []byte("nine"))
	for id, want := range map[ID][2]string{below: {"m", "below"}, 7: {"z", "seven"}, 9: {"a", "nine"}, 8: {}, 10: {}, 0: {}, below - 1: {}, -1 << 31: {}} {
		if name, text := s.Name(id), string(s.Text(id)); name != want[0] || text != want[1] {
			t.Errorf("file %d is %q: %q", id, name, text)
		}
	}
	if s.Len() != 2 {
		t.Errorf("%d files", s.Len())
	}
	order := []Place{{File: 9, Start: 3}, {File: 9, Start: 4}, {File: below}, {File: 7}}
	for i := range order {
		for j := range order {
			if s.Before(order[i], order[j]) != (i < j) {
				t.Errorf("%v before %v: %t", order[i], order[j], i >= j)
			}
		}
	}
	if p := s.Start(Place{File: below, Start: 2}); p != (Position{"m", 1, 3}) {
		t.Errorf("%+v", p)
	}
}

// A place in a long text is found as one would by counting from its beginning.
func TestManyLines(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	var b strings.Builder
	for b.Len() < 5*step {
		b.WriteString(strings.Repeat("a", r.IntN(900)) + []string{"\n", "\r\n", "é", "e\u0301", "\n\n"}[r.IntN(5)])
	}
	text := b.String()
	var s Set
	id := s.Add("f", []byte(text))
	for at := 0; at <= len(text); at += 1 + r.IntN(40) {
		if at < len(text) && !utf8.RuneStart(text[at]) {
			continue
		}
		begin := strings.LastIndexByte(text[:at], '\n') + 1
		want := Position{"f", strings.Count(text[:at], "\n") + 1, characters([]byte(text[begin:at])) + 1}
		if at-begin > far {
			want.Column = utf8.RuneCountInString(text[begin:at]) + 1
		}
		if got := s.Start(Place{File: id, Start: int32(at)}); got != want {
			t.Fatalf("byte %d: %+v, and it is %+v", at, got, want)
		}
	}
}

// Of a very long line what stands around the place is shown.
func TestLongLine(t *testing.T) {
	var s Set
	id := s.Add("f", []byte("x\n"+strings.Repeat("é", 10_000)+"HERE"+strings.Repeat("y", 10_000)))
	line, from, to := s.Line(Place{File: id, Start: 20_002, End: 20_006})
	if runes := []rune(line); len(line) > 3*far || string(runes[from:to]) != "HERE" {
		t.Errorf("%d bytes, %d to %d", len(line), from, to)
	}
}
