package ical

import (
	"bytes"
	"strings"
	"testing"
)

// TestSourced: a feed says one address as its own, or none, and all else keeps its bytes.
func TestSourced(t *testing.T) {
	f := sample(t, misting(), quarantine())
	f.Entries[0].Summary = "SOURCE;VALUE=URI:of a text"
	const own = "https://care.example/c/AAAAAAAAAAAAAAAAAAAAAA/evening-round-of-the-east.ics"
	write := func(source string) []byte {
		f.Source = source
		return Write(nil, f, nil, now, keepFrom, today)
	}
	for _, before := range []string{"", "https://example.org/feeds/evening.ics", "https://example.org/" + strings.Repeat("folded", 20) + "/evening.ics"} {
		feed := write(before)
		kept := bytes.Clone(feed)
		for _, c := range []struct{ set, want string }{{own, own}, {"", ""}, {"no address\r\nX:1", ""}} {
			got := Sourced(feed, c.set)
			checkLines(t, string(got))
			if !bytes.Equal(got, write(c.want)) {
				t.Errorf("%q for %q:\n%s", c.set, before, got[:600])
			}
			if !bytes.Equal(Sourced(got, before), feed) {
				t.Errorf("%q for %q cannot be taken back", c.set, before)
			}
		}
		if !bytes.Equal(feed, kept) {
			t.Error("the feed itself was changed")
		}
	}
	f.Refresh = "" // the zone comes next then
	if !bytes.Contains(Sourced(write(""), "https://care.example/a.ics"), []byte("\r\nSOURCE;VALUE=URI:https://care.example/a.ics\r\n")) {
		t.Error("a feed that does not say how often it is fetched has no address")
	}
	for _, none := range []string{"", "BEGIN:VCALENDAR", "<html>SOURCE:\n"} {
		if got := Sourced([]byte(none), own); string(got) != none {
			t.Errorf("%q became %q", none, got)
		}
	}
}
