package compared_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/compared"
	"vivary/compile/compare"
	"vivary/internal/randomplan"
	"vivary/schema/civil"
)

// disk is a collection of files, by name.
func disk(t testing.TB, files map[string]string) afero.Fs {
	t.Helper()
	out := afero.NewMemMapFs()
	for name, text := range files {
		if err := afero.WriteFile(out, name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return out
}

// on is noon of a day.
func on(day civil.Date) compared.Moment {
	return func(loc *time.Location) (time.Time, error) {
		if loc == nil {
			loc = time.UTC
		}
		return day.At(12*60, loc), nil
	}
}

func between(t testing.TB, was, is map[string]string, day civil.Date) *compare.Report {
	t.Helper()
	r, err := compared.Of(compared.Side{Disk: disk(t, was)}, compared.Side{Disk: disk(t, is)}, on(day))
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// TestSameIsNothing: a collection beside itself has no difference of any sort.
func TestSameIsNothing(t *testing.T) {
	for seed := range uint64(20) {
		p := randomplan.New(seed)
		files := p.Files(p.Today)
		r := between(t, files, files, p.Today)
		if len(r.Pieces)+len(r.Moves)+len(r.Laid)+len(r.Effects)+len(r.House)+len(r.People)+len(r.Care)+len(r.Phones) > 0 || r.Changed() || r.Harmed() {
			t.Errorf("seed %d: %+v", seed, r.Effects)
		}
		var out strings.Builder
		_ = r.Print(&out, true)
		if out.String() != "Nothing changes for the animals.\n" {
			t.Errorf("seed %d: %s", seed, out.String())
		}
	}
}

// opposite is the way of the same change read the other way round.
var opposite = map[compare.Way]compare.Way{compare.Harm: compare.Better, compare.Worse: compare.Better, compare.Better: compare.Worse, compare.Otherwise: compare.Otherwise}

// TestMirror: what is worse from a to b is better from b to a, of the same enclosures, and
// what was is what is.
func TestMirror(t *testing.T) {
	told := 0
	for seed := range uint64(60) {
		p := randomplan.New(seed)
		was := p.Files(p.Today)
		q := p.Clone()
		var what []string
		for range 1 + int(seed%3) {
			what = append(what, q.Edit())
		}
		is := q.Files(p.Today)
		there, back := between(t, was, is, p.Today), between(t, is, was, p.Today)
		a, b := lines(there, false), lines(back, true)
		if !slices.Equal(a, b) {
			t.Errorf("seed %d, %s:\n%s", seed, what, differ(a, b))
		}
		told += len(a)
	}
	if told < 60 {
		t.Errorf("only %d effects in all", told)
	}
}

// lines are the effects of a report as texts, in order; turned round where that is asked.
func lines(r *compare.Report, turn bool) (out []string) {
	for _, e := range r.Effects {
		if e.Found != nil && e.Found.Rule.ID == "animals-missing" {
			continue // only what is not there any more is missed
		}
		way, was, is := e.Way, e.Was, e.Is
		switch {
		case turn:
			way, was, is = opposite[way], is, was
		case way == compare.Harm:
			way = compare.Worse
		}
		name := strings.NewReplacer("taken out", "new").Replace(e.Name)
		for _, of := range append(slices.Clone(e.Of), "")[:max(1, len(e.Of))] {
			of = strings.TrimSuffix(of, "-new")                                                 // an enclosure goes by its name of then
			for _, name := range strings.Split(strings.ReplaceAll(name, " and ", ", "), ", ") { // however they are put together
				out = append(out, fmt.Sprintf("%s %s %s: %s → %s (from %s)", way, of, name, was, is, e.From))
			}
		}
	}
	slices.Sort(out)
	return out
}

func differ(a, b []string) string {
	var out strings.Builder
	count := map[string]int{}
	for _, x := range a {
		count[x]++
	}
	for _, x := range b {
		count[x]--
	}
	for _, x := range slices.Sorted(maps.Keys(count)) {
		if count[x] != 0 {
			fmt.Fprintf(&out, "%+d %s\n", count[x], x)
		}
	}
	return out.String()
}
