package readings

import (
	"cmp"
	"math"
	"path"
	"slices"
	"strings"

	"vivary/compile/explain"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/wording"
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
	badHeat  = 1.0 // K
	badDamp  = 5.0 // %
	testDays = 90
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
	heat, damp bool
}

// Heat corrects a temperature.
func (t *Tested) Heat(v float64) float64 { return v + t.HeatOff }

// Damp corrects a humidity.
func (t *Tested) Damp(v float64) float64 { return max(0, min(100, t.Slope*v+t.Add)) }

// Replace reports whether it was off by more than a gauge that is worth correcting.
func (t *Tested) Replace() bool { return t.FarHeat > badHeat || t.FarDamp > badDamp }

// Old reports whether the newest test is too old to go by.
func (t *Tested) Old() bool { return t.Age > testDays }

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
		if x.Temperature.Set() && !t.heat {
			t.heat, used = true, true
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
	t.Salts, t.damp = len(points), len(points) > 0
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

// tested says what tests make of a gauge.
func (r *Report) tested(t *Tested) (out []explain.Line) {
	line := func(text string, under ...string) {
		out = append(out, explain.Line{Name: "tested", Text: text, Under: under})
	}
	if t.On != 0 {
		text := t.On.Words() + ", " + wording.Days(t.Age) + " ago"
		if t.Age == 0 {
			text = t.On.Words() + ", today"
		}
		if t.heat {
			text += "; temperatures are corrected by " + signed(t.HeatOff, r)
		}
		switch {
		case t.Salts == 2 && !math.IsInf(t.FarDamp, 1):
			text += "; humidities by a line through two salts: 60 % shown is " + trimmed(t.Damp(60), 1) + " %"
		case t.Salts == 1:
			text += "; humidities by " + plus(t.Add, 1) + " %, by one salt: far from it that may be wrong, and a second salt tells"
		}
		line(text)
	}
	for _, w := range t.Wrong {
		line(w)
	}
	if t.Replace() {
		why := ""
		if t.FarHeat > badHeat {
			why = r.difference(t.FarHeat)
		}
		if t.FarDamp > badDamp && !math.IsInf(t.FarDamp, 1) {
			if why != "" {
				why += " and "
			}
			why += trimmed(t.FarDamp, 1) + " %"
		}
		if why == "" {
			why = "more than can be corrected"
		}
		line("it was off by " + why + ": replace it. More than " + r.difference(badHeat) + " or " + trimmed(badDamp, 0) + " % is not drift any more")
	}
	if t.On != 0 && t.Old() {
		line("the test is older than " + wording.Days(testDays) + ": test it again, over table salt for half a day to a day")
	}
	return out
}

func signed(k float64, r *Report) string {
	if k >= 0 {
		return "+" + r.difference(k)
	}
	return "-" + r.difference(-k)
}

func plus(x float64, digits int) string {
	if x >= 0 {
		return "+" + trimmed(x, digits)
	}
	return trimmed(x, digits)
}

// Found is a gauge that a plan names, with where it lies.
type Found struct {
	Gauge *plan.Gauge
	Life  *life.Enclosure // nil for one of a room
	Room  *plan.Room
	Place string
}

// GaugesFor are the gauges whose files are called so.
func GaugesFor(c *plan.Collection, lives []*life.Enclosure, file string) (all []Found) {
	base := path.Base(strings.ReplaceAll(file, `\`, "/"))
	fits := func(g *plan.Gauge) bool {
		return slices.ContainsFunc(g.Files, func(w plan.Written[string]) bool {
			ok, err := path.Match(w.V, base)
			return ok && err == nil
		})
	}
	for _, room := range c.Rooms {
		for _, g := range room.Gauges {
			if fits(g) {
				all = append(all, Found{g, nil, room, Room})
			}
		}
	}
	for _, l := range lives {
		if l.Plan.Climate == nil {
			continue
		}
		for _, g := range l.Plan.Climate.Gauges {
			if fits(g) {
				all = append(all, Found{g, l, l.Plan.Place, g.Place.Or(Air)})
			}
		}
	}
	return all
}

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
