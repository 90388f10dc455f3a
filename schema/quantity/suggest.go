package quantity

import (
	"strings"
	"unicode/utf8"

	"github.com/agext/levenshtein"
)

// Reasons of Malformed, each reading on from the quoted text.
const (
	hasComma    = "has a comma: decimals are written with a point and thousands without a mark"
	hasThousand = "has a comma that may mark decimals or thousands: decimals are written with a point and thousands without a mark"
	hasPoint    = "has a point without a digit after it, or one too many"
	hasFraction = "has a fraction: it is written with decimals, such as 0.5"
	hasSpaces   = "has stray spaces: one or none stands between number and unit"
	hasMore     = "is more than one number and one unit"
	noUpper     = "has no number after the dash or the \"to\""
	twoUnits    = "has two units: both ends of a range are written in the same one"
)

// unitFault says what is wrong with s, which stands where a unit is wanted and
// is not one of those that fit.
func unitFault(s string) fault {
	malformed := func(reason string) fault { return fault{kind: Malformed, unit: s, reason: reason} }
	n := len(s)
	switch {
	case n == 0:
		return fault{kind: NoUnit}
	case s[0] == ',':
		if digits(s[1:]) == 3 {
			return malformed(hasThousand)
		}
		return malformed(hasComma)
	case s[0] == '.':
		return malformed(hasPoint)
	}
	if r, _ := utf8.DecodeRuneInString(s); s[0] == '/' || strings.ContainsRune("½¼¾⅓⅔⅛", r) {
		return malformed(hasFraction)
	}
	if n := digits(s); n > 0 && n < len(s) && s[n] == '/' {
		return malformed(hasFraction)
	}
	// A value of another dimension tells more than an unknown word does.
	if dims := measuredBy(s); dims != "" {
		return fault{WrongUnit, s, quote(s) + " is a unit of " + dims}
	}
	for i := 0; i < n; i++ {
		// Only an exponent, as in "ft^2", or a letter makes a digit part of a unit.
		if digits(s[i:]) > 0 && (i == 0 || !letter(s[i-1]) && s[i-1] != '^') {
			return malformed(hasMore)
		}
	}
	return fault{kind: UnknownUnit, unit: s}
}

func letter(c byte) bool { return 'a' <= c|0x20 && c|0x20 <= 'z' }

// measuredBy names the dimensions that have s as a unit.
func measuredBy(s string) string {
	var names []string
	for d := Temperature; d <= Ratio; d++ {
		if find(s, d) != None {
			names = append(names, d.String())
		}
	}
	return strings.Join(names, " or ")
}

// likeliest returns the unit of d that was probably meant by s, or "". One letter
// in three may be wrong; of equals the commoner unit is taken.
func likeliest(s string, d Dimension) string {
	if len(s) > 30 || int(d) >= len(spans) {
		return ""
	}
	s = strings.ToLower(s)
	best, least := "", len([]rune(s))/3+1
	try := func(word, name string) {
		if n := levenshtein.Distance(s, strings.ToLower(word), nil); n < least {
			best, least = name, n
		}
	}
	for u := spans[d][0]; u < spans[d][1]; u++ {
		i := &units[u]
		if i.name == "" {
			continue
		}
		try(i.name, i.name)
		try(i.one, i.name)
		for _, w := range i.also {
			try(w, i.name)
		}
		for _, w := range i.meant {
			try(w, i.name)
		}
	}
	return best
}
