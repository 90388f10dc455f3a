package readings

import (
	"math"

	"gonum.org/v1/gonum/stat"
)

// Fit is a value with the ends between which it lies, as the scatter of the readings and what is
// not known of the room leave it.
type Fit struct{ Low, Value, High float64 }

// Decay is a body that cools towards its room: C dT/dt = -UA (T - Ta), which falls by a part of
// 1/tau in each unit of time.
type Decay struct {
	Tau Fit
	// Cold and Warm are tau with a room half a kelvin colder and warmer than was measured:
	// which matters more than all scatter.
	Cold, Warm float64
	N          int
}

// roomOff is how far the room may be off, K: what two gauges beside each other differ by.
const roomOff = 0.5

// leastAbove is how far above the room readings have to be, K: nearer to it a tenth of a kelvin
// is most of what is left.
const leastAbove = 2.0

// LogFit fits ln(T - Ta) = ln(T0 - Ta) - t/tau by least squares to readings at times t, in
// whatever unit; only where T - Ta is at least least. It returns the slope, its standard error,
// the intercept and how many readings were taken.
func LogFit(t, v []float64, room, least float64) (slope, err, intercept float64, n int) {
	var xs, ys []float64
	for i := range t {
		if d := v[i] - room; d > 0 && d >= least {
			xs, ys = append(xs, t[i]), append(ys, math.Log(d))
		}
	}
	if len(xs) < 3 {
		return math.NaN(), math.NaN(), math.NaN(), len(xs)
	}
	intercept, slope = stat.LinearRegression(xs, ys, nil, false)
	var rss float64
	for i := range xs {
		d := ys[i] - intercept - slope*xs[i]
		rss += d * d
	}
	sxx := stat.Variance(xs, nil) * float64(len(xs)-1)
	return slope, math.Sqrt(rss / float64(len(xs)-2) / sxx), intercept, len(xs)
}

// DecayOf fits a decay towards a room that was logged. It is false where it does not fall.
func DecayOf(t, v []float64, room float64) (d Decay, ok bool) {
	slope, err, _, n := LogFit(t, v, room, leastAbove)
	if !(slope < 0) {
		return d, false
	}
	var ts, vs []float64 // the same readings, whatever the room
	for i := range v {
		if v[i]-room >= leastAbove {
			ts, vs = append(ts, t[i]), append(vs, v[i])
		}
	}
	with := func(room float64) float64 {
		s, _, _, _ := LogFit(ts, vs, room, 0)
		return -1 / s
	}
	d.N, d.Tau.Value, d.Cold, d.Warm = n, -1/slope, with(room-roomOff), with(room+roomOff)
	// Three standard errors, and a fiftieth for the noise by which readings near the cut are
	// in or out: with two the truth was outside once in seventeen times.
	scatter := 3*err/(slope*slope) + d.Tau.Value/50
	d.Tau.Low = d.Tau.Value - math.Hypot(scatter, d.Tau.Value-min(d.Cold, d.Warm, d.Tau.Value))
	d.Tau.High = d.Tau.Value + math.Hypot(scatter, max(d.Cold, d.Warm, d.Tau.Value)-d.Tau.Value)
	return d, d.Tau.Value > 0 && !math.IsNaN(d.Cold) && !math.IsNaN(d.Warm)
}

// LagOne fits T(k+1) = a + b T(k), which needs no room: it comes out of it.
func LagOne(v []float64, step float64) (tau, room float64) {
	if len(v) < 4 {
		return math.NaN(), math.NaN()
	}
	a, b := stat.LinearRegression(v[:len(v)-1], v[1:], nil, false)
	if !(b > 0 && b < 1) {
		return math.NaN(), math.NaN()
	}
	return -step / math.Log(b), a / (1 - b)
}

// Free is a decay of which nobody logged towards what.
type Free struct {
	Tau   Fit
	Rests float64 // where it comes to rest
	Start float64
}

// FreeFit fits v = rests + (start - rests) exp(-t/tau). For each tau the rest is a straight
// line; the tau with the least squares is taken, and those with not much more are its band, as
// wide as ever where it does not tell.
func FreeFit(t, v []float64) (f Free, ok bool) {
	n := len(t)
	if n < 6 {
		return f, false
	}
	span := t[n-1] - t[0]
	x := make([]float64, n)
	fit := func(tau float64) (rss, rests, size float64) {
		for i := range t {
			x[i] = math.Exp(-(t[i] - t[0]) / tau)
		}
		rests, size = stat.LinearRegression(x, v, nil, false)
		for i := range v {
			d := v[i] - rests - size*x[i]
			rss += d * d
		}
		return rss, rests, size
	}
	const steps = 400
	low, high := span/50, span*20
	tau := func(k int) float64 { return low * math.Pow(high/low, float64(k)/steps) }
	best, least := 0, math.Inf(1)
	all := make([]float64, steps+1)
	for k := range all {
		if all[k], _, _ = fit(tau(k)); all[k] < least {
			best, least = k, all[k]
		}
	}
	if best == 0 || best == steps {
		return f, false
	}
	a, b := tau(best-1), tau(best+1)
	for range 60 { // thirds
		x, y := a+(b-a)/3, b-(b-a)/3
		fx, _, _ := fit(x)
		if fy, _, _ := fit(y); fx < fy {
			b = y
		} else {
			a = x
		}
	}
	f.Tau.Value = (a + b) / 2
	var size float64
	least, f.Rests, size = fit(f.Tau.Value)
	f.Start = f.Rests + size
	more := least*(1+5/float64(n-3)) + 1e-12
	lo, hi := best, best
	for lo > 0 && all[lo] <= more {
		lo--
	}
	for hi < steps && all[hi] <= more {
		hi++
	}
	f.Tau.Low, f.Tau.High = min(f.Tau.Value, tau(lo)), max(f.Tau.Value, tau(hi))
	return f, lo > 0 && hi < steps && size > 0
}

// LossOf is what warms a body by a kelvin: heat against how far it is above its room, through
// the origin, a pair for each steady day. by is how far that difference may be off, in K, and
// part how far the heat may be, as a part of it.
func LossOf(watt, above []float64, by, part float64) (f Fit, ok bool) {
	var qd, dd, mean float64
	for i := range watt {
		qd += watt[i] * above[i]
		dd += above[i] * above[i]
		mean += above[i] / float64(len(above))
	}
	if len(watt) == 0 || mean <= 1 {
		return f, false
	}
	f.Value = qd / dd
	var rss float64
	for i := range watt {
		d := watt[i] - f.Value*above[i]
		rss += d * d
	}
	scatter := 0.0
	if n := len(watt); n > 1 {
		scatter = 2 * math.Sqrt(rss/float64(n-1)/dd)
	}
	scatter = math.Hypot(scatter, part*f.Value)
	f.Low = f.Value - math.Hypot(scatter, f.Value*by/(mean+by))
	f.High = f.Value + math.Hypot(scatter, f.Value*by/max(mean-by, 0.1))
	return f, true
}

// Duty is the part of the time that a thermostat has its heater on, from the slopes of whole
// cycles: what falls while it is off rises again while it is on. swing is how far it has to turn
// to be a turn. off is how far the duty may be off, since a turn lies between two readings. It is
// false where there are fewer than three cycles, or too few readings in one.
func Duty(t, v []float64, swing float64) (duty, off float64, cycles int, ok bool) {
	type turn struct {
		i    int
		high bool
	}
	var turns []turn
	hi, lo, up, known := 0, 0, false, false
	for i := range v {
		if v[i] > v[hi] {
			hi = i
		}
		if v[i] < v[lo] {
			lo = i
		}
		switch {
		case (up || !known) && v[hi]-v[i] >= swing:
			turns = append(turns, turn{hi, true})
			up, known, lo = false, true, i
		case (!up || !known) && v[i]-v[lo] >= swing:
			turns = append(turns, turn{lo, false})
			up, known, hi = true, true, i
		}
	}
	if len(turns) < 8 {
		return 0, 0, len(turns) / 2, false
	}
	turns = turns[1 : len(turns)-1]
	if len(turns)%2 == 0 { // whole cycles begin and end alike
		turns = turns[:len(turns)-1]
	}
	var rise, fall, on, not float64
	for k := 1; k < len(turns); k++ {
		a, b := turns[k-1].i, turns[k].i
		d, dt := v[b]-v[a], t[b]-t[a]
		if turns[k].high {
			rise, on = rise+d, on+dt
		} else {
			fall, not = fall-d, not+dt
		}
	}
	cycles = (len(turns) - 1) / 2
	readings := turns[len(turns)-1].i - turns[0].i
	if cycles < 3 || readings < 6*cycles || on <= 0 || not <= 0 || rise <= 0 || fall <= 0 {
		return 0, 0, cycles, false
	}
	rise, fall = rise/on, fall/not
	return fall / (fall + rise), float64(cycles) / float64(readings), cycles, true
}
