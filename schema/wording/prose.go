package wording

import (
	"math"
	"regexp"
	"strconv"
	"strings"

	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// stated are the units in which the texts of sheets, rules and sources state values. A C is
// a temperature there and a K a difference of two. An inch is not among them: "one in ten"
// would be one.
var stated = map[string]quantity.Unit{
	"C": quantity.Celsius, "°C": quantity.Celsius, "F": quantity.Fahrenheit, "°F": quantity.Fahrenheit, "K": quantity.KelvinStep,
	"mm": quantity.Millimetre, "cm": quantity.Centimetre, "m": quantity.Metre, "cm2": quantity.SquareCentimetre, "m2": quantity.SquareMetre,
	"ml": quantity.Millilitre, "L": quantity.Litre, "gal": quantity.Gallon, "fl oz": quantity.FluidOunce,
	"mg": quantity.Milligram, "g": quantity.Gram, "kg": quantity.Kilogram, "oz": quantity.Ounce,
	"kJ/g": quantity.KilojoulePerGram,
}

var values = regexp.MustCompile(`(?:^|[ (\[~"“])(-?\d[\d.]*(?:(?: to | x | and | or |-|–)-?\d[\d.]*)*) ?(°C|°F|cm2|m2|mm|cm|ml|mg|kg|kJ/g|fl oz|oz|gal|C|F|K|m|L|g)(?:$|[ ,;:.)\]?!"”])`)

// times finds a time of day behind a word that stands before one: the pages of a journal
// look alike.
var times = regexp.MustCompile(`\b(?:at|from|to|and|before|after|until|between) (?:[01]\d|2[0-3]):[0-5]\d\b`)

var number = regexp.MustCompile(`(?:^-| -)?\d[\d.]*`)

// Prose tells the values in a text that was written for everybody, a note of a sheet or the
// limit of a rule, in the keeper's units: "81 to 90 F" for "27 to 32 C". What is in the
// keeper's units stays as it is, and the same once more in other units, in brackets behind
// it, is left out, and times of day are told by the keeper's clock. The digits are those that the text has, and no more than these are worth.
func Prose(text string, u quantity.Units) string {
	if u == (quantity.Units{}) || !strings.ContainsAny(text, "0123456789") {
		return text
	}
	if u.TwelveHours {
		text = times.ReplaceAllStringFunc(text, func(s string) string {
			at := len(s) - len("19:30")
			c, err := civil.ParseClock(s[at:])
			if err != nil {
				return s
			}
			return s[:at] + Clock(c, u)
		})
	}
	var b strings.Builder
	for {
		m := values.FindStringSubmatchIndex(text)
		if m == nil {
			break
		}
		numbers, name := text[m[2]:m[3]], text[m[4]:m[5]]
		from := stated[name]
		to := u.Of(from)
		before := text[:m[2]]
		switch {
		case to == from:
			b.WriteString(text[:m[5]])
		case again(b.String()+before, to) && strings.HasPrefix(text[m[5]:], ")"):
			b.WriteString(strings.TrimSuffix(before, " ("))
			m[5]++
		default:
			b.WriteString(before + number.ReplaceAllStringFunc(numbers, func(n string) string { return converted(n, from, to) }) + " " + to.String())
		}
		text = text[m[5]:]
	}
	b.WriteString(text)
	return b.String()
}

// again reports whether a text ends with a value in a unit and a bracket.
func again(text string, u quantity.Unit) bool {
	text, bracket := strings.CutSuffix(text, " (")
	text, unit := strings.CutSuffix(text, " "+u.String())
	return bracket && unit && text != "" && text[len(text)-1] >= '0' && text[len(text)-1] <= '9'
}

// converted writes a number of one unit in another, in as many digits as it has: of a
// temperature as many decimals, of all else at least two digits.
func converted(n string, from, to quantity.Unit) string {
	bare := strings.TrimLeft(n, " ")
	space := n[:len(n)-len(bare)]
	n = strings.TrimSuffix(bare, ".")
	x, err := strconv.ParseFloat(n, 64)
	if err != nil {
		return space + n
	}
	v := quantity.Convert(x, from, to)
	_, decimals, _ := strings.Cut(n, ".")
	if from.Dimension() == quantity.Temperature {
		return space + exact(quantity.Decimals(v, len(decimals)))
	}
	digits := max(2, len(strings.TrimLeft(strings.ReplaceAll(n, ".", ""), "-0")))
	if math.Abs(v) >= 100 {
		digits = max(digits, 3)
	}
	return space + exact(quantity.Significant(v, digits))
}
