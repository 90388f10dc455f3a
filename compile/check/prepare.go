package check

import (
	"vivary/compile/life"
	"vivary/plan"
)

// Prepare gathers what rules ask for again and again, before they run side by side: no rule
// changes it, and no rule about an enclosure asks for what those about the collection gather.
func (c *Collection) Prepare() {
	c.facts = map[*plan.SpeciesSheet]facts{}
	c.firsts = map[*plan.SpeciesSheet]*life.Enclosure{}
	for _, l := range c.Lives {
		if c.firsts[l.Plan.Sheet] == nil {
			c.firsts[l.Plan.Sheet] = l
		}
	}
	for _, e := range c.Plan.Enclosures {
		if e.Sheet != nil && c.facts[e.Sheet] == nil {
			c.facts[e.Sheet] = factsOf(e.Sheet)
			c.sheets = append(c.sheets, e.Sheet)
		}
	}
}

// First reports whether the enclosure at one place of Lives is the first of its species,
// where what is said once of a species is said.
func (c *Collection) First(i int) bool { return c.firsts[c.Lives[i].Plan.Sheet] == c.Lives[i] }
