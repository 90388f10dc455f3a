package civil_test

import (
	"strconv"
	"strings"
	"testing"
	"time"

	"vivary/schema/civil"
	"vivary/schema/zone"
)

// Every day of 400 years, after which the calendar repeats, and the ends of it are
// what package time makes of them.
func TestDaysAsPackageTime(t *testing.T) {
	check := func(u time.Time) {
		y, m, day := u.Date()
		d, ok := civil.Of(y, m, day)
		if !ok || int64(d)*24*60*60 != u.Unix() || civil.FromTime(u) != d {
			t.Fatalf("%s: day %d, %v", u.Format(time.DateOnly), d, ok)
		}
		if y2, m2, day2 := d.YMD(); y2 != y || m2 != m || day2 != day || d.Weekday() != u.Weekday() {
			t.Fatalf("%s: %d %s %d, %s", u.Format(time.DateOnly), day2, m2, y2, d.Weekday())
		}
		if back, err := civil.Parse(u.Format(time.DateOnly)); err != nil || back != d || d.String() != u.Format(time.DateOnly) || d.Words() != u.Format("Mon 2 Jan ")+strconv.Itoa(u.Year()) || d.Short() != u.Format("Mon 2 Jan") || d.Brief() != u.Format("2 Jan") {
			t.Fatalf("%s: %s, %s, %v", u.Format(time.DateOnly), d, d.Words(), err)
		}
	}
	for u := time.Date(1800, 1, 1, 0, 0, 0, 0, time.UTC); u.Year() < 2200; u = u.AddDate(0, 0, 1) {
		check(u)
	}
	check(time.Date(1, 1, 1, 0, 0, 0, 0, time.UTC))
	check(time.Date(9999, 12, 31, 0, 0, 0, 0, time.UTC))
}

// What is no day, or no time of day, is refused.
func TestNoSuchDay(t *testing.T) {
	for text, want := range map[string]string{
		"2027-02-29": "that month has 28 days", "2027-04-31": "that month has 30 days", "2027-13-01": "not a day of the calendar",
		"0000-01-01": "not a day of the calendar", "2027-1-01": "is not a date", "2027-01-0x": "is not a date", "+027-01-01": "is not a date",
	} {
		if _, err := civil.Parse(text); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v", text, err)
		}
	}
	for _, text := range []string{"", ":", "7", "7:5", "24:00", "12:60", "012:00", "-1:00", "19:30 "} {
		if c, err := civil.ParseClock(text); err == nil {
			t.Errorf("%q is %s", text, c)
		}
	}
	if c, err := civil.ParseClock("7:05"); err != nil || c.String() != "07:05" {
		t.Errorf("%s, %v", c, err)
	}
}

// The examples of RFC 5545, 3.3.5: a time that is left out is read with the offset
// before the change, and of a time that comes twice the first is meant.
func TestAt(t *testing.T) {
	loc, err := zone.Load("America/New_York")
	if err != nil {
		t.Fatal(err)
	}
	for _, x := range []struct {
		day  civil.Date
		at   civil.Clock
		want string
	}{
		{civil.Must(2007, time.March, 11), 2*60 + 30, "2007-03-11T03:30:00-04:00"},
		{civil.Must(2007, time.November, 4), 1*60 + 30, "2007-11-04T01:30:00-04:00"},
		{civil.Must(2007, time.November, 4), 19*60 + 30, "2007-11-04T19:30:00-05:00"},
	} {
		if got := x.day.At(x.at, loc).Format(time.RFC3339); got != x.want {
			t.Errorf("%s %s: %s, want %s", x.day, x.at, got, x.want)
		}
	}
}

// A month later is the same day, or the last where the month is shorter.
func TestAddMonths(t *testing.T) {
	for from, want := range map[string]string{"2027-01-31": "2027-02-28", "2028-01-31": "2028-02-29", "2027-12-15": "2028-01-15"} {
		d, _ := civil.Parse(from)
		if got := d.AddMonths(1).String(); got != want {
			t.Errorf("a month from %s: %s, want %s", from, got, want)
		}
	}
	if got := civil.Must(2027, time.March, 31).AddMonths(-13).String(); got != "2026-02-28" {
		t.Errorf("13 months back: %s", got)
	}
}

func TestOrdinal(t *testing.T) {
	for n, want := range map[int]string{1: "1st", 2: "2nd", 3: "3rd", 4: "4th", 11: "11th", 12: "12th", 13: "13th", 21: "21st", 22: "22nd", 30: "30th", 31: "31st"} {
		if got := civil.Ordinal(n); got != want {
			t.Errorf("%d: %s", n, got)
		}
	}
}
