package civil_test

import (
	"strings"
	"testing"

	"vivary/schema/civil"
)

// A day is read in every order in which it can be one day only. Elsewhere all that it can
// be is told, and none is taken.
func TestRead(t *testing.T) {
	for text, want := range map[string]string{
		"2027-07-10": "2027-07-10", "2027/07/10": "2027-07-10", "2027.7.10": "2027-07-10", "2027-7-1": "2027-07-01", "20270710": "2027-07-10",
		"10 July 2027": "2027-07-10", "10th of July 2027": "2027-07-10", "July 10, 2027": "2027-07-10", "Jul 10th 2027": "2027-07-10", "10-Jul-2027": "2027-07-10",
		"2027 July 10": "2027-07-10", "Sat 10 Jul 2027": "2027-07-10", "Saturday, July 10, 2027": "2027-07-10", "the 1st of sept. 2027": "2027-09-01",
		"13.07.2027": "2027-07-13", "13/07/2027": "2027-07-13", "07/13/2027": "2027-07-13", "7/7/2027": "2027-07-07", " 2027-07-10 ": "2027-07-10",
		"10.07.2027": "? 2027-07-10 2027-10-07", "07/10/2027": "? 2027-10-07 2027-07-10", "1-2-2027": "? 2027-02-01 2027-01-02",
		"10 Jul 27": "? 2027-07-10 2010-07-27", "13/07/27": "? 2027-07-13 2013-07-27", "30/12/99": "2099-12-30!",
		"2027-13-07": "2027-07-13!", "2027-07-10T08:00": "2027-07-10!", "2027-07-10 08:00:00": "2027-07-10!",
		"2027-02-29": "that month has 28 days", "31 June 2027": "that month has 30 days", "31.02.2027": "that month has 28 days", "2027-13-14": "not a day of the calendar",
		"10 July": "has no year", "10/7": "has no year", "July 2027": "has no day", "Fri 10 July 2027": "is a Saturday", "tomorrow": "is not a date", "": "is not a date",
		"0000-01-01": "not a day of the calendar", "+027-01-01": "is not a date", "2027-07-10x": "is not a date", "July July 2027": "is not a date",
	} {
		d, err := civil.Read(text)
		got := d.String()
		if err != nil {
			e := err.(*civil.Unread)
			switch {
			case e.Instead != "":
				got = e.Instead + "!"
			case e.Either != nil:
				got = "? " + strings.Join(e.Either, " ")
			default:
				got = e.Error()
			}
			for _, again := range append(e.Either, e.Instead) {
				if _, err := civil.Read(again); again != "" && err != nil {
					t.Errorf("%q is told to be %q: %v", text, again, err)
				}
			}
		}
		if got != want && !(err != nil && strings.Contains(got, want) && !strings.ContainsAny(want, "!?")) {
			t.Errorf("%q: %s, want %s", text, got, want)
		}
	}
}

func TestReadClock(t *testing.T) {
	for text, want := range map[string]string{
		"19:30": "19:30", "7:05": "07:05", "7:30 pm": "19:30", "7:30pm": "19:30", "7.30 pm": "19:30", "7:30 P.M.": "19:30", "8:15 am": "08:15", "8 pm": "20:00", "8PM": "20:00",
		"8 a.m.": "08:00", "12 noon": "12:00", "noon": "12:00", "midday": "12:00", "12 pm": "12:00", "12:30 pm": "12:30", "12 am": "00:00", "midnight": "00:00", "12 midnight": "00:00",
		"1930": "19:30", "0730": "07:30", "1930h": "19:30", "19.30": "19:30", "19h30": "19:30", "20h": "20:00", "19:30:00": "19:30", "at 8 pm": "20:00", "8 in the morning": "08:00", "8 in the evening": "20:00",
		"13:30 pm": "13:30!", "19": "19:00!", "12": "12:00!", "0": "00:00!", "8": "? 08:00 20:00", "8 o'clock": "? 08:00 20:00", "8:30 o'clock": "? 08:30 20:30",
		"24:00": "hours go to 23", "25:00": "hours go to 23", "12:60": "hours go to 23", "evening": "is not a time", "": "is not a time", "half past seven": "is not a time", "8:5": "is not a time", "3 noon": "is not a time",
	} {
		c, err := civil.ReadClock(text)
		got := c.String()
		if err != nil {
			e := err.(*civil.Unread)
			switch {
			case e.Instead != "":
				got = e.Instead + "!"
			case e.Either != nil:
				got = "? " + strings.Join(e.Either, " ")
			default:
				got = e.Error()
			}
		}
		if got != want && !(err != nil && strings.Contains(got, want) && !strings.ContainsAny(want, "!?")) {
			t.Errorf("%q: %s, want %s", text, got, want)
		}
	}
}

// Whatever is read is one day, and what is told to be meant is read.
func FuzzRead(f *testing.F) {
	for _, s := range []string{"2027-07-10", "10 July 2027", "July 10, 2027", "13.07.27", "8:15 am", "12 noon", "8 o'clock", "1930"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		_, err := civil.Read(s)
		_, errClock := civil.ReadClock(s)
		for _, err := range []error{err, errClock} {
			e, ok := err.(*civil.Unread)
			if err == nil {
				continue
			}
			if !ok || e.Fault == "" {
				t.Fatalf("%q: %v", s, err)
			}
			for _, again := range append(e.Either, e.Instead) {
				_, dayErr := civil.Read(again)
				_, clockErr := civil.ReadClock(again)
				if again != "" && dayErr != nil && clockErr != nil {
					t.Errorf("%q is told to be %q", s, again)
				}
			}
		}
	})
}
