package feeds_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile/feeds"
	"vivary/internal/feedoracle"
	"vivary/schema/civil"
)

// ward is a collection with a box of animals: its care in the usual states, and two kinds
// of which the table of states says nothing. A case brings whatever else there is.
func ward(head, animals string) string {
	return `
collection "fixtures" {
  time_zone = "Europe/London"
}
keeper "steady" {
}
keeper "lead" {
}
keeper "relief" {
}
round "evening" {
  at = "19:30"
}
calendar "care" {
  entry = "per care"
}
calendar "steady" {
  entry   = "per care"
  keepers = ["steady"]
}
calendar "lead" {
  entry   = "per care"
  keepers = ["lead"]
}
` + head + sheet + box("alpha", animals+`
  animals "only" {
    count = 1
    stage = "adult"
  }
  care "look" {
    every  = "2 days"
    keeper = "steady"
  }
  care "prepare" {
    every  = "2 days"
    keeper = "steady"
  }
  care "treat" {
    every  = "day"
    keeper = "lead"
  }
  feeding "only" {
    every      = "3 days"
    per_animal = 1
    prey       = "cricket small"
    keeper     = "lead"
  }
`)
}

// TestWhatGoesOnForEver: without an end are only those entries which no state, season,
// stage or absence can change: in three years each of them is shown, and nothing else; the
// calendar says where it ends, and what goes on. It is so whatever the day of the build.
func TestWhatGoesOnForEver(t *testing.T) {
	const away = "away \"lead\" {\n  from  = \"2026-07-10\"\n  to    = \"2026-07-24\"\n  cover = \"relief\"\n}\n"
	const rest = "  season \"rest\" {\n    from    = \"1 jul\"\n    to      = \"20 aug\"\n    feeding = \"none\"\n  }\n"
	plain := ward("", "")
	staged := strings.Replace(strings.Replace(plain, "  figure \"moults", "  care \"treat\" {\n    every  = \"2 days\"\n    stages = [\"adult\"]\n  }\n  figure \"moults", 1),
		"    every  = \"day\"\n    keeper = \"lead\"", "    keeper = \"lead\"", 1)
	both := []string{"Prepare: Alpha", "Treat, as the veterinarian ordered: Alpha"}
	for _, c := range []struct {
		name, text, log string
		want            map[string][]string // what goes on, by calendar
	}{
		{"nobody away", plain, "", map[string][]string{"care": both, "steady": both[:1], "lead": both[1:]}},
		{"away long ago", ward(away, ""), "", map[string][]string{"care": both[:1], "steady": both[:1], "lead": nil}},
		{"ill once", plain, "2026-12-01 keeper lead away\n2026-12-05 keeper lead back\n", map[string][]string{"care": both[:1], "steady": both[:1], "lead": nil}},
		{"a rest", ward("", rest), "", map[string][]string{"care": both, "steady": both[:1], "lead": both[1:]}},
		{"after the last", strings.Replace(plain, `every  = "day"`, `after_last = "2 days"`, 1), "", map[string][]string{"care": both[:1], "steady": both[:1], "lead": nil}},
		{"a round on some days", strings.Replace(plain, `at = "19:30"`, "at = \"19:30\"\n  on = [\"mon\", \"thu\"]", 1), "", map[string][]string{"care": nil, "steady": nil, "lead": nil}},
		{"until a day", strings.ReplaceAll(plain, `every  = "2 days"`, "every  = \"2 days\"\n    until = \"2033-01-01\""), "", map[string][]string{"care": both[1:], "steady": nil, "lead": both[1:]}},
		{"of a stage", staged, "", map[string][]string{"care": both[:1], "steady": both[:1], "lead": nil}},
	} {
		for _, on := range []civil.Date{today, today + 140, today + 200} {
			r := compiled(t, c.text, c.log, on)
			for name, want := range c.want {
				shown, _, err := feedoracle.Read(name, built(t, r, name, nil), on, on+4*366)
				if err != nil {
					t.Fatal(err)
				}
				later := map[string]int{}
				var end *feedoracle.Occurrence
				for i := range shown {
					o := &shown[i]
					if strings.HasPrefix(o.Summary, "This calendar ends here") {
						end = o
					}
					if o.Kind != "" && o.Day >= on+3*366 {
						later[o.Summary]++
					}
				}
				var got []string
				for what, n := range later {
					if n > 100 {
						got = append(got, what)
					}
				}
				slices.Sort(got)
				if !slices.Equal(got, want) || len(later) != len(want) {
					t.Errorf("%s, %s on %s: goes on %q, want %q", c.name, name, on, later, want)
				}
				switch {
				case end == nil:
					t.Errorf("%s, %s on %s: it does not say that it ends", c.name, name, on)
				case end != nil:
					for _, what := range want {
						if !strings.Contains(end.Description, "\n- "+what) {
							t.Errorf("%s, %s: at the end it does not say that it goes on: %s\n%s", c.name, name, what, end.Description)
						}
					}
					if _, _, day := end.Day.YMD(); day != 1 || end.Day < on+366 {
						t.Errorf("%s, %s: it ends on %s", c.name, name, end.Day)
					}
				}
			}
		}
	}
}

// TestOldSeriesBeginAnew: a series that has gone on for years begins in the January of the
// year before, by the same days as ever; and moves there once a year, not every day.
func TestOldSeriesBeginAnew(t *testing.T) {
	text := strings.ReplaceAll(ward("", ""), `every  = "2 days"`, `every  = "5 weeks"`)
	on := civil.Must(2027, time.November, 10)
	feed := built(t, compiled(t, text, "", on), "care", nil)
	series := func(feed []byte) string {
		for _, e := range entries(t, feed) {
			if property(e, "SUMMARY") == "Prepare: Alpha" {
				return e
			}
		}
		t.Fatal("no series")
		return ""
	}
	first, sequence := date(t, series(feed)), 0
	for _, c := range []struct {
		on    civil.Date
		moved bool
	}{
		{civil.Must(2028, time.December, 31), false},
		{civil.Must(2029, time.January, 1), true},
		{civil.Must(2029, time.January, 2), false},
		{civil.Must(2029, time.December, 31), false},
		{civil.Must(2033, time.May, 5), true},
	} {
		feed = built(t, compiled(t, text, "", c.on), "care", remembered(t, feed))
		begins := date(t, series(feed))
		if n, _, _ := revision(series(feed)); (n != sequence) != c.moved {
			t.Errorf("on %s its SEQUENCE goes from %d to %d", c.on, sequence, n)
		} else {
			sequence = n
		}
		y, _, _ := c.on.YMD()
		if begins < civil.Must(y-1, 1, 1) || begins >= civil.Must(y-1, 1, 1)+5*7 && begins != first {
			t.Errorf("on %s it begins on %s", c.on, begins)
		}
		if (begins-first)%(5*7) != 0 {
			t.Errorf("on %s it begins on %s, which is none of its days", c.on, begins)
		}
		for _, e := range entries(t, feed) {
			if d := date(t, e); d < civil.Must(y-1, 1, 1) {
				t.Errorf("on %s an entry begins on %s:\n%s", c.on, d, e)
			}
		}
	}
}

// TestAMonthLater: of a plan in which nothing happens, a month later the series that go on
// for ever have every byte, and the others are changed once, by their end alone.
func TestAMonthLater(t *testing.T) {
	text := ward("", "")
	first := built(t, compiled(t, text, "", today), "care", nil)
	for _, days := range []civil.Date{1, 5} { // within the month
		if next := built(t, compiled(t, text, "", today+days), "care", remembered(t, first)); !slices.Equal(first, next) {
			t.Errorf("%d days later the calendar is changed", days)
		}
	}
	c := changes(t, first, built(t, compiled(t, text, "", today+31), "care", remembered(t, first)))
	if len(c.added)+len(c.gone) > 0 || len(c.changed) != 4 { // the look, the meals, what is left of them, the end
		t.Errorf("%d added, %d gone, %d changed", len(c.added), len(c.gone), len(c.changed))
	}
	for _, e := range c.changed {
		if !ofCalendar(e) && !strings.Contains(property(e, "RRULE"), "UNTIL=20280331") || strings.Contains(property(e, "SUMMARY"), "Prepare") || strings.Contains(property(e, "SUMMARY"), "Treat") {
			t.Errorf("changed:\n%s", e)
		}
	}
}

// TestALargeFeedLooksLessFar: a calendar of more entries or bytes than apps read well
// looks less far ahead, by whole months, half a year at the least; and says where it
// ends. What it says of itself ends there too.
func TestALargeFeedLooksLessFar(t *testing.T) {
	for _, c := range []struct {
		rounds, boxes int
		least, most   int // days that it looks ahead
		fits          bool
	}{
		{1, 5, 366, 366, true},
		{2, 5, 366, 366, true},
		{3, 5, 210, 280, true},
		{4, 5, 180, 210, true},
		{6, 5, 180, 210, false},
		{2, 600, 180, 210, false},
	} {
		var b strings.Builder
		b.WriteString("collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\n" + sheet)
		var names []string
		for i := range c.rounds {
			names = append(names, fmt.Sprintf("%q", fmt.Sprintf("r-%d", i)))
			fmt.Fprintf(&b, "round \"r-%d\" {\n  at = \"%02d:00\"\n}\n", i, 8+2*i)
		}
		for i := range c.boxes {
			b.WriteString(box(fmt.Sprintf("house-%c%c", 'a'+i%26, 'a'+i/26), "  animals \"only\" {\n    count = 1\n    stage = \"adult\"\n  }\n  care \"look\" {\n    every = \"day\"\n    round = ["+strings.Join(names, ", ")+"]\n  }\n"+
				fmt.Sprintf("  care \"water\" {\n    every = \"%d days\"\n    round = [%s]\n  }\n", 2+i%5, strings.Join(names, ", "))))
		}
		for _, on := range []civil.Date{today, today + 9, today + 16} {
			r := compiled(t, b.String(), "", on)
			s := size(t, r, "fixtures")
			feed := built(t, r, "fixtures", nil)
			if s.Bytes != len(feed) || s.Entries != len(entries(t, feed)) {
				t.Errorf("%d rounds: it says that it has %d entries, %d bytes", c.rounds, s.Entries, s.Bytes)
			}
			if ahead := int(s.Until - on); ahead < c.least || ahead > c.most {
				t.Errorf("%d rounds, %d boxes, on %s: it looks %d days ahead, with %d entries, %d bytes", c.rounds, c.boxes, on, ahead, s.Entries, s.Bytes)
			}
			if fits := s.Entries <= 800 && s.Bytes <= 700_000; fits != c.fits {
				t.Errorf("%d rounds, %d boxes: %d entries, %d bytes", c.rounds, c.boxes, s.Entries, s.Bytes)
			}
			for _, f := range feeds.Of(r) {
				found := f.Noisy(s)
				if c.fits == (len(found) > 0) {
					t.Errorf("%d rounds: %d findings", c.rounds, len(found))
				}
				for _, x := range found {
					if !strings.Contains(x.Text, fmt.Sprintf("has %d entries", s.Entries)) || !strings.Contains(x.Text, fmt.Sprintf("only %d days ahead", s.Until-on)) || !x.At.Written() {
						t.Errorf("%d rounds, %d entries: %s", c.rounds, s.Entries, x.Text)
					}
				}
			}
			ends := false
			for _, e := range entries(t, feed) {
				ends = ends || property(e, "SUMMARY") == "This calendar ends here" && date(t, e) == s.Until
				if date(t, e) > s.Until {
					t.Errorf("after its end it shows:\n%s", e)
				}
			}
			if _, _, day := s.Until.YMD(); !ends || day != 1 && s.Until != on+366 {
				t.Errorf("%d rounds: ends %v, on %s", c.rounds, ends, s.Until)
			}
		}
	}
}
