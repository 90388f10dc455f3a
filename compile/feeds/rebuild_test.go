package feeds_test

import (
	"bytes"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/internal/feedoracle"
	"vivary/schema/civil"
)

// entries returns the entries of a feed by UID, each with all of its bytes.
func entries(t testing.TB, feed []byte) map[string]string {
	t.Helper()
	out := map[string]string{}
	for _, part := range bytes.Split(feed, []byte("BEGIN:VEVENT\r\n"))[1:] {
		body, _, ok := bytes.Cut(part, []byte("END:VEVENT\r\n"))
		if !ok {
			t.Fatal("an entry without end")
		}
		uid := property(string(body), "UID")
		if _, twice := out[uid]; twice || uid == "" {
			t.Fatalf("UID %q twice, or missing", uid)
		}
		out[uid] = string(body)
	}
	return out
}

// property returns the value of a line of an entry.
func property(entry, name string) string {
	for line := range strings.SplitSeq(strings.ReplaceAll(entry, "\r\n ", ""), "\r\n") {
		if rest, ok := strings.CutPrefix(line, name); ok && rest != "" && (rest[0] == ':' || rest[0] == ';') {
			return rest[strings.IndexByte(rest, ':')+1:]
		}
	}
	return ""
}

// revision leaves out the lines that say how often and when an entry was changed.
func revision(entry string) (sequence int, at, rest string) {
	var kept []string
	for line := range strings.SplitSeq(entry, "\r\n") {
		if name, _, _ := strings.Cut(line, ":"); name != "SEQUENCE" && name != "DTSTAMP" && name != "LAST-MODIFIED" {
			kept = append(kept, line)
		}
	}
	sequence, _ = strconv.Atoi(property(entry, "SEQUENCE"))
	return sequence, property(entry, "LAST-MODIFIED"), strings.Join(kept, "\n")
}

// change is what became of the entries of a feed in the next.
type change struct{ added, gone, changed []string }

func changes(t testing.TB, before, after []byte) change {
	t.Helper()
	a, b := entries(t, before), entries(t, after)
	var c change
	for uid, was := range a {
		is, there := b[uid]
		switch {
		case !there:
			c.gone = append(c.gone, was)
		case is != was:
			s1, t1, r1 := revision(was)
			s2, t2, r2 := revision(is)
			if r1 == r2 {
				t.Errorf("entry says that it changed, and did not:\n%s", is)
			}
			// RFC 5545, 3.8.7.3 and 3.8.7.4: a change raises both.
			if s2 != s1+1 || t2 <= t1 {
				t.Errorf("an entry changed, but SEQUENCE went from %d to %d and LAST-MODIFIED from %s to %s", s1, s2, t1, t2)
			}
			c.changed = append(c.changed, is)
		}
	}
	for uid, is := range b {
		if _, there := a[uid]; !there {
			c.added = append(c.added, is)
		}
	}
	for _, list := range [][]string{c.added, c.gone, c.changed} {
		slices.Sort(list)
	}
	return c
}

// TestUnchangedPlanKeepsBytes: build after build of the same plan, through a hold
// and through absences, an entry that is still there has the bytes that it had.
// Only the new last days are added, a series goes on to the end of one month more, with
// the days of a season that have come into sight, and the calendar's end moves; what is
// older than a month goes.
func TestUnchangedPlanKeepsBytes(t *testing.T) {
	for _, name := range []string{"all", "care", "relief"} {
		t.Run(name, func(t *testing.T) {
			var last []byte
			var lastOn, reach civil.Date
			for _, on := range []civil.Date{0, 1, 2, 3, 12, 31, 80, 145, 146, 150, 160, 240, 258, 260, 262, 300} {
				on += today
				r := compiled(t, everyKind("Europe/London"), everyState, on)
				_, _, dom := (lastOn + compile.Ahead - 1).YMD()
				month := lastOn + compile.Ahead - civil.Date(dom)
				if last == nil {
					last, lastOn, reach = built(t, r, name, nil), on, size(t, r, name).Until
					continue
				}
				next, now := built(t, r, name, remembered(t, last)), size(t, r, name).Until
				c := changes(t, last, next)
				old := entries(t, last)
				for _, e := range c.changed {
					if was := old[property(e, "UID")]; !asks(e) && !asks(was) && !ofCalendar(e) && !catchesUp(e) && (without(t, e, month) != without(t, was, month) || now == reach && name == "care" && lastOn.AddMonths(1) > on) {
						t.Errorf("changed on %s, of %s:\n%s\nwas:\n%s", on, lastOn, e, was)
					}
				}
				for _, e := range c.added {
					if d := date(t, e); d < reach && !ofCalendar(e) && !asks(e) {
						t.Errorf("added on %s, of %s:\n%s", on, lastOn, e)
					}
				}
				for _, e := range c.gone {
					if d := date(t, e); d >= on-feeds.Kept && d < now && property(e, "RRULE") == "" {
						t.Errorf("gone on %s, of %s:\n%s", on, lastOn, e)
					}
				}
				if t.Failed() {
					return
				}
				last, lastOn, reach = next, on, now
			}
		})
	}
}

// ofCalendar reports whether an entry says something of the calendar itself.
func ofCalendar(entry string) bool {
	title := property(entry, "SUMMARY")
	return strings.HasPrefix(title, "This calendar ends here") || strings.HasPrefix(title, "Nothing to do in ")
}

// asks reports whether an entry is of the question that is open in everyState: a question
// whose day is over stands on the day of each build until the log answers it.
func asks(entry string) bool {
	return strings.Contains(strings.ToLower(strings.ReplaceAll(entry, "\r\n ", "")), "moulted? look")
}

// catchesUp reports whether an entry brings first what nobody was there to do: it
// says so once it has been left undone, not before.
func catchesUp(entry string) bool {
	return strings.Contains(strings.ReplaceAll(entry, "\r\n ", ""), "(last done ")
}

// without leaves out the days from one day on that an entry leaves out, the end of its
// rule where it comes later, and what changes with them: which days a season takes out is
// known for a year and a month, and a series goes on as far.
func without(t testing.TB, entry string, from civil.Date) string {
	_, _, entry = revision(strings.ReplaceAll(entry, "\r\n ", ""))
	var kept []string
	for line := range strings.SplitSeq(entry, "\n") {
		if rule, until, ok := strings.Cut(line, ";UNTIL="); ok && strings.HasPrefix(line, "RRULE:") {
			if d, err := civil.Parse(until[:4] + "-" + until[4:6] + "-" + until[6:8]); err == nil && d >= from-31 {
				line = rule
			}
		}
		if !strings.HasPrefix(line, "EXDATE") || date(t, "DTSTART"+line[len("EXDATE"):]) < from {
			kept = append(kept, line)
		}
	}
	return strings.Join(kept, "\n")
}

// date is the day on which an entry begins.
func date(t testing.TB, entry string) civil.Date {
	t.Helper()
	s := property(entry, "DTSTART")
	d, err := civil.Parse(s[:4] + "-" + s[4:6] + "-" + s[6:8])
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// TestRebuildWithoutMemory: with nothing remembered, the same plan on the same day
// gives the same bytes.
func TestRebuildWithoutMemory(t *testing.T) {
	for _, name := range []string{"all", "care", "relief"} {
		a := built(t, compiled(t, everyKind("Europe/London"), everyState, today), name, nil)
		b := built(t, compiled(t, everyKind("Europe/London"), everyState, today), name, nil)
		if !bytes.Equal(a, b) {
			t.Errorf("%s differs", name)
		}
		if c := built(t, compiled(t, everyKind("Europe/London"), everyState, today), name, remembered(t, a)); !bytes.Equal(a, c) {
			t.Errorf("%s differs once it is remembered", name)
		}
	}
}

// TestLogLineChangesOnlyItsOwn: after a line of the log, the entries that it is
// about are changed under the UID that they had, and all others keep every byte.
func TestLogLineChangesOnlyItsOwn(t *testing.T) {
	plan := everyKind("Europe/London")
	cases := []struct {
		calendar, line string
		title          string // what the titles of changed, added and removed entries hold
		until          civil.Date
		changed        bool // whether entries are changed, not only put in the place of others
	}{
		{"care", "2027-02-16 beta done water", "Fresh water: Beta", today + 2*feeds.Days, false},
		{"care", "2027-02-16 alpha only moult", "Alpha", today + 2*feeds.Days, true},
		{"all", "2027-02-16 alpha only moult", "round", today + 40, true},
		{"all", "2027-02-16 alpha weighed 3 g", "", 0, false},
	}
	for _, c := range cases {
		t.Run(c.calendar+" "+c.line, func(t *testing.T) {
			before := built(t, compiled(t, plan, everyState, today), c.calendar, nil)
			next := built(t, compiled(t, plan, everyState, today+1), c.calendar, remembered(t, before))
			after := built(t, compiled(t, plan, everyState+c.line+"\n", today+1), c.calendar, remembered(t, next))
			d := changes(t, next, after)
			if c.changed != (len(d.changed) > 0) {
				t.Errorf("%d entries are changed", len(d.changed))
			}
			for _, e := range slices.Concat(d.changed, d.added, d.gone) {
				if !strings.Contains(property(e, "SUMMARY"), c.title) || date(t, e) >= c.until {
					t.Errorf("another entry was touched:\n%s", e)
				}
				if s := property(e, "SUMMARY"); strings.HasPrefix(s, "Fresh water: Alpha") {
					t.Errorf("a moult changed water:\n%s", e)
				}
			}
			for _, e := range d.changed {
				if s := property(e, "SUMMARY"); strings.HasPrefix(s, "Mist: ") || strings.HasPrefix(s, "Lid shut? ") {
					standsAlone(t, after, e)
				}
			}
		})
	}
}

// standsAlone fails where what a series leaves out is not an entry of its own, with what
// to mind: a state changes how it is done, not whether.
func standsAlone(t *testing.T, feed []byte, series string) {
	t.Helper()
	alone := map[string]string{}
	for _, e := range entries(t, feed) {
		if task, _, ok := strings.Cut(property(e, "SUMMARY"), " ("); ok && property(e, "RRULE") == "" {
			alone[task+property(e, "DTSTART")] = e
		}
	}
	task, _, _ := strings.Cut(property(series, "SUMMARY"), ":")
	for line := range strings.SplitSeq(series, "\r\n") {
		if strings.HasPrefix(line, "EXDATE") && alone[task+property(line, "EXDATE")] == "" {
			t.Errorf("left out, and no entry of its own: %s of\n%s", line, series)
		}
	}
}

// TestOpenHoldEndsTheSeries: what must wait until something is logged, or is done
// otherwise until then, ends in the calendar for now, without a word more with every
// build, and goes on under the same UID once it is logged. A single animal is not fed
// meanwhile; of three, all get killed prey, in an entry of its own that says so.
func TestOpenHoldEndsTheSeries(t *testing.T) {
	const hanging = "2027-02-24 alpha only hanging\n"
	three := everyKind("Europe/London")
	for _, c := range []struct {
		plan  string
		fed   bool // while it hangs
		title string
	}{
		{strings.Replace(three, "count = 3", "count = 1", 1), false, "Feed"},
		{three, true, "Feed"},
		{three, true, "Mist"},
		{three, true, "Lid shut? Animals seen or hidden"},
	} {
		series := func(feed []byte) string {
			for _, e := range entries(t, feed) {
				if property(e, "SUMMARY") == c.title+": Alpha" && strings.HasSuffix(property(e, "DTSTART"), "T080000") {
					return e
				}
			}
			t.Fatal("no " + c.title)
			return ""
		}
		free := built(t, compiled(t, c.plan, "", today), "care", nil)
		held := built(t, compiled(t, c.plan, hanging, today+10), "care", remembered(t, free))
		rule, _, _ := strings.Cut(property(series(free), "RRULE"), ";UNTIL=")
		if got, want := property(series(held), "RRULE"), rule+";UNTIL=20270223T235959Z"; got != want {
			t.Errorf("held: %s\nwant %s", got, want)
		}
		later := built(t, compiled(t, c.plan, hanging, today+90), "care", remembered(t, held))
		if series(later) != series(held) {
			t.Errorf("held for long:\n%s\nwas:\n%s", series(later), series(held))
		}
		moulted := series(built(t, compiled(t, c.plan, hanging+"2027-05-10 alpha only moult\n", today+90), "care", remembered(t, later)))
		if again, _, _ := strings.Cut(property(moulted, "RRULE"), ";UNTIL="); again != rule || property(moulted, "UID") != property(series(free), "UID") || property(moulted, "SEQUENCE") != "2" {
			t.Errorf("moulted:\n%s", moulted)
		}
		alone := killedAlone(t, later)
		for d := today + 9; d <= today+90; d++ {
			if w := d.Weekday(); c.title == "Feed" && w != time.Tuesday && w != time.Friday {
				continue
			}
			if !strings.Contains(moulted, "EXDATE;TZID=Europe/London:"+string(d.Append(nil, ""))) {
				t.Errorf("moulted: %s is not left out", d)
			}
			if d := d + 91; c.title == "Feed" && alone[d] != c.fed {
				t.Errorf("killed prey on %s: %v", d, alone[d])
			}
		}
	}
}

// killedAlone are the days on which an entry apart from the usual ones, single or
// repeating, gives killed prey to Alpha.
func killedAlone(t *testing.T, feed []byte) map[civil.Date]bool {
	t.Helper()
	shown, _, err := feedoracle.Read("care", feed, today, today+compile.Ahead)
	if err != nil {
		t.Fatal(err)
	}
	days := map[civil.Date]bool{}
	for _, o := range shown {
		if strings.Contains(o.Summary, "killed") && strings.HasSuffix(o.Summary, ": Alpha") && o.Kind != "" {
			days[o.Day] = true
		}
	}
	return days
}

// TestRenamedKeepsUID: what has a new name and says the old one is the same entry
// in a calendar, on the same days.
func TestRenamedKeepsUID(t *testing.T) {
	plan := everyKind("Europe/London")
	for name, r := range map[string]*strings.Replacer{
		"enclosure": strings.NewReplacer(`enclosure "alpha" {`, "enclosure \"aleph\" {\n  formerly = \"alpha\""),
		"animals":   strings.NewReplacer(`animals "only" {`, "animals \"lone\" {\n    formerly = \"only\"", `feeding "only"`, `feeding "lone"`),
		"care":      strings.NewReplacer(`care "heat" {`, "care \"reading\" {\n    kind     = \"heat\"\n    formerly = \"heat\""),
		"round":     strings.NewReplacer(`round "morning" {`, "round \"dawn\" {\n  formerly = \"morning\"", `"morning"`, `"dawn"`),
		"calendar":  strings.NewReplacer(`calendar "care" {`, "calendar \"chores\" {\n  formerly = \"care\"", `calendar "all" {`, "calendar \"whole\" {\n  formerly = \"all\""),
	} {
		for _, calendar := range []string{"care", "all"} {
			renamed := calendar
			if name == "calendar" {
				renamed = map[string]string{"care": "chores", "all": "whole"}[calendar]
			}
			log := everyState
			if name == "enclosure" {
				log = strings.ReplaceAll(log, "alpha", "aleph")
			}
			text := r.Replace(plan)
			if text == plan {
				t.Fatal("nothing is renamed")
			}
			before := built(t, compiled(t, plan, everyState, today), calendar, nil)
			after := built(t, compiled(t, text, log, today), renamed, remembered(t, before))
			d := changes(t, before, after)
			for _, e := range slices.Concat(d.added, d.gone) {
				t.Errorf("%s renamed, %s: an entry came or went:\n%s", name, calendar, e)
			}
			old := entries(t, before)
			for uid, e := range entries(t, after) {
				if was := old[uid]; property(was, "DTSTART") != property(e, "DTSTART") {
					t.Errorf("%s renamed: the start moved from %s to %s", name, property(was, "DTSTART"), property(e, "DTSTART"))
					break
				}
			}
		}
	}
}
