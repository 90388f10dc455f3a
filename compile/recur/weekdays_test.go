package recur_test

import (
	"math/rand/v2"
	"testing"
	"time"

	"vivary/compile/recur"
	"vivary/schema/civil"
)

// TestOnWeekdays: the rule of some weekdays has just those days of a rule that fall on them,
// within its bounds too; only what comes by days other than each, or by months, has none.
func TestOnWeekdays(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 5))
	narrowed, once := 0, 0
	for range 4000 {
		r := randomSample(rng).shift(0)
		if rng.IntN(2) == 0 {
			from := begin + civil.Date(rng.IntN(300))
			until := from
			if rng.IntN(3) > 0 {
				until += civil.Date(rng.IntN(300))
			}
			r = r.Between(from, until)
		}
		set := civil.Weekdays(rng.IntN(128))
		out, ok := r.OnWeekdays(set)
		if !ok {
			if text, simple := r.RRule(); simple && (text == "FREQ=DAILY" || text[:11] == "FREQ=WEEKLY") {
				t.Errorf("%s has no rule for %07b", text, set)
			}
			continue
		}
		narrowed++
		if from, until := r.Bounds(); from == until && !out.Never() {
			once++
		}
		for d := begin - 30; d < begin+700; d++ {
			if want := r.Contains(d) && set>>d.Weekday()&1 == 1; out.Contains(d) != want {
				t.Fatalf("%s on %07b: %s is %v", r.Words(), set, d, !want)
			}
		}
	}
	if narrowed < 300 || once == 0 {
		t.Errorf("%d rules of weekdays, %d of one day: too few to show anything", narrowed, once)
	}
}

// The days of a week are told from the one with which the keeper's week begins, and are the
// same days.
func TestWeekBegins(t *testing.T) {
	set := civil.Weekdays(0).With(time.Sunday).With(time.Wednesday).With(time.Saturday)
	for every, want := range map[int][2]string{1: {"Wed, Sat and Sun", "Sun, Wed and Sat"}, 2: {"every 2 weeks on Wed, Sat and Sun", "every 2 weeks on Sun, Wed and Sat"}} {
		r := recur.Weekly(set, every, civil.Must(2027, time.March, 1))
		if got := [2]string{r.Words(), r.WordsFrom(time.Sunday)}; got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
