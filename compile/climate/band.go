package climate

import (
	"math"

	"vivary/schema/quantity"
)

// Band is a value that is not known exactly: Likely, and the ends between which it
// is to be expected. Never print Likely without the ends.
type Band[T ~float64] struct{ Low, Likely, High T }

// Exactly returns the band of a value without uncertainty.
func Exactly[T ~float64](x T) Band[T] { return Band[T]{x, x, x} }

// Verdict says whether something can be held, from the range and not its middle.
type Verdict uint8

// The verdicts, from worst to best; the zero value is no verdict.
const (
	CannotHold Verdict = iota + 1 // even the high end is too little
	MayNotHold                    // what is needed lies within the range
	Holds                         // even the low end is enough
)

func (v Verdict) String() string {
	switch v {
	case CannotHold:
		return "cannot hold"
	case MayNotHold:
		return "may not hold"
	case Holds:
		return "holds"
	}
	return "no verdict"
}

// Reaches returns whether b is at least need. A band that is not a number may not hold.
func (b Band[T]) Reaches(need T) Verdict {
	switch {
	case b.Low >= need:
		return Holds
	case b.High < need:
		return CannotHold
	}
	return MayNotHold
}

// Round returns b as it should be printed.
func (b Band[T]) Round() Band[T] {
	digits := quantity.BandDigits(float64(b.Low), float64(b.High))
	return Band[T]{roundTo(b.Low, digits), roundTo(b.Likely, digits), roundTo(b.High, digits)}
}

func roundTo[T ~float64](x T, digits int) T { return T(quantity.Significant(float64(x), digits)) }

// Input names what an answer depends on, so that a keeper can be told what to measure.
type Input uint8

// The uncertain inputs.
const (
	NoInput           Input = iota
	FabricLoss              // U-values of walls, lid and floor
	AirChange               // air changes per hour
	Evaporation             // how fast wet surfaces give off water
	HeaterShare             // how much of the heat ends up inside
	HeaterContact           // how a flat heater lies on its face
	HotFilm                 // the air film on what is hot
	HeatFocus               // how much of a lamp's heat falls on one place, and how large that is
	ThermostatSetting       // what a thermostat really holds, and where its probe lies
	BelowFloor              // what keeps the heat of a mat beneath from going down
	HeaterRating            // rated against true power
	HeatStore               // heat capacity of all that is inside
	SubstrateState          // how well the substrate exchanges heat, how damp it is
	RoomTemperature         // the room's range
	RoomHumidity            // the room's range
)

var inputNames = [...]string{"nothing", "wall, lid and floor losses", "air changes per hour",
	"evaporation", "share of the heat that goes in", "how closely the heater lies on its wall", "air films on hot surfaces",
	"how a lamp spreads its heat", "what the thermostat really holds", "what is beneath the floor", "true heater power", "heat stored inside",
	"substrate", "room temperature", "room humidity"}

func (i Input) String() string {
	if int(i) >= len(inputNames) {
		i = NoInput
	}
	return inputNames[i]
}

// Factors on what is computed, low and high. Judgement, from the spread of films
// (0.116 to 0.141 m²K/W for panes of 0.2 to 0.45 m), of fill and of evaporation
// methods. Rating: IEC 60335-1 clause 10.1, from memory.
const (
	fabricLow, fabricHigh   = 0.8, 1.25
	storeLow, storeHigh     = 0.7, 1.3
	evapLow, evapHigh       = 0.5, 1.8
	ratingLow, ratingHigh   = 0.9, 1.1
	contactLow, contactHigh = 0.5, 2.0 // between air and substrate
)

// spread gathers deviations of one result, input by input, and adds them as the
// root of the sum of squares on the log scale.
type spread struct {
	down, up float64 // sums of squares
	worst    float64
	matters  Input
	most     float64 // largest result, for a likely one of 0, where logarithms end
}

// add takes the results with one input at either end, all others likely. Which
// end gives the lower result does not matter.
func (s *spread) add(in Input, likely, a, b float64) {
	if likely == 0 {
		s.most = max(s.most, a, b)
		return
	}
	s.one(in, likely, a)
	s.one(in, likely, b)
}

func (s *spread) one(in Input, likely, x float64) {
	if x == likely { // also keeps an infinite result from becoming NaN
		return
	}
	s.log(in, math.Log(x/likely))
}

// addFactors takes the logarithms of the factors by which one input moves the result.
func (s *spread) addFactors(in Input, a, b float64) {
	s.log(in, a)
	s.log(in, b)
}

func (s *spread) log(in Input, d float64) {
	sq := d * d
	if d < 0 {
		s.down += sq
	} else {
		s.up += sq
	}
	if sq > s.worst {
		s.worst, s.matters = sq, in
	}
}

// over returns the spread of a result with spread s divided by one with spread t.
func (s spread) over(t spread) spread {
	r := spread{down: s.down + t.up, up: s.up + t.down, worst: s.worst, matters: s.matters}
	if t.worst > r.worst {
		r.worst, r.matters = t.worst, t.matters
	}
	return r
}

func bandOf[T ~float64](likely float64, s spread) Band[T] {
	if likely == 0 {
		return Band[T]{High: T(s.most)}
	}
	if math.IsInf(likely, 0) {
		return Exactly(T(likely))
	}
	return Band[T]{T(likely * math.Exp(-math.Sqrt(s.down))), T(likely), T(likely * math.Exp(math.Sqrt(s.up)))}
}
