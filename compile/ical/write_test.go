package ical

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"vivary/compile/vtimezone"
	"vivary/schema/civil"
	"vivary/schema/zone"
)

var (
	today    = civil.Must(2027, time.March, 1)
	keepFrom = civil.Must(2027, time.January, 1)
	now      = time.Date(2027, time.March, 1, 8, 0, 0, 0, time.UTC)
)

func sample(t testing.TB, entries ...Entry) *Feed {
	return sampleIn(t, "Europe/London", entries...)
}

func sampleIn(t testing.TB, name string, entries ...Entry) *Feed {
	t.Helper()
	loc, err := zone.Load(name)
	if err != nil {
		t.Fatal(err)
	}
	tz, err := vtimezone.Append(nil, name, keepFrom, civil.Must(2028, time.December, 31), civil.Must(2028, time.December, 31))
	if err != nil {
		t.Fatal(err)
	}
	return &Feed{
		Name: "Evening round, east", Description: "Made from the care plan; changes here are lost.",
		Zone: name, Location: loc, Timezone: tz, Color: "teal", Hex: "#008080",
		Source: "https://example.org/feeds/evening.ics", Refresh: "PT6H", Entries: entries,
	}
}

func misting() Entry {
	return Entry{
		UID: UID("burrow-a", "mist"), Date: civil.Must(2027, time.March, 2), At: 19*60 + 30, Minutes: 10,
		RRule: "FREQ=WEEKLY;INTERVAL=2;BYDAY=TU,FR;WKST=MO", Until: civil.Must(2027, time.July, 9), HasUntil: true,
		ExDates: []civil.Date{civil.Must(2027, time.March, 5)},
		Summary: "Mist: 150 ml, warm end", Description: "Glass only; not the hide.\nWhy: humidity", Location: "East room",
		Categories: []string{"care", "water, food"}, Remind: 10,
	}
}

func quarantine() Entry {
	return Entry{UID: UID("tub-4", "quarantine"), Date: civil.Must(2027, time.March, 1), AllDay: true, Days: 30, Summary: "Quarantine"}
}

// TestWhole pins a whole feed, so that a change of a byte is seen in review. Whether
// calendar readers like it is asked in TestReadersAgree.
func TestWhole(t *testing.T) {
	f := sample(t, misting(), quarantine())
	got := string(Write(nil, f, nil, now, keepFrom, today))
	checkLines(t, got)
	got = strings.ReplaceAll(got, string(f.Timezone), "")
	const want = `BEGIN:VCALENDAR
VERSION:2.0
PRODID:-//vivary//care calendar//EN
CALSCALE:GREGORIAN
LAST-MODIFIED:20270301T080000Z
NAME:Evening round\, east
X-WR-CALNAME:Evening round\, east
DESCRIPTION:Made from the care plan\; changes here are lost.
X-WR-CALDESC:Made from the care plan\; changes here are lost.
SOURCE;VALUE=URI:https://example.org/feeds/evening.ics
REFRESH-INTERVAL;VALUE=DURATION:PT6H
X-PUBLISHED-TTL:PT6H
COLOR:teal
X-APPLE-CALENDAR-COLOR:#008080
X-WR-TIMEZONE:Europe/London
BEGIN:VEVENT
UID:0dea55e5-f60b-5be2-929e-9225a90fc340
DTSTAMP:20270301T080000Z
LAST-MODIFIED:20270301T080000Z
SEQUENCE:0
DTSTART;VALUE=DATE:20270301
DTEND;VALUE=DATE:20270331
SUMMARY:Quarantine
TRANSP:TRANSPARENT
END:VEVENT
BEGIN:VEVENT
UID:889bb1be-8b06-5d97-83e0-b2d3d9f32923
DTSTAMP:20270301T080000Z
LAST-MODIFIED:20270301T080000Z
SEQUENCE:0
DTSTART;TZID=Europe/London:20270302T193000
DTEND;TZID=Europe/London:20270302T194000
RRULE:FREQ=WEEKLY;INTERVAL=2;BYDAY=TU,FR;WKST=MO;UNTIL=20270709T225959Z
EXDATE;TZID=Europe/London:20270305T193000
SUMMARY:Mist: 150 ml\, warm end
DESCRIPTION:Glass only\; not the hide.\nWhy: humidity
LOCATION:East room
CATEGORIES:care
CATEGORIES:water\, food
TRANSP:TRANSPARENT
BEGIN:VALARM
UID:f20b162c-1016-594a-8703-22503ac7196a
ACTION:DISPLAY
TRIGGER:-PT10M
DESCRIPTION:Mist: 150 ml\, warm end
END:VALARM
END:VEVENT
END:VCALENDAR
`
	if got := strings.ReplaceAll(got, "\r\n", "\n"); got != want {
		t.Errorf("wrote\n%s", got)
	}
}

// lineOf returns the first unfolded line of a feed that begins with prefix.
func lineOf(feed []byte, prefix string) string {
	for line := range strings.SplitSeq(unfold(string(feed)), "\r\n") {
		if strings.HasPrefix(line, prefix) {
			return line
		}
	}
	return ""
}

func TestTimes(t *testing.T) {
	day := civil.Must(2027, time.March, 28)
	for _, c := range []struct {
		source, zone string
		entry        Entry
		line, want   string
	}{
		{"RFC 5545, 3.6.1: DTEND later than DTSTART", "Europe/London", Entry{At: 480}, "DTEND", "DTEND;TZID=Europe/London:20270328T080100"},
		{"an entry ends on its day", "Europe/London", Entry{At: 1380, Minutes: 90}, "DTEND", "DTEND;TZID=Europe/London:20270328T235959"},
		{"the last minute too", "Europe/London", Entry{At: 1439, Minutes: 1}, "DTEND", "DTEND;TZID=Europe/London:20270328T235959"},
		{"RFC 5545, 3.6.1: a DATE end is the day after", "Europe/London", Entry{AllDay: true}, "DTEND", "DTEND;VALUE=DATE:20270329"},
		{"RFC 5545, 3.3.10: UNTIL of a DATE is a DATE", "Europe/London", Entry{AllDay: true, RRule: "FREQ=DAILY", HasUntil: true, Until: day + 1}, "RRULE", "RRULE:FREQ=DAILY;UNTIL=20270329"},
		{"UNTIL after the change: 23:59:59 BST", "Europe/London", Entry{At: 480, RRule: "FREQ=DAILY", HasUntil: true, Until: day}, "RRULE", "RRULE:FREQ=DAILY;UNTIL=20270328T225959Z"},
		{"UNTIL before it: 23:59:59 GMT", "Europe/London", Entry{At: 480, RRule: "FREQ=DAILY", HasUntil: true, Until: day - 1}, "RRULE", "RRULE:FREQ=DAILY;UNTIL=20270327T235959Z"},
		{"UNTIL west of Greenwich: 23:59:59 CDT", "America/Chicago", Entry{At: 480, RRule: "FREQ=DAILY", HasUntil: true, Until: day}, "RRULE", "RRULE:FREQ=DAILY;UNTIL=20270329T045959Z"},
		{"UNTIL without a rule says nothing", "Europe/London", Entry{At: 480, HasUntil: true, Until: day}, "RRULE", ""},
		{"a rule cannot begin a line of its own", "Europe/London", Entry{At: 480, RRule: "FREQ=DAILY\r\nX-A:b"}, "RRULE", "RRULE:FREQ=DAILYX-A:b"},
	} {
		c.entry.UID, c.entry.Date = UID("x"), day
		feed := Write(nil, sampleIn(t, c.zone, c.entry), nil, now, keepFrom, today)
		_, feed, _ = bytes.Cut(feed, []byte("BEGIN:VEVENT"))
		if got := lineOf(feed, c.line); got != c.want {
			t.Errorf("%s: wrote %q, want %q", c.source, got, c.want)
		}
	}
}

// TestEndInAGap: in Greenland clocks go from 23:00 to midnight on 27 March 2027
// (2024a of the tz database and later), which libical and ical.js would read as
// an end before the start.
func TestEndInAGap(t *testing.T) {
	e := Entry{UID: UID("x"), Date: civil.Must(2027, time.March, 27), At: 22*60 + 30, Minutes: 45}
	feed := Write(nil, sampleIn(t, "America/Nuuk", e), nil, now, keepFrom, today)
	if got := lineOf(feed, "DTEND"); got != "DTEND;TZID=America/Nuuk:20270327T225900" {
		t.Error(got)
	}
}

func TestInvalidValuesAreLeftOut(t *testing.T) {
	e := misting()
	e.Categories, e.Remind = []string{""}, 0
	f := sample(t, e)
	f.Source, f.Refresh = "https://example.org/\r\nSUMMARY:other", "P1H"
	feed := Write(nil, f, nil, now, keepFrom, today)
	for _, name := range []string{"SOURCE", "REFRESH-INTERVAL", "X-PUBLISHED-TTL", "CATEGORIES", "BEGIN:VALARM", "SUMMARY:other", "METHOD"} {
		if line := lineOf(feed, name); line != "" {
			t.Errorf("wrote %q", line)
		}
	}
}

func TestUID(t *testing.T) {
	// uuid.uuid5 of Python's standard library, given the namespace and
	// "8:burrow-a4:mist", "2:ab1:c".
	for want, parts := range map[string][]string{
		"889bb1be-8b06-5d97-83e0-b2d3d9f32923": {"burrow-a", "mist"},
		"34ee58ec-d152-5a47-92ef-aa3008685ab6": {"ab", "c"},
	} {
		if got := UID(parts...); got != want {
			t.Errorf("%q: %s, want %s", parts, got, want)
		}
	}
	if UID("a", "bc") == UID("ab", "c") || UID("a", "") == UID("a") {
		t.Error("different parts make the same UID")
	}
}

func TestOrderDoesNotMatter(t *testing.T) {
	a, b, c := misting(), quarantine(), misting()
	c.UID = UID("burrow-b", "mist")
	want := Write(nil, sample(t, a, b, c), nil, now, keepFrom, today)
	if got := Write(nil, sample(t, c, b, a), nil, now, keepFrom, today); string(got) != string(want) {
		t.Errorf("another order of entries, another feed:\n%s", got)
	}
	if got := Write([]byte("before"), sample(t, a, b, c), nil, now, keepFrom, today); string(got) != "before"+string(want) {
		t.Error("what stood in dst was not kept")
	}
}
