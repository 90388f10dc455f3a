package main

import (
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/spf13/afero"
)

// The calendar of a stand-in holds the days of standing in and no other but the eve, on which it says
// so, ends with handing back, and shares no entry with a keeper's own.
func TestStandInsCalendarIsTheWindow(t *testing.T) {
	disk := quillmoor(t, "2027-07-08")
	day := time.Date(2027, 7, 8, 12, 0, 0, 0, time.UTC)
	if s, out, e := at(disk, day, "build", "q", "--out", "feeds"); s != fine {
		t.Fatal(s, out, e)
	}
	events := func(name string) []*ics.VEvent {
		text, err := afero.ReadFile(disk, "feeds/"+name+".ics")
		if err != nil {
			t.Fatal(err)
		}
		c, err := ics.ParseCalendar(strings.NewReader(string(text)))
		if err != nil {
			t.Fatal(err)
		}
		return c.Events()
	}
	// The lead keeper is away from 10 July, and back on the 24th.
	first, last := "20270710", "20270724"
	var latest string
	back := ""
	all := events("relief")
	for _, e := range all {
		on := e.GetProperty(ics.ComponentPropertyDtStart).Value[:8]
		says := e.GetProperty(ics.ComponentPropertySummary).Value
		if eve := on == "20270709" && says == "You stand in for Lead keeper from Sat 10 Jul"; (on < first || on > last) && !eve {
			t.Errorf("%s is outside of the window: %s", on, says)
		}
		if on > latest {
			latest, back = on, ""
		}
		if on == latest {
			for _, p := range []ics.ComponentProperty{ics.ComponentPropertySummary, ics.ComponentPropertyDescription} {
				if x := e.GetProperty(p); x != nil {
					back += x.Value + "\n"
				}
			}
		}
	}
	if len(all) < 5 || latest != last || !strings.Contains(back, "does the rounds again from today") {
		t.Errorf("%d entries, the last on %s:\n%s", len(all), latest, back)
	}
	seen := map[string]bool{}
	for _, e := range all {
		seen[e.Id()] = true
	}
	for _, e := range events("morning") {
		if seen[e.Id()] {
			t.Errorf("%s stands in the keeper's calendar too", e.Id())
		}
	}
}
