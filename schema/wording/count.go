package wording

import (
	"strconv"

	"vivary/schema/quantity"
)

// Noun is the word that goes with a number.
func Noun(n int, one, many string) string {
	if n == 1 {
		return one
	}
	return many
}

// Count is a number with its noun, "1 other", "3 others".
func Count(n int, one, many string) string { return strconv.Itoa(n) + " " + Noun(n, one, many) }

// Days is a number of days, "1 day", "3 days".
func Days(n int) string { return Count(n, "day", "days") }

// Step is a number of days as a plan writes it after every, "day", "3 days".
func Step(n int) string { return quantity.Interval{N: n, Unit: quantity.Day}.String() }

// AtLongest is a number of days as a limit, "3 days at the longest".
func AtLongest(n int) string { return Days(n) + " at the longest" }

// Animals is a number of animals.
func Animals(n int) string { return Count(n, "animal", "animals") }

// Items is a number of prey items, which on average need not be whole: told to a
// tenth, since menus take turns over days that are no whole number of weeks.
func Items(n float64) string {
	if n = quantity.Decimals(n, 1); n == 1 {
		return "1 item"
	}
	return exact(n) + " items"
}

// AtMost is a canonical value as the upper limit, "35 C at the most"; whoever writes
// it keeps to the limit.
func AtMost(v float64, u quantity.Unit) string { return quantity.FormatAtMost(v, u) + " at the most" }

// AtLeast is AtMost for a lower limit.
func AtLeast(v float64, u quantity.Unit) string {
	return quantity.FormatAtLeast(v, u) + " at the least"
}

// Bytes is the size of a file: "8.4 KB", and from 10 on without decimals.
func Bytes(n int) string {
	if n < 10_000 {
		return strconv.FormatFloat(float64(n)/1000, 'f', 1, 64) + " KB"
	}
	return strconv.Itoa(n/1000) + " KB"
}

// And joins words as in a sentence, "a, b and c".
func And(words []string) string { return join(words, " and ") }

// Or is And for a choice.
func Or(words []string) string { return join(words, " or ") }

func join(words []string, last string) string {
	text := ""
	for i, w := range words {
		switch {
		case i == 0:
		case i == len(words)-1:
			text += last
		default:
			text += ", "
		}
		text += w
	}
	return text
}
