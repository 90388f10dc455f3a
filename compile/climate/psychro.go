package climate

import "math"

const (
	// StandardPressure is the standard atmosphere at sea level.
	StandardPressure Pascal = 101325
	// triplePoint is where saturation changes from the ice to the water formula.
	triplePoint Celsius = 0.01

	gasConstantVapour = 461.52  // J/kgK
	gasConstantDryAir = 287.055 // J/kgK, ASHRAE Fundamentals 2017 ch. 1
	molarMassRatio    = 0.621945
)

// SaturationPressure returns the saturation vapour pressure at t, over water from
// the triple point to 200 °C and over ice below it. Hyland and Wexler 1983,
// ASHRAE Transactions 89(2A); ASHRAE Fundamentals 2017 ch. 1 eq. 5 and 6. The
// enhancement factor of air (0.4 %) is left out, as ASHRAE's simple equations do.
func SaturationPressure(t Celsius) Pascal {
	ln, _ := lnSaturation(t)
	return Pascal(math.Exp(ln))
}

// lnSaturation returns the logarithm of the saturation pressure and its slope per kelvin.
func lnSaturation(t Celsius) (ln, slope float64) {
	k := t.kelvin()
	if t <= triplePoint {
		ln = -5674.5359/k + 6.3925247 + k*(-9.677843e-3+k*(6.2215701e-7+k*(2.0747825e-9-k*9.484024e-13))) + 4.1635019*math.Log(k)
		slope = 5674.5359/(k*k) - 9.677843e-3 + k*(2*6.2215701e-7+k*(3*2.0747825e-9-k*4*9.484024e-13)) + 4.1635019/k
		return ln, slope
	}
	ln = -5800.2206/k + 1.3914993 + k*(-4.8640239e-2+k*(4.1764768e-5-k*1.4452093e-8)) + 6.5459673*math.Log(k)
	slope = 5800.2206/(k*k) - 4.8640239e-2 + k*(2*4.1764768e-5-k*3*1.4452093e-8) + 6.5459673/k
	return ln, slope
}

func dewPointOf(e Pascal) Celsius {
	if !(e > 0) {
		return Celsius(math.Inf(-1))
	}
	want := math.Log(float64(e))
	l := want - math.Log(611.2)
	td := Celsius(243.12 * l / (17.62 - l)) // Magnus inverted, WMO-No. 8 Annex 4.B
	// Newton on the logarithm, which is almost straight: the Magnus start is within
	// a few tenths of a kelvin over water and a few kelvins over ice.
	for range 8 {
		ln, slope := lnSaturation(td)
		step := Celsius((ln - want) / slope)
		td -= step
		if math.Abs(float64(step)) < 1e-4 {
			break // the error after a step is of the order of its square
		}
	}
	return td
}

func vapourDensity(e Pascal, t Celsius) GramPerCubicMetre {
	return GramPerCubicMetre(1000 * float64(e) / (gasConstantVapour * t.kelvin()))
}

func humidityRatioOf(e, p Pascal) KilogramPerKilogram {
	return KilogramPerKilogram(molarMassRatio * float64(e) / float64(p-e))
}

// AltitudePressure returns the standard station pressure at height z above the
// sea. ASHRAE Fundamentals 2017 ch. 1 eq. 3, within 13 Pa of the US Standard
// Atmosphere 1976 up to 3 km.
func AltitudePressure(z Metre) Pascal {
	if z == 0 {
		return StandardPressure
	}
	return StandardPressure * Pascal(math.Pow(1-2.25577e-5*float64(z), 5.2559))
}

// DryAirDensity returns the density of the dry part of air at t that holds vapour
// pressure e at station pressure p.
func DryAirDensity(t Celsius, e, p Pascal) KilogramPerCubicMetre {
	return KilogramPerCubicMetre(float64(p-e) / (gasConstantDryAir * t.kelvin()))
}
