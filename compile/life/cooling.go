package life

import (
	"math"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
)

// UsualRamp is how far a thermostat is set down or up in a week where the plan does not
// say, in °C: the default of a season's ramp.
const UsualRamp = 3.0

// tooCool is how far below what is aimed for an animal that takes a rest no more digests
// what it ate, in °C (common practice, no source).
const tooCool = 3.0

// Cooling is what a season does to the warmth of an enclosure.
type Cooling struct {
	Season *plan.Season
	Usual  float64 // what the thermostat, or the warm end, is at outside of it, in °C; NaN where it is not known
	Aim    float64 // what it goes down to, in °C; NaN where it is not known
	Unit   quantity.Unit
	Off    bool // the heaters are off once it is there
	// Room says that the season is meant to be colder than the room ever is: Aim is the
	// room's lowest then.
	Room bool
	// Rest says that it is too cold to digest, so that it is a cool rest and no mild
	// season; Fasting that there are no meals in it.
	Rest, Fasting bool
	ramp          float64 // °C a week
	thermostat    bool
	heated        bool
}

// CoolingOf works out what a season of an enclosure does to its warmth.
func CoolingOf(e *plan.Enclosure, s *plan.Season) *Cooling {
	c := &Cooling{Season: s, Usual: math.NaN(), Aim: math.NaN(), Unit: e.Degrees(), Off: s.Heating.V == "off", ramp: UsualRamp, heated: e.Heated()}
	if s.Ramp.Set() && s.Ramp.V.Value > 0 {
		c.ramp = s.Ramp.V.Value
	}
	c.usually(e)
	switch {
	case s.Climate != nil && s.Climate.WarmEnd.Set():
		c.Aim = s.Climate.WarmEnd.V.High
		c.inRoom(e)
	case c.Off && e.Place != nil && e.Place.Temperature.Set():
		c.Aim = e.Place.Temperature.V.Low
	}
	// Heaters that are off while meals go on: the plan says that the room is warm enough.
	warm := c.Off && s.Feeding.Set() && s.Feeding.V != "none" && (s.Climate == nil || !s.Climate.WarmEnd.Set())
	c.Rest = !warm && (c.Off || !(c.Aim >= c.Usual)) && c.cold(e.Sheet)
	c.Fasting = s.Feeding.V == "none" || c.Rest && c.Off && !s.Feeding.Set()
	return c
}

// corner is how much colder than the lowest of its room a box by a wall or a window may
// be, in °C (common practice, no source).
const corner = 3.0

// inRoom raises the aim to the lowest that the room has, where it is far above: nothing in
// it gets any colder, whatever the thermostat is set to.
func (c *Cooling) inRoom(e *plan.Enclosure) {
	if e.Place != nil && e.Place.Temperature.Set() && e.Place.Temperature.V.Low > c.Aim+corner {
		c.Aim, c.Room = e.Place.Temperature.V.Low, true
	}
}

// usually finds how warm it is outside of the season: what the highest thermostat is
// set to, else the warm end.
func (c *Cooling) usually(e *plan.Enclosure) {
	if e.Climate == nil {
		return
	}
	for _, h := range e.Climate.Heaters {
		if t := h.Thermostat; t.Set() && !(t.V.Value <= c.Usual) {
			c.Usual, c.Unit, c.thermostat = t.V.Value, t.V.Unit, true
		}
	}
	if w := e.Climate.WarmEnd; w.Set() && !c.thermostat {
		c.Usual = w.V.High
	}
}

// Rests reports whether a species takes a cool rest.
func Rests(sheet *plan.SpeciesSheet) bool {
	return sheet != nil && !sheet.Is(schema.FigureRest, "none") &&
		(sheet.Figure(schema.FigureRest, "") != nil || sheet.Figure(schema.FigureWinterRest, "") != nil)
}

// cold reports whether the species cannot digest at what the season goes down to. Where
// nothing is known of either, heaters that are off are cold enough.
func (c *Cooling) cold(sheet *plan.SpeciesSheet) bool {
	if math.IsNaN(c.Aim) || sheet == nil {
		return c.Off
	}
	known := false
	figure := func(what *schema.Figure) (quantity.Range, bool) {
		f := sheet.Figure(what, "adult")
		known = known || f != nil
		if f == nil {
			return quantity.Range{}, false
		}
		return f.Range, true
	}
	soft, hasSoft := figure(schema.FigureTemperatureSoft)
	rest, hasRest := figure(schema.FigureWinterRest)
	target, hasTarget := figure(schema.FigureTemperatureTarget)
	switch {
	case hasSoft && c.Aim < soft.Low && !soft.Contains(c.Aim),
		hasRest && (c.Aim <= rest.High || rest.Contains(c.Aim)),
		hasTarget && (Rests(sheet) || !hasSoft) && !c.Room && c.Aim < target.Low-tooCool:
		return true
	}
	return !known && c.Off
}

// steps is how many weekly steps lie between the usual warmth and the aim, at most so
// many that a season of so many days has room to go down and to come back.
func (c *Cooling) steps(days int) int {
	if !(c.Aim < c.Usual) || !c.heated {
		return 0
	}
	return max(0, min(int(math.Ceil((c.Usual-c.Aim)/c.ramp-1e-9)), (days+7)/14))
}

// level is what the thermostat is set to after so many steps down, in °C.
func (c *Cooling) level(steps int) float64 {
	return max(c.Aim, c.Usual-float64(steps)*c.ramp)
}
