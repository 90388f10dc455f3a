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
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/testdata/planned"
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

// random is a collection of one enclosure with two groups, whose needs have
// random figures, the second group's among them stricter or not.
func random(rng *rand.Rand) string {
	var b strings.Builder
	b.WriteString("collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\nroom \"east\" {\n  temperature = \"21 to 24 C\"\n}\nspecies \"fixture\" {\n  title = \"fixture\"\n")
	own := "  source  = [\"fixture\"]\n  because = \"fixture of this test\"\n  review  = \"2040-01-01\"\n"
	for _, stage := range []string{"juvenile", "adult"} {
		fmt.Fprintf(&b, "stage %q {\n  instars = \"%d\"\n}\n", stage, map[string]int{"juvenile": 4, "adult": 5}[stage])
		for _, n := range needs {
			fmt.Fprintf(&b, "need %q {\n  stages  = [%q]\n  longest = \"%d days\"\n%s}\n", n.name, stage, 1+rng.IntN(9), own)
		}
		if rng.IntN(3) > 0 {
			fmt.Fprintf(&b, "figure \"unattended\" {\n  stages  = [%q]\n  value = \"%d days\"\n%s}\n", stage, 1+rng.IntN(12), own)
		}
	}
	b.WriteString("}\nenclosure \"ash\" {\n  species = \"fixture\"\n  housing {\n    inside = \"60 x 40 x 40 cm\"\n    lid    = \"solid, latched\"\n  }\n  climate {\n    heater \"mat\" {\n      power      = \"10 W\"\n      place      = \"side\"\n      thermostat = \"28 C\"\n    }\n  }\n")
	for _, g := range []string{"juvenile", "adult"} {
		fmt.Fprintf(&b, "  animals %q {\n    count = 1\n    stage = %q\n  }\n  feeding %q {\n    every = \"day\"\n    per_animal = 1\n    prey = \"cricket small\"\n  }\n", g, g, g)
	}
	for _, n := range needs {
		if n.care != "" {
			fmt.Fprintf(&b, "  care %q {\n    every = \"day\"\n  }\n", n.care)
		}
	}
	return b.String() + "}\n"
}

// TestProofIsExact compares the proof with a count, day by day, on random days of
// care, holds and absences.
func TestProofIsExact(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	breaches, unattended, excused := 0, 0, 0
	for range 300 {
		r := compiled(t, random(rng), "", day("2027-02-15"))
		s := r.Schedule
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
		for x := range s.All() {
			x.Days, x.Left = some(density), nil
			if rng.IntN(3) == 0 {
				x.Left = some(20)
			}
			if x.Kind.Name == "feed" && rng.IntN(3) == 0 {
				x.Killed = some(2)
			}
		}
		hold := func() []life.Hold {
			from := s.Horizon.From + civil.Date(rng.IntN(n+40)-20)
			return []life.Hold{{From: from, Until: from + civil.Date(rng.IntN(30)), What: life.Mask(rng.IntN(16))}}
		}
		l := r.Lives[0]
		if rng.IntN(2) == 0 {
			l.Holds = hold()
		}
		for _, g := range l.Groups {
			g.Holds = append(hold(), hold()...)
		}
		proofs := prove.Of(s, 0)
		if len(proofs) != len(needs)+2 {
			t.Fatalf("%d proofs", len(proofs))
		}
		for k := range proofs {
			p := &proofs[k]
			want := count(r, p)
			if p.Longest != want.Longest || p.From != want.From || p.To != want.To || p.Breach != want.Breach || p.Times != want.Times || p.Met() != (want.Breach == prove.Gap{}) {
				t.Fatalf("%s: longest %d from %d to %d, breach %v, %d times\ncounted: %d from %d to %d, breach %v, %d times", p.Name.Name,
					p.Longest, p.From, p.To, p.Breach, p.Times, want.Longest, want.From, want.To, want.Breach, want.Times)
			}
			if !p.Met() {
				breaches++
			}
			if p.Unattended > p.Allowed {
				unattended++
			}
			if p.Excused != nil && p.Excused.Count() > 0 {
				excused++
			}
		}
	}
	if breaches < 500 || unattended < 300 || excused < 200 {
		t.Errorf("%d breaches, %d with unattended days, %d excused: too few to show anything", breaches, unattended, excused)
	}
}

// count finds the longest time and the first that is too long by walking over the
// days with a counter.
func count(r *compile.Result, p *prove.Proof) prove.Proof {
	if p.Name.Name == "leftovers" {
		return countLeftovers(r, p)
	}
	n := r.Horizon.Days
	met, away := make([]bool, n), make([]bool, n)
	out := prove.Proof{}
	for s := range r.Schedule.All() {
		if s.Kind.Needs != p.Name || p.Group != nil && s.Group != nil && s.Group != p.Group {
			continue
		}
		for d := range n {
			met[d] = met[d] || s.Days.Has(d)
			away[d] = away[d] || s.Left != nil && s.Left.Has(d)
		}
	}
	allowed, full := figures(r, p)
	waited, last, gone := 0, -1, false
	usual := 1 << 20 // days since the last time that was longer than usual
	end := func(to int) {
		if waited > out.Longest {
			out.Longest, out.From, out.To = waited, last, to
		}
		limit := allowed
		half := max(allowed, (full+1)/2)
		if gone && full > limit {
			if limit = half; usual >= full {
				limit = full
			}
		}
		if waited > half {
			usual = 0
		} else {
			usual += to - last
		}
		if waited > limit && out.Breach == (prove.Gap{}) {
			out.Breach = prove.Gap{From: last, To: to}
		}
	}
	for d := range n {
		if met[d] {
			waited++
			out.Times++
			end(d)
			waited, last, gone = 0, d, false
			continue
		}
		if !waits(r, p, r.Horizon.Date(d)) {
			waited++
		}
		gone = gone || away[d]
	}
	end(n)
	return out
}

// waits reports whether a need waits on a day, because an animal must not be
// disturbed for it.
func waits(r *compile.Result, p *prove.Proof, d civil.Date) bool {
	mask := map[string]life.Mask{"food": life.Meals, "moisture": life.Misting, "device-test": life.Heating}[p.Name.Name]
	sheet := r.Lives[0].Plan.Sheet
	held := func(all []life.Hold, most int) bool {
		for _, h := range all {
			if h.What&mask != 0 && h.From <= d && d < h.Until && int(d-h.From) < most {
				return true
			}
		}
		return false
	}
	// A season excuses meals of grown animals that take a cool rest, and the test of a
	// heater that is off; no hold is longer than a fast that is looked into.
	season := 0
	switch {
	case p.Name.Name == "device-test":
		season = 180
	case p.Name.Name == "food" && sheet.Figure(schema.FigureWinterRest, "") != nil && p.Group.Animals.Stage.V != "young":
		season = 180
	}
	out := held(r.Lives[0].Holds, season)
	for _, g := range r.Lives[0].Groups {
		if p.Group != nil && p.Group != g {
			continue
		}
		most := 30
		if f := sheet.Figure(schema.FigureFastAlarm, g.Animals.Stage.V); f != nil {
			most = int(f.Range.High / (24 * 60))
		}
		out = out || held(g.Holds, most)
	}
	return out
}

// figures returns how long a time may be, and how long while nobody is there: the
// strictest of those of the groups.
func figures(r *compile.Result, p *prove.Proof) (allowed, unattended int) {
	allowed, unattended = 1<<30, 1<<30
	for _, g := range r.Lives[0].Groups {
		if p.Group != nil && p.Group != g {
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
func countLeftovers(r *compile.Result, p *prove.Proof) prove.Proof {
	out := prove.Proof{}
	n := r.Horizon.Days
	look := make([]bool, n)
	for s := range r.Schedule.All() {
		if s.Kind.Name == "leftovers" && s.Group == p.Group {
			for d := range n {
				if s.Days.Has(d) {
					look[d] = true
					out.Times++
				}
			}
		}
	}
	allowed, _ := figures(r, p)
	for s := range r.Schedule.All() {
		if s.Kind.Name != "feed" || s.Group != p.Group {
			continue
		}
		for d := range n {
			if !s.Days.Has(d) || s.Killed != nil && s.Killed.Has(d) {
				continue
			}
			to := d + 1
			for to < n && !look[to] {
				to++
			}
			if to == n && n-d <= allowed {
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
