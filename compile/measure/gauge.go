package measure

import (
	"cmp"
	"math"
	"slices"

	"vivary/plan"
	"vivary/schema/civil"
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
	Wrong      []string // tests that say nothing, and why
	HeatTested bool     // a temperature was tested
}

// Heat corrects a temperature.
func (t *Tested) Heat(v float64) float64 { return v + t.HeatOff }

// Damp corrects a humidity.
func (t *Tested) Damp(v float64) float64 { return max(0, min(100, t.Slope*v+t.Add)) }

// Replace reports whether it was off by more than a gauge that is worth correcting.
func (t *Tested) Replace() bool { return t.FarHeat > BadHeat || t.FarDamp > BadDamp }

// Old reports whether the newest test is too old to go by.
func (t *Tested) Old() bool { return t.Age > TestDays }

// TestedOf reads the tests of a gauge; nil where there are none. Of each kind the newest counts.
func TestedOf(g *plan.Gauge, today civil.Date) *Tested {
	if g == nil || len(g.Tests) == 0 {
		return nil
	}
	t := &Tested{Slope: 1}
	tests := slices.Clone(g.Tests)
	slices.SortStableFunc(tests, func(a, b *plan.GaugeTest) int { return cmp.Compare(b.On.V, a.On.V) })
	type point struct{ shown, is float64 }
	points := map[string]point{}
	for _, x := range tests {
		wrong := func(why string) { t.Wrong = append(t.Wrong, "test "+x.Name.V+": "+why) }
		switch {
		case !x.On.Set() || !x.Beside.Set():
			continue // said by the plan
		case x.On.V > today:
			wrong("its day is after today")
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
			wrong("a salt and what the gauge showed over it (humidity) go together")
		case x.Salt.Set() && math.IsNaN(is):
			wrong("what the salt holds is known from 0 to 50 C")
		case x.Salt.Set():
			if _, newer := points[x.Salt.V]; !newer {
				points[x.Salt.V] = point{x.Humidity.V.Value, is}
				t.FarDamp = max(t.FarDamp, math.Abs(is-x.Humidity.V.Value))
				used = true
			}
		case !x.Temperature.Set():
			wrong("it says nothing of what the gauge showed")
		}
		if used {
			t.On = max(t.On, x.On.V)
		}
	}
	a, high := points["NaCl"]
	b, low := points["MgCl2"]
	t.Salts = len(points)
	switch {
	case high && low && a.shown-b.shown < 10:
		t.Wrong = append(t.Wrong, "it shows nearly the same over both salts: it is broken, and its humidity is not corrected")
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
