package climate

import "math"

// Ventilation is how open an enclosure is. It decides the air change rate, the
// least known figure of all, which is why it is never a single number.
type Ventilation uint8

// The classes, from tightest to most open.
const (
	Sealed           Ventilation = iota // gasketed box, closed tub without holes
	LooseLid                            // glass with a loose solid lid, tub with a few small holes
	SmallVents                          // vent area 1 to 3 % of the lid, or filter cloth
	FrontAndMesh                        // front vent and part-covered mesh top
	FullMeshTop                         // the whole top is mesh
	AllMesh                             // mesh on all sides: the room's climate plus a local warm spot
	ventilationCount = iota
)

// Judgement: nothing measured on terraria was found. Anchored on museum cases at
// 0.02 to 0.8 per hour (Michalski 1994, Studies in Conservation 39), mouse cages
// with filter bonnets at 10 to 19 per hour (Reeb et al. 1997, Contemp. Top. Lab.
// Anim. Sci. 36:74) and the two flow equations below.
var airChanges = [ventilationCount]Band[PerHour]{
	Sealed:       {0.02, 0.2, 1},
	LooseLid:     {0.3, 1.5, 5},
	SmallVents:   {2, 8, 20},
	FrontAndMesh: {5, 15, 40},
	FullMeshTop:  {8, 25, 80},
	AllMesh:      {30, 120, 400},
}

// AirChange returns the air changes per hour of the class; for an unknown class
// the widest range there is.
func (v Ventilation) AirChange() Band[PerHour] {
	if v >= ventilationCount {
		return Band[PerHour]{airChanges[Sealed].Low, airChanges[SmallVents].Likely, airChanges[AllMesh].High}
	}
	return airChanges[v]
}

// EffectiveArea returns the single opening that passes as much air as two in
// series: 1/A² = 1/A1² + 1/A2². ASHRAE Fundamentals, ch. 16.
func EffectiveArea(a1, a2 SquareMetre) SquareMetre {
	x, y := float64(a1), float64(a2)
	return SquareMetre(x * y / math.Sqrt(x*x+y*y))
}

// StackFlow returns the air driven by warmth through a low and a high opening
// whose centres are height apart: Cd·A·√(2gH·ΔT/Ti), and 0 if the inside is not
// the warmer. Discharge is about 0.6 for a sharp edge and 0.15 to 0.35 for
// insect screen (López et al. 2016, Sensors 16:690). ASHRAE Fundamentals, ch. 16.
func StackFlow(discharge float64, low, high SquareMetre, height Metre, in, room Celsius) LitrePerSecond {
	rise := max(0, float64(in-room))
	return LitrePerSecond(1000 * discharge * float64(EffectiveArea(low, high)) *
		math.Sqrt(2*gravity*float64(height)*rise/in.kelvin()))
}

// HorizontalExchangeFlow returns the counterflow through one open top without any
// low vent and without mesh: c·√(D⁵·g·ΔT/T), D the diameter of equal area
// and c 0.055 for an opening much wider than thick (from memory). Epstein 1988,
// J. Heat Transfer 110:885.
func HorizontalExchangeFlow(a SquareMetre, rise Kelvin, mean Celsius, coefficient float64) LitrePerSecond {
	d := math.Sqrt(4 * float64(a) / math.Pi)
	return LitrePerSecond(1000 * coefficient * math.Sqrt(d*d*d*d*d*gravity*math.Abs(float64(rise))/mean.kelvin()))
}

// AirChangeRate returns how often per hour a flow renews the volume.
func AirChangeRate(q LitrePerSecond, v Litre) PerHour {
	return PerHour(3600 * float64(q) / float64(v))
}

// Air as the heat carried by ventilation takes it, at sea level.
const (
	AirDensity KilogramPerCubicMetre  = 1.2
	AirHeat    JoulePerKilogramKelvin = 1005
)

// VentilationConductance returns the heat carried out by air changes for each
// kelvin: ρ·cp·n·V/3600.
func VentilationConductance(n PerHour, v CubicMetre, density KilogramPerCubicMetre, heat JoulePerKilogramKelvin) WattPerKelvin {
	return WattPerKelvin(float64(density) * float64(heat) * float64(n) * float64(v) / 3600)
}
