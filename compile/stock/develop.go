package stock

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/stat"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
)

// Line is how fast something develops by the warmth: the share of a day is the degrees above
// Base over Sum, its degree-days. Temperatures are in °C.
type Line struct{ Base, Sum float64 }

// LineOf returns the line of a stage, and the temperatures between which it holds: as it is
// stated, else the straight line through the rates of what was observed. It is false where
// neither is there, and where what was observed is no faster when it is warmer.
func LineOf(d *plan.Development) (l Line, between quantity.Range, ok bool) {
	if d.Base.Set() && d.DegreeDays.Set() && d.Between.Set() {
		return Line{d.Base.V.Value, d.DegreeDays.V}, d.Between.V, true
	}
	if d.Base.Set() || d.DegreeDays.Set() {
		return l, between, false
	}
	return fit(d.Points)
}

// fit is least squares of the rate over the temperature. What was observed over a range of
// temperatures is no point of a line.
func fit(points []plan.Point) (l Line, between quantity.Range, ok bool) {
	var warm, rate []float64
	for _, p := range points {
		if p.At.Single() && p.Takes.Low > 0 {
			warm, rate = append(warm, p.At.Low), append(rate, day/((p.Takes.Low+p.Takes.High)/2))
		}
	}
	if len(warm) < 2 || slices.Min(warm) == slices.Max(warm) {
		return l, between, false
	}
	start, slope := stat.LinearRegression(warm, rate, nil, false)
	if slope <= 0 {
		return l, between, false
	}
	return Line{Base: -start / slope, Sum: 1 / slope}, quantity.Range{Low: slices.Min(warm), High: slices.Max(warm), Unit: quantity.Celsius}, true
}

// day is a day in the unit of durations, minutes.
const day = 24 * 60

// Days returns how many days something takes in a warmth that goes through some temperatures,
// each for an equal part of the day; below the base nothing counts. It is infinite where
// it never ends.
func (l Line) Days(parts ...float64) float64 {
	sum := 0.0
	for _, t := range parts {
		sum += max(0, t-l.Base)
	}
	if sum <= 0 {
		return math.Inf(1)
	}
	return l.Sum * float64(len(parts)) / sum
}

// Takes is how long something takes, in days.
type Takes struct {
	Low, Likely, High float64
	Observed          bool   // it was seen, and not reckoned
	Why               string // where it is not known, why; else ""
}

// Known reports whether it is known.
func (t Takes) Known() bool { return t.Why == "" }

// unsure is how far a reckoned time may be off, as a share: our own reading of how published
// lines differ.
const unsure = 0.2

// Time returns how long a stage takes in a warmth that goes through some temperatures, each
// for an equal part of the day. What was observed at just that temperature goes before what
// is reckoned, which is done only between the temperatures of the line: warmer may kill, and
// near the base a line runs off to years.
func Time(d *plan.Development, parts ...float64) Takes {
	low, high := parts[0], parts[0]
	for _, t := range parts {
		low, high = min(low, t), max(high, t)
	}
	if low == high {
		for _, p := range d.Points {
			if p.At.Contains(low) {
				return Takes{Low: p.Takes.Low / day, Likely: (p.Takes.Low + p.Takes.High) / 2 / day, High: p.Takes.High / day, Observed: true}
			}
		}
	}
	l, between, ok := LineOf(d)
	switch {
	case !ok && len(d.Points) > 0:
		return Takes{Why: "it was observed at other temperatures only, from which nothing is reckoned"}
	case !ok:
		return Takes{Why: "below which temperature nothing develops is not known, so that nothing is reckoned"}
	case high <= l.Base:
		return Takes{Why: "it never develops so cold"}
	case high > between.High && !between.Contains(high):
		return Takes{Why: "it is warmer than it was measured, up to " + between.HighQ().String() + ": it may die"}
	case low == high && !between.Contains(low), high < between.Low:
		return Takes{Why: "it is colder than it was measured, from " + between.LowQ().String() + " on"}
	}
	n := l.Days(parts...)
	return Takes{Low: n * (1 - unsure), Likely: n, High: n * (1 + unsure)}
}

// and adds the time of what comes after.
func (t Takes) and(o Takes) Takes {
	if !t.Known() {
		return t
	}
	if !o.Known() {
		return o
	}
	return Takes{Low: t.Low + o.Low, Likely: t.Likely + o.Likely, High: t.High + o.High, Observed: t.Observed && o.Observed}
}

// times is a share of the time.
func (t Takes) times(share float64) Takes {
	t.Low, t.Likely, t.High = t.Low*share, t.Likely*share, t.High*share
	return t
}

// Share is the share of the time from hatching to the grown after which a length is reached,
// where each moult makes it longer by the same factor (Dyar's rule): our own reading, good to
// about four days for crickets.
func Share(length, hatched, grown float64) float64 {
	if length <= hatched || grown <= hatched {
		return 0
	}
	return min(1, math.Log(length/hatched)/math.Log(grown/hatched))
}

// Ripe returns how long it takes from the laying of eggs until the first of a size are there.
func Ripe(f *plan.FeederSheet, size string, parts ...float64) Takes {
	whole, egg, young := f.Develops(schema.DevelopsAll, size), f.Develops(schema.DevelopsEgg, size), f.Develops(schema.DevelopsYoung, size)
	share, sized := shareOf(f, size)
	switch {
	case whole != nil && (!sized || share == 1):
		return Time(whole, parts...)
	case egg != nil && sized && share == 0:
		return Time(egg, parts...)
	case egg != nil && young != nil && sized:
		return Time(egg, parts...).and(Time(young, parts...).times(share))
	case egg != nil && whole != nil && sized: // what is left of the whole is the young
		e, w := Time(egg, parts...), Time(whole, parts...)
		if e.Known() && w.Known() && w.Low > e.High {
			return e.and(Takes{Low: w.Low - e.High, Likely: w.Likely - e.Likely, High: w.High - e.Low}.times(share))
		}
		return e.and(w)
	}
	return Takes{Why: "no time from the egg to this size was found"}
}

// shareOf is the share of the time from hatching after which the first of a size are there:
// none of the smallest, and all of it of the grown; false where lengths do not tell, since the
// sizes are several animals.
func shareOf(f *plan.FeederSheet, size string) (float64, bool) {
	if len(f.Sizes) < 2 || f.Size(size) == nil {
		return 0, false
	}
	for _, d := range f.Stages {
		if d.Size.Set() {
			return 0, false
		}
	}
	first, last, s := f.Sizes[0], f.Sizes[len(f.Sizes)-1], f.Size(size)
	middle := func(r quantity.Range) float64 { return (r.Low + r.High) / 2 }
	switch {
	case s == first:
		return 0, true
	case s == last:
		return 1, true
	case !first.Length.Set() || !last.Length.Set() || !s.Length.Set():
		return 0, false
	}
	return Share(s.Length.V.Low, middle(first.Length.V), middle(last.Length.V)), true
}
