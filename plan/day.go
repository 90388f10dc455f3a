package plan

import (
	"strconv"
	"strings"
	"time"

	"vivary/schema/civil"
)

// DayKind says what a Day is.
type DayKind uint8

const (
	// EachWeekday is "tue".
	EachWeekday DayKind = iota
	// NthWeekday is "first mon" or "last fri".
	NthWeekday
	// DayOfMonth is "15th", or "last" with Day -1.
	DayOfMonth
	// DateOfYear is "1 apr".
	DateOfYear
)

// Day is one item of a list of days.
type Day struct {
	Kind    DayKind
	Weekday time.Weekday
	Nth     int // 1 to 5, -1 for the last
	Month   time.Month
	Day     int // 1 to 31, -1 for the last
}

var ordinals = map[string]int{"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "last": -1}

// ParseDay reads one item of a list of days. The second result is false where it
// is none; what is allowed is said by DayForms.
func ParseDay(s string) (Day, bool) {
	words := strings.Fields(strings.ToLower(s))
	switch len(words) {
	case 1:
		if w, ok := civil.ParseWeekday(words[0]); ok {
			return Day{Kind: EachWeekday, Weekday: w}, true
		}
		if words[0] == "last" {
			return Day{Kind: DayOfMonth, Day: -1}, true
		}
		if d, ok := dayNumber(words[0], true); ok {
			return Day{Kind: DayOfMonth, Day: d}, true
		}
	case 2:
		if n, ok := ordinals[words[0]]; ok {
			if w, ok := civil.ParseWeekday(words[1]); ok {
				return Day{Kind: NthWeekday, Weekday: w, Nth: n}, true
			}
			if words[0] == "last" && words[1] == "day" {
				return Day{Kind: DayOfMonth, Day: -1}, true
			}
		}
		day, month := words[0], words[1]
		if _, isMonth := parseMonth(day); isMonth {
			day, month = month, day
		}
		if m, ok := parseMonth(month); ok {
			// 29 February is a day of some years.
			if d, ok := dayNumber(day, false); ok && d <= civil.DaysIn(2024, m) {
				return Day{Kind: DateOfYear, Month: m, Day: d}, true
			}
		}
	}
	return Day{}, false
}

// DayForms says how the days of a list are written.
const DayForms = `a weekday ("tue"), a weekday of the month ("first mon", "last fri"), a day of the month ("15th", "last") or a date of the year ("1 apr")`

func dayNumber(s string, ordinal bool) (int, bool) {
	t := s
	for _, suffix := range [...]string{"st", "nd", "rd", "th"} {
		if rest, ok := strings.CutSuffix(s, suffix); ok {
			t = rest
		}
	}
	if ordinal && t == s {
		return 0, false
	}
	d, err := strconv.Atoi(t)
	return d, err == nil && d >= 1 && d <= 31 && len(t) <= 2
}

func parseMonth(s string) (time.Month, bool) {
	if len(s) < 3 {
		return 0, false
	}
	for m := time.January; m <= time.December; m++ {
		if strings.HasPrefix(strings.ToLower(m.String()), s) {
			return m, true
		}
	}
	return 0, false
}

// Is reports whether a date is such a day.
func (d Day) Is(date civil.Date) bool {
	y, m, n := date.YMD()
	last := civil.DaysIn(y, m)
	switch d.Kind {
	case EachWeekday:
		return date.Weekday() == d.Weekday
	case NthWeekday:
		return date.Weekday() == d.Weekday && (d.Nth == (n+6)/7 || d.Nth < 0 && n > last-7)
	case DayOfMonth:
		return n == d.Day || d.Day < 0 && n == last
	}
	return m == d.Month && n == d.Day
}

// String returns the day as it is written.
func (d Day) String() string {
	switch d.Kind {
	case EachWeekday:
		return strings.ToLower(d.Weekday.String()[:3])
	case NthWeekday:
		for name, n := range ordinals {
			if n == d.Nth {
				return name + " " + strings.ToLower(d.Weekday.String()[:3])
			}
		}
	case DateOfYear:
		return strconv.Itoa(d.Day) + " " + strings.ToLower(d.Month.String()[:3])
	}
	if d.Day < 0 {
		return "last"
	}
	return civil.Ordinal(d.Day)
}
