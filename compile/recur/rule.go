// Package recur says on which days something comes round: rules on civil dates,
// the next day, whole sets of days, iCalendar RRULE text and crontab lines.
// It knows no times of day beyond those a crontab line names, no zones and no
// present moment.
package recur

import (
	"time"

	"vivary/schema/civil"
)

// The ends of the calendar: no rule has a day outside them. They serve Between
// as "from the beginning" and "for ever".
const (
	MinDate civil.Date = -719162 // 1 Jan 0001
	MaxDate civil.Date = 2932896 // 31 Dec 9999
)

// MaxInterval is the greatest n that the constructors take. Anything longer is
// once in a keeper's life, and belongs into a plan as a date.
const MaxInterval = 10000

// Rule is a set of days. The zero value is the empty set. A constructor brings
// an anchor to its smallest equal form, so that rules with the same anchor days
// compare equal with ==, whichever of those days they were made from.
//
// A rule that can never have a day, such as one for 30 February, is the zero
// Rule; so is one whose interval is not from 1 to MaxInterval.
type Rule struct {
	unit     unit
	weekdays uint8 // bit 0 is Monday; of each week, or of each month as nth says
	nth      int8  // 0: every such weekday of the month; 1 to 5; -1: the last
	short    short
	months   uint16 // bits 1 to 12; all of them unless every is 1
	days     uint32 // bits 1 to 31
	every    int32
	phase    int32 // the first of the days, weeks or months from the epoch that is on
	from     civil.Date
	until    civil.Date
}

type unit uint8

const (
	never unit = iota
	inDays
	inWeeks
	inMonths
)

// short is what happens at a month's end.
type short uint8

const (
	skipShort   short = iota // a day that the month does not have is left out
	lastToo                  // the last day belongs to the set
	lastInstead              // the last day stands in for a day that the month does not have
)

const (
	allMonths uint16 = 0x1ffe
	allDays   uint32 = 0xfffffffe
)

// EveryDays is every nth day, forwards and backwards from the anchor.
func EveryDays(n int, anchor civil.Date) Rule {
	if n < 1 || n > MaxInterval {
		return Rule{}
	}
	return Rule{unit: inDays, every: int32(n), phase: phase(int(anchor), n), from: MinDate, until: MaxDate}
}

// Weekly is the given days of every nth week. Weeks begin on Monday, and the
// anchor's week is one of them.
func Weekly(days civil.Weekdays, n int, anchor civil.Date) Rule {
	days &= civil.EveryDay
	if n < 1 || n > MaxInterval || days == 0 {
		return Rule{}
	}
	if days == civil.EveryDay && n == 1 {
		return EveryDays(1, 0)
	}
	week, _ := weekOf(anchor)
	return Rule{unit: inWeeks, weekdays: mondayFirst(days), every: int32(n), phase: phase(week, n), from: MinDate, until: MaxDate}
}

// MonthDays is the days (bit 1 to bit 31) of every nth month, and its last day
// too where last is set. The anchor's month is one of them. A day that a month
// does not have is left out, as RFC 5545 3.3.10 has it.
func MonthDays(days uint32, last bool, n int, anchor civil.Date) Rule {
	r := monthly(n, anchor)
	r.days = days & allDays
	if last {
		r.short = lastToo
		r.days &^= 1 << 31 // where there is a 31st it is the last day
	}
	return r.tidy()
}

// MonthWeekday is the first to fifth (1 to 5) or the last (-1) such weekday of
// every nth month. The anchor's month is one of them. A month without a fifth is
// left out.
func MonthWeekday(ordinal int, w time.Weekday, n int, anchor civil.Date) Rule {
	if ordinal < -1 || ordinal == 0 || ordinal > 5 || w < time.Sunday || w > time.Saturday {
		return Rule{}
	}
	r := monthly(n, anchor)
	r.weekdays, r.nth = mondayFirst(civil.Weekdays(0).With(w)), int8(ordinal)
	return r.tidy()
}

// EveryMonths is the anchor's day of every nth month, or the month's last day
// where the month is shorter: what must be done monthly is then done monthly.
func EveryMonths(n int, anchor civil.Date) Rule {
	r := monthly(n, anchor)
	if r.unit == never {
		return Rule{}
	}
	_, _, day := anchor.YMD()
	shortest, longest := r.monthLengths()
	switch {
	case day <= shortest:
		r.days = 1 << day
	case day >= longest:
		r.short = lastToo
	default:
		r.days, r.short = 1<<day, lastInstead
	}
	return r.tidy()
}

// Yearly is one day of every year. 29 February is left out in common years.
// (Every nth year is MonthDays with 12n.)
func Yearly(month time.Month, day int) Rule {
	if month < time.January || month > time.December || day < 1 || day > 31 {
		return Rule{}
	}
	return MonthDays(1<<day, false, 12, civil.Must(2000, month, 1))
}

// Between is the days of r from one date until another, both included.
func (r Rule) Between(from, until civil.Date) Rule {
	if r.unit == never {
		return Rule{}
	}
	r.from, r.until = max(r.from, from), min(r.until, until)
	if _, ok := r.Next(r.from); !ok {
		return Rule{}
	}
	return r
}

// Never reports whether r has no day at all.
func (r Rule) Never() bool { return r.unit == never }

// Bounds returns the first and last day that r may have, MinDate and MaxDate
// unless Between has narrowed them.
func (r Rule) Bounds() (from, until civil.Date) { return r.from, r.until }

// monthly is every nth month, as yet without days.
func monthly(n int, anchor civil.Date) Rule {
	if n < 1 || n > MaxInterval {
		return Rule{}
	}
	y, m, _ := anchor.YMD()
	return Rule{unit: inMonths, months: allMonths, every: int32(n), phase: phase(y*12+int(m)-1, n), from: MinDate, until: MaxDate}
}

// tidy brings a rule in months to its simplest equal form.
func (r Rule) tidy() Rule {
	if _, ok := r.Next(MinDate); !ok {
		return Rule{}
	}
	if r.every == 1 && r.months == allMonths {
		if r.days|1<<31 == allDays && (r.days>>31 == 1 || r.short == lastToo) {
			return EveryDays(1, 0)
		}
	}
	return r
}

// monthLengths returns the least and the greatest number of days among the
// months in which r is on.
func (r Rule) monthLengths() (shortest, longest int) {
	shortest = 31
	for k := range 12 {
		m := time.Month((int(r.phase)+k*int(r.every))%12 + 1)
		if r.months>>m&1 == 0 {
			continue
		}
		shortest = min(shortest, civil.DaysIn(2001, m))
		longest = max(longest, civil.DaysIn(2000, m))
	}
	return shortest, longest
}

// phase is a modulo n, never negative.
func phase(a, n int) int32 { return int32(mod(a, n)) }

func mod(a, n int) int {
	if n == 1 {
		return 0 // most rules, and dividing is slow
	}
	if a %= n; a < 0 {
		a += n
	}
	return a
}

// weekOf returns the week of d, counted from the one that 1970 began in, and
// its day, 0 for Monday.
func weekOf(d civil.Date) (week, day int) {
	i := int(d) + 3 // the epoch was a Thursday
	day = mod(i, 7)
	return (i - day) / 7, day
}

// mondayFirst turns a set that begins on Sunday into one that begins on Monday.
func mondayFirst(s civil.Weekdays) uint8 { return uint8(s>>1|s<<6) & 0x7f }

// Shift returns the rule whose days lie n days after those of r, and whether there
// is one: an interval of days can be shifted, and the weekdays of every week.
func (r Rule) Shift(n int) (Rule, bool) {
	switch {
	case r.unit == inDays:
		r.phase = phase(int(r.phase)+n, int(r.every))
	case r.unit == inWeeks && r.every == 1:
		k := mod(n, 7)
		r.weekdays = (r.weekdays<<k | r.weekdays>>(7-k)) & 0x7f
	default:
		return Rule{}, false
	}
	if r.from > MinDate {
		r.from += civil.Date(n)
	}
	if r.until < MaxDate {
		r.until += civil.Date(n)
	}
	return r.tidy(), true
}

// OnWeekdays returns the rule with those days of r that are among some weekdays, and
// whether there is one: of every day, and of the weekdays of weeks.
func (r Rule) OnWeekdays(days civil.Weekdays) (Rule, bool) {
	switch {
	case r.unit == never:
	case r.from == r.until:
		if days&civil.Weekdays(0).With(r.from.Weekday()) == 0 {
			return Rule{}, true
		}
	case r.unit == inDays && r.every == 1:
		r = Weekly(days, 1, 0).Between(r.from, r.until)
	case r.unit == inWeeks:
		if r.weekdays &= mondayFirst(days & civil.EveryDay); r.weekdays == 0 {
			return Rule{}, true
		}
		r = r.Between(r.from, r.until)
	default:
		return Rule{}, false
	}
	return r, true
}
