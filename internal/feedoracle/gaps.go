package feedoracle

import "vivary/schema/civil"

// Gap is a time without something: it was done on the day From, or before the first
// day, and not again until To.
type Gap struct{ From, To civil.Date }

// Gaps returns the times between days, which are in order, on which something is
// done, from one day until another. What was due before the first day counts as done
// on the day before it; of the days after the last nothing is known.
func Gaps(days []civil.Date, from, until civil.Date) []Gap {
	var out []Gap
	last := from - 1
	for _, d := range days {
		if d >= from && d < until && d > last {
			out = append(out, Gap{last, d})
			last = d
		}
	}
	return append(out, Gap{last, until - 1})
}

// Days is how long a gap is.
func (g Gap) Days() int { return int(g.To - g.From) }

// Empty reports whether there is a day in the gap on which none of the given things
// is done.
func (g Gap) Empty(done map[civil.Date]bool) bool {
	for d := g.From + 1; d < g.To; d++ {
		if !done[d] {
			return true
		}
	}
	return false
}
