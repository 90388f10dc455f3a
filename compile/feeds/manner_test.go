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
		if begins := property(series, "DTSTART")[:8]; d >= begins && !strings.Contains(series, d) {
			t.Errorf("the series does not leave out %s:\n%s", d, series)
		}
	}
}

// TestKilledFirstMealIsSaid: the first meal after a moult is a task of the log; while a
// companion is soft its prey is killed too, and the entry says so.
func TestKilledFirstMealIsSaid(t *testing.T) {
	const animals = "  animals \"one\" {\n    count = 1\n    stage = \"juvenile\"\n  }\n  animals \"two\" {\n    count = 1\n    stage = \"juvenile\"\n  }\n"
	text := "collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\nround \"evening\" {\n  at = \"19:30\"\n}\ncalendar \"care\" {\n  entry = \"per care\"\n}\n" + sheet + box("ash", animals)
	for _, c := range []struct {
		log    string
		killed bool
	}{
		{(today - 5).String() + " ash one moult\n" + today.String() + " ash two moult\n", true},
		{(today - 5).String() + " ash one moult\n", false},
	} {
		r := compiled(t, text, c.log, today)
		n := 0
		for _, e := range entries(t, built(t, r, "care", nil)) {
			if s := property(e, "SUMMARY"); strings.HasPrefix(s, "First meal after the moult") && strings.HasSuffix(s, "one") {
				n++
				if got := strings.Contains(s, "killed"); got != c.killed {
					t.Errorf("after %q: %s", c.log, s)
				}
			}
		}
		if n != 1 {
			t.Errorf("after %q %d first meals of one, want 1", c.log, n)
		}
	}
}
