package roster_test

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// lived is a plan whose animals are in states, and are asked for, as a test says.
func lived(t testing.TB, text, now string, change func(*life.Enclosure)) *compile.Result {
	t.Helper()
	r := compiled(t, text, "", on(now))
	change(r.Lives[0])
	s, _ := roster.Share(r.Plan, r.Horizon, nil)
	sheets := make([]roster.Sheet, len(r.Lives))
	for i, l := range r.Lives {
		sheets[i] = s.Enclosure(l)
	}
	r.Roster = roster.Make(s, r.Lives, sheets, nil)
	return r
}

// table is a state of a test's own.
func table(may map[schema.Row]schema.May) *schema.State {
	s := &schema.State{Name: "made up", Is: "made up", Rule: "as it is made up"}
	for r, m := range may {
		s.May[r] = m
	}
	return s
}

// stretch is a hold from a day until another.
func stretch(s *schema.State, from, until string) life.Hold {
	return life.Hold{From: on(from), Until: on(until), State: s, Why: s.Name, End: "until " + until}
}

// done says how an entry is done from one day to another: a day, and the manner.
func done(r *compile.Result, e *roster.Entry, from, to civil.Date) string {
	var out []string
	for d := from; d <= to; d++ {
		i, _ := r.Horizon.Index(d)
		if !e.Days.Has(i) {
			continue
		}
		text := short(d)
		if e.Killed != nil && e.Killed.Has(i) {
			text += ", killed"
		}
		if m := e.Manner(i); m != nil {
			text += ", " + m.May.Manner.String() + " " + m.May.Words
		}
		out = append(out, strings.TrimSpace(text))
	}
	return strings.Join(out, "; ")
}

// brooding is the column of a mother with young round her: nothing lifted, killed prey
// from the third day on and once a week (the table of our own in states.go has the
// real one).
var brooding = table(map[schema.Row]schema.May{
	schema.RowLook: {Manner: schema.Outside}, schema.RowWater: {Manner: schema.Hatch}, schema.RowMist: {Manner: schema.Hatch, Words: "far end only"},
	schema.RowLive: {Manner: schema.Held}, schema.RowKilled: {Manner: schema.Hatch, Every: 7, From: 3}, schema.RowDish: {Manner: schema.Held},
})

// calm is one that asks for less.
var calm = table(map[schema.Row]schema.May{schema.RowWater: {Words: "quietly"}, schema.RowMist: {Manner: schema.Outside}, schema.RowDish: {Every: 3}})

const daily = `feeding "only" { every = "day"; per_animal = 1; prey = "cricket small" } care "look" { every = "day" } care "water" { every = "day" } care "mist" { every = "day" } care "dish" { every = "day" } care "weigh" { on = ["mon"] }`

// TestManners: of the states of a day the strictest says how a care is done. Killed
// prey stands in for live prey, not before its day and not more often than it may.
func TestManners(t *testing.T) {
	r := lived(t, house(ash(daily)), "1 Jul", func(l *life.Enclosure) {
		l.Groups[0].Holds = []life.Hold{stretch(brooding, "2 Jul", "13 Jul"), stretch(calm, "12 Jul", "17 Jul")}
	})
	for name, want := range map[string]string{
		"look":      "Sun 11 Jul, from outside, open nothing; Mon 12 Jul, from outside, open nothing; Tue 13 Jul; Wed 14 Jul",
		"water":     "Sun 11 Jul, through the hatch, lift nothing; Mon 12 Jul, through the hatch, lift nothing; Tue 13 Jul, as usual quietly; Wed 14 Jul, as usual quietly",
		"mist":      "Sun 11 Jul, through the hatch, lift nothing far end only; Mon 12 Jul, from outside, open nothing; Tue 13 Jul, from outside, open nothing; Wed 14 Jul, from outside, open nothing",
		"dish":      "Tue 13 Jul",
		"weigh":     "Mon 12 Jul",
		"feed only": "Mon 12 Jul, killed, through the hatch, lift nothing; Tue 13 Jul; Wed 14 Jul",
	} {
		if got := done(r, find(t, r, "ash", name), on("11 Jul"), on("14 Jul")); got != want {
			t.Errorf("%s: %s\nwant %s", name, got, want)
		}
	}
	if got, want := done(r, find(t, r, "ash", "feed only"), on("30 Jun"), on("13 Jul")), "Wed 30 Jun; Thu 1 Jul; Mon 5 Jul, killed, through the hatch, lift nothing; Mon 12 Jul, killed, through the hatch, lift nothing; Tue 13 Jul"; got != want {
		t.Errorf("they are fed on %s\nwant %s", got, want)
	}
	if got, want := done(r, find(t, r, "ash", "dish"), on("12 Jul"), on("20 Jul")), "Tue 13 Jul; Fri 16 Jul; Sat 17 Jul; Sun 18 Jul; Mon 19 Jul; Tue 20 Jul"; got != want {
		t.Errorf("the dish is scrubbed on %s\nwant %s", got, want)
	}
}

// TestSomeOfAGroup: where some of a group may not be fed, all are fed killed prey.
func TestSomeOfAGroup(t *testing.T) {
	r := lived(t, house(ash(daily)), "1 Jul", func(l *life.Enclosure) {
		h := stretch(schema.StateSoft, "2 Jul", "4 Jul")
		h.Part = true
		l.Groups[0].Holds = []life.Hold{h}
	})
	if got, want := done(r, find(t, r, "ash", "feed only"), on("1 Jul"), on("4 Jul")), "Thu 1 Jul; Fri 2 Jul, killed; Sat 3 Jul, killed; Sun 4 Jul"; got != want {
		t.Errorf("%s\nwant %s", got, want)
	}
}

// TestCompanions: while one group of a box must have no live prey round it, the others
// eat killed prey beside their hides, and what is a state of the whole box holds for
// them as well.
func TestCompanions(t *testing.T) {
	plan := house(pair(daily + ` feeding "other" { every = "day"; per_animal = 1; prey = "cricket small" }`))
	boxed := *schema.StateSoft
	boxed.Box = true
	for _, c := range []struct {
		state *schema.State
		want  string
	}{
		{schema.StateSoft, "Thu 1 Jul; Fri 2 Jul, killed, as usual beside the hides, out the same evening; Sat 3 Jul"},
		{&boxed, "Thu 1 Jul; Sat 3 Jul"},
		{schema.StateHardening, "Thu 1 Jul; Fri 2 Jul; Sat 3 Jul"},
	} {
		r := lived(t, plan, "1 Jul", func(l *life.Enclosure) {
			l.Groups[1].Holds = []life.Hold{stretch(c.state, "2 Jul", "3 Jul")}
		})
		if got := done(r, find(t, r, "ash", "feed only"), on("1 Jul"), on("3 Jul")); got != c.want {
			t.Errorf("%s: %s\nwant %s", c.state.Name, got, c.want)
		}
	}
}

// TestThinnedTheSameEveryDay: which of the days stand, of those that a state lets be
// only every so often, does not depend on the day of the build, also where the state
// began before the window.
func TestThinnedTheSameEveryDay(t *testing.T) {
	began := stretch(brooding, "1 Mar", "1 Dec")
	change := func(l *life.Enclosure) { l.Groups[0].Holds = []life.Hold{began} }
	text := house(ash(strings.Replace(daily, `every = "day"; per`, `every = "3 days"; per`, 1)))
	a := lived(t, text, "1 Jul", change)
	want := done(a, find(t, a, "ash", "feed only"), on("1 Aug"), on("1 Nov"))
	for _, now := range []string{"2 Jul", "9 Jul", "20 Jul", "1 Aug"} {
		b := lived(t, text, now, change)
		if got := done(b, find(t, b, "ash", "feed only"), on("1 Aug"), on("1 Nov")); got != want {
			t.Errorf("built on %s: %s\non 1 Jul: %s", now, got, want)
		}
	}
	// What a series that began before today leaves out is what did not stand.
	b := lived(t, text, "1 Aug", change)
	e := find(t, b, "ash", "feed only")
	held := map[civil.Date]bool{}
	e.EachHeld(on("1 Mar"), on("1 Aug"), func(d civil.Date) { held[d] = true })
	for i := range b.Horizon.Today {
		if d := b.Horizon.Date(i); e.Planned(d) && held[d] == e.Days.Has(i) {
			t.Errorf("on %s it stands: %v, and is left out: %v", d, e.Days.Has(i), held[d])
		}
	}
}

// TestPutOnAHeldDay: what an absence moves to the day of the return is not done there
// where a state forbids it.
func TestPutOnAHeldDay(t *testing.T) {
	text := house(staff, away("lead", "10 Jul", "17 Jul", ""), ash(`care "dish" { on = ["mon"] } care "weigh" { on = ["mon"] }`))
	r := lived(t, text, "1 Jul", func(l *life.Enclosure) {
		l.Groups[0].Holds = []life.Hold{stretch(brooding, "15 Jul", "20 Jul")}
	})
	if got, want := done(r, find(t, r, "ash", "dish"), on("6 Jul"), on("26 Jul")), "Mon 26 Jul"; !strings.HasSuffix(got, want) || strings.Contains(got, "17 Jul") {
		t.Errorf("the dish is scrubbed on %s, want not on the return", got)
	}
	if got, want := done(r, find(t, r, "ash", "weigh"), on("11 Jul"), on("18 Jul")), "Sat 17 Jul"; got != want {
		t.Errorf("they are weighed on %s, want %s", got, want)
	}
}

// TestAsks: a question stands on its day, or today where that is over, and again every
// so many days, fourteen times where nothing is built again; one in an absence at the next visit, by whoever
// comes.
func TestAsks(t *testing.T) {
	text := house(staff, away("lead", "10 Jul", "24 Jul", "cover = \"sitter\"\nvisits = [\"tue\"]"), ash(`care "look" { every = "day" }`))
	ask := func(from string, every int, urgent bool) life.Ask {
		return life.Ask{Name: "first-moult/" + from, From: on(from), Every: every, Urgent: urgent, Text: "first moult of the young?", Write: "first_moult"}
	}
	r := lived(t, text, "1 Jul", func(l *life.Enclosure) {
		l.Groups[0].Asks = []life.Ask{ask("24 Jun", 4, true), ask("5 Jul", 30, false)}
		l.Asks = []life.Ask{ask("5 Jul", 30, false)}
	})
	e := find(t, r, "ash", "first-moult/24 Jun")
	if got, want := said(t, r, e, on("20 Jun"), on("29 Jul")), "Thu 1 Jul; Fri 2 Jul; Tue 6 Jul; not Sat 10 Jul, nobody 10 Jul; Tue 13 Jul, visit 10 Jul, by sitter; not Wed 14 Jul, nobody 10 Jul; not Sun 18 Jul, nobody 10 Jul; Tue 20 Jul, visit 10 Jul, by sitter; not Thu 22 Jul, nobody 10 Jul; Sat 24 Jul, return 10 Jul, last 20 Jul; Mon 26 Jul"; got != want {
		t.Errorf("asked on %s\nwant %s", got, want)
	}
	if !e.High || e.Kind != schema.KindWatch || e.Task != "first moult of the young?; log first_moult" || e.Round.Name.V != "evening" || e.ID.Care != "first-moult/24 Jun" {
		t.Errorf("it is asked as %+v", e)
	}
	// A feed that nobody builds again is not to ask for a year what was answered long ago.
	if last := r.Horizon.Date(e.Days.Last(r.Horizon.Days)); last < on("1 Jul")+13*4 || last > on("1 Jul")+14*4 {
		t.Errorf("it is asked until %s", last)
	}
	ids := map[string]bool{}
	for e := range r.Roster.All() {
		ids[e.ID.String()] = true
		if e.Name == "first-moult/5 Jul" {
			if got, want := done(r, e, on("1 Jul"), on("10 Aug")), "Mon 5 Jul; Wed 4 Aug"; got != want {
				t.Errorf("asked on %s, want %s", got, want)
			}
		}
	}
	if len(ids) != 4 {
		t.Errorf("%d identities, want 4: %v", len(ids), ids)
	}
}

// brood is young that are on their mother until a day, and with her afterwards.
func brood(l *life.Enclosure, from, moult string) *life.Group {
	young := &plan.Animals{}
	young.Name.V, young.Stage.V = "young-2027", "newborn"
	hold := stretch(schema.StateNewborn, from, moult)
	return &life.Group{Animals: young, Sheet: l.Plan.Sheet, Logged: true, Mother: l.Groups[0], Stages: []life.Stretch{{From: on(from), Stage: "newborn", Instar: 1}, {From: on(moult), Stage: "young", Instar: 2}},
		Numbers: []life.Number{{From: on(from), Count: 20}}, Holds: []life.Hold{hold}}
}

// TestMealsOfABrood: young are fed from the day of their first moult, whenever the plan
// is built, under one name, and with killed prey while they are with their mother.
func TestMealsOfABrood(t *testing.T) {
	const meals = `feeding "young" {
  stages     = ["young"]
  every      = "3 days"
  per_animal = 1
  prey       = "cricket small"
}
`
	for _, now := range []string{"1 Jul", "12 Jul", "20 Jul"} {
		r := lived(t, with(meals, ash("")), now, func(l *life.Enclosure) {
			l.Groups = append(l.Groups, brood(l, "20 Jun", "12 Jul"))
		})
		e := find(t, r, "ash", "feed young-2027")
		days := strings.Split(done(r, e, on("20 Jun"), on("24 Jul")), "; ")
		if len(days) != 5 || !strings.HasSuffix(days[0], ", killed") || e.ID.Care != "feed young-2027" {
			t.Errorf("built on %s, young of the 12th are fed on %s as %s", now, days, e.ID.Care)
		}
		for _, d := range days {
			if n := strings.Fields(d)[1]; n < "12" {
				t.Errorf("built on %s, newborn are fed on %s", now, d)
			}
		}
	}
}

// TestNextStage: meals of a stage that is to come stand from its first day on, beside
// those that are until then, under names of their own.
func TestNextStage(t *testing.T) {
	meal := func(stage string, every int) string {
		return fmt.Sprintf("feeding %q {\n  stages = [%q]\n  every = \"%d days\"\n  per_animal = 1\n  prey = \"cricket small\"\n  killed = true\n}\n", stage, stage, every)
	}
	r := lived(t, with(meal("juvenile", 1)+meal("adult", 1), ash("")), "1 Jul", func(l *life.Enclosure) {
		l.Groups[0].Stages = append(l.Groups[0].Stages, life.Stretch{From: on("4 Jul"), Stage: "adult"})
	})
	got := ""
	for e := range r.Roster.All() {
		got += e.ID.Care + ": " + done(r, e, on("2 Jul"), on("5 Jul")) + "\n"
	}
	if want := "feed only: Fri 2 Jul; Sat 3 Jul\nfeed only/adult: Sun 4 Jul; Mon 5 Jul\n"; got != want {
		t.Errorf("%swant\n%s", got, want)
	}
}

// TestNothingForbidden: on no day does an entry stand that a state forbids which holds
// there, whatever the table of the state has, and prey is live on no day on which any
// animals of the box must have none.
func TestNothingForbidden(t *testing.T) {
	rng := rand.New(rand.NewPCG(21, 22))
	looked := 0
	for range 60 {
		trip := day("2027-05-10") + civil.Date(rng.IntN(90))
		text := house(staff, fmt.Sprintf("away \"lead\" {\n  from = \"%s\"\n  to = \"%s\"\n  cover = \"sitter\"\n  visits = [\"tue\", \"sat\"]\n}\n", trip, trip+civil.Date(2+rng.IntN(20))),
			pair(fmt.Sprintf(`feeding "only" { %s; per_animal = 1; rotate = ["cricket small", "roach medium"] } feeding "other" { %s; per_animal = 1; prey = "cricket small"; gut_load = true } care "look" { every = "day" } care "water" { every = "2 days" } care "mist" { %s } care "dish" { every = "4 days" } care "deep-clean" { %s } care "spot-clean" { every = "2 days" }`,
				timings[rng.IntN(3)], timings[rng.IntN(3)], timings[rng.IntN(3)], timings[rng.IntN(5)])))
		r := lived(t, text, "1 Jun", func(l *life.Enclosure) {
			for _, g := range l.Groups {
				for range rng.IntN(4) {
					from := day("2027-04-01") + civil.Date(rng.IntN(120))
					h := life.Hold{From: from, Until: from + civil.Date(1+rng.IntN(60)), State: randomTable(rng), Part: rng.IntN(5) == 0, Why: "random"}
					g.Holds = append(g.Holds, h)
				}
			}
		})
		for e := range r.Roster.All() {
			for i := e.Days.Next(0); i >= 0; i = e.Days.Next(i + 1) {
				looked += allowed(t, r, e, i)
			}
		}
	}
	if looked < 10_000 {
		t.Errorf("only %d cells were looked at", looked)
	}
}

// randomTable is a table with everything in it, and now and then of the whole box.
func randomTable(rng *rand.Rand) *schema.State {
	s := &schema.State{Name: "random", Box: rng.IntN(4) == 0}
	for row := range s.May {
		if row := schema.Row(row); row != schema.RowFree && rng.IntN(2) == 0 {
			s.May[row] = schema.May{Manner: schema.Manner(rng.IntN(4)), From: rng.IntN(3) * rng.IntN(4), Every: rng.IntN(2) * rng.IntN(9)}
		}
	}
	return s
}

// allowed fails where an entry that stands on day i must not be done, and returns how
// many states have a say in it.
func allowed(t *testing.T, r *compile.Result, e *roster.Entry, i int) (n int) {
	t.Helper()
	d := r.Horizon.Date(i)
	killed := e.Meal != nil && e.Meal.Killed.V || e.Killed != nil && e.Killed.Has(i)
	meal := e.Kind == schema.KindFeed
	var strictest schema.Manner
	for _, g := range e.Life.Groups {
		for k := range g.Holds {
			h := &g.Holds[k]
			if d < h.From || d >= h.Until {
				continue
			}
			held := func(row schema.Row) bool {
				return h.State.May[row].Manner == schema.Held || int(d-h.From) < h.State.May[row].From
			}
			if meal && held(schema.RowLive) && !killed {
				t.Fatalf("live prey for %s on %s, while %s of the box is in a state without", e.Group.Animals.Name.V, d, g.Animals.Name.V)
			}
			row := e.Kind.Row
			if meal && killed {
				row = schema.RowKilled
			}
			if e.Group != nil && e.Group != g && !h.State.Box || h.Part && meal || e.Kind.Water {
				continue
			}
			n++
			if held(row) {
				t.Fatalf("%s on %s: %s is held since %s", e.Name, d, row, h.From)
			}
			strictest = max(strictest, h.State.May[row].Manner)
		}
	}
	if m := e.Manner(i); !e.Kind.Water && (m == nil && strictest != schema.AsUsual || m != nil && m.May.Manner != strictest) {
		t.Fatalf("%s on %s is done %+v, and the strictest state has it %s", e.Name, d, m, strictest)
	}
	return n
}

// TestOneOffTasksObey: what the log brings for once was put where the states allow it:
// after honest logs of all kinds no such task stands on a day that forbids it. Moving
// her out is what some states are there to ask for.
func TestOneOffTasksObey(t *testing.T) {
	rng := rand.New(rand.NewPCG(23, 24))
	words := []string{"moult", "premoult", "hanging", "fed", "refused", "mated", "gravid?", "born 20", "first_moult", "separated 20", "arrived 1", "mites", "counted 1"}
	looked := 0
	for range 80 {
		species := []string{"pandinus-imperator", "brachypelma-hamorii", "damon-diadema", "hadrurus-arizonensis"}[rng.IntN(4)]
		var log strings.Builder
		for d := day("2027-01-01"); d < day("2027-06-01"); d += civil.Date(1 + rng.IntN(20)) {
			fmt.Fprintf(&log, "%s ash %s\n", d, words[rng.IntN(len(words))])
		}
		text := house(strings.NewReplacer(`"fixture"`, `"`+species+`"`, `"juvenile"`, `"adult"`).Replace(box("ash", one)))
		r := compiled(t, text, log.String(), day("2027-06-01"))
		for e := range r.Roster.All() {
			if e.Once == nil || e.Kind.Row == schema.RowRehouse {
				continue
			}
			for i := e.Days.Next(r.Horizon.Today); i >= 0; i = e.Days.Next(i + 1) {
				for _, g := range e.Life.Groups {
					for k := range g.Holds {
						d, h := r.Horizon.Date(i), &g.Holds[k]
						row := e.Kind.Row
						if row == schema.RowLive {
							row = schema.RowKilled
						}
						if d < h.From || d >= h.Until || h.Part && e.Kind.Meal || e.Group != nil && e.Group != g {
							continue
						}
						if looked++; h.State.May[row].Manner == schema.Held {
							t.Errorf("%s: %s on %s, held by %s since %s\n%s", species, e.Task, d, h.State.Name, h.From, log.String())
						}
						if h.State.May[schema.RowLive].Manner == schema.Held && e.Once.Meal && !e.Once.Killed && (e.Killed == nil || !e.Killed.Has(i)) {
							t.Errorf("%s: %s on %s is live, in state %s", species, e.Task, d, h.State.Name)
						}
					}
				}
			}
		}
	}
	if looked < 500 {
		t.Errorf("only %d days of tasks in a state", looked)
	}
}
