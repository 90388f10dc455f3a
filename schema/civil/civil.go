// Package civil holds dates and times of day as a keeper means them: a day on
// the wall calendar, a time on the wall clock. It knows nothing of zones or of
// the present moment; those enter where a date becomes an instant.
package civil

import (
	"fmt"
	"strconv"
	"strings"
	"time"
)

// Date is a day of the proleptic Gregorian calendar, counted in days from
// 1970-01-01. Adding 1 gives the next day.
type Date int32

// Of returns the date of a year, month and day, and whether there is such a day
// (30 February is not). Years run from 1 to 9999.
func Of(year int, month time.Month, day int) (Date, bool) {
	if year < 1 || year > 9999 || month < time.January || month > time.December || day < 1 || day > DaysIn(year, month) {
		return 0, false
	}
	return daysFrom(year, int(month), day), true
}

// Must is Of for dates known to exist, such as those in tests; it panics on others.
func Must(year int, month time.Month, day int) Date {
	d, ok := Of(year, month, day)
	if !ok {
		panic(fmt.Sprintf("civil: no such day: %d-%d-%d", year, month, day))
	}
	return d
}

// FromTime returns the local date of t in t's own location.
func FromTime(t time.Time) Date {
	y, m, d := t.Date()
	return daysFrom(y, int(m), d)
}

// Parse reads "2027-07-10". The error says whether the form or the day is wrong.
func Parse(s string) (Date, error) {
	if len(s) != 10 || s[4] != '-' || s[7] != '-' {
		return 0, fmt.Errorf("%q is not a date: write year-month-day, for example \"2027-07-10\"", s)
	}
	y, err1 := digits(s[:4])
	m, err2 := digits(s[5:7])
	d, err3 := digits(s[8:])
	if err1 != nil || err2 != nil || err3 != nil {
		return 0, fmt.Errorf("%q is not a date: write year-month-day, for example \"2027-07-10\"", s)
	}
	date, ok := Of(y, time.Month(m), d)
	if !ok {
		if m >= 1 && m <= 12 && y >= 1 {
			return 0, fmt.Errorf("there is no %d %s in %d: that month has %d days", d, time.Month(m), y, DaysIn(y, time.Month(m)))
		}
		return 0, fmt.Errorf("%q is not a day of the calendar", s)
	}
	return date, nil
}

func digits(s string) (int, error) {
	for i := 0; i < len(s); i++ {
		if s[i] < '0' || s[i] > '9' {
			return 0, strconv.ErrSyntax
		}
	}
	return strconv.Atoi(s)
}

// DaysIn returns the number of days of a month.
func DaysIn(year int, month time.Month) int {
	switch month {
	case time.April, time.June, time.September, time.November:
		return 30
	case time.February:
		if year%4 == 0 && (year%100 != 0 || year%400 == 0) {
			return 29
		}
		return 28
	}
	return 31
}

// YMD returns the date's year, month and day.
//
// The arithmetic works on years that begin on 1 March, so that the leap day is
// the last of its year, and on eras of 400 years, after which the calendar
// repeats.
func (d Date) YMD() (year int, month time.Month, day int) {
	z := int(d) + 719468
	era := z / 146097
	if z < 0 {
		era = (z - 146096) / 146097
	}
	doe := z - era*146097
	yoe := (doe - doe/1460 + doe/36524 - doe/146096) / 365
	doy := doe - (365*yoe + yoe/4 - yoe/100)
	mp := (5*doy + 2) / 153
	day = doy - (153*mp+2)/5 + 1
	m := mp + 3
	year = yoe + era*400
	if m > 12 {
		m -= 12
		year++
	}
	return year, time.Month(m), day
}

func daysFrom(y, m, d int) Date {
	if m <= 2 {
		y--
		m += 12
	}
	era := y / 400
	if y < 0 {
		era = (y - 399) / 400
	}
	yoe := y - era*400
	doy := (153*(m-3)+2)/5 + d - 1
	doe := yoe*365 + yoe/4 - yoe/100 + doy
	return Date(era*146097 + doe - 719468)
}

// Weekday returns the day of the week.
func (d Date) Weekday() time.Weekday {
	// 1970-01-01 was a Thursday.
	w := (int(d) + int(time.Thursday)) % 7
	if w < 0 {
		w += 7
	}
	return time.Weekday(w)
}

// AddMonths returns the same day n months later, or the last day of that month
// where it is shorter.
func (d Date) AddMonths(n int) Date {
	y, m, day := d.YMD()
	k := y*12 + int(m) - 1 + n
	y, m = k/12, time.Month(k%12+1)
	if last := DaysIn(y, m); day > last {
		day = last
	}
	return daysFrom(y, int(m), day)
}

// NotAfter returns the date, or where it is later than another the same day of the last year
// in which it is not.
func (d Date) NotAfter(last Date) Date {
	for d > last {
		d = d.AddMonths(-12)
	}
	return d
}

// String returns "2027-07-10".
func (d Date) String() string { return string(d.Append(nil, "-")) }

// Append appends year, month and day with sep between them; with an empty sep
// it is the basic form of ISO 8601 that iCalendar uses, "20270710".
func (d Date) Append(b []byte, sep string) []byte {
	y, m, day := d.YMD()
	b = append(b, byte('0'+y/1000%10), byte('0'+y/100%10), byte('0'+y/10%10), byte('0'+y%10))
	b = append(b, sep...)
	b = append(b, byte('0'+int(m)/10), byte('0'+int(m)%10))
	b = append(b, sep...)
	return append(b, byte('0'+day/10), byte('0'+day%10))
}

// Words returns the date as a keeper reads it, "Sat 10 Jul 2027".
func (d Date) Words() string {
	y, _, _ := d.YMD()
	return d.Short() + " " + strconv.Itoa(y)
}

// Short returns the date without its year, "Sat 10 Jul".
func (d Date) Short() string { return d.Weekday().String()[:3] + " " + d.Brief() }

// Brief returns the date without its weekday and year, "10 Jul".
func (d Date) Brief() string {
	_, m, day := d.YMD()
	return strconv.Itoa(day) + " " + m.String()[:3]
}

// Ordinal returns a day of the month, or another small number, as "1st", "22nd", "13th".
func Ordinal(n int) string {
	suffix := "th"
	if n/10 != 1 {
		switch n % 10 {
		case 1:
			suffix = "st"
		case 2:
			suffix = "nd"
		case 3:
			suffix = "rd"
		}
	}
	return strconv.Itoa(n) + suffix
}

// At returns the instant at which clock c shows on date d in loc. A time that a
// clock change leaves out is read with the offset in force before the change
// (RFC 5545, 3.3.5), and the first of a time that comes twice.
func (d Date) At(c Clock, loc *time.Location) time.Time {
	y, m, day := d.YMD()
	want := time.Date(y, m, day, int(c)/60, int(c)%60, 0, 0, time.UTC)
	// The offset in force half a day before is the one before any change today.
	_, before := want.Add(-14 * time.Hour).In(loc).Zone()
	t := want.Add(-time.Duration(before) * time.Second).In(loc)
	if _, off := t.Zone(); off == before {
		return t
	}
	u := time.Date(y, m, day, int(c)/60, int(c)%60, 0, 0, loc)
	if u.Hour() == int(c)/60 && u.Minute() == int(c)%60 {
		return u
	}
	return t
}

// Clock is a time of day in minutes after midnight, 0 to 1439.
type Clock int16

// ParseClock reads "19:30" or "7:05".
func ParseClock(s string) (Clock, error) {
	h, m, ok := strings.Cut(s, ":")
	hour, err1 := digits(h)
	minute, err2 := digits(m)
	if !ok || err1 != nil || err2 != nil || len(h) == 0 || len(h) > 2 || len(m) != 2 || hour > 23 || minute > 59 {
		return 0, fmt.Errorf("%q is not a time of day: write hours and minutes, for example \"19:30\"", s)
	}
	return Clock(hour*60 + minute), nil
}

// String returns "19:30".
func (c Clock) String() string { return string(c.Append(nil, ":")) }

// Append appends hours and minutes with sep between them.
func (c Clock) Append(b []byte, sep string) []byte {
	h, m := int(c)/60, int(c)%60
	b = append(b, byte('0'+h/10), byte('0'+h%10))
	b = append(b, sep...)
	return append(b, byte('0'+m/10), byte('0'+m%10))
}

// Weekdays is a set of days of the week; bit w is time.Weekday(w).
type Weekdays uint8

// EveryDay is the set of all seven days.
const EveryDay Weekdays = 0x7f

// With returns the set with w added.
func (s Weekdays) With(w time.Weekday) Weekdays { return s | 1<<w }

// ParseWeekday reads "tue", "tues" or "Tuesday".
func ParseWeekday(s string) (time.Weekday, bool) {
	l := strings.ToLower(s)
	if len(l) < 3 {
		return 0, false
	}
	for w := time.Sunday; w <= time.Saturday; w++ {
		if full := strings.ToLower(w.String()); strings.HasPrefix(full, l) {
			return w, true
		}
	}
	return 0, false
}
