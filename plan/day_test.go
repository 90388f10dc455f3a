package plan

import (
	"testing"
	"time"

	"vivary/schema/civil"
)

// Each form means the days on which package time, asked the plain way, finds it.
func TestDays(t *testing.T) {
	for written, is := range map[string]func(time.Time) bool{
		"tue":        func(d time.Time) bool { return d.Weekday() == time.Tuesday },
		"First Mon":  func(d time.Time) bool { return d.Weekday() == time.Monday && d.AddDate(0, 0, -7).Month() != d.Month() },
		"fourth wed": func(d time.Time) bool { return d.Weekday() == time.Wednesday && (d.Day()-1)/7 == 3 },
		"fifth sun":  func(d time.Time) bool { return d.Weekday() == time.Sunday && d.AddDate(0, 0, -28).Month() == d.Month() },
		"last fri":   func(d time.Time) bool { return d.Weekday() == time.Friday && d.AddDate(0, 0, 7).Month() != d.Month() },
		"15th":       func(d time.Time) bool { return d.Day() == 15 },
		"last":       func(d time.Time) bool { return d.AddDate(0, 0, 1).Day() == 1 },
		"24 dec":     func(d time.Time) bool { return d.Format("2 Jan") == "24 Dec" },
		"sept 1st":   func(d time.Time) bool { return d.Format("2 Jan") == "1 Sep" },
		"29 feb":     func(d time.Time) bool { return d.Format("2 Jan") == "29 Feb" },
	} {
		day, ok := ParseDay(written)
		if !ok {
			t.Errorf("%q is not understood", written)
			continue
		}
		if again, ok := ParseDay(day.String()); !ok || again != day {
			t.Errorf("%q is printed as %q, which is another day", written, day)
		}
		for d := time.Date(2027, 1, 1, 12, 0, 0, 0, time.UTC); d.Year() < 2029; d = d.AddDate(0, 0, 1) {
			if c := civil.Must(d.Year(), d.Month(), d.Day()); day.Is(c) != is(d) {
				t.Fatalf("%q on %s: %v", written, c, day.Is(c))
			}
		}
	}
	for _, written := range []string{"", "tues day", "sixth mon", "0th", "32nd", "15", "1srth", "31 feb", "1 1", "first", "last jan"} {
		if d, ok := ParseDay(written); ok {
			t.Errorf("%q is taken for %s", written, d)
		}
	}
}
