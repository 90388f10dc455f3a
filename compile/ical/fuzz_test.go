package ical

import (
	"bytes"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"vivary/schema/civil"
)

// FuzzWrite writes any entry, reads it with golang-ical and renders it again.
func FuzzWrite(f *testing.F) {
	f.Add("Mist", "150 ml\n\\", "East, room", "https://example.org/", "FREQ=DAILY", "care", 19*60+30, 10, 5, false)
	f.Add(strings.Repeat("🦂", 30), strings.Repeat(`\n`, 90), "\x00\xff", "x:\r\nUID:1", "\r\n", "", 1439, -1, 0, false)
	f.Add("END:VEVENT", "\r\nEND:VCALENDAR\r\n", " ", "", "", "\u2028", -5, 1<<40, 1<<40, true)
	f.Fuzz(func(t *testing.T, summary, description, location, url, rule, category string, at, length, remind int, allDay bool) {
		e := Entry{
			UID: UID(summary), Date: today, At: civil.Clock(uint(at) % 1440), Minutes: length, Days: length % 1000, AllDay: allDay, RRule: rule,
			Summary: summary, Description: description, Location: location, Categories: []string{category}, Remind: remind,
		}
		feed := sample(t, e, quarantine())
		feed.Name, feed.Description, feed.Source = summary, description, url
		text := Write(nil, feed, nil, now, keepFrom, today)
		// Only a run of blanks as long as a line may leave a line of blanks.
		if !strings.Contains(strings.ReplaceAll(summary+description+location+category+rule, "\t", " "), strings.Repeat(" ", 60)) && utf8.ValidString(summary) {
			checkLines(t, string(text))
		}
		m, err := Remember(text)
		if err != nil {
			t.Fatal(err)
		}
		if again := Write(nil, feed, m, now.Add(time.Hour), keepFrom, today); !bytes.Equal(again, text) {
			t.Errorf("from\n%s\nto\n%s", text, again)
		}
	})
}

// FuzzRemember: no feed breaks it, and what it takes it gives back unchanged.
func FuzzRemember(f *testing.F) {
	text := Write(nil, sample(f, misting(), quarantine()), nil, now, keepFrom, today)
	f.Add(text)
	f.Add([]byte(strings.ReplaceAll(string(text), "SUMMARY:", "SUMMARY;X-A=\"^n^'^^,;\\\\\\\\\",b:")))
	f.Add([]byte("BEGIN:VCALENDAR\r\nPRODID:" + prodID + "\r\nEND:VCALENDAR\r\n"))
	f.Fuzz(func(t *testing.T, feed []byte) {
		m, err := Remember(feed)
		if err != nil {
			return
		}
		once := Write(nil, &Feed{Zone: "UTC"}, m, now, 0, 1<<30)
		m, err = Remember(once)
		if err != nil {
			t.Fatalf("own feed refused: %v\n%s", err, once)
		}
		if twice := Write(nil, &Feed{Zone: "UTC"}, m, now, 0, 1<<30); !bytes.Equal(once, twice) {
			t.Errorf("from\n%s\nto\n%s", once, twice)
		}
	})
}
