package rounds_test

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"vivary/compile/horizon"
	"vivary/compile/rounds"
	"vivary/schema"
)

// How long the longest text is, is found by writing each part of it once for all days on
// which the same is due. It is as long as one that is written whole: with gauges that should
// show something else from a day on, enclosures that are kept apart for a time, and empty
// ones.
func TestLongestIsThatOfTheTexts(t *testing.T) {
	some := func(rng *rand.Rand) horizon.Days {
		d := year.New()
		for i, step := rng.IntN(9), 1+rng.IntN(9); i < year.Days; i += step {
			d.Add(i)
		}
		return d
	}
	long := 0
	for seed := range uint64(20) {
		rng := rand.New(rand.NewPCG(seed, 7))
		var places []rounds.Place
		var items []rounds.Item
		for i := range 60 + rng.IntN(300) {
			p := rounds.Place{Name: fmt.Sprint("tub-", i), Title: fmt.Sprint(strings.Repeat("Tub ", rng.IntN(3)+1), 2*i)}
			if seed%2 == 0 {
				p.Room = fmt.Sprint("Room ", i/90)
			}
			if rng.IntN(9) == 0 {
				p.Apart = rng.IntN(year.Days)
			}
			if rng.IntN(9) == 0 {
				p.Empty = year.New()
				p.Empty.AddRun(rng.IntN(year.Days), year.Days, year.Days)
			}
			cut := rng.IntN(3) * 40
			p.Heat = []rounds.Show{{From: 0, Until: cut, Text: "21 to 24 C", Harm: "10 to 30 C"}, {From: cut, Until: year.Days, Text: fmt.Sprint(20+rng.IntN(2), " to 30 C"), Harm: "15 to 35 C"}}
			places = append(places, p)
			for _, k := range []*schema.CareKind{schema.KindLook, schema.KindHeat, schema.KindWater, schema.KindSpotClean} {
				it := do(k, i)
				if it.Days = some(rng); rng.IntN(2) == 0 {
					it.Days = always()
				}
				if p.Empty != nil {
					it.Days = it.Days.Clone()
					it.Days.Subtract(p.Empty)
				}
				items = append(items, it)
			}
		}
		r := rounds.Make(evening(), year, places, items, nil)
		want, day := 0, 0
		for i := range year.Days {
			sheet := r.On(i)
			if text := strings.Join(sheet.Lines, "\n") + fmt.Sprintf("\n\nAbout %d min", sheet.Minutes); len(text) > want && len(sheet.Lines) > 0 {
				want, day = len(text), i
			}
		}
		on, got, ok := r.TooLong()
		if ok != (want > rounds.MaxText) || ok && (got != want || on != day) {
			t.Errorf("seed %d: the longest text has %d bytes on day %d, and is told of as %d on day %d: %v", seed, want, day, got, on, ok)
		}
		if ok {
			long++
		}
		if again, _, _ := r.TooLong(); again != on {
			t.Errorf("seed %d: asked again it is another", seed)
		}
	}
	if long < 5 || long > 19 {
		t.Errorf("%d of 20 rounds are too long", long)
	}
}
