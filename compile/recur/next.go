package recur

import (
	"math/bits"

	"vivary/schema/civil"
)

// Contains reports whether d is one of the rule's days.
func (r Rule) Contains(d civil.Date) bool {
	if d < r.from || d > r.until {
		return false
	}
	switch r.unit {
	case inDays:
		return mod(int(d)-int(r.phase), int(r.every)) == 0
	case inWeeks:
		week, day := weekOf(d)
		return r.weekdays>>day&1 == 1 && mod(week-int(r.phase), int(r.every)) == 0
	case inMonths:
		i, day := monthOf(d)
		first := d - civil.Date(day) + 1
		return isMonth(r.months, i) &&
			mod(i-int(r.phase), int(r.every)) == 0 &&
			r.inMonth(first, int(monthStart(i+1)-first))>>day&1 == 1
	}
	return false
}

// Next returns the first of the rule's days on or after d, and whether there is
// one. It looks at no more than one turn of the calendar.
func (r Rule) Next(d civil.Date) (civil.Date, bool) {
	d = max(d, r.from)
	if d > r.until {
		return 0, false
	}
	switch r.unit {
	case inDays:
		d += civil.Date(mod(int(r.phase)-int(d), int(r.every)))
	case inWeeks:
		d = r.nextInWeeks(d)
	case inMonths:
		d = r.nextInMonths(d)
	default:
		return 0, false
	}
	if d > r.until {
		return 0, false
	}
	return d, true
}

func (r *Rule) nextInWeeks(d civil.Date) civil.Date {
	week, day := weekOf(d)
	skip := mod(int(r.phase)-week, int(r.every))
	if skip == 0 {
		if rest := r.weekdays >> day; rest != 0 {
			return d + civil.Date(bits.TrailingZeros8(rest))
		}
		skip = int(r.every)
	}
	return d + civil.Date(7*skip-day+bits.TrailingZeros8(r.weekdays))
}

// turn is the number of months after which the calendar repeats, weekdays
// included: 400 years are 20,871 whole weeks.
const turn = 4800

const toThe28th uint32 = 0x1ffffffe

// nextInMonths returns a day past the calendar's end if there is none.
func (r *Rule) nextInMonths(d civil.Date) civil.Date {
	i, day := monthOf(d)
	first := d - civil.Date(day) + 1
	if skip := mod(int(r.phase)-i, int(r.every)); skip != 0 {
		i, day = i+skip, 0
		first = monthStart(i)
	}
	for range turn {
		if first > r.until {
			break
		}
		if isMonth(r.months, i) {
			// Up to the 28th the month's length does not matter.
			if rest := r.days & toThe28th >> day << day; rest != 0 && r.weekdays == 0 {
				return first + civil.Date(bits.TrailingZeros32(rest)) - 1
			}
			if rest := r.inMonth(first, int(monthStart(i+1)-first)) >> day << day; rest != 0 {
				return first + civil.Date(bits.TrailingZeros32(rest)) - 1
			}
		}
		i, day = i+int(r.every), 0
		first = monthStart(i)
	}
	return MaxDate + 1
}

// eachWeek repeats a set of weekdays over six weeks when multiplied with it.
const eachWeek uint64 = 1 | 1<<7 | 1<<14 | 1<<21 | 1<<28 | 1<<35

// inMonth returns the rule's days (bits 1 to 31) of the month that begins on
// first and has the given number of days.
func (r *Rule) inMonth(first civil.Date, days int) uint32 {
	all := allDays >> (31 - days)
	set := r.days & all
	if r.short == lastToo || r.short == lastInstead && set == 0 {
		set |= 1 << days
	}
	if r.weekdays != 0 {
		_, day := weekOf(first)
		on := uint32(uint64(r.weekdays)*eachWeek>>day) << 1 & all
		switch {
		case r.nth > 0:
			on &= 0xfe << (7 * (r.nth - 1))
		case r.nth < 0:
			on &= 0x7f << (days - 6)
		}
		set |= on
	}
	return set
}
