package roster_test

import (
	"math"
	"testing"

	"vivary/compile/roster"
)

// What is brought in is counted in the fullest month, each care with an amount; what has
// none is no volume.
func TestPouredInto(t *testing.T) {
	for _, c := range []struct {
		care  string
		day   float64
		until bool
	}{
		{`care "mist" { every = "day"; amount = "150 ml" }`, 150, false},
		{`care "mist" { every = "2 days"; amount = "150 ml" }`, 75, false},
		{`care "mist" { every = "day"; amount = "100 ml" } care "fog" { kind = "mist"; every = "day"; amount = "0.1 L" }`, 200, false},
		{`care "mist" { every = "day" }`, 0, true},
		{`care "mist" { every = "day"; amount = "20 ml" } care "fog" { kind = "mist"; every = "day" }`, 20, true},
		{`care "water" { every = "day"; amount = "200 ml" }`, 0, false}, // a dish is no misting
		{`care "water" { every = "day"; amount = "3 L" }`, 2700, false}, // but what it does not hold is
		{`care "rain" { kind = "other"; task = "flood it"; every = "day"; amount = "2 L" }`, 2000, false},
	} {
		r := compiled(t, house(ash(c.care)), "", on("1 Jul"))
		got := roster.PouredInto(r.Roster.Of[0], r.Horizon, 300)
		if math.Abs(got.Day-c.day) > 0.03*c.day || got.Until != c.until {
			t.Errorf("%s: %.1f ml a day, until %v; want %.1f, %v", c.care, got.Day, got.Until, c.day, c.until)
		}
	}
}
