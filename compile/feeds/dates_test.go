package feeds_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/internal/oracles"
	"vivary/internal/planned"
	"vivary/internal/randomplan"
)

// papers are dates of a house of each sort, one of them overdue.
const papers = `
deadline "dwa-licence" {
  kind = "licence"
  by   = "2027-08-31"
}
deadline "rcd-room" {
  kind   = "rcd-test"
  last   = "2026-03-01"
  keeper = "lead"
}
deadline "drill" {
  kind = "drill"
  by   = "2027-04-01"
}
`

// Three calendar readers that share no code find in the calendar of a house's dates each day on
// which one is told, and nothing else.
func TestReadersSeeTheDatesOfTheHouse(t *testing.T) {
	r := compiled(t, everyKind("Europe/London")+papers, everyState, today)
	feed := built(t, r, "dates", nil)
	want := map[string]int{}
	n := 0
	for i := range r.Deadlines {
		for k := range r.Deadlines[i].Times {
			for _, d := range r.Deadlines[i].Times[k].Days(today, today-feeds.Kept, today+feeds.Days) {
				want[string(d.Append(nil, ""))]++
				n++
			}
		}
	}
	want[string((today+feeds.Days).Append(nil, ""))]++ // where it ends
	if n < 70 {
		t.Errorf("only %d entries", n)
	}
	from, to := (today-40).At(0, time.UTC), (today+feeds.Days+2).At(0, time.UTC)
	for reader, answer := range oracles.Expand(t, [][]byte{feed}, from, to) {
		got := map[string]int{}
		for _, o := range answer.Feed(0) {
			got[o.Start]++
		}
		if fmt.Sprint(got) != fmt.Sprint(want) {
			t.Errorf("%s reads %v, want %v", reader, got, want)
		}
	}
}

// No calendar but its own has a word of a house's dates: whatever the plan, those of stand-ins,
// of volunteers and of all others are the same bytes with and without them, also where one is
// overdue and urgent.
func TestNobodyElsesCalendarHasDatesOfTheHouse(t *testing.T) {
	seen := 0
	for seed := range uint64(40) {
		p := randomplan.New(seed)
		files := p.Files(p.Today)
		with := map[string]string{}
		for name, text := range files {
			with[name] = text
		}
		with["house.care.hcl"] = papersOf(p)
		a, b := feedsOf(t, files, p), feedsOf(t, with, p)
		if n := len(b) - len(a); n != 1 && (n != 0 || a["dates"] == nil) {
			t.Fatalf("plan %d: %d calendars, and with dates %d", seed, len(a), len(b))
		}
		for name, text := range a {
			if name == "dates" { // a training of a keeper ends
				continue
			}
			seen++
			if !bytes.Equal(text, b[name]) {
				t.Errorf("plan %d: calendar %s changes with the dates of the house", seed, name)
			}
			if bytes.Contains(b[name], []byte("Xyzzy")) {
				t.Errorf("plan %d: calendar %s has a date of the house", seed, name)
			}
		}
		if !bytes.Contains(b["dates"], []byte("OVERDUE since")) || !bytes.Contains(b["dates"], []byte("Xyzzy")) {
			t.Errorf("plan %d: the calendar of dates has none", seed)
		}
	}
	t.Logf("%d calendars", seen)
}

// papersOf are dates of a house as of a plan's day.
func papersOf(p *randomplan.Plan) string {
	return fmt.Sprintf("deadline \"xyzzy\" {\n  title = \"Xyzzy\"\n  kind = \"licence\"\n  by = %q\n}\ndeadline \"test\" {\n  kind = \"thermostat-test\"\n  last = %q\n}\n", p.Today-5, p.Today-10)
}

func feedsOf(t *testing.T, files map[string]string, p *randomplan.Plan) map[string][]byte {
	t.Helper()
	c, found := planned.Files(t, files)
	r := compile.Compile(c, found, p.Today.At(12*60, time.UTC))
	if r.Roster == nil {
		t.Fatalf("the plan was not understood: %v", r.Findings)
	}
	out := map[string][]byte{}
	for _, f := range feeds.Of(r) {
		b, err := f.Bytes(nil)
		if err != nil {
			t.Fatal(err)
		}
		out[f.Name] = b
	}
	return out
}

// A second build on the next day, with nothing changed, keeps each entry as it was.
func TestDatesOfTheHouseKeepTheirEntries(t *testing.T) {
	first := compiled(t, everyKind("Europe/London")+papers, everyState, today)
	text := built(t, first, "dates", nil)
	again := built(t, compiled(t, everyKind("Europe/London")+papers, everyState, today+1), "dates", remembered(t, text))
	for _, e := range strings.Split(string(text), "BEGIN:VEVENT")[1:] {
		if e, _, _ = strings.Cut(e, "END:VEVENT"); !strings.Contains(e, "ends here") && !strings.Contains(string(again), e) {
			t.Errorf("an entry changed:%s", e)
		}
	}
}

// A calendar of dates for some keepers has theirs and those that are nobody's.
func TestCalendarOfDatesForSome(t *testing.T) {
	r := compiled(t, everyKind("Europe/London")+papers+"calendar \"desk\" {\n  entry   = \"per date\"\n  keepers = [\"relief\"]\n}\n", everyState, today)
	if feed := string(built(t, r, "desk", nil)); strings.Contains(feed, "Rcd room") || !strings.Contains(feed, "Dwa licence") {
		t.Errorf("the calendar of relief: %s", feed)
	}
	for _, f := range feeds.Of(r) {
		if f.Name == "dates" {
			t.Error("a calendar of dates is made beside the one of the plan")
		}
	}
}

// On the pages of a keeper the calendar of dates is listed for whoever has rounds of their own, and
// not for somebody who only stands in, nor for a reader.
func TestWhoStandsInIsNotShownTheDatesOfTheHouse(t *testing.T) {
	r := compiled(t, everyKind("Europe/London")+papers, everyState, today)
	regular := 0
	for _, c := range r.Plan.Calendars {
		if !c.OfHouse() {
			continue
		}
		for _, k := range r.Plan.Keepers {
			if sees := r.SeesHouse(c, k.Name.V); sees != r.Roster.Regular(k.Name.V) {
				t.Errorf("%s sees it: %v", k.Name.V, sees)
			} else if sees {
				regular++
			}
		}
		if r.SeesHouse(c, "") {
			t.Error("a reader sees it")
		}
	}
	if regular == 0 || regular == len(r.Plan.Keepers) {
		t.Errorf("%d of %d keepers see it: the plan shows nothing", regular, len(r.Plan.Keepers))
	}
}
