package climate

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// Reading is what was measured once all had settled.
type Reading struct {
	Conditions
	// Spot and Air are what was measured; not a number where it was not.
	Spot, Air Celsius
}

// What a keeper's thermometer may be off, with where its probe lay. Judgement: cheap
// digital ones are sold with 1 K, and a spot is found by hand.
const (
	spotError = 1.5 // K
	airError  = 1.0 // K
)

// Belief is what measurements leave of what is not known of an enclosure.
type Belief struct {
	mean lean
	left [parameters]lean // how they still go together: the covariance

	// Odd says that what was measured lies far outside of what was to be expected: one of
	// the two is wrong.
	Odd bool
}

// far is how many times the expected distance a measurement lies off to be odd.
const far = 3

// Believe returns what is left unknown once the readings are taken in: the most probable
// parameters, those of the bands being as probable as their width says, and how far they
// may still go. It is nil where nothing was measured. Gauss and Newton's method on the
// sum of squares, which four steps settle.
func (e Enclosure) Believe(heaters []Heater, readings []Reading) *Belief {
	p := e.parts()
	var want, sigma []float64
	type asked struct {
		reading int
		spot    bool
	}
	var asks []asked
	for i := range readings {
		r := &readings[i]
		if x := float64(r.Spot); !math.IsNaN(x) {
			want, sigma, asks = append(want, x), append(sigma, spotError), append(asks, asked{i, true})
		}
		if x := float64(r.Air); !math.IsNaN(x) {
			want, sigma, asks = append(want, x), append(sigma, airError), append(asks, asked{i, false})
		}
	}
	if len(want) == 0 {
		return nil
	}
	model := func(x *lean) []float64 {
		out := make([]float64, len(asks))
		for i, a := range asks {
			c := readings[a.reading].Conditions
			r := reckoning{e: &e, p: &p, heaters: heaters, c: c, rating: 1, x: *x, satRoom: SaturationPressure(c.Room)}
			s := r.settle()
			if out[i] = s.air; a.spot {
				out[i] = s.spot
			}
		}
		return out
	}

	b := &Belief{}
	var normal mat.SymDense
	for step := range 4 {
		is := model(&b.mean)
		slope := mat.NewDense(len(asks), parameters, nil)
		for j := range parameters {
			const h = 0.1
			up, down := b.mean, b.mean
			up[j] += h
			down[j] -= h
			hi, lo := model(&up), model(&down)
			for i := range asks {
				slope.Set(i, j, (hi[i]-lo[i])/(2*h*sigma[i]))
			}
		}
		off := mat.NewVecDense(len(asks), nil)
		for i := range asks {
			off.SetVec(i, (want[i]-is[i])/sigma[i])
			if step == 0 {
				var prior float64 // how far off it was to be expected
				for j := range parameters {
					prior += slope.At(i, j) * slope.At(i, j)
				}
				b.Odd = b.Odd || !(math.Abs(off.AtVec(i)) <= far*math.Sqrt(1+prior))
			}
		}
		normal.Reset()
		normal.SymOuterK(1, slope.T())
		for j := range parameters {
			normal.SetSym(j, j, normal.At(j, j)+1)
		}
		var right mat.VecDense
		right.MulVec(slope.T(), off)
		for j := range parameters {
			right.SetVec(j, right.AtVec(j)-b.mean[j])
		}
		var chol mat.Cholesky
		var move mat.VecDense
		if !chol.Factorize(&normal) || chol.SolveVecTo(&move, &right) != nil {
			return nil
		}
		for j := range parameters {
			b.mean[j] = max(-far, min(far, b.mean[j]+move.AtVec(j)))
		}
	}
	var chol mat.Cholesky
	var left mat.SymDense
	if !chol.Factorize(&normal) || chol.InverseTo(&left) != nil {
		return nil
	}
	for i := range parameters {
		for j := range parameters {
			b.left[i][j] = left.At(i, j)
		}
	}
	return b
}
