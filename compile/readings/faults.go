package readings

import (
	"fmt"
	"math"
	"time"

	"gonum.org/v1/gonum/stat"

	"vivary/compile/logger"
	"vivary/schema/wording"
)

// Fault is what a sensor shows that an enclosure does not.
type Fault struct {
	Kind        string // "stuck", "wet", "step", "drift"; of a file as a whole "clock", "scale"
	From, Until int64
	Text        string
}

// When a sensor is held to be at fault. A logger's file is tested for range, step and
// persistence as those of weather stations are (WMO, guidelines on the quality control of data
// from automatic weather stations); the figures are ours, since a tub stands stiller than the
// weather.
const (
	stuckBoth  = 6 * 3600  // s in which neither temperature nor humidity moves
	stuckOne   = 24 * 3600 // s, where the logger shows one of them only
	stuckLeast = 12        // readings: a value a day may well be the same
	wetFor     = 24 * 3600 // s at wetAt or more
	wetAt      = 99.0      // %
	stepOf     = 5.0       // K
	stepIn     = 600       // s
	mostSaid   = 5         // of a kind
	driftDays  = 14
)

// faults looks for them. off is how far temperature and humidity may be off.
func faults(s *logger.Series, heatOff, dampOff float64) (all []Fault) {
	heat, damp := s.Has()
	said := map[string]int{}
	add := func(kind string, from, until int64, text string) {
		if said[kind]++; said[kind] <= mostSaid {
			all = append(all, Fault{kind, from, until, text})
		}
	}
	still := int64(stuckOne)
	if heat && damp {
		still = stuckBoth
	}
	from, wet, last := 0, -1, -1
	end := func(i int) { // what stood still until sample i
		if d := s.Samples[i].At - s.Samples[from].At; d >= still && i-from >= stuckLeast {
			what := "the temperature"
			switch {
			case heat && damp:
				what = "neither temperature nor humidity"
			case damp:
				what = "the humidity"
			}
			moved := " has not moved for "
			if heat && damp {
				moved = " has moved for "
			}
			add("stuck", s.Samples[from].At, s.Samples[i].At, what+moved+lasting(d)+": it is stuck, or lies where nothing changes")
		}
	}
	dry := func(i int) {
		if wet >= 0 {
			if d := s.Samples[i].At - s.Samples[wet].At; d >= wetFor {
				add("wet", s.Samples[wet].At, s.Samples[i].At, "humidity of 99 to 100 % for "+lasting(d)+": the sensor is wet, and shows the water on it. Let it dry, and test it")
			}
		}
		wet = -1
	}
	for i := range s.Samples {
		x := &s.Samples[i]
		if i > 0 {
			was := &s.Samples[i-1]
			gap := x.At-was.At > s.MaxGap()
			if gap || !unmoved(was.Heat, x.Heat) || !unmoved(was.Damp, x.Damp) {
				end(i - 1)
				from = i
			}
			if gap {
				dry(i - 1)
			}
		}
		switch {
		case x.Damp >= wetAt && wet < 0:
			wet = i
		case !(x.Damp >= wetAt) && !logger.None(x.Damp):
			dry(max(0, i-1))
		}
		if logger.None(x.Heat) {
			continue
		}
		if last >= 0 {
			d, dt := x.Heat-s.Samples[last].Heat, x.At-s.Samples[last].At
			if math.Abs(d) > stepOf && dt <= stepIn {
				add("step", s.Samples[last].At, x.At, fmt.Sprintf("%+.1f K in %s: the lid was open, somebody held it, or a contact is loose", d, lasting(dt)))
			}
		}
		last = i
	}
	if n := len(s.Samples); n > 0 {
		end(n - 1)
		dry(n - 1)
	}
	for _, kind := range []string{"stuck", "wet", "step"} {
		if more := said[kind] - mostSaid; more > 0 {
			all = append(all, Fault{Kind: kind, Text: "and " + wording.Count(more, "more such time", "more such times")})
		}
	}
	if heat {
		all = append(all, drift(s, false, heatOff)...)
	}
	if damp {
		all = append(all, drift(s, true, dampOff)...)
	}
	return all
}

func unmoved(a, b float64) bool { return a == b || logger.None(a) && logger.None(b) }

// drift tells a mean that goes one way day by day. A season does so too, and the text says so.
func drift(s *logger.Series, damp bool, off float64) []Fault {
	x := valuesOf(s, damp, nil)
	var day []float64
	var mean, n []float64
	for i, at := range x.at {
		d := float64(at / 86400)
		if len(day) == 0 || day[len(day)-1] != d {
			day, mean, n = append(day, d), append(mean, 0), append(n, 0)
		}
		k := len(day) - 1
		mean[k] += x.v[i]
		n[k]++
	}
	if len(day) < driftDays {
		return nil
	}
	for k := range mean {
		mean[k] /= n[k]
	}
	a, b := stat.LinearRegression(day, mean, nil, false)
	span := day[len(day)-1] - day[0]
	whole := b * span
	if math.Abs(whole) < max(2*off, 1) || !(stat.RSquared(day, mean, nil, a, b) >= 0.9) {
		return nil
	}
	what, unit := "temperature", "K"
	if damp {
		what, unit = "humidity", "%"
	}
	return []Fault{{"drift", x.at[0], x.at[len(x.at)-1], fmt.Sprintf("the mean %s goes one way all the time, %+.1f %s in %s: a season does that, and so does a sensor that drifts. A second gauge beside it, or the salts, tell which", what, whole, unit, wording.Days(int(span)))}}
}

// lasting is a length of time in words.
func lasting(seconds int64) string {
	switch d := time.Duration(seconds) * time.Second; {
	case d < 2*time.Hour:
		return fmt.Sprintf("%d min", int(math.Round(d.Minutes())))
	case d < 72*time.Hour:
		return trimmed(d.Hours(), 1) + " h"
	default:
		return trimmed(d.Hours()/24, 1) + " days"
	}
}

func trimmed(x float64, digits int) string { return wording.Number(rounded(x, digits)) }

func rounded(x float64, digits int) float64 {
	p := math.Pow(10, float64(digits))
	return math.Round(x*p) / p
}
