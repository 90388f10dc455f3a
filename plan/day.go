package plan

import (
	"errors"
	"slices"
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
	// PartOfYear is "24 dec to 2 jan", every year.
	PartOfYear
	// Dated is "2027-03-04", or "2027-07-20 to 2027-09-01".
	Dated
	// NamedDays are those of a dates block.
	NamedDays
)

// Day is one item of a list of days.
type Day struct {
	Kind        DayKind
	Weekday     time.Weekday
	Nth         int // 1 to 5, -1 for the last
	Month       time.Month
	Day         int // 1 to 31, -1 for the last
	ToMonth     time.Month
	ToDay       int        // of PartOfYear: its last day
	First, Last civil.Date // of Dated
	Name        string     // of NamedDays
}

var ordinals = map[string]int{"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "last": -1}

// ParseDays reads one item of a list of days: one day of it, or for "mon to fri" each of
// them. What is allowed is said by DayForms, the name of a dates block among it: whether
// there is one of that name is not looked at.
func ParseDays(s string) ([]Day, error) {
	if from, to, ok := cutSpan(s); ok {
		return span(s, from, to)
	}
	if d, ok := ParseDay(s); ok {
		return []Day{d}, nil
	}
	switch {
	case startsWithDigit(s) && strings.Count(s, "-") == 2:
		d, err := civil.Parse(s)
		return []Day{{Kind: Dated, First: d, Last: d}}, err
	case validName(s) && !startsWithDigit(s):
		return []Day{{Kind: NamedDays, Name: s}}, nil
	}
	return nil, errors.New(quote(s) + " is not a day: write " + DayForms)
}

// cutSpan parts an item that is a time from one day to another.
func cutSpan(s string) (from, to string, ok bool) {
	for _, word := range [...]string{" to ", " - ", " – "} {
		if from, to, ok = strings.Cut(s, word); ok {
			return strings.TrimSpace(from), strings.TrimSpace(to), true
		}
	}
	return "", "", false
}

// span reads the days from one to another: weekdays, days of the year or dates.
func span(s, from, to string) ([]Day, error) {
	a, okA := ParseDay(from)
	b, okB := ParseDay(to)
	switch {
	case okA && okB && a.Kind == EachWeekday && b.Kind == EachWeekday:
		out := []Day{a}
		for a.Weekday != b.Weekday {
			a.Weekday = (a.Weekday + 1) % 7
			out = append(out, a)
		}
		return out, nil
	case okA && okB && a.Kind == DateOfYear && b.Kind == DateOfYear:
		return []Day{{Kind: PartOfYear, Month: a.Month, Day: a.Day, ToMonth: b.Month, ToDay: b.Day}}, nil
	}
	first, errA := civil.Parse(from)
	last, errB := civil.Parse(to)
	switch {
	case errA == nil && errB == nil && last >= first:
		return []Day{{Kind: Dated, First: first, Last: last}}, nil
	case errA == nil && errB == nil:
		return nil, errors.New(quote(s) + " ends before it begins")
	case errA != nil && startsWithDigit(from) && strings.Count(from, "-") == 2:
		return nil, errA
	case errB != nil && startsWithDigit(to) && strings.Count(to, "-") == 2:
		return nil, errB
	}
	return nil, errors.New(quote(s) + " is not from one day to another: write two weekdays, two days of the year or two dates, such as \"2027-07-20 to 2027-09-01\"")
}

func startsWithDigit(s string) bool { return s != "" && s[0] >= '0' && s[0] <= '9' }

// ParseDay reads a day that comes again and again, by its weekday, in its month or in its year.
// The second result is false where it is none.
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
const DayForms = `a weekday ("tue"), a weekday of the month ("first mon", "last fri"), a day of the month ("15th", "last"), a day of the year ("1 apr", "24 dec to 2 jan"), a date ("2027-03-04", "2027-07-20 to 2027-09-01") or the name of a dates block`

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
	case PartOfYear:
		from, to, on := yearPlace(d.Month, d.Day), yearPlace(d.ToMonth, d.ToDay), yearPlace(m, n)
		if from > to {
			return on >= from || on <= to
		}
		return from <= on && on <= to
	case Dated:
		return d.First <= date && date <= d.Last
	case NamedDays:
		return false
	}
	return m == d.Month && n == d.Day
}

// yearPlace orders the days of a year, the 29th of February among them.
func yearPlace(m time.Month, day int) int { return int(m)*32 + day }

// Once reports whether a list has nothing but dates that do not come again.
func Once(list []Written[Day]) bool {
	return len(list) > 0 && !slices.ContainsFunc(list, func(d Written[Day]) bool { return d.V.Kind != Dated })
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
		return dayAndMonth(d.Month, d.Day)
	case PartOfYear:
		return dayAndMonth(d.Month, d.Day) + " to " + dayAndMonth(d.ToMonth, d.ToDay)
	case Dated:
		if d.First == d.Last {
			return d.First.String()
		}
		return d.First.String() + " to " + d.Last.String()
	case NamedDays:
		return d.Name
	}
	if d.Day < 0 {
		return "last"
	}
	return civil.Ordinal(d.Day)
}

func dayAndMonth(m time.Month, day int) string {
	return strconv.Itoa(day) + " " + strings.ToLower(m.String()[:3])
}
