package recur

import (
	"math/bits"

	"vivary/compile/horizon"
)

// Fill adds all of the rule's days on horizon h to s, which must be a set of
// that horizon. It works by whole words where it can: a year of a rule takes
// less time than a few dozen steps of Next.
func (r Rule) Fill(s horizon.Days, h horizon.Horizon) {
	lo := max(int(r.from)-int(h.From), 0)
	hi := min(int(r.until)-int(h.From)+1, h.Days)
	if lo >= hi {
		return
	}
	start := int(h.From) + lo
	switch n := int(r.every); r.unit {
	case inDays:
		if n == 1 {
			s.AddRun(lo, hi, h.Days)
			return
		}
		fillEvery(s, lo+mod(int(r.phase)-start, n), hi, n)
	case inWeeks:
		for set := r.weekdays; set != 0; set &= set - 1 {
			day := int(r.phase)*7 - 3 + bits.TrailingZeros8(set)
			fillEvery(s, lo+mod(day-start, 7*n), hi, 7*n)
		}
	case inMonths:
		r.fillMonths(s, h, lo, hi)
	}
}

// fillEvery adds day i and every nth after it, up to but not including hi.
func fillEvery(s horizon.Days, i, hi, n int) {
	if n >= 64 {
		for ; i < hi; i += n {
			s.Add(i)
		}
		return
	}
	pattern := uint64(1)
	for k := n; k < 64; k *= 2 {
		pattern |= pattern << k
	}
	shift := i & 63
	for word := i >> 6; word<<6 < hi; word++ {
		w := pattern << shift
		if rest := hi - word<<6; rest < 64 {
			w &= 1<<rest - 1
		}
		s[word] |= w
		shift = mod(shift-64, n)
	}
}

func (r *Rule) fillMonths(s horizon.Days, h horizon.Horizon, lo, hi int) {
	i, _ := monthOf(h.Date(lo))
	for i += mod(int(r.phase)-i, int(r.every)); ; i += int(r.every) {
		first := monthStart(i)
		at := int(first) - int(h.From)
		if at >= hi {
			return
		}
		if !isMonth(r.months, i) {
			continue
		}
		set := uint64(r.inMonth(first, int(monthStart(i+1)-first)) >> 1)
		if cut := lo - at; cut > 0 {
			set, at = set>>cut, lo
		}
		if rest := hi - at; rest < 31 {
			set &= 1<<rest - 1
		}
		if set == 0 {
			continue
		}
		s[at>>6] |= set << (at & 63)
		if over := set >> (63 - at&63) >> 1; over != 0 {
			s[at>>6+1] |= over
		}
	}
}
