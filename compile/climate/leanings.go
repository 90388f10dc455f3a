package climate

import "math"

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
