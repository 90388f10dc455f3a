package growth

import (
	"math"

	"vivary/compile/climate"
	"vivary/plan"
)

// Moults returns how many moults lead from one length to another, measured alike,
// if each multiplies it by the same factor (Dyar's rule). It is not a number where
// the factor is not above 1 or a length is not above nothing.
func Moults(from, to, factor float64) float64 {
	if !(factor > 1 && from > 0 && to > 0) {
		return math.NaN()
	}
	return math.Log(to/from) / math.Log(factor)
}

// After returns the length after so many moults; a negative number looks back.
func After(length, factor float64, moults int) float64 {
	return length * math.Pow(factor, float64(moults))
}

// MassFactor is by how much the mass grows at a moult at which every length grows
// by the factor.
func MassFactor(factor float64) float64 { return factor * factor * factor }

// Factor is the factor of a species, with where it is from.
type Factor struct {
	climate.Band[float64]
	Figure *plan.Figure // nil where it is that of its kin
	Kin    string       // of whom the factor is, where the sheet has none
}

// kinFactors are those of the animals whose own sheet has none, by metabolic-kin.
//
// Scorpions: Tityus stigmurus 1.14 to 1.38 by part of the body (growth and
// developmental time in T. stigmurus, abstract), Paruroctonus mesaensis 1.38 on
// average (Polis and Farley 1979), Hadrurus gertschi 1.27 (Quijano-Ravell, Ponce-
// Saavedra and Francke 2011), and the cube root of 2, by which a length grows if the
// mass doubles (Przibram's rule, as compared with rearings by Francke and Sissom
// 1984, J. Arachnol. 12:1-20). Spiders: 1.2 to 1.5, from memory.
var kinFactors = map[string]Factor{
	"scorpion":  {Band: climate.Band[float64]{Low: 1.14, Likely: 1.26, High: 1.38}, Kin: "other scorpions (papers)"},
	"tarantula": {Band: climate.Band[float64]{Low: 1.2, Likely: 1.3, High: 1.5}, Kin: "spiders (from memory: verify before you rely on it)"},
}

func (f *figures) growth() (Factor, bool) {
	if g := f.factor; g != nil && g.Range.Low > 1 {
		return Factor{Band: climate.Band[float64]{Low: g.Range.Low, Likely: (g.Range.Low + g.Range.High) / 2, High: g.Range.High}, Figure: g}, true
	}
	k, ok := kinFactors[f.kinWord]
	return k, ok
}

// grow returns a band of lengths after at least and at most so many moults.
func (f Factor) grow(b climate.Band[float64], least, most int) climate.Band[float64] {
	low, high := f.Low, f.High
	if least < 0 { // looking back, the larger factor leads to the smaller animal
		low = f.High
	}
	if most < 0 {
		high = f.Low
	}
	return climate.Band[float64]{Low: After(b.Low, low, least), Likely: b.Likely * math.Pow(f.Likely, float64(least+most)/2), High: After(b.High, high, most)}
}

// cubed is the factor of the mass.
func (f Factor) cubed() Factor {
	f.Low, f.Likely, f.High = MassFactor(f.Low), MassFactor(f.Likely), MassFactor(f.High)
	return f
}
