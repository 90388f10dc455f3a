package readings

import (
	"math"
	"strings"
	"testing"
	"time"

	"vivary/compile/measure"
)

// A warm spot that stands still for longer than its timer leaves it alone is a fault, though the
// humidity moves; one that stands still as long as it is on is none, nor is one whose heater a
// thermostat switches.
func TestStillThroughASwitch(t *testing.T) {
	timed := strings.Replace(tub, "place      = \"side\"", "place      = \"side\"\n      hours      = \"12 h\"", 1)
	for _, x := range []struct {
		name, text string
		place      string
		still      int // steps of ten minutes
		want       bool
	}{
		{"through a switch", timed, measure.Spot, 15 * 6, true},
		{"while it is on", timed, measure.Spot, 12 * 6, false},
		{"by a thermostat", tub, measure.Spot, 15 * 6, false},
		{"away from the heater", timed, measure.Air, 15 * 6, false},
	} {
		res := compiled(t, strings.Replace(x.text, "#HERE", "", 1))
		heat := func(k int) float64 {
			if k > 200 && k <= 200+x.still {
				return 28
			}
			return 26 + math.Round(20*math.Sin(float64(k)/20))/10 + 0.1*float64(k%2)
		}
		damp := func(k int) float64 { return 75 + float64(k%7) }
		rep := Of(res, res.Lives[0], []*File{file(t, x.place, 600, 10*time.Minute, heat, damp)}, Options{})
		found := false
		for _, f := range rep.Files[0].Faults {
			found = found || strings.Contains(f.Text, "in which its heater was switched")
		}
		if found != x.want {
			t.Errorf("%s: found %v: %+v", x.name, found, rep.Files[0].Faults)
		}
	}
}
