package readings

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"vivary/compile/measure"
	"vivary/internal/planned"
)

// Greenspan's table of fixed points (J. Res. NBS 81A:89, 1977, table 2), and its fits.
func TestSalts(t *testing.T) {
	for _, c := range []struct {
		salt  string
		t, is float64
		by    float64
	}{
		{"NaCl", 20, 75.47, 0.02}, {"NaCl", 25, 75.29, 0.02}, {"NaCl", 30, 75.09, 0.03},
		{"MgCl2", 20, 33.07, 0.01}, {"MgCl2", 25, 32.78, 0.02}, {"MgCl2", 30, 32.44, 0.02},
		{"NaCl", 22, 75.41, 0.005}, {"MgCl2", 22, 32.97, 0.005},
	} {
		near(t, fmt.Sprint(c.salt, " at ", c.t), measure.SaltHumidity(c.salt, c.t), c.is, c.by)
	}
	for _, x := range []float64{-1, 51, math.NaN()} {
		if !math.IsNaN(measure.SaltHumidity("NaCl", x)) {
			t.Errorf("something is said of %v", x)
		}
	}
}

const gauged = `    gauge "g" {
      place             = "air"
      files             = ["tub*.csv"]
      accuracy          = "0.5 C"
      humidity_accuracy = "2 %"
`

func testsOf(t *testing.T, tests string) *measure.Tested {
	t.Helper()
	c, found := planned.Sound(t, planned.With(strings.Replace(tub, "#HERE", gauged+tests+"}\n", 1), ""))
	for _, f := range found {
		t.Log(f.Text)
	}
	return measure.TestedOf(c.Enclosures[0].Climate.Gauges[0].Tests, planned.Day("2027-06-01"))
}

// A gauge at 22 C that shows 71 over table salt and 36 over magnesium chloride: by the two
// salts a line, by one of them an offset.
func TestGauges(t *testing.T) {
	const nacl = "test \"a\" {\n on = \"2027-05-01\"\n at = \"22 C\"\n salt = \"NaCl\"\n humidity = \"71 %\"\n}\n"
	const mgcl = "test \"b\" {\n on = \"2027-05-02\"\n at = \"22 C\"\n salt = \"magnesium chloride\"\n humidity = \"36 %\"\n}\n"
	both := testsOf(t, nacl+mgcl)
	near(t, "slope", both.Slope, 1.2127, 5e-5)
	near(t, "intercept", both.Add, -10.69, 0.005)
	near(t, "60 by two salts", both.Damp(60), 62.07, 0.005)
	if both.Replace() || both.Old() || both.Age != 30 || both.Salts != 2 {
		t.Errorf("%+v", both)
	}
	one := testsOf(t, nacl)
	near(t, "60 by one salt", one.Damp(60), 64.41, 0.005)
	near(t, "what one salt makes of itself", one.Damp(71), measure.SaltHumidity("NaCl", 22), 1e-9)

	for _, c := range []struct {
		name, tests string
		replace     bool
		old         bool
		wrong       int
		heat        float64
	}{
		{"a thermometer half a degree high", "test \"a\" {\n on = \"2027-05-20\"\n at = \"22 C\"\n temperature = \"22.5 C\"\n}\n", false, false, 0, -0.5},
		{"in Fahrenheit", "test \"a\" {\n on = \"2027-05-20\"\n at = \"70 F\"\n temperature = \"71.8 F\"\n}\n", false, false, 0, -1},
		{"more than a degree", "test \"a\" {\n on = \"2027-05-20\"\n at = \"22 C\"\n temperature = \"20.8 C\"\n}\n", true, false, 0, 1.2},
		{"more than five percent", "test \"a\" {\n on = \"2027-05-20\"\n at = \"22 C\"\n salt = \"NaCl\"\n humidity = \"70 %\"\n}\n", true, false, 0, 0},
		{"old", "test \"a\" {\n on = \"2027-03-02\"\n at = \"22 C\"\n salt = \"NaCl\"\n humidity = \"74 %\"\n}\n", false, true, 0, 0},
		{"ninety days", "test \"a\" {\n on = \"2027-03-03\"\n at = \"22 C\"\n salt = \"NaCl\"\n humidity = \"74 %\"\n}\n", false, false, 0, 0},
		{"the newest counts", "test \"a\" {\n on = \"2027-03-02\"\n at = \"22 C\"\n temperature = \"25 C\"\n}\ntest \"b\" {\n on = \"2027-05-02\"\n at = \"22 C\"\n temperature = \"22.2 C\"\n}\n", false, false, 0, -0.2},
		{"without a value", "test \"a\" {\n on = \"2027-05-20\"\n at = \"22 C\"\n}\n", false, false, 1, 0},
		{"a salt alone", "test \"a\" {\n on = \"2027-05-20\"\n at = \"22 C\"\n salt = \"NaCl\"\n}\n", false, false, 1, 0},
		{"the same over both", nacl + strings.Replace(mgcl, "36 %", "68 %", 1), true, false, 1, 0},
		{"after today", "test \"a\" {\n on = \"2027-06-20\"\n at = \"22 C\"\n temperature = \"25 C\"\n}\n", false, false, 1, 0},
	} {
		x := testsOf(t, c.tests)
		if x.Replace() != c.replace || x.On != 0 && x.Old() != c.old || len(x.Wrong) != c.wrong || math.Abs(x.HeatOff-c.heat) > 1e-9 {
			t.Errorf("%s: %+v", c.name, x)
		}
		if x.Slope == 1 && x.Add == 0 && x.Damp(60) != 60 {
			t.Errorf("%s: nothing was tested and 60 is %v", c.name, x.Damp(60))
		}
	}
}
