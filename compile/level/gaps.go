package level

import "slices"

// Verdict is whether tasks of which one fits on a day can all be done in time.
type Verdict int

// The verdicts.
const (
	Unknown Verdict = iota // so many ways were tried that no more were
	Fits
	Never
)

// mostStates is how many ways the days so far can stand that are looked at.
const mostStates = 50_000

// longestGap is the longest of which that is tried.
const longestGap = 255

// Density is the share of the days that tasks take of which each is done at least every so many
// days, one on a day. Over 1 they cannot be done. Up to 5/6 they always can: Kawamura, Proof of
// the density threshold for pinwheel scheduling, 2024; from memory, as are the examples of the
// tests, which Holte and others, The pinwheel, 1989, have.
func Density(gaps []int) (sum float64) {
	for _, g := range gaps {
		sum += 1 / float64(g)
	}
	return sum
}

// OneADay reports whether tasks of which one fits on a day can all be done, each at least every
// so many days: by the density where that says it, else by trying.
func OneADay(gaps []int) Verdict {
	const always, rounding = 5.0 / 6, 1e-9
	for _, g := range gaps {
		if g < 1 {
			return Never
		}
	}
	switch d := Density(gaps); {
	case d > 1+rounding:
		return Never
	case d <= always+rounding:
		return Fits
	case slices.Max(gaps) > longestGap:
		return Unknown
	}
	// What counts of the days so far is how many days each task may still wait. Who can go on
	// for ever comes back to where they were.
	const path, dead = 1, 2
	state := map[string]int8{}
	left := mostStates
	var try func(wait []byte) Verdict
	try = func(wait []byte) Verdict {
		key := string(wait)
		switch state[key] {
		case path:
			return Fits
		case dead:
			return Never
		}
		if left--; left < 0 {
			return Unknown
		}
		state[key] = path
		out := Never
		for i := range wait {
			next := make([]byte, len(wait))
			fits := true
			for j, n := range wait {
				if next[j] = n - 1; j == i {
					next[j] = byte(gaps[j])
				}
				fits = fits && (j == i || n > 1)
			}
			if !fits {
				continue
			}
			if v := try(next); v == Fits {
				return Fits
			} else if v == Unknown {
				out = Unknown
			}
		}
		if out == Never {
			state[key] = dead
		}
		return out
	}
	wait := make([]byte, len(gaps))
	for i, g := range gaps {
		wait[i] = byte(g)
	}
	return try(wait)
}
