package roster

import (
	"vivary/compile/horizon"
	"vivary/plan/source"
	"vivary/schema"
)

// Poured is the water that care brings into an enclosure, as planned.
type Poured struct {
	// Day is how many ml it is a day, in the fullest month ahead; 0 where no such care
	// has an amount.
	Day float64
	// Until says that some of the misting and watering has no amount: it is done until the
	// substrate is damp. Times is how often a day that is, in the fullest month.
	Until bool
	Times float64
	At    source.Place // where what brings most of it was written
	// Once is the most on one day, in ml, and OnceAt where most of that was written.
	Once   float64
	OnceAt source.Place
}

// month is over how many days water is counted: long enough for an interval of weeks, short
// enough for a summer.
const month = 30

// PouredInto returns the water that the entries of one enclosure bring in: misting,
// watering, and what a keeper's own care has an amount for. Fresh water in a dish that holds so many ml brings in what the dish does not hold.
func PouredInto(entries []Entry, h horizon.Horizon, dish float64) (p Poured) {
	var days []float64
	most, largest := 0.0, 0.0
	var until source.Place
	for i := range entries {
		e := &entries[i]
		water := e.Water
		switch {
		case e.Kind.Needs == schema.NeedWater:
			water = max(0, water-dish)
		case e.Kind.Needs != schema.NeedMoisture && e.Kind != schema.KindOther:
			continue
		}
		switch {
		case e.Days.Next(h.Today) < 0 || water <= 0 && e.Kind.Needs != schema.NeedMoisture:
			continue
		case water <= 0:
			p.Until, until = true, e.Origin
			p.Times += busiest(e, h)
			continue
		}
		sum := 0.0
		for d := e.Days.Next(h.Today); d >= 0; d = e.Days.Next(d + 1) {
			sum += water
		}
		days = count(e, h, days, water)
		if sum > most {
			most, p.At = sum, e.Origin
		}
		if water > largest {
			largest, p.OnceAt = water, e.Origin
		}
	}
	p.Day = fullest(days, h)
	for _, ml := range days {
		p.Once = max(p.Once, ml)
	}
	if p.Day <= 0 {
		p.At = until
	}
	return p
}

// count adds so much to each day of an entry from today on.
func count(e *Entry, h horizon.Horizon, days []float64, much float64) []float64 {
	if days == nil {
		days = make([]float64, h.Days)
	}
	for d := e.Days.Next(h.Today); d >= 0; d = e.Days.Next(d + 1) {
		days[d] += much
	}
	return days
}

// busiest is how often a day an entry comes in its fullest month.
func busiest(e *Entry, h horizon.Horizon) float64 {
	first, n, most := e.Days.Next(h.Today), 0, 0
	for d := first; d >= 0; d = e.Days.Next(d + 1) {
		for n++; d-first >= month; n-- {
			first = e.Days.Next(first + 1)
		}
		most = max(most, n)
	}
	return float64(most) / month
}

// fullest is the mean of a day in the fullest month.
func fullest(days []float64, h horizon.Horizon) (most float64) {
	if days == nil {
		return 0
	}
	sum := 0.0
	for d := h.Today; d < h.Days; d++ {
		sum += days[d]
		if d-month >= h.Today {
			sum -= days[d-month]
		}
		most = max(most, sum/month)
	}
	return most
}
