package daylist_test

import (
	"slices"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/rounds"
	"vivary/internal/planned"
	"vivary/internal/randomplan"
)

// TestWalk holds a list in parts against the list in words and against the list by task: the
// lines are the same, and each stop is asked for in just one of them.
func TestWalk(t *testing.T) {
	jobs := 0
	for seed := range uint64(60) {
		p := randomplan.New(seed)
		c, found := planned.Files(t, p.Files(p.Today-1))
		r := compile.Compile(c, found, time.Unix(int64(p.Today)*86400+12*3600, 0).UTC())
		if r.Roster == nil {
			continue
		}
		for _, l := range daylist.Of(r, daylist.Asked{Days: 3}) {
			var lines []string
			left := map[string]int{}
			count := func(j string, stops []rounds.Stop, n int) {
				for _, s := range stops {
					left[s.Place.Name+" "+j] += n
				}
			}
			for _, d := range l.Due {
				count(d.Text, d.Stops, 1)
			}
			for _, x := range l.Walk {
				lines = append(lines, x.Text)
				for _, j := range x.Jobs {
					count(j.Text, j.Stops, -1)
					jobs++
				}
				if asks := x.Sort == rounds.Pressing || x.Sort == rounds.Leaving || x.Sort == rounds.Todo; asks != (len(x.Jobs) > 0) {
					t.Errorf("seed %d: %d jobs in a line of sort %d: %s", seed, len(x.Jobs), x.Sort, x.Text)
				}
			}
			printed := slices.DeleteFunc(slices.Clone(l.Lines), func(s string) bool { return s == "" })
			if !slices.Equal(lines, printed) {
				t.Errorf("seed %d: in parts\n%q\nin words\n%q", seed, lines, printed)
			}
			for stop, n := range left {
				if n != 0 {
					t.Errorf("seed %d: %s stands in the lines %d times too rarely", seed, stop, n)
				}
			}
		}
	}
	if jobs < 500 {
		t.Errorf("only %d jobs", jobs)
	}
}
