package feeds_test

import (
	"strings"
	"testing"
)

// TestKilledMealsAreSaid: in an endless entry of live meals those on which prey is
// killed, since a companion has just moulted, are left out and stand as entries of
// their own, which say so.
func TestKilledMealsAreSaid(t *testing.T) {
	const animals = "  animals \"one\" {\n    count = 1\n    stage = \"juvenile\"\n  }\n  animals \"two\" {\n    count = 1\n    stage = \"juvenile\"\n  }\n"
	text := "collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\nround \"evening\" {\n  at = \"19:30\"\n}\ncalendar \"care\" {\n  entry = \"per care\"\n}\n" + sheet +
		box("ash", animals+"  feeding \"one\" {\n    every      = \"2 days\"\n    from       = \"2027-01-01\"\n    per_animal = 1\n    prey       = \"cricket small\"\n  }\n")
	day := today.String()
	r := compiled(t, text, day+" ash two moult\n", today)
	var alone []string
	series := ""
	for _, e := range entries(t, built(t, r, "care", nil)) {
		switch summary := property(e, "SUMMARY"); {
		case property(e, "RRULE") != "" && strings.HasPrefix(summary, "Feed"):
			series = e
		case strings.HasPrefix(summary, "Feed 1 killed small cricket"):
			alone = append(alone, property(e, "DTSTART")[:8])
		case strings.HasPrefix(summary, "Feed"):
			t.Errorf("%s: %s", property(e, "DTSTART"), summary)
		}
	}
	if len(alone) < 3 {
		t.Errorf("killed prey on %v", alone)
	}
	for _, d := range alone {
		if !strings.Contains(series, d) {
			t.Errorf("the series does not leave out %s:\n%s", d, series)
		}
	}
}
