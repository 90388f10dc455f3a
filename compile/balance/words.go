package balance

import (
	"fmt"
	"math"
	"strconv"

	"vivary/compile/climate"
	"vivary/plan"
	"vivary/schema/quantity"
)

// Lines says the report in a keeper's words and units, one fact a line. Every figure
// that is not known exactly is told with the ends between which it is to be expected.
func (r *Report) Lines(e *plan.Enclosure) []string {
	w := words{r, unitOf(e)}
	out := append([]string{w.aim()}, w.heat()...)
	out = append(out, "After a power cut, in the coldest room, "+w.falls(r.Cooldown()),
		"If the house cools too, with "+w.degrees(0)+" outside, "+w.falls(r.ColdHouse()))
	return append(out, w.water()...)
}

// words puts a report into a keeper's degrees.
type words struct {
	*Report
	unit quantity.Unit
}

// unitOf is the unit of temperature in which the keeper writes.
func unitOf(e *plan.Enclosure) quantity.Unit {
	if e.Climate != nil && e.Climate.WarmEnd.Set() {
		return e.Climate.WarmEnd.V.Unit
	}
	if e.Place != nil && e.Place.Temperature.Set() {
		return e.Place.Temperature.V.Unit
	}
	return quantity.Celsius
}

func (w words) degrees(x climate.Celsius) string { return quantity.Format(float64(x), w.unit) }

// aim says for what temperatures the balance is made.
func (w words) aim() string {
	room := "a room of " + quantity.FormatRange(float64(w.Box.Room.Low), float64(w.Box.Room.High), w.unit)
	switch {
	case len(w.Heaters) == 0 && w.Warm == w.Box.Room.Low:
		return "Reckoned at " + w.degrees(w.Warm) + ", the coldest of " + room
	case w.Warm == w.Cool:
		return "Aims at " + w.degrees(w.Warm) + " in " + room
	}
	return "Aims at " + w.degrees(w.Warm) + " at the warm end and " + w.degrees(w.Cool) + " at the cool end, " + w.degrees(w.Gradient.Mean) + " on average, in " + room
}

// rise is a difference of temperatures.
func (w words) rise(b climate.Band[climate.Kelvin]) string {
	step := quantity.CelsiusStep
	if w.unit == quantity.Fahrenheit {
		step = quantity.FahrenheitStep
	}
	in := func(x climate.Kelvin) climate.Kelvin {
		return climate.Kelvin(quantity.Quantity{Value: float64(x), Unit: step}.In(step))
	}
	return band(climate.Band[climate.Kelvin]{Low: in(b.Low), Likely: in(b.Likely), High: in(b.High)}, step.String())
}

// heat says what is lost, what the heaters give, and how hot it gets if one sticks.
func (w words) heat() []string {
	b := &w.Gradient.Balance
	out := []string{fmt.Sprintf("Loses for each kelvin above the room: walls %.2f W, lid %.2f W, floor %.2f W, air changes %.2f W", float64(b.Walls), float64(b.Lid), float64(b.Base), float64(b.Vents))}
	if len(w.Heaters) == 0 {
		return append(out, "No heater: the inside follows the room.")
	}
	hot := b.WarmestIfStuck
	out = append(out,
		"Needs "+band(b.Needed, "W")+" inside in the coldest room, and the heaters give "+band(b.Supply, "W")+": "+b.Verdict.String(),
		"They reach "+w.rise(b.RiseReachable)+" above the room. What would tell most if it were measured: "+b.Matters.String(),
		"On for "+band(percent(b.Duty), "%")+" of the time; "+band(b.Month, "kWh")+" a month",
		fmt.Sprintf("If the thermostat sticks, in the warmest room: %s (%s); the limit is %s", w.degrees(hot.Likely), quantity.FormatRange(float64(hot.Low), float64(hot.High), w.unit), w.degrees(w.HardHigh)))
	if w.Gradient.CoolEnd == climate.CannotHold {
		out = append(out, "The cool end cannot be held: the room itself is warmer than "+w.degrees(w.Cool)+".")
	}
	return append(out, "Whether a warm and a cool end part as planned is for two thermometers to show: no equation gives it.")
}

// falls says when a cooling enclosure reaches the limit.
func (w words) falls(c climate.Cooldown) string {
	limit := w.degrees(c.Limit)
	if never(c.Air) && never(c.Substrate) {
		return "it does not fall to " + limit
	}
	return "it falls to " + limit + ": the air " + within(c.Air) + ", the substrate " + within(c.Substrate)
}

// water says what keeps the humidity, and what is in its way.
func (w words) water() []string {
	x := &w.Water
	out := []string{
		fmt.Sprintf("Humidity %s: at %.0f %% the air carries out %s a day; the dish gives some, misting has to bring about %s", w.RH, float64(x.Target), band(x.Needed, "ml"), band(x.Misted, "ml")),
		"Unmisted it settles at " + band(x.Unmisted, "%") + "; spray alone is gone in " + band(x.MistFades, "min") + "; a damp substrate is what holds it: " + x.Supply.String(),
	}
	if x.FogsAt.Low >= 99 {
		return append(out, "Dew point "+w.degrees(x.DewPoint)+"; the walls do not fog")
	}
	return append(out, fmt.Sprintf("Dew point %s; the coldest wall fogs at %s, corners at %.0f %%: %s", w.degrees(x.DewPoint), band(x.FogsAt, "%"), float64(x.FogsInCorner), x.Ceiling))
}

func percent(b climate.Band[climate.Share]) climate.Band[climate.Percent] {
	return climate.Band[climate.Percent]{Low: climate.Percent(100 * b.Low), Likely: climate.Percent(100 * b.Likely), High: climate.Percent(100 * b.High)}
}

func band[T ~float64](b climate.Band[T], unit string) string {
	r := b.Round()
	f := func(x T) string {
		if math.IsInf(float64(x), 0) || math.IsNaN(float64(x)) {
			return "?"
		}
		return strconv.FormatFloat(float64(x), 'f', -1, 64)
	}
	return f(r.Likely) + " " + unit + " (" + f(r.Low) + " to " + f(r.High) + ")"
}

func never(b climate.Band[climate.Minute]) bool { return math.IsInf(float64(b.Likely), 1) }

// within says after how long something is reached.
func within(b climate.Band[climate.Minute]) string {
	if never(b) {
		return "never"
	}
	return "in about " + lasting(b.Likely) + " (" + lasting(b.Low) + " to " + lasting(b.High) + ")"
}

func lasting(x climate.Minute) string {
	switch {
	case math.IsInf(float64(x), 1):
		return "never"
	case x >= 120:
		return strconv.FormatFloat(math.Round(float64(x)/6)/10, 'f', -1, 64) + " h"
	}
	return strconv.Itoa(int(math.Round(float64(x)))) + " min"
}
