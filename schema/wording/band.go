package wording

import (
	"math"
	"strings"

	"vivary/schema/quantity"
)

// Band prints a value that is not known exactly with the ends between which it is to
// be expected: "15 W (12 to 18)", or "3 kJ" where all round to the same. It takes any
// type of that shape, so that physics need not know how it is worded.
func Band[B ~struct{ Low, Likely, High T }, T ~float64](b B, unit string) string {
	x := struct{ Low, Likely, High T }(b)
	return band(float64(x.Low), float64(x.Likely), float64(x.High), unit)
}

func band(low, likely, high float64, unit string) string {
	digits := quantity.BandDigits(low, high)
	from, to := exact(quantity.Significant(low, digits)), exact(quantity.Significant(high, digits))
	text := exact(quantity.Significant(likely, digits)) + " " + unit
	if from == to {
		return text
	}
	return text + " (" + from + " to " + to + ")"
}

// Degrees is Band for temperatures, which have no natural zero by which to round:
// "31.9 C (30.1 to 34.3 C)".
func Degrees[B ~struct{ Low, Likely, High T }, T ~float64](b B, u quantity.Unit) string {
	x := struct{ Low, Likely, High T }(b)
	likely, ends := quantity.Format(float64(x.Likely), u), quantity.FormatBetween(float64(x.Low), float64(x.High), u)
	if likely == ends {
		return likely
	}
	return likely + " (" + ends + ")"
}

// Lasting is Band for a length of time in minutes, in the unit that suits each:
// "11 h (10 to 12 h)", "100 min (80 min to 2 h)".
func Lasting[B ~struct{ Low, Likely, High T }, T ~float64](b B) string {
	x := struct{ Low, Likely, High T }(b)
	digits := quantity.BandDigits(float64(x.Low), float64(x.High))
	from, to := time(float64(x.Low), digits), time(float64(x.High), digits)
	text := time(float64(x.Likely), digits)
	if from == to {
		return text
	}
	number, unit, _ := strings.Cut(from, " ")
	if strings.HasSuffix(to, " "+unit) {
		from = number
	}
	return text + " (" + from + " to " + to + ")"
}

// time writes minutes as "95 min", "6.5 h", "4 days". The unit comes before the
// rounding: 49 h are not 2900 min and so 48 h.
func time(minutes float64, digits int) string {
	switch {
	case math.IsInf(minutes, 1):
		return "never"
	case quantity.Significant(minutes, digits) < 2*60:
		return exact(math.Round(quantity.Significant(minutes, digits))) + " min"
	case quantity.Significant(minutes/60, digits) < 3*24:
		return exact(quantity.Significant(minutes/60, digits)) + " h"
	}
	return exact(quantity.Significant(minutes/(24*60), digits)) + " days"
}
