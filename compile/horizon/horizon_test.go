package horizon_test

import (
	"math/rand/v2"
	"testing"

	"vivary/compile/horizon"
	"vivary/schema/civil"
)

// TestAround: a horizon begins 64 days before today and looks so many ahead, today
// included.
func TestAround(t *testing.T) {
	today := civil.Must(2027, 7, 1)
	h := horizon.Around(today, 10)
	if h.From != civil.Must(2027, 4, 28) || h.Last() != civil.Must(2027, 7, 10) || h.Now() != today || h.Ahead() != 10 || h.Days != 74 {
		t.Errorf("%s to %s, today %s, %d ahead of %d", h.From, h.Last(), h.Now(), h.Ahead(), h.Days)
	}
	for d, want := range map[civil.Date]bool{h.From - 1: false, h.From: true, today: true, h.Last(): true, h.Last() + 1: false} {
		i, in := h.Index(d)
		if in != want || h.Date(i) != d {
			t.Errorf("%s: on it %v, at %d, which is %s", d, in, i, h.Date(i))
		}
	}
	for n, want := range map[int]int{0: 0, 1: 1, 64: 1, 65: 2, 128: 2, 129: 3} {
		if got := horizon.Words(n); got != want {
			t.Errorf("%d days take %d words", n, got)
		}
	}
	if len(h.New()) != 2 {
		t.Errorf("a set of 74 days has %d words", len(h.New()))
	}
}

// plain is a set of days as a plain list.
type plain [200]bool

func (p plain) next(i int) int {
	for k := max(i, 0); k < len(p); k++ {
		if p[k] {
			return k
		}
	}
	return -1
}

func (p plain) last(i int) int {
	for k := min(i, len(p)) - 1; k >= 0; k-- {
		if p[k] {
			return k
		}
	}
	return -1
}

func (p plain) count(i int) int {
	n := 0
	for k := max(i, 0); k < len(p); k++ {
		if p[k] {
			n++
		}
	}
	return n
}

// drawn returns a set at random as days and as a plain list, made of single days and
// of runs, which may reach over either end.
func drawn(h horizon.Horizon, rng *rand.Rand) (horizon.Days, plain) {
	days, p := h.New(), plain{}
	for range rng.IntN(4) {
		i := rng.IntN(h.Days+40) - 20
		j := i + rng.IntN(90) - 5
		days.AddRun(i, j, h.Days)
		for k := max(i, 0); k < min(j, h.Days); k++ {
			p[k] = true
		}
	}
	for range rng.IntN(12) {
		i := rng.IntN(h.Days)
		days.Add(i)
		p[i] = true
	}
	for range rng.IntN(12) {
		i := rng.IntN(h.Days)
		days.Remove(i)
		p[i] = false
	}
	return days, p
}

// TestDaysAreASet: days, a bit each, are the same as a plain list of them.
func TestDaysAreASet(t *testing.T) {
	h := horizon.Horizon{Days: len(plain{})}
	rng := rand.New(rand.NewPCG(1, 2))
	same := func(what string, days horizon.Days, p plain) {
		t.Helper()
		for i := range p {
			if days.Has(i) != p[i] {
				t.Fatalf("%s: day %d is in the set %v", what, i, days.Has(i))
			}
		}
		for i := -2; i < len(p)+2; i++ {
			if days.Next(i) != p.next(i) || days.Last(i) != p.last(i) || days.CountFrom(i) != p.count(i) {
				t.Fatalf("%s: at %d next %d, last %d, %d from there\n%v", what, i, days.Next(i), days.Last(i), days.CountFrom(i), p)
			}
		}
		if days.Count() != p.count(0) || days.Empty() != (p.count(0) == 0) {
			t.Fatalf("%s: %d days, empty %v", what, days.Count(), days.Empty())
		}
	}
	for range 300 {
		a, p := drawn(h, rng)
		b, q := drawn(h, rng)
		same("drawn", a, p)
		union, both, without, meet := a.Clone(), a.Clone(), a.Clone(), false
		union.Union(b)
		both.Keep(b)
		without.Subtract(b)
		var u, k, w plain
		for i := range p {
			u[i], k[i], w[i] = p[i] || q[i], p[i] && q[i], p[i] && !q[i]
			meet = meet || k[i]
		}
		same("union", union, u)
		same("both", both, k)
		same("without", without, w)
		same("as before", a, p)
		if a.Intersects(b) != meet {
			t.Fatalf("they have a day in common: %v", a.Intersects(b))
		}
		if a.Within(b) != without.Empty() || !both.Within(b) {
			t.Fatalf("one is within the other: %v", a.Within(b))
		}
	}
}
