package food

import "math"

// ScorpionWater returns the water that a scorpion loses in dry air, in mg/h, for a
// mass in g at a temperature in °C: 0.204 · M^0.63 · 10^(0.026·T), measured on Urodacus
// armatus from 20 to 30 °C (Withers and Smith 1993, J. therm. Biol. 18:13-18; the
// exponent is the pooled one of the abstract).
func ScorpionWater(mass, temperature float64) float64 {
	return 0.204 * math.Pow(mass, 0.63) * math.Pow(10, 0.026*temperature)
}

// ScorpionDrying returns the share of its mass that a scorpion loses in a day without
// drinking, in %, at a relative humidity in %. Urodacus is from dry country; one from
// a damp place dries faster, so this is a lower bound.
func ScorpionDrying(mass, temperature, humidity float64) float64 {
	return 24 * ScorpionWater(mass, temperature) * (1 - humidity/100) / (10 * mass)
}

// DryingLimit is the loss of mass, in %, from which the body water of Scorpionidae
// falls (Gefen and Ar 2005, J. Exp. Biol. 208:1887). Buthidae bear far more.
const DryingLimit = 5
