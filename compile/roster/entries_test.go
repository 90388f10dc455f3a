package roster_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/internal/planned"
	"vivary/plan/source"
)

// all names the entries of box ash, in their order.
func all(r *compile.Result) string {
	var out []string
	for e := range r.Roster.All() {
		out = append(out, e.Name)
	}
	return strings.Join(out, ", ")
}

// TestEntriesOfABox: which care a box has, in the order of the kinds: its own, and the
// sheet's where the box has none of that name or kind and animals of that stage.
func TestEntriesOfABox(t *testing.T) {
	const sheetCare = `care "mist" {
  every = "day"
}
care "weigh" {
  every  = "30 days"
  stages = ["adult"]
}
care "device-test" {
  every = "30 days"
}
feeding "older" {
  stages     = ["juvenile"]
  every      = "7 days"
  per_animal = 1
  prey       = "cricket small"
}
feeding "younger" {
  stages     = ["young"]
  every      = "3 days"
  per_animal = 2
  prey       = "cricket small"
}
`
	staged := func(stage string) string { return strings.Replace(ash(""), `"juvenile"`, `"`+stage+`"`, 1) }
	unknown := strings.Replace(ash(""), "    stage = \"juvenile\"\n", "", 1)
	const heater = `climate { warm_end = "30 C"; heater "mat" { power = "10 W"; place = "side"; thermostat = "30 C" } }`
	for _, c := range []struct{ title, plan, log, want string }{
		{"the sheet's", ash(""), "", "leftovers only, mist, feed only"},
		{"with a heater to test", ash(heater), "", "leftovers only, mist, feed only, device-test"},
		{"of adults", staged("adult"), "", "mist, weigh"},
		{"of newborns", staged("newborn"), "", "newborn/only, mist"},
		{"of an unknown stage", unknown, "", "leftovers only, mist, feed only, weigh"},
		{"its own of that name", ash(`care "mist" { every = "3 days" }`), "", "leftovers only, mist, feed only"},
		{"its own of that kind", ash(`care "dew" { kind = "mist"; every = "3 days" }`), "", "leftovers only, dew, feed only"},
		{"switched off", ash(`care "mist" { off = true; because = "a fogger does it" } feeding "only" { off = true; because = "fed elsewhere" }`), "", ""},
		{"of killed prey", ash(`feeding "only" { killed = true }`), "", "mist, feed only"},
		{"with a gut-load", ash(`feeding "only" { gut_load = true }`), "", "leftovers only, mist, feed only, gut-load only"},
		{"all gone", ash(""), "20 Jun ash died 2", ""}, // there are no others to look at
		{"one gone", ash(""), "20 Jun ash died", "after-death/2027-06-20, leftovers only, mist, feed only"},
	} {
		r := compiled(t, with(sheetCare, c.plan), logged(c.log), on("1 Jul"))
		if got := all(r); got != c.want {
			t.Errorf("%s: %s\nwant %s", c.title, got, c.want)
		}
	}
	e := find(t, compiled(t, with(sheetCare, unknown), "", on("1 Jul")), "ash", "feed only")
	if e.Words() != "every 3 days" || !e.FromSheet || e.Menu[0].Items != 2 || !e.Menu[0].Days.Has(0) {
		t.Errorf("of an unknown stage they are fed %s, %v each", e.Words(), e.Menu[0].Items)
	}
}

// TestBoxesOfWhichLittleIsKnown: animals of an unknown stage whose sheet says nothing of
// meals get none; meals without prey have no menu; and of an unknown species nothing is
// planned.
func TestBoxesOfWhichLittleIsKnown(t *testing.T) {
	unknown := strings.Replace(ash(""), "    stage = \"juvenile\"\n", "", 1)
	if got := all(compiled(t, house(unknown), "", on("1 Jul"))); got != "" {
		t.Errorf("of an unknown stage: %s", got)
	}
	e := find(t, compiled(t, house(ash(`feeding "only" { on = ["mon"] }`)), "", on("1 Jul")), "ash", "feed only")
	if e.Menu != nil || e.Portion(e.Days.Next(0)) != nil {
		t.Errorf("without prey: %v", e.Menu)
	}
	c, found := planned.Files(t, planned.With(house(strings.Replace(water(`every = "day"`), `species = "fixture"`, `species = "unheard-of"`, 1)), ""))
	if got := all(compile.Compile(c, found, on("1 Jul").At(12*60, c.Location))); got != "" {
		t.Errorf("of an unknown species: %s", got)
	}
}

// TestMealsOfPlanAndSheet: what a plan leaves open of a meal is the sheet's.
func TestMealsOfPlanAndSheet(t *testing.T) {
	const meal = "feeding \"all\" {\n  every = \"7 days\"\n  per_animal = 3\n  prey = \"cricket small\"\n  killed = true\n}\n"
	for _, c := range []struct {
		own, words string
		items      float64
		prey       string
		live       bool
	}{
		{``, "every 7 days", 3, "small cricket", false},
		{`feeding "only" { every = "4 days" }`, "every 4 days", 3, "small cricket", false},
		{`feeding "only" { per_animal = 2 }`, "every 7 days", 2, "small cricket", false},
		{`feeding "only" { prey = "roach medium" }`, "every 7 days", 3, "medium roach", true},
		{`feeding "only" { rotate = ["roach medium", "cricket small"] }`, "every 7 days", 3, "medium roach", true},
		{`feeding "only" { killed = false }`, "every 7 days", 3, "small cricket", true},
		{`feeding "only" { every = "4 days"; per_animal = 2; prey = "roach medium" }`, "every 4 days", 2, "medium roach", true},
		{`feeding "only" { every = "4 days"; per_animal = 2 }`, "every 4 days", 2, "small cricket", false},
		{`feeding "only" { every = "4 days"; prey = "roach medium" }`, "every 4 days", 3, "medium roach", true},
	} {
		r := compiled(t, with(meal, ash(c.own)), "", on("1 Jul"))
		e := find(t, r, "ash", "feed only")
		p := e.Menu[0]
		if got := p.Prey.Size + " " + p.Prey.Feeder; e.Words() != c.words || p.Items != c.items || got != c.prey || e.Meal.Killed.V == c.live {
			t.Errorf("%s: %s %v of %s, killed %v", c.own, e.Words(), p.Items, got, e.Meal.Killed.V)
		}
		if e.FromSheet != (c.own == "") {
			t.Errorf("%s: from the sheet %v", c.own, e.FromSheet)
		}
	}
}

// TestOwnTimingStands: care that says how often, in whatever way, is not asked of the
// sheet.
func TestOwnTimingStands(t *testing.T) {
	for _, when := range []string{`on = ["wed"]`, `every = "3 days"`, `after_last = "3 days"`, `cron = "0 9 * * 3"`} {
		r := compiled(t, with("care \"mist\" {\n  every = \"day\"\n}\n", ash(`care "mist" { `+when+` }`)), "", on("1 Jul"))
		e := find(t, r, "ash", "mist")
		if n := e.Days.CountFrom(r.Horizon.Today); n > 140 || n < 50 || len(r.Roster.Findings) > 0 || e.FromSheet {
			t.Errorf("%s: on %d days", when, n)
		}
	}
}

// TestMealsOfThoseWhoAreThere: a single animal is fed, and of two groups the one that
// is gone is not.
func TestMealsOfThoseWhoAreThere(t *testing.T) {
	const fed = `feeding "only" { on = ["mon"]; per_animal = 1; prey = "cricket small" } feeding "other" { on = ["mon"]; per_animal = 1; prey = "cricket small" }`
	r := compiled(t, house(pair(fed)), logged("20 Jun ash only died 1\n20 Jun ash other died 2"), on("1 Jul"))
	if got := all(r); got != "after-death/2027-06-20, leftovers only, feed only" {
		t.Errorf("%s", got)
	}
}

// TestTooManyEntries: a collection may have 600,000 entries; one more is said, and
// nothing is made of them.
func TestTooManyEntries(t *testing.T) {
	r := compiled(t, house(water(`on = ["wed"]`)), "", on("1 Jul"))
	entry := r.Roster.Of[0][0]
	var some roster.Sheet
	for i := range 1000 {
		entry.ID.Care = fmt.Sprint("water ", i)
		some.Entries = append(some.Entries, entry)
	}
	sheets, lives := slices.Repeat([]roster.Sheet{some}, 600), slices.Repeat(r.Lives, 601)
	sheets = append(sheets, roster.Sheet{Entries: some.Entries[:1]})
	x := roster.Make(r.Roster.Shared, lives, sheets, nil)
	if len(x.Findings) != 1 || x.Findings[0].Rule.ID != "too-many-series" || !x.Findings[0].Severity.Refuses() || len(x.Of) > 0 {
		t.Errorf("600,001 entries: %v", x.Findings)
	}
}

// TestMenuBeforeItsEpoch: the turns of a menu are counted from the first of 2024, and
// before that from the first day that is looked at.
func TestMenuBeforeItsEpoch(t *testing.T) {
	text := house(ash(`feeding "only" { on = ["mon"]; per_animal = 1; rotate = ["roach medium", "cricket small", "cricket adult"] }`))
	r := compiled(t, text, "", day("2023-06-01"))
	e := find(t, r, "ash", "feed only")
	if p := e.Portion(e.Days.Next(0)); p.Prey.Feeder != "roach" {
		t.Errorf("the first is %s %s", p.Prey.Size, p.Prey.Feeder)
	}
}

// TestWhatAnEntrySays: the task in the keeper's words or the kind's, its amount, how
// long it takes, and that what the log brought and matters most comes first.
func TestWhatAnEntrySays(t *testing.T) {
	r := compiled(t, house(ash(`care "mist" { every = "day"; amount = "150 ml"; minutes = "7 min" } care "fog" { kind = "mist"; every = "day"; task = "Run the fogger" } care "photograph" { kind = "other"; every = "30 days" } care "water" { every = "day" }`)), logged("29 Jun ash moult 2"), on("1 Jul"))
	for _, c := range []struct {
		name, task string
		own        bool
		minutes    int
	}{
		{"mist", "Mist 150 ml", false, 7}, {"fog", "Run the fogger", true, 1}, {"photograph", "photograph", true, 5}, {"water", "Fresh water", false, 1},
		{"moult/2027-06-29", "moulted: take out live feeders within reach, touch nothing else", false, 1},
	} {
		e := find(t, r, "ash", c.name)
		if e.Task != c.task || e.Own != c.own || e.Minutes != c.minutes {
			t.Errorf("%s: %q, own %v, %d min", c.name, e.Task, e.Own, e.Minutes)
		}
		if e.Feeds() || e.Moved != (e.Once != nil) {
			t.Errorf("%s: feeds %v, moved %v", c.name, e.Feeds(), e.Moved)
		}
	}
	if e := find(t, r, "ash", "first-meal/2027-06-29"); !e.Feeds() || e.Planned(on("1 Jul")) || e.Portion(0) != nil {
		t.Error("the first meal offers food, and has no rules and no menu")
	}
}

// TestTasksOfOneName: two groups that moulted on one day have a task of the same name
// each, and these have two identities.
func TestTasksOfOneName(t *testing.T) {
	r := compiled(t, house(pair("")), logged("29 Jun ash only moult 2\n29 Jun ash other moult 2"), on("1 Jul"))
	var got []string
	for e := range r.Roster.All() {
		if e.Name == "moult/2027-06-29" {
			got = append(got, e.ID.String())
		}
	}
	if want := []string{"ash/moult/2027-06-29", "ash/moult/2027-06-29/other"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
	if len(r.Roster.Findings) > 0 {
		t.Errorf("%s", r.Roster.Findings[0].Text)
	}
}

// TestOneIdentity: two things that had one name first are said once, at the name that
// makes them one, with the other: by the rules on names where it is a name of the plan that
// two enclosures, rounds, calendars or cares claim.
func TestOneIdentity(t *testing.T) {
	keepers := "keeper \"kim\" {\n}\nkeeper \"sam\" {\n  formerly = \"kim\"\n}\n"
	rounds := "round \"dusk\" {\n  at = \"19:30\"\n  formerly = \"evening\"\n}\nround \"evening\" {\n  at = \"20:30\"\n}\n"
	calendars := calendar("a", `formerly = "b"`) + calendar("b", "")
	for _, c := range []struct{ plan, want, at, other string }{
		{keepers + water(`every = "day"`), `keeper "sam" and keeper "kim"`, `formerly = "kim"`, `keeper "kim" {`},
		{rounds + water(`every = "day"`), "", "", ""},
		{calendars + water(`every = "day"`), "", "", ""},
		{water(`every = "day"`) + strings.Replace(water(`every = "day"`), "\"ash\" {\n", "\"fern\" {\n  formerly = \"ash\"\n", 1), "", "", ""},
		{ash(`care "dew" { kind = "mist"; formerly = "fog"; every = "day" } care "fog" { kind = "mist"; every = "day" }`), "", "", ""},
		{ash(`care "dew" { kind = "mist"; formerly = "fog"; every = "day" } care "mist" { every = "day" }`), "", "", ""},
		{"keeper \"kim\" {\n  formerly = \"sam\"\n}\nkeeper \"sam\" {\n  formerly = \"kim\"\n}\n" + water(`every = "day"`), "", "", ""},
	} {
		r := compiled(t, house(c.plan), "", on("1 Jul"))
		got := ""
		for _, f := range r.Roster.Findings {
			if f.Rule.ID != "one-identity" {
				continue
			}
			if len(f.Also) != 1 || lineOf(r, f.At) != c.at || lineOf(r, f.Also[0].At) != c.other {
				t.Errorf("%s: at %s with %+v", f.Text, lineOf(r, f.At), f.Also)
			}
			got += f.Text
		}
		said := 0
		for _, f := range r.Findings {
			if f.Rule.ID == "one-identity" || f.Rule.ID == "identity-clash" {
				said++
			}
		}
		if clash := strings.Count(c.plan, "formerly") == 1 && !strings.Contains(c.plan, `care "mist"`); clash != (said == 1) {
			t.Errorf("%s\nit is said %d times", c.plan, said)
		}
		want := c.want
		if want != "" {
			want += " would be one and the same in every calendar, by the names they had first"
		}
		if got != want {
			t.Errorf("%s\nsays %q\nwant %q", c.plan, got, want)
		}
	}
}

func lineOf(r *compile.Result, at source.Place) string { return line(r.Plan.Files, at) }

// TestIdentityOutlivesNames: whatever is renamed with formerly, entries are the same.
func TestIdentityOutlivesNames(t *testing.T) {
	ids := func(plan string) string {
		var out []string
		for e := range compiled(t, house(plan), "", on("1 Jul")).Roster.All() {
			out = append(out, e.ID.String())
		}
		slices.Sort(out)
		return strings.Join(out, "\n")
	}
	const rounds = "round \"morning\" {\n  at = \"08:00\"\n}\nround \"evening\" {\n  at = \"19:30\"\n}\n"
	was := rounds + ash(`care "mist" { every = "7 days"; round = ["morning", "evening"] } feeding "only" { every = "5 days"; per_animal = 1; prey = "cricket small"; gut_load = true }`)
	const want = "ash/feed only\nash/gut-load only\nash/leftovers only\nash/mist/evening\nash/mist/morning"
	if got := ids(was); got != want {
		t.Fatalf("%s\nwant\n%s", got, want)
	}
	for old, renamed := range map[string]string{
		"enclosure \"ash\" {":               "enclosure \"birch\" {\n  formerly = \"ash\"",
		"care \"mist\" {":                   "care \"dew\" {\n  kind = \"mist\"\n  formerly = \"mist\"",
		"round \"morning\" {":               "round \"dawn\" {\n  formerly = \"morning\"",
		"animals \"only\" {":                "animals \"all\" {\n  formerly = \"only\"",
		"feeding \"only\" {\nevery = \"5 d": "feeding \"only\" {\nformerly = \"only\"\nevery = \"5 d",
	} {
		plan := strings.Replace(was, old, renamed, 1)
		switch {
		case plan == was:
			t.Fatalf("%q does not stand in the plan", old)
		case strings.HasPrefix(old, "round"):
			plan = strings.Replace(plan, "[\"morning\"", "[\"dawn\"", 1)
		case strings.HasPrefix(old, "animals"):
			plan = strings.Replace(plan, "feeding \"only\"", "feeding \"all\"", 1)
		}
		if got := ids(plan); got != want {
			t.Errorf("%s:\n%s", renamed, got)
		}
	}
}

// TestReasonOfADay: the reason is the last of those that agree with whether the day
// stands; prey that is killed is how it stands, and no reason for it.
func TestReasonOfADay(t *testing.T) {
	r := compiled(t, house(staff, away("lead", "10 Jul", "24 Jul", `cover = "sitter"`), meals(`on = ["mon"]`)), "", on("1 Jul"))
	e := find(t, r, "ash", "feed only")
	i := place(t, r, on("12 Jul"))
	if e.Reason(i) != nil || e.Cause(roster.PreyKilled, i) == nil || e.Cause(roster.PreyKilled, i).Away == nil || e.Cause(roster.PreyKilled, i+1) != nil || e.Cause(roster.Held, i) != nil {
		t.Errorf("the meal of the 12th is planned, because of %+v", e.Reason(i))
	}
	if c := e.Cause(roster.PreyKilled, i); c.At != r.Plan.Aways[0].At || c.At != c.Away.At {
		t.Error("that prey is killed is not said at the absence")
	}
	if e.Out(roster.Held, roster.Waits) != nil {
		t.Error("nothing is out")
	}
}
