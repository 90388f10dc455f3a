package prove_test

import (
	"fmt"
	"math/rand/v2"
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
	species(&b, rng, stages)
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

// species writes a sheet with figures chosen at random for each stage.
func species(b *strings.Builder, rng *rand.Rand, stages []string) {
	own := "  source  = [\"fixture\"]\n  because = \"fixture of this test\"\n  review  = \"2040-01-01\"\n"
	b.WriteString("species \"fixture\" {\n  title = \"fixture\"\n")
	for i, stage := range []string{"young", "juvenile", "adult"} {
		fmt.Fprintf(b, "stage %q {\n  instars = \"%d\"\n}\n", stage, 3+i)
	}
	for _, stage := range stages {
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

// TestProofIsExact compares the proof with a count, day by day, on random plans with
// absences: half of them with the days that they have, half with days of care and
// holds by chance.
func TestProofIsExact(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	var breaches, missed, whole, half, excused, forgotten int
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
		s, l := r.Roster, r.Lives[0]
		hold := func() []life.Hold {
			from := s.Horizon.From + civil.Date(rng.IntN(s.Horizon.Days+40)-20)
			return []life.Hold{{From: from, Until: from + civil.Date(rng.IntN(50)), State: anyState(rng)}}
		}
		if round%2 == 0 {
			upset(rng, s)
		}
		if round%2 == 0 {
			l.Holds = hold()
			for _, g := range l.Groups {
				g.Holds = append(hold(), hold()...)
			}
		}
		proofs := prove.Of(s, 0)
		if want := stated(r); len(proofs) != want {
			t.Fatalf("%d proofs, and %d needs are stated\n%s%s", len(proofs), want, log, text)
		}
		for k := range proofs {
			p := &proofs[k]
			want, left := count(r, p)
			got := result{p.Longest, p.From, p.To, p.Times, p.Breach, p.Missed, p.Limit}
			if p.Met() {
				got.Limit = want.Limit
			}
			if got != want || p.Met() != (want.Breach == prove.Gap{}) {
				t.Fatalf("%s: proven %+v\ncounted: %+v\n%s", p.Name.Name, got, want, text)
			}
			breaches += one(!p.Met())
			missed += one(p.Missed != prove.Gap{})
			forgotten += one(p.Missed.From < 0)
			whole, half = whole+left.whole, half+left.half
			excused += one(p.Excused != nil && p.Excused.Count() > 0)
		}
	}
	t.Logf("%d breaches, %d missed, %d of them from before the window, %d left alone for longer than usual, %d half, %d excused", breaches, missed, forgotten, whole, half, excused)
	if breaches < 500 || missed < 150 || forgotten < 1 || whole < 100 || half < 25 || excused < 200 {
		t.Error("too few to show anything")
	}
}

func one(b bool) int {
	if b {
		return 1
	}
	return 0
}

// stated is how many needs there are: of each group that lives the two that are its
// own, and the test of heaters where there are any.
func stated(r *compile.Result) int {
	groups := 0
	for _, g := range r.Lives[0].Groups {
		groups += one(lives(r, g))
	}
	return 5 + one(r.Plan.Enclosures[0].Heated()) + 2*groups
}

func lives(r *compile.Result, g *life.Group) bool { return g.Count(r.Today) > 0 }

// result is what is compared of a proof.
type result struct {
	Longest, From, To, Times int
	Breach, Missed           prove.Gap
	Limit                    prove.Limit
}

// alone is how many times were longer than usual, and sound since nobody came.
type alone struct{ whole, half int }

// count finds the longest time and the first that is too long by walking over the
// days with counters.
func count(r *compile.Result, p *prove.Proof) (result, alone) {
	if p.Name.Name == "leftovers" {
		return countLeftovers(r, p), alone{}
	}
	n, today := r.Horizon.Days, r.Horizon.Today
	met := occasions(r, p)
	var out result
	for d := today; d < n; d++ {
		out.Times += one(met[d])
	}
	last := start(r, p, met)
	w := walk{today: today, last: last, recovered: 1 << 30, out: &out}
	w.allowed, w.full = figures(r, p)
	w.known = func(from int) bool { return from < 0 || leftOutSince(r, p, from) }
	w.waits = func(d int) bool { return waits(r, p, r.Horizon.Date(d)) }
	for d := last + 1; d < n; d++ {
		if d == today {
			w.late = w.waited + 1
		}
		if met[d] {
			w.end(d, 1)
			continue
		}
		if !w.waits(d) {
			w.waited++
			if d >= today {
				w.since++
			}
			w.someone = w.someone || !nobody(r, p, d)
		}
		w.some = w.some || nobody(r, p, d)
	}
	w.end(n, 0)
	return out, w.alone
}

// start is the day from which is counted: the first on which the need was met. Where
// there is none before today, it is yesterday; or the day before the first that is known
// to have been left out, which lies before all that is known where an absence does.
func start(r *compile.Result, p *prove.Proof, met []bool) int {
	for d := range r.Horizon.Today {
		if met[d] {
			return d
		}
	}
	first := r.Horizon.Today
	for _, c := range leftOut(r, p) {
		for d := range r.Horizon.Today {
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
	today, allowed, full int
	last                 int  // when it was met last
	waited               int  // days since then that count
	late                 int  // how late it is today, before anything is done
	since                int  // days from today on that count
	some, someone        bool // a day since then with nobody, and one with somebody
	recovered            int  // days since the last time that was longer than usual
	soft                 bool // whether the one that was found has excused days in it
	waits                func(d int) bool
	known                func(from int) bool // whether something was left out from a day until today
	out                  *result
	alone                alone
}

// excused reports whether a need does not hold on one of some days.
func (w *walk) excused(from, to int) bool {
	for d := max(0, from); d < to; d++ {
		if w.waits(d) {
			return true
		}
	}
	return false
}

// end ends a time on day to, which counts as more days itself.
func (w *walk) end(to, more int) {
	half := max(w.allowed, (w.full+1)/2)
	limit := prove.Limit{Days: w.allowed}
	if w.full > w.allowed && w.some && !w.someone {
		switch {
		case w.recovered+1 >= w.full: // both ends are days of care
			limit = prove.Limit{Days: w.full, Alone: true}
		case half > w.allowed:
			limit = prove.Limit{Days: half, Alone: true, Again: true}
		}
	}
	took := w.waited + more
	if took > w.allowed && took <= limit.Days {
		w.alone.half, w.alone.whole = w.alone.half+one(limit.Again), w.alone.whole+one(!limit.Again)
	}
	if to >= w.today {
		gap, from := took, w.last
		if w.last < w.today && w.late > limit.Days && w.known(w.last) {
			w.out.Missed = prove.Gap{From: w.last, To: to}
			gap, from = w.since+more, w.today-1
			limit = prove.Limit{Days: w.allowed}
		} else if gap > w.out.Longest {
			w.out.Longest, w.out.From, w.out.To = gap, w.last, to
		}
		// What is the plan's alone is found before what a hold has a part in.
		if gap > limit.Days && (w.out.Breach == (prove.Gap{}) || w.soft && !w.excused(from, to)) {
			w.out.Breach, w.out.Limit, w.soft = prove.Gap{From: from, To: to}, limit, w.excused(from, to)
		}
	}
	if w.recovered += to - w.last; took > half {
		w.recovered = 0
	}
	w.last, w.waited, w.since, w.some, w.someone, w.late = to, 0, 0, false, false, 0
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
	sheet := r.Lives[0].Plan.Sheet
	held := func(all []life.Hold, most int, cool bool) bool {
		for _, h := range all {
			if h.Out(row) && (!cool || h.Cool) && h.From <= d && d < h.Until && int(d-h.From) < most {
				return true
			}
		}
		return false
	}
	// A season excuses meals of grown animals where it is a cool rest, and the test of a
	// heater that is off; no hold is longer than a fast that is looked into.
	season := 0
	switch {
	case p.Name.Name == "device-test":
		season = 180
	case p.Name.Name == "food" && sheet.Figure(schema.FigureWinterRest, "") != nil && p.Group.Animals.Stage.V != "young":
		season = 180
	}
	out := held(r.Lives[0].Holds, season, p.Name.Name == "food")
	for _, g := range r.Lives[0].Groups {
		if p.Group != nil && p.Group != g {
			continue
		}
		most := 30
		if f := sheet.Figure(schema.FigureFastAlarm, g.Animals.Stage.V); f != nil {
			most = int(f.Range.High / (24 * 60))
		}
		out = out || held(g.Holds, most, false)
	}
	return out
}

// figures returns how long a time may be, and how long while nobody is there: the
// strictest of those of the groups.
func figures(r *compile.Result, p *prove.Proof) (allowed, unattended int) {
	allowed, unattended = 1<<30, 1<<30
	for _, g := range r.Lives[0].Groups {
		if p.Group != nil && p.Group != g || !lives(r, g) {
			continue
		}
		stage := g.Animals.Stage.V
		for _, n := range r.Lives[0].Plan.Sheet.NeedsOf(stage) {
			if n.Name.V == p.Name.Name {
				allowed = min(allowed, int(n.Longest.V.Value/(24*60)))
			}
		}
		days := 0
		if f := r.Lives[0].Plan.Sheet.Figure(schema.FigureUnattended, stage); f != nil {
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
	for d := today; d < n; d++ {
		out.Times += one(look[d])
	}
	for s := range r.Roster.All() {
		if s.Kind.Name != "feed" || s.Group != p.Group || s.Once != nil {
			continue
		}
		for d := max(0, today-allowed); d < n; d++ {
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
