package plan

import (
	"reflect"
	"strings"

	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/zone"
)

// tally counts in which units a collection's own blocks write values, and by which clock.
type tally struct {
	units           map[quantity.Unit]int
	twelve, twofold int // times of day with am or pm, and without
}

// ownWords are the blocks whose units are the keeper's: not sheets, which repeat a source.
func ownWords(block any) bool {
	switch block.(type) {
	case *SpeciesSheet, *TypeSheet, *FeederSheet, *Source:
		return false
	}
	return true
}

// countUnits counts the units in a file's blocks.
func (f *file) countUnits() tally {
	t := tally{units: map[quantity.Unit]int{}}
	for _, x := range f.blocks {
		if ownWords(x) {
			v := reflect.ValueOf(x).Elem()
			t.block(bindings[v.Type()], v, f.text)
		}
	}
	return t
}

func (t *tally) block(b *binding, v reflect.Value, text []byte) {
	for _, a := range b.order {
		switch x := v.FieldByIndex(a.field).Addr().Interface().(type) {
		case *Written[quantity.Quantity]:
			t.add(x.V.Unit, x.Set())
		case *Written[quantity.Range]:
			t.add(x.V.Unit, x.Set())
		case *Written[quantity.Size]:
			t.add(x.V.Unit, x.Set())
		case *Written[quantity.Face]:
			t.add(x.V.Unit, x.Set())
		case *Written[civil.Clock]:
			t.clock(*x, text)
		case *[]Written[civil.Clock]:
			for _, c := range *x {
				t.clock(c, text)
			}
		}
	}
	for _, ib := range b.inner {
		for _, x := range each(v.FieldByIndex(ib.field)) {
			t.block(ib.binding, x, text)
		}
	}
}

func (t *tally) add(u quantity.Unit, set bool) {
	if set {
		t.units[u]++
	}
}

// clock looks how a time of day is written: with an m, as in pm, or without. Half past
// seven in the morning is written alike by both.
func (t *tally) clock(c Written[civil.Clock], text []byte) {
	switch {
	case !c.Set():
	case byTwelve(string(text[c.At.Start:c.At.End])):
		t.twelve++
	case c.V >= 13*60 || c.V < 60:
		t.twofold++
	}
}

// unitsOf decides in which units a collection's keeper is told what is told: in those that
// the collection names, else in those that it writes most. Of what it writes nothing, or both
// as often, those are taken that it writes of all else; where that is both, or nothing, those
// that are usual where it stands.
func unitsOf(files []*file, about *About) quantity.Units {
	n := map[quantity.Dimension][2]int{}
	var clocks [2]int
	for _, f := range files {
		t := f.units()
		for u, times := range t.units {
			sides := n[u.Dimension()]
			sides[side(!quantity.Metric.Same(u))] += times
			n[u.Dimension()] = sides
		}
		clocks[0] += t.twofold
		clocks[1] += t.twelve
	}
	here := zone.Customary(about.TimeZone.V)
	written := func(dims ...quantity.Dimension) (sides [2]int) {
		for _, d := range dims {
			sides[0] += n[d][0]
			sides[1] += n[d][1]
		}
		return sides
	}
	kinds := [][2]int{written(quantity.Temperature, quantity.TemperatureStep), written(quantity.Length, quantity.Area), written(quantity.Volume), written(quantity.Mass)}
	others := here
	var most [2]int
	for _, k := range kinds {
		if k[0] != k[1] {
			most[side(k[1] > k[0])]++
		}
	}
	if most[0] == 0 || most[1] == 0 {
		others = mostly(most, here)
	}
	out := quantity.Metric
	for i, to := range []func(){
		func() { out.Temperature = quantity.Customary.Temperature },
		func() { out.Length = quantity.Customary.Length },
		func() { out.Volume = quantity.Customary.Volume },
		func() { out.Mass = quantity.Customary.Mass },
	} {
		if us := mostly(kinds[i], others); about.Units.V == schema.UnitsUS || us && !about.Units.Set() {
			to()
		}
	}
	out.TwelveHours = mostly(clocks, here)
	out.SundayFirst = here
	if about.Week.Set() {
		out.SundayFirst = about.Week.V == schema.WeekSunday
	}
	if about.Clock.Set() {
		out.TwelveHours = about.Clock.V == schema.Clock12
	}
	return out
}

// mostly reports whether the second is more than the first; of equals what is usual counts.
func mostly(sides [2]int, usual bool) bool {
	if sides[0] == sides[1] {
		return usual
	}
	return sides[1] > sides[0]
}

func side(second bool) int {
	if second {
		return 1
	}
	return 0
}

// Told is the value of a figure in a keeper's units: as the sheet states it where that is in
// them. Of a multiple of the animal, "3 x 2 length: 1350 cm2", it is what stands behind it.
func (f *Figure) Told(u quantity.Units) string { return told(f.Value.V, f.Range, u) }

// ToldWrong is Told for what is wrong for every member of a type.
func (f *Figure) ToldWrong(u quantity.Units) string { return told(f.Wrong.V, f.Beyond, u) }

func told(text string, r quantity.Range, u quantity.Units) string {
	if r.Unit == quantity.None || u.Same(r.Unit) || text == "" {
		return text
	}
	if multiple, _, ok := strings.Cut(text, ": "); ok {
		return multiple + ": " + u.TellRange(r)
	}
	if r.Low > r.High {
		return text // a multiple that no size was put into
	}
	return u.TellRange(r)
}

// Letter reports whether the collection's keeper prints on sheets of US letter size: as the plan
// says, else where it stands, or where it is written in the units of the United States.
func (c *Collection) Letter() bool {
	if c.About != nil && c.About.PaperSize.Set() {
		return c.About.PaperSize.V == schema.PaperLetter
	}
	return c.About != nil && (zone.Letter(c.About.TimeZone.V) || c.About.Units.V == schema.UnitsUS)
}
