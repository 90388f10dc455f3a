package margin

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/internal/generated"
	"vivary/internal/planned"
	"vivary/plan"
)

// made is a generated collection of n enclosures.
func made(t testing.TB, n int) *compile.Result {
	t.Helper()
	c, found := planned.Sound(t, generated.Collection(n, "Europe/London"))
	return compile.Compile(c, found, monday)
}

// above returns the lens above a block, or "".
func above(r *compile.Result, h *plan.Head) string {
	for _, n := range Lenses(r, h.At.File) {
		if n.At == h.At {
			return n.Text
		}
	}
	return ""
}

// What a lens says of days and needs is what roster and proofs have: the first day that has
// anything but routine is named, no need is nearer to its limit, and what is not met is said.
func TestLensesSayWhatIsKnown(t *testing.T) {
	for day := range 40 {
		c := compiled(t, "../../examples/quillmoor").Plan
		r := compile.Compile(c, nil, monday.AddDate(0, 0, 9*day))
		ticks := r.Roster.Ticks()
		for i, x := range r.Lives {
			text := above(r, &x.Plan.Head)
			first := -1
			for k := range r.Roster.Of[i] {
				e := &r.Roster.Of[i][k]
				if e.Kind.Routine || e.Ask != nil {
					continue
				}
				for d := r.Horizon.Today; d < r.Horizon.Days; d++ {
					if e.Days.Has(d) && !(d == r.Horizon.Today && ticks.Has(e, d)) {
						if first < 0 || d < first {
							first = d
						}
						break
					}
				}
			}
			_, next, _ := strings.Cut(text, "next: ")
			next, _, _ = strings.Cut(next, ";")
			if want := dayOf(r, first); first >= 0 && !strings.Contains(next, want) {
				t.Errorf("%s on %s: %q does not say %s", x.Plan.Name.V, r.Today, text, want)
			}
			needs(t, r, i, text)
		}
	}
}

func dayOf(r *compile.Result, i int) string {
	switch d := r.Horizon.Date(i); {
	case d == r.Today:
		return "today"
	case d == r.Today+1:
		return "tomorrow"
	default:
		return d.Short()[4:]
	}
}

func needs(t *testing.T, r *compile.Result, i int, text string) {
	t.Helper()
	unmet, most := false, 0.0
	for k := range r.Proofs[i] {
		p := &r.Proofs[i][k]
		unmet = unmet || !p.Met()
		if b := bound(p); p.Longest > 1 && b > 1 {
			most = max(most, float64(p.Longest)/float64(b))
		}
	}
	if unmet != strings.Contains(text, "NOT MET: ") {
		t.Errorf("%s on %s: %q, not met %v", r.Lives[i].Plan.Name.V, r.Today, text, unmet)
	}
	if _, after, ok := strings.Cut(text, "longest "); ok {
		var a, b int
		if _, err := fmt.Sscanf(after, "%d of %d", &a, &b); err != nil || float64(a)/float64(b) != most {
			t.Errorf("%s on %s: %q, the nearest is %v of its limit", r.Lives[i].Plan.Name.V, r.Today, text, most)
		}
	} else if !unmet && most > 0 && most <= 1 {
		t.Errorf("%s on %s: %q says nothing of needs", r.Lives[i].Plan.Name.V, r.Today, text)
	}
}

// The lens above an absence counts the days and meals that the roster has.
func TestAbsenceIsCounted(t *testing.T) {
	r := compiled(t, "../../examples/quillmoor")
	a := r.Plan.Aways[0]
	waiting := 0
	for e := range r.Roster.All() {
		for d := a.From.V; d < a.To.V; d++ {
			i, _ := r.Horizon.Index(d)
			if c := e.Reason(i); e.Kind.Meal && !e.Days.Has(i) && c != nil && c.Away == a && (c.Why == roster.Waits || c.Why == roster.Nobody || c.Why == roster.LeftIn) {
				waiting++
			}
		}
	}
	if text, want := above(r, &a.Head), fmt.Sprintf("14 days; Relief keeper comes on 8; nobody on 6; %d meals wait", waiting); text != want {
		t.Errorf("%q, not %q", text, want)
	}
}

// A plan of which something could not be read on which all depends says nothing of days; one
// in which a block is torn nothing of that block.
func TestBrokenPlansSayLess(t *testing.T) {
	const sound = "collection \"c\" {\n  time_zone = \"UTC\"\n}\nroom \"a\" {\n  temperature = \"22 to 25 C\"\n}\nenclosure \"b\" {\n  species = \"pandinus-imperator\"\n  room = \"a\"\n  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n%s}\n"
	for what, want := range map[string]bool{"": true, "  care \"mist\" {\n    every = \"often\"\n  }\n": false, "  care \"mist\" {\n    every = \n": false} {
		c, found := planned.Files(t, planned.With(fmt.Sprintf(sound, what), ""))
		r := compile.Compile(c, found, monday)
		if all := Lenses(r, r.Plan.Files.Files()[0]); (len(all) > 0) != want {
			t.Errorf("%q: %v", what, all)
		}
	}
	c, found := planned.Files(t, planned.With(fmt.Sprintf(sound, "")+"round \"r\" {\n  at = \n", ""))
	r := compile.Compile(c, found, monday)
	if all := Lenses(r, r.Plan.Files.Files()[0]); len(all) > 0 {
		t.Errorf("a round is torn: %v", all)
	}
}

// One file of a large collection takes a few milliseconds: it is asked for at each pause in
// typing.
func TestOneFileIsQuick(t *testing.T) {
	r := made(t, 1000)
	best := time.Hour
	for range 5 {
		begun := time.Now()
		id := r.Plan.Files.Files()[1]
		if n := len(Lenses(r, id)) + len(Hints(r, id, whole(r, id))); n < generated.PerRoom {
			t.Fatalf("%d notes", n)
		}
		best = min(best, time.Since(begun))
	}
	t.Logf("one file of 40 enclosures among 1,000: %v", best)
	if best > 50*time.Millisecond {
		t.Errorf("%v", best)
	}
}
