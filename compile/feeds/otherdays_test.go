package feeds_test

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"vivary/compile/feeds"
	"vivary/internal/feedoracle"
	"vivary/schema/civil"
)

// TestOtherDaysFromNowOn: a care that comes on other days is shown on these from the day of
// the build on, and on those that it had before. What a phone showed as done is not taken
// back, nor does it become days on which nobody was asked for anything; after a month it is
// out of the calendar.
func TestOtherDaysFromNowOn(t *testing.T) {
	text := func(days string) string {
		return "collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\nround \"evening\" {\n  at = \"19:30\"\n}\n" +
			"calendar \"care\" {\n  entry  = \"per care\"\n  kinds  = [\"count\"]\n  remind = \"10 min\"\n}\n" + sheet +
			box("ash", "  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n  care \"count\" {\n    "+days+"\n  }\n")
	}
	shown := func(feed []byte, from, until civil.Date) map[civil.Date]int {
		all, uids, err := feedoracle.Read("care", feed, from, until)
		if err != nil {
			t.Fatal(err)
		}
		slices.Sort(uids)
		if len(slices.Compact(slices.Clone(uids))) != len(uids) {
			t.Error("a UID stands twice")
		}
		out := map[civil.Date]int{}
		for _, o := range all {
			if o.Kind == "count" {
				out[o.Day]++
			}
		}
		return out
	}
	on := today
	feed := built(t, compiled(t, text(`every = "day"`), "", on), "care", nil)
	for _, days := range []string{`on = ["tue", "fri"]`, `every = "day"`, `every = "2 days"`, `every = "3 days"`, `on = ["mon", "tue"]`, `on = ["tue"]`, `on = ["tue"]`} {
		was, before := shown(feed, on-20, on+9), on
		on += 9
		r := compiled(t, text(days), "", on)
		fresh := built(t, r, "care", nil)
		feed = built(t, r, "care", remembered(t, feed))
		if is := shown(feed, before-11, on); !maps.Equal(is, among(was, before-11, on)) {
			t.Errorf("%s from %s on: before it the calendar shows %v, and showed %v", days, on, is, was)
		}
		if is, want := shown(feed, on, on+60), shown(fresh, on, on+60); !maps.Equal(is, want) || len(want) == 0 {
			t.Errorf("%s from %s on: the calendar shows %v, a first build %v", days, on, is, want)
		}
	}
	again := on + feeds.Kept + 20
	feed = built(t, compiled(t, text(`on = ["tue"]`), "", again), "care", remembered(t, feed))
	if n := strings.Count(string(feed), "\r\nCATEGORIES:count\r\n"); n != 1 {
		t.Errorf("a month later there are %d entries of the care", n)
	}
}

// among returns what falls on days from one on and before another.
func among(days map[civil.Date]int, from, until civil.Date) map[civil.Date]int {
	out := maps.Clone(days)
	maps.DeleteFunc(out, func(d civil.Date, _ int) bool { return d < from || d >= until })
	return out
}

// TestASeriesBeginsOnADayOfItsOwn: where somebody falls ill before the first day of a care in
// a calendar of their own, it begins when they are back; and what it was then stays once it
// comes on other days.
func TestASeriesBeginsOnADayOfItsOwn(t *testing.T) {
	const ill = "2027-02-17 keeper lead away \"ill\"\n"
	text := func(days string) string {
		return "collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\nkeeper \"lead\" {\n}\nkeeper \"relief\" {\n}\nround \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n}\n" +
			"calendar \"care\" {\n  entry   = \"per care\"\n  keepers = [\"lead\"]\n  kinds   = [\"count\"]\n}\n" + sheet +
			box("ash", "  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n  care \"count\" {\n    on = ["+days+"]\n  }\n")
	}
	var feed []byte
	for _, x := range []struct {
		on        civil.Date
		days, log string
	}{{today, `"thu"`, ""}, {today + 2, `"thu"`, ill}, {today + 6, `"thu"`, ill + "2027-02-21 keeper lead back\n"}, {today + 23, `"mon"`, ill + "2027-02-21 keeper lead back\n"}} {
		r := compiled(t, text(x.days), x.log, x.on)
		if feed == nil {
			feed = built(t, r, "care", nil)
		} else {
			feed = built(t, r, "care", remembered(t, feed))
		}
	}
	all, _, err := feedoracle.Read("care", feed, today, today+30)
	if err != nil {
		t.Fatal(err)
	}
	var is []civil.Date
	for _, o := range all {
		if o.Kind == "count" {
			is = append(is, o.Day)
		}
	}
	// What was missed is caught up on the day of the return.
	if want := []civil.Date{today + 6, today + 10, today + 17, today + 28}; !slices.Equal(is, want) {
		t.Errorf("the calendar shows %v, and should show %v", is, want)
	}
}
