package climate

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
// Anim. Sci. 36:74) and the flow through two openings at different heights (ASHRAE
// Fundamentals, ch. 16) and through one open top (Epstein 1988, J. Heat Transfer
// 110:885).
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
