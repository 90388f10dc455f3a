package feedoracle

import (
	"strings"
	"testing"

	"vivary/schema/civil"
)

// feed is a calendar with a daily entry that leaves a day out, over a clock change,
// and one that ends.
const feed = `BEGIN:VCALENDAR
VERSION:2.0
PRODID:-//fixture//fixture//EN
BEGIN:VEVENT
UID:daily
DTSTAMP:20270301T000000Z
DTSTART;TZID=Europe/London:20270326T193000
DTEND;TZID=Europe/London:20270326T200000
RRULE:FREQ=DAILY
EXDATE;TZID=Europe/London:20270328T193000
SUMMARY:Fresh water: Box 1
CATEGORIES:water
END:VEVENT
BEGIN:VEVENT
UID:weekly
DTSTAMP:20270301T000000Z
DTSTART;TZID=Europe/London:20270302T080000
DTEND;TZID=Europe/London:20270302T080500
RRULE:FREQ=WEEKLY;BYDAY=TU;UNTIL=20270328T235959Z
SUMMARY:Weigh: Box 2 males
CATEGORIES:weigh
END:VEVENT
END:VCALENDAR
`

var names = Names{"Box 1": {Box: "a"}, "Box 2": {Box: "b"}, "Box 2 males": {Box: "b", Animals: "males"}, "Box 3": {Box: "c"}, "Box 4": {Box: "d"}}

func TestRead(t *testing.T) {
	shown, uids, err := Read("c", []byte(strings.ReplaceAll(feed, "\n", "\r\n")), civil.Must(2027, 3, 20), civil.Must(2027, 3, 31))
	if err != nil || len(uids) != 2 {
		t.Fatal(err, uids)
	}
	stops, err := names.Stops(shown)
	if err != nil {
		t.Fatal(err)
	}
	want := "2027-03-23 weigh b males, 2027-03-26 water a, 2027-03-27 water a, 2027-03-29 water a, 2027-03-30 water a"
	if got := said(stops); got != want {
		t.Errorf("got %s\nwant %s", got, want)
	}
	for _, o := range shown {
		if o.UID == "daily" && o.At != "19:30" {
			t.Errorf("on %s at %s", o.Day, o.At)
		}
	}
}

func said(stops []Stop) string {
	var out []string
	for _, s := range stops {
		out = append(out, s.String())
	}
	return strings.Join(out, ", ")
}

// TestRounds: a round may be told by task, with whom it is for after it, or by
// enclosure.
func TestRounds(t *testing.T) {
	words := Words{"fresh water": "water", "mist": "mist", "spot clean, look for mould": "spot-clean", "look": "look"}
	for text, want := range map[string]string{
		"- Fresh water: Box 1, Box 3\n- Mist: all 4":                                                                                "mist a, water a, mist b, mist c, water c, mist d",
		"FIRST: Fresh water (last done 3 May): Box 2 males\n- Feed 2, each: Box 3 ×6":                                               "water b, feed c",
		"- All 4: look\n- All but Box 2 and 3: mist":                                                                                "look a, mist a, look b, look c, look d, mist d",
		"East room\n- Box 1: mist; spot clean, look for mould\n- Box 2 to 4: feed 2 crickets each (males; 4 in all, for 2 animals)": "mist a, spot-clean a, feed b, feed c, feed d",
		"Box 3\n- Fresh water": "water c",
	} {
		stops, unread, err := names.Rounds(words, []Occurrence{{Calendar: "c", At: "19:30", Description: text + "\n\nAbout 3 min"}}, map[string][]string{"c": {"a", "b", "c", "d"}})
		if got := strings.ReplaceAll(said(stops), "1970-01-01 ", ""); err != nil || len(unread) > 0 || got != want {
			t.Errorf("%s\ngot %s, %v, %v\nwant %s", text, got, unread, err, want)
		}
	}
}

// TestGaps: a gap runs from the day before the first, and of the days after the last
// nothing is known.
func TestGaps(t *testing.T) {
	var days []int
	for _, g := range Gaps([]civil.Date{102, 105}, 100, 110) {
		days = append(days, g.Days())
	}
	if len(days) != 3 || days[0] != 3 || days[1] != 3 || days[2] != 4 {
		t.Error(days)
	}
}
