package quantity

import (
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"
)

func TestParseRange(t *testing.T) {
	for _, c := range []struct {
		text      string
		dim       Dimension
		low, high float64
		print     string
	}{
		{"27 to 32 C", Temperature, 27, 32, "27 to 32 C"},
		{"27-32 C", Temperature, 27, 32, "27 to 32 C"},
		{"27–32°C", Temperature, 27, 32, "27 to 32 C"},
		{"27 — 32 C", Temperature, 27, 32, "27 to 32 C"},
		{"27 C to 32 C", Temperature, 27, 32, "27 to 32 C"},
		{"27 C-32 °C", Temperature, 27, 32, "27 to 32 C"},
		{"77 to 86 F", Temperature, 25, 30, "77 to 86 F"},
		{"-5 to 5 C", Temperature, -5, 5, "-5 to 5 C"},
		{"−10–−5 C", Temperature, -10, -5, "-10 to -5 C"},
		{"30 C", Temperature, 30, 30, "30 C"},
		{" 30 C\t", Temperature, 30, 30, "30 C"},
		{"+0 C", Temperature, 0, 0, "0 C"},
		{"-0 C", Temperature, 0, 0, "0 C"},
		{"30 to 30 C", Temperature, 30, 30, "30 C"},
		{"2 K", TemperatureStep, 2, 2, "2 K"},
		{"75 to 85 %", Humidity, 75, 85, "75 to 85 %"},
		{"75 % RH", Humidity, 75, 75, "75 %"},
		{"20 to 30 %", Ratio, 20, 30, "20 to 30 %"},
		{"0.2 to 0.3", Ratio, 20, 30, "0.2 to 0.3"},
		{"1", Ratio, 100, 100, "1"},
		{".5 in", Length, 12.7, 12.7, "0.5 in"},
		{"7 to 18 months", Duration, 7 * 43830, 18 * 43830, "7 to 18 months"},
		{"1 day", Duration, 1440, 1440, "1 day"},
		{"1 days", Duration, 1440, 1440, "1 day"},
		{"0.5 to 1 day", Duration, 720, 1440, "0.5 to 1 day"},
		{"1 to 2 weeks", Duration, 10080, 20160, "1 to 2 weeks"},
		{"150 ml", Volume, 150, 150, "150 ml"},
		{"1 cup", Volume, 236.5882365, 236.5882365, "1 cup"},
		{"10 US gallons", Volume, 37854.11784, 37854.11784, "10 gal"},
		{"27 C to 32", Temperature, 27, 32, "27 to 32 C"},
		{"27° to 32° C", Temperature, 27, 32, "27 to 32 C"},
		{"27..32 C", Temperature, 27, 32, "27 to 32 C"},
		{"27TO32 C", Temperature, 27, 32, "27 to 32 C"},
		{"between 27 and 32 C", Temperature, 27, 32, "27 to 32 C"},
		{"From 27 to 32 C", Temperature, 27, 32, "27 to 32 C"},
		{"27  to  32  C", Temperature, 27, 32, "27 to 32 C"},
		{"27. C", Temperature, 27, 27, "27 C"},
		{"27,5 to 32,5 C", Temperature, 27.5, 32.5, "27.5 to 32.5 C"},
		{"0,125 L", Volume, 125, 125, "0.125 L"},
		{"1/2 cup", Volume, 118.29411825, 118.29411825, "0.5 cups"},
		{"1 1/2 in", Length, 38.1, 38.1, "1.5 in"},
		{"1-1/2 in", Length, 38.1, 38.1, "1.5 in"},
		{"1½-2 in", Length, 38.1, 50.8, "1.5 to 2 in"},
		{"¾ in", Length, 19.05, 19.05, "0.75 in"},
		{"1/3", Ratio, 33.333333333, 33.333333333, "0.33333333333"},
		{"two weeks", Duration, 20160, 20160, "2 weeks"},
		{"half an hour", Duration, 30, 30, "0.5 h"},
		{"a day", Duration, 1440, 1440, "1 day"},
		{`8"`, Length, 203.2, 203.2, "8 in"},
		{"6 in. - 8 in.", Length, 152.4, 203.2, "6 to 8 in"},
	} {
		r, err := ParseRange(c.text, c.dim)
		if err != nil {
			t.Errorf("%q: %v", c.text, err)
			continue
		}
		if r.Low != c.low || r.High != c.high || r.String() != c.print {
			t.Errorf("%q = %v to %v, %q; want %v to %v, %q", c.text, r.Low, r.High, r, c.low, c.high, c.print)
		}
		if r.Single() != (c.low == c.high) || r.LowQ().Value != c.low || r.HighQ() != (Quantity{c.high, r.Unit}) {
			t.Errorf("%q: ends %v, %v", c.text, r.LowQ(), r.HighQ())
		}
	}
}

func TestContains(t *testing.T) {
	r, _ := ParseRange("27 to 32 C", Temperature)
	for v, want := range map[float64]bool{26.9: false, 27: true, 30: true, 32: true, 32.1: false,
		math.Nextafter(32, 33): true, math.Nextafter(27, 26): true,
	} {
		if r.Contains(v) != want {
			t.Errorf("Contains(%v) = %v", v, !want)
		}
	}
	for text, want := range map[string]bool{"80.6 to 89.6 F": true, "80 to 89 F": false, "81 to 90 F": false, "86 F": true} {
		if o, err := ParseRange(text, Temperature); err != nil || r.Encloses(o) != want {
			t.Errorf("Encloses(%s) = %v (%v)", text, !want, err)
		}
	}
}

func TestFormat(t *testing.T) {
	for _, c := range []struct {
		v                 float64
		u                 Unit
		near, least, most string
	}{
		{32, Celsius, "32 C", "32 C", "32 C"},
		{32, Fahrenheit, "89.6 F", "89.6 F", "89.6 F"},
		{32.04, Celsius, "32 C", "32.1 C", "32 C"},
		{-0.04, Celsius, "0 C", "0 C", "-0.1 C"},
		{150, Inch, "5.9 in", "6 in", "5.9 in"},
		{37854, Gallon, "10 gal", "10 gal", "9.9 gal"},
		{236.5882365 / 4, Cup, "0.25 cups", "0.25 cups", "0.25 cups"},
		{149.7, Millilitre, "150 ml", "150 ml", "149 ml"},
		{1.42, Millilitre, "1.4 ml", "1.5 ml", "1.4 ml"},
		{0.0123, Gram, "0.012 g", "0.013 g", "0.012 g"},
		{0, Gram, "0 g", "0 g", "0 g"},
		{84.6, PercentRH, "85 %", "85 %", "84 %"},
		{33, Fraction, "0.33", "0.33", "0.33"},
		{150, Fraction, "150 %", "150 %", "150 %"},
		{1440, Days, "1 day", "1 day", "1 day"},
		{1500, Days, "1 day", "1.1 days", "1 day"},
	} {
		if got := [3]string{Format(c.v, c.u), FormatAtLeast(c.v, c.u), FormatAtMost(c.v, c.u)}; got != [3]string{c.near, c.least, c.most} {
			t.Errorf("%v in %v: %q, want %q %q %q", c.v, c.u, got, c.near, c.least, c.most)
		}
	}
	for _, c := range []struct {
		low, high float64
		u         Unit
		want      string
	}{
		{26, 32, Fahrenheit, "78.8 to 89.6 F"},
		{150, 200, Inch, "6 to 7.8 in"},
		{150, 151, Inch, "5.9 in"}, // 5.906 to 5.945
		{30, 30, Celsius, "30 C"},
		{50, 150, Fraction, "50 to 150 %"},
	} {
		if got := FormatRange(c.low, c.high, c.u); got != c.want {
			t.Errorf("FormatRange(%v, %v, %v) = %q, want %q", c.low, c.high, c.u, got, c.want)
		}
	}
	if got := FormatBetween(150, 200, Inch); got != "5.9 to 7.9 in" { // each end by itself
		t.Errorf("FormatBetween(150, 200, Inch) = %q", got)
	}
}

// What is printed reads back: String as the same value, FormatAtLeast and
// FormatAtMost as one on the right side of it.
func TestRoundTrip(t *testing.T) {
	rnd := rand.New(rand.NewPCG(1, 2))
	for u := None + 1; int(u) < len(units); u++ {
		d := u.Dimension()
		for range 2000 {
			x := rnd.Float64() * 100
			if u == Fraction {
				x /= 100
			}
			text := strconv.FormatFloat(x, 'f', rnd.IntN(7), 64)
			q, err := Parse(text+" "+u.String(), d)
			if err != nil {
				t.Fatalf("%s %v: %v", text, u, err)
			}
			// Nine decimals of the canonical unit tell six written digits apart,
			// so that the keeper's own digits come back.
			written, _, _ := number(text, d)
			printed, _, _ := number(q.String(), d)
			if printed != written && math.Abs(q.Value) > 1e-3 {
				t.Errorf("%s %v prints as %s", text, u, q)
			}
			if back, err := Parse(q.String(), d); err != nil || back != q {
				t.Errorf("%s %v prints as %s, which reads as %v: %v", text, u, q, back.Value, err)
			}
			least, err := Parse(FormatAtLeast(q.Value, u), d)
			if err != nil || least.Value < q.Value {
				t.Errorf("%v is %v, at least %v: %v", q, q.Value, least.Value, err)
			}
			most, err := Parse(FormatAtMost(q.Value, u), d)
			if err != nil || most.Value > q.Value {
				t.Errorf("%v is %v, at most %v: %v", q, q.Value, most.Value, err)
			}
		}
	}
}

// What Format prints reads back within half of its last digit.
func TestFormatReadsBack(t *testing.T) {
	rnd := rand.New(rand.NewPCG(3, 4))
	for u := None + 1; int(u) < len(units); u++ {
		for range 500 {
			v := u.info().canonical(rnd.Float64() * math.Pow10(rnd.IntN(4)-2))
			if u == Fraction || u.Dimension() == Humidity {
				v = rnd.Float64() * 100
			}
			text := Format(v, u)
			digits, _, _ := strings.Cut(text, " ")
			_, decimals, _ := strings.Cut(digits, ".")
			half := Decimals(0.5*math.Pow10(-len(decimals))*u.info().factor, 12)
			if back, err := Parse(text, u.Dimension()); err != nil || math.Abs(back.Value-v) > half+1e-9 {
				t.Errorf("%v in %v is %q, which reads as %v: %v", v, u, text, back.Value, err)
			}
		}
	}
}

func TestSignificant(t *testing.T) {
	for _, c := range []struct {
		x      float64
		digits int
		want   float64
	}{{287, 1, 300}, {123, 1, 120}, {23.29, 2, 23}, {0.0312, 1, 0.03}, {0.3, 1, 0.3}, {9.97, 2, 10}, {1500, 2, 1500}, {-287, 1, -300}, {0, 2, 0}} {
		if got := Significant(c.x, c.digits); got != c.want {
			t.Errorf("Significant(%v, %d) = %v, want %v", c.x, c.digits, got, c.want)
		}
	}
}

// A keeper's other measures are in the system in which one is written.
func TestSameSystem(t *testing.T) {
	for u, want := range map[Unit][3]Unit{Inch: {Inch, SquareInch, Gallon}, Foot: {Inch, SquareInch, Gallon}, Centimetre: {Millimetre, SquareCentimetre, Litre}, None: {Millimetre, SquareCentimetre, Litre}} {
		if got := [3]Unit{u.Small(), u.Square(), u.Hollow()}; got != want {
			t.Errorf("with %v: %v, want %v", u, got, want)
		}
	}
	if Fahrenheit.Step() != FahrenheitStep || Celsius.Step() != CelsiusStep {
		t.Error("a difference is not in the degrees in which temperatures are written")
	}
}

// Any value and unit prints, even those that no text gives.
func TestPrintAnything(t *testing.T) {
	for _, v := range []float64{0, -1, 1e300, -1e300, 5e-324, math.Inf(1), math.NaN()} {
		for _, u := range []Unit{None, Celsius, Years, Fraction, 200} {
			for _, s := range []string{Quantity{v, u}.String(), Range{v, 2 * v, u}.String(), Format(v, u),
				FormatAtLeast(v, u), FormatAtMost(v, u), FormatRange(v, v, u), Size{v, v, v, u}.String()} {
				if s == "" {
					t.Errorf("%v in unit %d prints as nothing", v, u)
				}
			}
		}
	}
	if Dimension(200).String() != "value" || Dimension(200).Units() != nil || Unit(200).String() != "" {
		t.Error("unknown dimension or unit has a name")
	}
}
