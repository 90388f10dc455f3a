package quantity

import (
	"strconv"
	"strings"
)

// largest bounds every canonical value: what is above it (a thousand kilometres,
// nineteen centuries) is a slip of the keyboard.
const largest = 1e9

// Parse reads one value of dimension d, such as "30 C". One space or none stands
// between number and unit. The error is an *Error.
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
	s = strings.TrimSpace(s)
	low, rest, ok := number(s)
	if !ok {
		return Range{}, fault{kind: NoNumber}
	}
	high := low
	if span {
		if lowUnit, upper, found := cutRange(rest); found {
			if high, rest, ok = number(upper); !ok {
				return Range{}, fault{kind: Malformed, reason: noUpper}
			}
			if f := sameUnit(lowUnit, rest, d); f.kind != 0 {
				return Range{}, f
			}
		}
	}
	u, f := unitOf(rest, d)
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

// sameUnit checks the unit written after the lower value, if there is one.
func sameUnit(lower, upper string, d Dimension) fault {
	if lower == "" {
		return fault{}
	}
	l, f := unitOf(lower, d)
	if f.kind != 0 {
		return f
	}
	if strings.TrimSpace(upper) == "" {
		return fault{kind: NoUnit, unit: units[l].name}
	}
	if u, f := unitOf(upper, d); f.kind != 0 || u == l {
		return f
	}
	return fault{kind: Malformed, reason: twoUnits}
}

// number reads the decimal number that s begins with.
func number(s string) (v float64, rest string, ok bool) {
	negative := false
	switch {
	case strings.HasPrefix(s, "-"):
		negative, s = true, s[1:]
	case strings.HasPrefix(s, "+"):
		s = s[1:]
	case strings.HasPrefix(s, "−"):
		negative, s = true, s[len("−"):]
	}
	n := digits(s)
	if n < len(s) && s[n] == '.' {
		if m := digits(s[n+1:]); m > 0 {
			n += 1 + m
		}
	}
	if n == 0 {
		return 0, s, false
	}
	// Digits and a point are always read; too many of them give an infinity,
	// which is out of every bound.
	v, _ = strconv.ParseFloat(s[:n], 64)
	if negative {
		v = -v
	}
	return v, s[n:], true
}

// digits returns how many digits s begins with.
func digits(s string) int {
	n := 0
	for n < len(s) && s[n]-'0' <= 9 {
		n++
	}
	return n
}

// cutRange cuts what follows the lower value at the "to" or the dash.
func cutRange(s string) (lowUnit, upper string, found bool) {
	for i := 0; i < len(s); i++ {
		n := 0
		switch c := s[i]; {
		case c == '-':
			n = 1
		case c == 0xE2 && (strings.HasPrefix(s[i:], "–") || strings.HasPrefix(s[i:], "—") || strings.HasPrefix(s[i:], "−")):
			n = 3
		case c == 't' && strings.HasPrefix(s[i:], "to") && (i == 0 || s[i-1] == ' ') && (i+2 == len(s) || s[i+2] < 'A'):
			n = 2
		}
		if n > 0 {
			return strings.TrimSuffix(s[:i], " "), strings.TrimPrefix(s[i+n:], " "), true
		}
	}
	return "", "", false
}

// unitOf reads the text after a number as a unit of d.
func unitOf(s string, d Dimension) (Unit, fault) {
	if s == "" {
		if d == Ratio {
			return Fraction, fault{}
		}
		return None, fault{kind: NoUnit}
	}
	switch {
	case s[0] == ' ':
		s = s[1:]
	// Pasted text often has an unbreakable space before the unit.
	case strings.HasPrefix(s, "\u00a0"):
		s = s[2:]
	case strings.HasPrefix(s, "\u202f"):
		s = s[3:]
	}
	if u := find(s, d); u != None {
		return u, fault{}
	}
	return None, unitFault(s)
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
