// Package horizon is the stretch of days that one compilation looks at, and sets
// of days on it. Proof, agenda and calendar entries all read the same horizon,
// so that they cannot disagree about which days there are.
package horizon

import (
	"math/bits"

	"vivary/schema/civil"
)

// Horizon is a run of days: From, and the Days-1 that follow it.
type Horizon struct {
	From civil.Date
	Days int
}

// Index returns the place of d on the horizon, and whether it lies on it.
func (h Horizon) Index(d civil.Date) (int, bool) {
	i := int(d - h.From)
	return i, i >= 0 && i < h.Days
}

// Date returns the day at place i.
func (h Horizon) Date(i int) civil.Date { return h.From + civil.Date(i) }

// Last returns the last day of the horizon.
func (h Horizon) Last() civil.Date { return h.From + civil.Date(h.Days) - 1 }

// New returns an empty set of days for this horizon.
func (h Horizon) New() Days { return make(Days, Words(h.Days)) }

// Words returns how many words a set over n days takes.
func Words(n int) int { return (n + 63) / 64 }

// Days is a set of days on a horizon, one bit a day. Sets of the same horizon
// have the same length, and all operations are over whole words.
type Days []uint64

// Add puts day i into the set.
func (s Days) Add(i int) { s[i>>6] |= 1 << (i & 63) }

// Remove takes day i out of the set.
func (s Days) Remove(i int) { s[i>>6] &^= 1 << (i & 63) }

// Has reports whether day i is in the set.
func (s Days) Has(i int) bool { return s[i>>6]&(1<<(i&63)) != 0 }

// AddRun puts the days from i up to but not including j into the set; both are
// cut to the n days of the horizon.
func (s Days) AddRun(i, j, n int) {
	for i, j = max(i, 0), min(j, n); i < j; {
		word, bit := i>>6, i&63
		run := min(j-i, 64-bit)
		s[word] |= (^uint64(0) >> (64 - run)) << bit
		i += run
	}
}

// Union adds every day of t.
func (s Days) Union(t Days) {
	for i := range s {
		s[i] |= t[i]
	}
}

// Subtract removes every day of t.
func (s Days) Subtract(t Days) {
	for i := range s {
		s[i] &^= t[i]
	}
}

// Count returns the number of days in the set.
func (s Days) Count() int {
	n := 0
	for _, w := range s {
		n += bits.OnesCount64(w)
	}
	return n
}

// Next returns the first day of the set at or after i, or -1.
func (s Days) Next(i int) int {
	if i < 0 {
		i = 0
	}
	for word := i >> 6; word < len(s); word++ {
		w := s[word]
		if word == i>>6 {
			w &= ^uint64(0) << (i & 63)
		}
		if w != 0 {
			return word<<6 + bits.TrailingZeros64(w)
		}
	}
	return -1
}

// Clone returns a copy.
func (s Days) Clone() Days { return append(Days(nil), s...) }
