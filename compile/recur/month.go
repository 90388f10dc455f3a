package recur

import "vivary/schema/civil"

// Months are counted from January of year 0. The two functions here say again
// what civil says, without its checks and for dates from MinDate to MaxDate only:
// the walk over months is where the time goes. They follow Neri and Schneider,
// "Euclidean affine functions and their application to calendar algorithms",
// Software: Practice and Experience 53 (2023), whose years begin in March so that
// the leap day is the last, and which divides by multiplying.

// toMarch is the number of days from 1 March of year 0 to the epoch.
const toMarch = 719468

// monthOf returns the month of d and its day of month.
func monthOf(d civil.Date) (month, day int) {
	n := 4*uint32(int32(d)+toMarch) + 3
	century, rest := n/146097, n%146097|3
	p := 2939745 * uint64(rest)
	year, dayOfYear := 100*century+uint32(p>>32), uint32(p)/2939745/4
	q := 2141*dayOfYear + 197913 // months 3 to 14 in the upper half
	return int(12*year + q>>16 - 1), int(q&0xffff/2141) + 1
}

// monthStart returns the first day of a month.
func monthStart(month int) civil.Date {
	m := uint32(month - 2)
	year, m := m/12, m%12
	century := year / 100
	return civil.Date(1461*year/4-century+century/4+(979*m+18)/32) - toMarch
}

// isMonth reports whether a set of months of the year has the month.
func isMonth(set uint16, month int) bool { return set>>(uint32(month)%12+1)&1 == 1 }
