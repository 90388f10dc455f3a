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

// The parameters that are not known, and how far each goes either way: factors, but for
// the contact, which is a resistance.
const (
	pRating = iota
	pFabric
	pChange
	pFilm
	pContact
	pSoil
	pBelow
	pEdge
	pShare
	pFocus
	pPatch
	pPatchFilm
	pWet
	pSetting
	parameters
)

// lean is how far each parameter lies from its likely value: -1 at its low end, 1 at its
// high one.
type lean [parameters]float64

// named is the input that each parameter is told as.
var named = [parameters]Input{HeaterRating, FabricLoss, AirChange, HotFilm, HeaterContact, SubstrateState,
	BelowFloor, SubstrateState, HeaterShare, HeatFocus, HeatFocus, HeatFocus, Evaporation, ThermostatSetting}

// Factors, low and high. Judgement, but for the film, which a mat hung free gives (5 W on
// 15 x 15 cm, about 32 C by a keeper's thermometer: arachnoboards.com, thread 328236), and
// the conductivity of soils after Farouki 1981, from memory.
var (
	filmFactor  = Band[float64]{0.85, 1, 1.2}
	soilFactor  = Band[float64]{0.6, 1, 1.6}
	belowFactor = Band[float64]{0.7, 1, 1.6}
	edgeFactor  = Band[float64]{0.6, 1, 1} // what deep substrate loses to its sides
)

// at returns what lies at a lean of x in a band, on the log scale where there is one.
func at[T ~float64](b Band[T], x float64) float64 {
	end := float64(b.High)
	if x < 0 {
		end, x = float64(b.Low), -x
	}
	likely := float64(b.Likely)
	switch {
	case x == 0 || end == likely:
		return likely
	case end > 0 && likely > 0:
		if x == 1 {
			return end
		}
		return likely * math.Pow(end/likely, x)
	}
	return max(0, likely+(end-likely)*x)
}

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

// settingError is how far a thermostat may hold another temperature than it is set to, in
// K, with where its probe lies. Judgement. It is asked only where something was measured:
// else a spot is as it is set.
const settingError = 1.5

// driven is what one heater does.
type driven struct {
	duty    float64 // of its power
	inward  float64 // W that go in
	covered float64 // W/K of its face that go by this reckoning and not by the face's own loss
	spot    float64
	floor   float64
}

// share returns the part of its power at which a heater runs if nothing but a probe in the
// air, or nothing at all, switches it.
func (r *reckoning) share(h *Heater, part float64) (duty float64, steered bool) {
	switch {
	case r.c.Stuck:
		return r.rating, false
	case r.c.Part > 0:
		return float64(r.c.Part), false
	case h.Thermostat && h.Probe == InAir:
		return part, false
	}
	return 1, h.Thermostat
}

// radiant is a lamp, an emitter, a panel, or whatever stands inside.
func (r *reckoning) radiant(h *Heater, air, part float64) driven {
	x := &r.x
	power := float64(h.Power) * at(Band[float64]{ratingLow, 1, ratingHigh}, x[pRating])
	share := min(1, at(h.enters(), x[pShare]))
	rise := power * share * at(h.focused(), x[pFocus]) / (at(patch, x[pPatch]) * at(patchFilm, x[pPatchFilm]))
	duty, steered := r.share(h, part)
	if set := r.setting(h); steered && air+rise > set {
		duty = max(0, (set-air)/rise)
	}
	return driven{duty: duty, inward: duty * power * share, spot: air + duty*rise}
}

// stefan is four times the Stefan-Boltzmann constant times the emissivity of nearly all
// surfaces, 0.9.
const stefan = 4 * 0.9 * 5.670374e-8

// Free convection at a face of about 25 cm, c·(ΔT/L)^0.25. McAdams, from memory.
const (
	freeWall = 1.42
	freeUp   = 1.32
	freeDown = 0.59
	freeSize = 0.25 // m
)

// film returns the coefficient between a hot face and what it faces, W/m²K.
func film(face, other, free float64) float64 {
	mid := (face+other)/2 + zeroCelsius
	dT := math.Abs(face - other)
	return stefan*mid*mid*mid + free*math.Sqrt(math.Sqrt(dT/freeSize))
}

// flat is a mat or a cable on a face: one square metre of it, whose heat goes in through
// its face and out through what lies behind.
func (r *reckoning) flat(h *Heater, air, part float64) driven {
	e, x := r.e, &r.x
	f := e.Face(h)
	area := float64(e.Covered(h))
	rated := float64(e.Flux(h)) * at(Band[float64]{ratingLow, 1, ratingHigh}, x[pRating])
	factor := at(filmFactor, x[pFilm])
	room := float64(r.c.Room)
	if e.Covers[f].Warm {
		room = air
	}

	gap := at(contacts[min(int(h.Contact), len(contacts)-1)], x[pContact])
	skin := float64(e.Wall.layer().Resistance())
	soil, free := 0.0, freeWall
	back, still := float64(e.Covers[f].Resistance), 0.0
	switch f {
	case BaseFace:
		under := e.Substrate
		if r.c.Dry {
			under.Moisture = Dry
		}
		soil = float64(under.layer().Resistance()) / at(soilFactor, x[pSoil])
		back, still, free = 0, float64(e.Base.beneath()+e.Covers[f].Resistance)*at(belowFactor, x[pBelow]), freeUp
	case LidFace:
		skin, free = float64(e.Lid.Sheet.layer().Resistance()), freeDown
	}
	// A strip loses heat along its wall to either side.
	peak := 1.0
	if h.Kind == Cable {
		wall := e.Wall.layer()
		strip := CableStrip
		if h.Strip > 0 {
			strip = h.Strip
		}
		peak = 1 - math.Exp(-float64(strip)/2/math.Sqrt(float64(wall.Thickness)*float64(wall.Conductivity)/18))
	}
	outer := func(mat float64) float64 { // W/m² that go out
		if still > 0 {
			return (mat - room) / still
		}
		q, h := 0.0, 9.0*factor
		for range 20 {
			was := q
			if q = (mat - room) / (back + 1/h); math.Abs(q-was) < 1e-2 {
				break
			}
			h = film(mat-q*back, room, freeWall) * factor
		}
		return q
	}
	through := gap + skin + soil
	// From the spot the rest follows without a search.
	from := func(spot float64) (in, mat, needs float64) {
		in = film(spot, air, free) * factor * (spot - air)
		mat = spot + in*through
		return in, mat, in + outer(mat)
	}
	duty, steered := r.share(h, part)
	d := driven{duty: duty, covered: float64(e.loses(f)) / float64(e.Inside.area(f)) * area}
	var spot, in, mat float64
	if steered {
		spot = air + (r.setting(h)-air)/peak
		if h.Probe == OnHeater {
			spot = r.below(r.setting(h), air, free, factor, through)
		}
		var needs float64
		in, mat, needs = from(spot)
		d.duty = min(1, max(0, needs/rated))
	}
	if !steered || d.duty == 0 || d.duty == 1 { // at full power, or off
		spot = r.hottest(rated*d.duty, air, room, free, factor, through, back, still)
		in = film(spot, air, free) * factor * (spot - air)
		mat = spot + in*through
	}
	d.inward = in * area
	d.spot = air + (spot-air)*peak
	if h.Place == Under && e.deepOver(h) {
		d.spot = air + (d.spot-air)*at(edgeFactor, x[pEdge])
	}
	d.floor = mat - in*(gap+skin)
	return d
}

// deepOver reports whether the substrate over a heater beneath is so deep, for its size,
// that heat is lost to its sides.
func (e *Enclosure) deepOver(h *Heater) bool {
	return float64(e.Substrate.Depth) > math.Sqrt(float64(e.Covered(h)))/4
}

// hottest returns the face of a flat heater that gives q W/m², by a few rounds of films.
func (r *reckoning) hottest(q, air, room, free, factor, through, back, still float64) float64 {
	hin, hout := 9.0*factor, 9.0*factor
	spot := air
	for range 20 {
		rin, rout := through+1/hin, back+1/hout
		if still > 0 {
			rout = still
		}
		mat := (q + air/rin + room/rout) / (1/rin + 1/rout)
		in := (mat - air) / rin
		was := spot
		if spot = mat - in*through; math.Abs(spot-was) < 1e-3 {
			break
		}
		hin = film(spot, air, free) * factor
		hout = film(mat-(mat-room)/rout*back, room, freeWall) * factor
	}
	return spot
}

// below returns the face beneath a flat heater that is at mat itself.
func (r *reckoning) below(mat, air, free, factor, through float64) float64 {
	h, spot := 9.0*factor, air
	for range 20 {
		was := spot
		if spot = air + (mat-air)/(through+1/h)/h; math.Abs(spot-was) < 1e-3 {
			break
		}
		h = film(spot, air, free) * factor
	}
	return spot
}

// width gathers how far each parameter takes a result either way.
type width struct{ down, up lean }

func (w *width) add(i int, d, sign float64) {
	if sign < 0 {
		w.down[i] = d
	} else {
		w.up[i] = d
	}
}

// matters returns the input that takes the result farthest.
func (w *width) matters() Input {
	in, worst := NoInput, 0.0
	for i := range w.down {
		if d := max(math.Abs(w.down[i]), math.Abs(w.up[i])); d > worst {
			in, worst = named[i], d
		}
	}
	return in
}

// widened returns the band of a result: each parameter alone, added as the root of the
// sum of squares; or, where measurements say how they go together, by their slopes.
func widened[T ~float64](likely float64, w *width, b *Belief) Band[T] {
	var down, up float64
	if b == nil {
		for i := range w.down {
			for _, d := range [2]float64{w.down[i], w.up[i]} {
				if d < 0 {
					down += d * d
				} else {
					up += d * d
				}
			}
		}
	} else {
		for i := range w.down {
			for j := range w.down {
				down += (w.up[i] - w.down[i]) / 2 * b.left[i][j] * (w.up[j] - w.down[j]) / 2
			}
		}
		up = down
	}
	return Band[T]{T(likely - math.Sqrt(down)), T(likely), T(likely + math.Sqrt(up))}
}
