package readings

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"vivary/compile/logger"
)

func upTo(n int, step float64) []float64 {
	t := make([]float64, n)
	for i := range t {
		t[i] = float64(i) * step
	}
	return t
}

// A cup of coffee in a room of 74.6 F, read each ten minutes: the measured cooling that Queens
// College of the City University of New York gives to its students (qcpages.qc.cuny.edu, Math
// 158), whose fit is a slope of -0.020417 a minute and an intercept of 4.53572.
func TestCup(t *testing.T) {
	slope, _, intercept, n := LogFit(upTo(10, 10), []float64{182.0, 151.7, 133.9, 122.0, 113.1, 106.2, 101.1, 96.7, 93.5, 90.9}, 74.6, 0)
	near(t, "slope", slope, -0.020417, 1e-6)
	near(t, "intercept", intercept, 4.53572, 1e-5)
	near(t, "tau", -1/slope, 48.98, 0.005)
	if n != 10 {
		t.Errorf("%d readings", n)
	}
}

// A box that cools with a tau of 90 minutes in a room of 20 C, read to a tenth each 15 minutes:
// 10 exp(-t/90) + 20. What the fits make of it was worked out by hand beside it.
func TestBox(t *testing.T) {
	v := []float64{30.0, 28.5, 27.2, 26.1, 25.1, 24.3, 23.7, 23.1, 22.6, 22.2, 21.9, 21.6, 21.4}
	for k, x := range v {
		near(t, "the box", x, 20+10*math.Exp(-float64(15*k)/90), 0.05+0.02)
	}
	at := upTo(len(v), 15)
	all, _, _, _ := LogFit(at, v, 20, 0)
	near(t, "tau of all", -1/all, 90.4, 0.05)
	d, ok := DecayOf(at, v, 20)
	if !ok || d.N != 10 {
		t.Fatalf("%+v", d)
	}
	near(t, "tau", d.Tau.Value, 89.0, 0.05)
	near(t, "tau, the room half a kelvin colder", d.Cold, 99.0, 0.06)
	near(t, "tau, the room half a kelvin warmer", d.Warm, 78.7, 0.06)
	tau, room := LagOne(v, 15)
	near(t, "tau without a room", tau, 89.7, 0.05)
	near(t, "the room that comes out of it", room, 20.04, 0.005)
	f, ok := FreeFit(at, v)
	if !ok || f.Tau.Low > 90 || f.Tau.High < 90 {
		t.Errorf("%+v %v", f, ok)
	}
	near(t, "the room by the curve", f.Rests, 20, 0.15)

	loss, ok := LossOf([]float64{16 * 0.5}, []float64{8}, 0, 0)
	if !ok {
		t.Fatal("no loss")
	}
	near(t, "UA", loss.Value, 1.00, 1e-9)
	near(t, "C", loss.Value*d.Tau.Value*60, 5340, 5)
	near(t, "minutes from 28 to 22 in a room of 18", 90*math.Log((28-18)/(22-18.)), 82.5, 0.05)
}

// series is a box on a thermostat and then cooling, as loggers write it: with noise, rounded to
// a tenth, with lines lost, over the night on which clocks change.
func series(r *rand.Rand, tau, room, noise float64, step time.Duration) (air, beside string) {
	london, _ := time.LoadLocation("Europe/London")
	start := time.Date(2027, 10, 30, 22, 0, 0, 0, london)
	var a, b strings.Builder
	a.WriteString("time,temp\n")
	b.WriteString("time,temp\n")
	for t := start; t.Before(start.Add(14 * time.Hour)); t = t.Add(step) {
		m := t.Sub(start).Minutes()
		v := room + 11
		if m > 90 {
			v = room + 11*math.Exp(-(m-90)/tau)
		}
		if r.IntN(20) > 0 {
			fmt.Fprintf(&a, "%s,%.1f\n", t.Format("2006-01-02 15:04"), v+noise*r.NormFloat64())
		}
		fmt.Fprintf(&b, "%s,%.1f\n", t.Format("2006-01-02 15:04"), room+noise*r.NormFloat64())
	}
	return a.String(), b.String()
}

// The truth lies within the band that is said in 19 of 20 cases at least, with a room gauge that
// may be off by half a kelvin.
func TestDecayHoldsTheTruth(t *testing.T) {
	const seeds = 400
	held, free, found, freed := 0, 0, 0, 0
	london, _ := time.LoadLocation("Europe/London")
	for seed := range uint64(seeds) {
		r := rand.New(rand.NewPCG(seed, 9))
		tau, room := 60+90*r.Float64(), 17+6*r.Float64()
		step := []time.Duration{time.Minute, 5 * time.Minute, 10 * time.Minute, 15 * time.Minute}[r.IntN(4)]
		air, beside := series(r, tau, room, 0.05+0.1*r.Float64(), step)
		a, err := logger.Read(strings.NewReader(air), logger.Options{Zone: london})
		if err != nil {
			t.Fatal(err)
		}
		b, err := logger.Read(strings.NewReader(beside), logger.Options{Zone: london})
		if err != nil {
			t.Fatal(err)
		}
		off := (2*r.Float64() - 1) * roomOff
		x := valuesOf(a, false, nil)
		y := valuesOf(b, false, func(v float64) float64 { return v + off })
		c, why := coolingOf(&x, &y)
		if why != "" {
			t.Logf("seed %d: %s", seed, why)
			continue
		}
		found++
		if c.Decay.Tau.Low <= tau && tau <= c.Decay.Tau.High {
			held++
		}
		if c.Alone != nil {
			freed++
			if c.Alone.Tau.Low <= tau && tau <= c.Alone.Tau.High {
				free++
			}
		}
	}
	t.Logf("%d of %d found; held %d; without a room %d of %d", found, seeds, held, free, freed)
	if found < seeds*95/100 || held*100 < found*95 || free*100 < freed*95 || freed < seeds/2 {
		t.Errorf("of %d: %d found, of which %d hold the truth; without a room %d of %d", seeds, found, held, free, freed)
	}
}

// How long a heater is on comes out of how it rises and falls.
func TestDuty(t *testing.T) {
	for seed := range uint64(100) {
		r := rand.New(rand.NewPCG(seed, 3))
		duty := 0.2 + 0.6*r.Float64()
		cycle := 20 + 30*r.Float64() // min
		rise := 1.5 / (duty * cycle)
		fall := 1.5 / ((1 - duty) * cycle)
		at := upTo(1440, 1)
		v := make([]float64, len(at))
		x := 29.0
		for i := range at {
			if math.Mod(at[i], cycle) < duty*cycle {
				x += rise
			} else {
				x -= fall
			}
			v[i] = math.Round(10*(x+0.05*r.NormFloat64())) / 10
		}
		got, _, cycles, ok := Duty(at, v, leastSwing)
		if !ok || math.Abs(got-duty) > 0.05 || math.Abs(float64(cycles)-1440/cycle) > 4 {
			t.Errorf("seed %d: duty %.3f of %.3f, %d cycles of %.1f, %v", seed, got, duty, cycles, 1440/cycle, ok)
		}
	}
	if _, _, _, ok := Duty(upTo(500, 1), make([]float64, 500), leastSwing); ok {
		t.Error("what lies still has no cycles")
	}
}
