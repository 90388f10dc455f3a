package vtimezone

import (
	"strconv"
	"time"
)

// cycle is the years after which weekdays fall on the same dates again, so that
// what holds for so many years holds for all (but for 2100, when rules that
// name an nth weekday hold as well).
const cycle = 28

// yearly is the nth weekday of a month, counted from the end where nth is -1:
// the only yearly recurrence that every calendar app reads.
type yearly struct {
	month   time.Month
	weekday time.Weekday
	nth     int
}

func (r yearly) append(dst []byte) []byte {
	dst = append(dst, "FREQ=YEARLY;BYMONTH="...)
	dst = strconv.AppendInt(dst, int64(r.month), 10)
	dst = append(dst, ";BYDAY="...)
	dst = strconv.AppendInt(dst, int64(r.nth), 10)
	w := r.weekday * 2
	return append(dst, "SUMOTUWETHFRSA"[w:w+2]...)
}

// has reports whether the date of t is the rule's.
func (r yearly) has(t time.Time) bool {
	if t.Month() != r.month || t.Weekday() != r.weekday {
		return false
	}
	if r.nth < 0 {
		return t.AddDate(0, 0, 7).Month() != r.month
	}
	return (t.Day()-1)/7+1 == r.nth
}

// fit returns the rule of every other onset, beginning with the first: one a
// year, at the same clock time, with the same readings, for a whole cycle.
func fit(all []onset) (yearly, bool) {
	if len(all) < 2*cycle {
		return yearly{}, false
	}
	wall := all[0].wall()
nth:
	for _, nth := range [...]int{1, 2, 3, 4, -1} {
		r := yearly{wall.Month(), wall.Weekday(), nth}
		for i := 0; i < len(all); i += 2 {
			w := all[i].wall()
			if !r.has(w) || w.Year() != wall.Year()+i/2 || seconds(w) != seconds(wall) ||
				all[i].before != all[0].before || all[i].after != all[0].after {
				continue nth
			}
		}
		return r, true
	}
	return yearly{}, false
}

// seconds returns the seconds since midnight.
func seconds(t time.Time) int { return t.Hour()*3600 + t.Minute()*60 + t.Second() }
