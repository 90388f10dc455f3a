package recur

import (
	"math/bits"
	"strconv"
	"strings"
	"time"
)

// RRule returns the rule as the value of an iCalendar RRULE (RFC 5545 3.3.10),
// without UNTIL, which depends on the zone. It is ok only for the shapes that
// Exchange and Outlook have too; for all others the caller must expand the days,
// because a reader that knows only its own shapes may drop the recurrence or
// show wrong days. Exchange's shapes, from the reference of its Web Services:
//
//   - every 1 to 999 days (DailyRecurrence), 1 to 99 months
//     (AbsoluteMonthlyRecurrence); 99 weeks are taken by analogy;
//   - a day of month beyond the month's end means its last day there
//     (AbsoluteMonthlyRecurrence, DayOfMonth), and is left out by the RFC: such
//     days have no text that means the same to all;
//   - the first to fourth and the last such weekday of the month, no fifth
//     (DayOfWeekIndex).
func (r Rule) RRule() (text string, ok bool) {
	switch r.unit {
	case inDays:
		return "FREQ=DAILY" + interval(r.every), r.every <= 999
	case inWeeks:
		// WKST decides what every other week means, and readers differ in the default.
		return "FREQ=WEEKLY" + interval(r.every) + ";BYDAY=" + strings.Join(pick(r.weekdays, byDay), ",") + ";WKST=MO", r.every <= 99
	case inMonths:
		return r.rruleMonths()
	}
	return "", false
}

func (r Rule) rruleMonths() (text string, ok bool) {
	if r.months != allMonths || r.every > 99 || r.short == lastInstead {
		return "", false
	}
	text = "FREQ=MONTHLY" + interval(r.every)
	switch day := bits.TrailingZeros32(r.days); {
	case r.weekdays != 0:
		if r.days != 0 || r.short != skipShort || r.nth == 0 || r.nth == 5 {
			return "", false
		}
		return text + ";BYDAY=" + strconv.Itoa(int(r.nth)) + pick(r.weekdays, byDay)[0], true
	case r.days == 0:
		return text + ";BYMONTHDAY=-1", true
	case r.short == lastToo || r.days != 1<<day:
		return "", false
	default:
		if shortest, _ := r.monthLengths(); day > shortest {
			return "", false
		}
		if r.every == 12 {
			text = "FREQ=YEARLY;BYMONTH=" + strconv.Itoa(int(r.phase)+1)
		}
		return text + ";BYMONTHDAY=" + strconv.Itoa(day), true
	}
}

// maxSeries is one a month; more entries than that are no simpler to have in a
// calendar than the days themselves (common practice, no source).
const maxSeries = 12

// Series returns rules that each have an RRULE and together have exactly the
// days of r, none of them twice. It is nil where that cannot be done, or takes
// more than a dozen: then the days must be expanded. "The 1st and 15th" gives two rules, since a list of
// days of the month is not a shape that every reader has.
func (r Rule) Series() []Rule {
	if _, ok := r.RRule(); ok {
		return []Rule{r}
	}
	if r.unit != inMonths || r.weekdays != 0 || r.short == lastInstead {
		return nil
	}
	if shortest, _ := r.monthLengths(); r.short == lastToo && r.days>>shortest != 0 {
		return nil // the last day of a short month would come twice
	}
	var parts []Rule
	for _, one := range r.eachMonth() {
		for days := r.days; days != 0; days &= days - 1 {
			one.days, one.short = days&-days, skipShort
			parts = append(parts, one)
		}
		if r.short == lastToo {
			one.days, one.short = 0, lastToo
			parts = append(parts, one)
		}
	}
	if len(parts) > maxSeries {
		return nil
	}
	kept := parts[:0]
	for _, part := range parts {
		if part = part.Between(part.from, part.until); part.Never() {
			continue
		}
		if _, ok := part.RRule(); !ok {
			return nil
		}
		kept = append(kept, part)
	}
	return kept
}

// eachMonth returns r for each of its months of the year apart, or r itself if
// it is on in all.
func (r Rule) eachMonth() []Rule {
	if r.months == allMonths {
		return []Rule{r}
	}
	var out []Rule
	for m := time.January; m <= time.December; m++ {
		if r.months>>m&1 == 1 {
			one := r
			one.months, one.every, one.phase = allMonths, 12, int32(m-1)
			out = append(out, one)
		}
	}
	return out
}

func interval(n int32) string {
	if n == 1 {
		return ""
	}
	return ";INTERVAL=" + strconv.Itoa(int(n))
}

var byDay = [7]string{"MO", "TU", "WE", "TH", "FR", "SA", "SU"}

// pick returns the names of the weekdays in the set.
func pick(set uint8, names [7]string) []string {
	var out []string
	for i, name := range names {
		if set>>i&1 == 1 {
			out = append(out, name)
		}
	}
	return out
}
