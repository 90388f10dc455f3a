package climate

// surface is what gives off water inside: the floor, in its state, and the dish.
type surface struct {
	floor, dish float64 // m²
	moisture    Moisture
	crust       float64 // the deepest that a dry crust can be, in m
}

func (e *Enclosure) surface() surface {
	s := surface{floor: float64(e.Inside.FloorArea()), dish: float64(e.Dish.Surface), moisture: e.Substrate.Moisture, crust: float64(e.Substrate.Depth) / 2}
	if e.Substrate.Depth <= 0 {
		s.floor = 0
	}
	return s
}

// end is which end of what is known of a surface is taken.
type end int

const (
	driest end = iota
	likeliest
	wettest
)

// Parts of open water's evaporation that a surface gives. Damp to the top: stage 2 of
// drying, Hillel, soil physics, from memory. Damp below: how thick the crust is, in m
// (judgement). The dish: how much of it is open water over the week, as its size is not
// asked and it stands empty for days in many a box (judgement).
var (
	dampToTheTop = [3]float64{0.15, 0.3, 0.5}
	dryCrust     = [3]float64{0.05, 0.03, 0.02}
	dishFilled   = [3]float64{0.25, 1, 1.5}
)

// crustFactor returns the part of open water's evaporation that passes a dry crust of
// d m over damp substrate: vapour diffuses through its pores (2.5e-5 m²/s, pores 0.45,
// tortuosity 0.66: Penman 1940, from memory) and then into the air above, by hm in m/s.
func crustFactor(d, hm float64) float64 {
	const diffusivity, tortuosity, pores = 2.5e-5, 0.66, 0.45
	return 1 / (1 + hm*d/(diffusivity*tortuosity*pores))
}

// draws returns the volume of air, in m³/s, that the surfaces would saturate: the floor
// at one end of its state, at times the likely mass transfer.
func (s *surface) draws(floor end, times float64) float64 {
	hm := float64(stillAir) * times
	return hm * (s.floor*s.factor(floor, hm) + s.dish*dishFilled[floor])
}

// factor is how much of open water's evaporation the floor gives: all while it is
// visibly wet, none where it is dry through.
func (s *surface) factor(at end, hm float64) float64 {
	switch s.moisture {
	case Dry:
		return 0
	case MoistBelow:
		return min(crustFactor(min(dryCrust[at], s.crust), hm), dampToTheTop[at]) // no damper than without a crust
	case Moist:
		return dampToTheTop[at]
	}
	return 1
}

// spread is how far apart what they draw may lie.
func (s *surface) spread() (likely float64, out spread) {
	likely = s.draws(likeliest, 1)
	out.add(Evaporation, likely, s.draws(likeliest, evapLow), s.draws(likeliest, evapHigh))
	out.add(SubstrateState, likely, s.draws(driest, 1), s.draws(wettest, 1))
	return likely, out
}
