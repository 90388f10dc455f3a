package prove_test

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/internal/planned"
	"vivary/schema"
	"vivary/schema/civil"
)

var day = planned.Day

// compiled compiles a plan and a log as of noon of a day.
func compiled(t testing.TB, text, log string, on civil.Date) *compile.Result {
	t.Helper()
	c, found := planned.Sound(t, planned.With(text, log))
	return compile.Compile(c, found, on.At(12*60, c.Location))
}

// needs are stated by the sheet of a random collection, with the care that meets
// each.
var needs = []struct{ name, care string }{
	{"look", "look"}, {"water", "water"}, {"moisture", "mist"}, {"heat", "heat"}, {"cleaning", "spot-clean"}, {"device-test", "device-test"}, {"food", ""}, {"leftovers", ""},
}

// random is a collection of one enclosure with two groups, whose needs have random
// figures, the second group's among them stricter or not. Its care is divided
// between two keepers, whose absences overlap, touch and nest as it comes.
func random(rng *rand.Rand) string {
	var b strings.Builder
	b.WriteString("collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\nroom \"east\" {\n  temperature = \"21 to 24 C\"\n}\n")
	stages := []string{"young", "juvenile", "adult"}
	rng.Shuffle(3, func(i, k int) { stages[i], stages[k] = stages[k], stages[i] })
	stages = stages[:2]
	species(&b, rng)
	for _, k := range []string{"ann", "ben", "cat"} {
		fmt.Fprintf(&b, "keeper %q {\n  trained = \"feeding\"\n}\n", k)
	}
	b.WriteString("round \"morning\" {\n  at     = \"08:00\"\n  keeper = \"ann\"\n}\nround \"evening\" {\n  at     = \"19:30\"\n  keeper = \"ben\"\n}\n")
	absences(&b, rng)
	if rng.IntN(3) == 0 {
		b.WriteString("calendar \"some\" {\n  keepers = [\"ann\", \"cat\"]\n}\n")
	}
	b.WriteString("enclosure \"ash\" {\n  species = \"fixture\"\n  housing {\n    inside = \"60 x 40 x 40 cm\"\n    lid    = \"solid, latched\"\n  }\n")
	if rng.IntN(4) > 0 {
		b.WriteString("  climate {\n    heater \"mat\" {\n      power      = \"10 W\"\n      place      = \"side\"\n      thermostat = \"28 C\"\n    }\n  }\n")
	}
	both := rng.IntN(2) == 0 // keepers come to it, else one
	when := func(most int) string {
		round := "evening"
		if both && rng.IntN(4) == 0 {
			round = "morning"
		}
		return fmt.Sprintf("    every = \"%d days\"\n    round = %q\n", 1+rng.IntN(most), round)
	}
	for _, g := range stages {
		fmt.Fprintf(&b, "  animals %q {\n    count = 1\n    stage = %q\n  }\n  feeding %q {\n%s    per_animal = 1\n    prey = \"cricket small\"\n  }\n", g, g, g, when(9))
	}
	for _, kind := range []string{"leaves", "leftovers"} { // of the whole enclosure
		if rng.IntN(4) == 0 {
			fmt.Fprintf(&b, "  care %q {\n%s  }\n", kind, when(9))
		}
	}
	for _, n := range needs {
		if n.care != "" {
			fmt.Fprintf(&b, "  care %q {\n%s  }\n", n.care, when(5))
		}
	}
	return b.String() + "}\n"
}

// all are the stages of the fixture.
var all = []string{"newborn", "young", "juvenile", "adult"}

// species writes a sheet with figures chosen at random for each stage.
func species(b *strings.Builder, rng *rand.Rand) {
	own := "  source  = [\"fixture\"]\n  because = \"fixture of this test\"\n  review  = \"2040-01-01\"\n"
	b.WriteString("species \"fixture\" {\n  title = \"fixture\"\n")
	for i, stage := range all {
		fmt.Fprintf(b, "stage %q {\n  instars = \"%d\"\n}\n", stage, 1+i)
	}
	if rng.IntN(3) > 0 {
		fmt.Fprintf(b, "figure \"first-meal\" {\n  value  = \"%d days\"\n%s}\n", 3+rng.IntN(12), own)
	}
	for _, stage := range all {
		for _, n := range needs {
			fmt.Fprintf(b, "need %q {\n  stages  = [%q]\n  longest = \"%d days\"\n%s}\n", n.name, stage, 1+rng.IntN(9), own)
		}
		if rng.IntN(5) > 0 {
			fmt.Fprintf(b, "figure \"unattended\" {\n  stages = [%q]\n  value  = \"%d days\"\n%s}\n", stage, 2+rng.IntN(20), own)
		}
		if rng.IntN(3) == 0 {
			fmt.Fprintf(b, "figure \"fast-alarm\" {\n  stages = [%q]\n  value  = \"%d to %d days\"\n%s}\n", stage, 1+rng.IntN(9), 10+rng.IntN(31), own)
		}
	}
	if rng.IntN(2) == 0 {
		b.WriteString("figure \"winter-rest\" {\n  value = \"12 to 18 C\"\n" + own + "}\n")
	}
	b.WriteString("}\n")
}

// absences writes away blocks of all three keepers, of all kinds of cover.
func absences(b *strings.Builder, rng *rand.Rand) {
	keepers := []string{"ann", "ben", "cat"}
	for range 1 + rng.IntN(12) {
		who := rng.IntN(5) % 3
		from := day("2026-12-10") + civil.Date(rng.IntN(200))
		fmt.Fprintf(b, "away %q {\n  from = \"%s\"\n  to   = \"%s\"\n", keepers[who], from, from+1+civil.Date(rng.IntN(25)))
		if cover := (who + 1 + rng.IntN(4)) % 3; rng.IntN(2) == 0 && cover != who {
			fmt.Fprintf(b, "  cover = %q\n", keepers[cover])
			if rng.IntN(4) > 0 {
				fmt.Fprintf(b, "  visits = %s\n", []string{`["tue", "sat"]`, `["wed"]`, `["mon", "thu", "fri"]`, `["1st", "15th"]`}[rng.IntN(4)])
			}
		}
		b.WriteString("}\n")
	}
}

// upset changes the entries of a roster by chance: days on which they stand and are
// shown, prey that is killed, days that were left out and days that the log has.
func upset(rng *rand.Rand, s *roster.Roster) {
	n := s.Horizon.Days
	density := 1 + rng.IntN(6)
	some := func(of int) horizon.Days {
		d := s.Horizon.New()
		for i := range n {
			if rng.IntN(of) == 0 {
				d.Add(i)
			}
		}
		return d
	}
	deserted := s.Horizon.New() // days on which hardly anything stands
	for range rng.IntN(20) {
		from := rng.IntN(n)
		deserted.AddRun(from, from+rng.IntN(20), n)
	}
	begin := s.Horizon.New() // what is known of the days before today
	begin.AddRun(rng.IntN(s.Horizon.Today+20), n, n)
	for x := range s.All() {
		x.Days = some(density)
		if rng.IntN(8) > 0 {
			x.Days.Subtract(deserted)
		}
		x.Days.Keep(begin)
		x.Shown = x.Days.Clone()
		if rng.IntN(3) == 0 {
			x.Shown.Subtract(some(4))
		}
		if rng.IntN(3) == 0 {
			x.Killed = some(2)
		}
		x.Causes = nil
		if rng.IntN(2) == 0 {
			why := []roster.Why{roster.Held, roster.Nobody, roster.Skipped, roster.Visit, roster.Done}[rng.IntN(5)]
			x.Causes = append(x.Causes, roster.Cause{Why: why, Days: some(30)})
		}
		x.Logged = -1
		if rng.IntN(3) == 0 {
			x.Logged = rng.IntN(s.Horizon.Today + 1)
		}
	}
}

// aged gives the groups other lives: stages that begin on days of the window or before,
// animals that come late, end early or were born into the log.
func aged(rng *rand.Rand, r *compile.Result) {
	h := r.Horizon
	some := func() civil.Date { return h.From + civil.Date(rng.IntN(h.Days+100)-100) }
	for _, g := range r.Lives[0].Groups {
		at := rng.IntN(len(all))
		g.Stages = []life.Stretch{{From: h.From, Stage: all[at]}}
		for on := some(); at+1 < len(all) && rng.IntN(3) > 0; on += civil.Date(1 + rng.IntN(90)) {
			at++
			g.Stages = append(g.Stages, life.Stretch{From: on, Stage: all[at]})
		}
		g.Numbers = []life.Number{{From: h.From, Count: 1}}
		switch rng.IntN(4) {
		case 0:
			g.Numbers = append(g.Numbers, life.Number{From: some()})
		case 1:
			from := some()
			g.Numbers = []life.Number{{From: from - 300}, {From: from, Count: 2}, {From: from + civil.Date(rng.IntN(300))}}
		case 2:
			g.Logged, g.Since.V = true, h.Now()-civil.Date(rng.IntN(90))
		}
	}
}

// TestProofIsExact compares the proof with a count, day by day, on random plans with
// absences: half of them with the days that they have, half with days of care, holds and
// stages by chance. And on each day each need of each animal has one proof.
func TestProofIsExact(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	var breaches, missed, whole, half, often, first, excused, forgotten, parts int
	for round := range 280 {
		text := random(rng)
		log := ""
		if round%3 == 0 {
			log = "2027-01-20 ash " + []string{"young", "juvenile", "adult"}[rng.IntN(3)] + " died 1\n"
			if !strings.Contains(text, "animals \""+strings.Fields(log)[2]) {
				log = ""
			}
		}
		r := compiled(t, text, log, day("2027-02-15"))
		s := r.Roster
		if round%2 == 0 {
			upset(rng, s)
			held(rng, r)
			if round%4 == 0 {
				aged(rng, r)
			}
		}
		proofs := prove.Of(s, 0)
		complete(t, r, proofs, text+log)
		for k := range proofs {
			p := &proofs[k]
			want, left := count(r, p)
			got := result{p.Longest, p.From, p.To, p.Times, p.Breach, p.Missed, p.Limit}
			if p.Met() {
				got.Limit = want.Limit
			}
			if got != want || p.Met() != (want.Breach == prove.Gap{}) {
				t.Fatalf("%s from %d to %d, %s: proven %+v\ncounted: %+v\n%s", p.Name.Name, p.Begin, p.End, p.Stage, got, want, text)
			}
			breaches += one(!p.Met())
			missed += one(p.Missed != prove.Gap{})
			forgotten += one(p.Missed.From < 0)
			whole, half, often = whole+left.whole, half+left.half, often+left.often
			first += one(!p.Met() && p.Limit.First || p.Late.First)
			excused += one(p.Excused != nil && p.Excused.Count() > 0)
			parts += one(p.Begin > r.Horizon.Today || p.End < r.Horizon.Days)
		}
	}
	t.Logf("%d breaches, %d missed, %d of them from before the window, %d left alone for longer than usual, %d half, %d too often, %d first meals late, %d excused, %d of a part of the days", breaches, missed, forgotten, whole, half, often, first, excused, parts)
	if breaches < 500 || missed < 150 || forgotten < 1 || whole < 100 || half < 25 || often < 3 || first < 2 || excused < 200 || parts < 200 {
		t.Error("too few to show anything")
	}
}

// held gives the enclosure and its groups holds by chance: seasons, what the log brought,
// what the plan tells without a day, and pauses after refusals.
func held(rng *rand.Rand, r *compile.Result) {
	h := r.Horizon
	hold := func(before, long int) life.Hold {
		from := h.From + civil.Date(rng.IntN(h.Days+before)-before/2)
		return life.Hold{From: from, Until: from + civil.Date(rng.IntN(long)), State: anyState(rng)}
	}
	l := r.Lives[0]
	l.Holds = nil
	for range rng.IntN(5) {
		x := hold(500, 200)
		x.Cool = rng.IntN(4) > 0
		l.Holds = append(l.Holds, x)
	}
	slices.SortFunc(l.Holds, func(a, b life.Hold) int { return int(a.From - b.From) })
	for _, g := range l.Groups {
		g.Holds = []life.Hold{hold(40, 50), hold(40, 50)}
		switch rng.IntN(4) {
		case 0:
			g.Holds = append(g.Holds, life.Hold{Until: h.Last() + 1, Open: true, State: anyState(rng)})
		case 1:
			x := hold(40, 30)
			x.State = schema.StateRefused
			g.Holds = append(g.Holds, x)
		}
	}
}

func one(b bool) int {
	if b {
		return 1
	}
	return 0
}

// complete checks that on each day from today on each need of each group that lives has
// one proof, and so has each need of the enclosure, by the strictest of those who live
// there; and that no other day has one.
func complete(t *testing.T, r *compile.Result, proofs []prove.Proof, text string) {
	t.Helper()
	type of struct {
		g    *life.Group
		name string
	}
	for d := r.Horizon.Today; d < r.Horizon.Days; d++ {
		want, got := map[of]float64{}, map[of]float64{}
		for _, g := range r.Lives[0].Groups {
			if !lives(r, g, d) {
				continue
			}
			stage := g.Stage(r.Horizon.Date(d))
			for _, n := range g.Sheet.NeedsOf(stage) {
				own := n.Name.V == "food" || n.Name.V == "leftovers"
				if n.What.Heated && !r.Plan.Enclosures[0].Heated() || own && stage == "newborn" {
					continue
				}
				k := of{nil, n.Name.V}
				if own {
					k.g = g
				}
				if have, ok := want[k]; !ok || n.Longest.V.Value < have {
					want[k] = n.Longest.V.Value
				}
			}
		}
		for k := range proofs {
			p := &proofs[k]
			if p.Begin <= d && d < p.End {
				if _, twice := got[of{p.Group, p.Name.Name}]; twice {
					t.Fatalf("two proofs of %s on day %d\n%s", p.Name.Name, d, text)
				}
				got[of{p.Group, p.Name.Name}] = p.Need.Longest.V.Value
			}
		}
		if !maps.Equal(want, got) {
			t.Fatalf("day %d: proven are %v, and the animals need %v\n%s", d, got, want, text)
		}
	}
}
