package climate

// Box is the inside of an enclosure.
type Box struct{ Length, Width, Height Metre }

// Volume returns the volume of the box.
func (b Box) Volume() CubicMetre { return CubicMetre(b.Length * b.Width * b.Height) }

// WallArea returns the area of the four sides.
func (b Box) WallArea() SquareMetre { return SquareMetre(2 * (b.Length + b.Width) * b.Height) }

// FloorArea returns the area of the floor, which is that of the lid.
func (b Box) FloorArea() SquareMetre { return SquareMetre(b.Length * b.Width) }

// LidKind is how the top is closed.
type LidKind uint8

// The kinds of lid. What air passes is the enclosure's [Ventilation], not the lid's.
const (
	SolidLid    LidKind = iota // one sheet of Lid.Sheet
	MeshLid                    // mesh all over: air films only
	PartMeshLid                // partly mesh
)

// Lid is the top of an enclosure.
type Lid struct {
	Kind  LidKind
	Sheet Sheet // of the solid part
	Mesh  Share // mesh part of a PartMeshLid; 0 means a half (judgement; it hardly matters)
}

func (l *Lid) mesh() Share {
	switch {
	case l.Kind == MeshLid:
		return 1
	case l.Kind != PartMeshLid:
		return 0
	case l.Mesh <= 0:
		return 0.5
	}
	return min(1, l.Mesh)
}

func (l *Lid) uValue() WattPerSquareMetreKelvin {
	open := WattPerSquareMetreKelvin(l.mesh())
	return open*UValue(FilmUp, FilmUp) + (1-open)*UValue(FilmUp, FilmUp, l.Sheet.layer())
}

func (l *Lid) heatCapacity(a SquareMetre) JoulePerKelvin {
	return l.Sheet.heatCapacity(a * SquareMetre(1-l.mesh()))
}

// Base is what the enclosure stands on. Air is below it in each case.
type Base uint8

// The bases.
const (
	OnBoard Base = iota // 18 mm of wood
	OnFoam              // 25 mm of expanded polystyrene
	OnShelf             // open wire or thin metal, no resistance of its own
)

func (b Base) resistance() SquareMetreKelvinPerWatt {
	switch b {
	case OnFoam:
		return Layer{0.025, materials[Foam].Conductivity}.Resistance()
	case OnShelf:
		return 0
	}
	return Layer{0.018, materials[Plywood].Conductivity}.Resistance()
}

// beneath returns the resistance between a mat beneath the floor and the room: on feet or
// an open shelf, on a board, on foam. Judgement.
func (b Base) beneath() SquareMetreKelvinPerWatt {
	if b == OnBoard {
		return 0.25
	}
	return FilmDown + b.resistance()
}

// Soil is what a substrate is made of.
type Soil uint8

// The soils.
const (
	Coir Soil = iota // and peat, leaf mould, bark
	Loam             // topsoil and mixtures with it
	Sand
	soilCount = iota
)

// Moisture is how damp a substrate is.
type Moisture uint8

// The states of moisture.
const (
	Dry           Moisture = iota // dusty all through
	MoistBelow                    // a dry crust over what is moist
	Moist                         // holds its shape when pressed, to the top
	Wet                           // water shows when pressed
	moistureCount = iota
)

// Substrate is the layer on the floor; Depth 0 is a bare floor.
type Substrate struct {
	Soil     Soil
	Moisture Moisture
	Depth    Metre
}

type soilState struct {
	conductivity WattPerMetreKelvin
	heat         JoulePerCubicMetreKelvin
	water        Share // of its volume
}

func soil(k WattPerMetreKelvin, mineral, organic, water Share) soilState {
	return soilState{k, SubstrateVolumeHeat(mineral, organic, water), water}
}

// Conductivities after Farouki 1981 and de Vries 1963, from memory: dry coir and
// peat 0.05 to 0.08, moist 0.2 to 0.4, saturated 0.5; moist sand 1 to 2. Volume
// parts of mineral, organic matter and water: judgement; wet is field capacity.
var soils = [soilCount][moistureCount]soilState{
	Coir: {
		Dry:   soil(0.06, 0, 0.06, 0.05),
		Moist: soil(0.30, 0, 0.06, 0.35),
		Wet:   soil(0.50, 0, 0.06, 0.60),
	},
	Loam: {
		Dry:   soil(0.25, 0.45, 0.03, 0.05),
		Moist: soil(0.80, 0.45, 0.03, 0.25),
		Wet:   soil(1.50, 0.45, 0.03, 0.45),
	},
	Sand: {
		Dry:   soil(0.30, 0.60, 0, 0.01),
		Moist: soil(1.50, 0.60, 0, 0.10),
		Wet:   soil(2.20, 0.60, 0, 0.35),
	},
}

// state is how the bulk of it is: a crust is thin.
func (s *Substrate) state() *soilState { return s.as(min(s.Moisture, moistureCount-1)) }

func (s *Substrate) as(m Moisture) *soilState {
	if m == MoistBelow {
		m = Moist
	}
	return &soils[min(s.Soil, soilCount-1)][m]
}

func (s *Substrate) layer() Layer { return Layer{s.Depth, s.state().conductivity} }

func (s *Substrate) heatCapacity(a SquareMetre) JoulePerKelvin {
	return LayerHeatCapacity(s.state().heat, a, s.Depth)
}

// Dish is the water dish; the zero value is none.
type Dish struct {
	Volume  Litre
	Surface SquareMetre
}

// Room is the range of the room over the year, as the keeper knows it.
type Room struct {
	Low, High     Celsius
	RHLow, RHHigh Percent
	Altitude      Metre // above the sea
}

// DefaultRoom is a heated home in a temperate climate. Judgement.
var DefaultRoom = Room{Low: 18, High: 24, RHLow: 30, RHHigh: 60}

// Middle is the middle of its range.
func (r *Room) Middle() Celsius   { return (r.Low + r.High) / 2 }
func (r *Room) middleRH() Percent { return (r.RHLow + r.RHHigh) / 2 }

// Enclosure is one small enclosure in a room. The zero values of all but Inside
// and Room are usable: 5 mm glass with a solid glass lid, sealed, on a board, bare.
type Enclosure struct {
	Inside      Box
	Wall        Sheet // floor included
	Covers      [faceCount]Cover
	Lid         Lid
	Ventilation Ventilation
	Substrate   Substrate
	Base        Base
	Dish        Dish
	Room        Room
}

// Put lays a cover on faces.
func (e *Enclosure) Put(c Cover, on ...Face) {
	for _, f := range on {
		e.Covers[f] = c
	}
}
