package quantity

import (
	"math"
	"strings"
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
	decimals       int    // digits after the point that Format gives
	also           string // further spellings that are read, as spelling makes them
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
	None: {factor: 1}, // of plain numbers

	Celsius:    {dim: Temperature, name: "C", factor: 1, decimals: 1, also: celsius},
	Fahrenheit: {dim: Temperature, name: "F", factor: 5. / 9, offset: -160. / 9, decimals: 1, also: fahrenheit},

	CelsiusStep:    {dim: TemperatureStep, name: "C", factor: 1, decimals: 1, also: celsius},
	FahrenheitStep: {dim: TemperatureStep, name: "F", factor: 5. / 9, decimals: 1, also: fahrenheit},
	KelvinStep:     {dim: TemperatureStep, name: "K", factor: 1, decimals: 1, also: "kelvin kelvins"},

	PercentRH: {dim: Humidity, name: "%", factor: 1, also: "%rh rh percent percentrh percenthumidity pct %humidity %relativehumidity"},

	Centimetre: {dim: Length, name: "cm", factor: 10, decimals: 1, also: "cms centimetre centimetres centimeter centimeters"},
	Millimetre: {dim: Length, name: "mm", factor: 1, also: "mms millimetre millimetres millimeter millimeters"},
	Metre:      {dim: Length, name: "m", factor: 1000, decimals: 2, also: "metre metres meter meters"},
	Inch:       {dim: Length, name: "in", factor: inch, decimals: 1, also: "ins inch inches \" ” ″ '' ’’ ′′"},
	Foot:       {dim: Length, name: "ft", factor: 12 * inch, decimals: 2, also: "foot feet ' ’ ′"},

	SquareCentimetre: {dim: Area, name: "cm2", factor: 1, also: "cm² cm^2 sqcm squarecm squarecentimetre squarecentimetres squarecentimeter squarecentimeters"},
	SquareMetre:      {dim: Area, name: "m2", factor: 10000, decimals: 2, also: "m² m^2 sqm squarem squaremetre squaremetres squaremeter squaremeters"},
	SquareInch:       {dim: Area, name: "sq in", factor: inch * inch / 100, also: "in2 in² in^2 squarein squareinch squareinches sqinch sqinches"},
	SquareFoot:       {dim: Area, name: "sq ft", factor: 144 * inch * inch / 100, decimals: 1, also: "ft2 ft² ft^2 squareft squarefoot squarefeet sqfoot sqfeet"},

	Millilitre: {dim: Volume, name: "ml", factor: 1, also: "mls cc millilitre millilitres milliliter milliliters"},
	Litre:      {dim: Volume, name: "L", factor: 1000, decimals: 1, also: "lt ltr ltrs litre litres liter liters"},
	Gallon:     {dim: Volume, name: "gal", factor: gal, decimals: 1, also: "gals gallon gallons usgal usgallon usgallons"},
	Quart:      {dim: Volume, name: "qt", factor: gal / 4, decimals: 1, also: "qts quart quarts"},
	Pint:       {dim: Volume, name: "pt", factor: gal / 8, decimals: 1, also: "pts pint pints"},
	FluidOunce: {dim: Volume, name: "fl oz", factor: gal / 128, decimals: 1, also: "fluidoz fluidounce fluidounces"},
	Cup:        {dim: Volume, name: "cups", one: "cup", factor: gal / 16, decimals: 2},

	Gram:      {dim: Mass, name: "g", factor: 1, decimals: 2, also: "gm gms gr gram grams gramme grammes"},
	Milligram: {dim: Mass, name: "mg", factor: 0.001, also: "milligram milligrams"},
	Kilogram:  {dim: Mass, name: "kg", factor: 1000, decimals: 2, also: "kgs kilo kilos kilogram kilograms"},
	Ounce:     {dim: Mass, name: "oz", factor: lb / 16, decimals: 2, also: "ounce ounces"},
	Pound:     {dim: Mass, name: "lb", factor: lb, decimals: 2, also: "lbs pound pounds"},

	Watt:     {dim: Power, name: "W", factor: 1, also: "watt watts"},
	Kilowatt: {dim: Power, name: "kW", factor: 1000, decimals: 2, also: "kilowatt kilowatts"},

	Minutes: {dim: Duration, name: "min", factor: 1, also: "mins minute minutes"},
	Hours:   {dim: Duration, name: "h", factor: 60, decimals: 1, also: "hr hrs hour hours"},
	Days:    {dim: Duration, name: "days", one: "day", factor: day, decimals: 1, also: "d"},
	Weeks:   {dim: Duration, name: "weeks", one: "week", factor: 7 * day, decimals: 1, also: "w wk wks"},
	Months:  {dim: Duration, name: "months", one: "month", factor: mon, decimals: 1, also: "mo mos mth mths"},
	Years:   {dim: Duration, name: "years", one: "year", factor: year, decimals: 1, also: "y yr yrs"},

	KilojoulePerGram:   {dim: EnergyDensity, name: "kJ/g", factor: 1, decimals: 2, also: "kjpergram kjperg kilojoulespergram"},
	KilocaloriePerGram: {dim: EnergyDensity, name: "kcal/g", factor: kcal, decimals: 2, also: "kcalpergram kcalperg kilocaloriespergram"},

	Percent:  {dim: Ratio, name: "%", factor: 1, also: "percent pct"},
	Fraction: {dim: Ratio, factor: 100, decimals: 2},
}

// The degrees of both scales, as people write them.
const (
	celsius    = "°c degc degreec degreesc degreecelsius degreescelsius celsius centigrade ℃ degcelsius °celsius"
	fahrenheit = "°f degf degreef degreesf degreefahrenheit degreesfahrenheit fahrenheit ℉ degfahrenheit °fahrenheit"
	// scaleless are degrees that do not say of which scale.
	scaleless = " ° deg degs degree degrees "
)

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

// spellings holds the units of each dimension by their spellings.
var spellings = func() (all [Ratio + 1]map[string]Unit) {
	for d := range all {
		all[d] = map[string]Unit{}
	}
	for u := None + 1; int(u) < len(units); u++ {
		i := &units[u]
		for _, w := range append(strings.Fields(i.also), i.name, i.one) {
			if key, ok := spelling(w, new([longestUnit]byte)); ok && len(key) > 0 {
				all[i.dim][string(key)] = u
			}
		}
	}
	return all
}()

// longestUnit is more bytes than any unit is spelt with.
const longestUnit = 48

// spelling takes out of a unit's name what does not tell it from another: capitals,
// blanks and points. The three signs that look like that of a degree are one.
func spelling(s string, buf *[longestUnit]byte) (key []byte, ok bool) {
	if len(s) > longestUnit {
		return nil, false
	}
	key = buf[:0]
	for i := 0; i < len(s); i++ {
		switch c := s[i]; {
		case c == ' ' || c == '.':
		case 'A' <= c && c <= 'Z':
			key = append(key, c+'a'-'A')
		case strings.HasPrefix(s[i:], "º") || strings.HasPrefix(s[i:], "˚"):
			key = append(key, "°"...)
			i++
		default:
			key = append(key, c)
		}
	}
	return key, true
}

// find returns the unit of dimension d that s spells, or None.
func find(s string, d Dimension) Unit {
	if int(d) >= len(spans) || s == "" {
		return None
	}
	for u := spans[d][0]; u < spans[d][1]; u++ {
		if s == units[u].name {
			return u
		}
	}
	var buf [longestUnit]byte
	key, ok := spelling(s, &buf)
	if !ok {
		return None
	}
	return spellings[d][string(key)]
}

// noScale reports whether s spells degrees, and not of which scale.
func noScale(s string) bool {
	var buf [longestUnit]byte
	key, ok := spelling(s, &buf)
	return ok && len(key) > 0 && strings.Contains(scaleless, " "+string(key)+" ")
}
