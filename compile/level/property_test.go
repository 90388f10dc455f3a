package level_test

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/internal/randomplan"
	"vivary/schema/civil"
)

// TestOverRandomPlans holds what a layout promises, over plans of all kinds: the plan builds as
// it did, no need is met later than it may be that was not before, nobody has a longer day than
// the longest there was, and a second run proposes nothing.
func TestOverRandomPlans(t *testing.T) {
	plans, built, moved := 60, 0, 0
	if testing.Short() {
		plans = 30
	}
	for seed := range uint64(plans) {
		p := randomplan.New(seed)
		switch seed % 4 { // the same house, said in other ways
		case 1:
			p = p.Templated()
		case 2:
			p = p.Numbered()
		case 3:
			p = p.Racked()
		}
		files := p.Files(p.Today)
		now := time.Date(2000, 1, 1, 9, 0, 0, 0, time.UTC).AddDate(0, 0, int(p.Today-civil.Must(2000, 1, 1)))
		was := compiled(t, files, now)
		if was.Roster == nil || was.Refused() {
			continue
		}
		built++
		budgets(files, was, rand.New(rand.NewPCG(seed, 7)))
		was = compiled(t, files, now)
		l, after := leveled(t, files, now)
		if len(l.Moves) == 0 {
			if !maps.Equal(files, after) {
				t.Errorf("seed %d: nothing moves, and the files change", seed)
			}
			continue
		}
		moved++
		is := compiled(t, after, now)
		if is.Refused() {
			t.Errorf("seed %d: what was built is refused: %s", seed, said(is))
			continue
		}
		if is.Late() > was.Late() {
			t.Errorf("seed %d: %d needs were met late, and now %d", seed, was.Late(), is.Late())
		}
		before, behind := was.Roster.Work(), is.Roster.Work()
		for who, days := range behind {
			if most, least := slices.Max(days), slices.Max(before[who]); most > least {
				t.Errorf("seed %d: the longest day of %q was %d min, and is %d", seed, who, least, most)
			}
		}
		long := longDays(is)
		for i := range l.Is {
			if k := l.Is[i].Keeper; k != nil && (l.Is[i].Over > 0) != long[k.Name.V] {
				t.Errorf("seed %d: %s is said to have %d days that are too long, and the rule says %v", seed, k.Name.V, l.Is[i].Over, long)
			}
			if l.Is[i].Over > l.Was[i].Over && l.Is[i].Most >= l.Was[i].Most {
				t.Errorf("seed %d: %s was too long on %d days, and is on %d", seed, l.Is[i].Shown(), l.Was[i].Over, l.Is[i].Over)
			}
		}
		if again, _ := leveled(t, after, now); len(again.Moves) != 0 {
			t.Errorf("seed %d: a second run moves %d besides %d: %+v", seed, len(again.Moves), len(l.Moves), again.Moves)
		}
	}
	if moved*5 < built {
		t.Errorf("in %d of %d plans anything moves: that says little", moved, built)
	}
	t.Logf("in %d of %d plans something moves", moved, built)
}

// longDays are those of the keepers of whom the rule about long days says that they have one.
func longDays(r *compile.Result) map[string]bool {
	out := map[string]bool{}
	for _, f := range r.Findings {
		for _, k := range r.Plan.Keepers {
			if f.Rule.ID == "day-too-long" && f.At.File == k.Budget.At.File && f.At.Start == k.Budget.At.Start {
				out[k.Name.V] = true
			}
		}
	}
	return out
}

// said is what refuses.
func said(r *compile.Result) (out string) {
	for _, f := range r.Findings {
		if f.Severity.Refuses() {
			out += f.Rule.ID + ": " + f.Text + "\n"
		}
	}
	return out
}

// budgets gives each keeper of a plan as much time as is enough on most days, and not on all.
func budgets(files map[string]string, r *compile.Result, rng *rand.Rand) {
	work := r.Roster.Work()
	for name, text := range files {
		if !strings.HasSuffix(name, ".care.hcl") {
			continue
		}
		var out strings.Builder
		for line := range strings.Lines(text) {
			out.WriteString(line)
			if keeper, ok := strings.CutPrefix(line, "keeper \""); ok && strings.HasSuffix(line, "{\n") {
				keeper, _, _ = strings.Cut(keeper, "\"")
				if days := slices.Sorted(slices.Values(work[keeper])); len(days) > 0 && days[len(days)-1] > 0 {
					fmt.Fprintf(&out, "  budget = \"%d min\"\n", max(1, days[len(days)*(70+rng.IntN(25))/100]))
				}
			}
		}
		files[name] = out.String()
	}
}
