package balance

import (
	"math"

	"vivary/compile/climate"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema/quantity"
)

// believe takes in what was measured, by the plan and by the log. A measurement without
// that of the room says nothing of the heat.
func (r *Report) believe(e *plan.Enclosure, l *life.Enclosure) {
	var all []climate.Reading
	rated := climate.Watt(0)
	for i := range r.Heaters {
		rated += r.Heaters[i].Power
	}
	add := func(spot, air, room, power plan.Written[quantity.Quantity]) {
		if !room.Set() || !spot.Set() && !air.Set() {
			return
		}
		m := climate.Reading{Conditions: climate.Conditions{Room: climate.Celsius(room.V.Value)}, Spot: celsius(spot), Air: celsius(air)}
		if power.Set() && rated > 0 {
			m.Part = min(1, climate.Share(climate.Watt(power.V.Value)/rated))
		}
		all = append(all, m)
	}
	if m := e.Climate.Measured; m != nil {
		add(m.Spot, m.Air, m.Room, m.Power)
	}
	if l != nil {
		for _, m := range l.Measured {
			add(m.Spot, m.Air, m.Room, m.Power)
		}
	}
	all = all[max(0, len(all)-newest):]
	kept := all[:0:0]
	for i := range all {
		b := r.Box.Believe(r.Heaters, all[i:i+1])
		if b != nil && b.Odd {
			r.Odd = i == len(all)-1 // one that a later one answers is left out, and no more
			continue
		}
		kept = append(kept, all[i])
	}
	if len(kept) > 0 {
		r.Belief, r.Readings = r.Box.Believe(r.Heaters, kept), len(kept)
	}
}

// newest is how many measurements are taken in, the last ones.
const newest = 12

func celsius(q plan.Written[quantity.Quantity]) climate.Celsius {
	if !q.Set() {
		return climate.Celsius(math.NaN())
	}
	return climate.Celsius(q.V.Value)
}
