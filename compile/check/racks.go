package check

import (
	"strconv"

	"vivary/plan"
	"vivary/plan/source"
)

// What a rack says is found at its own line, and told once for all that stand in it.

// outlet is one outlet of a thermostat.
type outlet struct {
	key   string // the same for heaters that share it; "" for none that others share
	at    source.Place
	named string
	write string // what to write where it should hold two temperatures
}

// outletOf returns the outlet on which a heater of an enclosure is. A heater of a rack is
// one, whatever it is called.
func outletOf(c *Collection, e *plan.Enclosure, h *plan.Heater) outlet {
	if h.Channel.Set() {
		return outlet{h.Channel.V, h.Channel.At, "outlet " + strconv.Quote(h.Channel.V), "channel = an outlet of its own"}
	}
	if k := c.Plan.RackOf(e); k != nil && k.Says(h.At) {
		return outlet{"\x00" + k.Name.V + "\x00" + h.Name.V, h.At, "the " + h.Name.V + " of rack " + strconv.Quote(k.Name.V), "a rack of its own for what wants another temperature"}
	}
	return outlet{}
}

// deviceAt is where something lacking beside a heater is found: at the rack whose heater it
// is, else at another place.
func (e *Enclosure) deviceAt(h *plan.Heater, at source.Place) source.Place {
	if k := e.Collection.Plan.RackOf(e.Plan); k != nil && k.Says(h.At) {
		return k.At
	}
	return at
}
