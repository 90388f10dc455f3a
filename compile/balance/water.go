package balance

import (
	"vivary/compile/climate"
	"vivary/plan"
	"vivary/schema/quantity"
)

// DishHolds is how many ml a dish holds as people use it, at the most: a tenth of the
// floor, as deep as is written, else 5 cm; nothing where there is none (judgement).
func DishHolds(e *plan.Enclosure) float64 {
	const share, usual = 0.1, 50
	h := e.Housing
	if h == nil || h.Water.V == "none" {
		return 0
	}
	if !h.Inside.Set() {
		return 1000
	}
	deep := float64(usual)
	if h.DishDepth.Set() {
		deep = max(deep, h.DishDepth.V.Value)
	}
	return share * h.Inside.V.Length * h.Inside.V.Width * deep / 1000
}

// House is the humidity of a heated house (judgement): the dampest room by which an
// enclosure itself is judged.
var House = quantity.Range{Low: 40, High: 55, Unit: quantity.PercentRH}

// Own is the humidity that it settles at with so many ml of water a day by what the
// enclosure itself is like: in its room, but in none that is damper than a heated house, or
// than the most that the animals bear, in %. What the room is cannot be the fault of the
// enclosure.
func (r *Report) Own(ml, most float64) climate.Band[climate.Percent] {
	b := r.Box
	b.Substrate.Depth = r.depth
	b.Room.RHLow = min(b.Room.RHLow, climate.Percent(min(House.Low, most-(House.High-House.Low))))
	b.Room.RHHigh = min(b.Room.RHHigh, climate.Percent(min(House.High, most)))
	return b.Watered(r.Inside(), climate.GramPerDay(ml)).Settles
}

// OfRoom is the humidity that the air of the room has at the temperature inside: at its
// driest, and on the mean.
func (r *Report) OfRoom() (low, mean climate.Percent) {
	room := &r.Box.Room
	warmed := climate.Percent(climate.SaturationPressure(min(room.Middle(), r.Inside())) / climate.SaturationPressure(r.Inside()))
	return room.RHLow * warmed, (room.RHLow + room.RHHigh) / 2 * warmed
}
