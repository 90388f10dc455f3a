package readings

import (
	"fmt"
	"math"

	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/compile/explain"
	"vivary/schema/wording"
)

// bodyPart says what the enclosure is like as a body in its room, and why where nothing can be
// told.
func (r *Report) bodyPart() explain.Part {
	b := r.Body
	p := explain.Part{Head: "As a body in its room"}
	line := func(name, text string, under ...string) {
		p.Lines = append(p.Lines, explain.Line{Name: name, Text: text, Under: under})
	}
	if c := b.Cooling; c != nil {
		line("cooling", r.cooled(c), r.cooling(c)...)
	} else {
		line("cooling", "cannot be told: "+b.NoCooling)
	}
	if l := b.Loss; l != nil {
		under := []string{"on for " + percent(l.Duty) + " of the time on " + wording.Count(l.Days, "steady day", "steady days") + "; what goes out at the back of a heater is in it"}
		if c := b.Cooling; c != nil && c.Decay != nil {
			under = append(under, "with the time in which it cools it stores "+trimmed(l.Value*c.Decay.Tau.Value*60/1000, 1)+" kJ for each kelvin")
		}
		if e := b.Expected; e != nil {
			under = append(under, "by the plan "+wording.Band(e.Loss, "W/K")+", of the heat that goes in")
		}
		line("loss", "it takes "+fitted(l.Fit, "W/K")+" to hold it above the room", under...)
	} else {
		line("loss", "cannot be told: "+b.NoLoss)
	}
	if c := b.Change; c != nil {
		text := "the air changes " + fitted(c.Hour, "times an hour")
		if c.AtMost {
			text = "the air changes " + trimmed(c.Hour.High, 1) + " times an hour at the most: wet surfaces give vapour back meanwhile, and how much only the humidity of the room would tell"
		}
		var under []string
		if b.Expected != nil {
			under = append(under, "by the plan "+wording.Band(b.AirChange, "times an hour"))
		}
		line("air", text+", from "+r.at(c.From)+" to "+r.at(c.Until), under...)
	} else {
		line("air", "how often it changes cannot be told: "+b.NoChange)
	}
	if r.Unmeasured != "" {
		line("plan", "there is nothing to write into it: "+r.Unmeasured)
	}
	return p
}

func (r *Report) cooled(c *Cooling) string {
	text := "from " + r.value(c.Start, false) + " to " + r.value(c.End, false) + ", " + r.at(c.From) + " to " + r.at(c.Until)
	if c.Decay != nil {
		text += ": a time constant of " + fitted(c.Decay.Tau, "min") + " towards a room of " + r.value(c.Room, false)
	}
	return text
}

func (r *Report) cooling(c *Cooling) (under []string) {
	if r.Body.NoCooling != "" {
		under = append(under, "not sure: "+r.Body.NoCooling)
	}
	if d := c.Decay; d != nil {
		under = append(under, fmt.Sprintf("half a kelvin more or less of the room makes %s or %s min of it", whole(d.Warm), whole(d.Cold)))
	}
	if f := c.Alone; f != nil {
		under = append(under, "without the room: "+fitted(f.Tau, "min")+", towards "+r.value(f.Rests, false))
	} else {
		under = append(under, "without the room it does not tell")
	}
	if !math.IsNaN(c.LagTau) && c.LagTau > 0 {
		under = append(under, "from quarter of an hour to quarter of an hour: "+whole(c.LagTau)+" min, towards "+r.value(c.LagRoom, false))
	}
	if e := r.Body.Expected; e != nil {
		under = append(under, "by the plan "+wording.Band(e.Tau, "min"))
	}
	return under
}

// narrower says what the plan reckons before and after it knows what was measured.
func (r *Report) narrower(m *Measured) explain.Part {
	p := explain.Part{Head: "What the plan reckons with it"}
	if m.Before == nil {
		p.Lines = []explain.Line{{Text: "the plan says too little of box, room or heater for that"}}
		return p
	}
	room := climate.Conditions{Room: climate.Celsius(m.Room)}
	u := r.plan().Degrees()
	add := func(name, text string) { p.Lines = append(p.Lines, explain.Line{Name: name, Text: text}) }
	z := m.Before.At(room)
	if !math.IsNaN(m.Air) {
		add("air", "expected "+wording.Degrees(z.Air, u)+" in a room of "+r.value(m.Room, false)+"; measured "+r.value(m.Air, false)+asExpected(m.Air, z.Air))
	}
	if !math.IsNaN(m.Spot) {
		add("spot", "expected "+wording.Degrees(z.Spot, u)+"; measured "+r.value(m.Spot, false)+asExpected(m.Spot, z.Spot))
	}
	if m.After.Odd && !m.Before.Odd {
		add("", "that is so far from what heater, box and room give that the plan would reckon nothing with it: look whether gauge, place and heater are as they are written")
		return p
	}
	add("coldest", "the air in the coldest room: "+r.narrowed(func(b *balance.Report) climate.Band[climate.Celsius] { return b.Coldest().Air }, m))
	add("warmest", "the air in the warmest room: "+r.narrowed(func(b *balance.Report) climate.Band[climate.Celsius] { return b.Warmest().Air }, m))
	if len(m.Before.Heaters) > 0 {
		add("stuck", "the spot if a thermostat sticks: "+r.narrowed(func(b *balance.Report) climate.Band[climate.Celsius] { return b.Stuck().Spot }, m))
	}
	return p
}

// asExpected sets a measurement beside its band. A gauge may be off by a kelvin.
func asExpected(v float64, b climate.Band[climate.Celsius]) string {
	const off = 1
	switch {
	case v > float64(b.High)+off:
		return ", warmer than that"
	case v < float64(b.Low)-off:
		return ", colder than that"
	}
	return ", as expected"
}

func fitted(f Fit, unit string) string {
	return wording.Band(climate.Band[float64]{Low: f.Low, Likely: f.Value, High: f.High}, unit)
}

func whole(x float64) string { return trimmed(x, 0) }
