package food

import "math"

// Joule per millilitre of oxygen, for a mixed diet (textbooks; from memory).
const joulePerMl = 20.1

// ScorpionOxygen returns the oxygen that a resting scorpion takes up, in µl/h, for a
// mass in g at a temperature in °C: 5.07 · M^0.92 · 10^(0.037·T), measured on Urodacus
// armatus from 20 to 30 °C (Withers and Smith 1993, J. therm. Biol. 18:13-18). The
// exponent is the pooled one of the abstract; the line itself has 0.91.
func ScorpionOxygen(mass, temperature float64) float64 {
	return 5.07 * math.Pow(mass, 0.92) * math.Pow(10, 0.037*temperature)
}

// ScorpionRest is ScorpionOxygen as power, in µW.
func ScorpionRest(mass, temperature float64) float64 {
	return ScorpionOxygen(mass, temperature) / 1000 * joulePerMl / 3600 * 1e6
}

// Of the tarantula measured: 1,524 µW at 7.32 g and 25 °C, mean of 32 resting Euathlus
// truculentus (Nespolo and others 2011, Comp. Biochem. Physiol. A 159:379-382).
const tarantulaPower, tarantulaMass, tarantulaAt = 1524, 7.32, 25

// Exponent of the mass, activation energy in eV and Boltzmann's constant in eV/K, of
// spiders and their kin (Meehan 2006, Physiol. Biochem. Zool. 79:878-884). Others have
// exponents of 0.67 (Schmalhofer 2011, J. Arachnol. 39:41-52) to 1.
const spiderExponent, activation, boltzmann = 0.75, 0.6, 8.617e-5

// TarantulaRest returns what a resting tarantula spends, in µW, for a mass in g at a
// temperature in °C.
func TarantulaRest(mass, temperature float64) float64 {
	return tarantulaPower * math.Pow(mass/tarantulaMass, spiderExponent) * Warming(tarantulaAt, temperature)
}

// Warming returns by how much the rate of living rises from one temperature to
// another, in °C, by the Boltzmann factor.
func Warming(from, to float64) float64 {
	const zero = 273.15
	return math.Exp(activation / boltzmann * (1/(from+zero) - 1/(to+zero)))
}

// Weekly turns a power in µW into kJ in a week.
func Weekly(power float64) float64 { return power * 7 * 86400 * 1e-9 }
