package check

import (
	"vivary/plan"
	"vivary/schema/quantity"
)

// prepare gathers what rules ask for again and again, before they run side by side.
func (c *Collection) prepare() {
	c.facts = map[*plan.SpeciesSheet]facts{}
	for _, e := range c.Plan.Enclosures {
		if e.Sheet != nil && c.facts[e.Sheet] == nil {
			c.facts[e.Sheet] = factsOf(e.Sheet)
			c.sheets = append(c.sheets, e.Sheet)
		}
		if e.Climate == nil {
			continue
		}
		for _, h := range e.Climate.Heaters {
			if !h.Channel.Set() || !h.Thermostat.Set() {
				continue
			}
			if c.channels == nil {
				c.channels = map[string]plan.Written[quantity.Quantity]{}
			}
			if _, ok := c.channels[h.Channel.V]; !ok {
				c.channels[h.Channel.V] = h.Thermostat
			}
		}
	}
}

// setting returns the temperature at which a heater is switched off: that of its
// own thermostat, or of the one whose outlet it shares.
func (c *Collection) setting(h *plan.Heater) plan.Written[quantity.Quantity] {
	if h.Thermostat.At.Written() || !h.Channel.Set() {
		return h.Thermostat
	}
	return c.channels[h.Channel.V]
}

// Channels are the settings of the thermostats that several heaters share, by channel.
func (c *Collection) Channels() map[string]plan.Written[quantity.Quantity] { return c.channels }
