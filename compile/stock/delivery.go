package stock

import "vivary/schema/civil"

// Carrier is when a seller works and delivers.
type Carrier struct {
	Delivers func(civil.Date) bool // the days on which something arrives
	Works    func(civil.Date) bool // the working days, by which the lead is counted
	Lead     int                   // working days from the order to the delivery
}

// far is how many days are looked through for a delivery: a seller who brings nothing for so
// long brings nothing.
const far = 90

// Workdays are the days from Monday to Friday.
func Workdays(d civil.Date) bool {
	w := d.Weekday()
	return w != 0 && w != 6
}

// By returns the last delivery that is not after a day, and the last day on which it can be
// ordered; false where there is none.
func (c *Carrier) By(last civil.Date) (deliver, order civil.Date, ok bool) {
	for deliver = last; !c.Delivers(deliver); deliver-- {
		if last-deliver > far {
			return 0, 0, false
		}
	}
	return deliver, c.order(deliver), true
}

// order is the last day on which something can be ordered for a delivery.
func (c *Carrier) order(deliver civil.Date) civil.Date {
	d := deliver
	for left := c.Lead; left > 0 && deliver-d < 4*far; {
		if d--; c.Works(d) {
			left--
		}
	}
	return d
}

// From returns the first delivery of what is ordered on a day or later; false where there is
// none.
func (c *Carrier) From(ordered civil.Date) (civil.Date, bool) {
	for d := ordered; d-ordered < 4*far; d++ {
		if c.Delivers(d) && c.order(d) >= ordered {
			return d, true
		}
	}
	return 0, false
}

// Rotation is how cultures are set up so that some always yield.
type Rotation struct {
	Every int // days between two starts
	House int // how many are in the house, those that do not yield yet among them
}

// Rotate returns the rotation where a culture yields for some days, after a lead, and so many
// are to yield at once.
func Rotate(use, lead, atOnce int) Rotation {
	every := max(1, use/max(1, atOnce))
	return Rotation{Every: every, House: (lead + use + every - 1) / every}
}

// Start is the latest day on which something is set up that is needed on a day.
func Start(need civil.Date, lead int) civil.Date { return need - civil.Date(lead) }
