package roster

import (
	"vivary/compile/horizon"
	"vivary/plan/source"
	"vivary/schema"
)

// Poured is the water that misting and watering bring into an enclosure, as planned.
type Poured struct {
	// Day is how many ml it is a day, in the fullest month ahead; 0 where no such care
	// has an amount.
	Day float64
	// Until says that some of it has no amount: it is done until the substrate is damp.
	Until bool
	At    source.Place // where what brings most of it was written
}

// month is over how many days water is counted: long enough for an interval of weeks, short
// enough for a summer.
const month = 30

// PouredInto returns the water that the entries of one enclosure bring in.
func PouredInto(entries []Entry, h horizon.Horizon) (p Poured) {
	var days []float64
	most := 0.0
	for i := range entries {
		e := &entries[i]
		switch {
		case e.Kind.Needs != schema.NeedMoisture || e.Days.Next(h.Today) < 0:
			continue
		case e.Water <= 0:
			p.Until = true
			continue
		}
		if days == nil {
			days = make([]float64, h.Days)
		}
		sum := 0.0
		for d := e.Days.Next(h.Today); d >= 0; d = e.Days.Next(d + 1) {
			days[d] += e.Water
			sum += e.Water
		}
		if sum > most {
			most, p.At = sum, e.Origin
		}
	}
	if days == nil {
		return p
	}
	sum := 0.0
	for d := h.Today; d < h.Days; d++ {
		sum += days[d]
		if d-month >= h.Today {
			sum -= days[d-month]
		}
		p.Day = max(p.Day, sum/month)
	}
	return p
}
