package climate

// ShareInwards returns the part of a flat heater's heat that goes in, from the
// resistance on either side to sinks at about the same temperature.
func ShareInwards(in, out SquareMetreKelvinPerWatt) Share { return Share(out / (in + out)) }

// Shares of heaters that radiate. Unmeasured assumptions without a source: part of
// a lamp's heat leaves by its reflector, a panel below the lid loses little.
var (
	shareRadiant = Band[Share]{0.3, 0.5, 0.8}
	sharePanel   = Band[Share]{0.5, 0.7, 0.9}
)

// shareOdds is how far a computed share may be off, as a factor on in : out. Judgement.
const shareOdds = 1.5

// sides returns the resistances inwards and outwards of a flat heater stuck to the
// outside of the enclosure at its place.
func (e *Enclosure) sides(p Place) (in, out SquareMetreKelvinPerWatt) {
	switch p {
	case Under:
		return e.Substrate.layer().Resistance() + e.Wall.layer().Resistance() + FilmUp, e.Base.resistance() + FilmDown
	case Above:
		return e.Lid.Sheet.layer().Resistance() + FilmDown, FilmUp
	default:
		return e.Wall.layer().Resistance() + FilmWall, e.wrap().Resistance() + FilmWall
	}
}

// heatShare returns the part of a heater's heat that ends up inside: computed for
// mats and cables, which are taken to be stuck to the outside, and an unmeasured
// default for what radiates.
func (e *Enclosure) heatShare(h *Heater) Band[Share] {
	switch h.Kind {
	case Lamp, Ceramic:
		return shareRadiant
	case Panel:
		return sharePanel
	}
	in, out := e.sides(h.Place)
	return Band[Share]{
		Low:    ShareInwards(in*shareOdds, out),
		Likely: ShareInwards(in, out),
		High:   ShareInwards(in, out*shareOdds),
	}
}
