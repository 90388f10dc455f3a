package quantity

import "testing"

// What is told in which unit; the conversions are exact (NIST SP 811, B.8) and the rounding
// is Format's.
func TestUnits(t *testing.T) {
	for _, c := range []struct {
		stated     string
		d          Dimension
		us, metric string
	}{
		{"27 to 32 C", Temperature, "80.6 to 89.6 F", "27 to 32 C"},
		{"86 F", Temperature, "86 F", "30 C"},
		{"3 C", TemperatureStep, "5.4 F", "3 C"},
		{"3 K", TemperatureStep, "5.4 F", "3 C"},
		{"10 cm", Length, "3.9 in", "10 cm"},
		{"1.5 mm", Length, "0.059 in", "1.5 mm"},
		{"12 in", Length, "12 in", "30.5 cm"},
		{"1.8 m", Length, "5.91 ft", "1.8 m"},
		{"1200 cm2", Area, "186 sq in", "1200 cm2"},
		{"150 ml", Volume, "5.1 fl oz", "150 ml"},
		{"10 gal", Volume, "10 gal", "37.9 L"},
		{"36 L", Volume, "9.5 gal", "36 L"},
		{"25 g", Mass, "0.88 oz", "25 g"},
		{"14 mg", Mass, "0.00049 oz", "14 mg"},
		{"20 W", Power, "20 W", "20 W"},
		{"75 %", Humidity, "75 %", "75 %"},
		{"7 days", Duration, "7 days", "7 days"},
		{"0.95 kcal/g", EnergyDensity, "0.95 kcal/g", "0.95 kcal/g"},
	} {
		r, err := ParseRange(c.stated, c.d)
		if err != nil {
			t.Fatal(err)
		}
		if got := Customary.TellRange(r); got != c.us {
			t.Errorf("%s: customary %s, want %s", c.stated, got, c.us)
		}
		if got := Metric.TellRange(r); got != c.metric {
			t.Errorf("%s: metric %s, want %s", c.stated, got, c.metric)
		}
		if got := (Units{}).TellRange(r); got != c.metric {
			t.Errorf("%s: of nobody %s, want %s", c.stated, got, c.metric)
		}
	}
	for u := None + 1; int(u) < len(units); u++ {
		for _, s := range []Units{Metric, Customary} {
			if v := s.Of(u); v.Dimension() != u.Dimension() || s.Of(v) != v {
				t.Errorf("%s is told in %s, and that in %s", u, v, s.Of(v))
			}
		}
	}
}
