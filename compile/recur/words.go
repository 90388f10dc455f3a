package recur

import (
	"strconv"
	"strings"
	"time"

	"vivary/schema/civil"
	"vivary/schema/wording"
)

// Words returns the rule as a keeper would say it, without its bounds: "every
// 3 days", "Tue and Fri", "every 2 weeks on Tue", "the 1st and 15th", "the last
// Fri of the month", "1 Apr each year".
func (r Rule) Words() string { return r.WordsFrom(time.Monday) }

// WordsFrom is Words with the days of a week from one of them on.
func (r Rule) WordsFrom(first time.Weekday) string {
	n := strconv.Itoa(int(r.every))
	switch r.unit {
	case inDays:
		switch {
		case r.every == 1 && r.from == r.until:
			return "once, on " + r.from.Words()
		case r.every == 1 && r.until < MaxDate && r.from > MinDate && r.until-r.from < 366:
			return "every day from " + r.from.Words() + " to " + r.until.Words()
		case r.every == 1:
			return "every day"
		}
		return "every " + n + " days"
	case inWeeks:
		days := wording.And(daysFrom(r.weekdays, first))
		if r.every == 1 {
			return days
		}
		return "every " + n + " weeks on " + days
	case inMonths:
		return r.monthWords(first)
	}
	return "never"
}

func (r Rule) monthWords(first time.Weekday) string {
	what := r.dayWords(first)
	months := r.monthNames()
	day, single := strings.CutPrefix(what, "the ")
	single = single && r.days&(r.days-1) == 0 && r.weekdays == 0 && r.short == skipShort
	day = strings.TrimRight(day, "stndrh")
	switch n := int(r.every); {
	case n == 1 && r.months == allMonths:
		if r.weekdays == 0 && r.short == skipShort || r.nth == 0 && r.weekdays != 0 {
			return what
		}
		return what + " of the month"
	case n == 12 && single:
		return day + " " + months[0] + " each year"
	case n == 12:
		return what + " of " + months[0] + " each year"
	case n%12 == 0 && single:
		return "every " + strconv.Itoa(n/12) + " years on " + day + " " + months[0]
	case n%12 == 0:
		return "every " + strconv.Itoa(n/12) + " years on " + what + " of " + months[0]
	case n == 1 || 12%n == 0:
		return what + " of " + wording.And(months)
	default:
		return "every " + strconv.Itoa(n) + " months on " + what
	}
}

// dayWords is the days without the months: "the 1st and 15th".
func (r Rule) dayWords(first time.Weekday) string {
	if r.days == allDays {
		return "every day"
	}
	var the, every []string
	for d := 1; d <= 31; d++ {
		if r.days>>d&1 == 1 {
			the = append(the, civil.Ordinal(d))
		}
	}
	for _, name := range daysFrom(r.weekdays, first) {
		switch {
		case r.nth == 0:
			every = append(every, "every "+name)
		case r.nth < 0:
			the = append(the, "last "+name)
		default:
			the = append(the, civil.Ordinal(int(r.nth))+" "+name)
		}
	}
	switch r.short {
	case lastToo:
		the = append(the, "last day")
	case lastInstead:
		return "the " + wording.And(the) + " or else the last day"
	}
	if len(the) > 0 {
		the[0] = "the " + the[0]
	}
	return wording.And(append(the, every...))
}

// monthNames returns the months of the year in which r is on.
func (r Rule) monthNames() []string {
	on := r.months
	if r.every > 1 {
		on = 0
		for k := range 12 {
			on |= 1 << ((int(r.phase)+k*int(r.every))%12 + 1)
		}
	}
	var out []string
	for m := time.January; m <= time.December; m++ {
		if on>>m&1 == 1 {
			out = append(out, m.String()[:3])
		}
	}
	return out
}

var dayNames = [7]string{"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"}

// daysFrom names the weekdays of a set, from one of them on.
func daysFrom(set uint8, first time.Weekday) []string {
	from := (int(first) + 6) % 7
	var out []string
	for k := range dayNames {
		if i := (from + k) % 7; set>>i&1 == 1 {
			out = append(out, dayNames[i])
		}
	}
	return out
}
