package quantity

import (
	"slices"
	"strconv"
	"strings"
)

// IntervalUnit is a step of the calendar.
type IntervalUnit uint8

// The steps. A Month or Year ends on the same day of the month that it began,
// so it has no fixed length.
const (
	Day IntervalUnit = iota + 1
	Week
	Month
	Year
)

// intervals holds each step's name, mean length in days and the words that
// plainly mean it.
var intervals = [...]struct {
	name  string
	days  float64
	meant []string
}{
	Day:   {"day", 1, []string{"daily", "every day", "days"}},
	Week:  {"week", 7, []string{"weekly", "every week", "weeks"}},
	Month: {"month", 30.4375, []string{"monthly", "every month", "months"}},
	Year:  {"year", 365.25, []string{"yearly", "annually", "every year", "years"}},
}

// String returns "day", "week", "month" or "year", and "" for the zero value.
func (u IntervalUnit) String() string {
	if int(u) >= len(intervals) {
		u = 0
	}
	return intervals[u].name
}

// Interval is a number of steps of the calendar, "2 weeks", as opposed to a
// Duration: two months from 5 July is 5 September, however many days that is.
type Interval struct {
	N    int
	Unit IntervalUnit
}

// MaxIntervalDays is the longest Interval, in days; months and years count with
// their mean length.
const MaxIntervalDays = 3660

var intervalForm = form{"interval", "an", `"day", "2 days", "week", "3 months" or "year"`}

// ParseInterval reads "day", "2 days", "week", "2 weeks", "month", "3 months" or
// "year". The error is an *Error.
func ParseInterval(s string) (Interval, error) {
	v, f := readInterval(s)
	if f.kind == 0 {
		return v, nil
	}
	e := f.build(s, Duration, intervalForm, plainly(s), func(t string) bool {
		_, f := readInterval(t)
		return f.kind == 0
	})
	if e.Instead == "" {
		e.Nearest = "" // hours and minutes are no steps of the calendar
	}
	return Interval{}, e
}

func readInterval(s string) (Interval, fault) {
	s = strings.TrimSpace(s)
	if s == "" {
		return Interval{}, fault{kind: NoUnit}
	}
	n, unit := 1, s
	if k := digits(s); k > 0 {
		n, unit = whole(s[:k]), strings.TrimPrefix(s[k:], " ")
		if unit == "" {
			return Interval{}, fault{kind: NoUnit}
		}
	} else if _, _, ok := number(s); ok {
		return Interval{}, fault{kind: OutOfBounds, reason: "is not a whole number of 1 or more"}
	}
	for u := Day; u <= Year; u++ {
		name := intervals[u].name
		if unit != name && (len(unit) != len(name)+1 || unit[:len(name)] != name || unit[len(name)] != 's' || unit == s) {
			continue
		}
		if n < 1 {
			return Interval{}, fault{kind: OutOfBounds, reason: "is not a whole number of 1 or more"}
		}
		if float64(n)*intervals[u].days > MaxIntervalDays {
			return Interval{}, fault{kind: OutOfBounds, reason: "is longer than ten years"}
		}
		return Interval{n, u}, fault{}
	}
	if unit == s {
		return Interval{}, fault{kind: UnknownUnit, unit: s}
	}
	if unit[0] == '.' {
		return Interval{}, fault{kind: Malformed, reason: "is not a whole number"}
	}
	return Interval{}, unitFault(unit)
}

// plainly returns the interval that the word s means, or "".
func plainly(s string) string {
	s = strings.ToLower(strings.TrimSpace(s))
	if s == "fortnight" || s == "fortnightly" {
		return "2 weeks"
	}
	for u := Day; u <= Year; u++ {
		if slices.Contains(intervals[u].meant, s) {
			return intervals[u].name
		}
	}
	return ""
}

// String prints "day", "2 days", "week".
func (v Interval) String() string {
	if v.N == 1 {
		return v.Unit.String()
	}
	return strconv.Itoa(v.N) + " " + v.Unit.String() + "s"
}
