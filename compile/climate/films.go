package climate

// Surface resistances of indoor air. An enclosure stands in a room, so both faces
// of each part have one; the outdoor value of window tables (0.04, wind) does not
// apply. ISO 6946:2017 Table 7; the corner value ISO 13788.
const (
	FilmWall   SquareMetreKelvinPerWatt = 0.13 // heat flows sideways
	FilmUp     SquareMetreKelvinPerWatt = 0.10 // heat flows up: lids, and above a mat
	FilmDown   SquareMetreKelvinPerWatt = 0.17 // heat flows down: floors
	FilmCorner SquareMetreKelvinPerWatt = 0.25 // still air in corners and behind décor
)
