package quantity

import (
	"math"
	"strconv"
)

type direction int8

const (
	nearest direction = iota
	up
	down
)

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

// BandDigits returns how many significant digits a value deserves that is expected
// between two ends: two if the ends are within a factor of four, else one. It is for
// quantities with a natural zero, not for temperatures.
func BandDigits(low, high float64) int {
	if high <= 4*low {
		return 2
	}
	return 1
}

// Significant rounds to so many significant digits, but to two where one is asked for
// and the first is a 1: from 1 to 2 is a doubling. What is not finite stays as it is.
func Significant(x float64, digits int) float64 {
	if x == 0 || math.IsInf(x, 0) || math.IsNaN(x) {
		return x
	}
	exponent := int(math.Floor(math.Log10(math.Abs(x))))
	if digits == 1 && math.Abs(x)*math.Pow10(-exponent) < 2 {
		digits = 2
	}
	return Decimals(x, digits-exponent-1)
}

// Decimals rounds to n decimals; below zero, to tens and hundreds. Dividing by a
// power of ten, and not multiplying by its inverse, keeps 0.3 at 0.3.
func Decimals(x float64, n int) float64 {
	if n < 0 {
		return math.Round(x/math.Pow10(-n)) * math.Pow10(-n)
	}
	return math.Round(x*math.Pow10(n)) / math.Pow10(n)
}
