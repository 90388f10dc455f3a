// Package horizon is the stretch of days that one compilation looks at, and sets
// of days on it. Proof, day's list and calendar entries all read the same horizon,
// so that they cannot disagree about which days there are.
package horizon

import (
	"math/bits"

	"vivary/schema/civil"
)

// Past is how many days before today a horizon begins, so that yesterday is an
// ordinary place on it. One word of a set holds them.
const Past = 64

// Horizon is a run of days: From, and the Days-1 that follow it. Today is the place
// of the present day.
type Horizon struct {
	From  civil.Date
	Days  int
	Today int
}

// Around returns the horizon of a present day that looks so many days ahead, today
// included.
func Around(today civil.Date, ahead int) Horizon {
	return Horizon{From: today - Past, Days: Past + ahead, Today: Past}
}

// Now returns the present day.
func (h Horizon) Now() civil.Date { return h.Date(h.Today) }

// Ahead returns for how many days is looked ahead, today included.
func (h Horizon) Ahead() int { return h.Days - h.Today }

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

// Intersects reports whether a day is in both sets.
func (s Days) Intersects(t Days) bool {
	for i := range s {
		if s[i]&t[i] != 0 {
			return true
		}
	}
	return false
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

// CountFrom returns the number of days of the set at or after i.
func (s Days) CountFrom(i int) int {
	n := 0
	for word := max(i, 0) >> 6; word < len(s); word++ {
		w := s[word]
		if word == i>>6 {
			w &= ^uint64(0) << (i & 63)
		}
		n += bits.OnesCount64(w)
	}
	return n
}

// Last returns the last day of the set before i, or -1.
func (s Days) Last(i int) int {
	for word := min((i-1)>>6, len(s)-1); word >= 0 && i > 0; word-- {
		w := s[word]
		if word == (i-1)>>6 && i&63 != 0 {
			w &= 1<<(i&63) - 1
		}
		if w != 0 {
			return word<<6 + 63 - bits.LeadingZeros64(w)
		}
	}
	return -1
}

// Empty reports whether no day is in the set.
func (s Days) Empty() bool {
	for _, w := range s {
		if w != 0 {
			return false
		}
	}
	return true
}

// Within reports whether every day is in t.
func (s Days) Within(t Days) bool {
	for i, w := range s {
		if w&^t[i] != 0 {
			return false
		}
	}
	return true
}

// Keep removes every day that is not in t.
func (s Days) Keep(t Days) {
	for i := range s {
		s[i] &= t[i]
	}
}

// Clone returns a copy.
func (s Days) Clone() Days { return append(Days(nil), s...) }
