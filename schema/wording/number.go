// Package wording puts numbers, counts, lists and days into the words in which a
// keeper reads them, for findings, reports, pictures and calendars alike. Values with
// units are written by package quantity, which also rounds; what is said with them is
// for whoever says it.
package wording

import (
	"math"
	"strconv"

	"vivary/schema/quantity"
)

// Number writes a number with two decimals at the most.
func Number(x float64) string { return exact(quantity.Decimals(x, 2)) }

// exact writes a number with the digits that it has; one that is not finite is one
// that nobody knows.
func exact(x float64) string {
	switch {
	case math.IsInf(x, 0) || math.IsNaN(x):
		return "?"
	case x == 0:
		return "0" // also below zero
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}

// Span writes two numbers with all between them, "8 to 12", or one where they are
// the same.
func Span(low, high float64) string {
	l, h := Number(low), Number(high)
	if l == h {
		return l
	}
	return l + " to " + h
}

// ByHand writes halves and quarters as one writes them by hand, "1½".
func ByHand(x float64) string {
	whole, part := math.Modf(x)
	sign := map[float64]string{0.25: "¼", 0.5: "½", 0.75: "¾"}[part]
	switch {
	case sign == "":
		return exact(x)
	case whole == 0:
		return sign
	}
	return exact(whole) + sign
}
