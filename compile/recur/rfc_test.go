package recur_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile/recur"
	"vivary/schema/civil"
)

func date(t testing.TB, s string) civil.Date {
	t.Helper()
	d, err := civil.Parse(s)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// dates reads "1997-09 2,4;1997-10 2".
func dates(t testing.TB, s string) []civil.Date {
	t.Helper()
	var out []civil.Date
	for _, part := range strings.Split(s, ";") {
		month, days, _ := strings.Cut(part, " ")
		for _, day := range strings.Split(days, ",") {
			out = append(out, date(t, month+"-"+strings.Repeat("0", 2-len(day))+day))
		}
	}
	return out
}

func cronDays(t testing.TB, line string) recur.Rule {
	t.Helper()
	r, _, err := recur.ParseCron(line)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func set(days ...time.Weekday) (s civil.Weekdays) {
	for _, d := range days {
		s = s.With(d)
	}
	return s
}

func bit(days ...int) (s uint32) {
	for _, d := range days {
		s |= 1 << d
	}
	return s
}

// take returns the first n days from a date on that one of the rules has.
func take(n int, from civil.Date, rules ...recur.Rule) []civil.Date {
	var out []civil.Date
	for d := from; len(out) < n && d <= recur.MaxDate; d++ {
		for _, r := range rules {
			if r.Contains(d) {
				out = append(out, d)
				break
			}
		}
	}
	return out
}

// The examples of RFC 5545, section 3.8.5.3, that are rules on days and that
// these rules can say, with the RFC's own dates (the time zone left away). A
// COUNT is taken by counting, an UNTIL by Between. Left out are -2MO, -3, the
// 20th Monday, week numbers, days of the year, BYSETPOS, weekday with day of
// month, several months every other year, and hours.
func TestRFC5545Examples(t *testing.T) {
	sep2 := date(t, "1997-09-02")
	dec24 := date(t, "1997-12-23") // UNTIL=19971224T000000Z is before 9:00 of the 24th
	for _, c := range []struct {
		name  string
		from  string
		rules []recur.Rule
		want  string
	}{
		{"daily for 10 occurrences", "1997-09-02", []recur.Rule{recur.EveryDays(1, sep2)}, "1997-09 2,3,4,5,6,7,8,9,10,11"},
		{"every other day", "1997-09-02", []recur.Rule{recur.EveryDays(2, sep2)}, "1997-09 2,4,6,8,10,12,14,16,18,20,22,24,26,28,30;1997-10 2,4,6,8,10,12,14,16,18,20,22,24,26,28,30;1997-11 1,3,5,7,9,11,13,15,17,19,21,23,25,27,29;1997-12 1,3"},
		{"every 10 days", "1997-09-02", []recur.Rule{recur.EveryDays(10, sep2)}, "1997-09 2,12,22;1997-10 2,12"},
		{"every day in January", "1998-01-01", []recur.Rule{cronDays(t, "0 9 * 1 *")}, "1998-01 1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22,23,24,25,26,27,28,29,30,31;1999-01 1,2,3"},
		{"weekly", "1997-09-02", []recur.Rule{recur.Weekly(set(time.Tuesday), 1, sep2)}, "1997-09 2,9,16,23,30;1997-10 7,14,21,28;1997-11 4"},
		{"weekly until 24 December", "1997-09-02", []recur.Rule{recur.Weekly(set(time.Tuesday), 1, sep2).Between(sep2, dec24)}, "1997-09 2,9,16,23,30;1997-10 7,14,21,28;1997-11 4,11,18,25;1997-12 2,9,16,23"},
		{"every other week", "1997-09-02", []recur.Rule{recur.Weekly(set(time.Tuesday), 2, sep2)}, "1997-09 2,16,30;1997-10 14,28;1997-11 11,25;1997-12 9,23;1998-01 6,20;1998-02 3,17"},
		{"Tuesday and Thursday for five weeks", "1997-09-02", []recur.Rule{recur.Weekly(set(time.Tuesday, time.Thursday), 1, sep2)}, "1997-09 2,4,9,11,16,18,23,25,30;1997-10 2"},
		// WKST=SU in the RFC; without a Sunday in the set a Monday start means the same.
		{"every other week on Monday, Wednesday and Friday until 24 December", "1997-09-01", []recur.Rule{recur.Weekly(set(time.Monday, time.Wednesday, time.Friday), 2, date(t, "1997-09-01")).Between(date(t, "1997-09-01"), dec24)}, "1997-09 1,3,5,15,17,19,29;1997-10 1,3,13,15,17,27,29,31;1997-11 10,12,14,24,26,28;1997-12 8,10,12,22"},
		{"every other week on Tuesday and Thursday", "1997-09-02", []recur.Rule{recur.Weekly(set(time.Tuesday, time.Thursday), 2, sep2)}, "1997-09 2,4,16,18,30;1997-10 2,14,16"},
		{"monthly on the first Friday", "1997-09-05", []recur.Rule{recur.MonthWeekday(1, time.Friday, 1, sep2)}, "1997-09 5;1997-10 3;1997-11 7;1997-12 5;1998-01 2;1998-02 6;1998-03 6;1998-04 3;1998-05 1;1998-06 5"},
		{"monthly on the first Friday until 24 December", "1997-09-05", []recur.Rule{recur.MonthWeekday(1, time.Friday, 1, sep2).Between(sep2, dec24)}, "1997-09 5;1997-10 3;1997-11 7;1997-12 5"},
		{"every other month on the first and last Sunday", "1997-09-07", []recur.Rule{recur.MonthWeekday(1, time.Sunday, 2, sep2), recur.MonthWeekday(-1, time.Sunday, 2, sep2)}, "1997-09 7,28;1997-11 2,30;1998-01 4,25;1998-03 1,29;1998-05 3,31"},
		{"monthly on the 2nd and 15th", "1997-09-02", []recur.Rule{recur.MonthDays(bit(2, 15), false, 1, sep2)}, "1997-09 2,15;1997-10 2,15;1997-11 2,15;1997-12 2,15;1998-01 2,15"},
		{"monthly on the first and last day", "1997-09-30", []recur.Rule{recur.MonthDays(bit(1), true, 1, sep2)}, "1997-09 30;1997-10 1,31;1997-11 1,30;1997-12 1,31;1998-01 1,31;1998-02 1"},
		{"every 18 months on the 10th thru 15th", "1997-09-10", []recur.Rule{recur.MonthDays(bit(10, 11, 12, 13, 14, 15), false, 18, sep2)}, "1997-09 10,11,12,13,14,15;1999-03 10,11,12,13"},
		{"yearly in June and July", "1997-06-10", []recur.Rule{recur.Yearly(time.June, 10), recur.Yearly(time.July, 10)}, "1997-06 10;1997-07 10;1998-06 10;1998-07 10;1999-06 10;1999-07 10;2000-06 10;2000-07 10;2001-06 10;2001-07 10"},
		{"every Thursday in March", "1997-03-13", []recur.Rule{cronDays(t, "0 9 * 3 4")}, "1997-03 13,20,27;1998-03 5,12,19,26;1999-03 4,11,18,25"},
		{"every Thursday in June, July and August", "1997-06-05", []recur.Rule{cronDays(t, "0 9 * 6-8 THU")}, "1997-06 5,12,19,26;1997-07 3,10,17,24,31;1997-08 7,14,21,28;1998-06 4,11,18,25;1998-07 2,9,16,23,30;1998-08 6,13,20,27"},
		{"WKST=MO with Tuesday and Sunday", "1997-08-05", []recur.Rule{recur.Weekly(set(time.Tuesday, time.Sunday), 2, date(t, "1997-08-05"))}, "1997-08 5,10,19,24"},
		{"30 February is ignored", "2007-01-15", []recur.Rule{recur.MonthDays(bit(15, 30), false, 1, date(t, "2007-01-15"))}, "2007-01 15,30;2007-02 15;2007-03 15,30"},
	} {
		want := dates(t, c.want)
		if got := take(len(want), date(t, c.from), c.rules...); !slices.Equal(got, want) {
			t.Errorf("%s:\n got %v\nwant %v", c.name, got, want)
		}
		// Those with an UNTIL have no day after the RFC's last.
		if strings.Contains(c.name, "until") {
			if d, ok := c.rules[0].Next(want[len(want)-1] + 1); ok {
				t.Errorf("%s: goes on at %v", c.name, d)
			}
		}
	}
}
