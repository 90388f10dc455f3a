package climate

import "math"

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
