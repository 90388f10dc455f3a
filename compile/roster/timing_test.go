package roster_test

import (
	"fmt"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/identity"
	"vivary/schema/civil"
)

// stands lists the days of an entry, from one to another.
func stands(t testing.TB, r *compile.Result, name, from, to string) string {
	t.Helper()
	return days(r, find(t, r, "ash", name), on(from), on(to)+1)
}

// TestWhen: the ways of saying how often, and the days that they mean.
func TestWhen(t *testing.T) {
	for _, c := range []struct{ when, from, to, want, words string }{
		{`every = "4 days"; from = "2027-07-02"`, "1 Jul", "11 Jul", "Fri 2 Jul, Tue 6 Jul, Sat 10 Jul", "every 4 days"},
		{`every = "2 weeks"; from = "2027-07-02"`, "1 Jul", "1 Aug", "Fri 2 Jul, Fri 16 Jul, Fri 30 Jul", "every 14 days"},
		{`every = "2 months"; from = "2027-07-05"`, "1 Jul", "10 Nov", "Mon 5 Jul, Sun 5 Sep, Fri 5 Nov", ""},
		{`every = "1 year"; from = "2020-08-05"`, "1 Jul", "31 Dec", "Thu 5 Aug", ""},
		{`on = ["mon", "thu"]`, "1 Jul", "12 Jul", "Thu 1 Jul, Mon 5 Jul, Thu 8 Jul, Mon 12 Jul", ""},
		{`on = ["mon"]; every = "2 weeks"; from = "2027-07-12"`, "1 Jul", "10 Aug", "Mon 12 Jul, Mon 26 Jul, Mon 9 Aug", ""},
		{`on = ["first tue"]`, "1 Jul", "31 Aug", "Tue 6 Jul, Tue 3 Aug", ""},
		{`on = ["15th", "last"]`, "1 Jul", "31 Aug", "Thu 15 Jul, Sat 31 Jul, Sun 15 Aug, Tue 31 Aug", ""},
		{`on = ["15th"]; every = "2 months"; from = "2027-07-01"`, "1 Jul", "30 Sep", "Thu 15 Jul, Wed 15 Sep", ""},
		{`on = ["15th"]; every = "1 year"; from = "2026-08-01"`, "1 May", "31 Dec", "Sun 15 Aug", ""},
		{`on = ["first tue"]; every = "2 months"; from = "2027-07-01"`, "1 Jul", "30 Sep", "Tue 6 Jul, Tue 7 Sep", ""},
		{`on = ["4 aug", "1 sep"]`, "1 Jul", "31 Dec", "Wed 4 Aug, Wed 1 Sep", ""},
		{`on = ["mon", "15th"]`, "10 Jul", "20 Jul", "Mon 12 Jul, Thu 15 Jul, Mon 19 Jul", ""},
		{`every = "day"; from = "2027-07-03"; until = "2027-07-05"`, "1 Jul", "10 Jul", "Sat 3 Jul, Sun 4 Jul, Mon 5 Jul", ""},
		{`on = ["mon"]; until = "2027-07-12"`, "1 Jul", "30 Jul", "Mon 5 Jul, Mon 12 Jul", ""},
		{`on = ["mon"]; from = "2027-07-12"`, "1 Jul", "20 Jul", "Mon 12 Jul, Mon 19 Jul", ""},
		{`after_last = "4 days"; from = "2027-07-02"`, "1 Jul", "8 Jul", "Fri 2 Jul, Tue 6 Jul", "4 days after it was last done"},
		{`after_last = "36 h"; from = "2027-07-02"`, "1 Jul", "4 Jul", "Fri 2 Jul, Sat 3 Jul, Sun 4 Jul", ""},
		{`cron = "0 12 1,15 * *"`, "1 Jul", "31 Jul", "Thu 1 Jul, Thu 15 Jul", ""},
	} {
		r := compiled(t, house(ash(`care "count" { `+c.when+` }`)), "", on("1 Jul"))
		if got := stands(t, r, "count", c.from, c.to); got != c.want {
			t.Errorf("%s: %s\nwant %s", c.when, got, c.want)
		}
		if got := find(t, r, "ash", "count").Words(); c.words != "" && got != c.words {
			t.Errorf("%s: %s", c.when, got)
		}
		if f := r.Roster.Findings; len(f) > 0 && f[0].Rule.ID != "window-days" {
			t.Errorf("%s: %s", c.when, f[0].Text)
		}
	}
}

// TestWordsOfAMeal: what goes with a meal, and what the log brought, say so.
func TestWordsOfAMeal(t *testing.T) {
	r := compiled(t, house(ash(`feeding "only" { on = ["mon", "first tue"]; per_animal = 1; prey = "cricket small"; gut_load = true }`)), logged("29 Jun ash moult"), on("1 Jul"))
	for name, want := range map[string]string{
		"leftovers only": "after each meal", "gut-load only": "before each meal", "moult/2027-06-29": "once, because of the log",
	} {
		if got := find(t, r, "ash", name).Words(); got != want {
			t.Errorf("%s: %s, want %s", name, got, want)
		}
	}
	if got := find(t, r, "ash", "feed only").Words(); strings.Count(got, " and ") != 1 || !strings.Contains(got, "Tue") {
		t.Errorf("meals: %s", got)
	}
}

// TestIntervalsOfMonths: an interval of months without a first day falls on one of the
// first 28 of a month, which every month has; forty boxes share these days and months
// among them.
func TestIntervalsOfMonths(t *testing.T) {
	var text strings.Builder
	for i := range 400 {
		text.WriteString(strings.Replace(ash(`care "count" { every = "2 months" }`), `"ash"`, fmt.Sprintf("\"box-%d\"", i), 1))
	}
	r := compiled(t, house(text.String()), "", on("1 Jul"))
	seen, months := map[int]int{}, map[int]int{}
	for e := range r.Roster.All() {
		i := e.Days.Next(r.Horizon.Today)
		_, m, n := r.Horizon.Date(i).YMD()
		seen[n]++
		months[int(m)%2]++
		k := e.Days.Next(i + 1)
		if _, m2, n2 := r.Horizon.Date(k).YMD(); n2 != n || (int(m2)-int(m)+12)%12 != 2 {
			t.Fatalf("from %s to %s", r.Horizon.Date(i), r.Horizon.Date(k))
		}
	}
	if len(seen) != 28 || seen[29] > 0 || months[0] < 150 || months[1] < 150 {
		t.Errorf("on %d days of the month, %v", len(seen), months)
	}
}

// TestPhase: what has no first day begins with the phase of its identity, hashed over
// its own length, or over four weeks where it goes by months.
func TestPhase(t *testing.T) {
	id := identity.Identity{Enclosure: "ash", Care: "count"}
	for when, length := range map[string]int{
		`every = "5 days"`: 5, `every = "3 weeks"`: 21, `after_last = "6 days"`: 6, `on = ["mon", "thu"]; every = "2 weeks"`: 14, `on = ["mon"]; every = "5 weeks"`: 35,
		`on = ["15th"]; every = "2 months"`: 28, `on = ["first tue"]; every = "3 months"`: 28,
	} {
		list := func(from string) string {
			r := compiled(t, house(ash(`care "count" { `+when+from+` }`)), "", on("1 Jul"))
			return days(r, find(t, r, "ash", "count"), r.Horizon.From, r.Horizon.Last())
		}
		if got, want := list(""), list("; from = \""+id.Phase(length).String()+"\""); got != want || got == "" {
			t.Errorf("%s: %s\nwant %s", when, got, want)
		}
	}
}

// TestHowOftenIsNotSaid: what cannot be understood is said, and brings nothing.
func TestHowOftenIsNotSaid(t *testing.T) {
	for when, want := range map[string]string{
		``:                                                           "no-timing: it is not said how often this is done",
		`every = "4 days"; on = ["mon"]`:                             "two-timings: it is said in more than one way how often this is done",
		`every = "day"; after_last = "1 day"`:                        "two-timings: it is said in more than one way how often this is done",
		`every = "day"; cron = "0 9 * * *"`:                          "two-timings: it is said in more than one way how often this is done",
		`after_last = "3 days"; on = ["mon"]`:                        "two-timings: it is said in more than one way how often this is done",
		`on = ["mon"]; every = "2 months"`:                           "two-timings: every 2 months does not go with these days",
		`on = ["15th"]; every = "2 weeks"`:                           "two-timings: every 2 weeks does not go with these days",
		`on = ["last"]; every = "2 weeks"`:                           "two-timings: every 2 weeks does not go with these days",
		`on = ["4 aug"]; every = "2 weeks"`:                          "two-timings: every 2 weeks does not go with these days",
		`cron = "0 3 * * *"`:                                         "cron-line: 03:00 lies between 00:00 and 03:59, where a clock change can leave a time out or repeat it and calendars disagree about the day",
		`cron = "0 4 * * *"`:                                         "",
		`every = "day"; window = "2 days"`:                           "",
		`every = "day"; window = "40 days"`:                          "window-days: a window of 40 days is taken as 32 days",
		`every = "day"; window = "36 h"`:                             "window-days: a window of 36 h is taken as 1 day",
		`every = "day"; window = "32 days"`:                          "",
		`on = ["mon"]; every = "1 week"`:                             "",
		`every = "day"; until = "2027-06-01"`:                        "", // it is over
		`every = "day"; from = "2029-06-01"`:                         "", // it is still to come
		`on = ["29 feb"]; from = "2029-01-01"; until = "2030-01-01"`: "never-happens: count does not come up on any day of the coming year",
		`on = ["29 feb"]; from = "2025-01-01"; until = "2026-01-01"`: "never-happens: count does not come up on any day of the coming year",
		`on = ["29 feb"]`:                                            "",
	} {
		r := compiled(t, house(ash(`care "count" { `+when+` }`)), "", on("1 Jul"))
		got := ""
		for _, f := range r.Roster.Findings {
			got += f.Rule.ID + ": " + f.Text
		}
		if got != want {
			t.Errorf("%s: %q\nwant %q", when, got, want)
		}
		n := 0
		for range r.Roster.All() {
			n++
		}
		refused := strings.HasPrefix(got, "no-") || strings.HasPrefix(got, "two-") || strings.HasPrefix(got, "cron-")
		if refused != (n == 0) {
			t.Errorf("%s: %d entries", when, n)
		}
	}
}

// TestMealsWithoutATiming: of meals it is said too, and nothing goes with them.
func TestMealsWithoutATiming(t *testing.T) {
	r := compiled(t, house(ash(`feeding "only" { every = "4 days"; on = ["mon"]; per_animal = 1; prey = "cricket small" }`)), "", on("1 Jul"))
	if len(r.Roster.Findings) != 1 || r.Roster.Findings[0].Rule.ID != "two-timings" || all(r) != "" {
		t.Errorf("%v, %d findings", all(r), len(r.Roster.Findings))
	}
}

// TestAWindowToWrite: what is to be written in place of a window that is not whole
// days, or too wide, is a window that is.
func TestAWindowToWrite(t *testing.T) {
	for window, want := range map[string]string{"36 h": "1 day", "40 days": "32 days", "12 h": "1 day", "60 h": "2 days"} {
		r := compiled(t, house(ash(`care "count" { every = "day"; window = "`+window+`" }`)), "", on("1 Jul"))
		if len(r.Roster.Findings) != 1 || r.Roster.Findings[0].Write != want {
			t.Errorf("%s: %v", window, r.Roster.Findings)
		}
	}
}

// TestClockChanges: in Nuuk the hour from 22:00 is left out on 27 March 2027, and the
// hour from 23:00 comes twice on 30 October. In London clocks change at night.
func TestClockChanges(t *testing.T) {
	for _, c := range []struct{ zone, at, want string }{
		{"America/Nuuk", "22:59", ""},
		{"America/Nuuk", "23:00", "23:00 comes twice on Sat 30 Oct 2027, when the clocks change; 23:00 does not exist on Sat 27 Mar 2027, when the clocks change"},
		{"America/Nuuk", "23:59", "23:59 comes twice on Sat 30 Oct 2027, when the clocks change; 23:59 does not exist on Sat 27 Mar 2027, when the clocks change"},
		{"Europe/London", "23:30", ""},
		{"UTC", "23:30", ""},
	} {
		text := strings.Replace(house("round \"evening\" {\n  at = \""+c.at+"\"\n}\n", water(`every = "day"`)), "Europe/London", c.zone, 1)
		var got []string
		for _, f := range compiled(t, text, "", day("2026-12-31")).Findings {
			if f.Rule.ID == "clock-change" {
				got = append(got, f.Text)
				if f.Write != "a time before 23:00" {
					t.Errorf("%s: %s", c.zone, f.Write)
				}
			}
		}
		if strings.Join(got, "; ") != c.want {
			t.Errorf("%s at %s: %q\nwant %q", c.zone, c.at, got, c.want)
		}
	}
}

// TestClockChangesOfADay: a change is found on the day of the build, and not the day
// after it; and none that lies behind what is looked at.
func TestClockChangesOfADay(t *testing.T) {
	text := strings.Replace(house("round \"evening\" {\n  at = \"23:30\"\n}\n", water(`every = "day"`)), "Europe/London", "America/Nuuk", 1)
	for at, want := range map[civil.Date]int{on("27 Mar"): 3, on("28 Mar"): 2, on("30 Oct"): 3, on("31 Oct"): 2} {
		n := 0
		for _, f := range compiled(t, text, "", at).Findings {
			if f.Rule.ID == "clock-change" {
				n++
			}
		}
		if n != want {
			t.Errorf("built on %s: %d changes, want %d", at, n, want)
		}
	}
}
