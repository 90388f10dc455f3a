package readings

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"vivary/compile/logger"
	"vivary/compile/measure"
	"vivary/schema/quantity"
)

// wave is T = 28 + 4 sin(2πk/144) for k from 0 to 144 at ten minutes, without those for which
// leave says so.
func wave(leave func(k int) bool, off float64) *logger.Series {
	s := &logger.Series{Step: 600, Zone: time.UTC, Shape: logger.Shape{Heat: 1}}
	start := time.Date(2027, 6, 1, 0, 0, 0, 0, time.UTC).Unix()
	for k := range 145 {
		if leave == nil || !leave(k) {
			s.Samples = append(s.Samples, logger.Sample{At: start + int64(600*k), Heat: 28 + off + 4*math.Sin(2*math.Pi*float64(k)/144), Damp: math.NaN()})
		}
	}
	return s
}

func fixed(low, high float64) []*measure.Limit {
	return []*measure.Limit{{Level: measure.Aim, Fixed: true, Day: quantity.Range{Low: low, High: high, Unit: quantity.Celsius}}}
}

func judgedOf(s *logger.Series, low, high, off float64) *Judged {
	x := valuesOf(s, false, nil)
	return judge(&x, false, s.Samples[0].At, s.Samples[len(s.Samples)-1].At, fixed(low, high), off, UsualDay)
}

func near(t *testing.T, what string, got, want, by float64) {
	t.Helper()
	if !(math.Abs(got-want) <= by) {
		t.Errorf("%s is %.5f, want %.5f ± %g", what, got, want, by)
	}
}

// A sine wave has its integral in a book: 4 sin above 2 from 30° to 150°, which is 4·2·cos 30° -
// 2·(2π/3), times 24 h/2π. The trapezium of straight lines lies a little below it.
func TestWave(t *testing.T) {
	j := judgedOf(wave(nil, 0), -50, 30, 0)
	up := j.Verdicts[0].Above
	exact := (8*math.Cos(math.Pi/6) - 4*math.Pi/3) * 24 / (2 * math.Pi)
	near(t, "the integral by the book", exact, 10.4638, 1e-4)
	near(t, "hours", up.Hours, 8, 0.005)
	near(t, "degree-hours", up.Degrees, 10.4596, 1e-4)
	near(t, "degree-hours by the book", up.Degrees, exact, 0.005)
	near(t, "longest", up.Longest, 8, 0.005)
	near(t, "peak", up.Peak, 32, 1e-9)
	near(t, "coverage", j.Coverage(), 1, 1e-9)
	near(t, "mean", j.Mean, 28, 1e-9)
	if at := time.Unix(up.PeakAt, 0).UTC(); at.Hour() != 6 || at.Minute() != 0 {
		t.Errorf("the peak is at %s", at)
	}
	if at := time.Unix(up.From, 0).UTC(); at.Hour() != 2 || at.Minute() != 0 {
		t.Errorf("the longest begins at %s", at)
	}
	count := 0 // what counting samples would say
	for _, x := range wave(nil, 0).Samples {
		if x.Heat > 30+1e-9 {
			count++
		}
	}
	near(t, "hours by counting", float64(count)/6, 7.83, 0.005)

	down := judgedOf(wave(nil, 0), 25, 99, 0).Verdicts[0].Below
	near(t, "hours under 25", down.Hours, 5.52, 0.005)
	near(t, "degree-hours under 25", down.Degrees, 3.645, 0.0005)
	near(t, "the lowest", down.Peak, 24, 1e-9)

	up = judgedOf(wave(nil, -0.4), -50, 30, 0).Verdicts[0].Above
	near(t, "hours, all 0.4 K less", up.Hours, 7.08, 0.005)
	near(t, "degree-hours, all 0.4 K less", up.Degrees, 7.44, 0.005)

	// What is sure with a gauge that may be off by 0.4 K is what a gauge 0.4 K lower shows.
	near(t, "sure", judgedOf(wave(nil, 0), -50, 30, 0.4).Verdicts[0].Above.Sure, up.Hours, 1e-9)
	near(t, "perhaps", judgedOf(wave(nil, 0), -50, 30, 0.4).Verdicts[0].Above.Perhaps, judgedOf(wave(nil, 0.4), -50, 30, 0).Verdicts[0].Above.Hours, 1e-9)
}

// A gap is not bridged: it is no time at all, and ends what went on.
func TestWaveWithGap(t *testing.T) {
	j := judgedOf(wave(func(k int) bool { return k >= 30 && k <= 40 }, 0), -50, 30, 0)
	up := j.Verdicts[0].Above
	near(t, "hours", up.Hours, 6, 0.005)
	near(t, "degree-hours", up.Degrees, 6.559, 0.0005)
	near(t, "longest", up.Longest, 3.17, 0.005)
	near(t, "coverage", j.Coverage(), 0.917, 0.0005)
	if j.Gaps != 1 || !j.Enough() {
		t.Errorf("%d gaps, enough: %v", j.Gaps, j.Enough())
	}
}

// What is aimed for by day and by night changes between them, also within a step, and time is
// neither lost nor counted twice.
func TestDayAndNight(t *testing.T) {
	s := &logger.Series{Step: 7 * 60, Zone: time.UTC, Shape: logger.Shape{Heat: 1}}
	start := time.Date(2027, 6, 1, 3, 0, 0, 0, time.UTC).Unix()
	for k := range 1000 {
		s.Samples = append(s.Samples, logger.Sample{At: start + int64(k)*7*60, Heat: 24, Damp: math.NaN()})
	}
	last := s.Samples[len(s.Samples)-1].At
	night := quantity.Range{Low: 18, High: 21}
	l := &measure.Limit{Level: measure.Aim, Day: quantity.Range{Low: 23, High: 27}, Night: &night}
	x := valuesOf(s, false, nil)
	j := judge(&x, false, start, last, []*measure.Limit{l}, 0, Daylight{8 * 60, 20*60 + 30})
	v := j.Verdicts[0]
	nights := 0.0
	for t := start; t < last; t += 60 {
		if c := time.Unix(t, 0).UTC(); c.Hour() < 8 || c.Hour() > 20 || c.Hour() == 20 && c.Minute() >= 30 {
			nights += 1.0 / 60
		}
	}
	near(t, "hours too warm by night", v.Above.Hours, nights, 1e-6)
	near(t, "degree-hours", v.Above.Degrees, 3*nights, 1e-6)
	near(t, "longest", v.Above.Longest, 11.5, 1e-6)
	if v.Below.Any() || v.Above.Nights != 6 {
		t.Errorf("%+v", v)
	}
	near(t, "the whole", j.Covered, float64(last-start)/3600, 1e-6)
}

// Against the same sum done in another way: each straight line cut into a thousand pieces.
func TestAgainstSmallPieces(t *testing.T) {
	for seed := range uint64(40) {
		r := rand.New(rand.NewPCG(seed, 1))
		s := &logger.Series{Step: 300, Zone: time.UTC, Shape: logger.Shape{Heat: 1}}
		at, v := int64(1_800_000_000), 25.0
		for range 200 {
			at += int64(60 * (1 + r.IntN(20))) // up to four steps
			v += r.NormFloat64() * 1.5
			s.Samples = append(s.Samples, logger.Sample{At: at, Heat: v, Damp: math.NaN()})
		}
		j := judgedOf(s, 24, 26, 0)
		var hours, degrees, covered float64
		for i := 1; i < len(s.Samples); i++ {
			a, b := s.Samples[i-1], s.Samples[i]
			if b.At-a.At > 900 {
				continue
			}
			covered += float64(b.At-a.At) / 3600
			const n = 1000
			for k := range n {
				x := a.Heat + (b.Heat-a.Heat)*(float64(k)+0.5)/n - 26
				if x > 0 {
					hours += float64(b.At-a.At) / 3600 / n
					degrees += x * float64(b.At-a.At) / 3600 / n
				}
			}
		}
		near(t, "hours", j.Verdicts[0].Above.Hours, hours, 0.02)
		near(t, "degree-hours", j.Verdicts[0].Above.Degrees, degrees, 0.005)
		near(t, "covered", j.Covered, covered, 1e-6)
		up := &j.Verdicts[0].Above
		if up.Sure > up.Hours || up.Hours > up.Perhaps || up.Longest > up.Hours+1e-9 {
			t.Errorf("seed %d: %+v", seed, up)
		}
	}
}

// A sensor at fault, and one that only lies still.
func TestFaults(t *testing.T) {
	series := func(n int, heat, damp func(k int) float64) *logger.Series {
		s := &logger.Series{Step: 600, Zone: time.UTC, Shape: logger.Shape{Heat: 1, Damp: 2}}
		for k := range n {
			x := logger.Sample{At: 1_800_000_000 + int64(600*k), Heat: math.NaN(), Damp: math.NaN()}
			if heat != nil {
				x.Heat = heat(k)
			} else {
				s.Shape.Heat = 0
			}
			if damp != nil {
				x.Damp = damp(k)
			} else {
				s.Shape.Damp = 0
			}
			s.Samples = append(s.Samples, x)
		}
		return s
	}
	waved := func(k int) float64 { return rounded(24+2*math.Sin(float64(k)/20), 1) }
	damp := func(k int) float64 { return rounded(70+4*math.Cos(float64(k)/25), 1) }
	flat := func(v float64) func(int) float64 { return func(int) float64 { return v } }
	for _, c := range []struct {
		name string
		s    *logger.Series
		want string
	}{
		{"sound", series(2000, waved, damp), ""},
		{"both still for seven hours", series(43, flat(24), flat(70)), "stuck"},
		{"both still for five hours", series(31, flat(24), flat(70)), ""},
		{"one still for ten hours", series(61, flat(24), nil), ""},
		{"one still for a day and more", series(160, flat(24), nil), "stuck"},
		{"heat still, damp not", series(300, flat(24), damp), ""},
		{"wet for 25 hours", series(151, waved, flat(99.6)), "wet"},
		{"wet for 20 hours", series(121, waved, flat(99.6)), ""},
		{"a step", series(200, func(k int) float64 {
			if k == 100 {
				return 31.5
			}
			return waved(k)
		}, damp), "step step"},
		{"a slow rise of six", series(200, func(k int) float64 { return 20 + float64(k)*0.3 }, damp), ""},
		{"humidity that drifts", series(144*30, waved, func(k int) float64 { return rounded(60+float64(k)/144*0.5+math.Cos(float64(k)/25), 1) }), "drift"},
	} {
		var got string
		for _, f := range faults(c.s, 0.5, 3) {
			if got != "" {
				got += " "
			}
			got += f.Kind
		}
		if got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}
