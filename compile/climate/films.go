package climate

import "math"

// Surface resistances of indoor air. An enclosure stands in a room, so both faces
// of each part have one; the outdoor value of window tables (0.04, wind) does not
// apply. ISO 6946:2017 Table 7; the corner value ISO 13788.
const (
	FilmWall   SquareMetreKelvinPerWatt = 0.13 // heat flows sideways
	FilmUp     SquareMetreKelvinPerWatt = 0.10 // heat flows up: lids, and above a mat
	FilmDown   SquareMetreKelvinPerWatt = 0.17 // heat flows down: floors
	FilmCorner SquareMetreKelvinPerWatt = 0.25 // still air in corners and behind décor
)

// RadiativeCoefficient returns the radiative part of a film, ε·4σT³, at the mean
// temperature of the two surfaces. ISO 6946 Annex C.
func RadiativeCoefficient(emissivity float64, mean Celsius) WattPerSquareMetreKelvin {
	k := mean.kelvin()
	return WattPerSquareMetreKelvin(emissivity * 4 * stefan * k * k * k)
}

// SurfaceResistance returns the film of a surface from its convective coefficient:
// 1/(hc + hr). With hc 2.5, 5.0 and 0.7 it gives the table above. ISO 6946 Annex C.
func SurfaceResistance(emissivity float64, mean Celsius, convective WattPerSquareMetreKelvin) SquareMetreKelvinPerWatt {
	return SquareMetreKelvinPerWatt(1 / (convective + RadiativeCoefficient(emissivity, mean)))
}

// Air holds the properties of air that free convection depends on.
type Air struct {
	Conductivity WattPerMetreKelvin
	Viscosity    SquareMetrePerSecond // kinematic
	Prandtl      float64
}

// VerticalPlate returns the free convection coefficient of a vertical pane of the
// given height whose surface differs by rise from the air, film being the mean of
// both. Laminar, Rayleigh number up to 1e9. Churchill and Chu 1975, Int. J. Heat
// Mass Transfer 18:1323.
func VerticalPlate(height Metre, rise Kelvin, film Celsius, air Air) WattPerSquareMetreKelvin {
	l, nu := float64(height), float64(air.Viscosity)
	rayleigh := gravity * math.Abs(float64(rise)) / film.kelvin() * l * l * l * air.Prandtl / (nu * nu)
	nusselt := 0.68 + 0.670*math.Sqrt(math.Sqrt(rayleigh))/math.Pow(1+math.Pow(0.492/air.Prandtl, 9.0/16), 4.0/9)
	return WattPerSquareMetreKelvin(nusselt * float64(air.Conductivity) / l)
}
