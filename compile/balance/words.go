package balance

import (
	"math"

	"vivary/compile/climate"
	"vivary/plan"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Lines says the report in a keeper's words and units, one fact a line. Every figure
// that is not known exactly is told with the ends between which it is to be expected.
func (r *Report) Lines(e *plan.Enclosure, b Brought) []string {
	w := words{r, e.Degrees()}
	out := append([]string{w.aim()}, w.heat()...)
	out = append(out, "After a power cut, in the coldest room, "+w.falls(r.Cooldown()),
		"If the house cools too, with "+w.degrees(0)+" outside, "+w.falls(r.ColdHouse()))
	return append(out, w.water(b)...)
}

// words puts a report into a keeper's degrees.
type words struct {
	*Report
	unit quantity.Unit
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

// heat says what is lost, what the heaters give, and how hot it gets if one sticks.
func (w words) heat() []string {
	b := &w.Gradient.Balance
	out := []string{"Loses for each kelvin above the room: walls " + watts(b.Walls) + ", lid " + watts(b.Lid) + ", floor " + watts(b.Base) + ", air changes " + watts(b.Vents)}
	if len(w.Heaters) == 0 {
		return append(out, "No heater: the inside follows the room.")
	}
	hot := b.WarmestIfStuck
	out = append(out,
		"Needs "+wording.Band(b.Needed, "W")+" inside in the coldest room, and the heaters give "+wording.Band(b.Supply, "W")+": "+b.Verdict.String(),
		"They reach "+wording.Rise(b.RiseReachable, w.unit)+" above the room. What would tell most if it were measured: "+b.Matters.String(),
		"On for "+wording.Band(percent(b.Duty), "%")+" of the time; "+wording.Band(b.Month, "kWh")+" a month",
		"If the thermostat sticks, in the warmest room: "+wording.Degrees(hot, w.unit)+"; the limit is "+w.degrees(w.HardHigh))
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

// Brought is the water that the care brings in.
type Brought struct {
	Day   float64 // ml a day; 0 where no care says how much
	Until bool    // some of the care has no amount: it is done until it is damp
}

// water says what keeps the humidity, and what is in its way.
func (w words) water(b Brought) []string {
	x := &w.Water
	out := []string{
		"Humidity " + w.RH.String() + ": at " + share(x.Target) + " the air carries out " + wording.Band(x.Needed, "ml") + " a day; the dish gives some, misting or watering has to bring about " + wording.Band(x.Misted, "ml"),
	}
	if b.Day > 0 {
		out = append(out, w.brought(b))
	}
	out = append(out, "Unmisted it settles at "+wording.Band(x.Unmisted, "%")+": "+w.settled()+". Spray alone is gone in "+wording.Band(x.MistFades, "min")+"; a damp substrate is what keeps it up: "+x.Supply.String())
	if x.Unmisted.Likely > mouldy {
		out = append(out, "What stays above "+share(mouldy)+" for weeks grows mould (ISO 13788, from memory). Whether it harms is disputed: keepers mostly call it harmless to a healthy animal, and a sign of wet, old food and little air; others call it deadly.")
	}
	if x.FogsAt.Low >= 99 {
		return append(out, "Dew point "+w.degrees(x.DewPoint)+"; the walls do not fog")
	}
	return append(out, "Dew point "+w.degrees(x.DewPoint)+"; the coldest wall fogs at "+wording.Band(x.FogsAt, "%")+", corners at "+share(x.FogsInCorner)+": "+x.Ceiling.String())
}

// mouldy is the humidity above which surfaces grow mould within weeks.
const mouldy climate.Percent = 80

// brought says what becomes of the water that is planned.
func (w words) brought(b Brought) string {
	x := w.Watered(b.Day)
	out := "The care brings " + quantity.Format(quantity.Significant(b.Day, 2), quantity.Millilitre) + " a day"
	if b.Until {
		out += ", and more where no amount is said"
	}
	out += "; at 100 % the air carries out " + wording.Band(x.Saturated, "ml") + ", and what is beyond stays as water: "
	if math.IsInf(float64(x.Stands.Likely), 1) {
		return out + "likely nothing"
	}
	return out + "it likely stands after " + wording.Lasting(climate.InMinutes(x.Stands))
}

// settled sets what it settles at beside the range that is aimed for.
func (w words) settled() string {
	x := &w.Water
	switch {
	case x.Upper == climate.CannotHold:
		return "wetter than that"
	case x.Upper == climate.MayNotHold:
		return "likely wetter than that"
	case x.Unmisted.High < climate.Percent(w.RH.Low):
		return "drier than that without misting"
	case x.Unmisted.Likely < climate.Percent(w.RH.Low):
		return "likely drier than that without misting"
	}
	return climate.Holds.String()
}

func watts[T ~float64](x T) string { return quantity.Format(float64(x), quantity.Watt) }

func share(x climate.Percent) string { return quantity.Format(float64(x), quantity.PercentRH) }

func percent(b climate.Band[climate.Share]) climate.Band[climate.Percent] {
	return climate.Band[climate.Percent]{Low: climate.Percent(100 * b.Low), Likely: climate.Percent(100 * b.Likely), High: climate.Percent(100 * b.High)}
}

func never(b climate.Band[climate.Minute]) bool { return math.IsInf(float64(b.Likely), 1) }

// within says after how long something is reached.
func within(b climate.Band[climate.Minute]) string {
	if never(b) {
		return "never"
	}
	return "in about " + wording.Lasting(b)
}
