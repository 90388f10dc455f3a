package quantity

import "testing"

var benchTexts = []struct {
	text string
	dim  Dimension
}{{"30 C", Temperature}, {"86 F", Temperature}, {"27 to 32 C", Temperature}, {"75 to 85 %", Humidity}, {"16 cm", Length},
	{"150 ml", Volume}, {"2 cups", Volume}, {"28 W", Power}, {"18 months", Duration}, {"5.86 kJ/g", EnergyDensity}}

// BenchmarkParseRange reads a mix of texts; one operation is one text.
func BenchmarkParseRange(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		c := &benchTexts[i%len(benchTexts)]
		if _, err := ParseRange(c.text, c.dim); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkParse(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Parse("86 F", Temperature); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkParseSize(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := ParseSize("20 x 10 x 12 in"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkString(b *testing.B) {
	b.ReportAllocs()
	q := Quantity{30, Fahrenheit}
	for b.Loop() {
		_ = q.String()
	}
}

// Reading allocates nothing, for a build reads hundreds of thousands of texts.
func TestNoAllocation(t *testing.T) {
	n := testing.AllocsPerRun(100, func() {
		for _, c := range benchTexts {
			ParseRange(c.text, c.dim)
		}
		ParseSize("20 x 10 x 12 in")
		ParseCount("1.2.0")
		ParseInterval("2 weeks")
	})
	if n != 0 {
		t.Errorf("%v allocations", n)
	}
}
