package quantity

import (
	"math"
	"strconv"
)

// Format prints a canonical value in unit u, rounded to what a keeper can
// measure and without trailing zeros: 0.1 C, whole millilitres, but at least two
// digits that matter ("1.4 ml"). A limit that a keeper is told to write is
// printed by FormatAtLeast or FormatAtMost.
func Format(v float64, u Unit) string { return format(v, u, nearest) }

// FormatAtLeast is Format for a lower limit: it rounds up, so that whoever
// writes what is printed satisfies the limit. 15 cm is "6 in", not "5.9 in".
func FormatAtLeast(v float64, u Unit) string { return format(v, u, up) }

// FormatAtMost is Format for an upper limit: it rounds down.
func FormatAtMost(v float64, u Unit) string { return format(v, u, down) }

// FormatRange prints a canonical range in unit u, "79 to 90 F", rounded inwards
// unless it is too narrow for that.
func FormatRange(low, high float64, u Unit) string {
	u = shown(u, high)
	l, h := rounded(low, u, up), rounded(high, u, down)
	if l > h {
		l, h = rounded(low, u, nearest), rounded(high, u, nearest)
	}
	if l == h {
		return join(" to ", u, h)
	}
	return join(" to ", u, l, h)
}

type direction int8

const (
	nearest direction = iota
	up
	down
)

func format(v float64, u Unit, dir direction) string {
	u = shown(u, v)
	return join("", u, rounded(v, u, dir))
}

// rounded converts a canonical value to unit u and rounds it there. Which side
// it falls on is judged after converting back, as a reader of the text would.
func rounded(v float64, u Unit, dir direction) float64 {
	i := u.info()
	x := i.written(v)
	p := math.Pow10(i.decimals)
	if i.dim != Temperature { // whose zero is a mere convention
		for x != 0 && math.Abs(x)*p < 10 && p < 1e9 {
			p *= 10
		}
	}
	n := math.Round(x * p)
	switch want := settle(v); {
	case dir == up && i.canonical(n/p) < want:
		n++
	case dir == down && i.canonical(n/p) > want:
		n--
	}
	return unsigned(n / p)
}

// shortest converts a canonical value to unit u, with the fewest decimals that
// read back as the same canonical value.
func shortest(v float64, u Unit) float64 {
	i := u.info()
	x, want := i.written(v), settle(v)
	var buf [32]byte
	for decimals := range 18 {
		y, err := strconv.ParseFloat(string(strconv.AppendFloat(buf[:0], x, 'f', decimals, 64)), 64)
		if err == nil && i.canonical(y) == want {
			return unsigned(y)
		}
	}
	return unsigned(x)
}

// join prints values with a separator between them and their unit behind the last.
func join(sep string, u Unit, values ...float64) string {
	var buf [96]byte
	b := buf[:0]
	for k, x := range values {
		if k > 0 {
			b = append(b, sep...)
		}
		b = strconv.AppendFloat(b, x, 'f', -1, 64)
	}
	i := u.info()
	switch {
	case i.one != "" && len(values) > 0 && values[len(values)-1] == 1:
		b = append(append(b, ' '), i.one...)
	case i.name != "":
		b = append(append(b, ' '), i.name...)
	}
	return string(b)
}

// shown returns the unit to print v in: a share above 1 can't be read without
// a unit, so it becomes a percentage.
func shown(u Unit, v float64) Unit {
	if u == Fraction && v > 100 {
		return Percent
	}
	return u
}
