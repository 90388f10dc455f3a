package readings

import (
	"math"
	"path"
	"slices"
	"strings"

	"vivary/compile/explain"
	"vivary/compile/life"
	"vivary/compile/measure"
	"vivary/plan"
	"vivary/schema/wording"
)

// tested says what tests make of a gauge.
func (r *Report) tested(t *measure.Tested) (out []explain.Line) {
	line := func(text string, under ...string) {
		out = append(out, explain.Line{Name: "tested", Text: text, Under: under})
	}
	if t.On != 0 {
		text := t.On.Words() + ", " + wording.Days(t.Age) + " ago"
		if t.Age == 0 {
			text = t.On.Words() + ", today"
		}
		if t.HeatTested {
			text += "; temperatures are corrected by " + signed(t.HeatOff, r)
		}
		switch {
		case t.Salts == 2 && !math.IsInf(t.FarDamp, 1):
			text += "; humidities by a line through two salts: 60 % shown is " + trimmed(t.Damp(60), 1) + " %"
		case t.Salts == 1:
			text += "; humidities by " + plus(t.Add, 1) + " %, by one salt: far from it that may be wrong, and a second salt tells"
		}
		line(text)
	}
	for _, w := range t.Wrong {
		line(w.Text)
	}
	if t.Replace() {
		why := ""
		if t.FarHeat > measure.BadHeat {
			why = r.difference(t.FarHeat)
		}
		if t.FarDamp > measure.BadDamp && !math.IsInf(t.FarDamp, 1) {
			if why != "" {
				why += " and "
			}
			why += trimmed(t.FarDamp, 1) + " %"
		}
		if why == "" {
			why = "more than can be corrected"
		}
		line("it was off by " + why + ": replace it. More than " + r.difference(measure.BadHeat) + " or " + trimmed(measure.BadDamp, 0) + " % is not drift any more")
	}
	if t.On != 0 && t.Old() {
		line("the test is older than " + wording.Days(measure.TestDays) + ": test it again, over table salt for half a day to a day")
	}
	return out
}

func signed(k float64, r *Report) string {
	if k >= 0 {
		return "+" + r.difference(k)
	}
	return "-" + r.difference(-k)
}

func plus(x float64, digits int) string {
	if x >= 0 {
		return "+" + trimmed(x, digits)
	}
	return trimmed(x, digits)
}

// Found is a gauge that a plan names, with where it lies.
type Found struct {
	Gauge *plan.Gauge
	Life  *life.Enclosure // nil for one of a room or a rack
	Room  *plan.Room
	Rack  *plan.Rack // nil for one that is not of a rack
	Place string
	Tests []*plan.GaugeTest
}

// Of reports whether it may be about an enclosure.
func (f *Found) Of(l *life.Enclosure, c *plan.Collection) bool {
	switch {
	case f.Life != nil:
		return f.Life == l
	case f.Rack != nil:
		return c.RackOf(l.Plan) == f.Rack
	}
	return f.Room == l.Plan.Place
}

// GaugesFor are the gauges whose files are called so.
func GaugesFor(c *plan.Collection, lives []*life.Enclosure, file string) (all []Found) {
	base := path.Base(strings.ReplaceAll(file, `\`, "/"))
	fits := func(g *plan.Gauge) bool {
		return slices.ContainsFunc(g.Files, func(w plan.Written[string]) bool {
			ok, err := path.Match(w.V, base)
			return ok && err == nil
		})
	}
	for _, room := range c.Rooms {
		for _, g := range room.Gauges {
			if fits(g) {
				all = append(all, Found{Gauge: g, Room: room, Place: measure.Room, Tests: c.Tests(room.Name.V, g)})
			}
		}
	}
	for _, k := range c.Racks {
		for _, g := range k.Gauges {
			if fits(g) {
				all = append(all, Found{Gauge: g, Rack: k, Place: g.Place.Or(measure.Air), Tests: c.Tests(k.Name.V, g)})
			}
		}
	}
	for _, l := range lives {
		if l.Plan.Climate == nil {
			continue
		}
		for _, g := range l.Plan.Climate.Gauges {
			if fits(g) {
				all = append(all, Found{Gauge: g, Life: l, Room: l.Plan.Place, Place: g.Place.Or(measure.Air), Tests: c.Tests(l.Plan.Name.V, g)})
			}
		}
	}
	return all
}
