package growth_test

import (
	"testing"

	"vivary/compile/growth"
	"vivary/schema/civil"
)

// BenchmarkOf reports on one enclosure: a grown group, which most are, and a
// growing one, whose days are searched for.
func BenchmarkOf(b *testing.B) {
	for name, text := range map[string]string{
		"grown":   box("pandinus-imperator", "90 x 45 x 45 cm", herd("adults", "1.2.0", "stage = \"adult\"")),
		"growing": box("pandinus-imperator", "50 x 25 x 30 cm", herd("young", "2", "instar = 4")),
	} {
		l, c := lives(b, text, "", "2026-11-25")
		today := civil.Must(2026, 11, 25)
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				growth.Of(l, c, today)
			}
		})
	}
}
