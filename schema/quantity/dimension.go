// Package quantity reads, converts and prints values with units as keepers
// write them, metric or US customary, and keeps the keeper's own unit. It does
// not judge whether a value suits an animal, nor do arithmetic between dimensions.
package quantity

// Dimension is what a value measures. The zero Dimension measures nothing and
// no unit fits it.
type Dimension uint8

// The dimensions, each with the unit its canonical values are in.
const (
	Temperature     Dimension = iota + 1 // °C
	TemperatureStep                      // K, a difference: "4 F" is 2.22 K
	Humidity                             // % relative humidity
	Length                               // mm
	Area                                 // cm²
	Volume                               // ml
	Mass                                 // g
	Power                                // W
	Duration                             // minutes
	EnergyDensity                        // kJ/g
	Ratio                                // %, or a plain fraction from 0 to 1
)

// form is how a kind of value is spoken of in messages.
type form struct {
	name, article, like string
}

var forms = [...]form{
	{"value", "a", `"30 C"`},
	Temperature:     {"temperature", "a", `"30 C" or "86 F"`},
	TemperatureStep: {"temperature difference", "a", `"2 C" or "4 F"`},
	Humidity:        {"humidity", "a", `"75 %"`},
	Length:          {"length", "a", `"16 cm" or "6 in"`},
	Area:            {"area", "an", `"1300 cm2" or "200 sq in"`},
	Volume:          {"volume", "a", `"150 ml" or "10 gal"`},
	Mass:            {"mass", "a", `"12 g" or "0.5 oz"`},
	Power:           {"power", "a", `"28 W"`},
	Duration:        {"duration", "a", `"30 min", "12 h" or "3 days"`},
	EnergyDensity:   {"energy density", "an", `"5.86 kJ/g" or "1.4 kcal/g"`},
	Ratio:           {"share", "a", `"30 %" or "0.3"`},
}

func (d Dimension) form() form {
	if int(d) >= len(forms) {
		d = 0
	}
	return forms[d]
}

// String returns the dimension as a keeper calls it, such as "temperature"; a
// Ratio is a "share".
func (d Dimension) String() string { return d.form().name }

// Units returns the units that fit, as one writes them, commonest first. The
// slice is shared: callers must not change it.
func (d Dimension) Units() []string {
	if int(d) >= len(fitting) {
		d = 0
	}
	return fitting[d]
}

// fitting lists the unit names of each dimension, in the order of the unit table.
var fitting = func() (f [Ratio + 1][]string) {
	for u := None + 1; int(u) < len(units); u++ {
		if i := &units[u]; i.name != "" {
			f[i.dim] = append(f[i.dim], i.name)
		}
	}
	return f
}()
