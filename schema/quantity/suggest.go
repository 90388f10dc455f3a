package quantity

import (
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/agext/levenshtein"
)

// Reasons of Malformed, each reading on from the quoted text.
const (
	hasComma    = "has a comma where no digit follows it"
	hasThousand = "has a comma that may mark decimals or thousands"
	hasPoint    = "has a point too many"
	hasFraction = "has a fraction that is not read"
	hasMore     = "is more than one number and one unit"
	noUpper     = "has no number after the dash or the \"to\""
	twoUnits    = "has two units: both ends of a range are written in the same one"
)

// unitFault says what is wrong with s, which stands where a unit is wanted and
// is not one of those that fit.
func unitFault(s string, d Dimension) fault {
	malformed := func(reason string) fault { return fault{kind: Malformed, unit: s, reason: reason} }
	n := len(s)
	switch {
	case (d == Temperature || d == TemperatureStep) && noScale(s):
		return fault{kind: NoScale, unit: s}
	case s[0] == ',':
		return malformed(hasComma)
	case s[0] == '.' && digits(s[1:]) > 0:
		return malformed(hasPoint)
	}
	if r, _ := utf8.DecodeRuneInString(s); s[0] == '/' || vulgar[r] != 0 {
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
	for u := spans[d][0]; u < spans[d][1]; u++ {
		i := &units[u]
		if i.name == "" {
			continue
		}
		for _, word := range append(strings.Fields(i.also), i.name, i.one) {
			if n := slips(s, strings.ToLower(word)); n < least {
				best, least = i.name, n
			}
		}
	}
	return best
}

// slips is how many letters differ; two in each other's place are one slip.
func slips(a, b string) int {
	n := levenshtein.Distance(a, b, nil)
	if n != 2 || len(a) != len(b) {
		return n
	}
	x, y := []byte(a), []byte(b)
	slices.Sort(x)
	slices.Sort(y)
	if slices.Equal(x, y) {
		return 1
	}
	return n
}
