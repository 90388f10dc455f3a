package wording

import "vivary/schema/civil"

// Until is the end of what lasts to a day: "until Sat 10 Jul".
func Until(d civil.Date) string { return "until " + d.Short() }

// Dates is a stretch from a day to the last that belongs to it, "Sat 10 Jul 2027 to
// Mon 12 Jul 2027".
func Dates(first, last civil.Date) string { return first.Words() + " to " + last.Words() }

// Between is a day that is not known exactly, by the ends between which it lies.
func Between(first, last civil.Date) string {
	if first == last {
		return "on " + first.Words()
	}
	return "between " + first.Words() + " and " + last.Words()
}
