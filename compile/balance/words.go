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
	w := words{r, e.Units}
	out := w.heat()
	out = append(out, "After a power cut, in the coldest room, "+w.falls(r.Cooldown()),
		"If the house cools too, with "+w.degrees(0)+" outside, "+w.falls(r.ColdHouse()))
	return append(out, w.water(b)...)
}

// words puts a report into a keeper's units.
type words struct {
	*Report
	units quantity.Units
}

func (w words) degrees(x climate.Celsius) string {
	return quantity.Format(float64(x), w.units.Of(quantity.Celsius))
}

func (w words) band(b climate.Band[climate.Celsius]) string {
	return wording.Degrees(b, w.units.Of(quantity.Celsius))
}

func (w words) ml() quantity.Unit { return w.units.Of(quantity.Millilitre) }

// heat says what the spot and the air come to, how long the heaters are on for it, and
// what happens when one sticks.
func (w words) heat() []string {
	room := w.Box.Room
	if len(w.Heaters) == 0 {
		return []string{"No heater: the inside follows the room, about " + w.band(w.Coldest().Air) + " in the coldest and " + w.band(w.Warmest().Air) + " in the warmest"}
	}
	out := []string{w.spot(w.Coldest())}
	for _, at := range []struct {
		name string
		room climate.Celsius
		z    climate.Zones
	}{{"coldest", room.Low, w.Coldest()}, {"warmest", room.High, w.Warmest()}} {
		out = append(out, "In the "+at.name+" room, "+w.degrees(at.room)+": the warm spot "+w.band(at.z.Spot)+", the rest of the air "+w.band(at.z.Air)+w.on(at.z))
		if room.Low == room.High {
			break
		}
	}
	if w.timed() {
		out = append(out, "In the coldest nights, with what a timer switches off: the warmest place "+w.band(w.Dark().Spot)+", the air "+w.band(w.Dark().Air))
	}
	if z := w.Dried(); !math.IsNaN(float64(z.Floor.Likely)) {
		out = append(out, "The floor over the heater beneath: "+w.band(w.Coldest().Floor)+"; once the substrate over it is dry "+w.band(z.Floor))
	}
	stuck := w.Stuck()
	out = append(out,
		"If a thermostat sticks, in the warmest room: the spot "+w.band(stuck.Spot)+", "+w.degrees(w.Touch)+" at the most; the air "+w.band(stuck.Air)+", "+w.degrees(w.HardHigh)+" at the most",
		"The heaters draw "+wording.Band(w.Month(), "kWh")+" a month")
	return append(out, w.sure())
}

// spot answers whether the spot that is aimed for is reached.
func (w words) spot(z climate.Zones) string {
	if !w.Report.Spot.Known() {
		return "No warm spot is aimed for"
	}
	want := w.degrees(climate.Celsius(w.Report.Spot.Low))
	answer := "no"
	switch {
	case z.Spot.Low >= climate.Celsius(w.Report.Spot.Low)-0.5:
		answer = "yes"
	case z.Spot.Likely >= climate.Celsius(w.Report.Spot.Low)-0.5:
		answer = "likely"
	case z.Spot.High >= climate.Celsius(w.Report.Spot.Low)-0.5:
		answer = "hardly"
	}
	whose := ""
	if !w.Report.Spot.Planned {
		whose = ", as the species sheet has it"
	}
	return "A spot of " + want + whose + ": " + answer + w.on(z) + "; the rest of the air is then " + w.band(z.Air)
}

// on says how long heaters with a thermostat are on.
func (w words) on(z climate.Zones) string {
	if z.Duty.High <= 0 {
		return ""
	}
	return ", on " + wording.Band(percent(z.Duty), "%") + " of the time"
}

// sure says what all this rests on, and what would tell most.
func (w words) sure() string {
	if w.Readings > 0 {
		return "Reckoned with " + wording.Count(w.Readings, "measurement", "measurements") + " of yours"
	}
	return "What would tell most if it were known: " + w.Coldest().Matters.String() + ". A measurement narrows it: in the log, measured spot " + w.degrees(31) + " air " + w.degrees(23) + " room " + w.degrees(20) + ", with your figures"
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
	if w.RH.High <= 0 {
		return nil
	}
	out := []string{
		"Humidity " + w.RH.String() + ": at " + share(x.Target) + " the air carries out " + wording.Amount(x.Needed, w.ml()) + " a day; the dish gives some, misting or watering has to bring about " + wording.Amount(x.Misted, w.ml()),
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
	out := "The care brings " + quantity.Format(quantity.Significant(b.Day, 2), w.ml()) + " a day"
	if b.Until {
		out += ", and more where no amount is said"
	}
	out += "; at 100 % the air carries out " + wording.Amount(x.Saturated, w.ml()) + ", and what is beyond stays as water: "
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
