package feeds_test

import (
	"bytes"
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/internal/feedoracle"
	"vivary/internal/oracles"
	"vivary/internal/planned"
	"vivary/schema/civil"
)

// dayPlan is a plan of one care at random, in which days are said in the new forms, with
// what they mean worked out here, by the calendar of the standard library alone.
type dayPlan struct {
	rounds    string // the blocks
	in        []heldRound
	care      string
	planned   func(time.Time) bool
	not, also []days
	holidays  days
}

// heldRound is a round with the days on which it is held.
type heldRound struct {
	name, at string
	held     func(time.Time) bool
}

// days are those from one to another.
type days struct{ from, to civil.Date }

func (d days) has(t time.Time) bool {
	day := civil.FromTime(t)
	return d.from <= day && day <= d.to
}

func (d days) String() string {
	if d.from == d.to {
		return fmt.Sprintf("%q", d.from)
	}
	return fmt.Sprintf("%q", d.from.String()+" to "+d.to.String())
}

func any(all []days, t time.Time) bool {
	return slices.ContainsFunc(all, func(d days) bool { return d.has(t) })
}

func listOf(all []days) string {
	var out []string
	for _, d := range all {
		out = append(out, d.String())
	}
	return "[" + strings.Join(out, ", ") + "]"
}

// plans of days at random.
func newDayPlan(rng *rand.Rand) *dayPlan {
	p := &dayPlan{}
	span := func(most int) days {
		from := today + civil.Date(rng.IntN(80))
		return days{from, from + civil.Date(rng.IntN(most))}
	}
	p.holidays = span(30)
	p.rounds = "dates \"holidays\" {\n  on = [" + p.holidays.String() + "]\n}\n"
	week := func(t time.Time) bool { return t.Weekday() != time.Saturday && t.Weekday() != time.Sunday }
	add := func(name, at, rest string, held func(time.Time) bool) {
		p.rounds += "round \"" + name + "\" {\n  at = \"" + at + "\"\n" + rest + "}\n"
		p.in = append(p.in, heldRound{name, at, held})
	}
	always := func(time.Time) bool { return true }
	switch rng.IntN(5) {
	case 0:
		add("weekday", "08:30", "  on = [\"mon to fri\"]\n", week)
		add("weekend", "10:00", "  on = [\"sat\", \"sun\"]\n  not_on = [\"31 dec\"]\n  also_on = [\"31 dec\"]\n", func(t time.Time) bool { return !week(t) || t.Month() == time.December && t.Day() == 31 })
	case 1:
		add("weekday", "08:30", "  on = [\"mon to fri\"]\n  not_on = [\"holidays\"]\n", func(t time.Time) bool { return week(t) && !p.holidays.has(t) })
		add("weekend", "10:00", "  on = [\"sat\", \"sun\", \"holidays\"]\n", func(t time.Time) bool { return !week(t) || p.holidays.has(t) })
	case 2:
		add("morning", "08:30", "", always)
		add("evening", "19:30", "", always)
	case 3:
		add("evening", "19:30", "  not_on = [\"holidays\"]\n", func(t time.Time) bool { return !p.holidays.has(t) })
	default:
		add("evening", "19:30", "", always)
	}
	when := "on = [\"tue\", \"sat\"]"
	p.planned = func(t time.Time) bool { return t.Weekday() == time.Tuesday || t.Weekday() == time.Saturday }
	switch d := span(3); rng.IntN(5) {
	case 0:
		when, p.planned = "every = \"day\"", always
	case 1:
		when, p.planned = "on = ["+d.String()+", \"1 aug\"]", func(t time.Time) bool { return d.has(t) || t.Month() == time.August && t.Day() == 1 }
	case 2:
		when, p.planned = "every = \"3 days\"\n    from = \"2026-12-01\"", func(t time.Time) bool {
			first := time.Date(2026, time.December, 1, 0, 0, 0, 0, time.UTC)
			return !t.Before(first) && int(t.Sub(first).Hours()/24)%3 == 0
		}
	case 3:
		when, p.planned = "on = [\"15th\", \"20 jun to 3 jul\"]", func(t time.Time) bool {
			return t.Day() == 15 || t.Month() == time.June && t.Day() >= 20 || t.Month() == time.July && t.Day() <= 3
		}
	}
	for range rng.IntN(3) {
		p.not = append(p.not, span(12))
	}
	for range rng.IntN(3) {
		p.also = append(p.also, span(3))
	}
	var names []string
	for _, r := range p.in {
		names = append(names, fmt.Sprintf("%q", r.name))
	}
	rng.Shuffle(len(names), func(i, j int) { names[i], names[j] = names[j], names[i] })
	p.care = "    " + when + "\n    round = [" + strings.Join(names, ", ") + "]\n"
	if len(p.not) > 0 {
		p.care += "    not_on = " + listOf(p.not) + "\n"
	}
	if len(p.also) > 0 {
		p.care += "    also_on = " + listOf(p.also) + "\n"
	}
	return p
}

// text is the plan, with a calendar by care and one by round.
func (p *dayPlan) text() string {
	return turnsPlan(p.rounds, "  care \"count\" {\n"+p.care+"  }\n")
}

func turnsPlan(rounds, care string) string {
	return "collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\n" + rounds +
		"calendar \"care\" {\n  entry = \"per care\"\n  kinds = [\"count\"]\n}\ncalendar \"rounds\" {\n  kinds = [\"count\"]\n}\n" + sheet +
		box("ash", "  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n"+care)
}

// times are at what times the care is done on each day from one until another.
func (p *dayPlan) times(from, until civil.Date) map[string]int {
	out := map[string]int{}
	for d := from; d < until; d++ {
		y, m, n := d.YMD()
		t := time.Date(y, m, n, 0, 0, 0, 0, time.UTC)
		if !any(p.also, t) && (!p.planned(t) || any(p.not, t)) {
			continue
		}
		for _, r := range p.in {
			if r.held(t) {
				out[d.String()+" "+r.at]++
			}
		}
	}
	return out
}

// shownAt are the days and times at which a calendar has the care.
func shownAt(t testing.TB, name string, feed []byte, from, until civil.Date) map[string]int {
	t.Helper()
	all, uids, err := feedoracle.Read(name, feed, from, until)
	if err != nil {
		t.Fatal(err)
	}
	slices.Sort(uids)
	if len(slices.Compact(slices.Clone(uids))) != len(uids) {
		t.Errorf("%s: a UID stands twice", name)
	}
	out := map[string]int{}
	for _, o := range all {
		if o.At != "" {
			out[o.Day.String()+" "+o.At]++
		}
	}
	return out
}

// TestDaysAreThoseThatAreSaid: what a plan says of dates that are left out or put in, of
// holidays and of rounds that take turns, is what calendars by care and by round have, day by
// day, as readers see them that had no part in writing them.
func TestDaysAreThoseThatAreSaid(t *testing.T) {
	const plans, ahead = 300, 200
	var some [][]byte
	var of []*dayPlan
	for seed := range uint64(plans) {
		p := newDayPlan(rand.New(rand.NewPCG(seed, 7)))
		r := compiled(t, p.text(), "", today)
		want := p.times(today, today+ahead)
		for _, name := range []string{"care", "rounds"} {
			feed := built(t, r, name, nil)
			if got := shownAt(t, name, feed, today, today+ahead); !maps.Equal(got, want) {
				t.Fatalf("seed %d, calendar %q shows\n%v\nand not\n%v\n%s", seed, name, got, want, p.text())
			}
			if name == "care" && seed%20 == 0 && len(want) > 0 {
				some, of = append(some, feed), append(of, p)
			}
		}
	}
	from, to := today.At(0, time.UTC), (today+ahead).At(0, time.UTC)
	for reader, answer := range oracles.Expand(t, some, from, to) {
		for i, p := range of {
			got := map[string]int{}
			for _, o := range answer.Feed(i) {
				if at, err := time.Parse("20060102T150405Z", o.Start); err == nil { // not of a whole day
					got[at.In(mustZone(t, "Europe/London")).Format("2006-01-02 15:04")]++
				}
			}
			if want := p.times(today, today+ahead); !maps.Equal(got, want) {
				t.Errorf("%s shows\n%v\nand not\n%v\n%s", reader, got, want, p.text())
			}
		}
	}
}

func mustZone(t testing.TB, name string) *time.Location {
	t.Helper()
	loc, err := time.LoadLocation(name)
	if err != nil {
		t.Fatal(err)
	}
	return loc
}

// TestTurnsDoubleNothing: who goes from one round to two that take turns, back again, to two
// a day, or to other days of the rounds, finds each day on the phone once, as the plan of that
// day has it: what is over stays, and what is to come is what a first build shows.
func TestTurnsDoubleNothing(t *testing.T) {
	const evening = "round \"evening\" {\n  at = \"19:30\"\n}\n"
	turns := func(week, end string) string {
		return "round \"evening\" {\n  at = \"19:30\"\n  on = [" + week + "]\n}\nround \"weekend\" {\n  at = \"10:00\"\n  on = [" + end + "]\n}\n"
	}
	care := func(round string) string { return "  care \"count\" {\n    every = \"day\"\n    " + round + "\n  }\n" }
	steps := []struct{ title, rounds, care string }{
		{"one round", evening, care(`round = "evening"`)},
		{"in turns", turns(`"mon to fri"`, `"sat", "sun"`), care(`round = ["evening", "weekend"]`)},
		{"in the other order", turns(`"mon to fri"`, `"sat", "sun"`), care(`round = ["weekend", "evening"]`)},
		{"other days of the rounds", turns(`"mon to thu"`, `"fri to sun"`), care(`round = ["weekend", "evening"]`)},
		{"one round again", evening, care(`round = "evening"`)},
		{"no round named", evening, care("")},
		{"twice a day", evening + "round \"morning\" {\n  at = \"08:00\"\n}\n", care(`round = ["morning", "evening"]`)},
		{"in turns again", turns(`"mon to fri"`, `"sat", "sun"`), care(`round = ["evening", "weekend"]`)},
	}
	for _, name := range []string{"care", "rounds"} {
		var feed []byte
		on := today
		for k, s := range steps {
			r := compiled(t, turnsPlan(s.rounds, s.care), "", on)
			fresh := built(t, r, name, nil)
			if k == 0 {
				feed = fresh
				continue
			}
			was, before := shownAt(t, name, feed, on-40, on+9), on
			on += 9
			r = compiled(t, turnsPlan(s.rounds, s.care), "", on)
			fresh, feed = built(t, r, name, nil), built(t, r, name, remembered(t, feed))
			over := func(from civil.Date, all map[string]int) map[string]int {
				out := maps.Clone(all)
				maps.DeleteFunc(out, func(at string, _ int) bool { return at < from.String() || at >= on.String() })
				return out
			}
			if name == "care" { // by round, a day that is over is what the new plan has
				if got, want := over(before, shownAt(t, name, feed, before, on)), over(before, was); !maps.Equal(got, want) {
					t.Errorf("%s, %s: of the days before it shows %v, and showed %v", name, s.title, got, want)
				}
			}
			if got, want := shownAt(t, name, feed, on, on+feeds.Days/2), shownAt(t, name, fresh, on, on+feeds.Days/2); !maps.Equal(got, want) || len(want) == 0 {
				t.Errorf("%s, %s: it shows %v, a first build %v", name, s.title, got, want)
			}
		}
	}
}

// TestTurnsAreSeries: care of every day in rounds of weekdays is one series a round, and not
// an entry for each day; what holidays change of it is left out of one and added to the other.
// Care for a date is an entry without a rule.
func TestTurnsAreSeries(t *testing.T) {
	const rounds = "dates \"holidays\" {\n  on = [\"2027-08-02 to 2027-08-06\"]\n}\n" +
		"round \"weekday\" {\n  at = \"08:30\"\n  on = [\"mon to fri\"]\n  not_on = [\"holidays\"]\n}\nround \"weekend\" {\n  at = \"10:00\"\n  on = [\"sat\", \"sun\", \"holidays\"]\n}\n"
	r := compiled(t, turnsPlan(rounds, "  care \"count\" {\n    every = \"day\"\n    round = [\"weekday\", \"weekend\"]\n  }\n"), "", today)
	var series []string
	single := 0
	for _, e := range entries(t, built(t, r, "care", nil)) {
		switch rule, _, _ := strings.Cut(property(e, "RRULE"), ";UNTIL"); {
		case rule != "":
			series = append(series, rule)
		case property(e, "CATEGORIES") == "count":
			single++
		}
	}
	slices.Sort(series)
	if want := []string{"FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR;WKST=MO", "FREQ=WEEKLY;BYDAY=SA,SU;WKST=MO"}; !slices.Equal(series, want) || single != 5 {
		t.Errorf("%d single entries beside %v", single, series)
	}
	r = compiled(t, turnsPlan(rounds, "  care \"count\" {\n    on = [\"2027-08-02\"]\n    round = [\"weekday\", \"weekend\"]\n  }\n"), "", today)
	for _, e := range entries(t, built(t, r, "care", nil)) {
		if property(e, "CATEGORIES") == "count" && property(e, "RRULE") != "" {
			t.Errorf("once is a series:\n%s", e)
		}
	}
}

// TestWhatOthersWereShown: where two people do a care in turns, and one has not been shown it
// yet, what the other was shown is not taken for theirs: a build of nothing new keeps each feed.
func TestWhatOthersWereShown(t *testing.T) {
	text := "keeper \"lead\" {}\nkeeper \"relief\" {}\n" +
		"round \"weekday\" {\n  at = \"08:30\"\n  on = [\"mon to fri\"]\n  keeper = \"lead\"\n}\nround \"weekend\" {\n  at = \"10:00\"\n  on = [\"sat\", \"sun\"]\n  keeper = \"relief\"\n}\n" +
		"calendar \"lead\" {\n  keepers = [\"lead\"]\n}\ncalendar \"relief\" {\n  keepers = [\"relief\"]\n}\n"
	text = turnsPlan(text, "  care \"water\" {\n    on = [\"sat\"]\n    round = [\"weekday\", \"weekend\"]\n  }\n")
	c, found := planned.Sound(t, planned.With(text, ""))
	at := today.At(12*60, c.Location)
	first := compile.Compile(c, found, at)
	heads := [][]byte{built(t, first, "lead", nil), built(t, first, "relief", nil)}
	again := compile.From(compile.Input{Plan: c, Loaded: found, Now: at, Told: feeds.ToldBy("fixtures", feeds.ReadHeads(heads))})
	for k, name := range []string{"lead", "relief"} {
		if got := built(t, again, name, remembered(t, heads[k])); !bytes.Equal(got, heads[k]) {
			t.Errorf("the feed of %s is another:\n%s", name, got)
		}
	}
}
