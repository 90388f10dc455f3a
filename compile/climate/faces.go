package climate

// Face is one side of an enclosure.
type Face uint8

// The faces.
const (
	BackFace Face = iota
	FrontFace
	LeftFace
	RightFace
	LidFace
	BaseFace
	faceCount = iota
)

// Walls are the faces that stand upright.
var Walls = []Face{BackFace, FrontFace, LeftFace, RightFace}

// Cover is what lies outside on a face; the zero value is nothing.
type Cover struct {
	Resistance SquareMetreKelvinPerWatt
	// Warm says that another box stands there that is as warm: nothing is lost.
	Warm bool
}

// CoverOf returns a cover of a sheet of a material; a thickness of 0 is the usual one.
func CoverOf(m Material, thickness Metre) Cover {
	return Cover{Resistance: Sheet{m, thickness}.layer().Resistance()}
}

// Foil is reflecting foil without an air gap, which counts as 5 mm of foam. Judgement.
var Foil = CoverOf(Foam, 0.005)

// area returns the area of a face.
func (b Box) area(f Face) SquareMetre {
	switch f {
	case BackFace, FrontFace:
		return SquareMetre(b.Length * b.Height)
	case LeftFace, RightFace:
		return SquareMetre(b.Width * b.Height)
	}
	return b.FloorArea()
}

// uValue returns the heat that passes a square metre of a face for each kelvin, without
// what its cover's neighbour does.
func (e *Enclosure) uValue(f Face) WattPerSquareMetreKelvin {
	cover := e.Covers[f].Resistance
	switch f {
	case LidFace:
		if cover == 0 {
			return e.Lid.uValue()
		}
		return 1 / WattPerSquareMetreKelvin(float64(1/e.Lid.uValue())+float64(cover))
	case BaseFace:
		return UValue(FilmDown, FilmDown+e.Base.resistance()+cover, e.Substrate.layer(), e.Wall.layer())
	}
	return UValue(FilmWall, FilmWall+cover, e.Wall.layer())
}

// loses returns the heat that passes a face for each kelvin.
func (e *Enclosure) loses(f Face) WattPerKelvin {
	if e.Covers[f].Warm {
		return 0
	}
	return e.uValue(f).Conductance(e.Inside.area(f))
}

// leastCover returns the cover of the wall that has least of it.
func (e *Enclosure) leastCover() SquareMetreKelvinPerWatt {
	least := e.Covers[BackFace].Resistance
	for f := FrontFace; f <= RightFace; f++ {
		least = min(least, e.Covers[f].Resistance)
	}
	return least
}
