package quantity

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// largest bounds every canonical value: what is above it (a thousand kilometres,
// nineteen centuries) is a slip of the keyboard.
const largest = 1e9

// Parse reads one value of dimension d, such as "30 C", "2,5 cm" or "1/2 cup". The
// error is an *Error.
func Parse(s string, d Dimension) (Quantity, error) {
	r, f := read(s, d, false)
	if f.kind != 0 {
		return Quantity{}, quantityError(s, d, f, false)
	}
	return r.LowQ(), nil
}

// ParseRange reads a range of dimension d, such as "27 to 32 C", "27-32 C" or
// "27 C to 32 C", or a single value. Both ends have one unit. The error is an
// *Error.
func ParseRange(s string, d Dimension) (Range, error) {
	r, f := read(s, d, true)
	if f.kind != 0 {
		return Range{}, quantityError(s, d, f, true)
	}
	return r, nil
}

// fault is what is wrong with a text, before words are made of it.
type fault struct {
	kind   Kind
	unit   string // as written, where it matters
	reason string
}

// read reads a range, or one value only unless span is set.
func read(s string, d Dimension, span bool) (Range, fault) {
	low, high, unit, f := ends(s, d, span)
	if f.kind != 0 {
		return Range{}, f
	}
	u, f := unitOf(unit, d)
	if f.kind != 0 {
		return Range{}, f
	}
	i := &units[u]
	if u == Fraction && high > 1 {
		return Range{}, fault{kind: NoUnit}
	}
	r := Range{i.canonical(low), i.canonical(high), u}
	for _, v := range [2]float64{r.Low, r.High} {
		if reason := outside(v, d); reason != "" {
			return Range{}, fault{kind: OutOfBounds, reason: reason}
		}
	}
	if r.Low > r.High {
		return r, fault{kind: OutOfOrder}
	}
	return r, fault{}
}

// ends reads the numbers of a text and the unit of both, as written.
func ends(s string, d Dimension, span bool) (low, high float64, unit string, f fault) {
	s = folded(s)
	and := false
	if span {
		s, and = begun(s)
	}
	low, rest, f := number(s, d)
	if f.kind != 0 {
		return 0, 0, "", f
	}
	if span {
		if lowUnit, upper, found := cutRange(rest, and); found {
			if high, rest, f = number(upper, d); f.kind != 0 {
				if f.kind == NoNumber {
					f = fault{kind: Malformed, reason: noUpper}
				}
				return 0, 0, "", f
			}
			unit, f := common(lowUnit, rest, d)
			return low, high, unit, f
		}
	}
	return low, low, rest, fault{}
}

// common returns the unit of two values of which each may have one.
func common(lower, upper string, d Dimension) (string, fault) {
	lower, upper = strings.TrimSpace(lower), strings.TrimSpace(upper)
	if upper == "" || lower == "" || noScale(lower) {
		if upper == "" {
			return lower, fault{}
		}
		return upper, fault{}
	}
	l, f := unitOf(lower, d)
	if f.kind != 0 {
		return "", f
	}
	if u, f := unitOf(upper, d); f.kind != 0 || u == l {
		return upper, f
	}
	return "", fault{kind: Malformed, reason: twoUnits}
}

// folded makes one blank of all that looks like blanks. Pasted text often has an
// unbreakable one before the unit.
func folded(s string) string {
	after, looked := byte(' '), false
	for i := 0; i < len(s); i++ {
		c := s[i]
		beyond := c >= 0x80 && !looked
		if c < ' ' || c == ' ' && after == ' ' || beyond && strings.ContainsFunc(s, unusual) {
			return strings.Join(strings.Fields(s), " ")
		}
		after, looked = c, looked || beyond
	}
	return strings.TrimSuffix(s, " ")
}

// unusual reports whether r looks like a blank and is another character.
func unusual(r rune) bool { return r != ' ' && unicode.IsSpace(r) }

// begun takes the word off with which a range may begin, and says whether its ends have
// an "and" between them.
func begun(s string) (rest string, and bool) {
	if rest, and = cutWord(s, "between "); and {
		return rest, true
	}
	rest, _ = cutWord(s, "from ")
	return rest, false
}

// cutWord takes a word off the beginning of a text, whatever its capitals.
func cutWord(s, w string) (rest string, found bool) {
	if len(s) < len(w) || !strings.EqualFold(s[:len(w)], w) {
		return s, false
	}
	return s[len(w):], true
}

// cutRange cuts what follows the lower value at the "to" or the dash, or at the "and"
// of "between 27 and 32".
func cutRange(s string, and bool) (lowUnit, upper string, found bool) {
	for i := 0; i < len(s); i++ {
		n := 0
		switch c := s[i]; {
		case c == '-' || c == '~':
			n = 1
		case c == '.' && strings.HasPrefix(s[i:], ".."):
			n = 2 + len(s[i+2:]) - len(strings.TrimLeft(s[i+2:], "."))
		case c == 0xE2:
			if r, k := utf8.DecodeRuneInString(s[i:]); strings.ContainsRune("‐‑‒–—―−…", r) {
				n = k
			}
		case c|0x20 == 't' && word(s, i, "to"):
			n = 2
		case and && c|0x20 == 'a' && word(s, i, "and"):
			n = 3
		}
		if n > 0 {
			return strings.TrimSuffix(s[:i], " "), strings.TrimPrefix(s[i+n:], " "), true
		}
	}
	return "", "", false
}

// word reports whether w stands at s[i:], by itself or between a blank and a number.
func word(s string, i int, w string) bool {
	return len(s)-i >= len(w) && strings.EqualFold(s[i:i+len(w)], w) && (i == 0 || s[i-1] == ' ') && (i+len(w) == len(s) || s[i+len(w)] < 'A')
}

// unitOf reads the text after a number as a unit of d.
func unitOf(s string, d Dimension) (Unit, fault) {
	s = strings.TrimSpace(s)
	if s == "" {
		if d == Ratio {
			return Fraction, fault{}
		}
		return None, fault{kind: NoUnit}
	}
	if u := find(s, d); u != None {
		return u, fault{}
	}
	return None, unitFault(s, d)
}

// outside says why a canonical value cannot be, or "".
func outside(v float64, d Dimension) string {
	switch {
	case d == Temperature && v < -273.15:
		return "is below absolute zero (-273.15 C, -459.67 F)"
	case d != Temperature && v < 0:
		return "is below zero"
	case d == Humidity && v > 100:
		return "is more than 100 %, which air can't hold"
	case v > largest:
		return "is too large to be meant"
	}
	return ""
}
