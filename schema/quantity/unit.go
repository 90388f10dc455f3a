package quantity

import (
	"math"
	"slices"
)

// Unit is a unit of one dimension: the C of a temperature and the C of a
// difference are two units that are written alike. The zero Unit is None.
type Unit uint8

// The units. A gallon and its parts are the US liquid measures; an ounce and a
// pound are avoirdupois; a kilocalorie is the thermochemical one, 4.184 kJ. A
// month of a duration is 30.4375 days and a year 365.25 days, the means of the
// Julian calendar; calendar steps are an Interval instead.
const (
	None Unit = iota
	Celsius
	Fahrenheit
	CelsiusStep
	FahrenheitStep
	KelvinStep
	PercentRH
	Centimetre
	Millimetre
	Metre
	Inch
	Foot
	SquareCentimetre
	SquareMetre
	SquareInch
	SquareFoot
	Millilitre
	Litre
	Gallon
	Quart
	Pint
	FluidOunce
	Cup
	Gram
	Milligram
	Kilogram
	Ounce
	Pound
	Watt
	Kilowatt
	Minutes
	Hours
	Days
	Weeks
	Months
	Years
	KilojoulePerGram
	KilocaloriePerGram
	Percent
	Fraction // a share written without a unit, from 0 to 1
)

// unitInfo describes a unit. A canonical value is the written one times factor
// plus offset.
type unitInfo struct {
	dim            Dimension
	name           string // as printed
	one            string // as printed after 1, where that differs
	factor, offset float64
	decimals       int      // digits after the point that Format gives
	also           []string // further spellings that are read
	meant          []string // words that are not read, but whose meaning is plain
}

const (
	inch = 25.4        // mm, exact
	gal  = 3785.411784 // ml, exact: 231 cubic inches
	lb   = 453.59237   // g, exact
	kcal = 4.184       // kJ, exact
	day  = 24 * 60.0   // minutes
	mon  = 30.4375 * day
	year = 365.25 * day
)

// units is the one table behind reading, printing and suggestions. Units of a
// dimension stand together, commonest first. Factors are the exact definitions
// behind NIST Special Publication 811 (2008), appendix B.8.
var units = [...]unitInfo{
	Celsius: {dim: Temperature, name: "C", factor: 1, decimals: 1,
		also: []string{"°C", "c", "°c"}, meant: []string{"celsius", "centigrade", "deg c", "degc", "degrees c", "degrees celsius", "º c", "° c"}},
	Fahrenheit: {dim: Temperature, name: "F", factor: 5. / 9, offset: -160. / 9, decimals: 1,
		also: []string{"°F", "f", "°f"}, meant: []string{"fahrenheit", "deg f", "degf", "degrees f", "degrees fahrenheit", "º f", "° f"}},

	CelsiusStep: {dim: TemperatureStep, name: "C", factor: 1, decimals: 1,
		also: []string{"°C", "c", "°c"}, meant: []string{"celsius", "centigrade", "deg c", "degc", "degrees c"}},
	FahrenheitStep: {dim: TemperatureStep, name: "F", factor: 5. / 9, decimals: 1,
		also: []string{"°F", "f", "°f"}, meant: []string{"fahrenheit", "deg f", "degf", "degrees f"}},
	KelvinStep: {dim: TemperatureStep, name: "K", factor: 1, decimals: 1, meant: []string{"kelvin"}},

	PercentRH: {dim: Humidity, name: "%", factor: 1,
		also: []string{"% RH", "%RH"}, meant: []string{"percent", "per cent", "rh", "% r.h.", "% humidity"}},

	Centimetre: {dim: Length, name: "cm", factor: 10, decimals: 1,
		meant: []string{"centimetre", "centimetres", "centimeter", "centimeters", "cms"}},
	Millimetre: {dim: Length, name: "mm", factor: 1,
		meant: []string{"millimetre", "millimetres", "millimeter", "millimeters", "mms"}},
	Metre: {dim: Length, name: "m", factor: 1000, decimals: 2,
		meant: []string{"metre", "metres", "meter", "meters"}},
	Inch: {dim: Length, name: "in", factor: inch, decimals: 1,
		also: []string{"inch", "inches"}, meant: []string{"ins", "in.", `"`, "”", "″"}},
	Foot: {dim: Length, name: "ft", factor: 12 * inch, decimals: 2,
		also: []string{"foot", "feet"}, meant: []string{"ft.", "'", "’", "′"}},

	SquareCentimetre: {dim: Area, name: "cm2", factor: 1,
		also: []string{"cm²", "sq cm"}, meant: []string{"cm^2", "square cm", "square centimetres", "square centimeters"}},
	SquareMetre: {dim: Area, name: "m2", factor: 10000, decimals: 2,
		also: []string{"m²", "sq m"}, meant: []string{"m^2", "square m", "square metres", "square meters"}},
	SquareInch: {dim: Area, name: "sq in", factor: inch * inch / 100,
		also: []string{"in2", "in²"}, meant: []string{"in^2", "square in", "square inches"}},
	SquareFoot: {dim: Area, name: "sq ft", factor: 144 * inch * inch / 100, decimals: 1,
		also: []string{"ft2", "ft²"}, meant: []string{"ft^2", "square ft", "square feet"}},

	Millilitre: {dim: Volume, name: "ml", factor: 1,
		also: []string{"mL"}, meant: []string{"millilitre", "millilitres", "milliliter", "milliliters", "cc", "mls"}},
	Litre: {dim: Volume, name: "L", factor: 1000, decimals: 1,
		also: []string{"l", "litre", "litres", "liter", "liters"}, meant: []string{"ltr", "lt"}},
	Gallon: {dim: Volume, name: "gal", factor: gal, decimals: 1,
		also: []string{"gallon", "gallons", "US gal", "US gallon", "US gallons"}, meant: []string{"gals", "gal.", "u.s. gal", "u.s. gallons"}},
	Quart: {dim: Volume, name: "qt", factor: gal / 4, decimals: 1,
		also: []string{"quart", "quarts"}, meant: []string{"qts", "qt."}},
	Pint: {dim: Volume, name: "pt", factor: gal / 8, decimals: 1,
		also: []string{"pint", "pints"}, meant: []string{"pts", "pt."}},
	FluidOunce: {dim: Volume, name: "fl oz", factor: gal / 128, decimals: 1,
		meant: []string{"fl. oz.", "floz", "fluid ounce", "fluid ounces"}},
	Cup: {dim: Volume, name: "cups", one: "cup", factor: gal / 16, decimals: 2},

	Gram:      {dim: Mass, name: "g", factor: 1, decimals: 2, meant: []string{"gram", "grams", "gm", "gr", "gms"}},
	Milligram: {dim: Mass, name: "mg", factor: 0.001, meant: []string{"milligram", "milligrams"}},
	Kilogram:  {dim: Mass, name: "kg", factor: 1000, decimals: 2, meant: []string{"kilogram", "kilograms", "kilo", "kilos", "kgs"}},
	Ounce:     {dim: Mass, name: "oz", factor: lb / 16, decimals: 2, meant: []string{"ounce", "ounces", "oz."}},
	Pound:     {dim: Mass, name: "lb", factor: lb, decimals: 2, also: []string{"lbs"}, meant: []string{"pound", "pounds", "lb."}},

	Watt:     {dim: Power, name: "W", factor: 1, meant: []string{"watt", "watts"}},
	Kilowatt: {dim: Power, name: "kW", factor: 1000, decimals: 2, meant: []string{"kilowatt", "kilowatts"}},

	Minutes: {dim: Duration, name: "min", factor: 1,
		also: []string{"minute", "minutes"}, meant: []string{"mins", "min."}},
	Hours: {dim: Duration, name: "h", factor: 60, decimals: 1,
		also: []string{"hour", "hours"}, meant: []string{"hr", "hrs"}},
	Days:   {dim: Duration, name: "days", one: "day", factor: day, decimals: 1, meant: []string{"d"}},
	Weeks:  {dim: Duration, name: "weeks", one: "week", factor: 7 * day, decimals: 1, meant: []string{"w", "wk", "wks"}},
	Months: {dim: Duration, name: "months", one: "month", factor: mon, decimals: 1, meant: []string{"mo", "mth", "mths"}},
	Years:  {dim: Duration, name: "years", one: "year", factor: year, decimals: 1, meant: []string{"y", "yr", "yrs"}},

	KilojoulePerGram: {dim: EnergyDensity, name: "kJ/g", factor: 1, decimals: 2,
		meant: []string{"kilojoules per gram", "kJ per g"}},
	KilocaloriePerGram: {dim: EnergyDensity, name: "kcal/g", factor: kcal, decimals: 2,
		meant: []string{"kilocalories per gram", "kcal per g"}},

	Percent:  {dim: Ratio, name: "%", factor: 1, meant: []string{"percent", "per cent"}},
	Fraction: {dim: Ratio, factor: 100, decimals: 2},
}

// spans holds the first unit of each dimension and the one after its last.
var spans = func() (s [Ratio + 1][2]Unit) {
	for u := None + 1; int(u) < len(units); u++ {
		d := units[u].dim
		if s[d][0] == None {
			s[d][0] = u
		}
		s[d][1] = u + 1
	}
	return s
}()

func (u Unit) info() *unitInfo {
	if int(u) >= len(units) {
		u = None
	}
	return &units[u]
}

// String returns the unit as printed after a value other than 1: "C", "gal",
// "days". It is empty for None and Fraction.
func (u Unit) String() string { return u.info().name }

// Dimension returns what the unit measures; zero for None.
func (u Unit) Dimension() Dimension { return u.info().dim }

// Step returns the unit of a difference of temperatures for who writes them in u.
func (u Unit) Step() Unit {
	if u == Fahrenheit {
		return FahrenheitStep
	}
	return CelsiusStep
}

// Small, Square and Hollow return the units of something small, of a floor and of an
// inside for who measures lengths in u.
func (u Unit) Small() Unit { return u.customary(Inch, Millimetre) }

// Square is the unit of a floor.
func (u Unit) Square() Unit { return u.customary(SquareInch, SquareCentimetre) }

// Hollow is the unit of an inside.
func (u Unit) Hollow() Unit { return u.customary(Gallon, Litre) }

func (u Unit) customary(us, metric Unit) Unit {
	if u == Inch || u == Foot {
		return us
	}
	return metric
}

// spelt reports whether s is an accepted spelling of the unit.
func (i *unitInfo) spelt(s string) bool {
	return s == i.name || s == i.one || slices.Contains(i.also, s)
}

// canonical converts a value written in the unit.
func (i *unitInfo) canonical(v float64) float64 { return settle(v*i.factor + i.offset) }

// written converts a canonical value to the unit.
func (i *unitInfo) written(v float64) float64 { return (v - i.offset) / i.factor }

// settle keeps nine decimals, so that what is equal on paper is equal here:
// 80.6 F is 27 C and 12 in is 1 ft, which binary arithmetic alone does not give.
func settle(v float64) float64 {
	if math.Abs(v) < 1e6 {
		v = math.Round(v*1e9) / 1e9
	}
	return unsigned(v)
}

// unsigned takes the sign off a zero, so that no "-0 C" is printed.
func unsigned(v float64) float64 {
	if v == 0 {
		return 0
	}
	return v
}

// find returns the unit of dimension d that s spells, or None.
func find(s string, d Dimension) Unit {
	if int(d) >= len(spans) || s == "" {
		return None
	}
	for u := spans[d][0]; u < spans[d][1]; u++ {
		if units[u].spelt(s) {
			return u
		}
	}
	return None
}
