package check

import (
	"vivary/plan"
)

// prepare gathers what rules ask for again and again, before they run side by side.
func (c *Collection) prepare() {
	c.facts = map[*plan.SpeciesSheet]facts{}
	for _, e := range c.Plan.Enclosures {
		if e.Sheet != nil && c.facts[e.Sheet] == nil {
			c.facts[e.Sheet] = factsOf(e.Sheet)
			c.sheets = append(c.sheets, e.Sheet)
		}
	}
}
