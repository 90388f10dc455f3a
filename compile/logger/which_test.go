package logger

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"
)

// Two columns without a heading, of which the truth is known. What can be either is asked about;
// what is usual is read without a word more.
func TestWhichColumn(t *testing.T) {
	for _, x := range []struct {
		name       string
		heat, damp float64 // the middle, °C and %
		first      string  // which stands first
		scale      byte
		said       byte // by --degrees
		asked      bool
	}{
		{"damp tub", 24, 78, "heat", 'C', 0, false},
		{"damp tub, humidity first", 24, 78, "damp", 'C', 0, true}, // 78 % and 24 °C, or 78 °F and 24 %
		{"the same, with the scale", 24, 78, "damp", 'C', 'C', false},
		{"desert in Fahrenheit", 25, 24, "heat", 'F', 0, true},
		{"the same, with the scale", 25, 24, "heat", 'F', 'F', false},
		{"winter house", 21, 32, "heat", 'C', 0, false},
		{"wet tub, humidity first", 26, 99, "damp", 'C', 0, true}, // or 99 °F and 26 %
		{"warm spot, Fahrenheit, damp", 32, 75, "heat", 'F', 0, false},
		{"Fahrenheit and as damp", 24, 70, "heat", 'F', 0, false},
		{"cellar, humidity first", 12, 55, "damp", 'C', 0, true}, // or 55 °F and 12 %
		{"cold cellar, humidity first", 9, 43, "damp", 'C', 0, false},
		{"dry house, humidity first", 22, 41, "damp", 'C', 0, false},
	} {
		var out strings.Builder
		for k := range 300 {
			h, d := x.heat+1.2*math.Sin(float64(k)/20), x.damp+0.9*math.Cos(float64(k)/15)
			if x.scale == 'F' {
				h = h*1.8 + 32
			}
			if x.first == "damp" {
				h, d = d, h
			}
			fmt.Fprintf(&out, "2026-11-%02d %02d:%02d,%.1f,%.1f\n", 1+k/144, k%144/6, k%6*10, h, d)
		}
		s, err := Read(strings.NewReader(out.String()), Options{Zone: time.UTC, Degrees: x.said})
		if x.asked {
			if err == nil || !strings.Contains(err.Error(), "--columns") {
				t.Errorf("%s: not asked: %v", x.name, err)
			}
			continue
		}
		if err != nil {
			t.Errorf("%s: %v", x.name, err)
			continue
		}
		if math.Abs(s.Samples[0].Heat-x.heat) > 0.2 || math.Abs(s.Samples[0].Damp-x.damp-0.9) > 0.2 || !strings.Contains(s.Shape.String(), "no heading says which") {
			t.Errorf("%s: read as %.1f °C and %.1f %%: %s", x.name, s.Samples[0].Heat, s.Samples[0].Damp, s.Shape.String())
		}
	}
}
