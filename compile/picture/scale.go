package picture

import (
	"cmp"
	"math"
	"slices"

	"vivary/schema/quantity"
)

// scale maps canonical values to heights on the page, and has round ticks in the
// keeper's unit.
type scale struct {
	low, high float64 // canonical
	y, height float64
	unit      quantity.Unit
	step      float64 // between ticks, in unit
}

// newScale returns a scale that shows low to high, with ticks at least 18 apart.
func newScale(low, high, y, height float64, unit quantity.Unit) scale {
	a, b := quantity.Quantity{Value: low, Unit: unit}.In(unit), quantity.Quantity{Value: high, Unit: unit}.In(unit)
	s := scale{low: low, high: high, y: y, height: height, unit: unit}
	for ten := 1.0; ten < 1e12; ten *= 10 {
		for _, digit := range []float64{1, 2, 5} {
			if s.step = digit * ten; height*s.step >= 18*(b-a) {
				return s
			}
		}
	}
	return s
}

func (s scale) at(v float64) float64 { return s.y + s.height*(s.high-v)/(s.high-s.low) }

// ticks calls use with each round value, as a number of the unit and its height.
func (s scale) ticks(use func(v, y float64)) {
	in := func(v float64) float64 { return quantity.Quantity{Value: v, Unit: s.unit}.In(s.unit) }
	a, b := in(s.low), in(s.high)
	for v := math.Ceil(a/s.step-1e-9) * s.step; v <= b+1e-9; v += s.step {
		use(v+0, s.y+s.height*(b-v)/(b-a)) // +0 takes the sign off a zero
	}
}

// note is a text at the height of what it is about.
type note struct {
	y    float64
	text string
}

// apart moves notes so that they are at least step apart and within low and high,
// each as near to its height as that allows.
func apart(notes []note, step, low, high float64) {
	slices.SortStableFunc(notes, func(a, b note) int { return cmp.Compare(a.y, b.y) })
	for i := range notes {
		notes[i].y = max(notes[i].y, low+step*float64(i))
		if i > 0 {
			notes[i].y = max(notes[i].y, notes[i-1].y+step)
		}
	}
	for i := len(notes) - 1; i >= 0; i-- {
		most := high - step*float64(len(notes)-1-i)
		notes[i].y = min(notes[i].y, most)
	}
}
