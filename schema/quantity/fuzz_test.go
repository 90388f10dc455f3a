package quantity

import "testing"

// What reads also prints, and what is printed reads as the same value; what is
// proposed instead of a faulty text reads too.
func FuzzQuantity(f *testing.F) {
	for _, s := range []string{"30 C", "86 F", "27 to 32 C", "27–32°C", "-40 F", "75 % RH", "0.3", "10 US gal", "1 cup", "7 to 18 months",
		"5.86 kJ/g", "20 x 10 x 12 in", "1.2.0", "2 weeks", "27,5 C", "1½ in", "32 to 27 C", "30 Celcius", "27  C", "27 C to 32"} {
		for d := Dimension(0); d <= Ratio; d++ {
			f.Add(s, uint8(d))
		}
	}
	f.Fuzz(func(t *testing.T, s string, dim uint8) {
		d := Dimension(dim)
		q, err := Parse(s, d)
		if err == nil {
			if back, err := Parse(q.String(), d); err != nil || back.Value != q.Value {
				t.Errorf("%q prints as %q, which reads as %v (%v)", s, q, back.Value, err)
			}
		}
		check(t, s, err, func(t string) error { _, err := Parse(t, d); return err })

		r, err := ParseRange(s, d)
		if err == nil {
			if back, err := ParseRange(r.String(), d); err != nil || back.Low != r.Low || back.High != r.High {
				t.Errorf("%q prints as %q, which reads as %v to %v (%v)", s, r, back.Low, back.High, err)
			}
			if !r.Contains(r.Low) || !r.Encloses(r) {
				t.Errorf("%q does not contain itself", s)
			}
		}
		check(t, s, err, func(t string) error { _, err := ParseRange(t, d); return err })

		z, err := ParseSize(s)
		if err == nil {
			if back, err := ParseSize(z.String()); err != nil || back != z {
				t.Errorf("%q prints as %q, which reads as %v (%v)", s, z, back, err)
			}
		}
		check(t, s, err, func(t string) error { _, err := ParseSize(t); return err })

		c, err := ParseCount(s)
		if err == nil {
			if back, err := ParseCount(c.String()); err != nil || back != c {
				t.Errorf("%q prints as %q, which reads as %v (%v)", s, c, back, err)
			}
		}
		check(t, s, err, func(t string) error { _, err := ParseCount(t); return err })

		v, err := ParseInterval(s)
		if err == nil {
			if back, err := ParseInterval(v.String()); err != nil || back != v {
				t.Errorf("%q prints as %q, which reads as %v (%v)", s, v, back, err)
			}
		}
		check(t, s, err, func(t string) error { _, err := ParseInterval(t); return err })
	})
}

func check(t *testing.T, s string, err error, parse func(string) error) {
	t.Helper()
	if err == nil {
		return
	}
	e := err.(*Error)
	if e.Kind == 0 || e.Text != s || e.Error() == "" {
		t.Errorf("%q: empty error %#v", s, e)
	}
	if e.Instead != "" && parse(e.Instead) != nil {
		t.Errorf("%q: proposes %q, which gives %v", s, e.Instead, parse(e.Instead))
	}
}
