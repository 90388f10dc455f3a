package roster_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/schema/civil"
)

// turn is what a rota says, as the test throws it.
type turn struct {
	keeper string
	days   []time.Weekday // nil for a date
	week   int            // of two, -1 for both
	on     civil.Date
}

// rotas throws a rota of two weeks in which no weekday is two people's.
func rotas(rng *rand.Rand, today civil.Date) (all []turn, text string) {
	free := [2]map[time.Weekday]bool{{}, {}}
	var b strings.Builder
	fmt.Fprintf(&b, "rota \"shared\" {\n  week_a = %q\n", (today - civil.Date(rng.IntN(90))).String())
	for range 1 + rng.IntN(4) {
		t := turn{keeper: []string{"lead", "relief", "third"}[rng.IntN(3)], week: rng.IntN(3) - 1}
		if rng.IntN(3) == 0 {
			t.on = today + civil.Date(rng.IntN(60))
			if slices.ContainsFunc(all, func(o turn) bool { return o.on == t.on }) {
				continue
			}
			all = append(all, t)
			fmt.Fprintf(&b, "  turn %q { on = [%q] }\n", t.keeper, t.on.String())
			continue
		}
		var names []string
		for w := range time.Weekday(7) {
			taken := false
			for k := range 2 {
				taken = taken || (t.week < 0 || t.week == k) && free[k][w]
			}
			if taken || rng.IntN(3) > 0 {
				continue
			}
			for k := range 2 {
				free[k][w] = free[k][w] || t.week < 0 || t.week == k
			}
			t.days, names = append(t.days, w), append(names, fmt.Sprintf("%q", strings.ToLower(w.String()[:3])))
		}
		if len(names) == 0 {
			continue
		}
		all = append(all, t)
		fmt.Fprintf(&b, "  turn %q {\n    on = [%s]\n", t.keeper, strings.Join(names, ", "))
		if t.week >= 0 {
			fmt.Fprintf(&b, "    weeks = %q\n", string(rune('a'+t.week)))
		}
		b.WriteString("  }\n")
	}
	if len(all) == 0 {
		return rotas(rng, today)
	}
	return all, b.String() + "}\n"
}

// whoseDay reads a rota day by day, with the calendar of the standard library.
func whoseDay(all []turn, text string, d civil.Date) string {
	for _, t := range slices.Backward(all) {
		if t.days == nil && t.on == d {
			return t.keeper
		}
	}
	weekA, _ := time.Parse(time.DateOnly, strings.SplitN(strings.SplitN(text, "week_a = \"", 2)[1], "\"", 2)[0])
	for weekA.Weekday() != time.Monday {
		weekA = weekA.AddDate(0, 0, -1)
	}
	at, _ := time.Parse(time.DateOnly, d.String())
	weeks := int(at.Sub(weekA) / (7 * 24 * time.Hour))
	if at.Before(weekA) {
		weeks--
	}
	two := strings.Contains(text, "weeks = \"b\"") // with an a alone every week is one
	for _, t := range all {
		if slices.Contains(t.days, at.Weekday()) && (t.week < 0 || !two || weeks%2 != 0 == (t.week == 1)) {
			return t.keeper
		}
	}
	return "lead"
}

const people = "keeper \"lead\" {\n}\nkeeper \"relief\" {\n}\nkeeper \"third\" {\n}\n"

// shared is a box with care of several sorts in a round.
func shared(on, rota string) string {
	return people + "round \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n" + on + rota + "}\n" +
		box("box", one+"  care \"look\" {\n    every = \"day\"\n  }\n  care \"weigh\" {\n    every = \"3 days\"\n  }\n  care \"spot-clean\" {\n    on = [\"sat\"]\n    window = \"3 days\"\n  }\n  care \"dish\" {\n    on = [\"fri\", \"sat\"]\n    window = \"1 day\"\n  }\n  feeding \"only\" {\n    every      = \"4 days\"\n    per_animal = 1\n    prey       = \"cricket small\"\n    leftovers  = \"1 day\"\n  }\n")
}

// byCare are the days of each care, with who does it.
func byCare(t *testing.T, r *compile.Result) map[string]map[int]string {
	t.Helper()
	out := map[string]map[int]string{}
	for e := range r.Roster.All() {
		if out[e.Name] == nil {
			out[e.Name] = map[int]string{}
		}
		for i := e.Days.Next(r.Horizon.Today); i >= 0 && i < r.Horizon.Days-32; i = e.Days.Next(i + 1) {
			if before, twice := out[e.Name][i]; twice {
				t.Fatalf("%s is done twice on %s, by %s and %s", e.Name, r.Horizon.Date(i), before, e.Keeper)
			}
			out[e.Name][i] = e.Keeper
		}
	}
	return out
}

// TestRota: a rota changes who does what, and not what is done: on the same days as without one
// everything is done once, each by whose the day is.
func TestRota(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 31))
	today := day("2027-01-06")
	for range 60 {
		turns, text := rotas(rng, today)
		for _, on := range []string{"", "  on = [\"mon\", \"wed\", \"fri\", \"sun\"]\n", "  not_on = [\"2027-01-20 to 2027-01-22\"]\n"} {
			with := byCare(t, compiled(t, house(text+shared(on, "  rota = \"shared\"\n")), "", today))
			r := compiled(t, house(shared(on, "")), "", today)
			for name, days := range byCare(t, r) {
				if len(with[name]) != len(days) {
					t.Fatalf("%s is done on %d days, and on %d without a rota\n%s%s", name, len(with[name]), len(days), on, text)
				}
				for i := range days {
					if want := whoseDay(turns, text, r.Horizon.Date(i)); with[name][i] != want {
						t.Fatalf("%s on %s is done by %q, and the day is %s's\n%s%s", name, r.Horizon.Date(i), with[name][i], want, on, text)
					}
				}
			}
		}
	}
}

const weekends = "rota \"shared\" {\n  turn \"relief\" { on = [\"sat\", \"sun\"] }\n}\n"

// TestSkippedInARota: what was left undone on somebody's day is done by whoever has the next,
// once.
func TestSkippedInARota(t *testing.T) {
	// 2027-01-09 and 10 are a Saturday and a Sunday.
	text := house(weekends + shared("", "  rota = \"shared\"\n"))
	cleaned := func(log string, on civil.Date) (out []string) {
		care := strings.Fields(log)[3]
		r := compiled(t, text, log, on)
		for e := range r.Roster.All() {
			for i := e.Days.Next(r.Horizon.Today); i >= 0 && i < r.Horizon.Today+6 && e.Name == care; i = e.Days.Next(i + 1) {
				out = append(out, r.Horizon.Date(i).String()+" "+e.Keeper)
			}
		}
		return out
	}
	if got := cleaned("2027-01-09 box skipped spot-clean\n", day("2027-01-11")); !slices.Equal(got, []string{"2027-01-11 lead", "2027-01-16 relief"}) {
		t.Errorf("skipped by relief: %q", got)
	}
	if got := cleaned("2027-01-09 box skipped spot-clean\n", day("2027-01-10")); !slices.Equal(got, []string{"2027-01-10 relief"}) {
		t.Errorf("skipped by relief, whose the next day is: %q", got)
	}
	if got := cleaned("2027-01-09 box skipped spot-clean\n2027-01-11 box done spot-clean\n", day("2027-01-12")); !slices.Equal(got, []string{"2027-01-16 relief"}) {
		t.Errorf("done by lead: %q", got)
	}
	if got := cleaned("2027-01-08 box skipped dish\n", day("2027-01-11")); !slices.Equal(got, []string{"2027-01-15 lead", "2027-01-16 relief"}) {
		t.Errorf("skipped by lead, and relief had the next day: %q", got)
	}
}

// TestRotaIsNoStandIn: who has a turn does everything, as whose round it is; who stands in for
// them does what stand-ins may.
func TestRotaIsNoStandIn(t *testing.T) {
	r := compiled(t, house(weekends+shared("", "  rota = \"shared\"\n"), "away \"relief\" {\n  from  = \"2027-01-16\"\n  to    = \"2027-01-18\"\n  cover = \"third\"\n}\n"), "", day("2027-01-06"))
	of := func(d civil.Date) (*roster.Entry, int) {
		i, _ := r.Horizon.Index(d)
		for e := range r.Roster.All() {
			if e.Name == "look" && e.Days.Has(i) {
				return e, i
			}
		}
		t.Fatalf("nobody looks on %s", d)
		return nil, 0
	}
	for d, want := range map[string]struct {
		who  string
		live bool
	}{"2027-01-09": {"relief", true}, "2027-01-11": {"lead", true}, "2027-01-16": {"third", false}, "2027-01-18": {"lead", true}} {
		e, i := of(day(d))
		who, _ := r.Roster.Doer(e, i)
		if may := r.Roster.May(e, i); who != want.who || may.Live != want.live {
			t.Errorf("%s: %s, live prey %v", d, who, may.Live)
		}
	}
}

// TestTurnThatChangesNothing: a date of a turn that is its keeper's anyway, or that is over, is
// most often not the day that was meant.
func TestTurnThatChangesNothing(t *testing.T) {
	for swap, want := range map[string]string{
		`turn "relief" { on = ["2027-01-08"] }`:               "", // a Friday
		`turn "relief" { on = ["2027-01-09"] }`:               "date-idle",
		`turn "lead" { on = ["2027-01-08"] }`:                 "date-idle",
		`turn "lead" { on = ["2027-01-09"] }`:                 "",
		`turn "lead" { on = ["2026-01-09"] }`:                 "date-over",
		`turn "third" { on = ["2027-01-04 to 2027-01-10"] }`:  "",
		`turn "relief" { on = ["2027-01-09", "2027-01-11"] }`: "date-idle",
	} {
		text := strings.Replace(weekends, "  turn", "  "+swap+"\n  turn", 1)
		r := compiled(t, house(text+shared("", "  rota = \"shared\"\n")), "", day("2027-01-06"))
		got := ""
		for _, f := range r.Findings {
			if strings.HasPrefix(f.Rule.ID, "date-") {
				got += f.Rule.ID
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", swap, got, want)
		}
	}
}

// TestBackInARota: who has handed back does not think that the other has all days now.
func TestBackInARota(t *testing.T) {
	for rota, want := range map[string]string{"  rota = \"shared\"\n": "Lead does the rounds again from today, on the days that the rota says", "": "Lead does the rounds again from today"} {
		text := ""
		if rota != "" {
			text = weekends
		}
		r := compiled(t, house(text+shared("", rota), "away \"lead\" {\n  from  = \"2027-01-12\"\n  to    = \"2027-01-14\"\n  cover = \"third\"\n}\n"), "", day("2027-01-06"))
		got := ""
		for _, l := range r.Roster.Leaves() {
			if strings.HasPrefix(l.Title, "Handed back") {
				got += strings.Join(l.Lines, "; ")
			}
		}
		if got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
