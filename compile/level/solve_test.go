package level_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"vivary/compile/level"
)

// job is a task that takes some minutes once, on one of some days; it stands on the first.
func job(id, minutes int, days ...int) level.Task {
	return level.Task{ID: fmt.Sprintf("%03d", id), Minutes: minutes, Options: len(days),
		Far:  func(k int) int { return max(days[k]-days[0], days[0]-days[k]) },
		Work: func(k int) []level.Work { return []level.Work{{Load: 0, Day: days[k], Minutes: minutes}} }}
}

// load is that of tasks as they stand.
func load(tasks []level.Task, days, limit int) []level.Load {
	l := level.Load{Cap: limit, Days: make([]int, days)}
	for _, t := range tasks {
		for _, w := range t.Work(0) {
			l.Days[w.Day] += w.Minutes
		}
	}
	return []level.Load{l}
}

func over(l []level.Load) (n int) {
	for _, m := range l[0].Days {
		n += max(0, m-l[0].Cap)
	}
	return n
}

// onAny are jobs that may be done on any of so many days, all of them on the first as yet.
func onAny(days int, minutes ...int) (out []level.Task) {
	for i, m := range minutes {
		var all []int
		for d := range days {
			all = append(all, d)
		}
		out = append(out, job(i, m, all...))
	}
	return out
}

// TestPublishedLayouts solves the worst cases for two simple ways of laying out work, which
// solve them less well: Graham, Bounds on multiprocessing timing anomalies, SIAM J. Appl. Math.
// 17, 1969 (the longest first, each to the least full of m days: at most 4/3 - 1/(3m) of the
// best), and Dosa, The tight bound of first fit decreasing bin-packing algorithm, 2007 (11/9 of
// the best and 6/9). Both from memory.
func TestPublishedLayouts(t *testing.T) {
	for _, x := range []struct {
		name         string
		minutes      []int
		days, limit  int
		simple, best int
	}{
		{"Graham 1969, m = 3", []int{5, 5, 4, 4, 3, 3, 3}, 3, 9, 11, 9},
		{"Dosa 2007", []int{30, 30, 25, 25, 20, 20, 15, 15}, 3, 60, 0, 60},
	} {
		tasks := onAny(x.days, x.minutes...)
		loads := load(tasks, x.days, x.limit)
		if _, best := level.Solve(tasks, loads); !best || over(loads) != 0 || slices.Max(loads[0].Days) != x.best {
			t.Errorf("%s: %v, best %v", x.name, loads[0].Days, best)
		}
		if x.simple > 0 && longestFirst(x.minutes, x.days) != x.simple {
			t.Errorf("%s: the longest first comes to %d", x.name, longestFirst(x.minutes, x.days))
		}
		if x.simple > 0 && 9*x.simple != 11*x.best {
			t.Errorf("%s: %d of %d is not the bound, 4/3 - 1/9", x.name, x.simple, x.best)
		}
	}
	tasks := onAny(4, 30, 30, 25, 25, 20, 20, 15, 15)
	if n := firstFit([]int{30, 30, 25, 25, 20, 20, 15, 15}, 60); n != 4 {
		t.Errorf("first fit takes %d days", n)
	}
	if l := load(tasks, 4, 60); l[0].Days[0] != 180 || (l[0].Days[0]+59)/60 != 3 {
		t.Errorf("the sum is %d, which is at least three days", l[0].Days[0])
	}
}

// longestFirst gives each job, the longest first, to the least full day, and returns the fullest.
func longestFirst(minutes []int, days int) int {
	all := make([]int, days)
	for _, m := range slices.Backward(slices.Sorted(slices.Values(minutes))) {
		all[slices.Index(all, slices.Min(all))] += m
	}
	return slices.Max(all)
}

// firstFit gives each job, the longest first, to the first day that has room.
func firstFit(minutes []int, limit int) int {
	var all []int
	for _, m := range slices.Backward(slices.Sorted(slices.Values(minutes))) {
		i := slices.IndexFunc(all, func(n int) bool { return n+m <= limit })
		if i < 0 {
			i, all = len(all), append(all, 0)
		}
		all[i] += m
	}
	return len(all)
}

// TestAsGoodAsAny holds small layouts against all there are: none is over by less, none by as
// little with fewer moves, among those that make no day worse than it was and put none over.
func TestAsGoodAsAny(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	moved := 0
	for n := range 600 {
		days := 2 + rng.IntN(4)
		var tasks []level.Task
		for i := range 1 + rng.IntN(7) {
			at := rng.Perm(days)[:1+rng.IntN(days)]
			if rng.IntN(2) == 0 {
				at = append([]int{0}, slices.DeleteFunc(at, func(d int) bool { return d == 0 })...)
			}
			tasks = append(tasks, job(i, 1+rng.IntN(9), at...))
		}
		loads := load(tasks, days, 3+rng.IntN(15))
		limit, first := loads[0].Cap, slices.Clone(loads[0].Days)
		leastOver, fewest := 1<<30, 1<<30
		var each func(i int, at []int, moves int)
		each = func(i int, now []int, moves int) {
			if i == len(tasks) {
				sum := 0
				for d, m := range now {
					if m > max(limit, first[d]) {
						return
					}
					sum += max(0, m-limit)
				}
				if sum < leastOver || sum == leastOver && moves < fewest {
					leastOver, fewest = sum, moves
				}
				return
			}
			for k := range tasks[i].Options {
				w := tasks[i].Work(k)[0]
				now[w.Day] += w.Minutes
				each(i+1, now, moves+min(k, 1))
				now[w.Day] -= w.Minutes
			}
		}
		each(0, make([]int, days), 0)
		at, best := level.Solve(tasks, loads)
		moves := 0
		again := make([]int, days)
		for i, k := range at {
			w := tasks[i].Work(k)[0]
			again[w.Day] += w.Minutes
			moves += min(k, 1)
		}
		if moves > 0 {
			moved++
		}
		if !best || over(loads) != leastOver || moves != fewest || !slices.Equal(again, loads[0].Days) {
			t.Errorf("case %d: over by %d with %d moves, best %v; there is one over by %d with %d", n, over(loads), moves, best, leastOver, fewest)
		}
	}
	if moved < 200 {
		t.Errorf("only %d move anything", moved)
	}
}

// TestLargeLayouts holds large ones against the bound of Graham 1969: with room for that much
// more than the best has, the longest first finds a place for all.
func TestLargeLayouts(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for range 60 {
		days, best := 3+rng.IntN(25), 60
		var minutes []int
		for range days { // each day of the best is full, so that nothing is better
			for left := best; left > 0; {
				m := min(left, 1+rng.IntN(30))
				minutes = append(minutes, m)
				left -= m
			}
		}
		tasks := onAny(days, minutes...)
		loads := load(tasks, days, best*(4*days-1)/(3*days))
		if level.Solve(tasks, loads); over(loads) != 0 {
			t.Errorf("%d jobs on %d days: over by %d, at most %d of %d", len(tasks), days, over(loads), slices.Max(loads[0].Days), loads[0].Cap)
		}
	}
}

// TestOneADay is the check of an outsider: pinwheel scheduling, with the threshold of 5/6 that
// Kawamura proved in 2024 and the case {2, 3, m} that cannot be done (from memory).
func TestOneADay(t *testing.T) {
	for _, x := range []struct {
		gaps    []int
		density float64
		want    level.Verdict
	}{
		{[]int{3, 5, 5, 10}, 0.833, level.Fits},
		{[]int{2, 3, 12}, 0.917, level.Never},
		{[]int{2, 3, 100}, 0.843, level.Never},
		{[]int{2, 2}, 1, level.Fits},
		{[]int{2, 4, 4}, 1, level.Fits},
		{[]int{2, 2, 100}, 1.01, level.Never},
		{[]int{3, 4, 5, 8}, 0.908, level.Fits},
		{[]int{1}, 1, level.Fits},
		{[]int{}, 0, level.Fits},
		{[]int{0}, 0, level.Never},
	} {
		if len(x.gaps) > 0 && x.gaps[0] > 0 {
			if d := level.Density(x.gaps); d < x.density-0.001 || d > x.density+0.001 {
				t.Errorf("the density of %v is %.3f, not %.3f", x.gaps, d, x.density)
			}
		}
		if got := level.OneADay(x.gaps); got != x.want {
			t.Errorf("%v: %v, not %v", x.gaps, got, x.want)
		}
	}
}
