package horizon

import (
	"strings"
	"time"
)

// Often says on which days from today on something comes that is found, in words that are
// the same tomorrow: the one day, from when to when, or on which weekdays. What it says is
// "" where it comes every day.
func (h Horizon) Often(days Days) string {
	var of [7]int
	n, first, last := 0, days.Next(h.Today), -1
	for i := first; i >= 0; i = days.Next(i + 1) {
		of[h.Date(i).Weekday()]++
		n, last = n+1, i
	}
	switch {
	case n == 0 || n == h.Ahead():
		return ""
	case n == 1, n <= 3 && last-first >= n:
		return "on " + h.Date(first).Words()
	case last < h.Days-month && first > h.Today:
		return "from " + h.Date(first).Words() + " to " + h.Date(last).Words()
	case last < h.Days-month:
		return "until " + h.Date(last).Words()
	}
	var on []string
	for k := range of {
		if day := time.Weekday((k + 1) % 7); of[day] > 0 { // a week begins on Monday
			on = append(on, day.String()+"s")
		}
	}
	switch {
	case n > h.Ahead()*2/3:
		return "on most days"
	case len(on) > 3:
		return "on some days"
	case n < h.Ahead()/7*len(on)*3/4:
		return "on some " + strings.Join(on, " and ")
	}
	return "on " + strings.Join(on, " and ")
}

// month is how long before the end of the horizon something ends that ends.
const month = 45
