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
	"vivary/plan"
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
	if breaches < 500 || missed < 150 || forgotten < 1 || whole < 100 || half < 25 || often < 3 || first < 5 || excused < 200 || parts < 200 {
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
		l.Holds = append(l.Holds, hold(500, 200))
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

// lives reports whether a group has animals on a day.
func lives(r *compile.Result, g *life.Group, d int) bool {
	on := r.Horizon.Date(d)
	return g.Count(on) > 0 && !(g.Logged && on < g.Since.V)
}

// result is what is compared of a proof.
type result struct {
	Longest, From, To, Times int
	Breach, Missed           prove.Gap
	Limit                    prove.Limit
}

// alone is how many times were longer than usual, and sound since nobody came; and how
// many were not, since nobody had come too often.
type alone struct{ whole, half, often int }

// count finds the longest time and the first that is too long by walking over the
// days with counters.
func count(r *compile.Result, p *prove.Proof) (result, alone) {
	if p.Name.Name == "leftovers" {
		return countLeftovers(r, p), alone{}
	}
	n, today := p.End, r.Horizon.Today
	met := occasions(r, p)
	var out result
	for d := p.Begin; d < n; d++ {
		out.Times += one(met[d])
	}
	since, first := began(r, p)
	last := start(r, p, met, since)
	w := walk{today: today, begin: p.Begin, last: last, recovered: 1 << 30, since: since, first: first, out: &out}
	w.allowed, w.full = figures(r, p)
	w.known = func(from int) bool {
		return from < 0 || leftOutSince(r, p, from) || from == since && p.Group != nil && p.Group.Logged
	}
	w.waits = func(d int) bool {
		return waits(r, p, r.Horizon.Date(d)) && !(first > 0 && d >= since && d <= since+first)
	}
	w.pauses = func(d int) bool {
		on := r.Horizon.Date(d)
		return p.Name.Name == "food" && slices.ContainsFunc(p.Group.Holds, func(h life.Hold) bool {
			return h.State == schema.StateRefused && h.From <= on && on < h.Until && h.Out(schema.RowKilled)
		})
	}
	for d := last + 1; d < n; d++ {
		if d == today {
			w.late = w.waited + 1
		}
		if d >= 0 && met[d] {
			w.end(d, 1)
			continue
		}
		if d < 0 || !w.waits(d) {
			w.waited++
			if d >= today {
				w.after++
			}
			w.someone = w.someone || d >= 0 && !nobody(r, p, d)
		}
		w.some = w.some || d >= 0 && nobody(r, p, d)
	}
	w.end(n, 0)
	return out, w.alone
}

// never is a day before all others.
const never = -1 << 19

// began returns the day before the one since which a need holds without a break, or never
// where it always did. Young begin on the day of their first moult, and then it is said
// within how many days they must have eaten.
func began(r *compile.Result, p *prove.Proof) (since, first int) {
	if p.Group == nil {
		return cameHere(r, p.Begin), 0
	}
	stage := func(d int) string { return p.Group.Stage(r.Horizon.Date(d)) }
	d := p.Begin
	for d > -1000 && lives(r, p.Group, d-1) && stage(d-1) == p.Stage {
		d--
	}
	f := p.Group.Sheet.Figure(schema.FigureFirstMeal, p.Stage)
	if f != nil && d > -1000 && lives(r, p.Group, d-1) && stage(d-1) == "newborn" {
		return d, int(f.Range.High / (24 * 60))
	}
	for d > -1000 && lives(r, p.Group, d-1) && stage(d-1) != "newborn" {
		d--
	}
	if d <= -1000 {
		return never, 0
	}
	return d - 1, 0
}

// cameHere returns the day before the one since which those who live in the enclosure are
// there without a break.
func cameHere(r *compile.Result, d int) int {
	out := d
	for _, g := range r.Lives[0].Groups {
		if d > r.Horizon.Today && lives(r, g, d-1) {
			return cameHere(r, d-1)
		}
		from := d
		for from > -1000 && lives(r, g, from) {
			from--
		}
		if from <= -1000 {
			from = never
		}
		out = min(out, from)
	}
	return out
}

// start is the day from which is counted: the first on which the need was met. Where
// there is none before the days of the proof, it is yesterday; or the day before the first
// that is known to have been left out, which lies before all that is known where an
// absence does. It is never before the need began.
func start(r *compile.Result, p *prove.Proof, met []bool, since int) int {
	for d := range p.Begin {
		if met[d] {
			return max(d, since)
		}
	}
	if since > never {
		return since
	}
	first := r.Horizon.Today
	for _, c := range leftOut(r, p) {
		for d := range r.Horizon.Days {
			switch {
			case !c.Days.Has(d):
			case c.Away != nil && c.Away.From.V < r.Horizon.From:
				return -1
			default:
				first = min(first, d)
			}
		}
	}
	return first - 1
}

// leftOut are the causes that say that something was left out, and not how the plan has
// it.
func leftOut(r *compile.Result, p *prove.Proof) (out []*roster.Cause) {
	for s := range r.Roster.All() {
		for k := range s.Causes {
			switch c := &s.Causes[k]; c.Why {
			case roster.Skipped, roster.Nobody, roster.Waits, roster.LeftIn, roster.Held:
				if meets(s, p) {
					out = append(out, c)
				}
			}
		}
	}
	return out
}

// leftOutSince reports whether something is known to have been left out from a day until
// today.
func leftOutSince(r *compile.Result, p *prove.Proof, from int) bool {
	for _, c := range leftOut(r, p) {
		for d := from; d < r.Horizon.Today; d++ {
			if c.Days.Has(d) {
				return true
			}
		}
	}
	return false
}

// walk is what is counted on the way.
type walk struct {
	today, begin  int // today, and the first day of the proof
	allowed, full int
	since, first  int  // the first moult of young, and within how many days they must have eaten
	last          int  // when it was met last
	waited        int  // days since then that count
	late          int  // how late it is today, before anything is done
	after         int  // days from today on that count
	some, someone bool // a day since then with nobody, and one with somebody
	recovered     int  // days since the last time that was longer than usual
	soft          bool // whether the one that was found has excused days in it
	waits, pauses func(d int) bool
	known         func(from int) bool // whether something was left out from a day until today
	out           *result
	alone         alone
	times         [][2]int // the days on which times alone that were longer than usual ended, and their length
}

// excused reports whether a need does not hold on one of some days, or meals pause.
func (w *walk) excused(from, to int) bool {
	for d := max(0, from); d < to; d++ {
		if w.waits(d) || w.pauses(d) {
			return true
		}
	}
	return false
}

// end ends a time on day to, which counts as more days itself.
func (w *walk) end(to, more int) {
	half := max(w.allowed, (w.full+1)/2)
	limit := prove.Limit{Days: w.allowed}
	left := w.full > w.allowed && w.some && !w.someone
	took := w.waited + more
	whole := w.waited + 1 // had it ended on that day
	switch {
	case w.first > 0 && w.last == w.since:
		limit = prove.Limit{Days: w.first, First: true}
	case !left:
	case w.recovered+1 >= w.full: // both ends are days of care
		limit = prove.Limit{Days: w.full, Alone: true}
	case half > w.allowed:
		limit = prove.Limit{Days: half, Alone: true, Again: true}
	}
	if limit.Alone && whole > w.allowed && whole <= limit.Days {
		days := whole
		for _, x := range w.times {
			if x[0] > to-120 {
				days += x[1]
			}
		}
		if days > 42 {
			limit = prove.Limit{Days: w.allowed, Often: true}
			w.alone.often++
		}
	}
	if took > w.allowed && took <= limit.Days {
		w.alone.half, w.alone.whole = w.alone.half+one(limit.Again), w.alone.whole+one(!limit.Again)
	}
	if to >= w.begin {
		gap, from := took, w.last
		if w.last < w.today && w.late > limit.Days && w.known(w.last) {
			if w.begin == w.today {
				w.out.Missed = prove.Gap{From: w.last, To: to}
			}
			gap, from = w.after+more, w.today-1
			limit = prove.Limit{Days: w.allowed}
		} else if gap > w.out.Longest {
			w.out.Longest, w.out.From, w.out.To = gap, w.last, to
		}
		// What is the plan's alone is found before what a hold has a part in.
		if gap > limit.Days && (w.out.Breach == (prove.Gap{}) || w.soft && !w.excused(from, to)) {
			w.out.Breach, w.out.Limit, w.soft = prove.Gap{From: from, To: to}, limit, w.excused(from, to)
		}
	}
	if w.recovered += to - w.last; whole > half {
		w.recovered = 0
	}
	if left && whole > w.allowed {
		w.times = append(w.times, [2]int{to, whole})
	}
	w.last, w.waited, w.after, w.some, w.someone, w.late = to, 0, 0, false, false, 0
}

// meets reports whether an entry is for a need.
func meets(s *roster.Entry, p *prove.Proof) bool {
	all := s.Group == nil && p.Name.Name != "leftovers" // what is left is of one meal
	return s.Kind.Needs == p.Name && (p.Group == nil || all || s.Group == p.Group)
}

// occasions are the days on which a need is met: those that stood before today, those
// that are shown from today on, and what the log has.
func occasions(r *compile.Result, p *prove.Proof) []bool {
	met := make([]bool, r.Horizon.Days)
	for s := range r.Roster.All() {
		if !meets(s, p) {
			continue
		}
		for d := range met {
			met[d] = met[d] || d == s.Logged || s.Shown.Has(d) || d < r.Horizon.Today && s.Days.Has(d)
		}
	}
	for d := range met {
		for i := 0; p.Name.Name == "food" && i < len(p.Group.Holds); i++ {
			x := p.Group.Holds[i] // a refusal is an offer
			met[d] = met[d] || x.State == schema.StateRefused && x.From == r.Horizon.Date(d+1)
		}
	}
	return met
}

// nobody reports whether nobody comes to the enclosure on a day, since all of those who
// meet the need are away: read off the away blocks of the plan.
func nobody(r *compile.Result, p *prove.Proof, d int) bool {
	left := false
	for s := range r.Roster.All() {
		if s.Days.Has(d) {
			return false
		}
		if s.Once != nil || !meets(s, p) {
			continue
		}
		if left = s.Keeper != "" && gone(r, s.Keeper, d) && !covered(r, s.Keeper, d); !left {
			return false
		}
	}
	return left
}

func gone(r *compile.Result, keeper string, d int) bool {
	on := r.Horizon.Date(d)
	for _, a := range r.Plan.Aways {
		if a.Name.V == keeper && a.From.V <= on && on < a.To.V {
			return true
		}
	}
	return false
}

// covered reports whether somebody who is there stands in for a keeper on a day.
func covered(r *compile.Result, keeper string, d int) bool {
	on := r.Horizon.Date(d)
	for _, a := range r.Plan.Aways {
		if a.Name.V != keeper || on < a.From.V || on >= a.To.V || !a.Cover.Set() || gone(r, a.Cover.V, d) {
			continue
		}
		comes := len(a.Visits) == 0
		for _, v := range a.Visits {
			_, _, inMonth := on.YMD()
			comes = comes || v.V.Kind == plan.EachWeekday && v.V.Weekday == on.Weekday() || v.V.Kind == plan.DayOfMonth && v.V.Day == inMonth
		}
		if comes {
			return true
		}
	}
	return false
}

// anyState holds any of the rows that a need may depend on.
func anyState(rng *rand.Rand) *schema.State {
	s := &schema.State{Name: "any"}
	for _, r := range []schema.Row{schema.RowLive, schema.RowKilled, schema.RowMist, schema.RowDevice, schema.RowDeep} {
		if rng.IntN(2) == 0 {
			s.May[r].Manner = schema.Held
		}
	}
	return s
}

// waits reports whether a need waits on a day, because an animal must not be
// disturbed for it.
func waits(r *compile.Result, p *prove.Proof, d civil.Date) bool {
	row := map[string]schema.Row{"food": schema.RowKilled, "moisture": schema.RowMist, "device-test": schema.RowDevice}[p.Name.Name]
	if row == schema.RowFree {
		return false
	}
	// A season excuses meals of grown animals that take a cool rest, and the test of a
	// heater that is off: on half of the days of a year.
	rests := p.Name.Name == "food" && p.Group.Sheet.Figure(schema.FigureWinterRest, "") != nil && p.Stage != "young"
	if (rests || p.Name.Name == "device-test") && resting(r, row)[d-r.Horizon.From+365] {
		return true
	}
	for _, g := range r.Lives[0].Groups {
		if p.Group != nil && p.Group != g {
			continue
		}
		told := 30
		if f := g.Sheet.Figure(schema.FigureFastAlarm, p.Stage); f != nil && p.Group != nil {
			told = int(f.Range.High / (24 * 60))
		}
		for _, h := range g.Holds {
			switch {
			case !h.Out(row) || h.State == schema.StateRefused || d < h.From || d >= h.Until:
			case h.From > 0 || d < r.Today+civil.Date(told):
				return true
			}
		}
	}
	return false
}

// rested keeps the days of rest of the last enclosure that was asked for.
var rested struct {
	of   *compile.Result
	days map[schema.Row][]bool
}

// resting returns the days, from a year before the window on, on which seasons excuse what
// is in a row of the table.
func resting(r *compile.Result, row schema.Row) []bool {
	if rested.of != r {
		rested.of, rested.days = r, map[schema.Row][]bool{}
	}
	if out := rested.days[row]; out != nil {
		return out
	}
	out, before := make([]bool, 365+r.Horizon.Days), 0
	for i := range out {
		in, d := false, r.Horizon.From+civil.Date(i-365)
		for _, h := range r.Lives[0].Holds {
			in = in || h.Out(row) && h.From <= d && d < h.Until
		}
		if i >= 365 {
			before -= one(out[i-365])
		}
		out[i] = in && before < 180
		before += one(out[i])
	}
	rested.days[row] = out
	return out
}

// figures returns how long a time may be, and how long while nobody is there: the
// strictest of those of the groups on the first day of the proof.
func figures(r *compile.Result, p *prove.Proof) (allowed, unattended int) {
	allowed, unattended = 1<<30, 1<<30
	for _, g := range r.Lives[0].Groups {
		if p.Group != nil && p.Group != g || !lives(r, g, p.Begin) {
			continue
		}
		stage := g.Stage(r.Horizon.Date(p.Begin))
		for _, n := range g.Sheet.NeedsOf(stage) {
			if n.Name.V == p.Name.Name {
				allowed = min(allowed, int(n.Longest.V.Value/(24*60)))
			}
		}
		days := 0
		if f := g.Sheet.Figure(schema.FigureUnattended, stage); f != nil {
			days = int(f.Range.Low / (24 * 60))
		}
		unattended = min(unattended, days)
	}
	if p.Group != nil {
		unattended = 0
	}
	return allowed, unattended
}

// countLeftovers looks, for each live meal, at every day after it.
func countLeftovers(r *compile.Result, p *prove.Proof) result {
	n, today := r.Horizon.Days, r.Horizon.Today
	look := occasions(r, p)
	allowed, _ := figures(r, p)
	out := result{Limit: prove.Limit{Days: allowed}}
	since, _ := began(r, p)
	for d := p.Begin; d < p.End; d++ {
		out.Times += one(look[d])
	}
	for s := range r.Roster.All() {
		if s.Kind.Name != "feed" || s.Group != p.Group || s.Once != nil {
			continue
		}
		from := p.Begin
		if from == today {
			from = max(0, since+1, today-allowed)
		}
		for d := from; d < p.End; d++ {
			if !s.Days.Has(d) || s.Killed != nil && s.Killed.Has(d) || d >= today && !s.Shown.Has(d) {
				continue // nobody who is told of no meal looks after it
			}
			to := d + 1
			for to < n && !look[to] {
				to++
			}
			if to < today || to == n && n-d <= allowed {
				continue
			}
			if to-d > out.Longest {
				out.Longest, out.From, out.To = to-d, d, to
			}
			if to-d > allowed && out.Breach == (prove.Gap{}) {
				out.Breach = prove.Gap{From: d, To: to}
			}
		}
	}
	return out
}
