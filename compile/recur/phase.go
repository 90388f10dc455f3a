package recur

import "vivary/schema/civil"

// Phase returns the anchor for an interval of n days whose plan names no first
// day: one of the n days from 1970-01-01, chosen by the identity alone. Were it
// the date of the build, every build would move every entry, and two machines
// would disagree; were it one date for all, every enclosure would be due on the
// same day.
//
// The identity is hashed by FNV-1a, 64 bit (as hash/fnv has it), and the halves are folded
// together by exclusive or, because the low bits of FNV-1a alone follow the low
// bits of the text too closely for a small n. Neither may ever be changed: keepers'
// calendars depend on it.
func Phase(identity string, n int) civil.Date {
	if n < 1 {
		return 0
	}
	h := fnv1a(identity)
	return civil.Date((h>>32 ^ h&0xffffffff) % uint64(n))
}

func fnv1a(s string) uint64 {
	h := uint64(0xcbf29ce484222325)
	for i := 0; i < len(s); i++ {
		h = (h ^ uint64(s[i])) * 0x100000001b3
	}
	return h
}
