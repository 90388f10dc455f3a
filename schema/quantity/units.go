package quantity

import "time"

// Units are the units in which values are told to a keeper, whatever they are stated in.
// The zero Units are metric, with a clock of 24 hours.
type Units struct {
	Temperature Unit // Celsius or Fahrenheit; of differences too
	Length      Unit // Centimetre or Inch; of areas too
	Volume      Unit // Millilitre or FluidOunce
	Mass        Unit // Gram or Ounce
	// TwelveHours says that times of day are told as 7:30 pm.
	TwelveHours bool
	// SundayFirst says that days of the week are told from Sunday on.
	SundayFirst bool
}

// Metric and Customary are the units of the international system and those that are usual
// in the United States.
var (
	Metric    = Units{Celsius, Centimetre, Millilitre, Gram, false, false}
	Customary = Units{Fahrenheit, Inch, FluidOunce, Ounce, true, true}
)

// pairs are units of one size of thing, metric and customary. A unit that stands in none
// is used by everybody: watts, minutes, percent; and the kilowatt-hour, which both kinds
// of keeper read from meter and bill.
var pairs = [][2]Unit{
	{Celsius, Fahrenheit}, {CelsiusStep, FahrenheitStep}, {KelvinStep, FahrenheitStep},
	{Centimetre, Inch}, {Millimetre, Inch}, {Metre, Foot}, {SquareCentimetre, SquareInch}, {SquareMetre, SquareFoot},
	{Millilitre, FluidOunce}, {Litre, Gallon}, {Litre, Quart}, {Millilitre, Pint}, {Millilitre, Cup},
	{Gram, Ounce}, {Milligram, Ounce}, {Kilogram, Pound},
	{KilojoulePerGram, KilocaloriePerGram},
}

// Week is the day with which a week is told to begin.
func (s Units) Week() time.Weekday {
	if s.SundayFirst {
		return time.Sunday
	}
	return time.Monday
}

// Of returns the unit in which a value is told that is stated in u.
func (s Units) Of(u Unit) Unit {
	side := 0
	if s.customary(u.Dimension()) {
		side = 1
	}
	switch {
	case u == KelvinStep && side == 0:
		return CelsiusStep
	case u == KilocaloriePerGram:
		return u // everybody reads calories
	}
	for _, p := range pairs {
		if p[1-side] == u {
			return p[side]
		}
	}
	return u
}

// customary reports whether values of a dimension are told in US customary units.
func (s Units) customary(d Dimension) bool {
	switch d {
	case Temperature, TemperatureStep:
		return s.Temperature == Fahrenheit
	case Length, Area:
		return s.Length == Inch
	case Volume:
		return s.Volume == FluidOunce
	case Mass:
		return s.Mass == Ounce
	case EnergyDensity:
		return s.Mass == Ounce // what is weighed in ounces is fed in calories
	}
	return false
}

// Same reports whether a value stated in u is told in it.
func (s Units) Same(u Unit) bool { return s.Of(u) == u }

// Tell prints a value in the keeper's units: as it is stated where that is in them.
func (s Units) Tell(q Quantity) string { return s.TellRange(Range{q.Value, q.Value, q.Unit}) }

// TellRange is Tell for a range.
func (s Units) TellRange(r Range) string {
	if s.Same(r.Unit) {
		return r.String()
	}
	return FormatBetween(r.Low, r.High, s.Of(r.Unit))
}

// Energy is the unit of energy, and how many kilojoules one is.
func (s Units) Energy() (name string, kilojoules float64) {
	if s.customary(EnergyDensity) {
		return "kcal", kcal
	}
	return "kJ", 1
}

// Convert returns a canonical value of u's dimension in u.
func (u Unit) Convert(canonical float64) float64 { return u.info().written(canonical) }

// Convert returns x, a value in one unit, in another of the same dimension; of differences
// of temperatures too.
func Convert(x float64, from, to Unit) float64 {
	return to.Convert(from.info().canonical(x))
}
