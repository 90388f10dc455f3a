package check

import (
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// measuredHarms is about the plan's own measurement; the log's ask by themselves.
func measuredHarms(r *Rule, e *Enclosure) {
	if e.Plan.Climate == nil || e.Plan.Climate.Measured == nil || e.total() == 0 {
		return
	}
	m := e.Plan.Climate.Measured
	for _, later := range e.Life.Measured {
		if m.On.Set() && later.On > m.On.V {
			return // measured again since
		}
	}
	hard, damp := e.figure(schema.FigureTemperatureHard), e.figure(schema.FigureHumidityHard)
	say := func(q plan.Written[quantity.Quantity], what string, bears quantity.Range, f *plan.Figure) {
		if !q.Set() || f == nil || bears.Contains(q.V.Value) {
			return
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: q.At, Text: q.V.String() + " was measured" + what, Limit: e.within(bears, q.V.Unit, f), Source: e.Cite(f),
			Write: "what is measured there once it is put right"})
	}
	if hard != nil {
		say(m.Air, " in the air", hard.Range, hard)
		touch, f := plan.SurfaceRange(e.Sheet, m.Spot.V.Value)
		say(m.Spot, " on the warmest surface", touch, f)
	}
	if damp != nil {
		say(m.Humidity, " of humidity", damp.Range, damp)
	}
}

// measuredOdd is about measurements that cannot be, or that say nothing.
func measuredOdd(r *Rule, e *Enclosure) {
	if e.Plan.Climate == nil {
		return
	}
	m := e.Plan.Climate.Measured
	odd := func(at *plan.Head, text, limit, write string, how finding.Severity) {
		e.Soft(finding.Finding{Rule: &r.Rule, At: at.At, Text: text, Source: r.Source, Limit: limit, Write: write}, how)
	}
	p, ok := e.report()
	if m != nil {
		switch {
		case m.On.Set() && m.On.V > e.Today:
			odd(&m.Head, "the measurement is of "+m.On.V.Words()+", which is after today", "", "the day on which it was measured", finding.Caution)
			return
		case (m.Spot.Set() || m.Air.Set()) && !m.Room.Set():
			odd(&m.Head, "what was measured says nothing of the heat without the room's temperature beside it", "", "the room's temperature beside it (room), as its thermometer showed then", finding.Advice)
			return
		}
	}
	if ok && p.Odd {
		at := &e.Plan.Climate.Head
		if m != nil {
			at = &m.Head
		}
		odd(at, "what was measured is far from what heater, box and room give: nothing is reckoned with it", "vivary why "+e.Plan.Name.V+" says what is to be expected",
			"the measurement once more, or the heater's power, size and place as they are", finding.Caution)
	}
	room := e.Plan.Place
	if room == nil || !room.Temperature.Set() || len(e.Life.Measured) == 0 {
		return
	}
	t := room.Temperature.V
	last := e.Life.Measured[len(e.Life.Measured)-1]
	if x := last.Room; x.Set() && e.Today-last.On < recently && (x.V.Value < t.Low-2 || x.V.Value > t.High+2) {
		e.Soft(finding.Finding{Rule: &r.Rule, At: x.At, Text: "room " + room.Name.V + " was measured at " + x.V.String() + ", and is said to be at " + t.String(), Source: r.Source,
			Limit: "what the plan says of the room", Write: "temperature of the room from " + quantity.FormatRange(min(t.Low, x.V.Value), max(t.High, x.V.Value), t.Unit) + ", if it was the room's thermometer"}, finding.Caution)
	}
}

// recently is for how many days a measurement of a room is held against what the plan says.
const recently civil.Date = 60
