package quantity

import (
	"math"
	"slices"
	"strings"
	"testing"
)

// TestConversion checks factors against two sources. nist is NIST Special
// Publication 811 (2008), appendix B.8, to its seven digits; gnu is what GNU
// Units 2.22 prints with -o '%.12g' for the same conversion. The figures of the
// quart, pint, cup, pound, square foot and square inch under nist are from
// memory of B.8; GNU Units confirms them.
func TestConversion(t *testing.T) {
	for _, c := range []struct {
		text      string
		dim       Dimension
		nist, gnu float64
	}{
		{"1 in", Length, 25.4, 25.4},                      // inch, exact
		{"1 ft", Length, 304.8, 304.8},                    // foot, exact
		{"1 sq in", Area, 6.4516, 6.4516},                 // square inch, exact
		{"1 sq ft", Area, 929.0304, 929.0304},             // square foot, exact
		{"1 gal", Volume, 3785.412, 3785.411784},          // gallon (U.S.)
		{"1 qt", Volume, 946.3529, 946.352946},            // quart (U.S. liquid)
		{"1 pt", Volume, 473.1765, 473.176473},            // pint (U.S. liquid)
		{"1 cup", Volume, 236.5882, 236.5882365},          // cup (U.S.)
		{"1 fl oz", Volume, 29.57353, 29.5735295625},      // ounce (U.S. fluid)
		{"1 oz", Mass, 28.34952, 28.349523125},            // ounce (avoirdupois)
		{"1 lb", Mass, 453.5924, 453.59237},               // pound (avoirdupois)
		{"1 kcal/g", EnergyDensity, 4.184, 4.184},         // kilocalorie (th), exact
		{"86 F", Temperature, (86 - 32) / 1.8, 30},        // t/°C = (t/°F - 32)/1.8
		{"80.6 F", Temperature, (80.6 - 32) / 1.8, 27},    //
		{"0 F", Temperature, -32 / 1.8, -17.7777777778},   //
		{"1 F", TemperatureStep, 0.5555556, 5. / 9},       // degree Fahrenheit, interval
		{"1 year", Duration, 525960, 525960},              // GNU Units: julianyear
		{"1 month", Duration, 525960. / 12, 525960. / 12}, // its twelfth
	} {
		q, err := Parse(c.text, c.dim)
		if err != nil {
			t.Errorf("%s: %v", c.text, err)
			continue
		}
		if math.Abs(q.Value/c.nist-1) > 3e-7 {
			t.Errorf("%s = %v, NIST has %v", c.text, q.Value, c.nist)
		}
		if math.Abs(q.Value-c.gnu) > 5.1e-10 { // values are kept to nine decimals
			t.Errorf("%s = %v, GNU Units has %v", c.text, q.Value, c.gnu)
		}
	}
}

// Values that are equal on paper are equal to ==, so that a limit may be written
// in either system.
func TestEqualOnPaper(t *testing.T) {
	for _, c := range []struct {
		a, b string
		dim  Dimension
	}{
		{"80.6 F", "27 C", Temperature},
		{"-459.67 F", "-273.15 C", Temperature},
		{"12 in", "1 ft", Length},
		{"0.3 m", "300 mm", Length},
		{"128 fl oz", "1 gal", Volume},
		{"16 cups", "4 qt", Volume},
		{"16 oz", "1 lb", Mass},
		{"144 sq in", "1 ft2", Area},
		{"0.3", "30 %", Ratio},
		{"3.6 F", "2 K", TemperatureStep},
	} {
		a, errA := Parse(c.a, c.dim)
		b, errB := Parse(c.b, c.dim)
		if errA != nil || errB != nil || a.Value != b.Value {
			t.Errorf("%s = %v, %s = %v (%v, %v)", c.a, a.Value, c.b, b.Value, errA, errB)
		}
		if in := a.In(b.Unit); in != b.In(b.Unit) {
			t.Errorf("%s In %v = %v", c.a, b.Unit, in)
		}
	}
	if q, _ := Parse("30 C", Temperature); !math.IsNaN(q.In(Inch)) || !math.IsNaN(q.In(None)) || !math.IsNaN(q.In(CelsiusStep)) {
		t.Error("a temperature has a value in a unit of something else")
	}
}

func TestSpellings(t *testing.T) {
	for u := None + 1; int(u) < len(units); u++ {
		i := &units[u]
		if u == Fraction {
			continue
		}
		words := append([]string{i.name}, strings.Fields(i.also)...)
		if i.one != "" {
			words = append(words, i.one)
		}
		for _, w := range words {
			for _, text := range []string{w, strings.ToUpper(w), " " + w, "\u00a0" + w, "\u202f" + w, "  " + w + "."} {
				q, err := Parse("7.5"+text, i.dim)
				if err != nil || q.Unit != u {
					t.Errorf("%q of %v: unit %v, %v", "7.5"+text, i.dim, q.Unit, err)
				}
			}
		}
		if spans[i.dim][0] > u || spans[i.dim][1] <= u {
			t.Errorf("unit %v stands apart from its dimension", i.name)
		}
	}
	// The spellings that are promised, apart from the table.
	for d, list := range map[Dimension]string{
		Temperature:     "C,c,°C,° C,º C,˚C,℃,degC,deg C,deg. C,degrees C,degrees Celsius,Celsius,centigrade,F,f,°F,° F,degrees Fahrenheit,Fahrenheit,℉",
		TemperatureStep: "C,c,°C,F,f,°F,K,degrees C,kelvin",
		Humidity:        "%,% RH,%RH,percent,per cent,RH,% r.h.,percent humidity,% relative humidity",
		Length:          "mm,cm,m,in,inch,inches,ins.,ft,foot,feet,CM,Cm,centimetres,centimeters,millimetres,millimeters,metres,meters,\",″,'",
		Area:            "cm2,cm²,m2,sq in,in2,sq ft,sq. ft.,square feet,square inches,square centimetres,square metres",
		Volume:          "ml,mL,ML,l,L,litre,litres,liter,liters,millilitres,milliliters,cc,gal,US gal,U.S. gallons,gallons,qt,quarts,pt,pints,fl oz,fl. oz.,fluid ounces,cup,cups",
		Mass:            "mg,g,kg,oz,lb,lbs,grams,grammes,milligrams,kilograms,kilos,ounces,pounds",
		Power:           "W,w,watt,watts,Watts,kW,kilowatts", EnergyDensity: "kJ/g,kcal/g,kJ per g", Ratio: "%,percent",
		Duration: "min,mins,min.,minute,minutes,h,hr,hrs,hour,hours,d,day,days,wk,week,weeks,month,months,yr,year,years",
	} {
		for _, w := range strings.Split(list, ",") {
			if _, err := Parse("2 "+w, d); err != nil {
				t.Error(err)
			}
		}
	}
	// No two units of a dimension are spelt alike, or one of them would never be read.
	for d := Temperature; d <= Ratio; d++ {
		n := 0
		for u := spans[d][0]; u < spans[d][1]; u++ {
			n += len(slices.Compact(slices.Sorted(func(yield func(string) bool) {
				for _, w := range append(strings.Fields(units[u].also), units[u].name, units[u].one) {
					if key, ok := spelling(w, new([longestUnit]byte)); ok && len(key) > 0 && !yield(string(key)) {
						return
					}
				}
			})))
		}
		if n != len(spellings[d]) {
			t.Errorf("%v: %d spellings of units, and %d that are read", d, n, len(spellings[d]))
		}
	}
}
