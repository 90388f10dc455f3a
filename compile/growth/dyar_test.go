package growth_test

import (
	"math"
	"testing"

	"vivary/compile/growth"
)

func near(t *testing.T, what string, got, want, off float64) {
	t.Helper()
	if !(math.Abs(got-want) <= off) {
		t.Errorf("%s: %.5g, want %.5g", what, got, want)
	}
}

// The theory is that of Przibram and Dyar as Francke and Sissom 1984 (J. Arachnol.
// 12:1-20) use it: a mass that doubles, and n = ln(adult/now) / ln(factor). 1.27 is
// Hadrurus gertschi (Quijano-Ravell, Ponce-Saavedra and Francke 2011, Rev. Ibérica
// Aracnol. 19:133-145), 1.38 Paruroctonus mesaensis (Polis and Farley 1979, J.
// Zool.). The numbers were worked by hand with a pocket calculator.
func TestDyar(t *testing.T) {
	near(t, "theory", growth.MassFactor(math.Cbrt(2)), 2, 1e-9)
	near(t, "moults", growth.Moults(1, 3.176, 1.26), 5.00, 0.005)
	near(t, "six moults at 1.27", growth.After(1, 1.27, 6), 4.196, 0.0005)
	near(t, "six moults at 1.38", growth.After(1, 1.38, 6), 6.907, 0.0005)
	near(t, "back again", growth.After(growth.After(17, 1.27, 6), 1.27, -6), 17, 1e-9)
	for factor, mass := range map[float64]float64{1.26: 2.00, 1.27: 2.05, 1.38: 2.63} {
		near(t, "mass factor", growth.MassFactor(factor), mass, 0.005)
	}
	for _, bad := range [][3]float64{{1, 2, 1}, {0, 2, 1.3}, {1, -2, 1.3}, {1, 2, math.NaN()}} {
		if n := growth.Moults(bad[0], bad[1], bad[2]); !math.IsNaN(n) {
			t.Errorf("Moults%v = %v", bad, n)
		}
	}
}

// A scorpion without a factor of its own gets one that holds those published:
// Hadrurus gertschi 1.27, Paruroctonus mesaensis 1.38, Tityus stigmurus 1.14 to
// 1.38 by part, and Centruroides gracilis, whose males of one instar more are 1.25
// times as large (Francke and Jones 1982, J. Arachnol. 10:223-239).
func TestKinFactors(t *testing.T) {
	text := species("figure \"metabolic-kin\" {\n value = \"scorpion\"\n"+own+"}") + box("sp", "30 x 20 x 20 cm", herd("one", "1", "stage = \"young\""))
	r := report(t, text, "", "2026-11-25")
	f, _, ok := r.Forecast(r.Life.Groups[0])
	if !ok || f.Figure != nil || f.Kin == "" {
		t.Fatalf("%+v %v", f, ok)
	}
	for _, published := range []float64{1.14, 1.25, 1.27, 1.38, math.Cbrt(2)} {
		if published < f.Low || published > f.High {
			t.Errorf("%v is not within %v to %v", published, f.Low, f.High)
		}
	}
}
