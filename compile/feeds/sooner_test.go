package feeds_test

import (
	"strings"
	"testing"
)

// TestSeriesBeginsSooner: meals that were to begin in two weeks and now begin in three
// days are in the calendar from then on, whatever was published. Young that moult before
// the last day of their sheet would starve else (Sarmento et al. 2008: from day 11).
func TestSeriesBeginsSooner(t *testing.T) {
	text := "collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\nround \"evening\" {\n  at = \"19:30\"\n}\ncalendar \"care\" {\n  entry = \"per care\"\n}\n" + sheet +
		box("ash", "  animals \"one\" {\n    count = 1\n    stage = \"juvenile\"\n  }\n  feeding \"one\" {\n    every      = \"3 days\"\n    from       = \"2027-03-02\"\n    per_animal = 1\n    prey       = \"cricket small\"\n  }\n")
	first := built(t, compiled(t, text, "", today), "care", nil)
	sooner := strings.Replace(text, "2027-03-02", "2027-02-18", 1)
	second := built(t, compiled(t, sooner, "", today), "care", remembered(t, first))
	for _, feed := range []struct {
		is   []byte
		from string
	}{{first, "20270302"}, {second, "20270218"}} {
		n := 0
		for _, e := range entries(t, feed.is) {
			if property(e, "RRULE") != "" && strings.HasPrefix(property(e, "SUMMARY"), "Feed") {
				n++
				if got := property(e, "DTSTART"); !strings.HasPrefix(got, feed.from) {
					t.Errorf("meals begin on %s, and should on %s", got, feed.from)
				}
			}
		}
		if n != 1 {
			t.Errorf("%d series of meals", n)
		}
	}
}
