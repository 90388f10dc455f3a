package stock

import "math"

// What the plan does not know is ordered so that it is enough with a stated chance.

// Quantile returns the number of standard deviations above the mean below which a normal
// quantity lies with that chance.
func Quantile(chance float64) float64 { return math.Sqrt2 * math.Erfinv(2*chance-1) }

// Enough returns how many are enough with a chance, of a quantity with that mean and standard
// deviation.
func Enough(mean, deviation, chance float64) float64 { return mean + deviation*Quantile(chance) }

// few is from how many on a use is taken as normal; below it as Poisson's.
const few = 20

// UpTo is up to how many are ordered where a use is known by its mean on a day and its
// standard deviation alone, and is looked at every so many days: enough with a chance until
// what is ordered at the next look is here. Where there are few, and nothing is known of how
// they vary, it is the least number with which that chance is reached for a Poisson quantity.
func UpTo(daily, deviation float64, every, lead int, chance float64) float64 {
	days := float64(every + lead)
	mean := daily * days
	if deviation == 0 && mean < few {
		return float64(Poisson(mean, chance))
	}
	if deviation == 0 {
		return Enough(mean, math.Sqrt(mean), chance)
	}
	return Enough(mean, deviation*math.Sqrt(days), chance)
}

// Poisson returns the least number that is not exceeded with a chance, of a Poisson quantity.
func Poisson(mean, chance float64) int {
	p := math.Exp(-mean)
	sum, n := p, 0
	for sum < chance && n < 10*few {
		n++
		p *= mean / float64(n)
		sum += p
	}
	return n
}

// Covered is the chance that leaves the least cost where one too few costs under, and one too
// many costs over.
func Covered(under, over float64) float64 { return under / (under + over) }
