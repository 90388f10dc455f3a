package climate

// Material is what a wall, lid or layer is made of.
type Material uint8

// The materials known. Mesh has no resistance of its own: only its air films count.
const (
	Glass Material = iota
	Acrylic
	Polycarbonate
	PVC
	Polypropylene
	Polystyrene
	Plywood
	Chipboard // and MDF
	Foam      // expanded polystyrene
	Cork
	Mesh
)

// Properties are what the heat balance needs to know of a material.
type Properties struct {
	Name         string
	Conductivity WattPerMetreKelvin // 0 for mesh
	Density      KilogramPerCubicMetre
	Heat         JoulePerKilogramKelvin
	Sheet        Metre // usual thickness; judgement, from the common range
}

// Conductivities, densities and heats: ISO 10456:2007 Table 3 and EN 572-1 (glass,
// wood, foam, cork; from memory), Crawford, Plastics Engineering, Table 1.8
// (acrylic, PVC, polypropylene, polystyrene). Among walls they hardly matter: the
// air films dominate, and glass and 4 mm acrylic differ by 6 %.
var materials = [...]Properties{
	Glass:         {"glass", 1.00, 2500, 750, 0.005},
	Acrylic:       {"acrylic", 0.18, 1180, 1500, 0.004},
	Polycarbonate: {"polycarbonate", 0.20, 1200, 1200, 0.004},
	PVC:           {"PVC", 0.17, 1400, 900, 0.010},
	Polypropylene: {"polypropylene", 0.22, 905, 1900, 0.002},
	Polystyrene:   {"polystyrene", 0.16, 1050, 1300, 0.002},
	Plywood:       {"plywood", 0.13, 500, 1600, 0.018},
	Chipboard:     {"chipboard", 0.14, 600, 1700, 0.018},
	Foam:          {"foam", 0.035, 20, 1450, 0.020},
	Cork:          {"cork", 0.05, 150, 1560, 0.010},
	Mesh:          {"mesh", 0, 0, 0, 0.001},
}

func (m Material) properties() *Properties {
	if int(m) >= len(materials) {
		m = Glass
	}
	return &materials[m]
}

// Sheet is a wall, lid or pane. Thickness 0 means the usual one of the material.
type Sheet struct {
	Material  Material
	Thickness Metre
}

func (s Sheet) layer() Layer {
	p := s.Material.properties()
	if s.Thickness > 0 {
		return Layer{s.Thickness, p.Conductivity}
	}
	return Layer{p.Sheet, p.Conductivity}
}

func (s Sheet) heatCapacity(a SquareMetre) JoulePerKelvin {
	p := s.Material.properties()
	return SheetHeatCapacity(a, s.layer().Thickness, p.Density, p.Heat)
}

// Layer is one layer of a wall.
type Layer struct {
	Thickness    Metre
	Conductivity WattPerMetreKelvin
}

// Resistance returns thickness over conductivity; 0 for a layer without conductivity.
func (l Layer) Resistance() SquareMetreKelvinPerWatt {
	if l.Conductivity <= 0 {
		return 0
	}
	return SquareMetreKelvinPerWatt(float64(l.Thickness) / float64(l.Conductivity))
}

// UValue returns the heat that passes a square metre of layers between two air
// films for each kelvin: 1/(Rsi + Σd/λ + Rse). ISO 6946.
func UValue(inside, outside SquareMetreKelvinPerWatt, layers ...Layer) WattPerSquareMetreKelvin {
	r := inside + outside
	for _, l := range layers {
		r += l.Resistance()
	}
	return WattPerSquareMetreKelvin(1 / r)
}

// Conductance returns the heat that passes area a with U-value u for each kelvin.
func (u WattPerSquareMetreKelvin) Conductance(a SquareMetre) WattPerKelvin {
	return WattPerKelvin(float64(u) * float64(a))
}
