package logger

import "fmt"

// What an enclosure or its room can be on average, where nothing says which of two columns is its
// temperature (common practice, no source).
const (
	coldest, warmest = 8.0, 38.0 // °C
	driest           = 8.0       // %
)

// which tells the temperature from the humidity in two columns without a heading, by what each
// can be. Most loggers write the temperature first, in Celsius, and where that can be it is so;
// 24 and 75 may be degrees and percent, or percent and degrees of the other scale, and is not
// asked about. Where only the other order can be, that is taken, and said; where the first can
// be Fahrenheit and the second Celsius, nothing is guessed.
func (r *reader) which() error {
	s := &r.shape
	mean := func(col int) float64 { c := &r.cols[col-1]; return (c.low + c.high) / 2 }
	can := func(heat, damp int, scale byte) bool {
		if r.Degrees != 0 && r.Degrees != scale {
			return false
		}
		t, d := mean(heat), &r.cols[damp-1]
		if scale == 'F' {
			t = (t - 32) / 1.8
		}
		part := d.low >= 0 && d.high <= 1 && d.numbers > 3
		return t >= coldest && t <= warmest && d.low >= 0 && d.high <= 100 && (part || mean(damp) >= driest)
	}
	first, second := s.Heat, s.Damp
	celsius, fahrenheit := can(first, second, 'C'), can(first, second, 'F')
	otherC, otherF := can(second, first, 'C'), can(second, first, 'F')
	switch {
	case celsius || fahrenheit && !otherC:
		s.Guess = "no heading says which: by the usual order"
	case fahrenheit:
		return fmt.Errorf("no heading says which, and columns %d and %d can be °F and %%, or %% and °C: say --columns \"temperature=%d humidity=%d\", or --columns \"humidity=%d temperature=%d\"", first, second, first, second, first, second)
	case otherC || otherF:
		s.Heat, s.Damp = second, first
		s.Guess = "no heading says which: by what they hold, humidity first"
	}
	return nil
}
