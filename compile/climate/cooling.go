package climate

import "math"

// SheetHeatCapacity returns the heat stored by a sheet for each kelvin.
func SheetHeatCapacity(a SquareMetre, thickness Metre, density KilogramPerCubicMetre, heat JoulePerKilogramKelvin) JoulePerKelvin {
	return JoulePerKelvin(float64(a) * float64(thickness) * float64(density) * float64(heat))
}

// SubstrateVolumeHeat returns the heat stored by a cubic metre of substrate from
// the parts of its volume that are mineral, organic and water. De Vries 1963,
// Physics of Plant Environment, ch. 7 (coefficients from memory).
func SubstrateVolumeHeat(mineral, organic, water Share) JoulePerCubicMetreKelvin {
	return JoulePerCubicMetreKelvin(1.92e6*mineral + 2.51e6*organic + 4.18e6*water)
}

// LayerHeatCapacity returns the heat stored by a layer of substrate for each kelvin.
func LayerHeatCapacity(c JoulePerCubicMetreKelvin, a SquareMetre, depth Metre) JoulePerKelvin {
	return JoulePerKelvin(float64(c) * float64(a) * float64(depth))
}

const (
	waterVolumeHeat JoulePerCubicMetreKelvin = 4.18e6 // IAPWS-95 at 25 °C
	airVolumeHeat   JoulePerCubicMetreKelvin = 1206   // AirDensity · AirHeat
)

// TimeConstant returns the one-lump time constant C/UA. One lump holds only where
// h·d/λ is below 0.1 (Incropera, sec. 5.2); a substrate has over 1, so that what
// follows from it is an upper bound on how long the air keeps warm.
func TimeConstant(c JoulePerKelvin, loss WattPerKelvin) Second {
	return Second(float64(c) / float64(loss))
}

// TimeToTemperature returns when one lump has fallen to limit in a constant room:
// 0 if it starts there, +Inf if the room is no colder than the limit.
func TimeToTemperature(tau Second, start, room, limit Celsius) Second {
	switch {
	case start <= limit:
		return 0
	case limit <= room:
		return Second(math.Inf(1))
	}
	return tau * Second(math.Log(float64((start-room)/(limit-room))))
}

// TwoNode is the enclosure as two bodies: the air with the dish and half of the
// walls and lid, and the substrate with the floor. How the glass is split and how
// well both are coupled is a modelling choice, and is why its answers are bands.
type TwoNode struct {
	Air, Substrate  JoulePerKelvin // heat stored by each
	AirToRoom       WattPerKelvin
	AirToSubstrate  WattPerKelvin
	SubstrateToRoom WattPerKelvin
}

// SubstrateAtRest returns the substrate's temperature while heaters hold the air
// at air, below being the part of their heat that enters through the substrate.
func (m TwoNode) SubstrateAtRest(air, room Celsius, below Share) Celsius {
	g1, g12, g2, f := float64(m.AirToRoom), float64(m.AirToSubstrate), float64(m.SubstrateToRoom), float64(below)
	return room + (air-room)*Celsius((g12+f*g1)/(g12+g2*(1-f)))
}

// RoomCourse is how the room cools once its own heating is off too. The zero value
// is a room that stays as it is.
type RoomCourse struct {
	Outside      Celsius
	TimeConstant Hour // 0 for a constant room
}

// DwellingTimeConstant is a pessimistic time constant of a home: light timber 10 to
// 30 h, brick and concrete 40 to 150 h. EN ISO 13790 classes, from memory.
const DwellingTimeConstant Hour = 24

// Course is the fall of both bodies as sums of three exponentials above a floor.
type Course struct {
	floor    Celsius
	rate     [3]float64 // 1/s, of the room and of the two modes
	air, sub [3]float64 // K
}

// Fall returns the course of both bodies from the given start without any heat,
// in a room at room that stays so or cools. A room that would warm stays so.
// The closed form needs both couplings to be more than nothing.
func (m TwoNode) Fall(air, substrate, room Celsius, cooling RoomCourse) Course {
	a := -float64(m.AirToRoom+m.AirToSubstrate) / float64(m.Air)
	b := float64(m.AirToSubstrate) / float64(m.Air)
	c := float64(m.AirToSubstrate) / float64(m.Substrate)
	d := -float64(m.AirToSubstrate+m.SubstrateToRoom) / float64(m.Substrate)
	half, det := (a+d)/2, a*d-b*c
	root := math.Sqrt((a-d)*(a-d)/4 + b*c) // positive: the modes are distinct
	fast := half - root
	slow := det / fast // not half+root, which cancels

	f := Course{floor: room, rate: [3]float64{0, -slow, -fast}}
	if cooling.TimeConstant > 0 && cooling.Outside < room {
		r := 1 / (3600 * float64(cooling.TimeConstant))
		for _, mode := range f.rate[1:] {
			if math.Abs(r-mode) < 1e-4*mode {
				r *= 1.001 // resonance: the formula is 0/0
			}
		}
		f.floor, f.rate[0] = cooling.Outside, r
		// The part that follows the room: p·e^(-rt) with (A + r)p = -g·(room - outside).
		g1, g2 := -float64(m.AirToRoom)/float64(m.Air), -float64(m.SubstrateToRoom)/float64(m.Substrate)
		fall := float64(room-cooling.Outside) / ((a+r)*(d+r) - b*c)
		f.air[0] = fall * ((d+r)*g1 - b*g2)
		f.sub[0] = fall * ((a+r)*g2 - c*g1)
	}
	x, y := float64(air-f.floor)-f.air[0], float64(substrate-f.floor)-f.sub[0]
	x1, y1 := a*x+b*y, c*x+d*y
	f.air[1], f.air[2] = (x1-fast*x)/(slow-fast), (slow*x-x1)/(slow-fast)
	f.sub[1], f.sub[2] = (y1-fast*y)/(slow-fast), (slow*y-y1)/(slow-fast)
	return f
}

// At returns both temperatures after a time.
func (f Course) At(after Second) (air, substrate Celsius) {
	for i, r := range f.rate {
		e := math.Exp(-r * float64(after))
		air += Celsius(f.air[i] * e)
		substrate += Celsius(f.sub[i] * e)
	}
	return f.floor + air, f.floor + substrate
}

// AirReaches returns when the air has fallen to limit, as [TimeToTemperature] does.
func (f *Course) AirReaches(limit Celsius) Second { return f.reaches(&f.air, limit, 0, 1e-4) }

// SubstrateReaches returns when the substrate has fallen to limit.
func (f *Course) SubstrateReaches(limit Celsius) Second { return f.reaches(&f.sub, limit, 0, 1e-4) }

// reaches finds where the sum of exponentials c falls to limit. Newton on the
// logarithm of the sum, which is nearly straight, kept within a bracket. It ends
// after a step of the given relative size; the error left is about its square.
func (f *Course) reaches(c *[3]float64, limit Celsius, guess Second, size float64) Second {
	want := float64(limit - f.floor)
	switch {
	case !(c[0]+c[1]+c[2] > want):
		return 0
	case want <= 0:
		return Second(math.Inf(1))
	}
	slowest, most := f.rate[1], math.Abs(c[1])+math.Abs(c[2])
	if c[0] != 0 {
		slowest, most = min(slowest, f.rate[0]), most+math.Abs(c[0])
	}
	lo, hi := 0.0, math.Inf(1)
	t := float64(guess)
	for range 60 {
		var s, fall float64
		for i := range 3 {
			if c[i] != 0 {
				e := c[i] * math.Exp(-f.rate[i]*t)
				s, fall = s+e, fall+f.rate[i]*e
			}
		}
		if s > want {
			lo = t
		} else {
			hi = t
		}
		next := t + s*math.Log(s/want)/fall
		if math.Abs(next-t) < size*t {
			return Second(next)
		}
		if !(next >= lo && next <= hi) {
			hi = min(hi, math.Log(most/want)/slowest)
			next = (lo + hi) / 2
		}
		t = next
	}
	return Second(t)
}

// Cooldown is what happens after the heat fails: a power cut, or a breaker that
// trips overnight. Print both bands: the air falls much sooner than the substrate.
type Cooldown struct {
	Start, Limit, Room Celsius
	SubstrateStart     Celsius      // no warmer than the air is counted on
	Air, Substrate     Band[Minute] // until each has fallen to Limit; +Inf for never
	Matters            Input        // what widens Air most
	OneLump            Minute       // upper bound on the air in a room that stays as it is; never to be shown alone
	Course             Course       // the likely one
}

// Point is one sample of a cooling curve.
type Point struct {
	After          Minute
	Air, Substrate Celsius
}

// AppendCurve appends n samples of the likely course from 0 to span.
func (c Cooldown) AppendCurve(to []Point, span Minute, n int) []Point {
	for i := range n {
		p := Point{After: span * Minute(i) / Minute(max(1, n-1))}
		p.Air, p.Substrate = c.Course.At(Second(p.After * 60))
		to = append(to, p)
	}
	return to
}

// What heat stored (0.7 to 1.3) and losses (0.8 to 1.2) together do to the time
// scale, each added as root-sum-of-squares on the log scale.
var (
	lnQuicker = -math.Hypot(math.Log(storeLow), math.Log(fabricHigh))
	lnSlower  = math.Hypot(math.Log(storeHigh), math.Log(fabricLow))
	quicker   = math.Exp(lnQuicker)
	slower    = math.Exp(lnSlower)
)

// PowerCut returns how long air and substrate stay above limit when everything
// turns off while the air is at start, in the coldest room. What part of the heat came
// from below matters for where the stored heat sits: a mat beneath has warmed the
// substrate first.
func (e Enclosure) PowerCut(start, limit Celsius, below Share, cooling RoomCourse) Cooldown {
	p := e.parts()
	room := e.Room.Low
	c := Cooldown{Start: start, Limit: limit, Room: room}
	likely := e.twoNode(&p)
	vents := p.vents(p.change.Likely)
	fall := func(n PerHour, contact, store float64) (Course, Celsius) {
		m := likely
		m.AirToRoom += p.vents(n) - vents
		m.AirToSubstrate *= WattPerKelvin(contact)
		m.Air *= JoulePerKelvin(store)
		m.Substrate *= JoulePerKelvin(store)
		sub := min(start, m.SubstrateAtRest(start, room, below))
		return m.Fall(start, sub, room, cooling), sub
	}
	c.Course, c.SubstrateStart = fall(p.change.Likely, 1, 1)
	air, sub := c.Course.AirReaches(limit), c.Course.SubstrateReaches(limit)

	var airSpread, subSpread spread
	times := func(n PerHour, contact, store float64) (a, s float64) {
		f, _ := fall(n, contact, store)
		return float64(f.reaches(&f.air, limit, air, 0.05)), float64(f.reaches(&f.sub, limit, sub, 0.05))
	}
	add := func(in Input, a1, s1, a2, s2 float64) {
		airSpread.add(in, float64(air), a1, a2)
		subSpread.add(in, float64(sub), s1, s2)
	}
	if !math.IsInf(float64(air), 1) {
		n := p.change
		var a1, s1, a2, s2 float64
		if c.Course.rate[0] > 0 { // a cooling room keeps its own time scale
			a1, s1 = times(n.Likely, 1, quicker)
			a2, s2 = times(n.Likely, 1, slower)
			add(HeatStore, a1, s1, a2, s2)
		} else {
			airSpread.addFactors(HeatStore, lnQuicker, lnSlower)
			subSpread.addFactors(HeatStore, lnQuicker, lnSlower)
		}
		a1, s1 = times(n.Likely, contactLow, 1)
		a2, s2 = times(n.Likely, contactHigh, 1)
		add(SubstrateState, a1, s1, a2, s2)
		a1, s1 = times(n.Low, 1, 1)
		a2, s2 = times(n.High, 1, 1)
		add(AirChange, a1, s1, a2, s2)
	}
	c.Air = bandOf[Minute](float64(air.Minute()), airSpread)
	c.Substrate = bandOf[Minute](float64(sub.Minute()), subSpread)
	c.Matters = airSpread.matters

	loss := WattPerKelvin(p.fabric()) + vents
	c.OneLump = TimeToTemperature(TimeConstant(e.heatStore(&p, likely), loss), start, room, limit).Minute()
	return c
}

// heatStore returns all heat stored, each pane in full though it is only half as
// warm as the air.
func (e *Enclosure) heatStore(p *parts, m TwoNode) JoulePerKelvin {
	return m.Air + m.Substrate + e.Wall.heatCapacity(p.wallArea)/2 + e.Lid.heatCapacity(p.topArea)/2
}

// twoNode returns the enclosure as two bodies, all inputs likely.
func (e *Enclosure) twoNode(p *parts) TwoNode {
	half := e.Substrate.layer().Resistance() / 2
	top := float64(p.topArea)
	return TwoNode{
		Air: JoulePerKelvin(airVolumeHeat)*JoulePerKelvin(p.volume) +
			JoulePerKelvin(waterVolumeHeat)*JoulePerKelvin(e.Dish.Volume.CubicMetre()) +
			e.Wall.heatCapacity(p.wallArea)/2 + e.Lid.heatCapacity(p.topArea)/2,
		Substrate:       e.Substrate.heatCapacity(p.topArea) + e.Wall.heatCapacity(p.topArea),
		AirToRoom:       p.walls + p.lid + p.vents(p.change.Likely),
		AirToSubstrate:  WattPerKelvin(top / float64(FilmUp+half)),
		SubstrateToRoom: WattPerKelvin(top / float64(half+e.Wall.layer().Resistance()+e.Base.resistance()+e.Covers[BaseFace].Resistance+FilmDown)),
	}
}
