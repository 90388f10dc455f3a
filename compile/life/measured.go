package life

import (
	"strings"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// harsh is a measurement outside the limits that harm.
type harsh struct {
	seen
	what  *schema.Figure
	where string // as in the log
	text  string
	limit string // the range, in words
	of    string // of what it is the limit
	f     *plan.Figure
}

// measure holds a measurement against the limits that harm. One within them answers an
// earlier one that was not.
func (r *reader) measure(e *plan.Event) {
	r.zones(e)
	for i, a := range e.Args {
		r.shown(e, i)
		if e.Where(i) == "room" {
			continue
		}
		for _, limit := range []struct {
			what *schema.Figure
			dim  quantity.Dimension
		}{{schema.FigureTemperatureHard, quantity.Temperature}, {schema.FigureHumidityHard, quantity.Humidity}} {
			q, err := quantity.Parse(a.V, limit.dim)
			if err != nil {
				continue
			}
			kept := r.harsh[:0]
			for _, x := range r.harsh {
				if x.what != limit.what || x.where != e.Where(i) {
					kept = append(kept, x)
				}
			}
			r.harsh = kept
			if r.sheet == nil {
				continue
			}
			f := r.sheet.Figure(limit.what, "")
			if f == nil {
				continue
			}
			within, bears, of := f.Range, f.Value.V, "it bears"
			if e.Where(i) == "spot" && limit.what == schema.FigureTemperatureHard {
				within, f = plan.SurfaceRange(r.sheet, q.Value)
				bears, of = quantity.FormatRange(within.Low, within.High, q.Unit), "its warm surface is to have"
			}
			if !within.Contains(q.Value) {
				r.harsh = append(r.harsh, harsh{see(e), limit.what, e.Where(i), a.V, bears, of, f})
			}
		}
	}
}

// name is what was measured, and where if that was said.
func (x *harsh) name() string {
	if x.where == "" {
		return x.what.Name
	}
	return x.what.Name + "-" + x.where
}

// Measurement is what thermometers showed at one time; what was not measured is not set.
type Measurement struct {
	On                     civil.Date
	Spot, Air, Room, Power plan.Written[quantity.Quantity]
}

// Reading is one value that a line of the log says was measured.
type Reading struct {
	On    civil.Date
	Clock plan.Written[civil.Clock] // where one is written
	Where string                    // one of schema.MeasuredAt, or "" where the line does not say
	Damp  bool                      // a humidity; else a temperature
	Value quantity.Quantity
}

// shown keeps the value at a place of a line.
func (r *reader) shown(e *plan.Event, i int) {
	for _, dim := range []quantity.Dimension{quantity.Temperature, quantity.Humidity} {
		if q, err := quantity.Parse(e.Args[i].V, dim); err == nil {
			r.out.Shown = append(r.out.Shown, Reading{e.Date, e.Clock, e.Where(i), dim == quantity.Humidity, q})
			return
		}
	}
}

// zones keeps what was measured at named places.
func (r *reader) zones(e *plan.Event) {
	m := Measurement{On: e.Date}
	for i, a := range e.Args {
		to, dim := &m.Power, quantity.Power
		switch e.Where(i) {
		case "spot":
			to, dim = &m.Spot, quantity.Temperature
		case "air":
			to, dim = &m.Air, quantity.Temperature
		case "room":
			to, dim = &m.Room, quantity.Temperature
		}
		if q, err := quantity.Parse(a.V, dim); err == nil {
			*to = plan.Written[quantity.Quantity]{V: q, At: a.At}
		}
	}
	if m.Room.Set() {
		r.out.Measured = append(r.out.Measured, m)
	}
}

// climate asks for what was measured outside the limits to be put right.
func (r *reader) climate() {
	if len(r.living()) == 0 {
		return
	}
	for _, x := range r.harsh {
		r.out.Asks = append(r.out.Asks, Ask{Name: "measured/" + x.name() + "/" + x.on.String(), From: x.on, Every: 1, Urgent: true, Harm: HarmIll, At: x.at, Cited: x.f.Cited,
			Text:  x.text + " was measured " + x.on.Words() + ", " + x.limit + " is what " + x.of + ": put it right now; log measured",
			Said:  x.text + " was measured on " + x.on.Words(),
			Limit: x.limit + ", " + x.f.Name.V + ", species sheet " + r.sheet.Name.V,
			Write: "what is measured there now, with " + strings.TrimSpace("measured "+x.where)})
	}
}

// weighedWithin is for how many days two weights say something of each other (common
// practice, no source).
const weighedWithin = 120

// thin asks for help where an animal has lost more of its weight than its kind should.
func (r *reader) thin(t *track, w quantity.Quantity, e *plan.Event) {
	t.lean = lean{}
	if t.Sheet == nil || t.now() != 1 || !t.Weight().Set() || e.Date-t.Weighed() > weighedWithin {
		return
	}
	f := t.Sheet.Figure(schema.FigureWeightLoss, t.stage().Stage)
	if f == nil || t.Weight().V.Value <= 0 {
		return
	}
	lost := 100 * (1 - w.Value/t.Weight().V.Value) // in percent
	if lost <= f.Range.Low {
		return
	}
	t.lean = lean{see(e), quantity.Format(lost, quantity.Percent), t.Weighed(), f}
}

// lean is an animal that has lost much weight.
type lean struct {
	seen
	lost  string
	since civil.Date
	f     *plan.Figure
}

// wasting asks about an animal that has lost much weight, until it is weighed again.
func (r *reader) wasting(t *track) {
	x := t.lean
	if !x.ok {
		return
	}
	t.Asks = append(t.Asks, Ask{Name: "thin/" + x.on.String(), From: x.on, Every: 1, Urgent: true, Harm: HarmIll, At: x.at, Cited: x.f.Cited,
		Text:  x.lost + " of its weight lost since " + x.since.Words() + ": get help now, end a cool rest; log weighed",
		Said:  t.Animals.Name.V + " has lost " + x.lost + " of its weight since " + x.since.Words(),
		Limit: x.f.Value.V + ", weight-loss, species sheet " + t.Sheet.Name.V,
		Write: "weighed, when it is weighed again; ill, treated or died"})
}

// heavy reports whether a weight cannot be that of such an animal, and says so.
func (r *reader) heavy(t *track, w quantity.Quantity, e *plan.Event) bool {
	if t.Sheet == nil {
		return false
	}
	f := t.Sheet.Figure(schema.FigureMass, t.stage().Stage)
	if f == nil || w.Value <= 10*f.Range.High {
		return false
	}
	r.found.Add(finding.Finding{Rule: ruleWeight, At: e.At, Text: "that is more than ten times as heavy as one can be: the line changes nothing",
		Limit: f.Value.V + ", mass, species sheet " + t.Sheet.Name.V, Source: r.c.Library.Cite(f.Cited), Write: "weighed, with the weight and its unit as the scale shows them"})
	return true
}
