package stock_test

import (
	"strings"
	"testing"

	"vivary/compile"
	"vivary/internal/planned"
	"vivary/plan"
	"vivary/schema/civil"
)

// tasksOf are what the rounds have for a store, each with its days from today on.
func tasksOf(r *compile.Result, store string) map[string][]civil.Date {
	out := map[string][]civil.Date{}
	for e := range r.Roster.All() {
		if e.Store == nil || e.Store.Plan.Name.V != store {
			continue
		}
		for i := e.Days.Next(r.Horizon.Today); i >= 0; i = e.Days.Next(i + 1) {
			if e.Shown.Has(i) {
				out[e.Task] = append(out[e.Task], r.Horizon.Date(i))
			}
		}
	}
	return out
}

// with returns the days of the task that has some words in it.
func with(t *testing.T, all map[string][]civil.Date, words string) []civil.Date {
	t.Helper()
	for text, days := range all {
		if strings.Contains(strings.ToLower(text), words) {
			return days
		}
	}
	t.Errorf("no task with %q among %d", words, len(all))
	return nil
}

const jars = "culture \"flies\" {\n  prey = \"fruit-fly melanogaster\"\n  temperature = \"25 C\"\n}\n"

// A jar is looked at every few days, gets no food, and goes out on its thirtieth day, which a
// text of a fly stock centre has as the limit (source F57); so does one of which the log says
// nothing, and what was set up before the day of the plan.
func TestJarIsLookedAfter(t *testing.T) {
	today := civil.Must(2027, 1, 4)
	cups := eaters("cup", "1 to 9", "young", "every = \"3 days\"\n    prey = \"fruit-fly melanogaster\"\n    per_animal = 3")
	r := compiled(t, planned.With(house+jars+cups, ""), today)
	all := tasksOf(r, "flies")
	if look := with(t, all, "look into each jar"); len(look) < 100 || look[1]-look[0] != 3 {
		t.Errorf("looked at on %v", look)
	}
	for text := range all {
		if strings.Contains(text, "water gel") {
			t.Errorf("a jar gets %q", text)
		}
	}
	c := lot(t, r, "fruit-fly", "melanogaster").Cultures[0]
	out := 0
	for text, days := range all {
		if strings.HasPrefix(text, "Throw out the culture") {
			out++
			if len(days) != 1 || !strings.Contains(text, (days[0]-30).Short()) {
				t.Errorf("%s, on %v", text, days)
			}
		}
	}
	if before := 30 / c.Rotation.Every; out < len(c.Starts)+before-6 || out > len(c.Starts)+before+1 {
		t.Errorf("%d jars are set up, and %d thrown out", len(c.Starts), out)
	}
	r = compiled(t, planned.With(house+jars+cups, "2026-12-20 flies started 2\n"), today)
	if out := with(t, tasksOf(r, "flies"), "throw out the 2 cultures of melanogaster fruit flies that were set up on sun 20 dec"); len(out) != 1 || out[0] != civil.Must(2027, 1, 19) {
		t.Errorf("thrown out on %v", out)
	}
}

// What crashed is cleaned first, stands empty for a week (common practice, no source), and is
// looked after again from then on; a tub as soon as something came into it.
func TestCleanAfterCrash(t *testing.T) {
	today, clean := civil.Must(2027, 1, 4), civil.Must(2027, 1, 10)
	plan := house + jars + "tub \"box\" {\n  prey = \"cricket small\"\n}\n" + eaters("cup", "1 to 9", "young", "every = \"3 days\"\n    prey = \"fruit-fly melanogaster\"\n    per_animal = 3")
	r := compiled(t, planned.With(plan, "2027-01-03 flies crashed \"mites\"\n2027-01-04 box crashed\n"), today)
	for store, again := range map[string]civil.Date{"flies": clean, "box": clean + 1} {
		all := tasksOf(r, store)
		for text, days := range all {
			if crash := strings.HasPrefix(text, "Crashed"); crash && (len(days) != 1 || days[0] != again-7 || !strings.Contains(text, again.Short())) && store == "box" {
				t.Errorf("%s: %s on %v", store, text, days)
			} else if !crash && days[0] < again {
				t.Errorf("%s is empty until %s, and has %q on %s", store, again, text, days[0])
			}
		}
	}
	r = compiled(t, planned.With(plan, "2027-01-03 box crashed\n2027-01-04 box delivered 200\n"), today)
	if food := with(t, tasksOf(r, "box"), "water gel"); food[0] > today+1 {
		t.Errorf("there are crickets, and they get food on %s", food[0])
	}
}

// A colony goes on by itself: none is set up in turn, none thrown out, and when one would yield
// is not asked, unless it has to be set up.
func TestColonyGoesOn(t *testing.T) {
	today := civil.Must(2027, 1, 4)
	text := house + "culture \"roaches\" {\n  prey = \"roach medium\"\n  allowed_here = true\n}\n" + eaters("adult", "1 to 4", "adult", "every = \"7 days\"\n    prey = \"roach medium\"")
	r := compiled(t, planned.With(text, ""), today)
	for text := range tasksOf(r, "roaches") {
		if strings.HasPrefix(text, "Set up") || strings.HasPrefix(text, "Throw out the culture") {
			t.Errorf("a colony has %q", text)
		}
	}
	asked := func(r *compile.Result) (n int) {
		for _, f := range r.Findings {
			if f.Rule.ID == "culture-lead" {
				n++
			}
		}
		return n
	}
	if asked(r) != 0 {
		t.Error("of a colony that is there it is asked when it will yield")
	}
	r = compiled(t, planned.With(text, "2027-01-03 roaches crashed\n"), today)
	if set := with(t, tasksOf(r, "roaches"), "set up"); asked(r) != 1 || len(set) != 1 || set[0] != civil.Must(2027, 1, 10) {
		t.Errorf("set up on %v, and asked %d times", set, asked(r))
	}
}

// Each feeder of the library is looked after in a tub and in a culture, at least every month, and
// the dead are out within a week where a box makes flies; none has a dish of water to drown in.
func TestEveryFeederIsLookedAfter(t *testing.T) {
	lib := plan.NewLibrary()
	for _, name := range lib.FeederNames() {
		f := lib.Feeder(name)
		for _, where := range []string{"tub", "culture"} {
			of := f.UpkeepIn(where)
			if len(of) == 0 && len(f.Upkeep) > 0 {
				t.Errorf("%s: nothing in a %s", name, where)
			}
			for _, u := range of {
				if u.Every.V.N > 30 || !u.Quality.Set() {
					t.Errorf("%s, %s: every %s, %s", name, u.Name.V, u.Every.V, u.Quality.V)
				}
				if strings.Contains(u.Task.V, "dish") && !strings.Contains(u.Task.V, "no ") {
					t.Errorf("%s, %s: a dish: %s", name, u.Name.V, u.Task.V)
				}
			}
		}
	}
}
