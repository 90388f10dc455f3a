package page

import (
	"slices"
	"strings"

	"vivary/compile"
)

// found returns the list in which all of some ticks stand today, to be done or done already,
// and where; nil where one does not: then the list is another than when it was shown.
func (q *request) found(r *compile.Result, name string, ticks []string, sum string) (*list, *place) {
	for _, keeper := range []string{q.v.Keeper, ""} {
		l := q.list(r, keeper)
		i := slices.IndexFunc(l.Rounds, func(x round) bool { return x.Name == name })
		if i < 0 {
			continue
		}
		x := &l.Rounds[i]
		if len(ticks) == 1 && ticks[0] == "all" {
			if sum != "" && sumOf(x.all()) == sum {
				return l, &place{x, -1}
			}
			continue
		}
		if x.has(ticks) {
			return l, &place{x, x.lineOf(ticks)}
		}
	}
	return nil, nil
}

// has reports whether all of some ticks stand in the round.
func (x *round) has(ticks []string) bool {
	for _, t := range ticks {
		said, names, ok := strings.Cut(t, "*")
		if !ok {
			return false
		}
		for tank := range strings.SplitSeq(names, ".") {
			if !x.may[said+"*"+tank] {
				return false
			}
		}
	}
	return true
}

// lineOf is the line at which ticks stand, as they were shown or as stops of it; -1 for none.
func (x *round) lineOf(ticks []string) int {
	any := func(jobs []job) bool {
		return slices.ContainsFunc(jobs, func(j job) bool { return j.Tick != "" && within(j.Tick, ticks) })
	}
	for i, l := range x.lines() {
		if any(l.Jobs) || slices.ContainsFunc(l.Stops, func(s stop) bool { return any(s.Jobs) }) {
			return i
		}
	}
	return -1
}
