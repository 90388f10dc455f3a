package ical

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"vivary/internal/oracles"
	"vivary/schema/civil"
)

// series is an entry with the days on which it must happen, told a second time
// in plain Go.
type series struct {
	Entry
	on func(civil.Date) bool
}

// plan returns entries of every kind that the compiler emits, around both clock
// changes of a zone.
func plan(loc *time.Location) []series {
	first := civil.Must(2027, time.January, 1)
	days := func(dates ...civil.Date) func(civil.Date) bool {
		return func(d civil.Date) bool {
			for _, day := range dates {
				if d == day {
					return true
				}
			}
			return false
		}
	}
	const text = "Mist: 150 ml, warm end; \"glass\" \\ hide\n🦂 line two, long enough to be folded somewhere, äöü"
	all := []series{
		{Entry{UID: "daily", Date: first, At: 4 * 60, Minutes: 30, RRule: "FREQ=DAILY"},
			func(d civil.Date) bool { return d >= first }},
		{Entry{UID: "third", Date: first, At: 12*60 + 15, Minutes: 5, RRule: "FREQ=DAILY;INTERVAL=3", ExDates: []civil.Date{first + 84, first + 87}},
			func(d civil.Date) bool { return (d-first)%3 == 0 && d != first+84 && d != first+87 }},
		{Entry{UID: "fortnight", Date: first, At: 22*60 + 30, Minutes: 120, RRule: "FREQ=WEEKLY;INTERVAL=2;BYDAY=TU,FR;WKST=MO", Until: first + 308, HasUntil: true},
			// 1 January 2027 is a Friday; its week begins on Monday, four days before.
			func(d civil.Date) bool {
				w := d.Weekday()
				return d <= first+308 && (d-first+4)/7%2 == 0 && (w == time.Tuesday || w == time.Friday)
			}},
		{Entry{UID: "month-end", Date: first + 30, At: 6*60 + 59, Minutes: 1, RRule: "FREQ=MONTHLY;BYMONTHDAY=-1"},
			func(d civil.Date) bool { _, _, next := (d + 1).YMD(); return next == 1 }},
		{Entry{UID: "weekly-date", Date: first + 2, AllDay: true, Days: 1, RRule: "FREQ=WEEKLY;BYDAY=SU;WKST=MO", Until: first + 100, HasUntil: true, ExDates: []civil.Date{first + 9}},
			func(d civil.Date) bool { return d.Weekday() == time.Sunday && d <= first+100 && d != first+9 }},
		{Entry{UID: "window", Date: first + 80, AllDay: true, Days: 14}, days(first + 80)},
		{Entry{UID: "text", Date: first + 5, At: 600, Minutes: 10, Summary: text, Description: text, Location: text, Categories: []string{text}, Remind: 30}, days(first + 5)},
	}
	// Single entries on the days of a change and the days beside them.
	for d := first; d < first+365; d++ {
		_, before := d.At(0, loc).Zone()
		_, after := (d + 1).At(0, loc).Zone()
		if before == after {
			continue
		}
		for near := d - 1; near <= d+1; near++ {
			for _, at := range []civil.Clock{4 * 60, 12 * 60, 22*60 + 30} {
				uid := "single-" + near.String() + at.String()
				e := series{Entry{UID: uid, Date: near, At: at, Minutes: 20, Remind: 5}, days(near)}
				all = append(all, e)
			}
		}
	}
	for i := range all {
		if all[i].Summary == "" {
			all[i].Summary = all[i].UID
		}
	}
	return all
}

// expected lists the occurrences of the plan from from on and before to, with
// the time package for zones.
func expected(feed int, plan []series, loc *time.Location, from, to time.Time) []oracles.Occurrence {
	var want []oracles.Occurrence
	for _, s := range plan {
		for d := civil.FromTime(from) - 2; d < civil.FromTime(to)+2; d++ {
			if d < s.Date || !s.on(d) {
				continue
			}
			y, m, day := d.YMD()
			local := func(minute, second int) time.Time { return time.Date(y, m, day, 0, minute, second, 0, loc) }
			begin, end, form := local(int(s.At), 0), local(int(s.At)+s.Minutes, 0), "20060102T150405Z"
			if int(s.At)+s.Minutes >= 24*60 {
				end = local(24*60-1, 59)
			}
			if s.AllDay {
				begin = time.Date(y, m, day, 0, 0, 0, 0, time.UTC)
				end, form = begin.AddDate(0, 0, s.Days), "20060102"
			}
			if begin.Before(from) || !begin.Before(to) {
				continue
			}
			summary := strings.NewReplacer(`\`, `\\`, "\n", `\n`).Replace(s.Summary)
			want = append(want, oracles.Occurrence{Feed: feed, UID: s.UID, Start: begin.UTC().Format(form), End: end.UTC().Format(form), Summary: summary})
		}
	}
	oracles.Sort(want)
	return want
}

var (
	windowFrom = time.Date(2027, time.January, 1, 0, 0, 0, 0, time.UTC)
	windowTo   = time.Date(2028, time.April, 1, 0, 0, 0, 0, time.UTC)
)

// planned returns the feed of the plan in a zone and what is to come out of it.
func planned(t *testing.T, feed int, zone string) ([]byte, []oracles.Occurrence) {
	f := sampleIn(t, zone)
	all := plan(f.Location)
	for _, s := range all {
		f.Entries = append(f.Entries, s.Entry)
	}
	return Write(nil, f, nil, now, keepFrom, today), expected(feed, all, f.Location, windowFrom, windowTo)
}

// TestReadersAgree: three calendar readers that share no code list, for zones
// with every kind of clock change, the occurrences that were meant.
func TestReadersAgree(t *testing.T) {
	zones := []string{
		"Europe/London", "Europe/Dublin", "Europe/Berlin", "Africa/Cairo", "Asia/Jerusalem", "Asia/Beirut", "Asia/Kolkata", "Asia/Kathmandu",
		"Australia/Sydney", "Australia/Lord_Howe", "Pacific/Auckland", "Pacific/Chatham", "Pacific/Kiritimati",
		"America/Chicago", "America/Phoenix", "America/St_Johns", "America/Santiago", "America/Havana", "America/Nuuk", "Africa/Casablanca", "UTC",
	}
	feeds, want := make([][]byte, len(zones)), make([][]oracles.Occurrence, len(zones))
	for i, zone := range zones {
		feeds[i], want[i] = planned(t, i, zone)
	}
	for reader, answer := range oracles.Expand(t, feeds, windowFrom, windowTo) {
		for i, zone := range zones {
			if reason, refused := answer.Refused[i]; refused {
				t.Errorf("%s refuses %s: %s", reader, zone, reason)
			} else if diff := oracles.Differences(want[i], answer.Feed(i)); diff != "" {
				t.Errorf("%s in %s:\n%s", reader, zone, diff)
			}
		}
	}
}

// TestReadersCanDisagree spoils a feed in ways that TestReadersAgree must not
// miss.
func TestReadersCanDisagree(t *testing.T) {
	good, want := planned(t, 0, "Europe/London")
	begin, end := bytes.Index(good, []byte("BEGIN:VTIMEZONE")), bytes.Index(good, []byte("BEGIN:VEVENT"))
	for _, c := range []struct {
		name   string
		bad    []byte
		caught []string // the readers that notice
	}{
		{"wrong TZOFFSETTO", bytes.Replace(good, []byte("TZOFFSETTO:+0100"), []byte("TZOFFSETTO:+0200"), 1), []string{"libical", "ical.js"}},
		{"missing VTIMEZONE", append(bytes.Clone(good[:begin]), good[end:]...), []string{"libical", "ical.js"}},
		{"truncated", good[:len(good)/2], []string{"libical", "ical.js", "python-icalendar"}},
		{"one EXDATE lost", bytes.Replace(good, []byte("EXDATE"), []byte("X-DATE"), 1), []string{"libical", "ical.js", "python-icalendar"}},
	} {
		if bytes.Equal(c.bad, good) {
			t.Fatalf("%s: the feed is as before", c.name)
		}
		answers := oracles.Expand(t, [][]byte{c.bad}, windowFrom, windowTo)
		for _, reader := range c.caught {
			_, refused := answers[reader].Refused[0]
			if !refused && oracles.Differences(want, answers[reader].Feed(0)) == "" {
				t.Errorf("%s: %s does not notice", c.name, reader)
			}
		}
	}
}
