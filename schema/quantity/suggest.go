package quantity

import (
	"strings"
	"unicode/utf8"

	"vivary/schema/slip"
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

// likeliest returns the unit of d that was meant by s, if it is a slip of the keyboard from
// one of its words, or "".
func likeliest(s string, d Dimension) string {
	if int(d) >= len(spans) {
		return ""
	}
	var words []string
	of := map[string]string{}
	for u := spans[d][0]; u < spans[d][1]; u++ {
		i := &units[u]
		if i.name == "" {
			continue
		}
		for _, word := range append([]string{i.name, i.one}, strings.Fields(i.also)...) {
			if word != "" && of[word] == "" {
				words, of[word] = append(words, word), i.name
			}
		}
	}
	return of[slip.Among(s, words, func(a, b string) bool { return of[a] == of[b] })]
}
