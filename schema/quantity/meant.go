package quantity

import (
	"math"
	"regexp"
	"strings"
)

// asked are the units of each dimension that somebody may mean who writes none.
var asked = [Ratio + 1][]Unit{
	Temperature:     {Celsius, Fahrenheit},
	TemperatureStep: {CelsiusStep, FahrenheitStep},
	Humidity:        {PercentRH},
	Length:          {Centimetre, Inch, Millimetre},
	Area:            {SquareCentimetre, SquareInch},
	Volume:          {Millilitre, FluidOunce, Litre, Gallon},
	Mass:            {Gram, Ounce},
	Power:           {Watt},
	Duration:        {Minutes, Hours, Days},
	EnergyDensity:   {KilojoulePerGram, KilocaloriePerGram},
	Ratio:           {Percent},
}

// Readings returns what a text without a unit, or with degrees of no scale, is with each
// unit that may be meant by it and with which it lies within a band. A band of nothing
// holds everything, and any usual unit may be meant unless some are given.
func (e *Error) Readings(d Dimension, band Range, among []Unit) (fit []string) {
	if e.Kind != NoUnit && e.Kind != NoScale || int(d) >= len(asked) {
		return nil
	}
	low, high, _, f := ends(e.Text, d, true)
	if f.kind != 0 {
		return nil
	}
	if len(among) == 0 {
		among = asked[d]
	}
	for _, u := range among {
		i := &units[u]
		r := Range{i.canonical(min(low, high)), i.canonical(max(low, high)), u}
		if outside(r.Low, d) == "" && outside(r.High, d) == "" && (band == Range{} || band.Encloses(r)) {
			fit = append(fit, r.String())
		}
	}
	return fit
}

// OtherScale returns a temperature with the same figures in the other scale, where with
// its own it lies outside a band and with the other within it.
func OtherScale(r, band Range) (text string, ok bool) {
	other := Fahrenheit
	switch {
	case r.Unit == Fahrenheit:
		other = Celsius
	case r.Unit != Celsius:
		return "", false
	}
	o := Range{other.info().canonical(shortest(r.Low, r.Unit)), other.info().canonical(shortest(r.High, r.Unit)), other}
	return o.String(), !band.Contains(r.Low) && !band.Contains(r.High) && band.Encloses(o)
}

// meant returns the texts that may be meant by one that does not read, likeliest first.
func meant(s string, d Dimension, f fault, span bool) (all []string) {
	s = folded(s)
	if f.kind == OutOfOrder {
		r, _ := read(s, d, span)
		return []string{Range{r.High, r.Low, r.Unit}.String()}
	}
	all = append(all, bared(s))
	if d == TemperatureStep {
		all = append(all, plusMinus.ReplaceAllString(s, ""))
	}
	if m := spread.FindStringSubmatch(s); m != nil && span {
		if t, ok := around(m[1], m[2], d); ok {
			all = append(all, t)
		}
	}
	if t, ok := sum(s, d); ok {
		all = append(all, t)
	}
	if t, ok := twice(s, d); ok {
		all = append(all, t)
	}
	all = append(all, spaced.ReplaceAllString(s, "$1$2"))
	if span {
		if t, ok := oneUnit(s, d); ok {
			all = append(all, t)
		}
		if !parted(d) { // "2/5 cup" is a fraction
			all = append(all, strings.Replace(s, "/", " to ", 1))
		}
	}
	return all
}

var (
	// What is written around a value and adds nothing to it.
	before    = regexp.MustCompile(`(?i)^(?:about|approximately|approx\.?|around|circa|ca\.?|roughly|some|~|≈|every|each|after)\s*`)
	behind    = regexp.MustCompile(`(?i)[\s,;]+(?:approximately|approx\.?|or so|each|a day|per day|daily|deep|high|tall|long|wide|thick|in all|warm|hot)?[.,;!]*$`)
	plusMinus = regexp.MustCompile(`^(?:±|\+/-|\+-)\s*`)
	spread    = regexp.MustCompile(`^(.*\d.*?)\s*(?:±|\+/-|\+-)\s*(.+)$`)
	spaced    = regexp.MustCompile(`^(\d{1,3}) (\d{3})\b`)
	measures  = regexp.MustCompile(`(?i)^(\d+(?:[.,]\d+)?[^\d,]+?),?(?:\s+and)?\s*(\d.*)$`)
	doubled   = regexp.MustCompile(`^(.+?)\s*(?:/|=|\()\s*([^()]+?)\)?$`)
)

func bared(s string) string {
	return behind.ReplaceAllString(before.ReplaceAllString(s, ""), "")
}

// around returns the range of a value with what it may differ by to either side.
func around(middle, by string, d Dimension) (string, bool) {
	step := d
	if d == Temperature {
		step = TemperatureStep
	}
	m, f := read(middle, d, false)
	x, g := read(by, step, false)
	if g.kind != 0 { // "30 ± 2 C"
		return "", false
	}
	if f.kind != 0 {
		u := x.Unit
		if step != d {
			u = map[Unit]Unit{CelsiusStep: Celsius, FahrenheitStep: Fahrenheit}[u]
		}
		if m, f = read(middle+" "+u.String(), d, false); f.kind != 0 {
			return "", false
		}
	}
	return Range{settle(m.Low - x.Low), settle(m.Low + x.Low), m.Unit}.String(), true
}

// sum returns the sum of two values in different units, "1 ft 6 in", in the unit of the
// second.
func sum(s string, d Dimension) (string, bool) {
	m := measures.FindStringSubmatch(s)
	if m == nil {
		return "", false
	}
	a, f := read(m[1], d, false)
	b, g := read(m[2], d, false)
	if f.kind != 0 || g.kind != 0 || units[a.Unit].factor <= units[b.Unit].factor || b.Low >= units[a.Unit].factor || units[a.Unit].offset != 0 {
		return "", false
	}
	return Quantity{settle(a.Low + b.Low), b.Unit}.String(), true
}

// twice returns the first of two values that say the same in two units, "86 F (30 C)".
func twice(s string, d Dimension) (string, bool) {
	m := doubled.FindStringSubmatch(s)
	if m == nil {
		return "", false
	}
	a, f := read(m[1], d, true)
	b, g := read(m[2], d, true)
	if f.kind != 0 || g.kind != 0 || a.Unit == b.Unit {
		return "", false
	}
	// Each is rounded to what a keeper reads off.
	close := func(x, y float64) bool {
		return math.Abs(x-y) <= max(units[a.Unit].factor, units[b.Unit].factor)*0.6+math.Abs(x)/50
	}
	return m[1], close(a.Low, b.Low) && close(a.High, b.High)
}

// oneUnit returns a range whose ends have two units in the unit of the upper, where its
// lower end is a short number in that too.
func oneUnit(s string, d Dimension) (string, bool) {
	s, and := begun(s)
	_, rest, f := number(s, d)
	if f.kind != 0 {
		return "", false
	}
	unit, upper, found := cutRange(rest, and)
	if !found {
		return "", false
	}
	low, f := read(s[:len(s)-len(rest)]+" "+unit, d, false)
	high, g := read(upper, d, false)
	// A range in both scales is a slip more often than it is meant.
	if f.kind != 0 || g.kind != 0 || d == Temperature || low.Low > high.Low || !short(low.Low, high.Unit) {
		return "", false
	}
	return Range{low.Low, high.Low, high.Unit}.String(), true
}

// short reports whether a canonical value has two decimals at the most in unit u.
func short(v float64, u Unit) bool {
	x := shortest(v, u)
	return Decimals(x, 2) == x
}
