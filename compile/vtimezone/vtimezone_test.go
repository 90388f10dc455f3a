package vtimezone

import (
	"archive/zip"
	"fmt"
	"io"
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/schema/civil"
	"vivary/schema/zone"
)

// London as the RFC writes its New York (RFC 5545, 3.6.5, third example), with
// the dates of Directive 2000/84/EC: last Sundays of October and March.
func TestLayout(t *testing.T) {
	const want = `BEGIN:VTIMEZONE
TZID:Europe/London
X-LIC-LOCATION:Europe/London
BEGIN:STANDARD
DTSTART:20261025T020000
RRULE:FREQ=YEARLY;BYMONTH=10;BYDAY=-1SU
TZOFFSETFROM:+0100
TZOFFSETTO:+0000
TZNAME:GMT
END:STANDARD
BEGIN:DAYLIGHT
DTSTART:20270328T010000
RRULE:FREQ=YEARLY;BYMONTH=3;BYDAY=-1SU
TZOFFSETFROM:+0000
TZOFFSETTO:+0100
TZNAME:BST
END:DAYLIGHT
END:VTIMEZONE
`
	got := component(t, "Europe/London", civil.Must(2026, 11, 25), civil.Must(2027, 11, 24))
	if got != strings.ReplaceAll(want, "\n", "\r\n") {
		t.Errorf("got\n%s", got)
	}
}

// Every zone, through our own reader, against the time package, up to ten years ahead.
// The early beginning meets zones that changed their rule or stopped changing, the late
// ones the end of what is listed for Casablanca, and a century. What is too long begins
// later than is asked, or reaches less far: Gaza, which is to change its clocks four times
// a year from 2038 on. None is too long.
func TestEveryZoneAgainstTimePackage(t *testing.T) {
	for _, span := range [][3]civil.Date{
		{civil.Must(2026, 1, 1), civil.Must(2028, 12, 31), civil.Must(2028, 12, 31)},
		{civil.Must(2026, 1, 1), civil.Must(2029, 12, 31), civil.Must(2037, 12, 31)},
		{civil.Must(2026, 7, 15), civil.Must(2026, 7, 15), civil.Must(2026, 7, 15)},
		{civil.Must(2026, 3, 29), civil.Must(2027, 3, 28), civil.Must(2037, 12, 31)},
		{civil.Must(1970, 1, 1), civil.Must(2028, 12, 31), civil.Must(2036, 12, 31)},
		{civil.Must(2015, 6, 1), civil.Must(2028, 12, 31), civil.Must(2036, 12, 31)},
		{civil.Must(2024, 1, 1), civil.Must(2032, 12, 31), civil.Must(2040, 12, 31)},
		{civil.Must(2085, 1, 1), civil.Must(2088, 12, 31), civil.Must(2096, 12, 31)},
		{civil.Must(2098, 1, 1), civil.Must(2101, 12, 31), civil.Must(2109, 12, 31)},
		{civil.Must(1970, 1, 1), civil.Must(1973, 12, 31), civil.Must(1981, 12, 31)},
	} {
		for _, name := range zone.Names() {
			loc, err := zone.Load(name)
			if err != nil {
				t.Fatal(err)
			}
			text := reaching(t, name, span[0], span[1], span[2])
			steps, n := evaluate(t, text), strings.Count(text, "\r\n")
			begin, end := span[0].At(0, loc), (span[1]+1).At(0, loc)
			year, _, _ := span[1].YMD()
			switch {
			case n >= 180:
				t.Errorf("%s from %s has %d lines", name, span[0], n)
			case steps[0].at.After(begin) && year-span0(span) <= 8:
				t.Errorf("%s from %s begins on %s", name, span[0], steps[0].at)
			case steps[0].at.After(begin): // a year more would have been too long
				if n < 160 || steps[0].at.After(time.Date(year-2, 1, 1, 0, 0, 0, 0, time.UTC)) {
					t.Errorf("%s from %s begins on %s, with %d lines", name, span[0], steps[0].at, n)
				}
				begin = steps[0].at
			case year-span0(span) <= 3 && (n < 160 || year < 2040): // then there is room for ten years ahead
				end = (span[2] + 1).At(0, loc)
			}
			if strings.Count(text, "RRULE") == 2 {
				end = time.Date(min(year+cycle+2, lastYear), 1, 1, 0, 0, 0, 0, time.UTC)
			}
			if d := differences(loc, steps, begin, end); len(d) > 0 {
				t.Errorf("%s from %s until %s: %d differences, first %s\n%s", name, span[0], span[1], len(d), d[0], text)
			}
			if t.Failed() {
				return
			}
		}
	}
}

// span0 is the year in which a span begins.
func span0(span [3]civil.Date) int { y, _, _ := span[0].YMD(); return y }

// differences compares a few instants near each change, whichever side says that
// there is one, and every tenth day between.
func differences(loc *time.Location, steps []step, begin, end time.Time) []string {
	var instants []time.Time
	for _, s := range steps {
		for _, d := range []time.Duration{-time.Hour, -time.Second, 0, time.Second, time.Hour} {
			instants = append(instants, s.at.Add(d))
		}
	}
	var seen time.Time
	for when := begin; when.Before(end); when = when.Add(10 * 24 * time.Hour) {
		instants = append(instants, when)
		if _, change := when.In(loc).ZoneBounds(); !change.Equal(seen) {
			instants = append(instants, change.Add(-time.Second), change, change.Add(time.Second))
			seen = change
		}
	}
	var found []string
	for _, when := range instants {
		if when.Before(begin) || !when.Before(end) {
			continue
		}
		name, offset := when.In(loc).Zone()
		if o, n := at(steps, when); o != offset || n != name {
			found = append(found, fmt.Sprintf("%s: component says %d %s, zone %d %s", when.UTC().Format(time.RFC3339), o, n, offset, name))
		}
	}
	return found
}

// The comparison must notice an error.
func TestDifferencesAreFound(t *testing.T) {
	text := component(t, "Europe/London", civil.Must(2026, 1, 1), civil.Must(2028, 12, 31))
	loc, _ := zone.Load("Europe/London")
	begin, end := civil.Must(2026, 1, 1).At(0, loc), civil.Must(2028, 12, 31).At(0, loc)
	for _, c := range [][2]string{
		{"TZOFFSETTO:+0100", "TZOFFSETTO:+0200"},
		{"TZOFFSETFROM:+0100", "TZOFFSETFROM:+0000"},
		{"DTSTART:20260329T010000", "DTSTART:20260329T000000"},
		{"TZNAME:BST", "TZNAME:GMT"},
	} {
		broken := strings.ReplaceAll(text, c[0], c[1])
		if len(differences(loc, evaluate(t, broken), begin, end)) == 0 {
			t.Errorf("%s instead of %s was not noticed", c[1], c[0])
		}
	}
}

// The last line of a TZif file is the zone's rule for ever, in the form of POSIX
// (RFC 9636, 3.3): "GMT0BST,M3.5.0/1,M10.5.0", month.week.weekday/hour. It says,
// without the time package, which RRULEs are right for ever; one whose hour lies
// outside its day (-1, 24, 26, 50) is not on an nth weekday at all.
func TestRulesAgainstPOSIX(t *testing.T) {
	archive, err := zip.OpenReader("../../schema/zone/zoneinfo.zip")
	if err != nil {
		t.Fatal(err)
	}
	defer archive.Close()
	explicit := map[string]bool{}
	for _, f := range archive.File {
		if f.Name == "Factory" {
			continue
		}
		text := component(t, f.Name, civil.Must(2026, 11, 25), civil.Must(2027, 11, 24))
		rules, sub := strings.Count(text, "RRULE:"), strings.Count(text, "DTSTART:")
		_, changes, yearly := strings.Cut(footer(t, f), ",")
		if !yearly {
			if rules != 0 {
				t.Errorf("%s has no yearly rule, but\n%s", f.Name, text)
			}
			if sub > 1 {
				explicit[f.Name] = true
			}
			continue
		}
		var want []string // the rules that can be said
		for rule := range strings.SplitSeq(changes, ",") {
			var month, week, weekday int
			date, clock, _ := strings.Cut(rule, "/")
			if _, err := fmt.Sscanf(date, "M%d.%d.%d", &month, &week, &weekday); err != nil {
				t.Fatalf("%s: %q: %v", f.Name, rule, err)
			}
			hour := 2
			fmt.Sscanf(clock, "%d", &hour) // 02:00 where there is none
			if hour < 0 || hour > 23 {
				explicit[f.Name] = true
				continue
			}
			if week == 5 {
				week = -1
			}
			want = append(want, fmt.Sprintf("RRULE:FREQ=YEARLY;BYMONTH=%d;BYDAY=%d%s\r\n", month, week, "SUMOTUWETHFRSA"[2*weekday:2*weekday+2]))
		}
		if rules != len(want) || rules == 2 && sub != 2 || slices.ContainsFunc(want, func(r string) bool { return !strings.Contains(text, r) }) {
			t.Errorf("%s: want %q, got\n%s", f.Name, want, text)
		}
	}
	// A move to another release of the database shows here.
	want := []string{
		"Africa/Cairo", "Africa/Casablanca", "Africa/El_Aaiun", "America/Godthab", "America/Nuuk", "America/Santiago",
		"America/Scoresbysund", "Asia/Gaza", "Asia/Hebron", "Asia/Jerusalem", "Asia/Tel_Aviv", "Chile/Continental", "Egypt", "Israel",
	}
	var got []string
	for name := range explicit {
		got = append(got, name)
	}
	slices.Sort(got)
	if !slices.Equal(got, want) {
		t.Errorf("explicit zones: got %q, want %q", got, want)
	}
}

func footer(t *testing.T, f *zip.File) string {
	t.Helper()
	r, err := f.Open()
	if err != nil {
		t.Fatal(err)
	}
	defer r.Close()
	data, err := io.ReadAll(r)
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(string(data), "\n")
	return lines[len(lines)-2]
}

// No zone has a part that some app does not read, ten years ahead.
func TestParts(t *testing.T) {
	for _, name := range zone.Names() {
		text := reaching(t, name, civil.Must(2026, 11, 25), civil.Must(2028, 12, 31), civil.Must(2036, 12, 31))
		if strings.Contains(text, "BYMONTHDAY") || strings.Contains(text, "RDATE") || strings.Contains(text, "UNTIL") {
			t.Errorf("%s has a part that some app does not read:\n%s", name, text)
		}
	}
}

// Outlook keeps one STANDARD and one DAYLIGHT bias, and no DAYLIGHT part means no
// change (MS-OXCICAL, 2.1.3.1.1.19.2.1); that DAYLIGHT is the later clock, also
// in Dublin and Casablanca where tzdb says otherwise, is common practice, no
// source.
func TestDaylightIsTheLaterClock(t *testing.T) {
	for _, name := range zone.Names() {
		text := component(t, name, civil.Must(2026, 11, 25), civil.Must(2028, 11, 24))
		standard, daylight := map[string]bool{}, map[string]bool{}
		kind := standard
		for line := range strings.SplitSeq(text, "\r\n") {
			switch property, value, _ := strings.Cut(line, ":"); {
			case property == "BEGIN" && value == "STANDARD":
				kind = standard
			case property == "BEGIN" && value == "DAYLIGHT":
				kind = daylight
			case property == "TZOFFSETTO":
				kind[value] = true
			}
		}
		if len(standard) != 1 || len(daylight) > 1 {
			t.Errorf("%s: STANDARD %v, DAYLIGHT %v", name, standard, daylight)
		}
		for d := range daylight {
			for s := range standard {
				later, err1 := parseOffset(d)
				earlier, err2 := parseOffset(s)
				if err1 != nil || err2 != nil || later <= earlier {
					t.Errorf("%s: DAYLIGHT %s is not later than STANDARD %s", name, d, s)
				}
			}
		}
	}
}

func TestRefusals(t *testing.T) {
	day := civil.Must(2026, 11, 25)
	for _, c := range []struct {
		name        string
		from, until civil.Date
		want        string
	}{
		{"Europe/Londn", day, day, `a slip of the keyboard from it is "Europe/London"`},
		{"Europe/London", day, day - 1, "not after the last"},
		{"Europe/London", civil.Must(1969, 12, 31), day, "in 1970 or later"},
	} {
		got, err := Append([]byte("kept"), c.name, c.from, c.until, c.until)
		if err == nil || !strings.Contains(err.Error(), c.want) || string(got) != "kept" {
			t.Errorf("Append(%q, %s, %s) = %q, %v; want %q", c.name, c.from, c.until, got, err, c.want)
		}
	}
}

func component(t *testing.T, name string, from, until civil.Date) string {
	t.Helper()
	return reaching(t, name, from, until, until)
}

func reaching(t *testing.T, name string, from, until, ahead civil.Date) string {
	t.Helper()
	b, err := Append(nil, name, from, until, ahead)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

func BenchmarkAppend(b *testing.B) {
	for _, name := range []string{"UTC", "Europe/London", "Africa/Casablanca"} {
		b.Run(name, func(b *testing.B) {
			var dst []byte
			for b.Loop() {
				var err error
				if dst, err = Append(dst[:0], name, civil.Must(2026, 11, 25), civil.Must(2028, 12, 31), civil.Must(2036, 12, 31)); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
