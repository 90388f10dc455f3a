package ical

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"vivary/internal/oracles"
	"vivary/schema/civil"
)

// unseen are texts of which nothing shows once they are written.
var unseen = []string{"", " ", "\t \t", "\x00\x01\x7f", "\u0085\u2028", "\n\n", "\u00a0\u200b", "\r"}

// TestNothingIsWrittenEmpty: where a text shows as nothing its property is left out, and
// a title is what the entry is about. libical takes what has no value out with an error,
// and other readers show a line without words.
func TestNothingIsWrittenEmpty(t *testing.T) {
	var feeds [][]byte
	var want []string
	for _, text := range unseen {
		for _, c := range []struct {
			categories []string
			title      string
		}{{nil, "Care"}, {[]string{text}, "Care"}, {[]string{text, "feed"}, "feed"}} {
			e := misting()
			e.RRule, e.ExDates = "", nil
			e.Summary, e.Description, e.Location, e.Categories = text, text, text, c.categories
			f := sample(t, e)
			f.Name, f.Description, f.Color, f.Hex = text, text, text, text
			feed := Write(nil, f, nil, now, keepFrom, today)
			for line := range strings.SplitSeq(unfold(string(feed)), "\r\n") {
				if name, value, _ := strings.Cut(line, ":"); line != "" && strings.TrimSpace(value) == "" {
					t.Errorf("%q: %s has no value", text, name)
				}
			}
			if n := strings.Count(string(feed), "DESCRIPTION:"+c.title+"\r\n"); n != 1 {
				t.Errorf("%q: %d reminders say %q", text, n, c.title)
			}
			feeds, want = append(feeds, feed), append(want, c.title)
		}
	}
	from := civil.Must(2027, time.March, 1).At(0, time.UTC)
	for reader, answer := range oracles.Expand(t, feeds, from, from.AddDate(0, 0, 3)) {
		for i, title := range want {
			if reason, refused := answer.Refused[i]; refused {
				t.Errorf("%s refuses feed %d: %s", reader, i, reason)
			} else if got := answer.Feed(i); len(got) != 1 || got[0].Summary != title {
				t.Errorf("%s reads feed %d as %v, want one %q", reader, i, got, title)
			}
		}
	}
}

// TestLimitsOfARevision: at the greatest INTEGER (RFC 5545, 3.3.8) SEQUENCE stays, and
// at the end of the year 9999 the time of a change does, since a year has four digits. What
// is written can be read back, and what did not change keeps its bytes.
func TestLimitsOfARevision(t *testing.T) {
	for _, c := range []struct{ sequence, at, wantSequence, wantAt string }{
		{"2147483646", "20270301T080000Z", "2147483647", "20270301T080001Z"},
		{"2147483647", "99991231T235958Z", "2147483647", "99991231T235959Z"},
		{"2147483647", "99991231T235959Z", "2147483647", "99991231T235959Z"},
		{"9000000000", "20270301T080000Z", "2147483647", "20270301T080001Z"},
	} {
		f := sample(t, misting())
		last := string(Write(nil, f, nil, now, keepFrom, today))
		last = strings.ReplaceAll(last, "SEQUENCE:0", "SEQUENCE:"+c.sequence)
		head, events, _ := strings.Cut(last, "BEGIN:VEVENT")
		last = head + "BEGIN:VEVENT" + strings.ReplaceAll(events, "20270301T080000Z", c.at)
		m, err := Remember([]byte(last))
		if err != nil {
			t.Fatal(err)
		}
		if same := Write(nil, f, m, now, keepFrom, today); len(c.sequence) == len(c.wantSequence) && c.sequence < "2147483648" && string(same) != last {
			t.Errorf("%+v: nothing changed, and the feed did:\n%s", c, same)
		}
		f.Entries[0].Summary = "Mist"
		next := Write(nil, f, m, now, keepFrom, today)
		for name, want := range map[string]string{"SEQUENCE:": c.wantSequence, "DTSTAMP:": c.wantAt, "LAST-MODIFIED:": c.wantAt} {
			if got := lineOf(next[bytes.Index(next, []byte("BEGIN:VEVENT")):], name); got != name+want {
				t.Errorf("%+v: wrote %s, want %s", c, got, want)
			}
		}
		if _, err := Remember(next); err != nil {
			t.Errorf("%+v: %v", c, err)
		}
	}
	// A clock that is wrong by millennia.
	late := Write(nil, sample(t, misting()), nil, time.Date(12027, 1, 1, 0, 0, 0, 0, time.UTC), keepFrom, today)
	if !bytes.Contains(late, []byte("\r\nDTSTAMP:99991231T235959Z\r\n")) {
		t.Error(lineOf(late, "DTSTAMP"))
	}
}
