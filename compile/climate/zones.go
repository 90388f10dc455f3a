package climate

import "math"

// Zones is what an enclosure comes to once everything has settled. An enclosure has no one
// temperature: there is a warm spot at the heater, and the air of the rest, which is near
// that of the room. The first is decided by the power of a square metre of the heater and
// by what lies behind it, the second by all watts together.
type Zones struct {
	// Air is the air as a whole, away from the heater: what keepers call the cool end.
	Air Band[Celsius]
	// Spot is the warmest surface that an animal can lie on: what keepers call the warm
	// end. Where nothing heats it is the air.
	Spot Band[Celsius]
	// Ground is the warmest surface that an animal on the floor can lie on: a mat on a wall,
	// or on the lid, warms none. Where nothing warms the ground it is the air.
	Ground Band[Celsius]
	// Floor is the glass beneath the substrate over the hottest heater beneath; not a
	// number where there is none.
	Floor Band[Celsius]

	Warmest int         // the heater that makes the spot; -1 for none
	Duty    Band[Share] // the part of the time that heaters with a thermostat are on
	Draw    Band[Watt]  // what all heaters draw on average while they may be on
	Below   Share       // the part of what goes in that comes from beneath the floor, likely
	Matters Input       // what widens the spot most, or the air where that is known less
}

// Conditions are what the zones are asked for.
type Conditions struct {
	Room  Celsius
	Stuck bool  // no thermostat switches off, and the mains give a tenth more
	Dark  bool  // heaters on a timer are off
	Brief bool  // heaters that are on for less than WarmHours a day are off
	Dry   bool  // the substrate over a heater beneath has dried out
	Part  Share // all heaters at this part of their power, thermostats aside; 0 for not
}

// WarmHours is how many hours of a day a place must be warm to count as one. Judgement: a
// gecko that finds its warmth for eight hours digests.
const WarmHours Hour = 8

// settled is what one choice of the parameters comes to.
type settled struct {
	air, spot, floor float64
	ground           float64
	warmest          int
	draw, steered    float64 // W
	rated            float64 // of those with a thermostat, W
	inward, below    float64 // W that go in, and what of it from beneath
}

func (s *settled) duty() float64 {
	if s.rated <= 0 {
		return 0
	}
	return s.steered / s.rated
}

// reckoning is one question to an enclosure.
type reckoning struct {
	e       *Enclosure
	p       *parts
	heaters []Heater
	c       Conditions
	x       lean
	rating  float64 // of stuck heaters, the mains being high
	start   float64 // where the air may be; 0 for not known
	satRoom Pascal
}

// Zones returns what the enclosure comes to under the given conditions, as far as is
// known, or as far as b knows it.
func (e Enclosure) Zones(heaters []Heater, c Conditions, b *Belief) Zones {
	p := e.parts()
	r := reckoning{e: &e, p: &p, heaters: heaters, c: c, rating: 1}
	if c.Stuck {
		r.rating = ratingHigh
	}
	if b != nil {
		r.x = b.mean
	}
	r.satRoom = SaturationPressure(c.Room)
	likely := r.settle()
	r.start = likely.air
	z := Zones{Warmest: likely.warmest}
	if likely.below > 0 && likely.inward > 0 {
		z.Below = Share(min(1, likely.below/likely.inward))
	}
	var air, spot, ground, floor, duty, draw width
	matters := r.asks()
	matters[pSetting] = b != nil
	for i := range matters {
		if !matters[i] {
			continue
		}
		for _, sign := range [2]float64{-1, 1} {
			q := r
			q.x[i] += sign
			s := q.settle()
			air.add(i, s.air-likely.air, sign)
			spot.add(i, s.spot-likely.spot, sign)
			ground.add(i, s.ground-likely.ground, sign)
			floor.add(i, s.floor-likely.floor, sign)
			duty.add(i, s.duty()-likely.duty(), sign)
			draw.add(i, s.draw-likely.draw, sign)
		}
	}
	z.Air = widened[Celsius](likely.air, &air, b)
	z.Spot = widened[Celsius](likely.spot, &spot, b)
	z.Ground = widened[Celsius](likely.ground, &ground, b)
	z.Floor = widened[Celsius](likely.floor, &floor, b)
	z.Duty = widened[Share](likely.duty(), &duty, b)
	z.Duty.Low, z.Duty.High = max(0, z.Duty.Low), min(1, z.Duty.High)
	z.Draw = widened[Watt](likely.draw, &draw, b)
	z.Draw.Low = max(0, z.Draw.Low)
	z.Matters = spot.matters()
	if z.Warmest < 0 || z.Spot.High-z.Spot.Low < z.Air.High-z.Air.Low {
		z.Matters = air.matters() // a thermostat holds the spot, whatever it takes
	}
	return z
}

// asks returns the parameters on which the answer depends.
func (r *reckoning) asks() (out [parameters]bool) {
	out[pFabric], out[pChange] = true, true
	out[pWet] = !r.c.Dry
	for i := range r.heaters {
		h := &r.heaters[i]
		out[pRating] = out[pRating] || !r.c.Stuck
		switch {
		case h.flat():
			out[pFilm], out[pContact] = true, true
			if h.Place == Under {
				out[pSoil], out[pBelow], out[pEdge] = true, true, r.e.deepOver(h)
			}
		default:
			out[pFocus], out[pPatch], out[pPatchFilm] = true, true, true
			out[pShare] = out[pShare] || h.Place != Inside
		}
	}
	return out
}

// settle finds the air at which what goes in is what is lost.
func (r *reckoning) settle() settled {
	if r.c.Part <= 0 && !r.c.Stuck {
		for i := range r.heaters {
			if h := &r.heaters[i]; h.Thermostat && h.Probe == InAir && r.on(h) {
				return r.settleByAir(r.setting(h))
			}
		}
	}
	return r.settleAt(1)
}

// settleByAir finds the part of its power at which a heater whose probe hangs in the air
// holds that air.
func (r *reckoning) settleByAir(set float64) settled {
	s := r.settleAt(1)
	if s.air <= set {
		return s
	}
	low, high := 0.0, 1.0
	for range 30 {
		mid := (low + high) / 2
		if s = r.settleAt(mid); s.air > set {
			high = mid
		} else {
			low = mid
		}
	}
	return s
}

// settleAt settles with those heaters whose probe hangs in the air at a part of their power.
func (r *reckoning) settleAt(part float64) settled {
	// The rise that follows from an air falls as that air rises, nearly straight: the
	// secant meets it in three or four steps.
	room := float64(r.c.Room)
	t0 := room
	if r.start != 0 {
		t0 = r.start
	}
	s, rise := r.given(t0, part)
	f0 := room + rise - t0
	t1 := t0 + 0.8*f0
	for range 40 {
		s, rise = r.given(t1, part)
		f1 := room + rise - t1
		if math.Abs(f1) < 1e-3 || f1 == f0 || math.IsNaN(f1) {
			t1 += f1 * 0.8
			break
		}
		t0, f0, t1 = t1, f1, t1-f1*(t1-t0)/(f1-f0)
	}
	s.air = t1
	if s.warmest < 0 {
		s.spot = t1
	}
	s.spot, s.ground = max(s.spot, t1), max(s.ground, t1)
	return s
}

// given returns what all heaters do in air of a temperature, and the rise above the room
// that this would keep up.
func (r *reckoning) given(air, part float64) (s settled, rise float64) {
	p, x := r.p, &r.x
	s = settled{air: air, spot: math.Inf(-1), ground: math.Inf(-1), floor: math.NaN(), warmest: -1}
	fabric := at(Band[float64]{fabricLow, 1, fabricHigh}, x[pFabric])
	n := at(p.change, x[pChange])
	loss := p.fabric()*fabric + float64(p.vents(PerHour(n)))
	inward, covered := 0.0, 0.0
	for i := range r.heaters {
		h := &r.heaters[i]
		if !r.on(h) {
			continue
		}
		var d driven
		if h.flat() {
			d = r.flat(h, air, part)
			covered += d.covered * fabric
		} else {
			d = r.radiant(h, air, part)
		}
		inward += d.inward
		s.draw += d.duty * float64(h.Power)
		if h.Thermostat {
			s.steered += d.duty * float64(h.Power)
			s.rated += float64(h.Power)
		}
		if d.spot > s.spot && d.duty > 0 {
			s.spot, s.warmest = d.spot, i
		}
		if d.duty > 0 && (!h.flat() || h.Place == Under) {
			s.ground = max(s.ground, d.spot)
		}
		if h.flat() && h.Place == Under {
			s.below += d.inward
			if !(d.floor < s.floor) {
				s.floor = d.floor
			}
		}
	}
	s.inward = inward
	if !r.c.Dry {
		v := r.e.vapour(p, Celsius(air), SaturationPressure(Celsius(air)), r.satRoom)
		inward -= float64(v.latent(PerHour(n), at(Band[float64]{evapLow, 1, evapHigh}, x[pWet])))
	}
	return s, inward / max(loss-covered, loss/100)
}

func (r *reckoning) on(h *Heater) bool {
	if r.c.Brief && h.dayShare() < Share(WarmHours/24) {
		return false
	}
	return !r.c.Dark || h.dayShare() == 1
}

// setting returns what a thermostat really holds.
func (r *reckoning) setting(h *Heater) float64 {
	return float64(h.Setting) + settingError*r.x[pSetting]
}
