package measure

import (
	"cmp"
	"math"
	"slices"

	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// SaltHumidity returns the relative humidity over a slurry of a salt, in %, at a temperature in
// °C; not a number for another salt, or outside of 0 to 50 °C. L. Greenspan, Humidity fixed
// points of binary saturated aqueous solutions, J. Res. Nat. Bur. Stand. 81A, 89 (1977).
func SaltHumidity(salt string, t float64) float64 {
	if !(t >= 0 && t <= 50) {
		return math.NaN()
	}
	switch salt {
	case "NaCl":
		return 75.5164 + 0.0398321*t - 0.00265459*t*t + 0.00002848*t*t*t
	case "MgCl2":
		return 33.6686 - 0.00797397*t - 0.00108988*t*t
	}
	return math.NaN()
}

// What makes a gauge one to be replaced, and for how long a test is good (common practice, no
// source).
const (
	BadHeat  = 1.0 // K
	BadDamp  = 5.0 // %
	TestDays = 90
	sameDay  = 2.0 // % by which two readings over one salt differ on a day before one is doubted
)

// Tested is what tests make of a gauge.
type Tested struct {
	On         civil.Date // the newest test
	Age        int        // in days; below 0 where it is after today
	HeatOff    float64    // what is added to a temperature, K
	Slope      float64    // of the humidity
	Add        float64    // what is added to it after that
	Salts      int        // over how many it lay
	FarHeat    float64    // how far it was off at the most, K; 0 for not tested
	FarDamp    float64
	Last       *plan.GaugeTest // the newest of which something is taken
	Wrong      []Wrong         // tests of which something is wrong
	HeatTested bool            // a temperature was tested
}

// Wrong is what is wrong with a test. Such a test says nothing, unless it is Doubtful.
type Wrong struct {
	Test     *plan.GaugeTest
	Text     string
	Write    string // what to write instead, in words
	Doubtful bool   // it counts all the same
}

// Heat corrects a temperature.
func (t *Tested) Heat(v float64) float64 { return v + t.HeatOff }

// Damp corrects a humidity.
func (t *Tested) Damp(v float64) float64 { return max(0, min(100, t.Slope*v+t.Add)) }

// Replace reports whether it was off by more than a gauge that is worth correcting.
func (t *Tested) Replace() bool { return t.FarHeat > BadHeat || t.FarDamp > BadDamp }

// Old reports whether the newest test is too old to go by.
func (t *Tested) Old() bool { return t.Age > TestDays }

// TestedOf reads the tests of a gauge, those of its block and of the log (plan.Tests); nil where
// there are none. Of each kind the newest counts, of one day the one that was written last.
func TestedOf(tests []*plan.GaugeTest, today civil.Date) *Tested {
	if len(tests) == 0 {
		return nil
	}
	t := &Tested{Slope: 1}
	tests = slices.Clone(tests)
	slices.Reverse(tests)
	slices.SortStableFunc(tests, func(a, b *plan.GaugeTest) int { return cmp.Compare(b.On.V, a.On.V) })
	type point struct {
		on        civil.Date
		shown, is float64
	}
	points := map[string]point{}
	for _, x := range tests {
		wrong := func(why, write string) { t.Wrong = append(t.Wrong, Wrong{x, called(x) + why, write, false}) }
		switch {
		case !x.On.Set() || !x.Beside.Set():
			continue // said by the plan
		case x.On.V > today:
			wrong("its day is after today", "the day on which it was made")
			continue
		}
		at := x.Beside.V.Value
		used := false
		if x.Temperature.Set() && !t.HeatTested {
			t.HeatTested, used = true, true
			t.HeatOff = at - x.Temperature.V.Value
			t.FarHeat = math.Abs(t.HeatOff)
		}
		switch is := SaltHumidity(x.Salt.V, at); {
		case x.Salt.Set() != x.Humidity.Set():
			wrong("a salt and what the gauge showed over it go together", "both, salt and humidity")
		case x.Salt.Set() && math.IsNaN(is):
			wrong("what the salt holds is known from 0 to 50 C", "the temperature beside the gauge, within these")
		case x.Salt.Set():
			newer, known := points[x.Salt.V]
			switch {
			case known && newer.on == x.On.V && math.Abs(newer.shown-x.Humidity.V.Value) > sameDay:
				t.Wrong = append(t.Wrong, Wrong{x, called(x) + "it showed " + quantity.Format(x.Humidity.V.Value, quantity.PercentRH) + " over this salt, and in another test of that day " + quantity.Format(newer.shown, quantity.PercentRH) + ": it had not settled. The one that was written last is taken",
					"one of the two, once it stood still: half a day to a day in the sealed box", true})
			case !known:
				points[x.Salt.V] = point{x.On.V, x.Humidity.V.Value, is}
				t.FarDamp = max(t.FarDamp, math.Abs(is-x.Humidity.V.Value))
				used = true
			}
		case !x.Temperature.Set():
			wrong("it says nothing of what the gauge showed", "temperature, or salt and humidity")
		}
		if used {
			if t.Last == nil {
				t.Last = x
			}
			t.On = max(t.On, x.On.V)
		}
	}
	a, high := points["NaCl"]
	b, low := points["MgCl2"]
	t.Salts = len(points)
	switch {
	case high && low && a.shown-b.shown < 10:
		t.Wrong = append(t.Wrong, Wrong{t.Last, "it shows nearly the same over both salts: it is broken, and its humidity is not corrected", "another gauge, or the test once more over fresh slurries", true})
		t.FarDamp = math.Inf(1)
	case high && low:
		t.Slope = (a.is - b.is) / (a.shown - b.shown)
		t.Add = a.is - t.Slope*a.shown
	case high:
		t.Add = a.is - a.shown
	case low:
		t.Add = b.is - b.shown
	}
	t.Age = int(today - t.On)
	return t
}

// called begins what is said of a test.
func called(x *plan.GaugeTest) string {
	if x.Name.V == "" {
		return "the test of " + x.On.V.Words() + ": "
	}
	return "test " + x.Name.V + ": "
}

// Accuracy is how far a gauge may be off.
type Accuracy struct{ Heat, Damp float64 } // K, %

// Sold is the accuracy of a gauge of which nobody says: as the less accurate of the usual
// sensors are sold, 1 K and 3 % (data sheets of the BME280 and the AM2320, as quoted in Linux
// Magazine 279).
var Sold = Accuracy{1, 3}

// AccuracyOf is how far a gauge may be off, as it is sold.
func AccuracyOf(g *plan.Gauge) Accuracy {
	a := Sold
	if g != nil && g.Accuracy.Set() {
		a.Heat = g.Accuracy.V.Value
	}
	if g != nil && g.DampAccuracy.Set() {
		a.Damp = g.DampAccuracy.V.Value
	}
	return a
}
