// Package slip tells a slip of the keyboard from another word. It knows nothing of what
// words mean: whoever asks decides whether a word that is near may be meant at all.
package slip

import (
	"slices"
	"strings"
	"unicode"

	"github.com/agext/levenshtein"
)

// longest is the longest word that slips are looked for in: no name of ours is as long,
// and the work grows with the square of it.
const longest = 64

// Of returns the name in known from which a written word differs by a slip of the
// keyboard alone: a letter more, one less, another, or two neighbours in each other's
// place; two slips in a word of nine letters or more. It returns "" where none is so near,
// and where several are, since then nobody can tell which is meant. Figures, and words of
// one or two letters between hyphens, are never a slip: tub-13 is another tub than tub-12,
// and burrow-b another burrow.
//
// Every look-up of a name that may be answered with a guess uses it, and most uses it for
// an edit. What names something that is alike only in letters is never answered so: a
// species, a time zone, a feeder.
func Of(written string, known []string) string {
	return Among(written, known, func(a, b string) bool { return a == b })
}

// Among is Of for names of which several may mean the same: where all that are near
// do, the first of them is returned.
func Among(written string, known []string, same func(a, b string) bool) string {
	best, least, several := "", Most(written)+1, false
	low := strings.ToLower(written)
	for _, k := range known {
		d := Between(low, strings.ToLower(k))
		switch {
		case d < least:
			best, least, several = k, d, false
		case d == least && best != "" && !same(k, best):
			several = true
		}
	}
	if several {
		return ""
	}
	return best
}

// Most is how many slips a word of that length may have.
func Most(word string) int {
	if len([]rune(word)) >= 9 {
		return 2
	}
	return 1
}

// far is more slips than any word may have.
const far = longest + 1

// Between is how many slips of the keyboard lie between two words, or more than any may
// have where something else differs: a figure, a part of one or two letters, half of a
// short word.
func Between(a, b string) int {
	n, m := len([]rune(a)), len([]rune(b))
	switch {
	case a == b:
		return 0
	case n > longest || m > longest || n-m > 2 || m-n > 2 || figures(a) != figures(b):
		return far
	case !sameShort(a, b):
		return far
	}
	switch d := levenshtein.Distance(a, b, nil); {
	case d <= 2 && swapped(a, b):
		return 1
	case max(n, m) < 4 || min(n, m) < 3: // one letter of two or three makes another word
		return far
	default:
		return d
	}
}

// swapped reports whether two words differ by two neighbours in each other's place.
func swapped(a, b string) bool {
	x, y := []rune(a), []rune(b)
	if len(x) != len(y) {
		return false
	}
	i := 0
	for i < len(x) && x[i] == y[i] {
		i++
	}
	return i+1 < len(x) && x[i] == y[i+1] && x[i+1] == y[i] && slices.Equal(x[i+2:], y[i+2:])
}

// figures are the digits of a word.
func figures(s string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsDigit(r) {
			return r
		}
		return -1
	}, s)
}

// sameShort reports whether the parts of one or two letters of two names are the same,
// where both have as many parts.
func sameShort(a, b string) bool {
	x, y := strings.FieldsFunc(a, joint), strings.FieldsFunc(b, joint)
	if len(x) != len(y) || len(x) == 1 {
		return true
	}
	for i := range x {
		if min(len(x[i]), len(y[i])) <= 2 && x[i] != y[i] {
			return false
		}
	}
	return true
}

func joint(r rune) bool { return r == '-' || r == '_' || r == ' ' }
