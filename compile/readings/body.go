package readings

import (
	"math"
	"time"

	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/compile/measure"
	"vivary/schema/civil"
)

// What a fall of the temperature has to be for tau to come out of it.
const (
	leastFall = 8.0      // K
	bothWays  = 0.6      // K that it may rise between: noise
	noLower   = 3 * 3600 // s without a new low, after which it has come to rest
	airFirst  = 20 * 60  // s in which the air falls and the soil does not: left out
	binned    = 15 * 60  // s, of means for the fit of one step
	leastDay  = 0.9      // of a day that has to be known
	steadyBy  = 1.0      // K by which a steady day may end elsewhere than it began
)

// leastSwing is by how much a thermostat has to swing to be seen, K.
const leastSwing = 0.4

// Cooling is a time in which the enclosure cooled with its heat off.
type Cooling struct {
	From, Until int64
	Start, End  float64 // °C
	Room        float64 // the mean of the room meanwhile; not a number where nobody logged it
	Decay       *Decay  // tau in minutes, towards that room
	Alone       *Free   // the same without a room
	LagTau      float64 // and by the fit of one step, with the room that comes out of it
	LagRoom     float64
}

// coolingOf finds the largest fall of the air and fits it. why says why nothing comes of it.
func coolingOf(air, room *values) (c *Cooling, why string) {
	from, until := largestFall(air)
	if until <= from || air.v[from]-air.v[until] < leastFall {
		return nil, "the air never falls by 8 K in one go. One evening with the heater unplugged and somebody watching, until it has fallen by 8 K and no lower than the animals bear, tells how fast it cools"
	}
	c = &Cooling{From: air.at[from], Until: air.at[until], Start: air.v[from], End: air.v[until], Room: math.NaN()}
	var t, v []float64
	for i := from; i <= until; i++ {
		if air.at[i] >= c.From+airFirst {
			t, v = append(t, float64(air.at[i]-c.From)/60), append(v, air.v[i])
		}
	}
	if f, ok := FreeFit(t, v); ok {
		c.Alone = &f
	}
	if bins := means(air, c.From+airFirst, c.Until); len(bins) > 3 {
		c.LagTau, c.LagRoom = LagOne(bins, binned/60)
	}
	if room == nil {
		if c.Alone == nil {
			return nil, "it was not logged long enough while the air fell, and nobody logged the room"
		}
		return c, ""
	}
	lo, hi, sum, n := math.Inf(1), math.Inf(-1), 0.0, 0
	for i := from; i <= until; i++ {
		if r := room.when(air.at[i]); !math.IsNaN(r) {
			lo, hi, sum, n = min(lo, r), max(hi, r), sum+r, n+1
		}
	}
	switch {
	case n*10 < (until-from+1)*9:
		return c, "the room was not logged while the air fell"
	case hi-lo > 2:
		return c, "the room itself changed by more than 2 K while the air fell"
	}
	c.Room = sum / float64(n)
	d, ok := DecayOf(t, v, c.Room)
	if !ok {
		return c, "the air does not fall towards the room that was logged"
	}
	c.Decay = &d
	if float64(c.Until-c.From)/60 < d.Tau.Value {
		return c, "it was logged for less than one time constant"
	}
	return c, ""
}

// largestFall returns where the largest fall begins and ends.
func largestFall(x *values) (from, until int) {
	best := 0.0
	for i := 0; i < len(x.v); {
		top, low, end := i, i, i
		k := i
		for ; k < len(x.v); k++ {
			if k > i && !x.known(k-1) || low > top && (x.v[k] > x.v[low]+bothWays || x.at[k]-x.at[low] > noLower) {
				break
			}
			if x.v[k] > x.v[top] && low == top {
				top, low = k, k
			}
			if x.v[k] <= x.v[low] {
				low, end = k, k
			}
		}
		if fall := x.v[top] - x.v[end]; fall > best {
			edge := max(0.3, 0.05*fall)
			for j := top; j <= end; j++ { // the last reading at the top
				if x.v[j] >= x.v[top]-edge {
					from = j
				}
			}
			best, until = fall, end
		}
		i = max(k, i+1)
	}
	return from, until
}

// means are those of steps of a quarter of an hour, up to the first that has none.
func means(x *values, from, until int64) (out []float64) {
	sum, n := 0.0, 0
	next := from + binned
	for i := range x.at {
		if x.at[i] < from {
			continue
		}
		for x.at[i] >= next {
			if n == 0 {
				return out
			}
			out = append(out, sum/float64(n))
			sum, n, next = 0, 0, next+binned
		}
		if x.at[i] > until {
			return out
		}
		sum, n = sum+x.v[i], n+1
	}
	return out
}

// Loss is what warms the enclosure by a kelvin above its room, of what its heaters draw: what
// goes out at the back of a heater is in it.
type Loss struct {
	Fit
	Days int
	Duty float64 // the mean of the days
}

// lossOf takes whole, steady days. watt is what the heaters draw while they are on; steered says
// that a thermostat switches them, so that on for how long has to be seen in cycles.
func lossOf(spot, air, room *values, watt float64, steered bool, loc *time.Location) (l *Loss, why string) {
	var heat, above []float64
	duties, part := 0.0, 0.0
	cycles := false
	see := air
	if spot != nil {
		see = spot
	}
	first, last := civil.FromTime(time.Unix(air.at[0], 0).In(loc)), civil.FromTime(time.Unix(air.at[len(air.at)-1], 0).In(loc))
	for on := first; on <= last && on < first+2000; on++ {
		from, until := on.At(0, loc).Unix(), (on+1).At(0, loc).Unix()
		mean, begin, end, ok := airOver(air, room, from, until)
		if !ok || math.Abs(end-begin) > steadyBy {
			continue
		}
		duty := 1.0
		if steered {
			t, v := between(see, from, until)
			d, off, _, ok := Duty(t, v, leastSwing)
			if !ok {
				continue
			}
			duty, part = d, max(part, off/d)
		}
		cycles = true
		heat, above = append(heat, watt*duty), append(above, mean)
		duties += duty
	}
	if steered && !cycles {
		return nil, "no whole, steady day shows the thermostat switch: for that a logger has to lie where it switches, and write each minute or two"
	}
	f, ok := LossOf(heat, above, roomOff, part)
	switch {
	case len(heat) == 0:
		return nil, "no whole day of air and room was logged that ended as it began"
	case !ok:
		return nil, "the air is less than 1 K above the room: too little to tell"
	}
	return &Loss{f, len(heat), duties / float64(len(heat))}, ""
}

func between(x *values, from, until int64) (t, v []float64) {
	for i := range x.at {
		if x.at[i] >= from && x.at[i] < until {
			t, v = append(t, float64(x.at[i]-from)/60), append(v, x.v[i])
		}
	}
	return t, v
}

// airOver is how far the air is above the room over a day, on the mean, and what it was in its
// first and last two hours.
func airOver(air, room *values, from, until int64) (mean, begin, end float64, ok bool) {
	var known, sum, b, e float64
	var nb, ne int
	for i := 0; i+1 < len(air.at); i++ {
		at := air.at[i]
		if at < from || at >= until || !air.known(i) {
			continue
		}
		r := room.when(at)
		if math.IsNaN(r) {
			continue
		}
		dt := float64(air.at[i+1] - at)
		known += dt
		sum += dt * (air.v[i] - r)
		if at < from+2*3600 {
			b, nb = b+air.v[i]-r, nb+1
		}
		if at >= until-2*3600 {
			e, ne = e+air.v[i]-r, ne+1
		}
	}
	if known < leastDay*float64(until-from) || nb == 0 || ne == 0 {
		return 0, 0, 0, false
	}
	return sum / known, b / float64(nb), e / float64(ne), true
}

// Change is how often the air of the enclosure changes, from how vapour leaves after it was
// misted. Wet surfaces give some back; where the room's humidity was logged that comes out of
// where it comes to rest, else Hour is the most that it may be.
type Change struct {
	From, Until int64
	Hour        Fit
	AtMost      bool
}

// changeOf finds the largest fall of vapour and fits it.
func changeOf(heat, damp, roomHeat, roomDamp *values) (c *Change, why string) {
	v := values{gap: damp.gap, loc: damp.loc}
	for i, at := range damp.at {
		t := heat.when(at)
		if math.IsNaN(t) || damp.v[i] > 97 { // fog is no vapour
			continue
		}
		v.at, v.v = append(v.at, at), append(v.v, density(t, damp.v[i]))
	}
	from, until := 0, 0
	best := 0.0
	for i := range v.v { // a fall that is no longer than half a day
		low := i
		for k := i + 1; k < len(v.v) && v.known(k-1) && v.at[k]-v.at[i] <= 12*3600 && v.v[k] <= v.v[low]*1.02; k++ {
			if v.v[k] < v.v[low] {
				low = k
			}
		}
		if fall := v.v[i] - v.v[low]; fall > best {
			best, from, until = fall, i, low
		}
	}
	if until-from < 8 || best < 0.1*v.v[from] {
		return nil, "no fall of humidity after misting stands out, or too few readings were written while it fell"
	}
	var t, y []float64
	for i := from; i <= until; i++ {
		t, y = append(t, float64(v.at[i]-v.at[from])/3600), append(y, v.v[i])
	}
	f, ok := FreeFit(t, y)
	if !ok {
		return nil, "the humidity does not fall as air that is changed does"
	}
	c = &Change{From: v.at[from], Until: v.at[until], Hour: Fit{1 / f.Tau.High, 1 / f.Tau.Value, 1 / f.Tau.Low}, AtMost: true}
	if roomHeat == nil || roomDamp == nil {
		return c, ""
	}
	at := v.at[until]
	th, rh, rd := heat.when(at), roomHeat.when(at), roomDamp.when(at)
	if math.IsNaN(rh) || math.IsNaN(rd) {
		return c, ""
	}
	full, room := density(th, 100), density(rh, rd)
	// n (room - rests) + k (full - rests) = 0 and n + k is what was fitted.
	if share := (full - f.Rests) / (full - room); share > 0 && share < 1 {
		c.AtMost = false
		c.Hour = Fit{c.Hour.Low * share * 0.8, c.Hour.Value * share, min(c.Hour.High, c.Hour.High*share*1.25)}
	}
	return c, ""
}

// density is that of vapour, g/m³.
func density(heat, damp float64) float64 {
	return 1000 * damp / 100 * float64(climate.SaturationPressure(climate.Celsius(heat))) / (461.5 * (heat + 273.15))
}

// Body is what the enclosure is like as a body in its room, by the readings and by the plan.
type Body struct {
	Cooling                     *Cooling
	Loss                        *Loss
	Change                      *Change
	NoCooling, NoLoss, NoChange string // why not, or what is not sure of it

	Expected  *climate.Lump // nil where the plan says too little
	AirChange climate.Band[climate.PerHour]
}

// body fits what the files tell.
func (r *Report) body(o Options) *Body {
	b := &Body{}
	if p, ok := balance.Of(r.Result.Plan, r.plan(), r.Life); ok {
		l := p.Box.Lump()
		b.Expected, b.AirChange = &l, p.Box.Ventilation.AirChange()
	}
	air, room, spot := r.of(measure.Air), r.of(measure.Room), r.of(measure.Spot)
	if air == nil || air.Heat == nil || len(air.heat.at) < 8 {
		no := "the air away from the heater was not logged"
		if air != nil && air.Heat != nil {
			no = "there are too few readings"
		}
		b.NoCooling, b.NoLoss, b.NoChange = no, no, no
		return b
	}
	var beside, warm *values
	if room != nil && room.Heat != nil && len(room.heat.at) > 1 {
		beside = &room.heat
	}
	if spot != nil && spot.Heat != nil && len(spot.heat.at) > 8 {
		warm = &spot.heat
	}
	b.Cooling, b.NoCooling = coolingOf(&air.heat, beside)
	switch heated, steered, timed := r.heated(); {
	case !heated:
		b.NoLoss = "no heater is planned"
	case beside == nil:
		b.NoLoss = "the room was not logged beside it"
	case timed:
		b.NoLoss = "a timer switches the heat, so that no day is steady"
	case o.Watt <= 0:
		b.NoLoss = "nobody said what the heaters draw while they are on: measure it with a power meter, and say --power. What is printed on a heater is off by a tenth and more"
	default:
		b.Loss, b.NoLoss = lossOf(warm, &air.heat, beside, o.Watt, steered, r.Result.Now.Location())
	}
	if air.Damp == nil || len(air.damp.at) < 8 {
		b.NoChange = "the humidity was not logged"
		return b
	}
	var rh, rd *values
	if beside != nil && room.Damp != nil && len(room.damp.at) > 1 {
		rh, rd = beside, &room.damp
	}
	b.Change, b.NoChange = changeOf(&air.heat, &air.damp, rh, rd)
	return b
}

// heated says whether a heater is planned, whether a thermostat switches one, and whether a
// timer does.
func (r *Report) heated() (any, steered, timed bool) {
	if r.plan().Climate == nil {
		return false, false, false
	}
	for _, h := range r.plan().Climate.Heaters {
		if h.Tube() {
			continue
		}
		any = true
		steered = steered || r.Result.Plan.Setting(h).Set()
		timed = timed || h.Hours.Set() && h.Hours.V.Value > 0 && h.Hours.V.Value < 24*60
	}
	return any, steered, timed
}
