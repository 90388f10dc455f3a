package feeds_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"vivary/schema/civil"
)

// zonePart returns the VTIMEZONE of a feed.
func zonePart(t testing.TB, feed []byte) string {
	t.Helper()
	_, rest, ok := bytes.Cut(feed, []byte("BEGIN:VTIMEZONE"))
	zone, _, ok2 := bytes.Cut(rest, []byte("END:VTIMEZONE"))
	if !ok || !ok2 {
		t.Fatal("no VTIMEZONE")
	}
	return string(zone)
}

// TestZoneOfACalendar: the time zone in a feed is the same on each day of a year,
// begins before the oldest start, and reaches ten years on where it has no rule.
func TestZoneOfACalendar(t *testing.T) {
	for _, name := range []string{"Europe/London", "Africa/Casablanca", "America/Santiago", "Asia/Jerusalem", "Asia/Gaza"} {
		var zones []string
		for _, on := range []civil.Date{civil.Must(2027, 1, 1), civil.Must(2027, 3, 29), civil.Must(2027, 11, 30), civil.Must(2027, 12, 31)} {
			zones = append(zones, zonePart(t, built(t, compiled(t, everyKind(name), "", on), "care", nil)))
			if zones[0] != zones[len(zones)-1] {
				t.Errorf("%s: on %s the zone is another than on 1 January:\n%s", name, on, zones[len(zones)-1])
			}
		}
		if !strings.Contains(zones[0], "RRULE") || name == "Asia/Jerusalem" {
			for year := 2026; year <= 2037; year++ {
				if !strings.Contains(zones[0], fmt.Sprintf("DTSTART:%d", year)) {
					t.Errorf("%s says nothing of %d", name, year)
				}
			}
		}
		first := compiled(t, everyKind(name), "", civil.Must(2027, 1, 10))
		last := remembered(t, built(t, first, "care", nil))
		later := built(t, compiled(t, everyKind(name), "", civil.Must(2032, 1, 10)), "care", last)
		zone := zonePart(t, later)
		if begins(zone, "DTSTART:") > begins(string(later), "DTSTART;TZID="+name+":") {
			t.Errorf("%s: the zone begins after the oldest entry:\n%s", name, zone)
		} else if n := strings.Count(zone, "\n"); n >= 180 {
			t.Errorf("%s: %d lines", name, n)
		}
	}
}

// begins returns the first of the times in a text that have something before them.
func begins(text, before string) string {
	first := "none"
	for _, rest := range strings.Split(text, "\r\n"+before)[1:] {
		first = min(first, rest[:len("20270101T000000")])
	}
	return first
}

// TestNothingBeginsBeyondTheZone: a care of 2090 is not in a calendar whose time zone
// ends in 2037, where it would be shown an hour wrong; one of 2036 is.
func TestNothingBeginsBeyondTheZone(t *testing.T) {
	for _, zone := range []string{"Africa/Casablanca", "Europe/London"} {
		plan := strings.NewReplacer(`  kinds      = ["gut-load", "mist", "weigh", "feed", "leftovers"]`, "", `  care "weigh" {`, `  care "gut-load" {
    every  = "1 year"
    from   = "2036-07-01"
    at     = "12:00"
    keeper = "lead"
  }
  care "gut-load-later" {
    kind   = "gut-load"
    every  = "1 year"
    from   = "2090-07-01"
    at     = "12:00"
    keeper = "lead"
  }
  care "weigh" {`, `care "gut-load" {`, `care "gut-load-now" {
    kind   = "gut-load"`).Replace(yearsPlan(zone))
		feed := built(t, compiled(t, plan, "", civil.Must(2027, 1, 10)), "care", nil)
		latest := ""
		for _, e := range entries(t, feed) {
			latest = max(latest, property(e, "DTSTART"))
		}
		if latest != "20360701T120000" {
			t.Errorf("%s: the latest entry begins on %s", zone, latest)
		}
	}
}
