package roster_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/robfig/cron/v3"

	"vivary/compile"
	"vivary/compile/identity"
	"vivary/compile/roster"
	"vivary/schema"
	"vivary/schema/civil"
)

// timings are ways of saying when, none of which depends on the log.
var timings = []string{
	"every = \"day\"", "every = \"2 days\"", "every = \"3 days\"\n    from = \"2027-01-05\"", "every = \"5 days\"\n    until = \"2027-09-30\"",
	"every = \"11 days\"", "every = \"2 weeks\"", "every = \"1 month\"", "every = \"3 months\"", "every = \"1 year\"", "on = [\"mon\", \"thu\"]",
	"on = [\"wed\"]\n    every = \"2 weeks\"", "on = [\"first tue\", \"last\"]", "on = [\"15th\", \"31st\"]", "on = [\"1 apr\", \"29 feb\"]", "cron = \"30 19 */3 * *\"", "cron = \"15 7 1,15 * 5\"",
}

// random returns a collection whose care has timings chosen at random; so have
// the rounds, and the windows in which care may be moved to them.
func random(rng *rand.Rand) string {
	var b strings.Builder
	fmt.Fprintf(&b, "round \"evening\" {\n  at = \"19:30\"\n}\nround \"some\" {\n  at = \"20:30\"\n  on = %s\n}\n", []string{`["mon", "wed", "fri"]`, `["tue"]`, `["first sat", "15th", "sun"]`}[rng.IntN(3)])
	for i := range 3 {
		var c strings.Builder
		c.WriteString(one)
		for _, kind := range []string{"look", "mist", "heat", "spot-clean", "weigh"} {
			fmt.Fprintf(&c, "  care %q {\n    %s\n", kind, timings[rng.IntN(len(timings))])
			if !strings.Contains(c.String()[strings.LastIndex(c.String(), "care "):], "cron") && rng.IntN(3) == 0 {
				fmt.Fprintf(&c, "    round = \"some\"\n    window = \"%d days\"\n", 3+rng.IntN(5))
			}
			c.WriteString("  }\n")
		}
		fmt.Fprintf(&c, "  feeding \"only\" {\n    %s\n    per_animal = 2\n    rotate     = [\"cricket small\", \"cricket adult\", \"roach medium\"]\n    leftovers  = \"%d days\"\n    gut_load   = true\n  }\n", timings[rng.IntN(len(timings))], 1+rng.IntN(3))
		b.WriteString(box(fmt.Sprint("box-", i), c.String()))
	}
	return house(b.String())
}

// TestDayOfBuildDoesNotMatter: whenever a plan is built, each care is due on the
// same days, and each meal has the same turn of its menu.
func TestDayOfBuildDoesNotMatter(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	for range 60 {
		text := random(rng)
		log := ""
		if rng.IntN(2) == 0 {
			log = fmt.Sprintf("2026-12-%02d box-1 moult %d\n", 1+rng.IntN(31), 1+rng.IntN(2))
		}
		first := day("2027-01-01") + civil.Date(rng.IntN(200))
		second := first + civil.Date(1+rng.IntN(40))
		a, b := compiled(t, text, log, first), compiled(t, text, log, second)
		as, later := planned15(t, a), map[identity.Identity]*roster.Entry{}
		for y := range b.Roster.All() {
			later[y.ID] = y
		}
		for _, x := range as {
			y := later[x.ID]
			if y == nil && x.Once != nil {
				continue // a task of the log that is long over
			}
			// What lies near the end of the window may come from beyond it; no feed reaches there.
			for d := second; d <= a.Horizon.Last()-32; d++ {
				i, j := int(d-a.Horizon.From), int(d-b.Horizon.From)
				if x.Days.Has(i) != y.Days.Has(j) {
					t.Fatalf("built on %s and %s, %s is due on %s only once\n%s", first, second, x.ID.String(), d, text)
				}
				if p, q := x.Portion(i), y.Portion(j); x.Days.Has(i) && p != nil && p.Prey != q.Prey {
					t.Fatalf("built on %s and %s, %s on %s is %s and %s", first, second, x.ID.String(), d, p.Prey, q.Prey)
				}
			}
		}
	}
}

// planned15 returns the entries of a collection, which has some.
func planned15(t *testing.T, r *compile.Result) []*roster.Entry {
	t.Helper()
	all := slices.Collect(r.Roster.All())
	if len(all) < 15 {
		t.Fatalf("%d entries", len(all))
	}
	return all
}

// TestMenuTakesTurns: the items of a menu follow one another from meal to meal,
// in their order, without a break at the horizon's first day or elsewhere.
func TestMenuTakesTurns(t *testing.T) {
	text := house(box("ash", one+"  feeding \"only\" {\n    on         = [\"tue\", \"fri\"]\n    per_animal = 2\n    rotate     = [\"cricket small\", \"cricket adult\", \"roach medium\"]\n  }\n"))
	order := []string{"small cricket", "adult cricket", "medium roach"}
	turn := -1
	for _, on := range []string{"2027-01-01", "2027-01-12", "2027-02-23"} {
		r := compiled(t, text, "", day(on))
		s := find(t, r, "ash", "feed only")
		last := -1
		for i := s.Days.Next(r.Horizon.Today); i >= 0; i = s.Days.Next(i + 1) {
			p := s.Portion(i).Prey
			k := -1
			for n, name := range order {
				if p.Size+" "+p.Feeder == name {
					k = n
				}
			}
			if k < 0 || last >= 0 && k != (last+1)%3 {
				t.Fatalf("%s: %s %s after item %d", r.Horizon.Date(i), p.Size, p.Feeder, last)
			}
			last = k
		}
		// From one of these days to the next there are 3, then 12 meals.
		i := s.Days.Next(r.Horizon.Today)
		p := s.Portion(i).Prey
		if first := p.Size + " " + p.Feeder; turn < 0 {
			for n, name := range order {
				if name == first {
					turn = n
				}
			}
		} else if first != order[turn] {
			t.Errorf("built on %s the next meal is %s, want %s", on, first, order[turn])
		}
	}
}

// TestWhatGoesWithAMeal: leftovers are looked for so many days after each meal
// and feeders are fed the day before it, also where that meal lies beyond an end
// of the horizon; nothing follows a meal that is held, or that the first meal after a
// moult takes the place of.
func TestWhatGoesWithAMeal(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	on := day("2027-03-01")
	for range 40 {
		after := 1 + rng.IntN(3)
		when := timings[rng.IntN(len(timings))]
		text := house(box("ash", one+fmt.Sprintf("  feeding \"only\" {\n    %s\n    per_animal = 2\n    prey = \"cricket small\"\n    leftovers = \"%d days\"\n    gut_load = true\n  }\n", when, after)))
		log := fmt.Sprintf("2027-02-%02d ash moult 2\n", 18+rng.IntN(10))
		r := compiled(t, text, log, on)
		held := func(d civil.Date) bool {
			for _, h := range r.Lives[0].Groups[0].Holds {
				if h.Takes(schema.KindFeed) && h.From <= d && d < h.Until {
					return true
				}
			}
			return false
		}
		// A build a month before and one a month later know of the days beyond.
		meals := map[civil.Date]bool{}
		for _, k := range []civil.Date{-31, 31} {
			x := compiled(t, text, "", on+k)
			s := find(t, x, "ash", "feed only")
			for i := s.Days.Next(x.Horizon.Today); i >= 0; i = s.Days.Next(i + 1) {
				d := x.Horizon.Date(i)
				meals[d] = !held(d)
			}
		}
		fed := find(t, r, "ash", "feed only")
		for i := range r.Horizon.Days {
			if out := fed.Out(roster.TooSoon, roster.InPlace); out != nil && out.Has(i) {
				meals[r.Horizon.Date(i)] = false // too soon after the first meal after the moult
			}
		}
		first := r.Lives[0].Groups[0].Offered[0]
		for name, off := range map[string]int{"leftovers only": after, "gut-load only": -1} {
			s := find(t, r, "ash", name)
			for i := r.Horizon.Today; i < r.Horizon.Days-1; i++ {
				d := r.Horizon.Date(i)
				if want := meals[d-civil.Date(off)] || off > 0 && d-civil.Date(off) == first; s.Days.Has(i) != want {
					t.Fatalf("%s, %s: %s on %s is %v\n%s", when, log, name, d, s.Days.Has(i), text)
				}
			}
		}
	}
}

// TestMovedToRounds: where a round is not held every day, care stands on its days
// only: on the nearest within the window, the earlier of two.
func TestMovedToRounds(t *testing.T) {
	for _, c := range []struct{ on, window, want string }{
		{"tue", "1 day", "Mon 1 Mar, Mon 8 Mar, Mon 15 Mar"},
		{"sun", "1 day", "Mon 1 Mar, Mon 8 Mar, Mon 15 Mar"}, // the first is that of Sunday 28 February
		{"thu", "3 days", "Mon 1 Mar, Mon 8 Mar, Mon 15 Mar"},
		{"fri", "3 days", "Mon 1 Mar, Mon 8 Mar, Mon 15 Mar"},
		{"mon", "0 days", "Mon 1 Mar, Mon 8 Mar, Mon 15 Mar"},
	} {
		text := house("round \"evening\" {\n  at = \"19:30\"\n}\nround \"mondays\" {\n  at = \"20:30\"\n  on = [\"mon\"]\n}\n",
			box("ash", one+"  care \"weigh\" {\n    on     = [\""+c.on+"\"]\n    round  = \"mondays\"\n    window = \""+c.window+"\"\n  }\n"))
		// On whatever day of the week it is built.
		for on := day("2027-02-22"); on <= day("2027-03-01"); on++ {
			r := compiled(t, text, "", on)
			if len(r.Roster.Findings) > 0 {
				t.Errorf("%s within %s, built on %s: %s", c.on, c.window, on, r.Roster.Findings[0].Text)
			}
			if got := days(r, find(t, r, "ash", "weigh"), day("2027-03-01"), day("2027-03-20")); got != c.want {
				t.Errorf("%s within %s, built on %s: %s\nwant %s", c.on, c.window, on, got, c.want)
			}
		}
	}
}

// TestAwayIsMovedToVisits: what the stand-in does stands on days of visits only;
// what falls between two is done at both of them, and what falls between leaving and
// the first, or the last and the return, at both of these.
func TestAwayIsMovedToVisits(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 10))
	for range 60 {
		on := day("2027-05-01")
		from := on + 10 + civil.Date(rng.IntN(40))
		to := from + 1 + civil.Date(rng.IntN(25))
		every := 1 + rng.IntN(6)
		away := fmt.Sprintf("away \"lead\" {\n  from = \"%s\"\n  to   = \"%s\"\n", from, to)
		visits := map[time.Weekday]bool{}
		if rng.IntN(3) > 0 {
			visits[time.Tuesday], visits[time.Saturday] = true, true
			away += "  cover  = \"sitter\"\n  visits = [\"tue\", \"sat\"]\n"
		}
		text := house("keeper \"lead\" {\n}\nkeeper \"sitter\" {\n}\nround \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n}\n", away+"}\n",
			box("ash", one+fmt.Sprintf("  care \"water\" {\n    every = \"%d days\"\n    from  = \"2027-05-01\"\n  }\n", every)))
		r := compiled(t, text, "", on)
		s := find(t, r, "ash", "water")
		want := map[civil.Date]bool{}
		there := func(d civil.Date) bool {
			i, _ := r.Horizon.Index(d)
			_, ok := r.Roster.People.Doer("lead", i)
			return ok
		}
		for d := on; d <= r.Horizon.Last(); d += civil.Date(every) {
			at, before := d, d
			for !there(at) {
				at++
			}
			for !there(before) {
				before--
			}
			want[at], want[before] = true, true
			if at > d && at != to && !visits[at.Weekday()] {
				t.Fatalf("%s is no day of a visit", at)
			}
		}
		for i := r.Horizon.Today; i < r.Horizon.Days; i++ {
			d := r.Horizon.Date(i)
			if s.Days.Has(i) != want[d] {
				t.Fatalf("every %d days, away %s to %s: water on %s is %v", every, from, to, d, s.Days.Has(i))
			}
			if !there(d) && (d < from || d >= to) {
				t.Fatalf("nobody is there on %s", d)
			}
		}
	}
}

// TestDayOfBuildWhileAwayDoesNotMatter: built before an absence with a stand-in, or
// on any day of it, a plan has the same days, and the same meals of killed prey. What
// a visit did is done; what fell between two visits is still to come.
func TestDayOfBuildWhileAwayDoesNotMatter(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	for range 60 {
		from := day("2027-07-10") + civil.Date(rng.IntN(7))
		to := from + 1 + civil.Date(rng.IntN(25))
		visits := []string{`["tue", "sat"]`, `["wed"]`, `["mon", "thu", "fri"]`}[rng.IntN(3)]
		trained := []string{"", "  trained = \"feeding\"\n"}[rng.IntN(2)]
		var c strings.Builder
		for _, kind := range []string{"look", "water", "weigh", "deep-clean"} {
			fmt.Fprintf(&c, "  care %q {\n    %s\n  }\n", kind, timings[rng.IntN(len(timings))])
		}
		fmt.Fprintf(&c, "  feeding \"only\" {\n    %s\n    per_animal = 2\n    prey       = \"cricket small\"\n    leftovers  = \"%d days\"\n    gut_load   = true\n  }\n", timings[rng.IntN(len(timings))], 1+rng.IntN(2))
		need := fmt.Sprintf("  need \"food\" {\n    longest  = \"%d days\"\n    shortest = \"%d days\"\n    severity = \"caution\"\n    source   = [\"fixture\"]\n    because  = \"fixture of this test\"\n    review   = \"2040-01-01\"\n  }\n", 5+rng.IntN(25), 1+rng.IntN(3))
		text := house("keeper \"lead\" {\n}\nkeeper \"sitter\" {\n"+trained+"}\nround \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n}\n",
			fmt.Sprintf("away \"lead\" {\n  from   = \"%s\"\n  to     = \"%s\"\n  cover  = \"sitter\"\n  visits = %s\n}\n", from, to, visits), box("ash", one+c.String()))
		text = strings.Replace(text, "species \"fixture\" {\n", "species \"fixture\" {\n"+need, 1)
		first := from - 5
		second := from - 2 + civil.Date(rng.IntN(int(to-from)+4))
		log := ""
		if rng.IntN(2) == 0 {
			log = fmt.Sprintf("%s ash moult %d\n", first-civil.Date(rng.IntN(12)), 1+rng.IntN(2))
		}
		a, b := compiled(t, text, log, first), compiled(t, text, log, second)
		later := map[string]*roster.Entry{}
		for y := range b.Roster.All() {
			later[y.ID.String()] = y
		}
		for x := range a.Roster.All() {
			y := later[x.ID.String()]
			if y == nil { // a task of the log that is over
				y = &roster.Entry{Days: b.Horizon.New()}
			}
			for d := second; d < to+20; d++ {
				i, j := int(d-a.Horizon.From), int(d-b.Horizon.From)
				if x.Days.Has(i) != y.Days.Has(j) {
					t.Fatalf("built on %s and %s, %s is due on %s: %v and %v\n%s%s", first, second, x.ID.String(), d, x.Days.Has(i), y.Days.Has(j), log, text)
				}
				if killed := func(s *roster.Entry, i int) bool { return s.Killed != nil && s.Killed.Has(i) }; killed(x, i) != killed(y, j) {
					t.Fatalf("built on %s and %s, the meal of %s is killed once\n%s", first, second, d, text)
				}
			}
		}
	}
}

// TestHalfSeason: in a season of half the meals every second one is left out with
// what goes with it, the same ones whenever the plan is built.
func TestHalfSeason(t *testing.T) {
	text := house(box("ash", one+"  feeding \"only\" {\n    on         = [\"mon\", \"thu\"]\n    per_animal = 1\n    prey       = \"cricket small\"\n    gut_load   = true\n  }\n  care \"mist\" {\n    every = \"day\"\n  }\n  season \"rest\" {\n    from    = \"2 mar\"\n    to      = \"19 mar\"\n    feeding = \"half\"\n  }\n"))
	for _, on := range []string{"2027-02-20", "2027-03-01", "2027-03-03", "2027-03-08", "2027-03-12"} {
		r := compiled(t, text, "", day(on))
		for name, want := range map[string]string{
			"feed only":      "Mon 1 Mar, Thu 4 Mar, Thu 11 Mar, Thu 18 Mar, Mon 22 Mar",
			"leftovers only": "Tue 2 Mar, Fri 5 Mar, Fri 12 Mar, Fri 19 Mar, Tue 23 Mar",
			"gut-load only":  "Wed 3 Mar, Wed 10 Mar, Wed 17 Mar, Sun 21 Mar, Wed 24 Mar",
		} {
			from := max(day(on), day("2027-03-01"))
			if got := days(r, find(t, r, "ash", name), from, day("2027-03-25")); got != after(from, want) {
				t.Errorf("built on %s: %s on %s\nwant %s", on, name, got, want)
			}
		}
	}
}

// TestAfterLast: what runs from the last time is counted from the log, whenever
// the plan is built, and goes on as planned where the log is silent.
func TestAfterLast(t *testing.T) {
	text := house(box("ash", one+"  care \"water\" {\n    after_last = \"3 days\"\n  }\n  feeding \"only\" {\n    after_last = \"7 days\"\n    per_animal = 1\n    prey       = \"cricket small\"\n  }\n"))
	log := "2027-02-20 ash done water\n2027-02-25 ash done water\n2027-02-22 ash fed\n"
	for on := day("2027-02-25"); on <= day("2027-03-02"); on++ {
		r := compiled(t, text, log, on)
		if got, want := days(r, find(t, r, "ash", "water"), on, day("2027-03-10")), after(on, "Sun 28 Feb, Wed 3 Mar, Sat 6 Mar, Tue 9 Mar"); got != want {
			t.Errorf("built on %s: water on %s\nwant %s", on, got, want)
		}
		if got, want := days(r, find(t, r, "ash", "feed only"), on, day("2027-03-10")), after(on, "Mon 1 Mar, Mon 8 Mar"); got != want {
			t.Errorf("built on %s: meals on %s\nwant %s", on, got, want)
		}
	}
}

// after leaves out the days before on of a list of days of February and March.
func after(on civil.Date, list string) string {
	var out []string
	for _, s := range strings.Split(list, ", ") {
		at, err := time.Parse("Mon 2 Jan 2006", s+" 2027")
		if err == nil && civil.FromTime(at) >= on {
			out = append(out, s)
		}
	}
	return strings.Join(out, ", ")
}

// TestCronIsTheLibrarys: a cron line brings care at the times at which
// github.com/robfig/cron/v3 would run it, in the collection's zone.
func TestCronIsTheLibrarys(t *testing.T) {
	for _, line := range []string{"30 19 * * 1,4", "0 8 */2 * *", "15 7,18 1,15 * *", "0 12 13 * 5", "45 6 * 3-10 *", "0 9 31 * *", "0 20 1-7 * SUN"} {
		text := house(box("ash", one+"  care \"weigh\" {\n    cron = \""+line+"\"\n  }\n"))
		r := compiled(t, text, "", day("2027-02-01"))
		got := map[string]bool{}
		for s := range r.Roster.All() {
			for k := s.Days.Next(r.Horizon.Today); k >= 0; k = s.Days.Next(k + 1) {
				got[r.Horizon.Date(k).String()+" "+s.At().String()] = true
			}
		}
		judge, err := cron.ParseStandard(line)
		if err != nil {
			t.Fatal(err)
		}
		n := 0
		end := (r.Horizon.Last() + 1).At(0, r.Plan.Location)
		for at := judge.Next(r.Today.At(0, r.Plan.Location).Add(-time.Second)); at.Before(end); at = judge.Next(at) {
			if n++; !got[at.Format("2006-01-02 15:04")] {
				t.Fatalf("%s: nothing on %s", line, at)
			}
		}
		if n != len(got) || n == 0 {
			t.Errorf("%s: %d times, the library has %d", line, len(got), n)
		}
	}
}
