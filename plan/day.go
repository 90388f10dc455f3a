package plan

import (
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
		for _, name := range [...]string{"first", "second", "third", "fourth", "fifth", "last"} {
			if ordinals[name] == d.Nth {
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
