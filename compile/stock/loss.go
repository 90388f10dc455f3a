package stock

import (
	"math"
	"slices"
)

// Daily returns the share that dies on a day where so great a share dies in a week.
func Daily(week float64) float64 {
	if week >= 1 {
		return 1
	}
	return 1 - math.Pow(1-week, 1./7)
}

// Wanted is how many have to come in so that, where a share dies each day, there are enough on
// each of the days that follow: use is how many are fed out so many days after they came,
// the day itself first.
func Wanted(use []float64, daily float64) float64 {
	sum, left := 0.0, 1.0
	for _, n := range use {
		if n > 0 {
			sum += n / left
		}
		left *= 1 - daily
	}
	return sum
}

// Left returns how many of some are left after so many days.
func Left(n, daily float64, days int) float64 {
	return n * math.Pow(1-daily, float64(days))
}

// Whole is a number of animals that is enough: what arithmetic is off by makes no animal more.
func Whole(n float64) int {
	if n > most {
		return most
	}
	return int(math.Ceil(n - 1e-6))
}

// most bounds what is ordered at once: no house feeds so many.
const most = 100_000_000

// Packing is how many packs of which size are bought for a number.
type Packing struct {
	Packs   []Pack // the largest first
	Total   int    // in all of them
	Surplus int    // beyond the number
}

// Pack is some packs of one size.
type Pack struct{ Number, Size int }

// Packed returns the packs with the least surplus, and among those the fewest. Without
// sizes it is just the number.
func Packed(n int, sizes []int) Packing {
	if n <= 0 || len(sizes) == 0 {
		return Packing{Total: max(0, n)}
	}
	unit, largest := 0, 0
	for _, s := range sizes {
		unit, largest = divisor(s, unit), max(largest, s)
	}
	// What lies far above the largest pack is bought in such packs; only the rest is tried.
	bulk := max(0, n/largest-len(sizes)*tried)
	need := (n - bulk*largest + unit - 1) / unit
	counts := packing(need, largest/unit, sizes, unit)
	out := Packing{}
	for i, c := range counts {
		if sizes[i] == largest {
			c, bulk = c+bulk, 0
		}
		if c > 0 {
			out.Packs = append(out.Packs, Pack{c, sizes[i]})
			out.Total += c * sizes[i]
		}
	}
	slices.SortFunc(out.Packs, func(a, b Pack) int { return b.Size - a.Size })
	out.Surplus = out.Total - n
	return out
}

// Within returns the packs that come near to a number from below, the largest first. Without
// sizes it is just the number.
func Within(n int, sizes []int) Packing {
	if len(sizes) == 0 {
		return Packing{Total: n}
	}
	of := append([]int(nil), sizes...)
	slices.Sort(of)
	var out Packing
	for _, s := range slices.Backward(of) {
		if k := (n - out.Total) / s; k > 0 {
			out.Packs = append(out.Packs, Pack{k, s})
			out.Total += k * s
		}
	}
	return out
}

// tried is how many of the largest pack are left to be tried otherwise, for each size.
const tried = 2

// packing returns how many of each size come nearest to a need from above, in units, with the
// fewest packs.
func packing(need, largest int, sizes []int, unit int) []int {
	end := need + largest
	fewest, last := make([]int, end+1), make([]int, end+1)
	for at := 1; at <= end; at++ {
		fewest[at] = -1
		for i, s := range sizes {
			if before := at - s/unit; before >= 0 && fewest[before] >= 0 && (fewest[at] < 0 || fewest[before]+1 < fewest[at]) {
				fewest[at], last[at] = fewest[before]+1, i
			}
		}
	}
	out := make([]int, len(sizes))
	at := need
	for at < end && fewest[at] < 0 {
		at++
	}
	for at > 0 && fewest[at] > 0 {
		i := last[at]
		out[i]++
		at -= sizes[i] / unit
	}
	return out
}

func divisor(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}
