package source

import (
	"math/rand/v2"
	"strings"
	"testing"
	"unicode/utf8"
)

// The texts and regions of SARIF 2.1.0, 3.30.2, and a mark of the encoding, which counts for
// nothing there.
func TestPoints(t *testing.T) {
	const four = "abcd\r\nefg\r\nhijk\r\nlmn\r\n"
	for _, x := range []struct {
		text       string
		start, end int
		from, to   Point
	}{
		{four, 1, 3, Point{1, 2, 1}, Point{1, 4, 3}},
		{four, 6, 15, Point{2, 1, 6}, Point{3, 5, 15}},
		{four, 6, 11, Point{2, 1, 6}, Point{3, 1, 11}},
		{four, 22, 22, Point{4, 6, 22}, Point{4, 6, 22}},
		{"", 0, 0, Point{1, 1, 0}, Point{1, 1, 0}},
		{"a", 7, 9, Point{1, 2, 1}, Point{1, 2, 1}},
		{"\ufeffab\nc", 0, 4, Point{1, 1, 0}, Point{1, 2, 1}},
		{"\ufeffab\nc", 6, 7, Point{2, 1, 3}, Point{2, 2, 4}},
		{"🦂e\u0301x\xffy", 4, 9, Point{1, 2, 1}, Point{1, 6, 5}},
	} {
		var s Set
		p := Place{File: s.Add("f", []byte(x.text)), Start: int32(x.start), End: int32(x.end)}
		if from, to := s.Points(p); from != x.from || to != x.to {
			t.Errorf("%q from %d to %d: %+v to %+v", x.text, x.start, x.end, from, to)
		}
	}
}

// Wherever the steps fall by which lines are found, also within a character, a point is the
// one that is counted from the beginning.
func TestPointsOfLongTexts(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for range 20 {
		var b strings.Builder
		for b.Len() < 4*step {
			b.WriteString([]string{"a", "é", "€", "🦂", "\n", "\x80", "\xf0\x9f", "word "}[random.IntN(8)])
		}
		text := b.String()
		var s Set
		id := s.Add("f", []byte(text))
		for at := 0; at < len(text); at += 1 + random.IntN(50) {
			at = whole([]byte(text), at)
			begin := strings.LastIndexByte(text[:at], '\n') + 1
			want := Point{strings.Count(text[:at], "\n") + 1, utf8.RuneCountInString(text[begin:at]) + 1, utf8.RuneCountInString(text[:at])}
			if got, _ := s.Points(Place{File: id, Start: int32(at), End: int32(at)}); got != want {
				t.Fatalf("byte %d is at %+v, not %+v", at, got, want)
			}
		}
	}
}
