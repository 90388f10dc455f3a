package climate

// Place is where a heater is.
type Place uint8

// The places.
const (
	Side Place = iota
	Back
	Under
	Above
	Inside
)

// HeaterKind is what a heater is.
type HeaterKind uint8

// The kinds of heater.
const (
	Mat HeaterKind = iota
	Cable
	Lamp
	Ceramic // emitter without light
	Panel   // radiant panel below the lid
)

// Probe is where the probe of a thermostat is.
type Probe uint8

// The places of a probe.
const (
	AtSpot   Probe = iota // on the warmest surface that the animals can reach
	OnHeater              // on the mat or cable itself
	InAir                 // in the air, or at the far end
)

// Contact is how a flat heater lies on its face.
type Contact uint8

// The contacts.
const (
	ContactUnknown Contact = iota
	FullContact            // stuck flat on it
	LooseContact           // leaning, or taped at its edges
	GapContact             // with air between, as in a rack
)

// The resistance between a flat heater and its face. Judgement; the air gap of a rack
// after the resistance of still air layers of 1 to 20 mm in ISO 6946, from memory.
var contacts = [...]Band[SquareMetreKelvinPerWatt]{
	ContactUnknown: {0, 0.005, 0.03},
	FullContact:    {0, 0.002, 0.01},
	LooseContact:   {0.005, 0.015, 0.04},
	GapContact:     {0.01, 0.05, 0.12},
}

// Heater is one electric heater.
type Heater struct {
	Power       Watt
	Place       Place
	Kind        HeaterKind
	HoursPerDay Hour // 0 for all day

	// Area is how much of its face a flat heater covers; 0 where it is not known, and
	// then it is what its power takes at UsualFlux.
	Area    SquareMetre
	Strip   Metre // how wide a cable or tape is; 0 for CableStrip
	Contact Contact

	// Thermostat says that one switches it, at Setting by its Probe; without one it runs
	// at full power for its hours.
	Thermostat bool
	Setting    Celsius
	Probe      Probe
}

// UsualFlux is the power of a square metre of mat as they are sold: eight makes have 137
// to 230 W/m², which makers' and keepers' pages give by size and power.
const UsualFlux WattPerSquareMetre = 200

// CableStrip is the width that one run of heating cable warms, and CablePower what a metre
// of it gives: cables of 15 W are 1.5 m long, of 25 W 2.5 m (aussiepythons.com, thread
// 227053); the width is judgement.
const (
	CableStrip Metre = 0.03
	CablePower Watt  = 10 // for each metre
)

// flat reports whether it lies on a face, so that its heat goes both ways.
func (h *Heater) flat() bool { return h.Place != Inside && (h.Kind == Mat || h.Kind == Cable) }

// Face returns the face that a flat heater lies on: of the two sides the one that is
// covered more, since it is hotter there.
func (e *Enclosure) Face(h *Heater) Face {
	switch h.Place {
	case Back:
		return BackFace
	case Under:
		return BaseFace
	case Above:
		return LidFace
	}
	if e.Covers[RightFace].Resistance > e.Covers[LeftFace].Resistance {
		return RightFace
	}
	return LeftFace
}

// leastFace is the area below which a face is one of several that lie against one heater,
// in m². Judgement.
const leastFace SquareMetre = 0.03

// size returns how large a flat heater is: as said, else as its power takes, and then no
// larger than its face: what is said to be on a wall fits on it.
func (e *Enclosure) size(h *Heater) SquareMetre {
	if h.Area > 0 {
		return h.Area
	}
	a := SquareMetre(float64(h.Power) / float64(UsualFlux))
	if h.Kind == Cable {
		a = SquareMetre(h.Power/CablePower) * SquareMetre(CableStrip)
	}
	if face := e.Inside.area(e.Face(h)); face > leastFace {
		a = min(a, face)
	}
	return a
}

// Covered returns how much of its face a flat heater covers. What reaches beyond warms the
// room.
func (e *Enclosure) Covered(h *Heater) SquareMetre { return min(e.size(h), e.Inside.area(e.Face(h))) }

// Flux returns the power of a square metre of a flat heater.
func (e *Enclosure) Flux(h *Heater) WattPerSquareMetre {
	return WattPerSquareMetre(float64(h.Power) / float64(e.size(h)))
}

// dayShare returns the part of the day in which it may be on.
func (h *Heater) dayShare() Share {
	if h.HoursPerDay <= 0 || h.HoursPerDay >= 24 {
		return 1
	}
	return Share(h.HoursPerDay / 24)
}

// Shares of what radiates that enter. Nobody has measured one: part of a lamp's heat
// leaves by its reflector, half of a ceramic emitter's by the air that rises from it, a
// panel below the lid loses little. Judgement.
var (
	shareLamp    = Band[Share]{0.2, 0.4, 0.65}
	shareCeramic = Band[Share]{0.15, 0.28, 0.45}
	sharePanel   = Band[Share]{0.5, 0.7, 0.9}
	shareWhole   = Exactly[Share](1)
)

// enters returns the part of the heat of a heater that is not flat which comes inside.
func (h *Heater) enters() Band[Share] {
	switch {
	case h.Place == Inside:
		return shareWhole
	case h.Kind == Panel:
		return sharePanel
	case h.Kind == Ceramic:
		return shareCeramic
	}
	return shareLamp
}

// focused returns the part of what enters from a heater that is not flat which falls on
// the place beneath it, for a dry surface. Judgement: a lamp's cone, an emitter without a
// reflector, a panel, and what stands inside and warms the air.
func (h *Heater) focused() Band[Share] {
	switch h.Kind {
	case Lamp:
		return Band[Share]{0.3, 0.5, 0.7}
	case Ceramic:
		return Band[Share]{0.2, 0.3, 0.45}
	case Panel:
		return Band[Share]{0.05, 0.1, 0.2}
	}
	return Band[Share]{0.1, 0.3, 0.5}
}

// The place beneath a lamp 20 to 30 cm away, and the film on it with the air that it
// stirs. Judgement.
var (
	patch     = Band[SquareMetre]{0.03, 0.045, 0.07}
	patchFilm = Band[WattPerSquareMetreKelvin]{10, 13, 18}
)
