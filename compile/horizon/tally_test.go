package horizon_test

import (
	"math/rand/v2"
	"testing"

	"vivary/compile/horizon"
	"vivary/schema/civil"
)

// TestTally: the days of many sets are counted as they would be one after another.
func TestTally(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 7))
	h := horizon.Around(civil.Must(2027, 7, 1), 136)
	for n := range 300 {
		var tally horizon.Tally
		want, got := make([]int, 256), make([]int, 256)
		for range n {
			days, p := drawn(h, rng)
			tally.Add(days)
			for i, in := range p {
				if in {
					want[i]++
				}
			}
		}
		tally.Each(func(day, times int) { got[day] += times })
		for i := range want {
			if got[i] != want[i] {
				t.Fatalf("%d sets: day %d is in %d of them, counted %d", n, i, want[i], got[i])
			}
		}
	}
}
