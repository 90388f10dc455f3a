package ical

import (
	"bytes"
	"slices"
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"

	"vivary/schema/civil"
)

// remember writes f as a first feed and reads it back.
func remember(t *testing.T, f *Feed) ([]byte, *Memory) {
	t.Helper()
	feed := Write(nil, f, nil, now, keepFrom, today)
	m, err := Remember(feed)
	if err != nil {
		t.Fatal(err)
	}
	return feed, m
}

// TestLibraryReadsEveryText: what the library takes out of the feed is what was
// put in.
func TestLibraryReadsEveryText(t *testing.T) {
	for _, text := range []string{"plain", `back\slash \n \, \\`, "a,b;c:d\"e", "line\nline\n", strings.Repeat("überall 🦂 ", 40), strings.Repeat(`\`, 151), "  blanks  "} {
		e := misting()
		e.Summary, e.Description, e.Location, e.Categories = text, text, text, []string{text, "other"}
		cal, err := ics.ParseCalendar(bytes.NewReader(Write(nil, sample(t, e), nil, now, keepFrom, today)))
		if err != nil {
			t.Fatal(err)
		}
		event := cal.Events()[0]
		for _, name := range []ics.ComponentProperty{ics.ComponentPropertySummary, ics.ComponentPropertyDescription, ics.ComponentPropertyLocation, ics.ComponentPropertyCategories} {
			if got := event.GetProperty(name).Value; got != text {
				t.Errorf("%s: %q was read as %q", name, text, got)
			}
		}
	}
}

// TestUnchanged: a later build of the same entries is the same feed, also after
// another program folded its lines anew and dropped the CRs.
func TestUnchanged(t *testing.T) {
	f := sample(t, misting(), quarantine())
	feed, m := remember(t, f)
	for i, ev := range m.events {
		if !bytes.Contains(feed, ev.bytes) {
			t.Errorf("entry %d is not rendered as it was written:\n%s", i, ev.bytes)
		}
	}
	later := now.AddDate(0, 0, 5)
	if got := Write(nil, f, m, later, keepFrom, today+5); !bytes.Equal(got, feed) {
		t.Errorf("the feed changed:\n%s", got)
	}
	unfolded := strings.ReplaceAll(unfold(string(feed)), "\r\n", "\n")
	m, err := Remember([]byte(unfolded))
	if err != nil {
		t.Fatal(err)
	}
	want := bytes.Replace(feed, []byte("LAST-MODIFIED:"+stamp(now)), []byte("LAST-MODIFIED:"+stamp(later)), 1) // of the calendar
	if got := Write(nil, f, m, later, keepFrom, today+5); !bytes.Equal(got, want) {
		t.Errorf("the feed changed after unfolding:\n%s", got)
	}
}

// TestEnded: the last day that a rule had is read back as it was written, in whatever
// zone, of folded lines too; what never ends, a single entry and an unknown one have none.
func TestEnded(t *testing.T) {
	for _, name := range []string{"Europe/London", "America/Los_Angeles", "Pacific/Kiritimati", "Etc/UTC"} {
		for _, days := range []string{"TU,FR", "MO,TU,WE,TH,FR,SA,SU"} {
			timed, whole := misting(), misting()
			timed.RRule = "FREQ=WEEKLY;INTERVAL=2;BYDAY=" + days + ";WKST=MO"
			whole.UID, whole.AllDay, whole.Remind = UID("all day"), true, 0
			endless := misting()
			endless.UID, endless.HasUntil = UID("endless"), false
			f := sampleIn(t, name, timed, whole, endless, quarantine())
			_, m := remember(t, f)
			for uid, want := range map[string]bool{timed.UID: true, whole.UID: true, endless.UID: false, quarantine().UID: false, "unknown": false} {
				if day, ok := m.Ended(uid, f.Location); ok != want || ok && day != timed.Until {
					t.Errorf("%s, %s: ended %s, %v", name, uid, day, ok)
				}
			}
		}
	}
	if _, ok := (*Memory)(nil).Ended("any", time.UTC); ok {
		t.Error("nothing is remembered, and it ended")
	}
}

// TestChanged changes one field at a time: that entry is revised, the other not.
func TestChanged(t *testing.T) {
	later := now.Add(time.Hour)
	for name, change := range map[string]func(*Entry){
		"date": func(e *Entry) { e.Date++ }, "time": func(e *Entry) { e.At++ }, "all-day": func(e *Entry) { e.AllDay = true },
		"length": func(e *Entry) { e.Minutes++ }, "rule": func(e *Entry) { e.RRule = "FREQ=DAILY" }, "until": func(e *Entry) { e.Until++ },
		"exdates": func(e *Entry) { e.ExDates = nil }, "summary": func(e *Entry) { e.Summary += "!" }, "description": func(e *Entry) { e.Description = "" },
		"location": func(e *Entry) { e.Location = "West room" }, "categories": func(e *Entry) { e.Categories[1] = "food" },
		"reminder": func(e *Entry) { e.Remind = 5 },
	} {
		f := sample(t, misting(), quarantine())
		_, m := remember(t, f)
		change(&f.Entries[0])
		feed := Write(nil, f, m, later, keepFrom, today)
		next, err := Remember(feed)
		if err != nil {
			t.Fatal(err)
		}
		changed, other := next.events[next.byUID[f.Entries[0].UID]], next.events[next.byUID[f.Entries[1].UID]]
		if changed.sequence != 1 || changed.at != "20270301T090000Z" || !bytes.Contains(changed.bytes, []byte("DTSTAMP:20270301T090000Z\r\n")) {
			t.Errorf("%s: SEQUENCE %d, LAST-MODIFIED %s", name, changed.sequence, changed.at)
		}
		if other.sequence != 0 || other.at != "20270301T080000Z" {
			t.Errorf("%s: the other entry was revised too", name)
		}
		if again := Write(nil, f, next, later.Add(time.Hour), keepFrom, today); !bytes.Equal(again, feed) {
			t.Errorf("%s: changes once more", name)
		}
	}
}

// TestClockBehind: two builds in a second, or a clock that was put back, still
// give a later LAST-MODIFIED.
func TestClockBehind(t *testing.T) {
	for _, then := range []time.Time{now, now.AddDate(-1, 0, 0)} {
		f := sample(t, quarantine())
		_, m := remember(t, f)
		f.Entries[0].Summary = "Quarantine, tub 4"
		feed := Write(nil, f, m, then, keepFrom, today)
		if got := lineOf(feed[bytes.Index(feed, []byte("BEGIN:VEVENT")):], "LAST-MODIFIED"); got != "LAST-MODIFIED:20270301T080001Z" {
			t.Errorf("built at %s: %s", then, got)
		}
		if got := lineOf(feed, "LAST-MODIFIED"); got != "LAST-MODIFIED:"+stamp(then) {
			t.Errorf("built at %s: the calendar has %s", then, got)
		}
		// A clock that was ahead is known to have been wrong from then on, though nothing else changes.
		if m, err := Remember(feed); err != nil {
			t.Error(err)
		} else if again := Write(nil, f, m, now.AddDate(-2, 0, 0), keepFrom, today); lineOf(again, "LAST-MODIFIED") != "LAST-MODIFIED:"+stamp(now.AddDate(-2, 0, 0)) {
			t.Errorf("built two years before: %s", lineOf(again, "LAST-MODIFIED"))
		} else if again := Write(nil, f, m, then.Add(-time.Hour), keepFrom, today); !bytes.Equal(again, feed) {
			t.Error("an hour is no wrong clock")
		}
	}
}

func TestKept(t *testing.T) {
	at := func(d civil.Date) Entry {
		return Entry{UID: UID(d.String()), Date: d, At: 1170, Minutes: 20, Summary: d.String()}
	}
	series := misting()
	series.Date = today - 10
	running := Entry{UID: UID("running"), Date: today - 3, AllDay: true, Days: 4, Summary: "ends today"}
	over := Entry{UID: UID("over"), Date: today - 3, AllDay: true, Days: 3, Summary: "ended yesterday"}
	old, m := remember(t, sample(t, at(keepFrom-1), at(keepFrom), at(today-1), at(today), at(today+1), series, running, over))

	feed := Write(nil, sample(t), m, now, keepFrom, today)
	next, err := Remember(feed)
	if err != nil {
		t.Fatal(err)
	}
	var kept []string
	for _, ev := range next.events {
		kept = append(kept, ev.uid)
		if ev.uid == series.UID {
			// misting is every second Tuesday and Friday, at 19:30 of London in winter.
			if text := string(ev.unfolded()); ev.sequence != 1 || !strings.Contains(text, ";WKST=MO;UNTIL="+(today-1).At(0, time.UTC).Format("20060102")+"T235959Z\r\n") || strings.Count(text, "RRULE") != 1 {
				t.Errorf("the series has not ended yesterday, by one change:\n%s", text)
			}
			continue
		}
		if !bytes.Contains(old, ev.bytes) {
			t.Errorf("not as it was:\n%s", ev.bytes)
		}
	}
	if want := []string{UID(keepFrom.String()), series.UID, UID("over"), UID((today - 1).String())}; !slices.Equal(kept, want) {
		t.Errorf("kept\n%s", feed)
	}
	if bytes.Count(feed, []byte("BEGIN:VTIMEZONE")) != 1 {
		t.Errorf("not one VTIMEZONE for one zone:\n%s", feed)
	}
	if again := Write(nil, sample(t), next, now, keepFrom, today); !bytes.Equal(again, feed) {
		t.Error("kept entries change from build to build")
	}
}

// TestKeptZone: entries kept over a move to another zone need theirs.
func TestKeptZone(t *testing.T) {
	past := Entry{UID: UID("past"), Date: today - 1, At: 480, Minutes: 20, Summary: "past"}
	londons := sample(t, past)
	_, m := remember(t, londons)
	moved := sampleIn(t, "America/Chicago", misting())
	feed := Write(nil, moved, m, now, keepFrom, today)
	for _, zone := range [][]byte{londons.Timezone, moved.Timezone} {
		if bytes.Count(feed, zone) != 1 {
			t.Errorf("the zones of the feed are not both in it once:\n%s", feed)
		}
	}
}

// TestEveryTruncationIsRefused cuts the feed after each octet.
func TestEveryTruncationIsRefused(t *testing.T) {
	feed, _ := remember(t, sample(t, misting(), quarantine()))
	for n := range len(feed) {
		if _, err := Remember(feed[:n]); err == nil {
			t.Fatalf("accepted after %d of %d octets, up to %q", n, len(feed), feed[max(0, n-20):n])
		}
	}
}

func TestRefused(t *testing.T) {
	feed, _ := remember(t, sample(t, quarantine()))
	event := string(feed[bytes.Index(feed, []byte("BEGIN:VEVENT")):bytes.Index(feed, []byte("END:VCALENDAR"))])
	for _, c := range []struct{ why, old, new string }{
		{"not a calendar: its first line", "BEGIN:VCALENDAR", "<!doctype html>\r\nBEGIN:VCALENDAR"},
		{"not a calendar: its first line", "BEGIN:VCALENDAR", "\ufeffBEGIN:VCALENDAR"},
		{"another program", prodID, "-//other//EN"},
		{"goes on after END:VCALENDAR", "END:VCALENDAR\r\n", "END:VCALENDAR\r\nBEGIN:VCALENDAR\r\n"},
		{"END:VEVENT without its BEGIN", "BEGIN:VEVENT", "X-BEGIN:VEVENT"},
		{"cannot be read", "SUMMARY:Quarantine", "SUMMARY"},
		{"without UID", "\r\nUID:" + UID("tub-4", "quarantine"), ""},
		{"two entries with UID", "BEGIN:VEVENT", event + "BEGIN:VEVENT"},
		{"no usable SEQUENCE", "SEQUENCE:0\r\n", ""},
		{"no usable SEQUENCE", "SEQUENCE:0", "SEQUENCE:-1"},
		{"no usable LAST-MODIFIED", "LAST-MODIFIED:20270301T080000Z\r\nSEQ", "SEQ"},
		{"no usable DTSTART", "DTSTART;VALUE=DATE:20270301", "DTSTART;VALUE=DATE:20270230"},
		{"no usable DTSTART", "DTSTART;VALUE=DATE:20270301", "DTSTART:20270301T2500"},
		{"no usable DTEND", "DTEND;VALUE=DATE:", "DTEND;VALUE=DATE:2"},
	} {
		bad := strings.Replace(string(feed), c.old, c.new, 1)
		if _, err := Remember([]byte(bad)); err == nil || !strings.Contains(err.Error(), c.why) {
			t.Errorf("%q for %q: want an error with %q, got %v", c.new, c.old, c.why, err)
		}
	}
}
